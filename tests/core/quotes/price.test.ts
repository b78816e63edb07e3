import { describe, expect, test } from 'vitest';
import type { DraftChange } from '../../../core/contract/quotes.ts';
import { priceQuote } from '../../../core/quotes/price.ts';
import { at, day, drive, extra, fargo, inputOf, lineOf, quoteOf, taxed } from './facts.ts';

describe('days', () => {
  test('dates of one kind stand on one line, with their reason', () => {
    expect(lineOf(quoteOf(), 'days/shoot')).toMatchObject({
      what: 'Shooting',
      quantity: '2',
      unit: 'days',
      unitPrice: '1000',
      amount: { minor: 200_000 },
      reason: 'Tue 8 and Wed 9 September 2026: The day rate 1,000.00 covers 10 h from call to wrap.',
    });
  });
  test('overtime that is planned is a line for each tier, the hours of all days on it', () => {
    const draft = quoteOf({ days: [day('2026-09-08', '08:00', '20:00'), day('2026-09-09', '08:00', '23:00')] });
    expect(lineOf(draft, 'days/overtime-shoot-1.5')).toMatchObject({ quantity: '6', amount: { minor: 90_000 }, estimated: true });
    expect(lineOf(draft, 'days/overtime-shoot-2')).toMatchObject({ quantity: '1', amount: { minor: 20_000 } });
  });
  test('kinds in order, dearest first', () => {
    const kinds = ['travel', 'standby', 'half', 'shoot', 'prep'] as const;
    const days = kinds.map((kind, order) => day(`2026-09-0${order + 1}`, '08:00', '12:00', kind));
    expect(quoteOf({ days }).lines.map((line) => [line.id, line.amount.minor])).toEqual([
      ['days/shoot', 100_000],
      ['days/half', 60_000],
      ['days/prep', 50_000],
      ['days/standby', 50_000],
      ['days/travel', 50_000],
    ]);
  });
  test('a forced call between two days is a line and a caution', () => {
    const draft = quoteOf({ days: [day('2026-09-08', '13:00', '23:00'), day('2026-09-09', '07:00', '17:00')] });
    expect(lineOf(draft, 'days/forced-call')).toMatchObject({ quantity: '2', amount: { minor: 20_000 } });
    expect(draft.cautions.join(' ')).toContain('Only 8 h between wrap and the next call, 2 h short of 10 h');
  });
  test('a date that counts as a holiday costs half more on its base', () => {
    const draft = quoteOf({ changes: [{ op: 'holidays', dates: ['2026-09-09'] }] });
    expect(lineOf(draft, 'days/holiday-uplift')).toMatchObject({ quantity: '1', amount: { minor: 50_000 } });
  });
  describe('public holidays of the place', () => {
    const publicHolidays = [
      { date: '2026-09-07', name: 'Labor Day' },
      { date: '2026-09-08', name: 'Harvest Day' },
    ];
    test('count until somebody says otherwise, and the line and a caution name them', () => {
      const draft = quoteOf({ publicHolidays });
      expect(lineOf(draft, 'days/holiday-uplift')).toMatchObject({
        quantity: '1',
        reason: "Tue 8 September 2026: Harvest Day. The call is on a holiday: 50 % on the day's base 1,000.00.",
      });
      expect(draft).toMatchObject({ holidays: ['2026-09-08'], publicHolidays: [{ date: '2026-09-08', name: 'Harvest Day' }] });
      expect(draft.cautions).toContain(
        'Tue 8 September 2026 is Harvest Day at the place, by a public list, and charged as a holiday. If nobody keeps it there, take it off.',
      );
    });
    test('are taken off by hand, and still proposed', () => {
      const draft = quoteOf({ publicHolidays, changes: [{ op: 'holidays', dates: [] }] });
      expect(lineOf(draft, 'days/holiday-uplift')).toBeUndefined();
      expect(draft).toMatchObject({ holidays: [], publicHolidays: [{ date: '2026-09-08' }] });
      expect(draft.cautions.join(' ')).not.toContain('Harvest Day');
    });
    test('say nothing where a holiday costs nothing more, nor on a day of editing', () => {
      expect(quoteOf({ publicHolidays, card: { holidayPercent: '0' } }).cautions.join(' ')).not.toContain('Harvest Day');
      expect(quoteOf({ publicHolidays, days: [day('2026-09-08', '08:00', '16:00', 'edit')] }).publicHolidays).toEqual([]);
    });
  });
});

