/**
 * Ways of saying one thing: whatever the words, the hour of the wrap and the time to answer by are found, and no other time is taken for them.
 */
import { describe, expect, test } from 'vitest';
import { said, waysOf } from '../../reader/ways.ts';
import { facts, readAt } from './reading.ts';

describe('wrap at five', () => {
  const ways = waysOf('wraps');
  test.each(ways)('%s', (way) => expect(facts(said(`Call 9am. ${way}`)).lastWrap).toBe('2026-12-12T17:00'));
});

describe('an answer by 1 December', () => {
  const ways = waysOf('replies');
  test.each(ways)('%s', (way) => expect(facts(said(way)).replyBy).toBe('2026-12-01T23:59'));
});

describe('a time that is no time to answer by', () => {
  const ways = waysOf('no-replies');
  test.each(ways)('%s', (way) => expect(facts(said(way)).replyBy).toBeUndefined());
});

test.each([
  ['Can you film our wedding in Fargo on Sat 6 March: ceremony and reception, 4 pm to midnight?', '2027-03-07T00:00'],
  ['Can you film our wedding in Fargo?\n\nSat 6 March: ceremony and reception, 4 pm to 11 pm\n', '2027-03-06T23:00'],
])('when an occasion ends is no wrap of mine, and offered as one: %s', (text, wall) => {
  const { fields, questions } = readAt(text);
  expect(fields.lastWrap).toBeUndefined();
  expect(questions.find(({ field }) => field === 'lastWrap')?.choices.map(({ value }) => value)).toEqual([wall]);
});
