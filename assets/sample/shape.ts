/**
 * How the sample year is written down: plain data, dates relative to the day on which it is loaded, places and clients by name.
 */
import type { DocumentKind } from '../../core/contract/document-kind.ts';
import type { DocumentFields } from '../../core/contract/documents.ts';
import type { ExpenseCategory } from '../../core/contract/expenses.ts';
import type { DraftKind, ReminderTone } from '../../core/contract/invoices.ts';
import type { KitItemFields, KitNeed } from '../../core/contract/kit.ts';
import type { Knows } from '../../core/contract/knows.ts';
import type { DayKind, Money, Role } from '../../core/contract/parts.ts';
import type { ClientFields, HandFields } from '../../core/contract/people.ts';
import type { DraftChange } from '../../core/contract/quotes.ts';
import type { RateCardFields, Terms } from '../../core/contract/rates.ts';
import type { SetupFields } from '../../core/contract/setup.ts';
import type { TemplateFields } from '../../core/contract/templates.ts';
import type { LegFields, WayFields } from '../../core/contract/trips.ts';

type Weekday = 'Mon' | 'Tue' | 'Wed' | 'Thu' | 'Fri' | 'Sat' | 'Sun';
type Hour = `${number}:${number}`;

/**
 * A date at home. `week -12 Tue`: the Tuesday of the week twelve before this one (weeks begin on Monday). `today +2`. `Sat after 9`: the first
 * Saturday that is nine days from today or later. `month -15`: the first of the month fifteen before this one. `clock change`: the Saturday
 * before the newest night in which the clocks changed and no other job of the sample lies.
 */
export type SampleDate =
  | `week ${number} ${Weekday}`
  | `today ${'+' | '-'}${number}`
  | `${Weekday} after ${number}`
  | `month ${number}`
  | 'clock change';

/** `21d 09:30`: at half past nine at home, 21 days before the job's first date. `-3d 18:00`: three days after it. `40m ago`, `in 90m`: minutes from now. */
export type SampleTime = `${number}d ${Hour}` | `${number}m ago` | `in ${number}m`;

/** `0 shoot 07:00-22:30`: days after the first date, kind, call and wrap at the place; a wrap not after its call is on the next date. */
export type SampleDay = `${number} ${DayKind} ${Hour}-${Hour}`;

/** `-1 09:10`: days after the job's first date and the time on the clock of that end. */
type SampleWall = `${number} ${Hour}`;

/** What a client asks for on paper: due and sent in days before the job's first date. */
type SamplePaper = { due?: number; sent?: number; detail?: string };

/** A leg with its ends by name. */
type SampleLeg = Pick<LegFields, 'mode'> &
  Partial<Pick<LegFields, 'berth' | 'cost' | 'baggage' | 'note' | 'before' | 'after' | 'source'>> & {
    from: string;
    to: string;
    depart: SampleWall;
    arrive: SampleWall;
    fare?: Money;
  };

export type SampleKnows = Partial<Omit<Knows, 'taxForm' | 'insurance' | 'confidentiality'>> & {
  taxForm?: SamplePaper;
  insurance?: SamplePaper;
  /** `until` in days after the first date. */
  confidentiality?: { mayShow: boolean; until?: number; detail?: string };
};

/** What can be done to a job of the sample, and with what. Later subjects add their deeds here. */
export type SampleDeeds = {
  /** It comes in; with a message it is read from its words. */
  asked: { message?: string };
  knows: SampleKnows;
  legs: readonly SampleLeg[];
  /** A version is made after these changes, and sent. */
  quote: { pencil?: boolean; changes?: readonly DraftChange[]; until?: SampleTime };
  pencil: { until?: SampleTime };
  challenge: { hours: number };
  ink: { who: string; how: string; offer?: number };
  letGo: Record<string, never>;
  decline: Record<string, never>;
  cancel: { bound?: string };
  /** To so many days later, the weekday kept by whole weeks. */
  postpone: { days: number };
  /** My hours as planned, of all dates or of some; `instead` has what was worked, by days after the first date. */
  worked: { days?: readonly number[]; instead?: Readonly<Record<number, `${Hour}-${Hour}`>> };
  /** Overtime that was asked for, and what was said. */
  overtime: { day: number; minutes: number; who: string; said: boolean };
  /** In the home currency. */
  spent: readonly { day: number; category: ExpenseCategory; what: string; amount: string; billed?: boolean }[];
  /** The bill at wrap, if no other kind is named. `rate` is the home currency for one unit, where they differ. */
  bill: { kind?: DraftKind; rate?: string };
  /** What is open of the newest bill of its kind, so much of it, or so much over it. */
  paid: { kind?: DraftKind; amount?: string; over?: string; rate?: string; how?: string };
  remind: { tone: ReminderTone };
  dispute: { why: string | null };
  /** Given back on the first line of the bill at wrap. */
  credit: { amount: string; reason: string };
  writeOff: { reason: string };
  /** The deposit is credited whole, and what was paid of it goes back. */
  giveBack: { reason: string };
};
export type SampleDeed = keyof SampleDeeds;

