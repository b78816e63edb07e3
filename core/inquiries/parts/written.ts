/**
 * When a forwarded mail was written, by its own head: "tomorrow" in it is the day after that, not after it was passed on.
 */
import type { Order } from '../dates/order.ts';
import { resolve } from '../dates/resolve.ts';
import { sequencesOf } from '../dates/sequences.ts';
import type { Part } from './lines.ts';
import { only, split } from './split.ts';
import { tokensOf } from './tokens.ts';

const DATE_LINE = /^[ \t]*(?:date|sent|gesendet|datum|envoyé)\s?:([^\n]{6,80})$/gim;
/** A head that is older than this is no thread of now. */
const OLDEST_DAYS = 90;

/** The dates of writing that forwarded heads state, each with the offset from which it holds. */
export function datesWritten(
  text: string,
  parts: readonly Part[],
  received: Temporal.PlainDate,
  order: Order,
): { from: number; date: Temporal.PlainDate }[] {
  const forwarded = parts.find((part) => part.kind === 'forwarded');
  if (!forwarded) return [];
  const found: { from: number; date: Temporal.PlainDate }[] = [];
  for (const match of only(text, parts, 'header').matchAll(DATE_LINE)) {
    const [sequence] = sequencesOf(tokensOf(match[1] ?? ''));
    if (!sequence || sequence.items.length !== 1 || sequence.items[0]?.atom.year === undefined) continue;
    const day = resolve(sequence, { today: received.subtract({ days: OLDEST_DAYS }), order }).readings[0]?.[0];
    if (day === undefined) continue;
    const date = Temporal.PlainDate.from(day);
    const age = date.until(received).days;
    if (age >= 0 && age <= OLDEST_DAYS) found.push({ from: match.index, date });
  }
  return found;
}

/**
 * The day on which a mail was written that begins with its head, or with the line that names its writer; nothing where that could be two, `old`
 * for a mail of another time.
 */
export function dayWritten(mail: string, received: Temporal.PlainDate): Temporal.PlainDate | 'old' | undefined {
  const seen = { today: received.subtract({ days: OLDEST_DAYS }), order: 'either' as const };
  for (const line of only(mail, split(mail), 'header').trim().split('\n').slice(0, LINES_OF_HEAD)) {
    const [sequence] = sequencesOf(tokensOf(line));
    if (!sequence || sequence.items.length !== 1 || sequence.items[0]?.atom.year === undefined) continue;
    const days = resolve(sequence, seen).readings.flatMap(([day]) => (day === undefined ? [] : [Temporal.PlainDate.from(day)]));
    const near = days.filter((day) => {
      const age = day.until(received).days;
      return age >= 0 && age <= OLDEST_DAYS;
    });
    if (days.length > 0 && near.length === 0) return 'old';
    if (near.length === 1) return near[0];
  }
  return undefined;
}
/** A head has no more lines than these. */
const LINES_OF_HEAD = 8;
