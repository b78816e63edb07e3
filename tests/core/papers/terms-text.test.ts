/**
 * My terms: gaps filled from the frozen version, silent paragraphs left out, unknown gaps named.
 */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { STARTING_TERMS } from '../../../core/papers/terms-default.ts';
import { filledTerms, termsGaps, termsTrouble, unknownGaps, type TermsFacts } from '../../../core/papers/terms-text.ts';
import { card, fargo, quoteOf } from '../quotes/facts.ts';

const draft = quoteOf();
const facts: TermsFacts = {
  me: 'Lakeline Pictures',
  home: fargo,
  client: 'Guild of Lakeside Bakers',
  job: { title: 'Bakers’ congress', place: fargo },
  dates: ['2026-12-12', '2026-12-13'],
  version: 2,
  draft,
  card,
  lateInterestPercent: null,
};

test('the starting text says the frozen figures and leaves out what a job has nothing to say on', () => {
  const text = filledTerms('', facts);
  expect(text).toContain(
    'Lakeline Pictures works for Guild of Lakeside Bakers: Bakers’ congress, Sat 12 and Sun 13 December 2026, Fargo, North Dakota.',
  );
  expect(text).toContain('Version 2 of the quote');
  expect(text).toContain('under 14 days 25 %, under 7 days 50 %, under 48 hours 100 %');
  expect(text).toContain(
    'A day has 10 h. Past it, each started half hour is charged at the hourly base: 1.5 times up to 4 h past it, from 4 h past it 2 times.',
  );
  expect(text).toContain('approved by the contact on site, before it begins.');
  expect(text).not.toContain('Late payment');
  expect(text).not.toMatch(/[{}]/);
  expect(filledTerms('', { ...facts, lateInterestPercent: '9' })).toContain('Late payment\nWhat is paid late bears interest of 9 % a year');
});

test('without a deposit its paragraph goes, heading and all', () => {
  expect(filledTerms('', facts)).toContain('Deposit\nA deposit of USD ');
  expect(filledTerms('', { ...facts, draft: { ...draft, deposit: null } })).not.toContain('Deposit\n');
});

test('my own text stands as I wrote it, and what nothing fills is named', () => {
  expect(filledTerms('I am {me}.\r\n\r\nYou are { client }.\n \n\nBye.', facts)).toBe(
    'I am Lakeline Pictures.\n\nYou are Guild of Lakeside Bakers.\n\nBye.',
  );
  expect(unknownGaps('{me} {Me} {} {Me}')).toEqual(['Me', '']);
  expect(termsTrouble(STARTING_TERMS)).toBeNull();
  expect(termsTrouble('{price} and {fee}')).toContain('has {price} and {fee}, which nothing fills');
});

test('no known gap is ever left, and a paragraph without gaps stands as it was', () => {
  const names = termsGaps.map(({ name }) => name);
  const word = fc.oneof(
    fc.stringMatching(/^[a-z,.]{1,8}$/),
    fc.constantFrom(...names).map((name) => `{${name}}`),
  );
  const paragraph = fc.array(word, { minLength: 1 }).map((words) => words.join(' '));
  fc.assert(
    fc.property(fc.array(paragraph, { minLength: 1, maxLength: 6 }), (paragraphs) => {
      const filled = filledTerms(paragraphs.join('\n\n'), facts);
      expect(filled).not.toMatch(/[{}]/);
      const parts = filled.split('\n\n');
      for (const plain of paragraphs.filter((text) => !text.includes('{'))) expect(parts).toContain(plain);
    }),
  );
});