describe('trip', () => {
  const draft = quoteOf({ trip: drive, job: { place: fargo }, card: { allowanceNight: '90' } });
  test('travel dates without work are days at half rate', () =>
    expect(lineOf(draft, 'days/travel')).toMatchObject({ quantity: '2', amount: { minor: 100_000 } }));
  test('mileage out and back at the rate of the date of departure', () => {
    expect(lineOf(draft, 'travel/mileage')).toMatchObject({
      quantity: '500',
      unit: 'mi',
      unitPrice: '0.725',
      amount: { minor: 36_250 },
      estimated: false,
    });
  });
  test('an allowance for each night', () =>
    expect(lineOf(draft, 'allowances/night')).toMatchObject({ quantity: '3', amount: { minor: 27_000 } }));
  test('legs over a change of rate are two lines', () => {
    const mileage = [
      { from: '2026-01-01', rate: '0.725' },
      { from: '2026-09-10', rate: '0.75' },
    ];
    const lines = quoteOf({ trip: drive, job: { place: fargo }, card: { mileage } }).lines.filter((line) => line.section === 'travel');
    expect(lines.map((line) => [line.id, line.amount.minor])).toEqual([
      ['travel/mileage-2026-01-01', 18_125],
      ['travel/mileage-2026-09-10', 18_750],
    ]);
  });
  test('a date before the first rate is not charged, and says so', () => {
    const draft = quoteOf({ trip: drive, job: { place: fargo }, card: { mileage: [{ from: '2027-01-01', rate: '1' }] } });
    expect(lineOf(draft, 'travel/mileage')).toBeUndefined();
    expect(draft.cautions).toContain('The rate card has no mileage rate for these dates; the drive is not charged.');
  });
  test('a flight has no mileage, and says that its fare is not in the quote', () => {
    const flown = quoteOf({ trip: { ...drive, mode: 'flight' }, job: { place: fargo } });
    expect(lineOf(flown, 'travel/mileage')).toBeUndefined();
    expect(flown.cautions).toContain('The way is by flight: its fare is not in the quote. Add it as a line.');
  });
  test('an estimate is marked as one', () => {
    const guessed = quoteOf({ trip: { ...drive, source: 'estimated' }, job: { place: fargo } });
    expect(lineOf(guessed, 'travel/mileage')?.estimated).toBe(true);
    expect(guessed.cautions.join(' ')).toContain('The drive is estimated');
  });
  test('a year without a known rate says so', () => {
    const later = { ...drive, legs: drive.legs.map((leg) => ({ ...leg, date: '2027-01-07' })) };
    expect(quoteOf({ trip: later, job: { place: fargo } }).cautions.join(' ')).toContain(
      'valid from 2026-01-01; ask whether there is one for 2027',
    );
  });
  test('travel days that were sold and those that the way asks for are one line', () => {
    const sold = quoteOf({
      trip: drive,
      job: { place: fargo },
      days: [day('2026-09-06', '08:00', '12:00', 'travel'), day('2026-09-08'), day('2026-09-09')],
    });
    expect(lineOf(sold, 'days/travel')).toMatchObject({ quantity: '3', amount: { minor: 150_000 } });
  });
});

test('kit is charged for each shooting day; two fees of like names keep their own lines', () => {
  const kit = [
    { name: 'Mixer', perDay: '120' },
    { name: 'mixer!', perDay: '30' },
  ];
  const draft = quoteOf({ card: { kit }, days: [day('2026-09-08'), day('2026-09-09'), day('2026-09-10', '08:00', '12:00', 'prep')] });
  expect(draft.lines.filter((line) => line.section === 'kit').map((line) => [line.id, line.amount.minor])).toEqual([
    ['kit/mixer', 24_000],
    ['kit/mixer-2', 6_000],
  ]);
});

