/**
 * A round of notes: a cut is sent, the client has so many business days for notes, and notes that come later move the due date.
 * Dates are YYYY-MM-DD on the clock of my home, as is the due date of an edit.
 */
import { addBusinessDays, businessDaysBetween, type HolidayDates } from '../time/business.ts';
import { wallAt } from '../time/read.ts';
import { nextDate } from '../time/wall.ts';

/** Whose days count: my public holidays, and the client's public and own ones. */
export type RoundCalendars = { zone: string; mine: HolidayDates; theirs: HolidayDates };

/** The dates of a delivery before and after late notes moved them; `lost` are my business days. */
export type RoundMove = { lost: number; from: string; to: string; internalFrom: string | null; internalTo: string | null };

/** A cut that was sent; instants in epoch milliseconds. */
export type SentCut = { sentAt: number; dueBack: string; notesAt: number | null };

/**
 * By when notes are due: so many days after that of sending, counted only where both of us work.
 * @param sentAt epoch milliseconds
 * @param windowDays business days; 0 is the day of sending
 */
export function notesDue(sentAt: number, windowDays: number, { zone, mine, theirs }: RoundCalendars): string {
  return addBusinessDays(dateAt(sentAt, zone), windowDays, mine.union(theirs));
}

/**
 * My business days that went by after the last date for notes, the day on which they come among them: the days of work that were lost.
 * Theirs do not count here: their own holidays lengthen the window, but not what a late note costs.
 * @param at epoch milliseconds: when the notes came, or now while they are awaited
 */
export function businessDaysLate(dueBack: string, at: number, { zone, mine }: Pick<RoundCalendars, 'zone' | 'mine'>): number {
  const came = dateAt(at, zone);
  return came > dueBack ? businessDaysBetween(nextDate(dueBack), came, mine) : 0;
}

/** A date moved by what was lost, in my business days; a date that does not move stays as it is, on a Sunday too. */
export function dateMoved(date: string, lost: number, { mine }: Pick<RoundCalendars, 'mine'>): string {
  return lost > 0 ? addBusinessDays(date, lost, mine) : date;
}

/**
 * From when the work on notes can be planned, epoch milliseconds: from when they came, else from the morning after they are due, never before now.
 * Until the cut is sent, `sentAt` is the planned sending: the wait is a fixed release, and is planned anew once the cut is sent.
 */
export function roundRelease({ dueBack, notesAt }: Omit<SentCut, 'sentAt'>, zone: string, now: number): number {
  return notesAt ?? Math.max(now, midnightAfter(dueBack, zone));
}

/** The end of the last date for notes, epoch milliseconds. */
export function windowEnds(dueBack: string, zone: string): number {
  return midnightAfter(dueBack, zone);
}

/**
 * Which pass of notes a cut asks for, from 1: a cut that was approved without notes used none of those agreed on.
 * @param earlier cuts that were sent before it, with their notes; empty for a yes without any
 */
export function passOf(earlier: readonly { notes: string }[]): number {
  return earlier.filter(({ notes }) => notes !== '').length + 1;
}

function dateAt(at: number, zone: string): string {
  return wallAt(at, zone).slice(0, 10);
}

/** Where a clock skips its midnight the day begins when it shows the next time there is. */
function midnightAfter(date: string, zone: string): number {
  return Temporal.PlainDate.from(nextDate(date)).toZonedDateTime(zone).epochMilliseconds;
}
