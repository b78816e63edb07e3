/** More days than the one that is named: what is told behind it in its sentence, and what the words of the whole message say of how many there are. */
import { describe, expect, test } from 'vitest';
import { saidLength, waysOf } from '../../reader/ways.ts';
import { facts, readAt } from './reading.ts';

const SELF =
  'We are a small choir of amateurs who sing twice a year, and this time our conductor says goodbye after eleven years, so we would love to have something to keep.';
const asked = (sentence: string): string =>
  `Hi Kit, ${SELF} Could you film it for us in Ripon? ${sentence} We can pay £300.\nThanks, Dana Holt`;
/** What the question for the first day has to choose from; undefined where the days are stated. */
function daysAsked(sentence: string): string[] | undefined {
  const { fields, questions } = readAt(asked(sentence), undefined, 'leeds');
  return fields.start === undefined ? questions.find(({ field }) => field === 'start')?.choices.map(({ label }) => label) : undefined;
}

const ONE = 'Sat 12 December 2026';
describe('both are asked about', () => {
  test.each([
    ['Sat 12 and Sun 13', 'The first half is on Saturday 12 December, the second half the day after.'],
    ['Sat 12 and Sun 13', 'It begins on Saturday 12 December and finishes the evening after.'],
    ['Sat 12 and Sun 13', 'It is on Saturday 12 December, plus the Sunday.'],
    ['Sat 12 and Sun 13', 'It is on Saturday 12 December, with a second show on the Sunday.'],
    ['Sat 12 and Sun 13', 'The parish feast: Saturday 12 December vespers, Sunday morning mass, you at both.'],
    ['Sat 12 to Mon 14', 'It all kicks off on Saturday 12 December and wraps up on Monday.'],
    ['Sat 12 to Tue 15', 'We open on Saturday 12 December and play every night until the Tuesday.'],
    ['Sat 12 to Tue 15', 'We open on Saturday 12 December and play for four nights.'],
    ['Sat 12 to Mon 14', 'The first of the three nights is Saturday 12 December.'],
  ])('%s: %s', (run, sentence) => expect(daysAsked(sentence)).toEqual([ONE, `${run} December 2026`]));

  test.each([
    'We would need you on Saturday 12 December and the day after.',
    'We would need you on Saturday 12 December and again the day after.',
  ])('both are stated where nothing else is told: %s', (sentence) =>
    expect(facts(asked(sentence), undefined, 'leeds')).toMatchObject({ start: '2026-12-12', end: '2026-12-13' }),
  );

  test.each([
    'We need you on Saturday 12 December and Sunday 13 December, or just the Sunday.',
    'We would need you for the 12th and 13th of December but only the 13th is filmed.',
    'I need you on 12 and 13 December, one of the two, I will say which on Friday.',
  ])('a choice of two that are wanted in one breath is asked about: %s', (sentence) =>
    expect(facts(asked(sentence), undefined, 'leeds').start).toBeUndefined(),
  );

  test.each([
    'It starts on Saturday 12 December and takes the whole weekend.',
    'The concerts start on Saturday 12 December, one a night until we have sung all four.',
  ])('nothing says which others: %s', (sentence) => expect(daysAsked(sentence)).toEqual([ONE]));
});

test.each([
  'It is Saturday 12 December; Sunday is for the clean-up crew.',
  'It is on Saturday 12 December, with Sunday as the rain date.',
  'Sat 12 December (Sunday if it rains).',
  'The party is on Saturday 12 December, from 8pm until the next morning.',
  'It is on Saturday 12 December, and the following afternoon we take it all down.',
  'The exhibition opens on Saturday 12 December and runs for three weeks, you would do the opening.',
  'The parish feast is Saturday 12 December; on Sunday morning we sleep.',
])('one day: %s', (sentence) =>
  expect(facts(asked(sentence), undefined, 'leeds')).toMatchObject({ start: '2026-12-12', end: '2026-12-12', days: 1 }),
);

test.each([
  ['Sun 13', 'It is on Saturday 12 December, and on the Sunday we rest.'],
  ['Mon 14', 'It is on Saturday 12 December and on Monday we all go home.'],
  ['Sun 13', 'The party is on Saturday 12 December from 8pm till Sunday 2am.'],
  ['Sun 13', 'The party is on Sat 12 Dec 8pm to Sun 13 Dec 2am.'],
])('whether the second day is mine as well is asked: %s: %s', (second, sentence) =>
  expect(daysAsked(sentence)).toEqual([ONE, `Sat 12 and ${second} December 2026`]),
);

describe('how many days the words of a message speak of', () => {
  const lines = waysOf('lengths');
  test.each(lines.map((line, index) => [line.split('\t')[1] ?? '', line, index] as const))('%s', (_, line, index) => {
    const { text, more } = saidLength(line, index);
    const { start, end } = facts(text);
    const days = start === undefined || end === undefined ? 'asked' : start === end ? 'one' : 'more';
    expect(days).not.toBe(more ? 'one' : 'more');
  });
});

test.each([
  ['Could you film it on Sunday 10 to 3?', '2026-11-29', '10:00', '15:00'],
  ['Can you film our fair in Ripon on Saturday, 9 to 5?', '2026-11-28', '09:00', '17:00'],
])('hours behind a weekday are no days of a month: %s', (text, day, call, wrap) =>
  expect(facts(text, undefined, 'leeds')).toMatchObject({ start: day, end: day, firstCall: `${day}T${call}`, lastWrap: `${day}T${wrap}` }),
);
