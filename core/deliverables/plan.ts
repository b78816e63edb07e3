/**
 * The edit plan as it is shown: how each deliverable lies, by when it must be begun, and what takes its time where it is late.
 */
import type { EditPlan, PlannedEdit } from '../contract/deliverables.ts';
import { instantText, wallAt } from '../time/read.ts';
import { nextDate } from '../time/wall.ts';
import { dateOfEnd } from './chain.ts';
import { planSentence, standingOf, waitsOf } from './edit-words.ts';
import { isOut, type EditGround, type OpenEdit } from './ground.ts';
import { laid, type Laid, type LaidEdit } from './lay.ts';
import { latestStarts } from './latest-start.ts';
import type { Slot } from './schedule.ts';
import { takersOf, type Taker, type Worked } from './takers.ts';

/** The whole plan. Instants of `ground` are epoch milliseconds. */
export function editPlan(ground: EditGround, lying: Laid = laid(ground)): EditPlan {
  const latest = latestStarts(lying.stages, lying.slots, lying.plan);
  const owner = new Map(ground.edits.flatMap((edit) => edit.stages.map(({ id }) => [id, edit] as const)));
  const blocks = blocksOf(ground, lying, owner);
  const worked = blocks.map((block) => workedOf(block, owner));
  const edits = lying.edits.map((each) => planned(each, ground, lying, latest, worked));
  return {
    at: instantText(ground.now),
    zone: ground.zone,
    hoursADay: ground.settings.hoursADay,
    edits: edits.toSorted(byDate),
    blocks: blocks.flatMap(({ stageId, start, end, pinned }) => {
      const edit = owner.get(stageId);
      return edit ? [{ stageId, deliverableId: edit.id, jobId: edit.jobId, start: instantText(start), end: instantText(end), pinned }] : [];
    }),
    troubles: troublesOf(ground, lying),
    sentence: planSentence(lying.edits),
  };
}

const LAST = '9999-12-31';

function byDate(a: PlannedEdit, b: PlannedEdit): number {
  return (a.due ?? LAST).localeCompare(b.due ?? LAST) || a.jobTitle.localeCompare(b.jobTitle) || a.name.localeCompare(b.name);
}

type PlacedBlock = { stageId: string; start: number; end: number; pinned: boolean };

function blocksOf({ pins, now }: EditGround, { plan, onSite }: Laid, owner: ReadonlyMap<string, OpenEdit>): PlacedBlock[] {
  const ahead = pins.filter(({ stageId, end }) => end > now && owner.has(stageId)).map((pin) => ({ ...pin, pinned: true }));
  return [...plan.blocks.map((block) => ({ ...block, pinned: false })), ...onSite.map((block) => ({ ...block, pinned: false })), ...ahead]
    .map(({ stageId, start, end, pinned }) => ({ stageId, start, end, pinned }))
    .toSorted((a, b) => a.start - b.start);
}

function workedOf({ stageId, start, end }: PlacedBlock, owner: ReadonlyMap<string, OpenEdit>): Worked {
  const edit = owner.get(stageId);
  return { editId: edit?.id ?? '', jobId: edit?.jobId ?? null, title: edit?.jobTitle ?? '', start, end };
}

function planned(
  each: LaidEdit,
  ground: EditGround,
  lying: Laid,
  latest: ReadonlyMap<string, number | null>,
  work: readonly Worked[],
): PlannedEdit {
  const { edit, due, start, finish, unplaced, lateDays, halfHoursLeft } = each;
  const { zone, now } = ground;
  const first = edit.stages.find(({ id }) => latest.has(id));
  // Without a promised date nothing says by when it must be begun.
  const latestStart = first && due !== null && lateDays === 0 ? (latest.get(first.id) ?? null) : null;
  const takers = lateDays > 0 || unplaced > 0 ? takersBetween(each, ground, lying, work) : [];
  const { id, jobId, jobTitle, name, internalDate, sameDay } = edit;
  const text = (at: number | null) => (at === null ? null : instantText(at));
  return {
    deliverableId: id,
    jobId,
    jobTitle,
    name,
    due,
    internalDate,
    sameDay,
    hoursLeft: halfHoursLeft / 2,
    unplaced: unplaced / 2,
    start: text(start),
    finish: text(finish),
    latestStart: text(latestStart),
    slackHours: latestStart === null || start === null ? null : slotsBetween(lying.slots, start, latestStart) / 2,
    lateDays,
    pastInternal: internalDate !== null && finish !== null && dateOfEnd(finish, zone) > internalDate,
    waits: waitsOf(edit, now, zone),
    takers,
    sentence: standingOf({ laid: each, latestStart, takers, zone }),
  };
}

