/**
 * How long originals (camera files) are kept once the edit is handed over. Dates are YYYY-MM-DD on the clock of home.
 */
import type { OriginalsKind } from '../contract/handovers.ts';
import { dateInWords, paperDate } from '../words/dates.ts';
import { ended } from '../words/ended.ts';

export type Originals = { kind: OriginalsKind; until: string | null };
export type Gone = { on: string; why: string };

const LENGTH = /\b(\d{1,4}|a|one|two|three|four|five|six|nine|ten|twelve)\s*[- ]?(day|week|month|year)s?\b/i;
const WORDS: Record<string, number> = { a: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, nine: 9, ten: 10, twelve: 12 };

/**
 * What the terms that were agreed on say of originals: "kept for 90 days after delivery" is a date, "are not kept" is none.
 * @param terms the sentence on originals of the inked quote; empty where there is none
 * @param on the date of delivery
 * @returns the proposal with where it comes from; a date that the terms do not name is asked, never guessed
 */
export function originalsProposed(terms: string, on: string): Originals & { sentence: string } {
  const said = terms.trim();
  if (said === '') return { kind: 'kept until', until: null, sentence: 'The terms say nothing of originals: agree on a date.' };
  const from = `The terms say: ${ended(said)}`;
  const found = LENGTH.exec(said);
  if (found && !/\b(not|never)\b[^.]*\bkept\b/i.test(said.slice(0, found.index)))
    return { kind: 'kept until', until: later(on, found[1] ?? '', found[2] ?? ''), sentence: from };
  if (/\b(not|never|nor) (be )?kept\b|\bnot keep\b/i.test(said)) return { kind: 'never kept', until: null, sentence: from };
  if (/\bhanded over\b/i.test(said)) return { kind: 'handed over', until: null, sentence: from };
  return { kind: 'kept until', until: null, sentence: `${from} No length of time was read in it.` };
}

function later(on: string, count: string, unit: string): string {
  const many = WORDS[count.toLowerCase()] ?? Number(count);
  return Temporal.PlainDate.from(on)
    .add({ [`${unit.toLowerCase()}s`]: many })
    .toString();
}

/** For the client: what is done with the originals, as it stands on the delivery note. */
export function originalsOnPaper({ kind, until }: Originals): string {
  if (kind === 'handed over') return 'The originals (camera files) are handed over with this delivery; I keep none.';
  if (kind === 'never kept') return 'The originals (camera files) are not kept.';
  return until === null
    ? 'How long the originals (camera files) are kept is still to be agreed on.'
    : `The originals (camera files) are kept until ${paperDate(until)}. After that date they may be deleted without further notice.`;
}

/** Whether originals may be deleted: their last date is past, or there never was one to wait for. @param today at home */
export function mayGo({ kind, until }: Originals, today: string): boolean {
  return kind === 'kept until' && until !== null && today > until;
}

/** Where the originals stand, for myself. @param gone null while they are there */
export function originalsInWords(originals: Originals, gone: Gone | null, today: string): string {
  const { kind, until } = originals;
  if (gone) return `Originals deleted on ${dateInWords(gone.on)}${gone.why === '' ? '' : `: ${gone.why}`}.`.replace(/\.+$/, '.');
  if (kind === 'handed over') return 'Originals handed over; none are kept.';
  if (kind === 'never kept') return 'Originals are not kept.';
  if (until === null) return 'Originals: until when they are kept must still be agreed on.';
  return mayGo(originals, today)
    ? `Originals were kept until ${dateInWords(until)} and may go.`
    : `Originals are kept until ${dateInWords(until)}; they may go the day after.`;
}