/** When, what, and with what. A step whose time is still to come on the day of loading has not happened. */
type SampleStep = { [D in SampleDeed]: readonly [at: SampleTime, deed: D, given: SampleDeeds[D]] }[SampleDeed];

/** A deliverable with its promised date, in days after the job's first date, and its edit hours
 * where they are not among its edit days. */
type SampleEdit = {
  what: string;
  due: number;
  hours?: string;
  /** Days after the first date on which it was handed over; the eve of its date if absent, null while it is still open. */
  handed?: number | null;
};

export type SampleJob = {
  key: string;
  title: string;
  /** Name of a client of the sample, or of somebody who is no client yet. */
  client: string;
  place: string;
  role?: Role;
  first: SampleDate;
  days: readonly SampleDay[];
  presets?: readonly string[];
  kit?: readonly KitNeed[];
  budget?: { amount: number; currency: string; per: 'day' | 'job' };
  deliverables?: readonly (string | SampleEdit)[];
  notes?: string;
  steps: readonly SampleStep[];
};

export type SampleSetup = Omit<SetupFields, 'home'> & { home: string };
/** A card over the defaults of the trade, written on the date `known`; its last day is the one before `until`. */
export type SampleCard = Partial<Omit<RateCardFields, 'validFrom' | 'validTo' | 'terms'>> &
  Pick<RateCardFields, 'name' | 'role' | 'currency' | 'dayRate'> & {
    terms?: Partial<Terms>;
    from: SampleDate;
    until?: SampleDate;
    known: SampleDate;
  };
/** A client over a blank one. */
export type SampleClient = Partial<Omit<ClientFields, 'closed'>> & Pick<ClientFields, 'name' | 'contacts' | 'country'>;
export type SampleHand = Partial<Omit<HandFields, 'home' | 'rates' | 'insuredUntil'>> & {
  name: string;
  home: string;
  rates: readonly { role: Role; dayRate: string; currency: string; from: SampleDate }[];
  insuredUntil: SampleDate | null;
};
export type SampleThing = Partial<Omit<KitItemFields, 'services' | 'bought' | 'units'>> & {
  name: string;
  /** Of its units, where they have one. */
  serials?: readonly string[];
  bought?: SampleDate;
  services?: readonly { from: SampleDate; to: SampleDate; count: number }[];
};
export type SamplePreset = { name: string; needs: readonly KitNeed[] };
export type SampleWay = Omit<WayFields, 'from' | 'to'> & { from: string; to: string };
/** A document of mine, from and to dates of the sample. */
export type SampleDocument = Partial<Omit<DocumentFields, 'from' | 'until' | 'handId'>> & {
  kind: DocumentKind;
  from?: SampleDate;
  until: SampleDate;
};

/** Time of my own, whole days, both dates included. */
export type SamplePersonal = {
  title: string;
  from: SampleDate;
  days: number;
  hardness: 'never' | 'settle';
  note?: string;
  known: SampleDate;
};

export type Sample = {
  /** The date on which the books begin. */
  begins: SampleDate;
  setup: SampleSetup;
  cards: readonly SampleCard[];
  clients: readonly SampleClient[];
  hands: readonly SampleHand[];
  things: readonly SampleThing[];
  presets: readonly SamplePreset[];
  ways: readonly SampleWay[];
  personal: readonly SamplePersonal[];
  documents: readonly SampleDocument[];
  templates: readonly TemplateFields[];
  jobs: readonly SampleJob[];
};
