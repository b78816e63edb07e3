/**
 * A situation as plain data: what is on the books, what is asked for, and what the answer must be.
 * Wall times are at the place of their job. A day is "2026-12-12 08:00-18:00"; a wrap at or before the call is on the next date.
 */
import type { Finding, FitAnswer } from '../../core/contract/fit.ts';
import type { DayKind, Place, Role } from '../../core/contract/parts.ts';
import type { Mode } from '../../core/contract/trips.ts';
import type { TryOn } from '../../core/contract/try-on.ts';
import type { Book, BookDay, BookDocument, BookHand, BookJob, BookLeg, JobPapers, KitItem } from '../../core/fit/book.ts';
import { EDIT_SETTINGS, type EditGround } from '../../core/deliverables/ground.ts';
import type { FitInput } from '../../core/fit/check.ts';
import { linesOf } from '../../core/road/lines.ts';
import { takenDates } from '../../core/road/taken-dates.ts';
import { instantOf, instantText } from '../../core/time/read.ts';
import { dateLater, wrapAfter } from '../../core/time/wall.ts';
import { timeAround } from '../../core/trips/ways.ts';
import type { z } from 'zod';

type SituationJob = {
  title: string;
  place: Place;
  days: readonly string[];
  /** Order of pencilling, any number; ink where it is left out. */
  pencilled?: number;
  tickets?: readonly Ticket[];
  kit?: Readonly<Record<string, number>>;
  role?: Role;
  /** Days that a hand does: of the candidate by name and dates, of a job on the books as days. */
  covers?: Readonly<Record<string, readonly string[]>>;
  handDays?: readonly string[];
  papers?: Partial<JobPapers>;
};

/** A document of mine, or of a hand by their name; documents are looked at as soon as a list of them is given. */
export type OwnDocument = Pick<BookDocument, 'kind'> & Partial<Omit<BookDocument, 'handId'>> & { of?: string };

/** A day's pay in USD for a role, from long ago; home is not known where it is left out. */
type SituationHand = {
  name: string;
  home?: Place;
  role: Role;
  dayRate: string;
  insuredUntil?: string;
  backup?: boolean;
  /** What they said yes to or hold in pencil. */
  jobs?: readonly SituationJob[];
};

/** Wall times at each end. */
type Ticket = { mode: Mode; from: Place; to: Place; depart: string; arrive: string; berth?: boolean; cost?: string };
type OwnThing = {
  name: string;
  owned: number;
  resetHours?: number;
  resetOnRoad?: boolean;
  does?: string;
  subHire?: string;
  service?: readonly [from: string, to: string, count: number];
};

/** An edit that is promised, one stage; its files are there at the last wrap of its job, or since long. */
type PromisedEdit = { name: string; of: string; due: string | null; hours: number; sameDay?: boolean };

export type Situation = {
  name: string;
  /** What is promised; edits are looked at as soon as a list of them is given, at six hours a day, Monday to Friday. */
  edits?: readonly PromisedEdit[];
  /** What the candidate promises itself. */
  promises?: readonly { name: string; due: string | null; hours: number }[];
  home: Place;
  restHours?: number;
  ways?: readonly { between: readonly [Place, Place]; minutes: number; mode?: Mode }[];
  personal?: readonly { title: string; from: string; to: string; hardness: 'never' | 'settle' }[];
  kit?: readonly OwnThing[];
  hands?: readonly SituationHand[];
  documents?: readonly OwnDocument[];
  holidays?: readonly string[];
  booked: readonly SituationJob[];
  candidate: Omit<SituationJob, 'title'>;
  /** Wall time at home. */
  now?: string;
  /** Wall time at home. */
  replyBy?: string;
  tryOn?: TryOn;
  /** Labels of lifts that must be offered with something to try on. */
  offers?: readonly string[];
  answer: z.infer<typeof FitAnswer>;
  /** Kinds of caution that must not be there. */
  silent?: readonly string[];
  /** All that block or must be settled, in order, and those cautions that matter here; of the numbers those that are named. */
  findings: readonly { kind: string; hardness: Finding['hardness']; with?: string; numbers?: Finding['numbers']; says?: string }[];
};

const LONG_AGO = Temporal.Instant.from('2025-06-01T12:00:00Z').epochMilliseconds;

export function inputOf({
  home,
  restHours = 8,
  ways = [],
  personal = [],
  kit = [],
  hands = [],
  documents,
  holidays = [],
  booked,
  candidate,
  now,
  replyBy,
  tryOn,
  edits,
  promises = [],
}: Situation): FitInput {
  const book: Book = {
    home,
    jobs: booked.map((job, index) => jobOf(job, `job-${index}`)),
    ways: ways.map(({ between: [from, to], minutes, mode = 'drive' }) => ({ fromKey: from.key, toKey: to.key, mode, minutes })),
    restMinutes: restHours * 60,
    personal: personal.map(({ title, from, to, hardness }) => ({
      id: title,
      title,
      startAt: at(from, home),
      endAt: at(to, home),
      hardness,
    })),
    kit: kit.map((thing) => thingOf(thing, home)),
    hands: hands.map(handOf),
    ...(documents ? { documents: documents.map(documentOf), holidays: () => new Set(holidays) } : {}),
  };
  const nowAt = now === undefined ? LONG_AGO : at(now, home);
  if (edits) book.edits = editsOn(book, edits, nowAt);
  const reply = replyBy === undefined ? null : { wall: replyBy, zone: home.zone, at: instantText(at(replyBy, home)) };
  const own = promises.map(({ name, due, hours }) => ({ what: name, due, halfHours: hours * 2 }));
  const asked = { ...jobOf({ title: 'This job', ...candidate }, null), ...(own.length > 0 ? { edits: own } : {}) };
  return {
    book,
    candidate: candidate.pencilled === undefined ? { ...asked, firmness: 'candidate' } : asked,
    now: nowAt,
    replyBy: reply,
    tryOn,
  };
}

