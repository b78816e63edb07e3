import { describe, expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

/** First and last day, and how many, of "Can you film <when> in Duluth?" received on Wednesday 25 November 2026. */
function days(when: string, home = 'duluth'): string {
  const { start, end, days: count } = facts(`Can you film ${when}? It is a conference.`, undefined, home);
  return start === undefined ? 'asked' : `${start} ${end} ${count ?? '-'}`;
}

describe('dates as they are written', () => {
  test.each([
    // Easter of 2027 is on 28 March.
    ['on Good Friday', '2027-03-26 2027-03-26 1'],
    ['on Easter Monday', '2027-03-29 2027-03-29 1'],
    ['the Saturday after 12 March', '2027-03-13 2027-03-13 1'],
    ['on Black Friday', 'asked'],
    ['on the last weekend of March', '2027-03-27 2027-03-28 2'],
    ['on 11, 12, 13 December, the Saturday only', '2026-12-12 2026-12-12 1'],
    ['on 12 December', '2026-12-12 2026-12-12 1'],
    ['on December 12th', '2026-12-12 2026-12-12 1'],
    ['on the twelfth of December', '2026-12-12 2026-12-12 1'],
    ['on Sat Dec. 12', '2026-12-12 2026-12-12 1'],
    ['on 2026-12-12', '2026-12-12 2026-12-12 1'],
    ['on 12.12.2026', '2026-12-12 2026-12-12 1'],
    ['on 12-Dec-26', '2026-12-12 2026-12-12 1'],
    ['on 12, 13 December', '2026-12-12 2026-12-13 2'],
    ['on 7,8 May 2027', '2027-05-07 2027-05-08 2'],
    ['on Dec 11 fri and 12 sat', '2026-12-11 2026-12-12 2'],
    ['Dec 11th Friday to 13th Sunday', '2026-12-11 2026-12-13 3'],
    ['from Thursday 3.12 to Saturday 5.12', '2026-12-03 2026-12-05 3'],
    ['on 16.04 at 19.30', '2027-04-16 2027-04-16 1'],
    // The ninth of October 2027 is a Saturday.
    ['on Friday 9.10 to 16.00', 'asked'],
    ["tomorrow's tomorrow", '2026-11-27 2026-11-27 1'],
    ['sat night', '2026-11-28 2026-11-28 1'],
    ['12-13 December', '2026-12-12 2026-12-13 2'],
    ['Sunday to Thursday 6-10 December', '2026-12-06 2026-12-10 5'],
    // The twelfth of June 2027 is a Saturday.
    ['Fri to Sun 12-14 June', 'asked'],
    ['on Dec 12, 13, 14 please', '2026-12-12 2026-12-14 3'],
    ['on the 5th of December? or the 12th', 'asked'],
    ['on the 4th and 5th of December, Friday and Saturday', '2026-12-04 2026-12-05 2'],
    ['the 3rd 4th and 5th of may', '2027-05-03 2027-05-05 3'],
    ['on 4 and 5 December, but only the second night', '2026-12-05 2026-12-05 1'],
    ['fri + sat (4th/5th)', '2026-12-04 2026-12-05 2'],
    ['from August twentieth to the twenty-second', '2027-08-20 2027-08-22 3'],
    ['on Dec 4, 5, and Jan 8, 9', '2026-12-04 2027-01-09 4'],
    ['on 6 December (Superior), 7 December (Ashland), 8 December (Hayward)', '2026-12-06 2026-12-08 3'],
    ['Dec 12 to 14', '2026-12-12 2026-12-14 3'],
    ['from 30 Nov to 2 Dec', '2026-11-30 2026-12-02 3'],
    ['between Dec 5 and 8', '2026-12-05 2026-12-08 4'],
    ['Fri 11 - Sun 13 Dec', '2026-12-11 2026-12-13 3'],
    ['December 4 through 6', '2026-12-04 2026-12-06 3'],
    ['Dec 1 thru 3', '2026-12-01 2026-12-03 3'],
    ['Nov 29, 30 and Dec 1', '2026-11-29 2026-12-01 3'],
    ['on 3, 4 and 7 March', '2027-03-03 2027-03-07 3'],
    ['on December 5 & 19', '2026-12-05 2026-12-19 2'],
    ['30 December to 2 January', '2026-12-30 2027-01-02 4'],
    ['from 30 December to 2 January 2027', '2026-12-30 2027-01-02 4'],
    ['the weekend of 12 December', '2026-12-12 2026-12-13 2'],
    ['the weekend of the 13th', '2026-12-12 2026-12-13 2'],
    ['on 29 February', '2028-02-29 2028-02-29 1'],
    ['on the last day of February', '2027-02-28 2027-02-28 1'],
    ['on the last Friday of January', '2027-01-29 2027-01-29 1'],
    ['on the second Tuesday in March', '2027-03-09 2027-03-09 1'],
    ['tomorrow', '2026-11-26 2026-11-26 1'],
    ['in two days', '2026-11-27 2026-11-27 1'],
    ['in a fortnight', '2026-12-09 2026-12-09 1'],
    ['a week from Saturday', '2026-12-05 2026-12-05 1'],
    ['Saturday week', '2026-12-05 2026-12-05 1'],
    ['this Saturday', '2026-11-28 2026-11-28 1'],
    ['this weekend', '2026-11-28 2026-11-29 2'],
    ['on Tuesday of next week', '2026-12-01 2026-12-01 1'],
    ['Thursday to Saturday next week', '2026-12-03 2026-12-05 3'],
    ['on New Year’s Eve', '2026-12-31 2026-12-31 1'],
    ['12. bis 14. Dezember', '2026-12-12 2026-12-14 3'],
    ['les 18 et 19 mars', '2027-03-18 2027-03-19 2'],
    ['el 23 de octubre de 2027', '2027-10-23 2027-10-23 1'],
  ])('%s', (when, said) => expect(days(when)).toBe(said));

  test.each([
    ['day first in Leeds', '3/4/2027', 'leeds', '2027-04-03 2027-04-03 1'],
    ['month first in Duluth', '3/4/2027', 'duluth', '2027-03-04 2027-03-04 1'],
    ['either in Toronto', '3/4/2027', 'toronto', 'asked'],
    ['by what is possible', '29/11', 'duluth', '2026-11-29 2026-11-29 1'],
    ['as the other date of the message', '5/12 and 13/12', 'toronto', '2026-12-05 2026-12-13 2'],
    ['by the weekday beside it', 'Saturday 12/6/2027', 'toronto', '2027-06-12 2027-06-12 1'],
  ])('%s', (_, when, home, said) => expect(days(when, home)).toBe(said));

  test.each([
    'on 31 November',
    'on Saturday 11 December',
    'next Saturday',
    'on 12 or 13 December',
    'in March',
    'the week of 7 December',
    'on Wednesday',
    'on 20 November',
  ])('%s is asked', (when) => {
    const reading = readAt(`Can you film ${when}? It is a conference.`);
    expect(reading.fields.start).toBeUndefined();
    expect(reading.questions.map(({ field }) => field)).toContain('start');
  });

  test('two alternatives are offered as dates', () => {
    const asked = readAt('Can you film on 12 or 19 December?').questions.find(({ field }) => field === 'start');
    expect(asked?.choices.map(({ value }) => value)).toEqual(['2026-12-12', '2026-12-19']);
  });

  test.each([
    ['an invoice', 'Can you film on 12 December? Your invoice of 3 December is paid.'],
    ['last year', 'You filmed our gala on 5 December 2025. Can you film it again on 12 December?'],
    ['the edit', 'Can you film on 12 December? We need the edit by 18 December.'],
    ['a room', 'Can you film in room 14, 12 December?'],
    ['a street', 'Can you film on 12 December at 9 March Street?'],
    ['a call', 'Can you film on 12 December? Free for a quick call on Friday?'],
    ['a change', 'Can you film on 12 December (was 5 December)?'],
  ])('%s is not the shoot', (_, text) => expect(facts(text)).toMatchObject({ start: '2026-12-12', end: '2026-12-12' }));
});
