import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blankClient } from '../../../core/people/blank.ts';
import { clientOf, troubleOf } from '../../../core/people/card.ts';
import { closedBetween, closedDates, closedInWords, closedTogether, readClosed } from '../../../core/people/closed.ts';
import { cardsFromCsv } from '../../../core/people/csv.ts';
import { mergedClient } from '../../../core/people/merge.ts';
import { dateLater } from '../../../core/time/wall.ts';
import { tried } from '../laws.ts';

const summer = { from: '2026-07-06', to: '2026-07-17', name: 'Summer break' };
const friday = { from: '2026-07-31', to: '2026-07-31', name: '' };

test('both ends count, and a date in two runs is one date', () => {
  expect(closedDates([summer]).size).toBe(12);
  expect(closedDates([summer, { ...summer, to: '2026-07-18' }]).size).toBe(13);
});

test('runs that touch the dates asked for, at their ends too', () => {
  const names = (first: string, last: string) => closedBetween([friday, summer], first, last).map(({ from }) => from);
  expect(names('2026-07-17', '2026-07-31')).toEqual(['2026-07-06', '2026-07-31']);
  expect(names('2026-07-18', '2026-07-30')).toEqual([]);
});

test('in words', () => {
  expect(closedInWords([summer, friday])).toBe('Summer break (Mon 6 July 2026 to Fri 17 July 2026) and Fri 31 July 2026');
});

describe('from a file', () => {
  test('runs and single dates, with and without a name', () => {
    expect(readClosed('2026-07-31; 2026-07-06 to 2026-07-17 Summer break;\n2026-12-24/2026-12-31: Year end')).toEqual([
      summer,
      friday,
      { from: '2026-12-24', to: '2026-12-31', name: 'Year end' },
    ]);
    expect(readClosed('')).toEqual([]);
  });
  test.each([
    ['next week', 'is not a holiday'],
    ['2026-02-30', 'is not a holiday'],
    ['2026-07-17 to 2026-07-06', 'ends before it begins'],
  ])('%s is refused', (text, why) => expect(readClosed(text)).toContain(why));

  test('a column of the table becomes their holidays; a row that cannot be read is refused whole', () => {
    const [kept, bad, year, long] = cardsFromCsv(
      'Name,Holidays\nQuay Hall,2026-07-31\nLoaf,soon\nYear,2026-01-01 to 2027-01-01\nPier,2026-01-01 to 2027-01-02\n',
    );
    expect(kept && troubleOf(kept)).toBeNull();
    expect(kept && clientOf(kept)).toEqual({ ...blankClient('Quay Hall'), closed: [friday] });
    expect(bad && troubleOf(bad)).toContain('"soon" is not a holiday');
    expect(year && troubleOf(year)).toBeNull();
    expect(long && troubleOf(long)).toContain('is more than 365 days');
  });
});

test('folded together: all runs of both, the same run once and with its name', () => {
  const [keep, fold] = [
    { ...blankClient('A'), closed: [{ ...summer, name: '' }] },
    { ...blankClient('B'), closed: [friday, summer] },
  ];
  expect(mergedClient(keep, fold)?.closed).toEqual([summer, friday]);
  expect(mergedClient(blankClient('A'), fold)?.closed).toEqual([summer, friday]);
});

test('joining forgets no date and adds none', () => {
  const runs = fc.array(
    fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 20 })).map(([start, length]) => {
      const from = dateLater('2026-07-01', start);
      return { from, to: dateLater(from, length), name: '' };
    }),
    { maxLength: 6 },
  );
  fc.assert(
    fc.property(runs, runs, (one, other) => {
      expect([...closedDates(closedTogether(one, other))].toSorted()).toEqual([...closedDates([...one, ...other])].toSorted());
    }),
    tried,
  );
});
