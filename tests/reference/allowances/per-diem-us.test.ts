/**
 * Meals and incidentals by tier and by the rule for first and last day.
 * @source US General Services Administration, M&IE breakdowns and Per Diem Bulletin FTR 26-01, fiscal years 2025 and 2026; Federal Travel Regulation, 41 CFR 301-11.101, 301-11.102 and 301-11.18
 */
import { describe, expect, test } from 'vitest';
import { perDiemOf, type DateAway } from '../../../core/allowances/per-diem.ts';
import { perDiemOn, usTier, type PerDiemRate } from '../../../core/allowances/rates.ts';
import { exact } from '../../../core/money/exact.ts';

const known = (place: string, tier: string): PerDiemRate[] => {
  const rate = usTier(place, tier);
  return rate ? [rate] : [];
};
const rates = [...known('Standard', '68'), ...known('Denver', '92'), ...known('Milwaukee', '80')];
const away = (date: string, place: string, ...furnished: DateAway['furnished']): DateAway => ({ date, place, furnished });
const cents = (dates: DateAway[], nights: number, hoursAway = nights * 24) =>
  perDiemOf({ dates, nights, hoursAway }, rates).map((line) => line.amount?.minor ?? null);
const total = (dates: DateAway[], nights: number, hoursAway?: number) =>
  cents(dates, nights, hoursAway).reduce((sum: number, amount) => sum + (amount ?? 0), 0);

describe('the tiers', () => {
  test.each([
    ['68', 5_100],
    ['74', 5_550],
    ['80', 6_000],
    ['86', 6_450],
    ['92', 6_900],
  ])('of %s: meals and incidentals add up, and 75 %% are %i cents', (tier, edge) => {
    const [rate] = known('There', tier);
    if (!rate) throw new Error('no tier');
    const parts = [...Object.values(rate.meals), rate.incidental];
    expect(parts.reduce((sum, part) => sum.add(exact(part)), exact(0)).equals(exact(tier))).toBe(true);
    expect(perDiemOf({ dates: [away('2026-04-07', 'There')], nights: 0, hoursAway: 13 }, [rate])[0]?.amount?.minor).toBe(edge);
  });
  test('another tier is not made up', () => expect(usTier('There', '70')).toBeUndefined());
});

describe('Denver, three days and two nights in April', () => {
  const days = (second: DateAway['furnished'] = [], first: DateAway['furnished'] = []) => [
    away('2026-04-07', 'Denver', ...first),
    away('2026-04-08', 'Denver', ...second),
    away('2026-04-09', 'Denver'),
  ];
  test('69.00 + 92.00 + 69.00 = 230.00', () => expect(cents(days(), 2)).toEqual([6_900, 9_200, 6_900]));
  test('a lunch furnished on day 2: 204.00', () => expect(total(days(['lunch']), 2)).toBe(20_400));
  test('a lunch furnished on day 1 is deducted in full as well: 43.00, 204.00', () => {
    expect(cents(days([], ['lunch']), 2)[0]).toBe(4_300);
    expect(total(days([], ['lunch']), 2)).toBe(20_400);
  });
  test('all meals furnished leave the incidental part', () => expect(cents(days([], ['breakfast', 'lunch', 'dinner']), 2)[0]).toBe(500));
});

describe('a day without a night', () => {
  test('of 13 h at the standard rate is 51.00', () => expect(cents([away('2026-05-04', 'Standard')], 0, 13)).toEqual([5_100]));
  test('of exactly 12 h is nothing', () => expect(cents([away('2026-05-04', 'Standard')], 0, 12)).toEqual([]));
  test('over midnight is allowed once', () =>
    expect(cents([away('2026-05-04', 'Standard'), away('2026-05-05', 'Standard')], 0, 15)).toEqual([5_100]));
});

test('on the road between two places the night decides, and the last day takes the rate of the previous night', () => {
  const dates = [away('2026-05-04', 'Milwaukee'), away('2026-05-05', 'Denver'), away('2026-05-06', 'Denver')];
  expect(cents(dates, 2)).toEqual([6_000, 9_200, 6_900]);
});

test('a date outside the known years has no amount and says so', () => {
  expect(perDiemOn(rates, 'Denver', '2026-10-01')).toBeUndefined();
  const [line] = perDiemOf({ dates: [away('2026-10-01', 'Denver'), away('2026-10-02', 'Denver')], nights: 1, hoursAway: 30 }, rates);
  expect(line).toEqual({
    date: '2026-10-01',
    amount: null,
    reason: 'No per-diem rate for Denver is known on 2026-10-01; ask for the one in force.',
  });
});
