/**
 * The small shapes that every subject's contract is made of. Each carries the sentence that a person reads when a value is refused.
 */
import { z } from 'zod';
import { isCurrency } from '../money/currencies.ts';
import { isDate, isInstant, isWallTime, isZone } from '../time/read.ts';

/** Longest name, title or label that is kept. */
export const NAME_LENGTH = 120;
/** Longest message, note or address that is kept, in characters. */
export const TEXT_LENGTH = 200_000;

export const Id = z.uuid('is not an id of this program').describe('UUIDv7');
export const Version = z.int('must be a whole number').min(1).describe('row version; a save against an old one is refused');

// Control and bidirectional-override characters never belong in a name: they let one line pretend to be another.
/** What cannot be seen in a line: controls, and marks that turn the direction of writing. */
export const CONTROL = /[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;
/** The same in running text, which has tabs and line ends. */
export const CONTROL_IN_TEXT = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/;

export const Name = z
  .string('must be text')
  .trim()
  .min(1, 'is empty; give it a name')
  .max(NAME_LENGTH, `is longer than ${NAME_LENGTH} characters; shorten it`)
  .refine((text) => !CONTROL.test(text), 'holds characters that cannot be seen; type it anew');
/** A short line that may be empty. */
export const Line = z
  .string('must be text')
  .trim()
  .max(NAME_LENGTH, `is longer than ${NAME_LENGTH} characters; shorten it`)
  .refine((text) => !CONTROL.test(text), 'holds characters that cannot be seen; type it anew');
/** Running text of several lines, such as an address or a note. */
export const Note = z
  .string('must be text')
  .max(4000, 'is longer than 4,000 characters; shorten it')
  .refine((text) => !CONTROL_IN_TEXT.test(text), 'holds characters that cannot be seen; type it anew');
const pasted = (what: string, part: string) =>
  z
    .string('must be text')
    .refine((text) => text.trim().length > 0, `is empty; paste the ${what} as it came`)
    .max(TEXT_LENGTH, `is longer than 200,000 characters; paste the part ${part}`)
    .refine((text) => !CONTROL_IN_TEXT.test(text), 'holds bytes that are not text; copy the words, not the file');
/** A pasted message, kept as it came. */
export const Message = pasted('message', 'that asks for dates');
/** A pasted confirmation of a journey; it is read and not kept. */
export const Confirmation = pasted('confirmation', 'with the times');

export const DateText = z.string('must be a date').refine(isDate, 'is not a date; write it as 2026-12-12').describe('YYYY-MM-DD');
export const WallTime = z
  .string('must be a time')
  .refine(isWallTime, 'is not a time; write it as 2026-12-12T08:00')
  .describe('YYYY-MM-DDTHH:MM, wall time at the place');
export const Zone = z
  .string('must be a time zone')
  .refine(isZone, 'is not a known time zone; write it as America/Chicago')
  .describe('IANA zone');
export const InstantText = z
  .string('must be an instant')
  .refine(isInstant, 'is not an instant; write it as 2026-12-12T14:00:00Z')
  .describe('UTC instant with Z');
/** A moment as a person meets it: the wall time, its zone, and the instant that follows from them. */
export const Moment = z.strictObject({ wall: WallTime, zone: Zone, at: InstantText });
export type Moment = z.infer<typeof Moment>;

export const Currency = z
  .string('must be a currency')
  .refine(isCurrency, 'is not an ISO 4217 currency; write it as USD')
  .describe('ISO 4217 code');
/** The largest amount that is kept: 10^12 minor units, far past any job and well inside exact integers. */
export const MINOR_LIMIT = 1_000_000_000_000;
const Minor = z.int('must be a whole number of minor units').min(-MINOR_LIMIT, 'is too large').max(MINOR_LIMIT, 'is too large');
export const Money = z.strictObject({ minor: Minor.describe('minor units, e.g. cents'), currency: Currency });
export type Money = z.infer<typeof Money>;
/** An exact decimal, written with a point: quantities, rates, per cents, unit prices. */
export const Decimal = z
  .string('must be a number, written as text')
  .regex(/^-?\d{1,12}(\.\d{1,9})?$/, 'is not a number; write it as 1250.50')
  .describe('exact decimal');
/** An exact decimal that is not below zero. */
export const Positive = z
  .string('must be a number, written as text')
  .regex(/^-?\d{1,12}(\.\d{1,9})?$/, 'is not a number; write it as 1250.50')
  .refine((text) => !text.startsWith('-'), 'is below zero; give zero or more')
  .describe('exact decimal, zero or more');
export const Percent = Positive.refine((text) => Number(text) <= 1000, 'is over 1000 per cent');

export const Country = z
  .string()
  .regex(/^[A-Z]{2}$/, 'is not a country; write it as US')
  .describe('ISO 3166 alpha-2');
export const Place = z.strictObject({
  key: z.string().min(1).max(80).describe('gazetteer key, or own:UUID for a place typed by hand'),
  name: Name,
  region: Line,
  country: Country,
  lat: z.number('must be degrees').min(-90, 'is past the pole').max(90, 'is past the pole'),
  lon: z.number('must be degrees').min(-180, 'is past 180 degrees').max(180, 'is past 180 degrees'),
  zone: Zone,
});
export type Place = z.infer<typeof Place>;

export const Role = z.enum(['shoot', 'second camera', 'vision mixing', 'livestream', 'edit only', 'photo', 'audio', 'other']);
export type Role = z.infer<typeof Role>;
export const DayKind = z.enum(['shoot', 'half', 'travel', 'prep', 'standby', 'edit']);
export type DayKind = z.infer<typeof DayKind>;

/** A key that a screen makes once for one deed, so that a repeated save answers with the first result. */
export const DeedKey = z.uuid('is not a deed key').optional().describe('idempotency key');
export const Nothing = z.strictObject({});

/** The largest file that is kept, bytes. */
export const LARGEST_FILE = 8_000_000;
/** The bytes of a file that a person gives. */
export const FileBytes = z
  .string('must be text')
  .min(1, 'is empty; choose a file with something in it')
  .max(Math.ceil(LARGEST_FILE / 3) * 4, 'is larger than 8 MB; make the picture smaller, or save it as a smaller PDF')
  .describe('base64, up to 8 MB of bytes');
