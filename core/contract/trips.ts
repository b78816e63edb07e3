import { z } from 'zod';
import { reads, writes } from './base.ts';
import { Id, Line, Nothing, Place, Positive, Version } from './parts.ts';

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

export const trips = {
  ways: reads('Ways that were typed.', Nothing, z.strictObject({ ways: z.array(Way) })),
  setWay: writes('Remember how long a way takes. A pair of places and mode that is known already is changed.', z.strictObject({ fields: WayFields, version: Version.optional() }), z.strictObject({ way: Way })),
  forgetWay: writes('Forget a typed way; the estimate is used again.', z.strictObject({ id: Id, version: Version }), Nothing),
  estimate: reads(
    'How long the drive between two places takes: typed if it was typed, else a band from the geodesic distance.',
    z.strictObject({ from: Place, to: Place }),
    z.strictObject({ source: z.enum(['typed', 'estimated', 'same place']), shortMinutes: z.int(), longMinutes: z.int(), km: z.number(), sentence: z.string() }),
  ),
};
