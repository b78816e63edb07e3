import { z } from 'zod';
import { Country, DateText, DayKind, Id, InstantText, Place } from './parts.ts';
import { DocumentKind } from './document-kind.ts';
import { EditTryOn } from './deliverables.ts';
import { JobDays } from './jobs.ts';
import { KitNeed } from './kit.ts';
import { LegFields, Mode } from './trips.ts';

const Key = z.string().max(80);
const Item = z.string().max(120);
const Count = z.int().min(1).max(10_000);

/** A day of the candidate, or of a job on the books, as if it stood on another date or were called off. */
const DayMoved = z.strictObject({
  jobId: Id.nullable().default(null).describe('null for the candidate'),
  date: DateText,
  kind: DayKind,
  to: DateText.nullable().describe('null: called off'),
});
export type DayMoved = z.infer<typeof DayMoved>;

/** A hand as if they had said yes to dates of the candidate. */
const HandAsked = z.strictObject({ handId: Id, dates: z.array(DateText).min(1).max(366) });

/** Says which ticket is meant, stored or not. */
const TicketKey = z.strictObject({ fromKey: Key, toKey: Key, departAt: InstantText });
export type TicketKey = z.infer<typeof TicketKey>;

/** Changes to try on before anything is saved. */
export const TryOn = z.strictObject({
  restMinutes: z
    .int()
    .min(0)
    .max(24 * 60)
    .optional(),
  firstCallLaterMinutes: z
    .int()
    .min(0)
    .max(48 * 60)
    .optional()
    .describe('of the first stay'),
  lastWrapEarlierMinutes: z
    .int()
    .min(0)
    .max(24 * 60)
    .optional()
    .describe('of the last stay'),
  shiftDays: z.int().min(-400).max(400).optional().describe('all days of the candidate with their wall times; tickets stay'),
  daysMoved: z.array(DayMoved).max(50).optional(),
  ways: z
    .array(z.strictObject({ fromKey: Key, toKey: Key, mode: Mode, minutes: z.int().min(1).max(20_000) }))
    .max(20)
    .optional()
    .describe('ways as if they had been typed; both directions'),
  legs: z.array(LegFields).max(20).optional().describe('movements of the candidate as if they were on its trip'),
  withoutTickets: z.array(TicketKey).max(20).optional().describe('tickets as if they were changed or given up; what that costs is said'),
  kitExtra: z
    .array(z.strictObject({ item: Item, count: Count }))
    .max(50)
    .optional()
    .describe('things as if so many more were owned'),
  kitInstead: z
    .array(z.strictObject({ item: Item, other: Item, count: Count }))
    .max(50)
    .optional()
    .describe('so many of one thing met by another'),
  couriers: z.array(Item).max(50).optional().describe('things that are sent to where they are needed, and not carried from home'),
  hands: z.array(HandAsked).max(20).optional(),
  withJobs: z
    .array(
      z.strictObject({
        title: z.string().trim().min(1).max(120),
        place: Place,
        days: JobDays.min(1, 'has no day; give at least one'),
        firmness: z.enum(['ink', 'pencil']).default('ink'),
        legs: z.array(LegFields).max(60).default([]),
        kit: z.array(KitNeed).max(200).default([]),
      }),
    )
    .max(50)
    .optional()
    .describe('jobs as if they were on the books too'),
  withoutJobs: z.array(Id).max(20).optional().describe('jobs as if they were not on the books'),
  withoutPersonal: z.array(Id).max(20).optional().describe('own time as if it were moved out of the way'),
  documents: z
    .array(
      z.strictObject({
        kind: DocumentKind,
        country: Country.nullable().default(null),
        asked: z.boolean().default(false).describe('still to be asked for, so that its lead time counts; else it is at hand'),
      }),
    )
    .max(20)
    .optional()
    .describe('documents of mine as if they were on file, and good for the days'),
  customsList: z.boolean().optional().describe('as if the customs list were made'),
  withoutImported: z.array(Key).max(1000).optional().describe('times of other calendars as if they were moved out of the way'),
  edits: EditTryOn.optional().describe('edits as if they were moved or done by others, or my edit days were longer'),
  asSecondPencil: z.boolean().optional().describe('the candidate stands behind every pencil that is before it'),
  stillOpen: z.boolean().optional().describe('they would still take an answer though their reply-by is past'),
});
export type TryOn = z.infer<typeof TryOn>;
