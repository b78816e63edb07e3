/**
 * A sentence that begins with one day of a run tells the hours of that day alone; words that look like towns or work and are neither.
 */
import { describe, expect, test } from 'vitest';
import { nthHeading } from '../../../core/inquiries/settle/nth-day.ts';
import { ofOccasion } from '../../../core/inquiries/settle/of-occasion.ts';
import { workWords } from '../../../core/inquiries/work/role-words.ts';
import { readAt } from './reading.ts';

describe('which day heads a sentence', () => {
  test.each([
    ['Last day, Sunday, is exception: start ', -1],
    ['On the first day we meet at ', 1],
    ['Am letzten Tag ist um ', -1],
    ['Le dernier jour, tout est fini à ', -1],
    ['El primer día empezamos a las ', 1],
    ["L'ultimo giorno si smonta alle ", -1],
    ['Op de eerste dag verwachten we je om ', 1],
  ])('%s', (lead, nth) => expect(nthHeading(lead)).toBe(nth));
  test.each(['The first day at 9, the other days at ', 'Every day you start at ', 'We had a good first day and left at '])(
    'not %s',
    (lead) => expect(nthHeading(lead)).toBeUndefined(),
  );
  test('the usual hours and those of the last day', () => {
    const { fields } = readAt(
      'We need one camera in Duluth from Saturday 12 to Sunday 20 December 2026. Every day you should be there at 14:00, play begins at 15:00. Last day is an exception: start 10:00, you come at 9:00, all finished 15:00.',
    );
    expect([fields.firstCall, fields.lastWrap]).toEqual(['2026-12-12T14:00', '2026-12-20T15:00']);
  });
});

describe('where one of two towns needs filming', () => {
  const message = (days: string): string =>
    `The choir's concert takes place ${days} Only Duluth needs filming! Set up from 5, done by 9:30. We have $450.`;
  test('it is the day told beside it', () =>
    expect(readAt(message('on December 11 in Duluth, and again on December 12 in Fargo.')).fields).toMatchObject({
      start: '2026-12-11',
      end: '2026-12-11',
    }));
  test.each([
    'Keynotes on December 11 are in the main hall. Only keynotes need filming, two each day.',
    'Only Sarah needs filming, both days, not the guests.',
  ])('it is no town, or both days: %s', (words) =>
    expect(readAt(`Could you film our conference in Duluth on 11 and 12 December? ${words}`).fields).toMatchObject({ days: 2 }),
  );
  test('the days are asked about where they are told in one breath', () => {
    const { fields, questions } = readAt(message('in Duluth on December 11 (Fri), and again on December 12 (Sat) in Fargo.'));
    expect(fields.start).toBeUndefined();
    expect(questions.find(({ field }) => field === 'start')?.choices.map(({ days }) => days)).toEqual([['2026-12-11'], ['2026-12-12']]);
  });
});

describe('hours of an occasion', () => {
  const hours = (text: string): boolean => {
    const start = text.search(/\d/);
    return ofOccasion(text, { start, end: start + (/^\d+-\d+/.exec(text.slice(start))?.[0].length ?? 0) });
  };
  test.each([
    'Gallery opening on Friday, 5-8, any chance you would film?',
    'Lunch in the barn, 12-4.',
    'Free ice cream for the kids from 2-5.',
  ])('%s', (text) => expect(hours(text)).toBe(true));
  test.each(['We want you at the opening, 5-8.', 'Filming at the dinner, 6-9.', 'One operator, 8-4.'])('not %s', (text) =>
    expect(hours(text)).toBe(false),
  );
});

describe('words that are no work', () => {
  const roles = (text: string): string[] => workWords(text).map(({ role }) => role);
  test.each(['Eén camera op de finish', 'Een camera op zaterdag'])('%s: a camera', (text) =>
    expect(workWords(text).map(({ text: word }) => word)).not.toContain('camera op'),
  );
  test('a family picture at the end is no photographer', () => expect(roles('acabada la actuación y una foto de familia')).toEqual([]));
  test.each(['que nos grabes las dos actuaciones', 'ci manca chi riprende', 'que les prises de parole soient filmées'])(
    '%s: filming',
    (text) => expect(roles(text)).toContain('shoot'),
  );
});

test('an article is no town', () => {
  const { fields } = readAt(
    'Presento mi novela el jueves 6 de mayo en una librería de Valencia y busco a alguien que la grabe en vídeo.',
    undefined,
    'madrid',
  );
  expect(fields.place).not.toBe('Una');
});
