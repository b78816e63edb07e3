import { z } from 'zod';
import { reads } from './base.ts';
import { DateText, Id, InstantText, Place } from './parts.ts';

export const Firmness = z.enum(['ink', 'pencil', 'candidate']);
export type Firmness = z.infer<typeof Firmness>;

/** A time-distance diagram as data: lines for places, and for each job its blocks of paid time and its moves. */
export const Stringline = z.strictObject({
  from: InstantText,
  to: InstantText,
  now: InstantText,
  zone: z.string().describe('zone whose midnights are drawn: home'),
  places: z.array(
    z.strictObject({
      place: Place,
      km: z.number().describe('geodesic distance from home'),
      shiftMinutes: z.int().describe('clock there less clock at home at `from`'),
      home: z.boolean(),
    }),
  ),
  jobs: z.array(
    z.strictObject({
      jobId: Id.nullable(),
      title: z.string(),
      firmness: Firmness,
      note: z.string().describe('one or two words: inked, first pencil, candidate'),
      blocks: z.array(z.strictObject({ placeKey: z.string(), start: InstantText, end: InstantText, kind: z.string() })),
      moves: z.array(
        z.strictObject({
          fromKey: z.string(),
          toKey: z.string(),
          start: InstantText,
          end: InstantText,
          mode: z.string(),
          source: z.enum(['ticketed', 'typed', 'estimated']),
        }),
      ),
      rests: z.array(z.strictObject({ placeKey: z.string(), start: InstantText, end: InstantText })),
    }),
  ),
  clashes: z.array(
    z.strictObject({
      placeKey: z.string(),
      start: InstantText,
      end: InstantText,
      short: z.string().describe('a few words beside the ring'),
      sentence: z.string(),
      jobIds: z.array(Id),
    }),
  ),
});
export type Stringline = z.infer<typeof Stringline>;

export const road = {
  see: reads(
    'The stringline between two dates at home, with a candidate laid on if one is named.',
    z.strictObject({ from: DateText, days: z.int().min(1).max(750), candidate: Id.optional() }),
    z.strictObject({ stringline: Stringline }),
  ),
};
