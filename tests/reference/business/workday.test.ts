/**
 * A date some business days from another, and the count between two, by the worked examples that a standard prints.
 * @source Ecma International, ECMA-376 part 1 (Office Open XML), sections WORKDAY and NETWORKDAYS of the formula functions, whose definition OASIS OpenDocument 1.3 part 4 (OpenFormula), sections 6.10.23 and 6.10.14, shares
 * OpenFormula itself prints no examples. Its rules: an offset of 0 gives the date itself, a negative offset an earlier date; weekends are
 * Saturday and Sunday. The four of WORKDAY were read in the standard's text; the three of NETWORKDAYS are from memory, the sign as its text says.
 */
import { expect, test } from 'vitest';
import { addBusinessDays, businessDaysBetween } from '../../../core/time/business.ts';

const holidays = ['2006-01-02', '2006-01-16'];

test.each([
  ['2006-01-01', 0, [], '2006-01-01'],
  ['2006-01-01', 10, [], '2006-01-13'],
  ['2006-01-01', -10, [], '2005-12-19'],
  ['2006-01-01', 20, holidays, '2006-01-31'],
])('%s, %i business days on', (date, days, without, then) => expect(addBusinessDays(date, days, new Set(without))).toBe(then));

test.each([
  ['2006-01-01', '2006-01-31', [], 22],
  ['2006-01-31', '2006-01-01', [], -22],
  ['2006-01-01', '2006-02-01', holidays, 21],
])('%s to %s', (from, to, without, days) => expect(businessDaysBetween(from, to, new Set(without))).toBe(days));

test.each([1, 5, 20, 250])(
  'both agree: from the first business day after a date to %i business days after it there are as many',
  (days) => {
    const without = new Set(['2026-12-25', '2027-01-01', '2027-01-18']);
    const then = addBusinessDays('2026-12-19', days, without);
    expect(businessDaysBetween('2026-12-20', then, without)).toBe(days);
  },
);
