import { describe, expect, test } from 'vitest';
import { holidayHint, holidaysOf } from '../../../electron/api/holidays.ts';

const dates = (country: string, region: string, year = 2026) =>
  holidaysOf({ country, region, years: [year] }).map(({ date }) => date.slice(5));

describe('public holidays', () => {
  test('are those of the region: Family Day in Ontario, Epiphany in Bavaria, Labour Day in Zurich', () => {
    expect([dates('CA', 'Ontario').includes('02-16'), dates('CA', '').includes('02-16')]).toEqual([true, false]);
    expect([dates('DE', 'Bavaria').includes('01-06'), dates('DE', 'Hamburg').includes('01-06')]).toEqual([true, false]);
    expect([dates('CH', 'Canton of Zurich').includes('05-01'), dates('CH', '').includes('05-01')]).toEqual([true, false]);
  });
  test('come once for each date, in order, for each year once', () => {
    const found = holidaysOf({ country: 'US', region: 'Minnesota', years: [2027, 2026, 2027] }).map(({ date }) => date);
    expect(found).toEqual([...new Set(found)].toSorted());
    expect(new Set(found.map((date) => date.slice(0, 4)))).toEqual(new Set(['2026', '2027']));
  });
  test('leave half days out', () => expect(dates('CN', '')).not.toContain('03-08'));
  test('of a country without a list are none', () => expect(holidaysOf({ country: 'AQ', region: '', years: [2026] })).toEqual([]));
});

test('are told as a hint, with what is not known', () => {
  expect(holidayHint({ country: 'CA', region: 'Ontario' })).toBe(
    'A hint from a public list for Ontario, Canada. Your own calendar decides.',
  );
  expect(holidayHint({ country: 'NL', region: 'Limburg' })).toBe(
    'A hint from a public list for Netherlands. Those of Limburg alone are not known. Your own calendar decides.',
  );
  expect(holidayHint({ country: 'AQ', region: '' })).toBe('No list of public holidays for Antarctica.');
});
