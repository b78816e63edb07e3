import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addBusinessDays, businessDaysBefore, businessDaysBetween, isBusinessDay } from '../../../core/time/business.ts';
import { dateLater } from '../../../core/time/wall.ts';
import { tried } from '../laws.ts';

const none = new Set<string>();
const labourDay = new Set(['2026-09-07']);

test('Monday to Friday without holidays', () => {
  const week = Array.from({ length: 7 }, (_, order) => dateLater('2026-09-07', order));
  expect(week.map((date) => isBusinessDay(date, labourDay))).toEqual([false, true, true, true, true, false, false]);
});

describe('notice', () => {
  test.each([
    // Tuesday's call: Thursday, Friday and Monday are three, Monday a holiday leaves two
    ['2026-09-08', '2026-09-03', none, 3],
    ['2026-09-08', '2026-09-03', labourDay, 2],
    ['2026-09-08', '2026-09-05', labourDay, 0],
    ['2026-09-08', '2026-09-08', none, 0],
    ['2026-09-08', '2026-09-20', none, 0],
  ])('for %s given on %s', (day, on, holidays, days) => expect(businessDaysBefore(day, on, holidays)).toBe(days));
});

test.each([
  ['2026-09-04', 1, '2026-09-08'],
  ['2026-09-05', 1, '2026-09-08'],
  ['2026-09-05', 0, '2026-09-05'],
  ['2026-09-08', -1, '2026-09-04'],
  ['2026-09-08', -6, '2026-08-28'],
])('%s and %d business days', (date, days, then) => expect(addBusinessDays(date, days, labourDay)).toBe(then));

const date = fc.integer({ min: 0, max: 3000 }).map((days) => dateLater('2024-01-01', days));
const holidays = fc.array(date, { maxLength: 60 }).map((dates) => new Set(dates));

test('the count is that of every date looked at alone', () =>
  fc.assert(
    fc.property(date, fc.integer({ min: 0, max: 120 }), holidays, (from, length, off) => {
      const dates = Array.from({ length: length + 1 }, (_, order) => dateLater(from, order));
      expect(businessDaysBetween(from, dates.at(-1) ?? from, off)).toBe(dates.filter((each) => isBusinessDay(each, off)).length);
    }),
    tried,
  ));

test('going forth is counted back: the first day is left out, the last is one', () =>
  fc.assert(
    fc.property(date, fc.integer({ min: 1, max: 60 }), holidays, (from, days, off) => {
      const then = addBusinessDays(from, days, off);
      expect(isBusinessDay(then, off)).toBe(true);
      expect(businessDaysBetween(dateLater(from, 1), then, off)).toBe(days);
    }),
    tried,
  ));

test('backwards is the same number, negative', () => expect(businessDaysBetween('2026-09-11', '2026-09-07', none)).toBe(-5));
