import { z } from 'zod';
import { reads, writes } from './base.ts';
import { DeedKey, Id, Line, Name, Note, Nothing, Positive, Version } from './parts.ts';

/** When a deliverable is due, counted from the date of the last wrap, which itself is not counted. */
export const DueRule = z.strictObject({
  days: z.int('must be a whole number of days').min(0, 'is below zero').max(730, 'is more than two years'),
  count: z
    .enum(['calendar', 'business'])
    .describe('business days leave out weekends, public holidays at home and the own holidays of the client'),
  from: z.literal('last wrap'),
});
export type DueRule = z.infer<typeof DueRule>;

/** How the finished file is to be. Empty texts are not said. */
export const Format = z.strictObject({
  width: z.int().min(1).max(32_768).nullable().describe('pixels'),
  height: z.int().min(1).max(32_768).nullable().describe('pixels'),
  rate: z.string().max(20).describe('frames a second as it is labelled, such as 29.97 drop'),
  codec: Line,
  loudness: Line.describe('target, such as -16 LUFS, true peak -1 dBTP'),
  captions: Line,
  other: Note,
});
export type Format = z.infer<typeof Format>;

const Count = (most: number) => z.int('must be a whole number').min(0, 'is below zero').max(most, `is more than ${most}`);

/** The numbers that the stages of an edit are made from. Decimals are exact; hours are edit hours. */
export const EditNumbers = z.strictObject({
  finishedMinutes: Positive.describe('finished length, minutes'),
  editHoursPerMinute: Positive.describe('edit hours for one finished minute: selects, rough cut, fine cut and picture lock together'),
  ingestHours: Positive,
  rounds: Count(20).describe('rounds of notes that are included'),
  hoursPerRound: Positive,
  windowDays: Count(120).describe('business days that the client has for notes on a cut'),
  internalDays: Count(120).describe('business days that the internal date lies before the promised one'),
  format: Format,
  sameDay: z.boolean().describe('cut on site on the last day, between wrap and rest'),
});
export type EditNumbers = z.infer<typeof EditNumbers>;

export const TemplateFields = EditNumbers.extend({ name: Name, due: DueRule });
export type TemplateFields = z.infer<typeof TemplateFields>;

export const Template = TemplateFields.extend({
  id: Id,
  version: Version,
  uses: z.int().describe('deliverables that were made from it'),
});
export type Template = z.infer<typeof Template>;

export const templates = {
  list: reads('What I deliver: the templates, by name.', Nothing, z.strictObject({ templates: z.array(Template) })),
  save: writes(
    'Save a template; without an id a new one. What was made from it before keeps its own numbers.',
    z.strictObject({ id: Id.optional(), version: Version.optional(), fields: TemplateFields, key: DeedKey }),
    z.strictObject({ template: Template }),
  ),
  drop: writes(
    'Drop a template. What was made from it stays as it is, and the answer says how many that are.',
    z.strictObject({ id: Id, version: Version, key: DeedKey }),
    z.strictObject({ sentence: z.string() }),
  ),
};
