/**
 * What the rules of sections 5 and 6 are given to decide with: everything on the books, as plain data. No store, no clock.
 * Instants are epoch milliseconds; wall times stay beside them for the sentences.
 */
import type { DocumentKind } from '../contract/document-kind.ts';
import type { DocumentFields } from '../contract/documents.ts';
import type { Hand } from '../contract/people.ts';
import type { Money, Place, DayKind, Role } from '../contract/parts.ts';
import type { Firmness } from '../contract/road.ts';
import type { Mode } from '../contract/trips.ts';
import type { EditGround } from '../deliverables/ground.ts';

/** One paid date with its instants already resolved at the place. */
export type BookDay = {
  date: string;
  kind: DayKind;
  call: string;
  wrap: string;
  callAt: number;
  wrapAt: number;
  /** Known once the day was worked. */
  unpaidBreakMinutes?: number;
  /** Where its wall times were on another clock than the place's. */
  zone?: string;
};

/** A job as the check sees it. Expired pencils, let-go, declined and cancelled jobs are never put in a book. */
export type BookJob = {
  id: string | null;
  title: string;
  firmness: Firmness;
  /** Order of pencilling, epoch ms; null for ink and for a candidate that holds no pencil. */
  pencilledAt: number | null;
  expiresAt: number | null;
  place: Place;
  days: BookDay[];
  /** Movements that are fixed; ways that are not here are laid anew between neighbours. */
  legs?: BookLeg[];
  kit?: readonly KitNeed[];
  /** What a hand would have to cover. */
  role?: Role;
  /** Of a candidate: hands who said yes to dates of it. */
  covers?: readonly { handId: string; dates: readonly string[] }[];
  /** Of a job on the books: days that hands do. `days` is without them; the kit is needed on them all the same. */
  handDays?: readonly BookDay[];
  /** Of a candidate: what it promises, as far as its edit hours are known. */
  edits?: readonly { what: string; due: string | null; halfHours: number }[];
  /** It is taken as second pencil: the pencils before it stand first, and that is agreed. */
  second?: boolean;
  /** What was asked for and made of its papers. */
  papers?: JobPapers;
};

/** `needs`: what it was said to need beside borders; `insurance`: a certificate is asked for; `customsList`: one is made. */
export type JobPapers = { needs: readonly DocumentKind[]; insurance: { limit: Money | null } | null; customsList: boolean };

/** A document on file, without its number. */
export type BookDocument = Pick<
  DocumentFields,
  'kind' | 'handId' | 'country' | 'from' | 'until' | 'worldwide' | 'countries' | 'limit' | 'leadDays'
>;

/** A ticketed movement: its instants are the truth. */
export type BookLeg = {
  id: string | null;
  mode: Mode;
  from: Place;
  to: Place;
  departAt: number;
  arriveAt: number;
  /** Needed before the departure and after the arrival, minutes. */
  before: number;
  after: number;
  /** A berth overnight counts as rest. */
  berth: boolean;
  /** What giving it up costs, as it was typed; empty where it was not. */
  cost: string;
};

/** A way that was typed for a pair of places; serves both directions. */
export type BookWay = {
  fromKey: string;
  toKey: string;
  mode: Mode;
  /** Of the movement itself; the time before and after comes on top by mode. */
  minutes: number;
  /** Minutes needed before and after, where the leg that typed it says so; else the default of the mode. */
  before?: number;
  after?: number;
  /** Kilometres of road, where a distance was typed. */
  roadKm?: number;
};

export type Book = {
  home: Place;
  jobs: BookJob[];
  ways: BookWay[];
  /** Unbroken rest asked for between two jobs, minutes. */
  restMinutes: number;
  personal?: readonly PersonalTime[];
  imported?: readonly ImportedTime[];
  kit?: readonly KitItem[];
  hands?: readonly BookHand[];
  /** Mine and those of hands; left out where documents are not looked at. */
  documents?: readonly BookDocument[];
  /** Public holidays at home between two dates, for lead times; asked only where one matters. */
  holidays?: (from: string, to: string) => ReadonlySet<string>;
  /** What is promised and when I can edit, without the candidate; left out where edits are not looked at. */
  edits?: EditGround;
};

/** Somebody who could be asked to cover days; `jobs` are those that they said yes to, as ink, or hold in pencil, with their days alone. */
export type BookHand = Pick<Hand, 'id' | 'name' | 'home' | 'rates' | 'insuredUntil' | 'backup'> & { jobs?: readonly BookJob[] };

/** Time of my own. `never` blocks; `settle` can be talked about. */
export type PersonalTime = { id: string | null; title: string; startAt: number; endAt: number; hardness: 'never' | 'settle' };

/** A stretch that a calendar of another program takes. `know` is what stands there tentatively. */
export type ImportedTime = {
  calendarId: string;
  calendar: string;
  title: string;
  startAt: number;
  endAt: number;
  allDay: boolean;
  hardness: 'never' | 'settle' | 'know';
};

/** What is needed of one thing. */
export type KitNeed = { item: string; count: number };

/** A unit or a counted stock that I own. */
export type KitItem = {
  id: string;
  name: string;
  owned: number;
  /** Charging, drying, formatting: minutes between last use and next use, and whether that can be done away from home. */
  resetMinutes: number;
  resetOnRoad: boolean;
  /** What it does; another thing with the same word can stand in for it. Empty where nothing can. */
  does: string;
  /** Price of renting one more, as it was typed; empty where none is known. */
  subHire: string;
  /** Half-open, epoch ms. */
  services: readonly { startAt: number; endAt: number; count: number }[];
  /** So many of them are rented and wait where they are needed, as it is tried on. */
  hired?: number;
  /** It is sent to where it is needed by first call, and not carried from home. */
  byCourier?: boolean;
};
