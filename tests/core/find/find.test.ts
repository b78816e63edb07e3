import { fc, test as law } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { nearness } from '../../../core/find/near.ts';
import { byStanding, gradeOf, IN_TEXT, standingOf, type Candidate } from '../../../core/find/rank.ts';
import { typedWords, wordsOf } from '../../../core/find/words.ts';

describe('words', () => {
  test.each([
    ['Bäkers’ No. 7-B', ['bakers', 'no', '7', 'b']],
    ['  "Łódź" OR (St. Paul)* ', ['lodz', 'or', 'st', 'paul']],
    ['\0 -- ; % _ ^', []],
    ['Θεσσαλονίκη Хельсинки', ['θεσσαλονικη', 'хельсинки']],
  ])('%j', (text, words) => {
    expect(wordsOf(text)).toEqual(words);
  });
  test('what was typed is cut to eight words of forty letters, each once', () => {
    expect(typedWords('a b c d e f g h i j')).toEqual(['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h']);
    expect(typedWords('x'.repeat(10_000))).toEqual(['x'.repeat(40)]);
    expect(typedWords('one One ONE')).toEqual(['one']);
  });
});

describe('slips of the fingers', () => {
  test.each([
    ['milwakee', 'milwaukee', 'a letter left out'],
    ['milwaaukee', 'milwaukee', 'one put in'],
    ['frago', 'fargo', 'two swapped'],
    ['congrss', 'congress', 'one left out of the middle'],
    ['thunfer', 'thunder', 'one changed'],
    ['championhsip', 'championship', 'two swapped in a long word'],
    ['chapmion', 'championship', 'swapped while still typing'],
  ])('%s is like %s: %s', (typed, word) => {
    expect(nearness(typed, word)).toBeGreaterThan(0);
    expect(nearness(typed, word)).toBeLessThan(1);
  });
  test.each([
    ['fog', 'fig', 'three letters have too many neighbours'],
    ['fargo', 'congress', 'another word'],
    ['conf', 'congress', 'a short beginning is no slip'],
    ['duluth', 'du', 'too short to be meant'],
  ])('%s is not %s: %s', (typed, word) => {
    expect(nearness(typed, word)).toBe(0);
  });
  test('fewer slips are nearer, and a whole word is nearer than a beginning', () => {
    expect(nearness('milwakee', 'milwaukee')).toBeGreaterThan(nearness('milwakkee', 'milwaukeex'));
    expect(nearness('robotcis', 'robotics')).toBeGreaterThan(nearness('robotcis', 'roboticsfinal'));
  });
  law.prop([fc.stringMatching(/^[a-z]{5,12}$/), fc.nat(10)])('any word with two neighbours swapped is found again', (word, at) => {
    const cut = Math.min(at, word.length - 2);
    const swapped = word.slice(0, cut) + (word[cut + 1] ?? '') + (word[cut] ?? '') + word.slice(cut + 2);
    expect(gradeOf(swapped, word)).toBeGreaterThan(0);
  });
});

describe('the order', () => {
  const order = (typed: string, ...all: Candidate[]): string[] =>
    all
      .flatMap((each) => {
        const standing = standingOf(typedWords(typed), each, 0);
        return standing ? [{ title: each.title, standing }] : [];
      })
      .toSorted((a, b) => byStanding(a.standing, b.standing))
      .map(({ title }) => title);
  const one = (title: string, names = '', at = 0): Candidate => ({ title, names, at });

  test('the very word, then its beginning, then inside, then like it', () => {
    expect(order('robot', one('Rabot'), one('Microbot'), one('Robotics final'), one('Robot day'))).toEqual([
      'Robot day',
      'Robotics final',
      'Microbot',
      'Rabot',
    ]);
  });
  test('what is called so before who belongs to it, then the later one', () => {
    expect(order('fargo', one('Final', 'Fargo', 9), one('Fargo supper', '', 1), one('Fargo dinner', '', 2))).toEqual([
      'Fargo dinner',
      'Fargo supper',
      'Final',
    ]);
  });
  test('every typed word must be there; the worst of them counts', () => {
    expect(order('robot final', one('Robot day'), one('Robotics final'), one('Robot final'))).toEqual(['Robot final', 'Robotics final']);
  });
  test('words of the longer text stand behind beginnings and before what is inside of words', () => {
    expect(standingOf(['mixer'], one('Curling'), IN_TEXT)).toMatchObject({ grade: IN_TEXT, words: [] });
    expect(standingOf(['mix'], one('Mixer day'), IN_TEXT)).toMatchObject({ grade: 4, words: ['mixer'] });
    expect(standingOf(['mixer'], one('Curling'), 0)).toBeUndefined();
    expect(standingOf([], one('Curling'), IN_TEXT)).toBeUndefined();
  });
});
