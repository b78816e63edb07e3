/**
 * Which dates of a job are charged as public holidays: those that a list proposes, until a person says which.
 */
import type { PublicHoliday } from '../contract/setup.ts';
import type { BookDay } from '../fit/book.ts';

/** The holidays that fall on dates of the job; an edit is done whenever I like. */
export function holidaysOn(days: readonly Pick<BookDay, 'date' | 'kind'>[], holidays: readonly PublicHoliday[]): PublicHoliday[] {
  const dates = new Set(days.filter((day) => day.kind !== 'edit').map((day) => day.date));
  return holidays.filter(({ date }) => dates.has(date));
}

/**
 * Dates that count, with the name where it is known.
 * @param said what was said by hand; null where nobody said, and then all that are proposed count
 */
export function countedHolidays(proposed: readonly PublicHoliday[], said: readonly string[] | null): ReadonlyMap<string, string> {
  const names = new Map(proposed.map(({ date, name }) => [date, name]));
  return said ? new Map(said.map((date) => [date, names.get(date) ?? ''])) : names;
}
