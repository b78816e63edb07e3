/** Small steps between wall times, as a person takes them when filling in a day. */
import { wallAt } from './read.ts';

/**
 * The wrap of a call as a wall time: the first moment after the call that shows this time of day, so 02:00 after an evening call is the next date.
 * @param call `YYYY-MM-DDTHH:MM`
 * @param time `HH:MM`
 */
export function wrapAfter(call: string, time: string): string {
  const sameDate = `${call.slice(0, 10)}T${time}`;
  return sameDate > call ? sameDate : `${nextDate(call.slice(0, 10))}T${time}`;
}

/** A wall time some minutes later on the same clock, clock changes left aside. */
export function wallLater(wall: string, minutes: number): string {
  return Temporal.PlainDateTime.from(wall).add({ minutes }).toString({ smallestUnit: 'minute' });
}

/** The date after a date, `YYYY-MM-DD`. */
export function nextDate(date: string): string {
  return dateLater(date, 1);
}

/** The date some days after (or before, where negative) a date. */
export function dateLater(date: string, days: number): string {
  return Temporal.PlainDate.from(date).add({ days }).toString();
}

/** Today's date in a zone. @param now epoch milliseconds */
export function dateIn(zone: string, now: number): string {
  return wallAt(now, zone).slice(0, 10);
}
