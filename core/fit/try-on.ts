/**
 * Changes that are tried on before anything is saved.
 */
import type { TicketKey, TryOn } from '../contract/try-on.ts';
import type { LegFields } from '../contract/trips.ts';
import { epochOf } from '../time/read.ts';
import { placedLeg, ticketsAndWays } from '../trips/legs.ts';
import type { Book, BookDay, BookJob, BookLeg, BookWay, ImportedTime, KitItem, KitNeed } from './book.ts';
import { changedDays, movedDays } from './day-changes.ts';
import { importedKey } from './imported.ts';
import { countOf } from './kit.ts';
import { withInstead } from './kit-list.ts';

/** Days that a hand takes over: they said yes, or it is as if they had. */
export type Cover = { handId: string; days: BookDay[]; saidYes: boolean };
export type Tried = {
  book: Book;
  /** With every day that is wanted, whoever does it. */
  candidate: BookJob;
  /** The candidate as far as I do it myself: perhaps no day at all. */
  mine: BookJob;
  covers: Cover[];
};

/**
 * The book and the candidate as they would be.
 * @throws WallTimeError where a day would be moved to a wall time that does not exist or occurs twice
 */
export function triedOn(book: Book, candidate: BookJob, tryOn: TryOn = {}): Tried {
  const legs = placed(tryOn.legs ?? []);
  const days = changedDays(candidate.days, candidate.place.zone, tryOn);
  const asked = {
    ...candidate,
    days,
    legs: [...withoutTickets(candidate.legs ?? [], tryOn), ...legs.tickets],
    kit: withInstead(candidate.kit ?? [], tryOn.kitInstead ?? []),
    ...(tryOn.asSecondPencil ? { second: true } : {}),
  };
  const cover = (saidYes: boolean) => (one: { handId: string; dates: readonly string[] }) => ({
    handId: one.handId,
    days: days.filter(({ date }) => one.dates.includes(date)),
    saidYes,
  });
  const covers = [...(candidate.covers ?? []).map(cover(true)), ...(tryOn.hands ?? []).map(cover(false))];
  const covered = new Set(covers.flatMap((cover) => cover.days));
  return {
    book: {
      ...book,
      restMinutes: tryOn.restMinutes ?? book.restMinutes,
      ways: [...legs.ways, ...withTyped(book.ways, tryOn.ways ?? [])],
      jobs: book.jobs.filter(({ id }) => id === null || !tryOn.withoutJobs?.includes(id)).map((job) => changedJob(job, tryOn)),
      ...(book.kit ? { kit: byCourier(withExtra(book.kit, tryOn.kitExtra ?? []), tryOn.couriers ?? []) } : {}),
      ...(!book.kit && tryOn.kitExtra ? { kit: withExtra([], tryOn.kitExtra) } : {}),
      ...(book.imported && tryOn.withoutImported ? { imported: withoutImported(book.imported, tryOn.withoutImported) } : {}),
      ...(book.personal ? { personal: book.personal.filter(({ id }) => id === null || !tryOn.withoutPersonal?.includes(id)) } : {}),
    },
    candidate: asked,
    mine: covered.size === 0 ? asked : { ...asked, days: days.filter((day) => !covered.has(day)) },
    covers,
  };
}

function withoutImported(imported: readonly ImportedTime[], keys: readonly string[]): ImportedTime[] {
  return imported.filter((time) => !keys.includes(importedKey(time)));
}

/** A job on the books with the days and tickets that were changed; the same job where none of it is its. */
function changedJob(job: BookJob, tryOn: TryOn): BookJob {
  const moves = (tryOn.daysMoved ?? []).filter(({ jobId }) => jobId !== null && jobId === job.id);
  const legs = job.legs && withoutTickets(job.legs, tryOn);
  const days = moves.length > 0 ? movedDays(job.days, job.place.zone, moves) : job.days;
  return days === job.days && legs?.length === job.legs?.length ? job : { ...job, days, ...(legs ? { legs } : {}) };
}

/** Tickets that would be given up, of the candidate and of every job. */
export function givenUp(book: Book, candidate: BookJob, { withoutTickets: keys = [] }: TryOn = {}): { job: BookJob; leg: BookLeg }[] {
  return [candidate, ...book.jobs].flatMap((job) =>
    (job.legs ?? []).filter((leg) => keys.some((key) => isTicket(key, leg))).map((leg) => ({ job, leg })),
  );
}

function withoutTickets(legs: readonly BookLeg[], { withoutTickets: keys = [] }: TryOn): BookLeg[] {
  return legs.filter((leg) => !keys.some((key) => isTicket(key, leg)));
}

function isTicket(key: TicketKey, leg: BookLeg): boolean {
  return key.fromKey === leg.from.key && key.toKey === leg.to.key && epochOf(key.departAt) === leg.departAt;
}

/** Legs that cannot be are refused where they come in; here they are passed over. */
function placed(legs: readonly LegFields[]): ReturnType<typeof ticketsAndWays> {
  return ticketsAndWays(legs.map((leg) => placedLeg(leg)).filter((leg) => typeof leg !== 'string'));
}

function withTyped(ways: readonly BookWay[], typed: readonly BookWay[]): BookWay[] {
  return [...typed, ...ways.filter((way) => !typed.some((other) => samePair(other, way)))];
}

function byCourier(items: readonly KitItem[], couriers: readonly string[]): KitItem[] {
  return items.map((item) => (couriers.includes(item.id) ? { ...item, byCourier: true } : item));
}

function samePair(a: { fromKey: string; toKey: string }, b: { fromKey: string; toKey: string }): boolean {
  return (a.fromKey === b.fromKey && a.toKey === b.toKey) || (a.fromKey === b.toKey && a.toKey === b.fromKey);
}

/** Things as if more of them were owned; one that is not on the list is put on it. */
function withExtra(items: readonly KitItem[], extra: readonly KitNeed[]): KitItem[] {
  const known = items.map((item) => {
    const hired = countOf(extra, item.id);
    return hired === 0 ? item : { ...item, owned: item.owned + hired, hired };
  });
  const unknown = extra.filter((need) => !items.some((item) => item.id === need.item));
  return [
    ...known,
    ...unknown.map(({ item, count }) => ({
      id: item,
      name: item,
      owned: count,
      resetMinutes: 0,
      resetOnRoad: true,
      does: '',
      subHire: '',
      services: [],
    })),
  ];
}
