/**
 * The Saturday and Sunday that are told by a day of them: "the weekend of the 21st", "the weekends of 13 and 27 November".
 */
import { nextWeekday, type PlainDate } from './from-today.ts';
import type { Sequence } from './sequences.ts';

/** Nothing sure for a day in the middle of the week, or where a weekday is told beside the weekend. */
export function weekendAround(dates: readonly PlainDate[], { around, items }: Sequence): PlainDate[] | undefined {
  const [first] = dates;
  if (!first) return undefined;
  if (items.some(({ atom }, at) => at > 0 && atom.day === undefined && atom.weekday !== undefined)) return undefined;
  if (items.some(({ atom }) => atom.relative?.kind === 'shifted')) return undefined;
  if (dates.length === 1) return weekendOf(first);
  if (around === 'weekend' || items.some(({ join }) => join === 'range')) return [...dates];
  const weekends = dates.map(weekendOf);
  return weekends.some((weekend) => weekend === undefined) ? undefined : weekends.flatMap((weekend) => weekend ?? []);
}

function weekendOf(date: PlainDate): PlainDate[] | undefined {
  if (date.dayOfWeek === 7) return [date.subtract({ days: 1 }), date];
  if (date.dayOfWeek < 5) return undefined;
  const saturday = nextWeekday(date, 6);
  return [saturday, saturday.add({ days: 1 })];
}
