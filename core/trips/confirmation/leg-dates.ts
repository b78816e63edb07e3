/**
 * The dates of a leg: its own, or that of the heading above it.
 */
import { dateInWords } from '../../words/dates.ts';
import { joined } from '../../words/lists.ts';
import type { Ask } from './ask.ts';
import type { Marked } from './marks.ts';

type Dated = Marked['dates'][number];
export type LegDates = { depart: string | null; arrive: string | null; marks: Dated[] };

/** Dates of the two ends: the arrival's only where one of its own is written. What is not clear is asked and left out. */
export function datesOf(all: readonly Marked[], { from, to }: { from: number; to: number }, ask: Ask): LegDates {
  const own = all.slice(from, to).flatMap((unit) => unit.dates);
  const marks = distinct(own.length > 0 ? own : [headingOf(all, from)].filter((mark) => mark !== undefined));
  if (marks.length === 0) ask('depart', 'On which day does it leave?');
  if (marks.length > 2) ask('depart', `Of ${joined(marks.map(({ text }) => text))}, on which day does it leave?`);
  const settled = marks.map((mark) => ({ ...mark, dates: mark.dates.length > 1 ? settledBy(all, mark.dates) : mark.dates }));
  for (const { dates, text } of settled) {
    if (dates.length === 0) ask('depart', `"${text}" is no date: the day does not exist, or falls on another weekday. Which is meant?`);
    if (dates.length > 1) ask('depart', `Is "${text}" ${joined(dates.map(dateInWords), 'or')}?`);
  }
  if (settled.length === 0 || settled.length > 2 || settled.some(({ dates }) => dates.length !== 1))
    return { depart: null, arrive: null, marks };
  const yearless = settled.find((mark) => mark.yearless);
  if (yearless) ask('depart', `The year is not written. Is it ${dateInWords(yearless.dates[0] ?? '')}?`);
  const [first, second] = settled[0]?.cue === 'arrive' && settled[1] ? settled.toReversed() : settled;
  return { depart: first?.dates[0] ?? null, arrive: second?.dates[0] ?? null, marks };
}

function distinct(marks: readonly Dated[]): Dated[] {
  const seen = new Map<string, Dated>();
  for (const mark of marks) if (!seen.has(mark.dates.join())) seen.set(mark.dates.join(), mark);
  return [...seen.values()];
}

/**
 * The date above a leg that has none, where it is a heading: a line without a time, and nothing but lines without times and numbers above
 * it in its paragraph. A date of another leg is not its date.
 */
function headingOf(all: readonly Marked[], from: number): Dated | undefined {
  const at = all.findLastIndex((unit, order) => order < from && unit.dates.length > 0);
  for (let order = at; order >= 0; order -= 1) {
    const unit = all[order];
    if (!unit || unit.times.length > 0 || unit.numbers.length > 0) return undefined;
    if (unit.afterBlank) break;
  }
  return all[at]?.dates.at(-1);
}

/** "03/04": both readings, the day first and the month first; one where the other such dates of the text are all written in one way. */
function settledBy(all: readonly Marked[], dates: readonly string[]): string[] {
  const dayFirst = new Set(
    all
      .flatMap((unit) => unit.dates)
      .flatMap((mark) => {
        const [a = 0, b = 0] = (/(\d{1,2})[/-](\d{1,2})[/-]\d/.exec(mark.text)?.slice(1, 3) ?? []).map(Number);
        return mark.dates.length === 1 && a !== b ? [a > 12 || (b <= 12 && Number(mark.dates[0]?.slice(8)) === a)] : [];
      }),
  );
  const [first, second] = dates;
  if (dayFirst.size !== 1 || first === undefined || second === undefined) return [...dates];
  return [dayFirst.has(true) ? first : second];
}
