/**
 * Our list of public holidays has the federal ones of the United States, and the day on which one is observed that falls on a weekend.
 * @source United States Code, title 5, section 6103(a) and (b), as in force since 17 June 2021
 */
import { expect, test } from 'vitest';
import { holidaysOf } from '../../../electron/api/holidays.ts';

const dates = (year: number) => holidaysOf({ country: 'US', region: '', years: [year] }).map(({ date }) => date);

test.each([
  [
    2026,
    ['01-01', '01-19', '02-16', '05-25', '06-19', '07-03', '09-07', '10-12', '11-11', '11-26', '12-25'], // Independence Day observed on Friday
  ],
  [
    2027,
    ['01-01', '01-18', '02-15', '05-31', '06-18', '07-05', '09-06', '10-11', '11-11', '11-25', '12-24', '12-31'], // New Year 2028 on Friday before
  ],
])('%i', (year, federal) => expect(dates(year)).toEqual(expect.arrayContaining(federal.map((date) => `${year}-${date}`))));
