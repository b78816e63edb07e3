/** The one date that is told, however it is said: with its own weekday behind it, with hours behind a dash, or with words that rules take for something else. */
import { describe, expect, test } from 'vitest';
import { daysOf, facts, readAt } from './reading.ts';

const SELF =
  'We are a small choir of amateurs, and this time our conductor says goodbye after eleven years, so we would love to have something to keep.';
const told = (sentence: string): string => `Hi Kit, ${SELF} ${sentence} Could you be there at 3pm? We can pay £300.\nThanks, Dana Holt`;

describe('a weekday behind a date is its own', () => {
  test.each([
    ['12-11', 'Could you film us in Ripon on 11 December 2027, Saturday?'],
    ['12-08', 'Could you film us in Ripon on 8 December, Wednesday, in the minster?'],
    ['12-11', 'Could you film us in Ripon on 11 December, a Saturday?'],
    ['12-11', 'Our concert in Ripon is 11 December, Saturday. We would like a film of it.'],
  ])('%s: %s', (days, sentence) => expect(daysOf(told(sentence))).toBe(days));

  test.each([
    ['11 December, Saturday, and again on the Sunday', '2027-12-12'],
    ['8 December, Wednesday, and the Saturday', '2027-12-11'],
  ])('another one behind it is asked about: %s', (days, other) => {
    const { fields, questions } = readAt(
      told(`Could you film us in Ripon on ${days}?`),
      '2027-09-01T10:00:00+01:00[Europe/London]',
      'leeds',
    );
    expect(fields.start).toBeUndefined();
    expect(questions.find(({ field }) => field === 'end')?.choices.map(({ value }) => value)).toContain(other);
  });
});

describe('hours beside a date', () => {
  const AT = '2027-05-03T10:00:00-05:00[America/Chicago]';
  test.each([
    ['Jul 9', 'Jul 9 - 8:00 AM to 8:00 PM', '2027-07-09', '08:00', '20:00'],
    ['Jul 23', 'Jul 23 - 8:00 AM to 8:00 PM', '2027-07-23', '08:00', '20:00'],
    ['July 9', 'July 9 - 5 pm to 10 pm', '2027-07-09', '17:00', '22:00'],
  ])('%s is the day: %s', (_, words, day, call, wrap) =>
    expect(facts(`Can you film our launch in Fargo, ${words}? $400.\n\nThanks, Robin`, AT)).toMatchObject({
      start: day,
      end: day,
      firstCall: `${day}T${call}`,
      lastWrap: `${day}T${wrap}`,
    }),
  );

  test('a full stop parts the last day from the hour behind it', () =>
    expect(facts('Kit, can you film our launch in Fargo? June 25-27. 7a call Friday, wrap 5p Sunday. $700 a day. Robin', AT)).toMatchObject(
      {
        start: '2027-06-25',
        end: '2027-06-27',
      },
    ));

  test('what is counted stands on the line of its number', () =>
    expect(
      facts(
        'Can you film our expo in Fargo?\n\nDates: Thu 11/4 and Fri 11/5\nCrew call: 6:00 AM both days\nWrap: 5 PM\nRate: $800/day\n\nRobin',
        AT,
      ),
    ).toMatchObject({ start: '2027-11-04', end: '2027-11-05' }));

  test.each(['Could you film our launch in Fargo on Saturday, 5-9 pm?', 'Could you film our launch in Fargo on Saturday 9 to 5?'])(
    'hours behind a weekday stay hours: %s',
    (text) => expect(facts(text, AT).start).toBe('2027-05-08'),
  );
});

describe('the one date that rules take for something else is the day, where the weights are sure of it', () => {
  test.each([
    ['12-11', 'My mother turns 80 on Saturday 11 December and we are having a lunch for her in Ripon that we would love to have on film.'],
    [
      '12-11',
      'My sister is getting married in Ripon on Saturday 11 December and the lad who was to film it has gone to Canada. Could you do it?',
    ],
    ['12-11', 'We want video of the opening of our clinic in Ripon dated 11/12/2027.'],
    ['12-11', 'You filmed our supper in 2025 and we would love the same again: Ripon, Saturday 11 December.'],
  ])('%s: %s', (days, sentence) => expect(daysOf(told(sentence))).toBe(days));

  test.each([
    'Could you film our supper in Ripon? The deposit was paid on 11 December.',
    'Could you film our supper in Ripon? We will send the contract on 11 December.',
    'Could you film our supper in Ripon? Tickets go on sale on 11 December.',
    'Could you film our supper in Ripon? Last year it was on 11 December.',
    'Could you film our supper in Ripon? Your invoice is paid on 11 December.',
    'Could you film our supper in Ripon? I fly to Canada on 11 December.',
    'Could you film our supper in Ripon? The programme goes to print on 11 December.',
    'Could you film our supper in Ripon some time next spring? The committee meets on 11 December.',
  ])('not of what is beside the work: %s', (sentence) => expect(daysOf(told(sentence))).toBe('ask'));
});
