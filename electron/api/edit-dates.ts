/**
 * Whose days count for edits: public holidays at home, and a client's own.
 */
import { EDIT_SETTINGS } from '../../core/deliverables/ground.ts';
import type { EditSettings, SetupFields } from '../../core/contract/setup.ts';
import type { HolidayDates } from '../../core/time/business.ts';
import { dateIn } from '../../core/time/wall.ts';
import type { ReadableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { holidayDates } from './holidays.ts';
import { calendarsOf } from './round-facts.ts';

/** Mine, or the default of the house. */
export function editSettings({ editing }: Pick<SetupFields, 'editing'>): EditSettings {
  return editing ?? EDIT_SETTINGS;
}

/** Public ones at home between two dates. */
export function homeHolidays({ home }: Pick<SetupFields, 'home'>, from: string, to: string): HolidayDates {
  return holidayDates(home, from, to);
}

/** Both together: on neither side is anything done on them. From an instant on, epoch ms. */
export function bothHolidays(db: ReadableDb, context: Context, clientId: string | null, from: number): HolidayDates {
  const { mine, theirs } = calendarsOf(db, context, clientId, from);
  return mine.union(theirs);
}

/** The clients' own, each read once. */
export function holidaysOfClients(db: ReadableDb, context: Context): (clientId: string | null) => HolidayDates {
  const known = new Map<string | null, HolidayDates>();
  return (clientId) => {
    const found = known.get(clientId) ?? (clientId === null ? new Set<string>() : calendarsOf(db, context, clientId, context.now()).theirs);
    known.set(clientId, found);
    return found;
  };
}

/** The date at home on which a job is wrapped for the last time; null where it has no day on site. */
export function lastWrapOf(days: readonly { kind: string; wrapAt: number }[], zone: string): { at: number; date: string } | null {
  const wraps = days.filter(({ kind }) => kind !== 'edit' && kind !== 'travel').map(({ wrapAt }) => wrapAt);
  if (wraps.length === 0) return null;
  const at = Math.max(...wraps);
  return { at, date: dateIn(zone, at - 1) };
}
