/** Days that are told beside those of the job and go before it: when something is printed, handed in or decided, when a mail was written, a month that has been. */
import { describe, expect, test } from 'vitest';
import { daysOf } from './reading.ts';

const told = (sentence: string): string =>
  `Hi Kit, we are a small choir of amateurs. Could you film our concert in Ripon on Saturday 11 December? Please be there at 3pm, we finish at 9pm. ${sentence} We can pay £300.\nThanks, Dana Holt`;

describe('the day of the job is the other one', () => {
  test.each([
    'The programme goes to print on 16 November.',
    'I am sending the brochure to the printers on 16 November.',
    'I hand in the crew list on 16 November.',
    'Our proposal to the council goes in on 16 November.',
    'I must close the crew on 16 November.',
    'I am telling the host on 16 November who I have got.',
    'I report back on 16 November.',
    'The Session next meets on Tuesday 16 November. May I have your answer before?',
    'By the way the AGM is 16 November, so a price before then helps.',
    'We have our meeting on 16 November, so we would like to know before that.',
    'Bids after noon on 16 November will not be opened.',
    'Responses close: 12 noon, Tuesday 16 November 2027.',
    'We emailed in January.',
    'You bought a calendar off us at Christmas.',
    'Thanks for your quote of the 12th.',
    'I refer to your letter of 12 August.',
    'The three heads meet on 16 November, so a price beforehand would help.',
    'Hotel: night of 10 December, on us.',
  ])('%s', (sentence) => expect(daysOf(told(sentence))).toBe('12-11'));
});

test.each([
  'Could you film our concert in Ripon sometime in March? We need an answer. The committee next meets on 16 November.',
  'We spoke about the concert in Ripon in March. Could you film it? The committee next meets on 16 November.',
])('no other day is told: %s', (sentence) => expect(daysOf(`Hi Kit, ${sentence} We can pay £300.\nThanks, Dana Holt`)).not.toMatch(/^03/));

test.each([
  ['11-16', 'Could you film our board in Ripon on 16 November? The board meets at 9 and goes on to 4. What is your price?'],
  ['11-16', 'Could you film our open day in Ripon on 16 November? The programme goes to print in October.'],
])('%s: %s', (days, sentence) => expect(daysOf(`Hi Kit, ${sentence} We can pay £300.\nThanks, Dana Holt`)).toBe(days));

describe('dates in a list', () => {
  const list = (lead: string): string => `Name: Dana Holt\n${lead}\nCity: Ripon\nType: filming of three talks\nBudget: £300 per session`;
  test.each([
    ['10-01,10-08,10-15', 'Date(s) required: October 1, 2027; October 8, 2027; October 15, 2027'],
    ['ask', 'Date: October 1, 2027; or October 8, 2027'],
  ])('%s: %s', (days, lead) => expect(daysOf(list(lead))).toBe(days));
});
