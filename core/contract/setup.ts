import { z } from 'zod';
import { reads, writes } from './base.ts';
import { CONTROL_IN_TEXT, Country, Currency, DateText, Line, Name, Note, Nothing, Percent, Place, Positive, Version } from './parts.ts';

/** One named tax that the sender charges. */
const TaxRule = z.strictObject({
  name: Name,
  percent: Percent,
  included: z.boolean().describe('prices are entered with it included'),
  compound: z.boolean().optional().describe('also charged on the taxes before it'),
});

/** My own year, from which the floor is worked out. Amounts in whole minor units of the home currency. */
const OwnYear = z.strictObject({
  costs: z.int().min(0).describe('yearly costs without wear of kit, minor units'),
  pay: z.int().min(0).describe('wanted pay a year after set-aside, minor units'),
  setAsidePercent: Percent,
  days: z.int().min(1).max(366).describe('days that can be sold'),
});

/** A picture at the top of my papers. */
export const Logo = z.strictObject({
  type: z.enum(['image/png', 'image/jpeg']),
  base64: z.base64('is not base64').max(300_000, 'is larger than 220 kB; make the picture smaller').describe('the bytes of the file'),
});
export type Logo = z.infer<typeof Logo>;

/** Where money is to go; empty texts are not known. */
const PayTo = z.strictObject({ name: Line, iban: Line, bic: Line, words: Note.describe('any other way to pay, as it is printed') });

/** Long running text; an empty one stands for the starting text. */
const TermsText = z
  .string('must be text')
  .max(20_000, 'is longer than 20,000 characters; shorten it')
  // Unseen characters would reach a paper that somebody signs.
  .refine((text) => !CONTROL_IN_TEXT.test(text), 'holds characters that cannot be seen; type it anew');

/** When I edit. Rest, travel and shoot days are days without editing unless it is allowed there. */
export const EditSettings = z.strictObject({
  hoursADay: z
    .number('must be a number of hours')
    .min(0, 'is below zero')
    .max(24, 'is more than a day has')
    .multipleOf(0.5, 'goes in half hours'),
  dayStart: z
    .string('must be a time')
    .regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'is not a time; write it as 09:00')
    .describe('on the clock of home'),
  closedWeekdays: z.array(z.int().min(1).max(7)).max(7).describe('without editing; 1 is Monday'),
  onHolidays: z.boolean().describe('editing on public holidays at home'),
  onTravelDays: z.boolean(),
  onShootDays: z.boolean(),
});
export type EditSettings = z.infer<typeof EditSettings>;

export const SetupFields = z.strictObject({
  name: Name.describe('the name that papers are sent under'),
  address: Note,
  email: Line,
  phone: Line,
  home: Place,
  currency: Currency,
  paper: z.enum(['A4', 'Letter']),
  distance: z.enum(['mi', 'km']),
  registered: z.boolean().describe('registered for sales tax or VAT'),
  taxId: Line,
  tax: TaxRule.nullable(),
  moreTaxes: z.array(TaxRule).max(3).optional().describe('further taxes that every line bears; included where the first is'),
  restHours: Positive.describe('unbroken rest asked for between two jobs, hours'),
  year: OwnYear.nullable(),
  logo: Logo.optional().describe('none if absent'),
  series: z
    .string('must be text')
    .trim()
    .regex(/^[A-Za-z0-9-]{0,12}$/, 'is not a series; up to 12 letters, figures and dashes')
    .optional()
    .describe('before the numbers of my invoices; a new one begins its own run'),
  payTo: PayTo.optional(),
  editing: EditSettings.optional().describe('the default of the house if absent: 6 hours from 09:00, Monday to Friday'),
  termsText: TermsText.optional().describe('my terms as plain text with gaps that each version fills; the starting text if absent'),
  lateInterestPercent: Percent.nullable().optional().describe('a year, on what is paid late; printed where it is set'),
  accent: z
    .string()
    .regex(/^#[0-9a-f]{6}$/i, 'is not a colour; write it as #2f5877')
    .optional()
    .describe('one colour for the rules of my papers; ink if absent'),
});
export type SetupFields = z.infer<typeof SetupFields>;
export const Setup = SetupFields.extend({ version: Version });
export type Setup = z.infer<typeof Setup>;

/** A day that counts as a public holiday somewhere, with its name in English. */
export const PublicHoliday = z.strictObject({ date: DateText, name: z.string() });
export type PublicHoliday = z.infer<typeof PublicHoliday>;

export const setup = {
  get: reads(
    'My details, or nothing when the program has not been set up.',
    Nothing,
    z.strictObject({ setup: Setup.nullable(), suggestedZone: z.string() }),
  ),
  save: writes(
    'Save my details. The first save needs no version; later ones name the version that was read.',
    z.strictObject({ version: Version.optional(), fields: SetupFields }),
    z.strictObject({ setup: Setup }),
  ),
  holidays: reads(
    'Public holidays of a country and region in some years, as a public list gives them: a hint, never the last word.',
    z.strictObject({
      country: Country,
      region: Line.describe('its name; empty for the whole country'),
      years: z.array(z.int().min(1970).max(2199)).min(1).max(5),
    }),
    z.strictObject({ holidays: z.array(PublicHoliday), hint: z.string() }),
  ),
};