function editsOn(book: Book, edits: readonly PromisedEdit[], now: number): EditGround {
  const { zone } = book.home;
  const lines = linesOf({ book: { ...book, jobs: book.jobs.filter(({ firmness }) => firmness === 'ink') }, candidate: null }).lines;
  return {
    now,
    zone,
    settings: EDIT_SETTINGS,
    holidays: new Set(),
    edits: edits.map(({ name, of, due, hours, sameDay = false }) => {
      const job = book.jobs.find(({ title }) => title === of);
      const stage = { id: `${name}/cut`, kind: 'fine cut' as const, name: 'Fine cut', halfHours: hours * 2, releaseDate: null, sent: null };
      const filesAt = Math.max(0, ...(job?.days ?? []).map(({ wrapAt }) => wrapAt));
      const whole = { internalDate: null, windowDays: 0, editor: null, theirs: new Set<string>(), hoursSaid: true, stages: [stage] };
      return { id: name, jobId: job?.id ?? of, jobTitle: of, name, due, sameDay, filesAt, ...whole };
    }),
    dates: lines.flatMap((line) => takenDates(line, zone)),
    times: (book.personal ?? []).map(({ id, title, startAt, endAt }) => ({
      start: startAt,
      end: endAt,
      jobId: null,
      title,
      editing: false,
      ...(id === null ? {} : { personalId: id }),
    })),
    pins: [],
    previous: [],
  };
}

function at(wall: string, place: Place): number {
  return instantOf(wall, place.zone).epochMilliseconds;
}

/** Battery or not, a thing here resets at once unless it says otherwise. A service includes its last day at home. */
function thingOf({ name, owned, resetHours = 0, resetOnRoad = true, does = '', subHire = '', service }: OwnThing, home: Place): KitItem {
  const services = service
    ? [{ startAt: at(`${service[0]}T00:00`, home), endAt: at(`${dateLater(service[1], 1)}T00:00`, home), count: service[2] }]
    : [];
  return { id: name, name, owned, resetMinutes: resetHours * 60, resetOnRoad, does, subHire, services };
}

function legOf({ mode, from, to, depart, arrive, berth = false, cost = '' }: Ticket): BookLeg {
  return { id: null, mode, from, to, departAt: at(depart, from), arriveAt: at(arrive, to), ...timeAround(mode, from, to), berth, cost };
}

function handOf({ name, home, role, dayRate, insuredUntil, backup = false, jobs = [] }: SituationHand): BookHand {
  const rates = [{ role, dayRate, currency: 'USD', from: '2025-01-01' }];
  const theirs = jobs.map((job, index) => jobOf(job, `${name}-${index}`));
  return { id: name, name, home: home ?? null, rates, insuredUntil: insuredUntil ?? null, backup, jobs: theirs };
}

function documentOf({ of, ...told }: OwnDocument): BookDocument {
  const blank = { country: null, from: null, until: null, worldwide: false, countries: [], limit: null, leadDays: null };
  return { ...blank, ...told, handId: of ?? null };
}

function jobOf(
  { title, place, days, pencilled, tickets = [], kit = {}, role, covers, handDays, papers }: SituationJob,
  id: string | null,
): BookJob {
  return {
    id,
    title,
    firmness: pencilled === undefined ? 'ink' : 'pencil',
    pencilledAt: pencilled ?? null,
    expiresAt: pencilled === undefined ? null : Infinity,
    place,
    days: days.map((text) => dayOf(text, place.zone)),
    legs: tickets.map(legOf),
    kit: Object.entries(kit).map(([item, count]) => ({ item, count })),
    ...(role ? { role } : {}),
    ...(papers ? { papers: { needs: [], insurance: null, customsList: false, ...papers } } : {}),
    ...(covers ? { covers: Object.entries(covers).map(([handId, dates]) => ({ handId, dates })) } : {}),
    ...(handDays ? { handDays: handDays.map((text) => dayOf(text, place.zone)) } : {}),
  };
}

/** Reads "2026-12-12 08:00-18:00" and "2026-12-12 08:00-12:00 half". */
function dayOf(text: string, zone: string): BookDay {
  const [date = '', times = '', kind = 'shoot'] = text.split(' ');
  const [from = '', to = ''] = times.split('-');
  const call = `${date}T${from}`;
  const wrap = wrapAfter(call, to);
  const at = (wall: string) => instantOf(wall, zone).epochMilliseconds;
  return { date, kind: kind as DayKind, call, wrap, callAt: at(call), wrapAt: at(wrap) };
}
