/**
 * Invented facts to price: a videographer at home in Duluth, a card at 1,000.00 a day, a job as the test wants it.
 */
import type { Place } from '../../../core/contract/parts.ts';
import type { DraftChange, QuoteDraft } from '../../../core/contract/quotes.ts';
import type { RateCard } from '../../../core/contract/rates.ts';
import type { SetupFields } from '../../../core/contract/setup.ts';
import type { BookDay } from '../../../core/fit/book.ts';
import type { PriceInput } from '../../../core/quotes/input.ts';
import { priceQuote } from '../../../core/quotes/price.ts';
import type { QuotedTrip } from '../../../core/quotes/trip.ts';
import { defaultCard } from '../../../core/rates/defaults.ts';
import { instantOf } from '../../../core/time/read.ts';

export const duluth: Place = {
  key: 'own:duluth',
  name: 'Duluth',
  region: 'Minnesota',
  country: 'US',
  lat: 46.78,
  lon: -92.11,
  zone: 'America/Chicago',
};
export const fargo: Place = {
  key: 'own:fargo',
  name: 'Fargo',
  region: 'North Dakota',
  country: 'US',
  lat: 46.88,
  lon: -96.79,
  zone: 'America/Chicago',
};

const setup: SetupFields = {
  name: 'Lakeline Pictures',
  address: '12 Harbor Street',
  email: 'post@lakeline.example',
  phone: '',
  home: duluth,
  currency: 'USD',
  paper: 'Letter',
  distance: 'mi',
  registered: false,
  taxId: '',
  tax: null,
  restHours: '8',
  year: null,
};

export const card: RateCard = {
  ...defaultCard('shoot', 'USD', '2026-01-01'),
  id: '01890000-0000-7000-8000-0000000000aa',
  version: 1,
  dayRate: '1000.00',
  editHour: '60',
};

export const at = (wall: string, zone = 'America/Chicago') => instantOf(wall, zone).epochMilliseconds;

/** A paid date from call to wrap, `HH:MM`; a wrap before the call is on the next date. */
export function day(date: string, call = '08:00', wrap = '18:00', kind: BookDay['kind'] = 'shoot'): BookDay {
  const wrapDate = wrap < call ? Temporal.PlainDate.from(date).add({ days: 1 }).toString() : date;
  const [calls, wraps] = [`${date}T${call}`, `${wrapDate}T${wrap}`];
  return { date, kind, call: calls, wrap: wraps, callAt: at(calls), wrapAt: at(wraps) };
}

/** A drive of 250 miles each way, typed, the day before and the day after. */
export const drive: QuotedTrip = {
  away: true,
  source: 'typed',
  mode: 'drive',
  outMinutes: 270,
  backMinutes: 270,
  oneWayKm: 402.336,
  roadKnown: true,
  doorOutAt: at('2026-09-07T14:00'),
  doorInAt: at('2026-09-10T13:30'),
  nights: 3,
  travelDates: ['2026-09-07', '2026-09-10'],
  hoursAway: 71.5,
  legs: [
    { name: 'out', date: '2026-09-07' },
    { name: 'back', date: '2026-09-10' },
  ],
};

export type Facts = Partial<Omit<PriceInput, 'job' | 'setup' | 'card'>> & {
  job?: Partial<PriceInput['job']>;
  setup?: Partial<SetupFields>;
  card?: Partial<RateCard>;
};

/** Two days in Duluth, asked for a month before, unless the test says otherwise. */
export function inputOf({ job, setup: mine, card: rates, ...rest }: Facts = {}): PriceInput {
  const received = { wall: '2026-08-01T09:00', zone: 'America/Chicago', at: '2026-08-01T14:00:00Z' };
  return {
    days: [day('2026-09-08'), day('2026-09-09')],
    cardCaution: null,
    publicHolidays: [],
    trip: null,
    hands: [],
    wear: [],
    changes: [],
    draftVersion: 0,
    now: at('2026-08-01T09:05'),
    ...rest,
    job: { id: '01890000-0000-7000-8000-0000000000bb', role: 'shoot', place: duluth, budget: null, received, deliverables: [], ...job },
    setup: { ...setup, ...mine },
    card: { ...card, ...rates },
  };
}

export const quoteOf = (facts: Facts = {}): QuoteDraft => priceQuote(inputOf(facts));
export const lineOf = (draft: QuoteDraft, id: string) => draft.lines.find((line) => line.id === id);
export const taxed = (percent: string, included = false): Partial<SetupFields> => ({
  registered: true,
  tax: { name: 'VAT', percent, included },
});
export const extra = (unitPrice: string, quantity = '1'): DraftChange => ({
  op: 'add',
  section: 'extras',
  what: 'Licence',
  quantity,
  unit: '',
  unitPrice,
});
