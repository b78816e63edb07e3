/**
 * Runs of days of which clauses tell those that are wanted, and dates to come beside words of what was.
 */
import { describe, expect, test } from 'vitest';
import { readAt } from './reading.ts';

const FESTIVAL = 'Our beer festival in Fargo runs from Thursday 4 to Sunday 7 March 2027. ';
const PAY = ' $450 a day for one videographer. Are you free?';
const [THU, FRI, SAT, SUN] = ['2027-03-04', '2027-03-05', '2027-03-06', '2027-03-07'];

describe('part of a run', () => {
  test.each([
    ["We'd like you on the brewery stage for the last two days.", [SAT, SUN]],
    ["You'd be with us for the first two days only.", [THU, FRI]],
    ["I'd like the Friday and the Saturday filmed, not the other two.", [FRI, SAT]],
    ['filming on saturday only, the rest is covered', [SAT]],
    ["Really just the Saturday, that's when the barrels roll.", [SAT]],
    ["We can't stretch to all four so it'd be the Friday and the closing night filmed please.", [FRI, SUN]],
    ['Not the whole run: first and last day.', [THU, SUN]],
    ["The barrel race on the 6th is what I'm writing about.", [SAT]],
    ["Saturday is the family day, and that's the one we'd want footage of.", [SAT]],
    ["We'd be glad to have somebody record the barrel race on Saturday the 6th.", [SAT]],
    ['Video coverage is sought on the 1st day and 4th day only.', [THU, SUN]],
    ['Requirement is one cameraman for 6 & 7 only, 4th and 5th are travel.', [SAT, SUN]],
    ["We'd like the parade on Saturday and the prize-giving on Sunday recorded.", [SAT, SUN]],
    ['My colleague can do Friday, Saturday and Sunday but not the first day. Could you film that one?', [THU]],
    ['It would be the Saturday and Sunday for you, both days. Nothing on Thursday, and Friday is private.', [SAT, SUN]],
  ])('%s', (sentence, days) => {
    const { fields } = readAt(FESTIVAL + sentence + PAY);
    expect([fields.start, fields.end, fields.days]).toEqual([days[0], days.at(-1), days.length]);
  });

  test.each([
    'Be here at 8 on the Thursday; you are released at 5 pm on the Sunday.',
    'We want you for all four days.',
    'Friday is the busiest, so bring spare batteries.',
    'Doors are at noon on Thursday and at ten on the other days.',
    'Saturday night goes on longest, you leave at 11 pm then.',
  ])('all of it: %s', (sentence) => {
    const { fields } = readAt(FESTIVAL + sentence + PAY);
    expect([undefined, THU]).toContain(fields.start);
    expect([undefined, SUN]).toContain(fields.end);
  });

  test.each([
    [
      'On the first day the jury works in silence and we need nothing. On the second day the prizes are given, film that please.',
      ['2027-03-05'],
    ],
    ['The Thursday we have already got a guy. Friday you would be on your own with the camera.', ['2027-03-05']],
  ])('of two days: %s', (sentence, days) => {
    const { fields } = readAt(`Our jury meets in Fargo on 4 and 5 March 2027 (Thursday and Friday). ${sentence} $450. Are you free?`);
    expect([fields.start, fields.end, fields.days]).toEqual([days[0], days.at(-1), days.length]);
  });
});

describe('a date to come beside words of what was', () => {
  test.each([
    'We had in mind Thursday 4 March for it, in Fargo. Would you film it? $400.',
    "It's about the fete film. Everything as I said: Thursday 4 March, Fargo, be there at noon. $400. Can you do it?",
    "I'm writing down what we said so I don't forget: Thursday March 4, the hall in Fargo, you film from 4. $400. Are you free?",
    'We put the boat in the water Thursday 4 March in Fargo and want it filmed. Are you free? $400.',
  ])('%s', (text) => {
    expect([THU, undefined]).toContain(readAt(text).fields.start);
  });

  test.each([
    'The concert was to be on 4 March in Fargo but is postponed, the new date is still open. Would you film it? $400.',
    'Our old date of 4 March in Fargo is cancelled. Would you film the concert all the same, once we know when?',
  ])('what holds no more: %s', (text) => {
    expect(readAt(text).fields.start).toBeUndefined();
  });
});

describe('days beside the one that is named', () => {
  test.each([
    "My mother turns 70 on Friday 5 March and there's a surprise dinner the evening after in Fargo. Would you film it? $400.",
    'Our headmaster retires on Friday 5 March and his party is the evening before, in Fargo. Would you film it? $400.',
  ])('the day that is kept or the one beside it: %s', (text) => {
    const { fields, questions } = readAt(text);
    expect(fields.start).toBeUndefined();
    expect(questions.find(({ field }) => field === 'start')?.choices.length).toBe(2);
  });

  test.each([
    [
      'The semi is on Saturday 6 March and the final is the 20th, both in Fargo. Would you film it? $450 a day, home by 6 both days.',
      '2027-03-20',
    ],
    ['The semi is on Saturday 6 March, or if it rains the 20th, in Fargo. Would you film it? $450.', '2027-03-06'],
  ])('%s', (text, end) => {
    expect([undefined, end]).toContain(readAt(text).fields.end);
  });
});

describe('whichever it is', () => {
  test.each([
    "Could you film our concert in Fargo on Friday, March 6? My calendar says the 6th's a Saturday. $400.",
    'Would you film in Fargo on 4 March or, failing that, on 11 March? $400.',
  ])('it is one day: %s', (text) => {
    const { fields } = readAt(text);
    expect([fields.start, fields.days]).toEqual([undefined, 1]);
  });
});
