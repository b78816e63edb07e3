/**
 * Generated years: jobs strewn over a few places in one fixed-offset zone, some ways typed, some left to the estimate.
 */
import { randomFrom, type Random } from '../../random.ts';
import type { Place } from '../../../core/contract/parts.ts';
import { wayFinder } from '../../../core/trips/ways.ts';
import type { Book, BookDay, BookJob, BookWay, KitNeed } from '../../../core/fit/book.ts';

const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;
export const DAY = 24 * HOUR;
export const YEAR_START = Temporal.Instant.from('2026-01-01T00:00:00Z').epochMilliseconds;

const between = (random: Random, low: number, high: number) => low + Math.floor(random() * (high - low + 1));
const pick = <T>(random: Random, items: readonly T[]): T => {
  const item = items[Math.floor(random() * items.length)];
  if (item === undefined) throw new RangeError('nothing to pick from');
  return item;
};

const place = (name: string, lat: number, lon: number): Place => ({
  key: name,
  name,
  region: '',
  country: 'IS',
  lat,
  lon,
  zone: 'Atlantic/Reykjavik',
});
const HOME = place('Home', 64.1, -21.9);
const PLACES = [HOME, place('Near', 64.4, -21.6), place('Mid', 65.7, -18.1), place('Far', 60.4, 5.3), place('Coast', 66.0, -23.1)];
export const ITEMS = [
  { id: 'battery', name: 'Battery', owned: 4, resetMinutes: 360, resetOnRoad: true, does: '', subHire: '', services: [] },
  { id: 'camera', name: 'Camera', owned: 2, resetMinutes: 0, resetOnRoad: true, does: '', subHire: '', services: [] },
];

export function generatedYear(seed: number, { pencils = true, kit = false } = {}): { book: Book; candidate: BookJob; random: Random } {
  const random = randomFrom(seed);
  const jobs = Array.from({ length: between(random, 3, 24) }, (_, index) =>
    jobAt(random, `job-${index}`, between(random, 0, 40), { pencils, kit }),
  );
  const ways: BookWay[] = PLACES.flatMap((from, index) =>
    PLACES.slice(index + 1).flatMap((to) =>
      random() < 0.5 ? [{ fromKey: from.key, toKey: to.key, mode: 'drive' as const, minutes: between(random, 2, 48) * 15 }] : [],
    ),
  );
  const anywhere = {
    ...jobAt(random, 'candidate', between(random, 2, 38), { pencils: false, kit }),
    id: null,
    firmness: 'candidate' as const,
  };
  const candidate = random() < 0.6 ? atTheBorder(anywhere, pick(random, jobs), ways, random) : anywhere;
  return { book: { home: HOME, jobs, ways, restMinutes: 480, ...(kit ? { kit: ITEMS } : {}) }, candidate, random };
}

/** The same with hands who said yes to some of the candidate's dates and have work of their own around them. */
export function yearWithHands(seed: number): { book: Book; candidate: BookJob } {
  const { book, candidate, random } = generatedYear(seed);
  const own = { pencils: true, kit: false };
  const first = (Math.min(...candidate.days.map((day) => day.callAt)) - YEAR_START) / DAY;
  const hands = ['Bo', 'Cy'].map((id) => ({
    id,
    name: id,
    home: pick(random, PLACES),
    rates: [],
    insuredUntil: null,
    backup: false,
    jobs: Array.from({ length: between(random, 0, 3) }, (_, index) =>
      jobAt(random, `${id}-${index}`, Math.max(0, Math.floor(first) + between(random, -3, 4)), own),
    ),
  }));
  const dates = [...new Set(candidate.days.map(({ date }) => date))];
  const who = dates.map(() => pick(random, [null, 'Bo', 'Cy', 'Bo']));
  const covers = hands.flatMap(({ id }) => {
    const theirs = dates.filter((_, index) => who[index] === id);
    return theirs.length > 0 ? [{ handId: id, dates: theirs }] : [];
  });
  return { book: { ...book, hands }, candidate: { ...candidate, covers } };
}

function jobAt(random: Random, id: string, firstDate: number, { pencils, kit }: { pencils: boolean; kit: boolean }): BookJob {
  const days: BookDay[] = [];
  for (let index = 0, date = firstDate; index < between(random, 1, 3); index += 1, date += random() < 0.8 ? 1 : 2) {
    const callAt = YEAR_START + date * DAY + between(random, 20, 68) * 15 * MINUTE;
    days.push(dayBetween(callAt, callAt + between(random, 4, 44) * 15 * MINUTE));
  }
  const inPencil = pencils && random() < 0.4;
  const needs: KitNeed[] = kit ? ITEMS.flatMap(({ id: item }) => (random() < 0.6 ? [{ item, count: between(random, 1, 3) }] : [])) : [];
  return {
    id,
    title: id,
    firmness: inPencil ? 'pencil' : 'ink',
    pencilledAt: inPencil ? between(random, 1, 1000) : null,
    expiresAt: inPencil ? Infinity : null,
    place: pick(random, PLACES),
    days,
    kit: needs,
  };
}

/** Moved to where an answer turns: right after another job, with its way, its rest or a reset between, or a minute from that. */
function atTheBorder(candidate: BookJob, other: BookJob, ways: readonly BookWay[], random: Random): BookJob {
  const first = candidate.days[0];
  if (!first) return candidate;
  const way = wayFinder(ways)(other.place, candidate.place);
  const gap =
    pick(random, [0, 360, way.shortMinutes, way.longMinutes, way.shortMinutes + 480, way.longMinutes + 480]) + pick(random, [-1, 0, 0, 1]);
  const wrap = Math.max(...other.days.map((day) => day.wrapAt));
  return shifted(candidate, wrap + gap * MINUTE - first.callAt);
}

export function dayBetween(callAt: number, wrapAt: number): BookDay {
  const wall = (at: number) => new Temporal.Instant(BigInt(at) * 1_000_000n).toString({ smallestUnit: 'minute' }).slice(0, 16);
  return { date: wall(callAt).slice(0, 10), kind: 'shoot', call: wall(callAt), wrap: wall(wrapAt), callAt, wrapAt };
}

export function shifted(job: BookJob, by: number): BookJob {
  return { ...job, days: job.days.map((day) => dayBetween(day.callAt + by, day.wrapAt + by)) };
}

/** How many cases a law is tried on: the full count only when it is asked for. */
export const CASES = process.env['KITBOUND_LONG'] === '1' ? 10_000 : 200;
