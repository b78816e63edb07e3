/**
 * Where a sentence begins and ends in text that people typed: lists, wrapped lines and abbreviations included.
 */

import { monthWord } from '../words.ts';

const ABBREVIATION =
  /(?:^|[\s.(])(?:[ap]\.?m|jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec|mon|tues?|wed|thur?s?|fri|sat|sun|no|st|ste|approx|vs|mr|mrs|ms|dr|e\.g|i\.e|etc|incl|ca|min|max|hrs?|klo?|\p{L})$/iu;
/** A line that ends before this column was ended by its writer, not by a mail program. */
const WRAP_COLUMN = 55;
/** A line of a list of days. */
const OF_A_DAY =
  /^(?:mon|tue|wed|thu|fri|sat|sun|mo|di|mi|do|fr|sa|so|lun|mar|mer|jeu|ven|sam|dim|mié|jue|vie|sáb|dom)\p{L}{0,9}[.,]?\s(?:\d|\p{Lu}\p{Ll}{2,8}\.?\s\d)/iu;
/** Longest stretch that is looked through on either side. */
const REACH = 240;
const LONGEST_LINE = 1000;
/** However many blank lines stand behind "9 pm.", the next paragraph is another sentence. */
const MOST_BLANKS = 40;

/** "am 13. Oktober" */
const beforeMonth = (text: string, at: number): boolean =>
  /(?:^|\s)\d{1,2}$/.test(text.slice(Math.max(0, at - 3), at)) &&
  monthWord(/^\s(\p{L}+)/u.exec(text.slice(at + 1, at + 16))?.[1]?.toLowerCase() ?? '') !== undefined;

function endsAt(text: string, at: number): boolean {
  const mark = text[at];
  if (mark === ';' || mark === '!' || mark === '?') return true;
  if (mark === '.') {
    const next = text[at + 1];
    // "(as in March.) Please"
    if (next === ')' && /\s/.test(text[at + 2] ?? '\n')) return true;
    if (next !== undefined && !/\s/.test(next)) return false;
    if (beforeMonth(text, at)) return false;
    if (!ABBREVIATION.test(text.slice(Math.max(0, at - 8), at))) return true;
    return (
      /^\s+[\p{Lu}\d$£€("]/u.test(text.slice(at + 1, at + MOST_BLANKS)) &&
      /(?:^|[\s\d.])[ap]\.?m$/i.test(text.slice(Math.max(0, at - 5), at))
    );
  }
  if (mark !== '\n') return false;
  const lineStart = text.lastIndexOf('\n', at - 1) + 1;
  const line = text.slice(Math.max(lineStart, at - 200), at).trim();
  const nextEnd = text.indexOf('\n', at + 1);
  const next = text.slice(at + 1, nextEnd === -1 ? at + 200 : Math.min(nextEnd, at + 200)).trim();
  if (next === '' || line === '') return true;
  return (
    line.length < WRAP_COLUMN || (OF_A_DAY.test(line) && OF_A_DAY.test(next)) || /^(?:[-+>]\s|\d{1,2}[.)]\s|[\p{L} ]{2,24}:)/u.test(next)
  );
}

/** The sentence around a stretch of text, at most `REACH` characters to either side. */
export function sentenceAround(text: string, start: number, end: number): { start: number; end: number } {
  let from = start;
  while (from > 0 && start - from < REACH && !endsAt(text, from - 1)) from--;
  let to = end;
  while (to < text.length && to - end < REACH && !endsAt(text, to)) to++;
  return { start: from, end: to };
}

/** The line or lines on which a stretch of text stands, without their ends. */
export function lineAround(text: string, { start, end }: { start: number; end: number }): { start: number; end: number } {
  const to = text.indexOf('\n', end);
  return { start: lineStart(text, start), end: to < 0 ? text.length : to };
}

/** Where the line of an offset begins; of a line without an end, as far back as anybody writes one. */
export function lineStart(text: string, at: number): number {
  const seen = Math.max(0, at - LONGEST_LINE);
  return text.slice(seen, at).lastIndexOf('\n') + 1 + seen;
}

/** What parts the clauses of a sentence: a mark, or a comma or a dash with a space behind it. */
const CLAUSE = /[.;:!?\n(]|,\s|\s-+\s/;

/** The words of its clause before a place, as far back as `reach`. */
export const clauseBefore = (text: string, at: number, reach: number): string =>
  text
    .slice(Math.max(0, at - reach), at)
    .split(CLAUSE)
    .at(-1) ?? '';

/** The words of its clause behind a place, as far as `reach`. */
export const clauseBehind = (text: string, at: number, reach: number): string => text.slice(at, at + reach).split(CLAUSE)[0] ?? '';

/** The words behind an hour, as far as `reach`; none where its point ends the sentence as well: "7 a.m. Please". */
export function behindHour(text: string, end: number, reach: number): string {
  const after = text.slice(end, end + reach);
  return text[end - 1] === '.' && /^\s+\p{Lu}|^\s*\n/u.test(after) ? '' : after;
}

/** Where a clause begins, as the beginning of a pattern without regard to case. */
export const CLAUSE_BEGINS: string = String.raw`(?:^|[.;:!?\n(–]\s*|,\s|\s-\s|\b(?:and|so|but|then|as|because)\s)`;
