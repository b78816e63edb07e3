import { z } from 'zod';
import { reads, writes } from './base.ts';
import { Country, DateText, DeedKey, Id, InstantText, Line, Money, Name, Nothing, Note, Positive, Version } from './parts.ts';
import { ImportRow } from './people.ts';

const Count = z.int('must be a whole number').min(1, 'must be at least one').max(10_000, 'is more than 10,000');

/** Dates at home, both included, on which so many are not there. */
const Service = z.strictObject({ from: DateText, to: DateText, count: Count });

const Owner = z.enum(['own', 'borrowed', 'sub-hire']);

/** One unit of a thing, told from the others by its serial. What is null is as the thing says. */
export const KitUnit = z.strictObject({
  serial: Name,
  place: Line.default('').describe('where it is kept, or who holds it'),
  owner: Owner.nullable().default(null),
  services: z
    .array(z.strictObject({ from: DateText, to: DateText }))
    .max(50)
    .default([])
    .describe('dates at home, both included, on which it is not there'),
  bought: DateText.nullable().default(null),
  value: Money.nullable().default(null),
  wearPerDay: Money.nullable().default(null),
  note: Line.default(''),
});
export type KitUnit = z.infer<typeof KitUnit>;

/** What a lithium battery is, as those who carry it by air tell them apart. */
export const Battery = z.enum(['none', 'in device', 'spare', 'power bank']);
const Millimetres = z.int('must be whole millimetres').min(1, 'must be at least a millimetre').max(20_000, 'is longer than 20 m');

export const KitItemFields = z.strictObject({
  name: Name,
  does: Line.describe('what it does; another thing with the same word can stand in for it').default(''),
  owned: z.int('must be a whole number').min(0, 'is below zero').max(10_000, 'is more than 10,000'),
  units: z.array(KitUnit).max(500).default([]).describe('those with a serial; a counted stock has none'),
  resetMinutes: z.int('must be whole minutes').min(0).max(10_080).default(120).describe('between last use and next use; batteries 360'),
  resetOnRoad: z.boolean().default(false).describe('the reset can be done away from home'),
  subHire: Line.default('').describe('price of renting one more, as told'),
  services: z.array(Service).max(200).default([]),
  owner: Owner.default('own'),
  grams: z
    .int('must be whole grams')
    .min(1, 'must be at least a gram')
    .max(1_000_000, 'is more than a tonne')
    .nullable()
    .default(null)
    .describe('weight of one'),
  size: z
    .strictObject({ length: Millimetres, width: Millimetres, height: Millimetres })
    .nullable()
    .default(null)
    .describe('of one, in millimetres'),
  battery: Battery.default('none'),
  wattHours: Positive.nullable().default(null).describe('of one battery'),
  drawWatts: Positive.nullable().default(null).describe('what one draws in use'),
  value: Money.nullable().default(null).describe('of one, as new'),
  origin: Country.nullable().default(null).describe('where it was made, as customs lists ask'),
  bought: DateText.nullable().default(null),
  wearPerDay: Money.nullable().default(null).describe('what a shoot day wears off one'),
  note: Note.default(''),
});
export type KitItemFields = z.infer<typeof KitItemFields>;
export const KitItem = KitItemFields.extend({ id: Id, version: Version });
export type KitItem = z.infer<typeof KitItem>;

export const KitNeed = z.strictObject({ item: z.string().trim().min(1).max(120).describe('id or name of a thing'), count: Count });
export type KitNeed = z.infer<typeof KitNeed>;

export const PresetFields = z.strictObject({
  name: Name,
  needs: z.array(KitNeed).min(1, 'is empty; a preset has at least one thing').max(200),
});
export const Preset = PresetFields.extend({ id: Id, version: Version });
export type Preset = z.infer<typeof Preset>;

