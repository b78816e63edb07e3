import { z } from 'zod';
import { reads, writes } from './base.ts';
import { isDate } from '../time/read.ts';
import { dateLater } from '../time/wall.ts';
import { JobRow } from './jobs.ts';
import {
  Country,
  Currency,
  DateText,
  Id,
  InstantText,
  Line,
  Money,
  Name,
  Note,
  Nothing,
  Percent,
  Place,
  Positive,
  Role,
  Version,
} from './parts.ts';

const Contact = z.strictObject({ name: Line, email: Line, phone: Line, what: Line.describe('what they do there, e.g. accounts') });

/** How the client is taxed; the sender's own state stands in Setup. */
const TaxTreatment = z.enum(['charge', 'exempt', 'reverse charge']);

/** Papers that a client always asks for before they pay or let one in. */
const AlwaysAsks = z.strictObject({
  purchaseOrder: z.boolean(),
  insurance: z.boolean(),
  taxForm: z.boolean(),
  confidentiality: z.boolean(),
});

/** The most own holidays that are kept of a client, and the longest of them in days. */
export const CLOSED_MOST = 60;
const CLOSED_DAYS = 366;

/** A run of dates on which a client does not work, both ends counted, besides weekends and public holidays. */
export const Closed = z
  .strictObject({ from: DateText, to: DateText, name: Line })
  .refine(({ from, to }) => to >= from, { path: ['to'], error: 'is before its first date' })
  // What is no date has its own sentence already.
  .refine(({ from, to }) => !isDate(from) || to < dateLater(from, CLOSED_DAYS), {
    path: ['to'],
    error: `is more than ${CLOSED_DAYS - 1} days after its first date`,
  });
export type Closed = z.infer<typeof Closed>;

export const ClientFields = z.strictObject({
  name: Name,
  contacts: z.array(Contact).max(20),
  billing: z.strictObject({ name: Line, address: Note, email: Line }),
  country: Country.nullable(),
  taxId: Line,
  tax: TaxTreatment,
  taxReason: Line.describe('printed on the paper when no tax is charged'),
  currency: Currency.nullable(),
  payDays: z.int().min(0).max(180).nullable().describe('null: as the rate card says'),
  depositPercent: Percent.nullable().describe('null: as the rate card says'),
  asks: AlwaysAsks,
  closed: z.array(Closed).max(CLOSED_MOST).optional().describe('their own holidays: left out where notice is counted in business days'),
  notes: Note,
});
export type ClientFields = z.infer<typeof ClientFields>;
export const Client = ClientFields.extend({ id: Id, version: Version });
export type Client = z.infer<typeof Client>;

export const HandRate = z.strictObject({ role: Role, dayRate: Positive, currency: Currency, from: DateText });
export const HandFields = z.strictObject({
  name: Name,
  email: Line,
  phone: Line,
  rates: z.array(HandRate).max(20).describe('what a day costs me, by role and date'),
  home: Place.nullable(),
  ownKit: Note,
  taxForm: z.boolean().describe('tax form on file'),
  insuredUntil: DateText.nullable(),
  payDays: z.int().min(0).max(180),
  backup: z.boolean().describe('can take over when I am ill'),
  notes: Note,
});
export type HandFields = z.infer<typeof HandFields>;
export const Hand = HandFields.extend({ id: Id, version: Version });
export type Hand = z.infer<typeof Hand>;

const Kind = z.enum(['client', 'hand']);

/** One card or row of a file, and what would become of it. */
export const ImportRow = z.strictObject({
  line: z.int().describe('line of the file that it begins on'),
  name: z.string(),
  fate: z.enum(['new', 'same as', 'refused']),
  why: z.string().describe('who it is the same as, or what is wrong with it'),
});
export type ImportRow = z.infer<typeof ImportRow>;

export const Double = z.strictObject({
  kind: Kind,
  a: z.strictObject({ id: Id, name: z.string() }),
  b: z.strictObject({ id: Id, name: z.string() }),
  why: z.string(),
});
export type Double = z.infer<typeof Double>;

export const people = {
  clients: reads(
    'Clients by name, with how many jobs they gave.',
    z.strictObject({ text: Line.optional() }),
    z.strictObject({ clients: z.array(Client.extend({ jobs: z.int() })) }),
  ),
  client: reads(
    'One client with their jobs and what they asked for last time.',
    z.strictObject({ id: Id }),
    z.strictObject({
      client: Client,
      jobs: z.array(JobRow),
      made: z.array(Money).describe('gross of made quotes that were inked, by currency'),
    }),
  ),
  saveClient: writes(
    'Save a client: without an id a new one, with id and version a change.',
    z.strictObject({ id: Id.optional(), version: Version.optional(), fields: ClientFields }),
    z.strictObject({ client: Client }),
  ),
  hands: reads('Hands by name.', z.strictObject({ text: Line.optional() }), z.strictObject({ hands: z.array(Hand) })),
  hand: reads('One hand, put away or not.', z.strictObject({ id: Id }), z.strictObject({ hand: Hand })),
  saveHand: writes(
    'Save a hand: without an id a new one, with id and version a change.',
    z.strictObject({ id: Id.optional(), version: Version.optional(), fields: HandFields }),
    z.strictObject({ hand: Hand }),
  ),
  putAway: writes(
    'Put somebody away: no longer listed, kept with their jobs, and can be taken out again.',
    z.strictObject({ kind: Kind, id: Id, version: Version }),
    Nothing,
  ),
  takeOut: writes('Take somebody out again that was put away.', z.strictObject({ kind: Kind, id: Id }), Nothing),
  away: reads(
    'Everybody that was put away, newest first.',
    Nothing,
    z.strictObject({ away: z.array(z.strictObject({ kind: Kind, id: Id, name: z.string(), at: InstantText })) }),
  ),
  bring: writes(
    'Bring in people from a CSV or vCard file. With `try` nothing is saved and the fate of each row is told.',
    z.strictObject({
      kind: Kind,
      format: z.enum(['csv', 'vcard']),
      text: z.string().min(1, 'is empty').max(1_900_000, 'is longer than 1.9 MB; split it'),
      try: z.boolean(),
    }),
    z.strictObject({ rows: z.array(ImportRow), added: z.int() }),
  ),
  doubles: reads('Pairs that look like the same person or business.', Nothing, z.strictObject({ doubles: z.array(Double) })),
  merge: writes(
    'Fold one client into another: jobs move, empty fields are filled, the other is put away.',
    z.strictObject({ keep: Id, fold: Id, keepVersion: Version, foldVersion: Version }),
    z.strictObject({ client: Client }),
  ),
};
