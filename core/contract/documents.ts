/**
 * Documents with their dates, and what goes with a job across a border: the customs list and the insurance certificate.
 * The program says what is on file and whom to ask; it never says that one may enter, work or fly.
 */
import { z } from 'zod';
import { reads, writes, writesFile } from './base.ts';
import { DocumentKind } from './document-kind.ts';
import { Job, Paper } from './jobs.ts';
import { Country, Currency, DateText, DeedKey, FileBytes, Id, Line, Money, Name, Nothing, Note, Positive, Version } from './parts.ts';

export const DocumentFields = z.strictObject({
  kind: DocumentKind,
  title: Line.default('').describe('tells it from others of its kind'),
  handId: Id.nullable().default(null).describe('whose it is; null for mine'),
  number: Line.default('').describe('sensitive; empty where it is not kept'),
  issuedBy: Line.default(''),
  country: Country.nullable().default(null).describe('that issued it'),
  from: DateText.nullable().default(null).describe('issued, or valid from'),
  until: DateText.nullable().default(null).describe('the last day on which it is valid; null while it is not noted'),
  worldwide: z.boolean().default(false),
  countries: z
    .array(Country)
    .max(100)
    .default([])
    .describe('where it holds, where that is limited; what a right to work or a carnet is for'),
  limit: Money.nullable().default(null).describe('of an insurance'),
  leadDays: z
    .int('must be a whole number of days')
    .min(0, 'is below zero')
    .max(400, 'is more than 400')
    .nullable()
    .default(null)
    .describe('business days that a new one takes, as told; null where what is on file counts'),
  note: Note.default(''),
});
export type DocumentFields = z.infer<typeof DocumentFields>;
export const Document = DocumentFields.extend({
  id: Id,
  version: Version,
  scan: z.strictObject({ id: Id, name: z.string(), type: z.string(), bytes: z.int() }).nullable(),
});
export type Document = z.infer<typeof Document>;

/** What one unit of a currency was worth in that of the whole list, on a date. */
export const ListRate = z.strictObject({
  currency: Currency,
  rate: Positive.refine((text) => Number(text) > 0, 'is zero; give what one unit is worth'),
  date: DateText,
});
export type ListRate = z.infer<typeof ListRate>;

/** One line of a customs list: a unit with its serial, or so many of a counted thing. Amounts are of all of the line. */
export const CustomsRow = z.strictObject({
  number: z.int().describe('counted from one'),
  name: z.string(),
  serial: z.string(),
  count: z.int(),
  grams: z.int().nullable(),
  origin: Country.nullable(),
  value: Money.nullable(),
  missing: z.array(z.enum(['serial', 'weight', 'origin', 'value'])),
});
export type CustomsRow = z.infer<typeof CustomsRow>;

export const CustomsList = z.strictObject({
  rows: z.array(CustomsRow),
  pieces: z.int(),
  grams: z.int().describe('of the lines whose weight is known'),
  values: z.array(Money).describe('by currency, of the lines whose value is known'),
  total: Money.nullable().describe('in all, where one currency or the dated rates allow it'),
  rates: z.array(ListRate),
  missing: z.array(z.string()).describe('what is not known, in sentences'),
  packed: z.boolean().describe('the units are those that were ticked out; else the first on the kit list'),
});
export type CustomsList = z.infer<typeof CustomsList>;

const Rates = z.array(ListRate).max(20).default([]);
const OneDocument = z.strictObject({ document: Document });
const One = { id: Id, version: Version, key: DeedKey };

export const documents = {
  list: reads(
    'Documents on file, mine first, those that run out first before others.',
    Nothing,
    z.strictObject({ documents: z.array(Document) }),
  ),
  save: writes(
    'Save a document: without an id a new one, with id and version a change. Its number stands in no history and no log.',
    z.strictObject({ id: Id.optional(), version: Version.optional(), fields: DocumentFields, key: DeedKey }),
    OneDocument,
  ),
  drop: writes('Take a document off. Its scan stays among the papers.', z.strictObject(One), Nothing),
  attach: writesFile(
    'Put a scan with a document: a PDF or a JPEG, PNG, WebP or HEIC picture of up to 8 MB.',
    z.strictObject({ ...One, name: Name, base64: FileBytes }),
    OneDocument,
  ),
  putScan: writes(
    'Put a scan that is kept already with a document, or none.',
    z.strictObject({ ...One, scanId: Id.nullable() }),
    OneDocument,
  ),
  customs: reads(
    'The customs list of what a job takes along: serials, weights, origins, values and totals, with what is missing said.',
    z.strictObject({ jobId: Id, rates: Rates }),
    z.strictObject({
      list: CustomsList,
      crosses: z.boolean().describe('it crosses a customs border'),
      ask: z.string().describe('whom to ask'),
      carnet: z
        .strictObject({ fee: Money, security: Money, source: z.string() })
        .nullable()
        .describe('what a carnet of this list costs where that is on file'),
    }),
  ),
  makeCustoms: writes(
    'Put the customs list on paper, as a PDF and as a CSV; both stay as they were made.',
    z.strictObject({ ...One, rates: Rates }),
    z.strictObject({ job: Job, pdf: Paper, csv: Paper }),
  ),
  certificate: reads(
    'The insurance certificate of a job: what does not fit what was asked for, and a text to the insurer.',
    z.strictObject({ jobId: Id }),
    z.strictObject({ troubles: z.array(z.string()), text: z.strictObject({ subject: z.string(), text: z.string() }) }),
  ),
};
