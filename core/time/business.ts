/**
 * Business days: Monday to Friday without public holidays. Which holidays there are is told by whoever asks:
 * those of a country and region, or a client's own. Dates are `YYYY-MM-DD`; no zone and no clock comes into it.
 */
import { dateLater } from './wall.ts';

/** Dates that are not worked, `YYYY-MM-DD`; those on a weekend change nothing. */
export type HolidayDates = ReadonlySet<string>;

const SATURDAY = 6;

/** True from Monday to Friday, unless the date is a holiday. */
export function isBusinessDay(date: string, holidays: HolidayDates): boolean {
  return Temporal.PlainDate.from(date).dayOfWeek < SATURDAY && !holidays.has(date);
}

/**
 * Business days from one date to another, both ends counted; negative where `to` lies before `from`.
 * The function NETWORKDAYS of OASIS OpenFormula 1.2, section 6.10.14, with Saturday and Sunday as weekend.
 */
export function businessDaysBetween(from: string, to: string, holidays: HolidayDates): number {
  if (to < from) return -businessDaysBetween(to, from, holidays);
  return weekdaysUpTo(to) - weekdaysUpTo(dateLater(from, -1)) - onWeekdays(holidays, from, to);
}

/**
 * The date some business days later, or earlier where negative; the date itself is not counted. With 0 the date as it is.
 * The function WORKDAY of OASIS OpenFormula 1.2, section 6.10.23.
 */
export function addBusinessDays(date: string, days: number, holidays: HolidayDates): string {
  const step = Math.sign(days);
  let at = date;
  for (let left = Math.abs(days); left > 0;) {
    at = dateLater(at, step);
    if (isBusinessDay(at, holidays)) left -= 1;
  }
  return at;
}

/**
 * Notice in business days: the day on which it is given counts, the day that it is given for does not. Common practice.
 * @returns 0 where notice is given on that day or later
 */
export function businessDaysBefore(day: string, noticeOn: string, holidays: HolidayDates): number {
  return noticeOn < day ? businessDaysBetween(noticeOn, dateLater(day, -1), holidays) : 0;
}

/** Weekdays from Monday, 1 January 1900 to a date, both counted: whole weeks have five, and the rest of a week begins with them. */
function weekdaysUpTo(date: string): number {
  const days = Temporal.PlainDate.from('1899-12-31').until(date).days;
  const weeks = Math.floor(days / 7);
  return weeks * 5 + Math.min(days - weeks * 7, 5);
}

function onWeekdays(holidays: HolidayDates, from: string, to: string): number {
  let count = 0;
  for (const date of holidays) if (date >= from && date <= to && isBusinessDay(date, new Set())) count += 1;
  return count;
}
