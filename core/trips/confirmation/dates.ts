/**
 * Dates as carriers print them: "14 Dec 2026", "Mon, December 14", "14DEC26", "2026-12-14", "14.12.2026", "12/14/2026".
 */
import { monthWord, weekdayWord } from '../../inquiries/words.ts';

export type DateMark = {
  start: number;
  end: number;
  /** Every date that it can be: two for "03/04/2026", none where it is no date at all (31 April, or a weekday that does not fall on it). */
  dates: string[];
  /** Neither year nor weekday is written: the next such date is meant, or not. */
  yearless: boolean;
  text: string;
};

const NAMED =
  /(?<![\d/.:])(?<day>\d{1,2})(?:st|nd|rd|th)?\.?[ -]?(?:of )?(?<month>\p{L}{3,12})(?!\p{L})\.?,?(?:[ -]?'?(?<year>20\d\d|\d\d)(?!\d|[:./]\d|\s?[ap]\.?m\b))?/giu;
const MONTH_FIRST = /(?<!\p{L})(?<month>\p{L}{3,12})\.? (?<day>\d{1,2})(?:st|nd|rd|th)?(?![\d:./])(?:,? (?<year>20\d\d))?/giu;
const ISO = /(?<!\d)(?<year>20\d\d)-(?<month>\d\d)-(?<day>\d\d)(?!\d)/g;
const NUMERIC = /(?<![\d/.-])(?<a>\d{1,2})(?<mark>[/.-])(?<b>\d{1,2})\k<mark>(?<year>20\d\d|\d\d)(?![\d/.-]\d|\d)/g;
const WEEKDAY_BEFORE = /(\p{L}{3,12})\.?,?\s{0,2}(?:the )?$/iu;
const WEEKDAY_AFTER = /^\s?[,(]?\s?(\p{L}{3,12})\)?/iu;

/**
 * Dates of a unit, in order. A year that is not written is that of the next such date, with a weekday beside it of the next that falls on it.
 * @param today YYYY-MM-DD
 */
export function datesIn(text: string, today: string): DateMark[] {
  const found: DateMark[] = [];
  const put = (match: RegExpMatchArray, readings: readonly Written[]): void => {
    const [start, end] = [match.index ?? 0, (match.index ?? 0) + match[0].replace(/[.,\s]+$/, '').length];
    if (found.some((each) => each.start < end && each.end > start)) return;
    const before = WEEKDAY_BEFORE.exec(text.slice(Math.max(0, start - 16), start));
    const after = WEEKDAY_AFTER.exec(text.slice(end, end + 16));
    const weekday = weekdayWord(before?.[1]?.toLowerCase() ?? '') ?? weekdayWord(after?.[1]?.toLowerCase() ?? '');
    const named = before && weekdayWord(before[1]?.toLowerCase() ?? '') !== undefined ? start - before[0].length : start;
    const dates = [...new Set(readings.flatMap((written) => dateOf(written, weekday, today) ?? []))];
    const yearless = weekday === undefined && readings.every(({ year }) => year === null);
    found.push({ start: named, end, dates, yearless, text: text.slice(named, end) });
  };
  for (const match of text.matchAll(ISO)) put(match, [numbersOf(match.groups)]);
  for (const match of text.matchAll(NUMERIC)) {
    const { a = '', b = '', mark, year = '' } = match.groups ?? {};
    const dayFirst = { day: Number(a), month: Number(b), year: yearOf(year) };
    const monthFirst = { day: Number(b), month: Number(a), year: yearOf(year) };
    put(match, mark === '.' ? [dayFirst] : [dayFirst, monthFirst]);
  }
  for (const pattern of [NAMED, MONTH_FIRST])
    for (const match of text.matchAll(pattern)) {
      const month = monthWord(match.groups?.['month']?.toLowerCase() ?? '');
      const year = match.groups?.['year'];
      if (month !== undefined) put(match, [{ day: Number(match.groups?.['day']), month, year: year === undefined ? null : yearOf(year) }]);
    }
  return found.toSorted((a, b) => a.start - b.start);
}

type Written = { day: number; month: number; year: number | null };

const numbersOf = (groups: Record<string, string> | undefined): Written => ({
  day: Number(groups?.['day']),
  month: Number(groups?.['month']),
  year: Number(groups?.['year']),
});
const yearOf = (text: string): number => (text.length === 2 ? 2000 + Number(text) : Number(text));

/** A ticket is not bought longer ahead than this. */
const YEARS_AHEAD = 2;

function dateOf({ day, month, year }: Written, weekday: number | undefined, today: string): string | null {
  const first = Number(today.slice(0, 4));
  const years = year === null ? Array.from({ length: YEARS_AHEAD }, (_, ahead) => first + ahead) : [year];
  for (const each of years) {
    if (month < 1 || month > 12 || day < 1 || day > Temporal.PlainYearMonth.from({ year: each, month }).daysInMonth) continue;
    const date = Temporal.PlainDate.from({ year: each, month, day });
    if (weekday !== undefined && date.dayOfWeek !== weekday) continue;
    if (year === null && date.toString() < today) continue;
    return date.toString();
  }
  return null;
}
