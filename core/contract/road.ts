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

/** Kit that is out with one job, from packing until home again or handed on. */
export const KitBar = z.strictObject({
  jobId: Id.nullable(),
  title: z.string(),
  firmness: Firmness,
  start: InstantText,
  end: InstantText,
  row: z.int().min(0).describe('bars in one row do not touch'),
  words: z.string().describe('what is out, of how many'),
  short: z.array(z.strictObject({ words: z.string(), sentence: z.string() })).describe('what is not there when it is needed'),
});
export type KitBar = z.infer<typeof KitBar>;

/** A hand who does dates of a job, or holds them in pencil. */
export const HandBar = z.strictObject({
  handId: Id,
  name: z.string(),
  jobId: Id.nullable(),
  title: z.string(),
  firmness: Firmness.describe('ink where they said yes'),
  start: InstantText,
  end: InstantText,
  row: z.int().min(0).describe('bars in one row do not touch'),
});
export type HandBar = z.infer<typeof HandBar>;

/** What other calendars take, one bar for what overlaps. */
export const BusyBar = z.strictObject({
  start: InstantText,
  end: InstantText,
  hardness: z.enum(['never', 'settle', 'know']).describe('of the hardest in it; "know" is tentative'),
  parts: z.array(z.strictObject({ calendar: z.string(), title: z.string(), start: InstantText, end: InstantText })),
});
export type BusyBar = z.infer<typeof BusyBar>;

/** Hours of editing on each date at home that has any, against what a day holds. */
export const EditLane = z.strictObject({
  ceiling: z.number().nullable().describe('hours of editing that a day holds; null where that is not known'),
  days: z.array(
    z.strictObject({
      date: DateText,
      start: InstantText,
      end: InstantText,
      hours: z.number().describe('in halves'),
      over: z.boolean().describe('more than the day holds'),
      lost: z.boolean().describe('the candidate takes this day'),
      parts: z.array(z.strictObject({ jobId: Id.nullable(), title: z.string(), hours: z.number() })),
    }),
  ),
  lost: z.string().describe('what loses its day to the candidate, in words; empty where nothing does'),
});
export type EditLane = z.infer<typeof EditLane>;

/** Whole days by which the days of a candidate are moved while it is tried on: later is above zero. */
export const ShiftDays = z.int().min(-400).max(400).optional();

export const road = {
  see: reads(
    'The stringline between two dates at home with the kit and the edit lane, a candidate laid on if one is named, as if its days were moved.',
    z.strictObject({ from: DateText, days: z.int().min(1).max(750), candidate: Id.optional(), shiftDays: ShiftDays }),
    z.strictObject({
      stringline: Stringline,
      kit: z.array(KitBar),
      hands: z.array(HandBar),
      busy: z.array(BusyBar).describe('of calendars of other programs'),
      edit: EditLane,
      laidAt: InstantText.nullable().describe('first call of the candidate as it is laid on; null where none is'),
    }),
  ),
};
