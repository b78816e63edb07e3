/** My details, rate cards, ways that were typed, and time of my own. */
import type { SampleCard, SamplePersonal, SampleSetup, SampleWay } from './shape.ts';

const DULUTH = 'Duluth, Minnesota';

export const setup: SampleSetup = {
  name: 'Slipwater Pictures',
  address: 'Odaline Verrick\n418 Slipway Court\nDuluth, MN 55802',
  email: 'odaline@slipwater.example',
  phone: '+1 218 555 0137',
  home: DULUTH,
  currency: 'USD',
  paper: 'Letter',
  distance: 'mi',
  registered: false,
  taxId: '',
  tax: null,
  restHours: '8',
  editing: { hoursADay: 6, dayStart: '09:00', closedWeekdays: [6, 7], onHolidays: false, onTravelDays: false, onShootDays: false },
  year: { costs: 1_840_000, pay: 5_200_000, setAsidePercent: '28', days: 95 },
  payTo: { name: 'Slipwater Pictures', iban: '', bic: '', words: 'By check to the address above, or by transfer: ask for the account.' },
  lateInterestPercent: '12',
};

/** Internal Revenue Service, Notice 2025-5 and Notice 2026-10. */
const mileage = [
  { from: '2025-01-01', rate: '0.70' },
  { from: '2026-01-01', rate: '0.725' },
];
/** A package that goes with every job of the role; what else is taken is a line of the quote. */
const camera = [{ name: 'Camera package', perDay: '160.00' }];
const perKm = [{ from: '2025-01-01', rate: '0.72' }];

export const cards: readonly SampleCard[] = [
  {
    name: 'Shooting, old rate',
    role: 'shoot',
    currency: 'USD',
    dayRate: '950.00',
    editHour: '70.00',
    allowanceNight: '95.00',
    mileage,
    kit: camera,
    from: 'month -15',
    until: 'month -7',
    known: 'month -15',
  },
  {
    name: 'Shooting',
    role: 'shoot',
    currency: 'USD',
    dayRate: '1050.00',
    editHour: '75.00',
    allowanceNight: '105.00',
    mileage,
    kit: camera,
    from: 'month -7',
    known: 'month -9',
  },
  {
    name: 'Vision mixing',
    role: 'vision mixing',
    currency: 'USD',
    dayRate: '1150.00',
    editHour: '75.00',
    allowanceNight: '105.00',
    mileage,
    from: 'month -15',
    known: 'month -15',
  },
  {
    name: 'Livestream',
    role: 'livestream',
    currency: 'USD',
    dayRate: '1250.00',
    editHour: '75.00',
    allowanceNight: '105.00',
    mileage,
    kit: [{ name: 'Stream package', perDay: '260.00' }],
    from: 'month -15',
    known: 'month -15',
  },
  {
    name: 'Editing',
    role: 'edit only',
    currency: 'USD',
    dayRate: '600.00',
    editHour: '75.00',
    mileage,
    from: 'month -15',
    known: 'month -15',
  },
  {
    name: 'Shooting, Canada',
    role: 'shoot',
    currency: 'CAD',
    dayRate: '1400.00',
    editHour: '100.00',
    allowanceNight: '140.00',
    mileage: perKm,
    mileageUnit: 'km',
    from: 'month -14',
    known: 'month -14',
  },
  {
    name: 'Shooting, Europe',
    role: 'shoot',
    currency: 'EUR',
    dayRate: '980.00',
    editHour: '70.00',
    allowanceNight: '110.00',
    mileage: [],
    mileageUnit: 'km',
    terms: { depositPercent: '40', payDays: 30 },
    from: 'month -14',
    known: 'month -14',
  },
];

export const ways: readonly SampleWay[] = [
  { from: DULUTH, to: 'Milwaukee, Wisconsin', mode: 'drive', minutes: 410, distance: '395', note: 'with one stop for fuel' },
  { from: DULUTH, to: 'Minneapolis, Minnesota', mode: 'drive', minutes: 155, distance: '155', note: '' },
  { from: DULUTH, to: 'Fargo, North Dakota', mode: 'drive', minutes: 255, distance: '250', note: '' },
  { from: DULUTH, to: 'Marquette, Michigan', mode: 'drive', minutes: 275, distance: '250', note: 'deer at dusk' },
  { from: DULUTH, to: 'Rochester, Minnesota', mode: 'drive', minutes: 235, distance: '230', note: '' },
  { from: DULUTH, to: 'Bemidji, Minnesota', mode: 'drive', minutes: 165, distance: '150', note: '' },
  { from: DULUTH, to: 'Winnipeg, Manitoba', mode: 'drive', minutes: 445, distance: '385', note: 'border not counted' },
];

export const personal: readonly SamplePersonal[] = [
  { title: 'Lake house with the family', from: 'week -21 Mon', days: 5, hardness: 'never', known: 'week -40 Mon' },
  { title: 'Dentist and tax office', from: 'week -9 Tue', days: 1, hardness: 'settle', known: 'week -12 Wed' },
  { title: 'Sister’s move', from: 'week -36 Sat', days: 2, hardness: 'never', known: 'week -39 Fri' },
  { title: 'First-aid course', from: 'week 4 Thu', days: 1, hardness: 'settle', note: 'can be moved once', known: 'week -2 Mon' },
  { title: 'A week off', from: 'week 8 Mon', days: 7, hardness: 'never', known: 'week -6 Mon' },
];