/** What takes the time of one edit in a plan that is laid. */
export function takersOfEdit(each: LaidEdit, ground: EditGround, lying: Laid): Taker[] {
  const owner = new Map(ground.edits.flatMap((edit) => edit.stages.map(({ id }) => [id, edit] as const)));
  return takersBetween(
    each,
    ground,
    lying,
    blocksOf(ground, lying, owner).map((block) => workedOf(block, owner)),
  );
}

/** From when its files are there to its end, or to the end of the calendar where it has none. */
function takersBetween({ edit, finish }: LaidEdit, ground: EditGround, { slots }: Laid, work: readonly Worked[]): Taker[] {
  const from = Math.max(ground.now, edit.filesAt);
  const to = finish ?? slots.at(-1)?.end ?? from;
  // The day of the wrap itself is gone before the files are there.
  const first = nextDateIf(edit.filesAt > ground.now, wallAt(from, ground.zone).slice(0, 10));
  const last = dateOfEnd(Math.max(to, from + 1), ground.zone);
  return takersOf(edit.id, work, awayBetween(ground, first, last), from, to);
}

const nextDateIf = (later: boolean, date: string): string => (later ? nextDate(date) : date);

/** Dates that a job takes from editing: none on days that are without editing anyway. */
function awayBetween({ dates, settings, holidays }: EditGround, first: string, last: string): EditGround['dates'] {
  const free = (date: string) =>
    settings.closedWeekdays.includes(Temporal.PlainDate.from(date).dayOfWeek) || (!settings.onHolidays && holidays.has(date));
  return dates.filter((date) => date.date >= first && date.date <= last && isOut(date, settings) && !free(date.date));
}

/** Open half hours from one start to another; below zero where the second comes first. */
function slotsBetween(slots: readonly Slot[], from: number, to: number): number {
  return placeOf(slots, to) - placeOf(slots, from);
}

function placeOf(slots: readonly Slot[], at: number): number {
  let [low, high] = [0, slots.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((slots[middle]?.start ?? Infinity) < at) low = middle + 1;
    else high = middle;
  }
  return low;
}

function troublesOf({ settings, edits }: EditGround, { edits: lying }: Laid): string[] {
  const troubles: string[] = [];
  const work = lying.some(({ edit, halfHoursLeft }) => edit.editor === null && halfHoursLeft > 0);
  if (work && (settings.hoursADay === 0 || settings.closedWeekdays.length === 7))
    troubles.push('The edit calendar has no open hour, so nothing can be planned. Give it hours and days in Setup.');
  else if (lying.some(({ unplaced }) => unplaced > 0)) troubles.push('Not all the work finds a place in the next three years.');
  const dateless = edits.filter(({ due }) => due === null).length;
  if (dateless > 0) troubles.push(`${editsHave(dateless)} no date yet: what is promised comes before ${dateless === 1 ? 'it' : 'them'}.`);
  const unsaid = edits.filter(({ hoursSaid }) => !hoursSaid).length;
  if (unsaid > 0) troubles.push(`${editsHave(unsaid)} no hours yet: no time is planned for ${unsaid === 1 ? 'it' : 'them'}.`);
  return troubles;
}

const editsHave = (count: number): string => (count === 1 ? 'One edit has' : `${count} edits have`);
