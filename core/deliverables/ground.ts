/**
 * What the edit schedule over all jobs is laid on: what is still to be done, and when I can edit. Plain data; instants are epoch milliseconds,
 * dates YYYY-MM-DD on the clock of home.
 */
import type { StageKind } from '../contract/deliverables.ts';
import type { EditSettings } from '../contract/setup.ts';
import type { HolidayDates } from '../time/business.ts';
import type { Block } from './schedule.ts';

/** The default of the house; common practice. */
export const EDIT_SETTINGS: EditSettings = {
  hoursADay: 6,
  dayStart: '09:00',
  closedWeekdays: [6, 7],
  onHolidays: false,
  onTravelDays: false,
  onShootDays: false,
};

/** A stage that is not done. */
export type OpenStage = {
  id: string;
  kind: StageKind;
  name: string;
  /** Half hours that it still needs. */
  halfHours: number;
  /** Not before this date. */
  releaseDate: string | null;
  /** Of a round: what was sent for it, while its notes are awaited or in. */
  sent: { dueBack: string; notesAt: number | null } | null;
};

/** A deliverable that is not delivered, with its open stages in order. */
export type OpenEdit = {
  id: string;
  jobId: string;
  jobTitle: string;
  name: string;
  due: string | null;
  internalDate: string | null;
  sameDay: boolean;
  /** Camera files are there: last wrap of its job. */
  filesAt: number;
  windowDays: number;
  /** Who edits it in my place; null where I do. */
  editor: string | null;
  /** The client's own holidays. */
  theirs: HolidayDates;
  /** It is said how many hours it takes; without them no time can be planned for it. */
  hoursSaid: boolean;
  stages: readonly OpenStage[];
};

/** A date that a job takes on site or on the way. */
export type TakenDate = { date: string; jobId: string | null; title: string; how: 'shoot' | 'travel' };
/** A stretch in which I cannot edit: time of my own, an edit day that was sold. */
export type TakenTime = { start: number; end: number; jobId: string | null; title: string; editing: boolean; personalId?: string };
type Pinned = { stageId: string; start: number; end: number };

export type EditGround = {
  now: number;
  zone: string;
  settings: EditSettings;
  /** Public ones at home. */
  holidays: HolidayDates;
  edits: readonly OpenEdit[];
  dates: readonly TakenDate[];
  times: readonly TakenTime[];
  pins: readonly Pinned[];
  /** The plan before, by which ties are settled. */
  previous: readonly Block[];
};

/** A date that is out for editing by the settings. */
export function isOut({ how }: TakenDate, { onTravelDays, onShootDays }: EditSettings): boolean {
  return how === 'shoot' ? !onShootDays : !onTravelDays;
}