/** Where the units of one thing are at this moment. */
export const Whereabouts = z.strictObject({
  id: Id,
  home: z.int().min(0),
  out: z.array(z.strictObject({ jobId: Id, title: z.string(), count: z.int(), until: InstantText })),
  service: z.array(z.strictObject({ count: z.int(), to: DateText })),
  missing: z.array(z.strictObject({ jobId: Id, title: z.string(), count: z.int() })).describe('did not come back with a job'),
});
export type Whereabouts = z.infer<typeof Whereabouts>;

const Pieces = z.int('must be a whole number').min(0, 'is below zero').max(10_000, 'is more than 10,000');
/** What became of a unit, or of the counted rest of a thing (serial empty). */
const Tick = z.strictObject({
  item: Id,
  serial: Line.default(''),
  out: Pieces.describe('packed; 0 for not packed'),
  back: Pieces.describe('of those'),
  missing: Pieces.describe('of those, known not to have come back'),
});
export const PackRow = Tick.extend({
  name: z.string(),
  place: z.string().describe('where a unit is kept'),
  needed: z.int().describe('of the thing, by the job'),
  toPack: z.int().describe('by this row'),
});
export type PackRow = z.infer<typeof PackRow>;
const PackList = z.strictObject({ rows: z.array(PackRow), homeAt: InstantText.nullable().describe('when one is home again') });

const Needs = z.strictObject({ needs: z.array(KitNeed.extend({ name: z.string() })) });

export const kit = {
  list: reads(
    'Everything that I own, and the presets, by name.',
    Nothing,
    z.strictObject({ items: z.array(KitItem), presets: z.array(Preset) }),
  ),
  whereabouts: reads(
    'Where everything is now: out with a job in ink from packing until home again, in service, or at home.',
    Nothing,
    z.strictObject({ items: z.array(Whereabouts) }),
  ),
  bring: writes(
    'Bring in things from a CSV file, a line for each thing or each unit. With `try` nothing is saved and the fate of each row is told.',
    z.strictObject({ text: z.string().min(1, 'is empty').max(1_900_000, 'is longer than 1.9 MB; split it'), try: z.boolean() }),
    z.strictObject({ rows: z.array(ImportRow), added: z.int() }),
  ),
  save: writes(
    'Save a thing: without an id a new one, with id and version a change.',
    z.strictObject({ id: Id.optional(), version: Version.optional(), fields: KitItemFields }),
    z.strictObject({ item: KitItem }),
  ),
  drop: writes(
    'Take a thing off the list. Refused while a job still to come needs it.',
    z.strictObject({ id: Id, version: Version }),
    Nothing,
  ),
  putBack: writes(
    'Put a thing that was taken off on the list again, as it was, with what jobs that are over had of it.',
    z.strictObject({ id: Id }),
    z.strictObject({ item: KitItem }),
  ),
  savePreset: writes(
    'Save a preset: without an id a new one, with id and version a change.',
    z.strictObject({ id: Id.optional(), version: Version.optional(), fields: PresetFields }),
    z.strictObject({ preset: Preset }),
  ),
  dropPreset: writes('Take a preset off the list; jobs keep what it stood for.', z.strictObject({ id: Id, version: Version }), Nothing),
  forJob: reads('What a job needs.', z.strictObject({ jobId: Id }), Needs),
  packList: reads('What is to be packed for a job, what was, and what came back.', z.strictObject({ jobId: Id }), PackList),
  pack: writes(
    'Tick things and units of a job out, back or missing; what is not named stays.',
    z.strictObject({ jobId: Id, ticks: z.array(Tick).min(1).max(1000), key: DeedKey }),
    PackList,
  ),
  setForJob: writes(
    'Say what a job needs, in place of what was said before. A preset is expanded into its things; the larger count of a thing counts.',
    z.strictObject({ jobId: Id, needs: z.array(KitNeed).max(200).default([]), presets: z.array(Name).max(20).default([]), key: DeedKey }),
    Needs,
  ),
};