describe('rush', () => {
  const received = (wall: string) => ({
    received: { wall, zone: 'America/Chicago', at: Temporal.Instant.fromEpochMilliseconds(at(wall)).toString() },
  });
  const rush = (wall: string) => lineOf(quoteOf({ job: received(wall) }), 'rush/notice')?.amount.minor;
  test('25 % strictly under 72 h, 10 % strictly under 7 days, nothing above', () => {
    expect(rush('2026-09-05T08:01')).toBe(50_000);
    expect(rush('2026-09-05T08:00')).toBe(20_000);
    expect(rush('2026-09-01T08:01')).toBe(20_000);
    expect(rush('2026-09-01T08:00')).toBeUndefined();
  });
  test('is elapsed time over a clock change', () => {
    const sunday = [day('2026-11-03', '08:00')];
    const quote = (wall: string) => lineOf(quoteOf({ days: sunday, job: received(wall) }), 'rush/notice')?.amount.minor;
    // the night to 1 November has an hour more: 08:00 three dates before is 73 h
    expect(quote('2026-10-31T08:00')).toBe(10_000);
    expect(quote('2026-10-31T09:01')).toBe(25_000);
  });
  test('is of all days as they stand after changes, before any discount', () => {
    const draft = quoteOf({
      job: received('2026-09-07T08:00'),
      changes: [
        { op: 'set', id: 'days/shoot', unitPrice: '900' },
        { op: 'discount', percent: '10' },
      ],
    });
    expect(lineOf(draft, 'rush/notice')?.amount.minor).toBe(45_000);
  });
});

describe('changes by hand', () => {
  test('say what they changed', () => {
    const line = lineOf(quoteOf({ changes: [{ op: 'set', id: 'days/shoot', quantity: '3', what: 'Camera' }] }), 'days/shoot');
    expect(line).toMatchObject({ what: 'Camera', quantity: '3', amount: { minor: 300_000 }, changed: true });
    expect(line?.reason).toMatch(/^Changed by hand: quantity 3 instead of 2\./);
  });
  test('are taken back by restoring', () => {
    const changes = [
      { op: 'set', id: 'days/shoot', quantity: '3' },
      { op: 'drop', id: 'days/shoot' },
      { op: 'restore', id: 'days/shoot' },
    ] as const;
    expect(quoteOf({ changes: [...changes] }).lines).toEqual(quoteOf().lines);
  });
  test('no longer apply when their line is gone, and say so', () => {
    expect(quoteOf({ changes: [{ op: 'set', id: 'days/half', quantity: '3' }] }).cautions.join(' ')).toContain('days/half');
  });
  test('in the terms are frozen with the quote', () => {
    const draft = quoteOf({ changes: [{ op: 'terms', terms: { depositPercent: '25', payDays: 7 } }] });
    expect(draft.terms).toMatchObject({ depositPercent: '25', payDays: 7, rounds: 2 });
    expect(draft.deposit?.amount.minor).toBe(50_000);
  });
});

