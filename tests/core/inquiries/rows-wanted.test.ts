/**
 * Programmes of which a sentence names some rows, and runs of which somebody else has a day.
 */
import { describe, expect, test } from 'vitest';
import { readAt } from './reading.ts';

const WEEKEND = `Our wedding weekend in Fargo:

Fri 5 March: welcome drinks, 6:30 pm
Sat 6 March: ceremony and reception, 4 pm to midnight
Sun 7 March: brunch, 10 am

`;
const CONCERTS = `Programme of our organ week in Duluth:

Thu 4 March – workshop (closed)
Fri 5 March – opening recital, 19:30
Sat 6 March – workshop (closed)
Sun 7 March – closing recital, 11:00

`;

describe('rows that a sentence names', () => {
  test.each([
    ["We'd love video of the reception only. Can you do it?", WEEKEND, ['2027-03-06']],
    ['We only want the brunch filmed. Are you free?', WEEKEND, ['2027-03-07']],
    ['Only the brunch needs filming; the ceremony is covered by my uncle. Are you free?', WEEKEND, ['2027-03-07']],
    ['We only want the ceremony filmed, not the brunch. Are you free?', WEEKEND, ['2027-03-06']],
    ['We would like both recitals recorded with one camera.', CONCERTS, ['2027-03-05', '2027-03-07']],
  ])('%s', (sentence, rows, days) => {
    const { fields } = readAt(rows + sentence);
    expect([fields.start, fields.end, fields.days]).toEqual([days[0], days.at(-1), days.length]);
  });

  test.each(['Could you film the ceremony?', 'We need a camera at the brunch.'])('%s', (sentence) => {
    const { fields, questions } = readAt(WEEKEND + sentence);
    expect(fields.start).toBeUndefined();
    expect(questions.find(({ field }) => field === 'start')?.choices.length).toBe(2);
  });

  test.each([
    'We only want the drinks and the brunch filmed, not the reception. Are you free?',
    'Could you film? No need to cover the brunch.',
    'Could you film everything apart from the brunch?',
  ])('what is named beside a no is not taken for wanted: %s', (sentence) => {
    const { fields, questions } = readAt(WEEKEND + sentence);
    expect(fields.start).toBeUndefined();
    expect(questions.find(({ field }) => field === 'start')?.choices.length).toBe(4);
  });

  test('a sentence that names no row leaves all of them', () => {
    const { fields } = readAt(`${WEEKEND}Could you film all three days?`);
    expect([fields.start, fields.end]).toEqual(['2027-03-05', '2027-03-07']);
  });
});

describe('a day that somebody else has', () => {
  test.each([
    "Graduations in Fargo, 2, 3 and 4 March 2027 (Tue to Thu). We've an operator for the Tuesday. Would you film them?",
    'Games in Fargo on 6 and 7 March 2027. My brother is filming the Saturday. Would you film as well?',
    'Market weekends in Fargo: 6-7 March, 13-14 March 2027. The second weekend is yours if you want it, $380 a day to film.',
  ])('%s', (text) => {
    const { fields, questions } = readAt(text);
    expect([fields.start, fields.end]).toEqual([undefined, undefined]);
    expect(questions.some(({ field }) => field === 'start')).toBe(true);
  });
});

test('a day that is asked for beside one that somebody else has', () => {
  const { fields } = readAt('Games in Fargo on 6 and 7 March 2027. My brother is filming the Saturday, would you do the Sunday?');
  expect([fields.start, fields.end]).toEqual(['2027-03-07', '2027-03-07']);
});

describe('days in words', () => {
  test('some of a run that is told by ordinals', () => {
    const { fields } = readAt(
      'Trade show in Fargo on the fourteenth, fifteenth and sixteenth of January, and we only want you to film on the fifteenth.',
    );
    expect([fields.start, fields.end, fields.days]).toEqual(['2027-01-15', '2027-01-15', 1]);
  });

  test('an anniversary is no day', () => {
    const { fields } = readAt('Can you film the fifteenth anniversary of our club in Fargo on 12 December?');
    expect([fields.start, fields.end]).toEqual(['2026-12-12', '2026-12-12']);
  });
});
