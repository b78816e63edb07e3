/**
 * A run of which fewer days are wanted than it has: how many is stated, which of them is asked, with each day as a choice where they are few.
 */
import { describe, expect, test } from 'vitest';
import { lines, readAt } from './reading.ts';

/** Start, end and count as stated, and the days that are offered. */
function told(text: string): string {
  const { fields, questions } = readAt(`${text}\n\nThanks, Robin`);
  const asked = questions.find(({ field }) => field === 'start')?.choices.map(({ label }) => label.replace(' 2027', '')) ?? [];
  return `${fields.start ?? '-'} ${fields.end ?? '-'} ${fields.days ?? '-'} ${asked.join(' | ')}`.trim();
}

describe('one day of three, whichever', () => {
  test.each(
    lines(`
      Between 9 and 11 May we are in Duluth and need one day of filming at our plant. Could you do it?
      We need one day's filming in Duluth between 9 and 11 May.
      Could you come for a day between 9 and 11 May, to film our plant in Duluth?
      Our fair in Duluth runs from 9 to 11 May and we need you for one day.
      We'd like you for an afternoon in Duluth, on any of 9 to 11 May.
      We want a film of our trade week in Duluth, 9 to 11 May. A day's filming should be enough.
    `),
  )('%s', (text) => expect(told(text)).toBe('- - 1 Sun 9 May | Mon 10 May | Tue 11 May'));
});

describe('two of them', () => {
  test.each([
    ['Our fair in Duluth runs from 9 to 11 May and we need you for two of the days.', '- - 2 Sun 9 to Tue 11 May'],
    ['The regatta in Duluth is from 9 to 15 May; we only want two days of it filmed.', '- - 2 Sun 9 to Sat 15 May'],
    ['Our fair in Duluth is from 9 to 11 May. We need you for two days, 10 and 11 May, to film it.', '2027-05-10 2027-05-11 2'],
  ])('%s', (text, read) => expect(told(text)).toBe(read));
});

describe('all of them, and a day of something else', () => {
  test.each(
    lines(`
      Our congress in Duluth is from 9 to 11 May, to be filmed. We need one day of editing afterwards.
      Could you film our congress in Duluth from 9 to 11 May? We'd like two cameras for the three days.
      Could you film our congress in Duluth from 9 to 11 May? You'll have one evening free.
      Could you film our fair in Duluth from 9 to 11 May? We need you there one day before for a recce.
      Could you film our fair in Duluth from 9 to 11 May? We want one night shot of the tower.
      Could you film our fair in Duluth from 9 to 11 May? We have one night's hotel for you.
      Could you film our fair in Duluth from 9 to 11 May for an evening class of ours?
      We'd need you for three days from 9 to 11 May in Duluth to film our fair.
    `),
  )('%s', (text) => expect(told(text)).toBe('2027-05-09 2027-05-11 3'));
});
