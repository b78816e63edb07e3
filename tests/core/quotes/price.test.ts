import { describe, expect, test } from 'vitest';
import { at, day, drive, fargo, lineOf, quoteOf } from './facts.ts';

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
    const guessed = quoteOf({ trip: { ...drive, source: 'estimated', roadKnown: false }, job: { place: fargo } });
    expect(lineOf(guessed, 'travel/mileage')?.estimated).toBe(true);
    expect(guessed.cautions.join(' ')).toContain('The drive is estimated; type how long it takes');
    const far = quoteOf({ trip: { ...drive, source: 'estimated', roadKnown: false, outMinutes: 6856 }, job: { place: fargo } });
    expect(far.cautions.join(' ')).toContain('The drive is estimated at up to 114 h 16 min one way. If you fly, type the flight:');
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
