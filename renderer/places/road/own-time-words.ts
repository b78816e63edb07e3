/**
 * Time of one's own as it is typed and read: whole days as dates, the last one included; hours on the clock of their zone.
 */
import type { PersonalFields } from '../../../core/contract/personal.ts';
import { dateLater } from '../../../core/time/wall.ts';
import { paperDate, wallInWords } from '../../../core/words/dates.ts';

type Span = Pick<PersonalFields, 'from' | 'to'>;

/** The first and last date of whole days; nothing where hours are kept. */
export function wholeDays({ from, to }: Span): { first: string; last: string } | null {
  if (!from.endsWith('T00:00') || !to.endsWith('T00:00')) return null;
  return { first: from.slice(0, 10), last: dateLater(to.slice(0, 10), -1) };
}

/** A span of whole days, whose end is 00:00 of the date after the last. */
export const spanOfDays = (first: string, last: string): Span => ({ from: `${first}T00:00`, to: `${dateLater(last, 1)}T00:00` });

/** "24 December 2026 to 3 January 2027", "Thu 3 December 2026, 14:00 to Thu 3 December 2026, 16:00". */
export function ownSpanInWords(span: Span): string {
  const days = wholeDays(span);
  if (!days) return `${wallInWords(span.from)} to ${wallInWords(span.to)}`;
  return days.first === days.last ? paperDate(days.first) : `${paperDate(days.first)} to ${paperDate(days.last)}`;
}
