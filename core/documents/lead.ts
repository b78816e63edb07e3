/**
 * Lead times: how many business days something takes, against those that are left before the first call.
 */
import { addBusinessDays, businessDaysBetween, type HolidayDates } from '../time/business.ts';
import { wallAt } from '../time/read.ts';
import { dateLater } from '../time/wall.ts';

/**
 * Business days at home that lie wholly between now and the first call: neither today nor the day of the call counts, since what is asked
 * for today comes at the end of the last of them.
 * @param now epoch ms
 * @param callAt epoch ms
 * @param zone of home
 */
export function daysLeft(now: number, callAt: number, zone: string, holidays: (from: string, to: string) => HolidayDates): number {
  const first = dateLater(wallAt(now, zone).slice(0, 10), 1);
  const last = dateLater(wallAt(callAt, zone).slice(0, 10), -1);
  return last < first ? 0 : businessDaysBetween(first, last, holidays(first, last));
}

/** The last date on which something that takes so many business days can be asked for, to come before the day of the first call. */
export function askBy(callDate: string, days: number, holidays: HolidayDates): string {
  return dateLater(addBusinessDays(callDate, -days, holidays), -1);
}
