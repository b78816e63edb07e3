import { z } from 'zod';
import { reads, writes } from './base.ts';
import { Confirmation, Id, InstantText, Line, Money, Nothing, Place, Positive, Version, WallTime } from './parts.ts';

export const Mode = z.enum(['drive', 'flight', 'rail', 'ferry', 'ride']);
export type Mode = z.infer<typeof Mode>;

/** A way once typed for a pair of places; it serves both directions and is used instead of an estimate. */
export const WayFields = z.strictObject({
  from: Place,
  to: Place,
  mode: Mode,
  minutes: z.int('must be whole minutes').min(1, 'must be at least a minute').max(20_000, 'is longer than two weeks'),
  distance: Positive.nullable().describe('in the unit of my setup'),
  note: Line,
});
export type WayFields = z.infer<typeof WayFields>;
export const Way = WayFields.extend({ id: Id, version: Version });
export type Way = z.infer<typeof Way>;

/** One movement of a job. Wall times are on the clock of their end; a ticketed leg stands, a typed one says how long that way takes. */
export const LegFields = z.strictObject({
  mode: Mode,
  from: Place,
  to: Place,
  depart: WallTime.describe('on the clock of `from`'),
  arrive: WallTime.describe('on the clock of `to`'),
  source: z.enum(['ticketed', 'typed']).default('ticketed'),
  before: z
    .int()
    .min(0)
    .max(1440)
    .nullable()
    .default(null)
    .describe('minutes needed before the departure; null for the default of the mode'),
  after: z.int().min(0).max(1440).nullable().default(null).describe('minutes needed after the arrival; null for the default of the mode'),
  berth: z.boolean().default(false).describe('a berth overnight counts as rest'),
  cost: Line.default('').describe('what giving it up costs'),
  distance: Positive.nullable().optional().describe('as it was driven, in the unit of my setup'),
  fare: Money.nullable().optional().describe('what it costs to go'),
  baggage: Line.optional().describe('what the fare carries, as "two bags of 23 kg"'),
  note: Line.default(''),
});
export type LegFields = z.infer<typeof LegFields>;
/** What a carrier said after the ticket was bought, and the times that were ticketed. A cancelled leg stands on the trip and is counted nowhere. */
export const LegNews = z.strictObject({
  kind: z.enum(['moved', 'cancelled']),
  at: InstantText.describe('when it was noted'),
  was: z.strictObject({ depart: WallTime, arrive: WallTime }),
});
export type LegNews = z.infer<typeof LegNews>;
export const Leg = LegFields.extend({ id: Id, jobId: Id, version: Version, news: LegNews.nullable() });
export type Leg = z.infer<typeof Leg>;

/** Words of a confirmation that were understood, as offsets in the pasted text, and as what. */
export const TicketSpan = z.strictObject({ start: z.int().min(0), end: z.int().min(0), meaning: z.string() });
export type TicketSpan = z.infer<typeof TicketSpan>;
/** What a confirmation leaves open of a leg. */
export const LegAsk = z.strictObject({ field: z.enum(['mode', 'from', 'to', 'depart', 'arrive']), question: z.string() });
export type LegAsk = z.infer<typeof LegAsk>;
/** A leg as read from a confirmation; null for what is not in its words. It can be kept as it is where nothing is asked. */
export const ReadLeg = z.strictObject({
  mode: Mode.nullable(),
  number: z.string().nullable().describe('of the flight or train, as "QX 412"'),
  from: Place.nullable(),
  to: Place.nullable(),
  depart: WallTime.nullable().describe('on the clock of `from`'),
  arrive: WallTime.nullable().describe('on the clock of `to`'),
  berth: z.boolean(),
  asks: z.array(LegAsk),
  spans: z.array(TicketSpan),
});
export type ReadLeg = z.infer<typeof ReadLeg>;

export const trips = {
  readConfirmation: reads(
    'Read the legs out of a confirmation of an airline, a railway or a ferry. What is not clear is asked, nothing is guessed, nothing is saved.',
    z.strictObject({ jobId: Id.optional().describe('a name that is one of its places means that place'), text: Confirmation }),
    z.strictObject({
      legs: z.array(ReadLeg),
      total: Money.nullable().describe('what was paid in all'),
      spans: z.array(TicketSpan),
      sentence: z.string().describe('what was found and what is asked, in words'),
    }),
  ),
  legs: reads(
    'The legs of a job in order of time, and what does not hang together: two legs that jump or run backwards.',
    z.strictObject({ jobId: Id }),
    z.strictObject({ legs: z.array(Leg), breaks: z.array(z.strictObject({ first: Id, second: Id, sentence: z.string() })) }),
  ),
  setLeg: writes(
    'Save a leg of a job: without an id a new one, with id and version a change.',
    z.strictObject({ jobId: Id, id: Id.optional(), version: Version.optional(), fields: LegFields }),
    z.strictObject({ leg: Leg }),
  ),
  legNews: writes(
    'A ticketed leg goes at other times now, or does not go at all; or it goes as ticketed after all.',
    z.strictObject({
      id: Id,
      version: Version,
      told: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('moved'), depart: WallTime, arrive: WallTime }),
        z.strictObject({ kind: z.literal('cancelled') }),
        z.strictObject({ kind: z.literal('as ticketed') }),
      ]),
    }),
    z.strictObject({ leg: Leg }),
  ),
  dropLeg: writes('Take a leg off the books.', z.strictObject({ id: Id, version: Version }), Nothing),
  ways: reads('Ways that were typed.', Nothing, z.strictObject({ ways: z.array(Way) })),
  setWay: writes(
    'Remember how long a way takes. A pair of places and mode that is known already is changed.',
    z.strictObject({ fields: WayFields, version: Version.optional() }),
    z.strictObject({ way: Way }),
  ),
  forgetWay: writes('Forget a typed way; the estimate is used again.', z.strictObject({ id: Id, version: Version }), Nothing),
  estimate: reads(
    'How long the drive between two places takes: typed if it was typed, else a band from the geodesic distance.',
    z.strictObject({ from: Place, to: Place }),
    z.strictObject({
      source: z.enum(['typed', 'estimated', 'same place']),
      shortMinutes: z.int(),
      longMinutes: z.int(),
      km: z.number(),
      sentence: z.string(),
    }),
  ),
};