describe('discount', () => {
  const off = (changes: Parameters<typeof quoteOf>[0]) =>
    quoteOf(changes)
      .lines.filter((line) => line.section === 'discount')
      .map((line) => line.amount.minor);
  test('per cent before fixed, on all but expenses', () => {
    expect(off({ trip: drive, job: { place: fargo }, changes: [{ op: 'discount', percent: '10', fixed: '50' }] })).toEqual([
      -30_000, -5_000,
    ]);
  });
  test('never more than there is', () =>
    expect(off({ changes: [{ op: 'discount', percent: '60', fixed: '5000' }] })).toEqual([-120_000, -80_000]));
  test('on the sections that were named', () =>
    expect(off({ changes: [extra('400'), { op: 'discount', percent: '10', over: ['extras'] }] })).toEqual([-4_000]));
  test('is shared over tax groups in proportion', () => {
    const draft = quoteOf({
      setup: taxed('20'),
      changes: [
        extra('1000'),
        { op: 'tax', ids: ['extras/added-1'], state: 'exempt', reason: 'Licences are exempt.' },
        { op: 'discount', fixed: '300' },
      ],
    });
    expect(draft.totals.taxes).toMatchObject([
      { name: 'VAT', percent: '20', net: { minor: 180_000 }, tax: { minor: 36_000 }, state: 'rated' },
      { net: { minor: 90_000 }, tax: { minor: 0 }, state: 'exempt', note: 'Licences are exempt.' },
    ]);
    expect(draft.totals).toMatchObject({ net: { minor: 270_000 }, tax: { minor: 36_000 }, gross: { minor: 306_000 } });
  });
});

describe('tax', () => {
  test('none where I am not registered', () =>
    expect(quoteOf().totals).toMatchObject({ taxes: [], tax: { minor: 0 }, gross: { minor: 200_000 } }));
  test('on the net of each group', () =>
    expect(quoteOf({ setup: taxed('7.25') }).totals).toMatchObject({ tax: { minor: 14_500 }, gross: { minor: 214_500 } }));
  test('included: the gross is what was entered', () => {
    expect(quoteOf({ setup: taxed('19', true) }).totals).toMatchObject({
      net: { minor: 168_067 },
      tax: { minor: 31_933 },
      gross: { minor: 200_000 },
    });
  });
  test('reverse charge on every line, with its words', () => {
    const draft = quoteOf({ setup: taxed('20'), changes: [{ op: 'tax', state: 'reverse charge' }] });
    expect(draft.totals).toMatchObject({
      tax: { minor: 0 },
      taxes: [{ state: 'reverse charge', note: 'Reverse charge: the recipient accounts for the tax.' }],
    });
    expect(draft.lines.every((line) => !line.taxed)).toBe(true);
  });
  test('two named taxes on each line, or one of them', () => {
    const setup = { ...taxed('5'), moreTaxes: [{ name: 'Provincial', percent: '7', included: false }] };
    expect(quoteOf({ setup }).totals).toMatchObject({
      taxes: [{ tax: { minor: 10_000 } }, { tax: { minor: 14_000 } }],
      gross: { minor: 224_000 },
    });
    expect(quoteOf({ setup, changes: [{ op: 'tax', state: 'rated', names: ['VAT'] }] }).totals.gross.minor).toBe(210_000);
  });
});

describe('deposit and validity', () => {
  test('half of the gross, rounded, due as an invoice is', () => {
    const draft = quoteOf({ changes: [extra('0.01')] });
    expect(draft.deposit).toMatchObject({ amount: { minor: 100_001 }, due: 'by Sat 15 August 2026' });
    expect(draft.validUntil).toMatchObject({ wall: '2026-08-15T23:59', zone: 'America/Chicago' });
  });
  test('due at call where it would fall after it, and asked', () => {
    const draft = quoteOf({ now: at('2026-09-01T09:00') });
    expect(draft.deposit?.due).toBe('at first call, Tue 8 September 2026');
    expect(draft.cautions.join(' ')).toContain('the deposit would fall due on Tue 15 September 2026, after first call');
    expect(draft.validUntil.wall).toBe('2026-09-08T08:00');
  });
  test('none at 0 per cent', () => expect(quoteOf({ changes: [{ op: 'terms', terms: { depositPercent: '0' } }] }).deposit).toBeNull());
});

