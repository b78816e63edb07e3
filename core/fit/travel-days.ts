/**
 * Travelling on another date than that of the work, as a movement that can be tried on and kept.
 */
import type { Lift } from '../contract/fit.ts';
import { wallAt } from '../time/read.ts';
import { dateLater } from '../time/wall.ts';
import { weekdayAt } from '../words/moments.ts';
import { legAsIf } from './lifts.ts';
import type { Ground } from './moves.ts';
import type { Work } from './work.ts';

const MINUTE = 60_000;
/** Common practice: one arrives the evening before by this hour, and leaves the morning after at this one, on the clock of the place. */
const ARRIVE_BY = 20;
const LEAVE_AT = 9;

/** Out from home so early that one has arrived the evening before, and rested. */
export function travelBefore(way: Work, span: readonly Work[], { home, restMinutes }: Ground): Lift[] {
  const call = span.find((item) => item.own && item.date !== null);
  if (!call || way.place.key !== home.key || way.to.key !== call.place.key) return [];
  const evening = hourOn(dateLater(wallAt(call.startAt, call.place.zone).slice(0, 10), -1), ARRIVE_BY, call.place.zone);
  const arriveAt = Math.min(evening, call.startAt - restMinutes * MINUTE);
  const departAt = arriveAt - (way.endAt - way.startAt);
  return legAsIf('drive', way.place, way.to, departAt, arriveAt).map((leg) => ({
    kind: 'travel before',
    label: `Travel the day before, leaving ${weekdayAt(departAt, way.place, home)}: one more night`,
    tryOn: { legs: [leg] },
  }));
}

/** Home on the morning after the last wrap, rested. */
export function travelAfter(way: Work, span: readonly Work[], { home, restMinutes }: Ground): Lift[] {
  const wrap = span.findLast((item) => item.own && item.date !== null);
  if (!wrap || way.to.key !== home.key || way.place.key !== wrap.to.key) return [];
  const date = wallAt(wrap.endAt, wrap.to.zone).slice(0, 10);
  const wrapsAfterMidnight = wrap.date !== null && date > wrap.date;
  const morning = hourOn(wrapsAfterMidnight ? date : dateLater(date, 1), LEAVE_AT, wrap.to.zone);
  const departAt = Math.max(morning, wrap.endAt + restMinutes * MINUTE);
  return legAsIf('drive', way.place, way.to, departAt, departAt + (way.endAt - way.startAt)).map((leg) => ({
    kind: 'travel after',
    label: `Travel home the day after, leaving ${weekdayAt(departAt, way.place, home)}: one more night`,
    tryOn: { legs: [leg] },
  }));
}

function hourOn(date: string, hour: number, zone: string): number {
  return Temporal.PlainDate.from(date).toZonedDateTime({ timeZone: zone, plainTime: Temporal.PlainTime.from({ hour }) }).epochMilliseconds;
}
