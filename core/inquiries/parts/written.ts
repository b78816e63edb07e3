/**
 * When a forwarded mail was written, by its own head: "tomorrow" in it is the day after that, not after it was passed on.
 */
import type { Order } from '../dates/order.ts';
import { resolve } from '../dates/resolve.ts';
import { sequencesOf } from '../dates/sequences.ts';
import type { Part } from './lines.ts';
import { only } from './split.ts';
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