describe('the scale', () => {
  const year = { costs: 1_840_000, pay: 5_200_000, setAsidePercent: '28', days: 95 };
  test('floor (18,400 + 52,000 / 0.72) / 95 = 953.92', () => expect(quoteOf({ setup: { year } }).scale.floor?.minor).toBe(95_392));
  test('this job a day leaves out expenses and counts travel dates', () => {
    const { scale } = quoteOf({ trip: drive, job: { place: fargo }, card: { allowanceNight: '90' } });
    // 3,000.00 for days over four dates; 71.5 h from door to door
    expect(scale).toMatchObject({ thisJob: { minor: 75_000 }, daysUsed: '4', hoursAway: '71.5', keptPerHourAway: { minor: 4_196 } });
  });
  test('edit hours count by the day, and add to the hours', () => {
    const { scale } = quoteOf({ days: [day('2026-09-08'), day('2026-09-09', '09:00', '14:00', 'edit')] });
    expect(scale).toMatchObject({ daysUsed: '1.5', hoursAway: '15', thisJob: { minor: 86_667 } });
  });
  test('what a hand or sub-hire costs me is taken off, but for expenses', () => {
    const changes: DraftChange[] = [
      { op: 'add', section: 'extras', what: 'Second hand', quantity: '1', unit: 'day', unitPrice: '500', cost: '400' },
      { op: 'add', section: 'travel', what: 'Parking', quantity: '1', unit: '', unitPrice: '30', cost: '30' },
      { op: 'set', id: 'days/shoot', cost: '100.50' },
    ];
    const draft = quoteOf({ changes });
    expect(draft.scale.thisJob.minor).toBe((200_000 + 50_000 - 40_000 - 10_050) / 2);
    expect(lineOf(draft, 'days/shoot')).toMatchObject({ changed: false, cost: { minor: 10_050 } });
    expect(draft.totals.net.minor).toBe(253_000);
  });
  test('a job under the floor is said so', () => {
    expect(quoteOf({ setup: { year }, card: { dayRate: '900' } }).cautions).toContain(
      'This job comes to 900.00 a day, 53.92 under your floor of 953.92.',
    );
  });
  test.each([
    [{ amount: 900, currency: 'USD', per: 'day' as const }, 90_000],
    [{ amount: 1500, currency: 'USD', per: 'job' as const }, 75_000],
    [{ amount: 80, currency: 'USD', per: 'hour' as const }, 80_000],
    [{ amount: 900, per: 'day' as const }, null],
    [{ amount: 900, currency: 'USD' }, null],
    [{ amount: 900, currency: 'CAD', per: 'day' as const }, null],
  ])('the budget %o is drawn at %s', (budget, minor) => {
    const draft = quoteOf({ job: { budget } });
    expect(draft.scale.budget?.minor ?? null).toBe(minor);
    if (minor === null) expect(draft.cautions.join(' ')).toContain('not drawn');
  });
});

describe('what is missing', () => {
  test('place, days and a rate', () => {
    expect(quoteOf({ days: [], job: { place: null } }).missing).toHaveLength(2);
    expect(quoteOf({ card: { dayRate: '0' } }).missing).toEqual(['What a day costs: the day rate of "Shooting 2026" is zero.']);
  });
  test('a price that was typed on the line will do', () => {
    expect(quoteOf({ card: { dayRate: '0' }, changes: [{ op: 'set', id: 'days/shoot', unitPrice: '900' }] }).missing).toEqual([]);
  });
  test('something must be left of it', () => {
    expect(
      quoteOf({ changes: [{ op: 'add', section: 'discount', what: 'Friends', quantity: '1', unit: '', unitPrice: '2500' }] }).missing,
    ).toEqual(['What is left: the discount is 500.00 more than everything else.']);
    expect(quoteOf({ changes: [{ op: 'drop', id: 'days/shoot' }] }).missing).toEqual(['What is sold: every line was taken off.']);
  });
  test('a job of nothing but edit days needs no day rate', () => {
    expect(quoteOf({ card: { dayRate: '0' }, days: [day('2026-09-09', '09:00', '14:00', 'edit')] }).missing).toEqual([]);
  });
});

test('the same facts give the same quote, and pricing leaves them alone', () => {
  const input = Object.freeze(inputOf({ trip: drive, job: { place: fargo }, changes: [extra('12.34')] }));
  const before = JSON.stringify(input);
  expect(priceQuote(input)).toEqual(priceQuote(input));
  expect(JSON.stringify(input)).toBe(before);
});
