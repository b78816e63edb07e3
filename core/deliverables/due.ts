/**
 * When a deliverable is due by its rule, and the internal date before it. Dates are YYYY-MM-DD on the clock of home.
 */
import type { DueRule } from '../contract/templates.ts';
import { addBusinessDays, type HolidayDates } from '../time/business.ts';
import { dateLater } from '../time/wall.ts';

/**
 * So many days after the date of the last wrap.
 * @param holidays public ones at home, and the client's own
 */
export function dueBy({ days, count }: DueRule, lastWrap: string, holidays: HolidayDates): string {
  return count === 'calendar' ? dateLater(lastWrap, days) : addBusinessDays(lastWrap, days, holidays);
}

/** So many business days before the promised date; the date itself where none are asked for. */
export function internalBy(due: string, days: number, holidays: HolidayDates): string {
  return days === 0 ? due : addBusinessDays(due, -days, holidays);
}
