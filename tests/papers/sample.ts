/**
 * An invented quote to make papers from.
 */
import type { JobDay } from '../../core/contract/jobs.ts';
import type { Place } from '../../core/contract/parts.ts';
import type { QuoteDraft, QuoteLine, Section } from '../../core/contract/quotes.ts';
import type { SetupFields } from '../../core/contract/setup.ts';
import { blankKnows } from '../../core/jobs/knows.ts';
import { lineAmount, sum } from '../../core/money/money.ts';
import type { QuotePaperInput } from '../../core/quotes/paper.ts';

const duluth: Place = {
  key: 'us-duluth',
  name: 'Duluth',
  region: 'Minnesota',
  country: 'US',
  lat: 46.79,
  lon: -92.1,
  zone: 'America/Chicago',
};
const thunderBay: Place = {
  key: 'ca-thunder-bay',
  name: 'Thunder Bay',
  region: 'Ontario',
  country: 'CA',
  lat: 48.38,
  lon: -89.25,
  zone: 'America/Toronto',
};

const sender: SetupFields = {
  name: 'Northlight Pictures',
  address: '14 Harbor Row\nDuluth, MN 55802',
  email: 'hello@northlight.example',
  phone: '+1 218 555 0142',
  home: duluth,
  currency: 'USD',
  paper: 'A4',
  distance: 'mi',
  registered: false,
  taxId: '',
  tax: null,
  restHours: '8',
  year: null,
};

/** One line of a quote; its amount follows from quantity and unit price. */
export function line(
  section: Section,
  what: string,
  quantity: string,
  unit: string,
  unitPrice: string,
  currency = 'USD',
  estimated = false,
): QuoteLine {
  return {
    id: `${section}/${what}`,
    section,
    what,
    quantity,
    unit,
    unitPrice,
    amount: lineAmount(quantity, unitPrice, currency),
    taxed: true,
    reason: '',
    estimated,
    changed: false,
  };
}

const curling = [
  line('days', 'Vision mixing', '5', 'days', '1000.00'),
  line('days', 'Load-in, half day', '1', 'half day', '600.00'),
  line('days', 'Travel day home', '1', 'day', '500.00'),
  line('travel', 'Mileage', '380', 'mi', '0.725', 'USD', true),
  line('allowances', 'Allowance', '6', 'nights', '90.00'),
  line('editing', 'Evening recaps', '10', 'h', '60.00'),
  line('rush', 'Rush, under 72 h: 25 % of days', '1', '', '1525.00'),
];

const day = (date: string, call: string, wrap: string, kind: JobDay['kind'] = 'shoot'): JobDay => ({
  date,
  kind,
  call: `${date}T${call}`,
  wrap: `${date}T${wrap}`,
});

/** The draft of a quote over some lines, untaxed, with a deposit of a half. */
export function draftOf(lines: QuoteLine[], currency = 'USD'): QuoteDraft {
  const net = sum(
    currency,
    lines.map((one) => one.amount),
  );
  const half = { minor: Math.ceil(net.minor / 2), currency };
  return {
    jobId: '01890000-0000-7000-8000-000000000001',
    draftVersion: 0,
    cardId: '01890000-0000-7000-8000-000000000002',
    cardName: 'Vision mixing 2026',
    currency,
    lines,
    dropped: [],
    offers: [],
    cancelBase: net,
    totals: { net, taxes: [], tax: { minor: 0, currency }, gross: net },
    deposit: { amount: half, due: 'to ink the dates', note: '' },
    validUntil: { wall: '2026-12-04T18:30', zone: 'America/Chicago', at: '2026-12-05T00:30:00Z' },
    terms: {
      validDays: 14,
      depositPercent: '50',
      payDays: 30,
      cancellation: [
        { underHours: 336, percent: '25' },
        { underHours: 168, percent: '50' },
        { underHours: 48, percent: '100' },
      ],
      rounds: 2,
      overtimeApprover: 'The producer on site, before the overtime begins, by word or message.',
      illness: 'If I fall ill I send a deputy of equal skill, or give back what was paid.',
      weather: 'Indoors: none. Outdoors: a day moved by noon the day before costs half.',
      usage: 'Own channels of the organiser, worldwide, three years; paid media by agreement.',
      originals: 'Kept for 90 days after delivery.',
      postponement: 'To a date agreed within 30 days: half of the cancellation scale.',
    },
    scale: { floor: null, budget: null, thisJob: net, daysUsed: '7', keptPerHourAway: net, hoursAway: '150' },
    pencilUntil: { wall: '2026-12-04T18:30', zone: 'America/Chicago', at: '2026-12-05T00:30:00Z' },
    cautions: ['Rest is short.'],
    missing: [],
  };
}

/** The quote of the pictures: five days at a curling championship across a border. */
export function curlingQuote(): QuotePaperInput {
  return {
    setup: structuredClone(sender),
    job: {
      title: 'Provincial curling championship',
      organisation: 'Lakehead Stone & Broom Society',
      contact: { name: 'Maren Oikarinen', email: 'maren@stonebroom.example', phone: '+1 807 555 0118' },
      role: 'vision mixing',
      place: thunderBay,
      days: [
        day('2026-12-05', '14:00', '19:00', 'half'),
        ...['06', '07', '08', '09', '10'].map((date) => day(`2026-12-${date}`, '09:00', '19:00')),
        day('2026-12-11', '08:00', '16:00', 'travel'),
      ],
      deliverables: ['Two-minute recap every evening'],
      knows: blankKnows(),
    },
    client: undefined,
    draft: draftOf(structuredClone(curling)),
    number: 1,
    madeAt: '2026-12-04T03:12:00Z',
  };
}

/** The same job with as many lines as asked for, spread over the sections. */
export function longQuote(count: number): QuotePaperInput {
  const where: Section[] = ['days', 'kit', 'travel', 'editing', 'extras'];
  const lines = Array.from({ length: count }, (_, index) =>
    line(
      where[Math.floor((index * where.length) / count)] ?? 'extras',
      `Position ${index + 1}`,
      String((index % 4) + 1),
      'days',
      `${100 + index}.25`,
    ),
  );
  return { ...curlingQuote(), draft: draftOf(lines) };
}
