/**
 * Meals and incidentals of localities, over whole trips, as the log reckons them.
 * @source US General Services Administration, per diem rates of localities and M&IE breakdowns, fiscal years 2025 and 2026; Federal Travel Regulation, 41 CFR 301-11.101 and 301-11.102
 */
import { expect, test } from 'vitest';
import { ratesAt } from '../../../core/allowances/localities.ts';
import { perDiemLog } from '../../../core/expenses/per-diem-log.ts';
import { at, duluth } from '../../core/quotes/facts.ts';

const place = (name: string, region: string, country = 'US') => ({ ...duluth, key: `own:${name}`, name, region, country });

test.each([
  ['Denver', 'Colorado', '92'],
  ['Aurora', 'Colorado', '92'],
  ['Minneapolis', 'Minnesota', '92'],
  ['Saint Paul', 'Minnesota', '92'],
  ['Milwaukee', 'Wisconsin', '80'],
  ['Madison', 'Wisconsin', '80'],
  ['New Orleans', 'Louisiana', '80'],
  ['Chicago', 'Illinois', '92'],
  ['Nashville', 'Tennessee', '86'],
  ['Las Vegas', 'Nevada', '86'],
  ['Austin', 'Texas', '80'],
  ['Seattle', 'Washington', '92'],
  ['Portland', 'Oregon', '86'],
  ['Portland', 'Maine', '68'],
  ['Detroit', 'Michigan', '74'],
  ['New York City', 'New York', '92'],
  ['San Diego', 'California', '86'],
  ['Los Angeles', 'California', '86'],
])('a day in %s, %s is %s', (name, region, day) => {
  const [rate] = ratesAt(place(name, region), 'US');
  expect(rate).toMatchObject({ place: name, day, from: '2024-10-01', to: '2026-09-30' });
});

const cents = (trip: [string, string], where = place('Denver', 'Colorado')) =>
  perDiemLog(
    [{ jobId: '01890000-0000-7000-8000-0000000000c1', title: 'Fair', place: where, doorOutAt: at(trip[0]), doorInAt: at(trip[1]) }],
    duluth,
  ).map(({ amount }) => amount?.minor ?? null);

test('Denver, three days and two nights in April: 69.00 + 92.00 + 69.00 = 230.00', () =>
  expect(cents(['2026-04-13T07:00', '2026-04-15T19:00'])).toEqual([6_900, 9_200, 6_900]));
test('standard rate, 13 h without a night: 51.00; 12 h: nothing', () => {
  expect(cents(['2026-04-13T07:00', '2026-04-13T20:00'], place('Fargo', 'North Dakota'))).toEqual([5_100]);
  expect(cents(['2026-04-13T07:00', '2026-04-13T19:00'], place('Fargo', 'North Dakota'))).toEqual([]);
});
test('the first and the last date of the fiscal years are known, those around them are not', () => {
  expect(cents(['2024-09-30T07:00', '2024-10-01T19:00'])).toEqual([null, 6_900]);
  expect(cents(['2026-09-30T07:00', '2026-10-01T19:00'])).toEqual([6_900, null]);
});
test('outside the contiguous states others set the rates', () => {
  for (const where of [place('Anchorage', 'Alaska'), place('Honolulu', 'Hawaii'), place('Thunder Bay', 'Ontario', 'CA')])
    expect(ratesAt(where, 'US')).toEqual([]);
});
