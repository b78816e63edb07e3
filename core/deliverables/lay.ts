/**
 * The schedule of section 11 over all jobs: open stages laid into the open half hours of my year, around pins, with the client's windows as
 * releases from the planned sending.
 */
import { businessDaysBetween } from '../time/business.ts';
import { wallAt } from '../time/read.ts';
import { dateLater, nextDate } from '../time/wall.ts';
import { openHalfHours } from './calendar.ts';
import { businessDates, chainOf, dateOfEnd, dateThatHolds, type BusinessDates } from './chain.ts';
import { isOut, type EditGround, type OpenEdit } from './ground.ts';
import { windowEnds } from './rounds.ts';
import { plannedWaits, type Chained } from './waits.ts';
import { schedule, type Block, type Plan, type Slot } from './schedule.ts';
import type { Stage } from './stages.ts';

/** How one deliverable lies: epoch ms, half hours. */
export type LaidEdit = {
  edit: OpenEdit;
  /** The promised date as it holds now. */
  due: string | null;
  start: number | null;
  finish: number | null;
  unplaced: number;
  /** Business days after the promised date; 0 in time. What found no place counts to the end of the calendar. */
  lateDays: number;
  halfHoursLeft: number;
};
export type Laid = {
  slots: readonly Slot[];
  stages: readonly Stage[];
  /** Without pins and what is cut on site. */
  plan: Plan;
  onSite: readonly Block[];
  edits: readonly LaidEdit[];
};

const DAY = 86_400_000;
const HALF_HOUR = 30 * 60_000;
/** No plan looks farther ahead than this many days after the last thing is there to be begun. */
const FARTHEST = 3 * 366;
/** How often releases are put off for windows that a plan has moved; each time only later, so that it comes to rest. */
const MOST_PASSES = 12;

/** Whether an edit lies in my own calendar: not a hand's, and not cut on site while that is still ahead. */
function isMine(edit: OpenEdit, now: number): boolean {
  return edit.editor === null && !(edit.sameDay && edit.filesAt > now);
}

/** How stages are laid into slots: so that the largest lateness is least, unless another choice is made. */
type Lay = typeof schedule;

export function laid(ground: EditGround, lay: Lay = schedule): Laid {
  const mine = ground.edits.filter((edit) => isMine(edit, ground.now));
  const dates = businessDates(ground);
  const chains = mine.map((edit) => ({ edit, chain: chainOf(edit, ground, dates) }));
  const stages = chains.flatMap(({ chain }) => chain);
  const slots = slotsFor(ground, stages);
  const { plan, stages: released } = withWaits(ground, chains, slots, { dates, lay });
  const ends = new Map(plan.stages.map((stage) => [stage.id, stage]));
  const firstStarts = new Map<string, number>();
  for (const { stageId, start } of [...plan.blocks, ...ground.pins.filter(({ end }) => end > ground.now)])
    firstStarts.set(stageId, Math.min(start, firstStarts.get(stageId) ?? Infinity));
  const onSite = ground.edits.filter((edit) => edit.editor === null && !isMine(edit, ground.now)).flatMap(cutOnSite);
  const edits = ground.edits.map((edit): LaidEdit => {
    const due = dateThatHolds(edit, ground);
    const halfHoursLeft = edit.stages.reduce((sum, { halfHours }) => sum + halfHours, 0);
    if (edit.editor !== null) return { edit, due, start: null, finish: null, unplaced: 0, lateDays: 0, halfHoursLeft };
    const there = onSite.filter(({ stageId }) => edit.stages.some(({ id }) => id === stageId));
    const own = edit.stages.flatMap(({ id }) => ends.get(id) ?? []);
    const unplaced = own.reduce((sum, stage) => sum + stage.unplaced, 0);
    const starts = edit.stages.flatMap(({ id }) => firstStarts.get(id) ?? []);
    const start = there[0]?.start ?? (starts.length > 0 ? Math.min(...starts) : null);
    const finishes = own.flatMap((stage) => stage.finish ?? []);
    const finish = there.at(-1)?.end ?? (unplaced > 0 || halfHoursLeft === 0 ? null : Math.max(...finishes));
    // What is done but not delivered is late from the day after its date on.
    const end = unplaced > 0 ? (slots.at(-1)?.end ?? ground.now) : (finish ?? ground.now);
    return { edit, due, start, finish, unplaced, lateDays: daysLate(due, end, edit, ground), halfHoursLeft };
  });
  return { slots, stages: released, plan, onSite, edits };
}

/** Business days after a date, at least one for what ends on a day off after it. */
function daysLate(due: string | null, end: number | null, { theirs }: OpenEdit, { zone, holidays }: EditGround): number {
  if (due === null || end === null || end <= windowEnds(due, zone)) return 0;
  return Math.max(1, businessDaysBetween(nextDate(due), dateOfEnd(end, zone), holidays.union(theirs)));
}

