import { z } from 'zod';
import { reads, writes } from './base.ts';
import { DateText, Id, InstantText, Name, Nothing, Version, WallTime, Zone } from './parts.ts';
import { whys } from '../calendars/left-out.ts';

/** Longest path that is kept, characters. */
const PATH = 1_000;
const Path = z
  .string('must be text')
  .trim()
  .min(1, 'is empty; type where it lies')
  .max(PATH, 'is longer than 1,000 characters')
  .refine((text) => !/[\u0000-\u001f\u007f]/.test(text), 'holds characters that cannot be seen; type it anew');

/** A calendar of another program: a file, or a folder of them, on this computer. */
export const CalendarFields = z.strictObject({
  name: Name,
  path: Path.describe('of an .ics file or a folder of them; never fetched from the net'),
  zone: Zone.describe('clock of whole days and of times without a zone'),
  hardness: z
    .enum(['never', 'settle', 'ignore all-day'])
    .describe('"never" blocks a job, "settle" can be talked about, "ignore all-day" is that without whole days'),
  isOn: z.boolean(),
});
export type CalendarFields = z.infer<typeof CalendarFields>;

export const LeftOut = z.strictObject({ why: z.enum(whys), count: z.int(), example: z.string() });
export type LeftOut = z.infer<typeof LeftOut>;
export const CalendarTrouble = z.strictObject({ what: z.string(), kept: z.string(), todo: z.string() });
export type CalendarTrouble = z.infer<typeof CalendarTrouble>;

export const Calendar = CalendarFields.extend({
  id: Id,
  version: Version,
  readAt: InstantText.nullable().describe('when it was last read to the end'),
  busy: z.int().describe('stretches of time that it takes, from a year ago to three years ahead'),
  leftOut: z.array(LeftOut),
  trouble: CalendarTrouble.nullable().describe('why it cannot be read; what was read before still counts'),
});
export type Calendar = z.infer<typeof Calendar>;

/** One event as it is written for other programs: a stretch between wall times on one clock, or a date. */
export const OutEvent = z.strictObject({
  uid: z.string(),
  status: z.enum(['TENTATIVE', 'CONFIRMED', 'CANCELLED']),
  title: z.string(),
  place: z.string(),
  note: z.string(),
  when: z.union([
    z.strictObject({ from: WallTime, to: WallTime, zone: Zone, fromAt: z.int(), toAt: z.int() }),
    z.strictObject({ date: DateText }),
  ]),
});
export type OutEvent = z.infer<typeof OutEvent>;

export const CalendarOut = z.strictObject({
  folder: z.string(),
  file: z.string().nullable().describe('what is written; null while nothing is'),
  isOn: z.boolean(),
  events: z.int(),
  writtenAt: InstantText.nullable(),
  trouble: CalendarTrouble.nullable(),
  feed: z
    .strictObject({ address: z.string(), port: z.int(), trouble: CalendarTrouble.nullable() })
    .nullable()
    .describe('null while it is off'),
  version: z.int().describe('0 before it was ever saved'),
});
export type CalendarOut = z.infer<typeof CalendarOut>;

const OutAnswer = z.strictObject({ out: CalendarOut });
const OutVersion = { version: z.int().min(0) };

export const calendars = {
  list: reads(
    'Calendars of other programs, and where my own dates are written.',
    Nothing,
    z.strictObject({ calendars: z.array(Calendar), out: CalendarOut }),
  ),
  save: writes(
    'Save a calendar of another program and read it: without an id new, with id and version a change.',
    z.strictObject({ id: Id.optional(), version: Version.optional(), fields: CalendarFields }),
    z.strictObject({ calendar: Calendar }),
  ),
  drop: writes(
    'Take a calendar off; what it took is free again. Its file is left alone.',
    z.strictObject({ id: Id, version: Version }),
    Nothing,
  ),
  readAgain: writes('Read a calendar again now.', z.strictObject({ id: Id }), z.strictObject({ calendar: Calendar })),
  saveOut: writes(
    'Say whether and where my own dates are written, and write them.',
    z.strictObject({ ...OutVersion, folder: Path, isOn: z.boolean() }),
    OutAnswer,
  ),
  openFeed: writes('Serve that file to programs on this computer, under a new address.', z.strictObject(OutVersion), OutAnswer),
  closeFeed: writes('Stop serving it; its address is worth nothing from then on.', z.strictObject(OutVersion), OutAnswer),
};
