/**
 * Numbers right behind the one day with which its list or its sentence ends: "Nov 14, 28", "2027-11-14, 28", "Nov 14, 18 to 22". They may be more days, a
 * year or hours, and it is asked whether they are days.
 */
import { askedDays, inMonthOf, settledDay } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const NUMBER = /^, ?(\d{2})(?=\s?(?:[.;!?)\n]|$)(?!\d)|,\s\p{L}| (?:in|at|please|and (?:we|you|i|it|they))\b)/iu;
const DAY_LAST = /\d(?:st|nd|rd|th)?$/;
/** What may be hours as well as days, at the end of the days. */
const HOURS = /\d, (\d{1,2})\s?(?:to|until|till|-|–)\s?(\d{1,2})$/i;
const LAST_HOUR = 24;

/** The days, or with and without the numbers as a question. */
export function heldAgainstNumberBehind({ text }: Scene, event: EventDays): EventDays {
  const told = event.where.at(-1);
  const [first] = event.dates;
  if (first === undefined || !told || event.dropped || event.counted) return event;
  const words = text.slice(told.start, told.end);
  const [, from, to] = HOURS.exec(words) ?? [];
  if (event.dates.length > 1 && from !== undefined && Number(from) < Number(to) && Number(to) <= LAST_HOUR)
    return askedDays(event.where, [[first], event.dates], 'open');
  const day = settledDay(event);
  if (day === undefined || !DAY_LAST.test(words)) return event;
  const number = Number(NUMBER.exec(text.slice(told.end, told.end + REACH))?.[1] ?? 0);
  const other = number > Temporal.PlainDate.from(day).day ? inMonthOf(day, number) : undefined;
  return other === undefined ? event : askedDays(event.where, [[day], [day, other]], 'open');
}
const REACH = 16;