/**
 * The plan in which each round that is not sent waits for the window after the planned end of the stage before it. Such a wait enters as a
 * fixed release. Should a plan end a cut later than its release thought, the release is put off and everything is laid anew.
 */
function withWaits(
  ground: EditGround,
  chains: readonly Chained[],
  slots: readonly Slot[],
  { dates, lay }: { dates: BusinessDates; lay: Lay },
): { plan: Plan; stages: Stage[] } {
  const waits = chains.flatMap(({ edit }) =>
    edit.stages.flatMap(({ id, kind, sent }, index) =>
      kind === 'round' && !sent ? [{ edit, id, cut: edit.stages[index - 1]?.id ?? null, asked: -Infinity }] : [],
    ),
  );
  const releases = plannedWaits(chains, slots, ground.previous, ground.now, dates.notesBy);
  for (let pass = 0; ; pass += 1) {
    const stages = chains.flatMap(({ chain }) =>
      chain.map((stage) => ({ ...stage, releaseAt: Math.max(stage.releaseAt, releases.get(stage.id) ?? -Infinity) })),
    );
    const plan = lay(stages, slots, ground.previous);
    if (pass === MOST_PASSES) return { plan, stages };
    const finishes = new Map(plan.stages.map(({ id, finish }) => [id, finish]));
    let putOff = false;
    for (const wait of waits) {
      const sentAt = wait.cut === null ? ground.now : (finishes.get(wait.cut) ?? null);
      if (sentAt === null || sentAt <= wait.asked) continue;
      wait.asked = sentAt;
      const release = dates.notesBy(wait.edit, sentAt);
      if (release <= (releases.get(wait.id) ?? -Infinity)) continue;
      releases.set(wait.id, release);
      putOff = true;
    }
    if (!putOff) return { plan, stages };
  }
}

/** Open half hours from now on, far enough for all the work; none twice, and none where a pin lies. */
function slotsFor(ground: EditGround, stages: readonly Stage[]): Slot[] {
  const { now, zone, settings } = ground;
  const work = stages.reduce((sum, { halfHours }) => sum + halfHours, 0);
  if (work === 0 || settings.hoursADay === 0 || settings.closedWeekdays.length === 7) return [];
  const lastRelease = Math.max(now, ...stages.map(({ releaseAt }) => releaseAt));
  const waiting = Math.max(0, ...ground.edits.map(windowsOf));
  const from = wallAt(now, zone).slice(0, 10);
  const untilLast = Math.ceil((lastRelease - now) / DAY) + waiting;
  const closed = closedDates(ground);
  const enoughFrom = lastRelease + waiting * DAY;
  const busy = [...ground.pins.map((pin) => ({ ...pin, editing: true })), ...ground.times];
  const calendar = { zone, from, ceilingHours: settings.hoursADay, dayStart: settings.dayStart, closedWeekdays: settings.closedWeekdays };
  // Enough is what all the work needs after the last of it is there; a first guess, then twice as far.
  for (let more = 14 + Math.ceil((work / (settings.hoursADay * 2)) * (7 / (7 - settings.closedWeekdays.length)) * 1.3); ; more *= 2) {
    const days = untilLast + Math.min(more, FARTHEST);
    const slots = openHalfHours({ ...calendar, days, closed, busy }).filter(({ start }) => start >= now);
    if (more >= FARTHEST || slots.filter(({ start }) => start >= enoughFrom).length >= work) return slots;
  }
}

/** Calendar days that its windows may take, with weekends and a holiday or two. */
function windowsOf({ stages, windowDays }: OpenEdit): number {
  return stages.filter(({ kind, sent }) => kind === 'round' && !sent).length * (Math.ceil(windowDays * 1.6) + 5);
}

/** Dates that are out: what jobs take unless allowed, and public holidays at home. */
function closedDates({ dates, settings, holidays }: EditGround): ReadonlySet<string> {
  const out = new Set(dates.filter((date) => isOut(date, settings)).map(({ date }) => date));
  return settings.onHolidays ? out : out.union(holidays);
}

/** What is cut on site follows the last wrap at once, without a pause. */
function cutOnSite({ filesAt, stages }: OpenEdit): Block[] {
  let at = filesAt;
  return stages.flatMap(({ id, halfHours }) => {
    if (halfHours === 0) return [];
    const block = { stageId: id, start: at, end: at + halfHours * HALF_HOUR };
    at = block.end;
    return [block];
  });
}

/** The first and the last date that the plan may look at, so that whoever asks knows what to load. */
export function datesAhead(now: number, zone: string): { from: string; to: string } {
  const from = wallAt(now, zone).slice(0, 10);
  return { from, to: dateLater(from, FARTHEST) };
}
