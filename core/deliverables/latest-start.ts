/**
 * By when each stage must be begun: the latest open half hour from which it meets its date when all others keep theirs.
 *
 * Work fits if and only if no stretch from a release to a due date is asked for more half hours than it has (Horn 1974, for half hours).
 * So the room that each such stretch has left is reckoned once. A stage that is begun later, and with it what waits for it, asks its hours
 * also of the stretches that begin after its release; it can be put off until one of them has no room.
 */
import { placeOf } from './place-of.ts';
import { schedule, type Plan, type Slot } from './schedule.ts';
import { orderedStages, type Ordered, type Stage } from './stages.ts';

/**
 * Epoch milliseconds of every stage that has work; null where it is late, or does not fit, however early it is begun.
 * Others keep what they have: their date, or where they are late in any case no more than they are late now.
 * @param plan the schedule of just these stages and half hours, where it is known already
 * @throws CircleError when stages wait for one another
 */
export function latestStarts(
  stages: readonly Stage[],
  slots: readonly Slot[],
  plan: Plan = schedule(stages, slots),
): ReadonlyMap<string, number | null> {
  const planned = new Map(plan.stages.map((stage) => [stage.id, stage]));
  const end = slots.at(-1)?.end ?? 0;
  // Each may be as late as it is now; of what does not fit, only what has a place is counted, at the end of the calendar at the latest.
  const works = orderedStages(
    stages.map((stage) => {
      const { lateness = null, unplaced = 0 } = planned.get(stage.id) ?? {};
      if (unplaced > 0) return { ...stage, halfHours: stage.halfHours - unplaced, dueAt: Math.max(stage.dueAt, end) };
      return { ...stage, dueAt: stage.dueAt + Math.max(0, lateness ?? 0) };
    }),
  );
  const rooms = roomsOf(works, slots);
  const followers = followersOf(works);
  const starts = new Map<string, number | null>();
  for (const { id, halfHours } of stages) {
    const { lateness = null } = planned.get(id) ?? {};
    if (halfHours > 0)
      starts.set(id, lateness === null || lateness > 0 ? null : (slots[latestOf(movedWith(id, followers), rooms)]?.start ?? null));
  }
  return starts;
}

type Rooms = {
  /** Distinct releases and due dates in order of time. */
  releases: number[];
  dues: number[];
  /** Open half hours that begin before a release; the last is the end of the calendar. */
  passed: number[];
  /** [release][due date]: the least room of all stretches from there to that due date or a later one, in half hours. */
  least: Int32Array[];
};

function roomsOf(works: readonly Ordered[], slots: readonly Slot[]): Rooms {
  const releases = distinct(works.map(({ from }) => from));
  const dues = distinct(works.map(({ by }) => by));
  const place = new Map(dues.map((due, order) => [due, order]));
  const [starts, ends] = [slots.map((slot) => slot.start), slots.map((slot) => slot.end)];
  const passed = [...releases.map((at) => placeOf(starts, at)), slots.length];
  const open = dues.map((at) => placeOf(ends, at + 1));
  const asked = new Int32Array(dues.length);
  const byRelease = Map.groupBy(works, ({ from }) => from);
  const least: Int32Array[] = [];
  for (let order = releases.length; order >= 0; order -= 1) {
    for (const { by, halfHours } of byRelease.get(releases[order] ?? Number.NaN) ?? []) {
      const at = place.get(by) ?? 0;
      asked[at] = (asked[at] ?? 0) + halfHours;
    }
    const row = new Int32Array(dues.length);
    let sum = 0;
    for (let due = 0; due < row.length; due += 1) {
      sum += asked[due] ?? 0;
      row[due] = (open[due] ?? 0) - (passed[order] ?? 0) - sum;
    }
    for (let due = row.length - 2; due >= 0; due -= 1) row[due] = Math.min(row[due] ?? 0, row[due + 1] ?? 0);
    least[order] = row;
  }
  return { releases, dues, passed, least };
}

/** The place in the calendar from which the first of these can be begun at the latest. */
function latestOf(moved: readonly Ordered[], { releases, dues, passed, least }: Rooms): number {
  const byDue = moved.toSorted((a, b) => a.by - b.by).map((work) => ({ ...work, place: placeOf(dues, work.by) }));
  const own = moved[0]?.from ?? 0;
  for (let order = placeOf(releases, own) + 1; order < releases.length + 1; order += 1) {
    const from = releases[order] ?? Infinity;
    let [more, lacks] = [0, 0];
    for (const work of byDue) {
      if (work.from < from) more += work.halfHours;
      if (more > 0) lacks = Math.max(lacks, more - (least[order]?.[work.place] ?? 0));
    }
    // This stretch has not the room: it must have begun so many half hours before it.
    if (lacks > 0) return (passed[order] ?? 0) - lacks;
  }
  return -1;
}

type Followers = ReadonlyMap<string, { work: Ordered; next: readonly string[] }>;

function followersOf(works: readonly Ordered[]): Followers {
  const followers = new Map(works.map((work) => [work.id, { work, next: [] as string[] }]));
  for (const { id, after } of works) for (const each of after) followers.get(each)?.next.push(id);
  return followers;
}

/** A stage and all that wait for it, itself first. */
function movedWith(id: string, followers: Followers): Ordered[] {
  const moved = new Set([id]);
  for (const each of moved) for (const next of followers.get(each)?.next ?? []) moved.add(next);
  return [...moved].flatMap((each) => followers.get(each)?.work ?? []);
}

const distinct = (values: readonly number[]): number[] => [...new Set(values)].toSorted((a, b) => a - b);
