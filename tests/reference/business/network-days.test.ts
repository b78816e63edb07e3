/**
 * Business days, both ends counted.
 * @source OASIS, OpenDocument Format 1.2 part 2, OpenFormula, section 6.10.14 NETWORKDAYS, 2011; the figures of the first two rows and the
 * last are worked examples of spreadsheet textbooks, those of the other three from memory
 */
import { expect, test } from 'vitest';
import { businessDaysBetween } from '../../../core/time/business.ts';

test.each([
  ['2014-01-15', '2014-06-30', [], 119],
  ['2010-12-12', '2011-06-02', ['2010-12-25', '2011-01-01', '2011-01-17', '2011-02-21', '2011-05-30', '2011-07-04'], 121],
  ['2012-10-01', '2013-03-01', [], 110],
  ['2012-10-01', '2013-03-01', ['2012-11-22'], 109],
  ['2012-10-01', '2013-03-01', ['2012-11-22', '2012-12-04', '2013-01-21'], 107],
  ['2011-12-30', '2012-01-06', ['2012-01-02'], 5],
])('%s to %s', (from, to, holidays, days) => expect(businessDaysBetween(from, to, new Set(holidays))).toBe(days));
