/**
 * A deliverable's open stages as the schedule takes them: one after the other, with releases for waits and dates by which a cut must be sent.
 */
import type { HolidayDates } from '../time/business.ts';
import { addBusinessDays } from '../time/business.ts';
import { wallAt } from '../time/read.ts';
import type { EditGround, OpenEdit, OpenStage } from './ground.ts';
import { businessDaysLate, dateMoved, notesDue, roundRelease, windowEnds } from './rounds.ts';
import type { Stage } from './stages.ts';

/** A date without a promise: later than any that can be planned, so that what is promised comes first. */
const NO_DATE = Temporal.Instant.from('9999-01-01T00:00:00Z').epochMilliseconds;

type Ground = Pick<EditGround, 'now' | 'zone' | 'settings' | 'holidays' | 'pins'>;

/**
 * The date that holds now: notes that are awaited past their window move it by the business days that went by. Null where none is promised.
 */
export function dateThatHolds({ due, stages }: Pick<OpenEdit, 'due' | 'stages'>, { now, zone, holidays }: Ground): string | null {
  const awaited = stages.find(({ sent }) => sent && sent.notesAt === null)?.sent;
  if (due === null || !awaited) return due;
  return dateMoved(due, businessDaysLate(awaited.dueBack, now, { zone, mine: holidays }), { mine: holidays });
}

/** Business days of both sides, each reckoned once for a ground: many cuts go out on the same dates to the same clients. */
export type BusinessDates = {
  /** So many business days before a date. */
  before: (date: string, days: number, theirs: HolidayDates) => string;
  /** From when the notes on a cut can be worked on that is sent at an instant; both epoch ms. */
  notesBy: (edit: OpenEdit, sentAt: number) => number;
};

export function businessDates({ now, zone, holidays }: Ground): BusinessDates {
  const known = new Map<HolidayDates, { both: HolidayDates; dates: Map<string, string>; notes: Map<string, number> }>();
  const of = (theirs: HolidayDates) => {
    const ofClient = known.get(theirs) ?? { both: holidays.union(theirs), dates: new Map(), notes: new Map() };
    known.set(theirs, ofClient);
    return ofClient;
  };
  const dateOf = remembered((at: number) => wallAt(at, zone).slice(0, 10));
  return {
    before: (date, days, theirs) => {
      const { both, dates } = of(theirs);
      const key = `${date} ${days}`;
      const found = dates.get(key) ?? addBusinessDays(date, -days, both);
      dates.set(key, found);
      return found;
    },
    notesBy: ({ windowDays, theirs }, sentAt) => {
      const { notes } = of(theirs);
      const key = `${windowDays} ${dateOf(sentAt)}`;
      const found =
        notes.get(key) ??
        roundRelease({ dueBack: notesDue(sentAt, windowDays, { zone, mine: holidays, theirs }), notesAt: null }, zone, now);
      notes.set(key, found);
      return found;
    },
  };
}

function remembered(find: (at: number) => string): (at: number) => string {
  const known = new Map<number, string>();
  return (at) => {
    const found = known.get(at) ?? find(at);
    known.set(at, found);
    return found;
  };
}

/** Stages of one deliverable in order. A round that is not sent waits for nothing yet but the stage before it: see `BusinessDates`. */
export function chainOf(edit: OpenEdit, ground: Ground, dates: BusinessDates): Stage[] {
  const dues = duesOf(edit, dateThatHolds(edit, ground), ground, dates);
  let pinnedUntil = -Infinity;
  // Delivered and approved are no work.
  return edit.stages
    .filter(({ kind }) => kind !== 'delivered' && kind !== 'approved')
    .map((stage, index) => {
      const pins = ground.pins.filter(({ stageId }) => stageId === stage.id);
      const left = Math.max(0, stage.halfHours - halfHoursIn(pins, ground.now));
      const before = edit.stages[index - 1];
      const releaseAt = Math.max(ground.now, edit.filesAt, ownRelease(stage, ground), pinnedUntil);
      const pinned = Math.max(-Infinity, ...pins.map(({ end }) => end));
      pinnedUntil = Math.max(pinnedUntil, pinned);
      return {
        id: stage.id,
        halfHours: left,
        // What is pinned whole is done when its last pin ends.
        releaseAt: left === 0 ? Math.max(releaseAt, pinned) : releaseAt,
        dueAt: dues[index] ?? NO_DATE,
        after: before ? [before.id] : [],
      };
    });
}

/** Half hours of pins that are still ahead; those that are over count as nothing done. */
function halfHoursIn(pins: EditGround['pins'], now: number): number {
  const ms = pins.reduce((sum, { start, end }) => sum + Math.max(0, end - Math.max(start, now)), 0);
  return Math.floor(ms / (30 * 60_000));
}

function ownRelease({ releaseDate, sent }: OpenStage, { now, zone }: Ground): number {
  const notBefore = releaseDate === null ? -Infinity : startOf(releaseDate, zone);
  return sent ? Math.max(notBefore, roundRelease(sent, zone, now)) : notBefore;
}

/**
 * By when each stage must be done, epoch ms: the promised date, and for a cut that is sent for notes so much earlier that the client's window
 * and the whole days of work on the notes still lie before the next one.
 */
function duesOf({ stages, windowDays, theirs }: OpenEdit, due: string | null, { zone, settings }: Ground, dates: BusinessDates): number[] {
  if (due === null) return stages.map(() => NO_DATE);
  let by = due;
  const dues: number[] = [];
  for (const stage of stages.toReversed()) {
    dues.unshift(windowEnds(by, zone));
    if (stage.kind === 'round' && !stage.sent)
      by = dates.before(by, windowDays + Math.ceil(stage.halfHours / 2 / Math.max(0.5, settings.hoursADay)), theirs);
  }
  return dues;
}

function startOf(date: string, zone: string): number {
  return Temporal.PlainDate.from(date).toZonedDateTime(zone).epochMilliseconds;
}

/** The date at home on which something is over at an instant; what ends at midnight is over on the date before. */
export function dateOfEnd(at: number, zone: string): string {
  return wallAt(at - 1, zone).slice(0, 10);
}
