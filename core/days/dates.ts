/**
 * From the calls of a job to its paid dates: one date has one main kind and runs from first call to last wrap.
 */
import type { BookDay } from '../fit/book.ts';
import type { DayKind } from '../contract/parts.ts';

/** Dearest first; a date takes the first of these that it holds. */
const DEAREST: readonly DayKind[] = ['shoot', 'half', 'prep', 'standby', 'travel', 'edit'];

/**
 * The paid dates of one client, in order: two calls on one date become one day of the dearest kind, from first call to last wrap.
 * Time that is only travel or only editing does not lengthen a working day: a travel share on a working date is a matter of agreement,
 * and edit hours are lines of their own, so edit days are kept apart.
 */
export function paidDates(days: readonly BookDay[]): BookDay[] {
  const byDate = Map.groupBy(
    days.filter((day) => day.kind !== 'edit'),
    (day) => day.date,
  );
  const merged = [...byDate.values()].map((sameDate) => {
    const working = sameDate.filter((day) => day.kind !== 'travel');
    return spanOf(working.length > 0 ? working : sameDate);
  });
  return [...merged, ...days.filter((day) => day.kind === 'edit')].toSorted((a, b) => a.callAt - b.callAt);
}

function spanOf(days: readonly BookDay[]): BookDay {
  const first = days.reduce((one, other) => (other.callAt < one.callAt ? other : one));
  const last = days.reduce((one, other) => (other.wrapAt > one.wrapAt ? other : one));
  const kind = DEAREST.find((candidate) => days.some((day) => day.kind === candidate)) ?? first.kind;
  const breaks = days.reduce((sum, day) => sum + (day.unpaidBreakMinutes ?? 0), 0);
  return {
    date: first.date,
    kind,
    call: first.call,
    callAt: first.callAt,
    wrap: last.wrap,
    wrapAt: last.wrapAt,
    ...(breaks > 0 ? { unpaidBreakMinutes: breaks } : {}),
    ...(first.zone === undefined ? {} : { zone: first.zone }),
  };
}
