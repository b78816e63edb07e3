/**
 * The learned weights: how their list is read, what chances they give, and that they are those of the messages on file.
 */
import { describe, expect, test } from 'vitest';
import { chancesIn, likeliest, readLearned } from '../../../core/inquiries/learned/models.ts';
import { wordsOf } from '../../../core/inquiries/learned/words.ts';
import { fit } from '../../reader/fit.ts';
import { learnedFrom, stamp } from '../../reader/learn.ts';

const spelled = (text: string, marks: Parameters<typeof wordsOf>[1] = []): string[] => wordsOf(text, marks).map(({ word }) => word);

describe('the list of weights', () => {
  const list =
    '% from\n# kind\tinquiry\tnone\n*\t0\t0\nfilm\t110\t-110\n# time\tcall\tnone\n*\t50\t0\n# date\tevent\tnone\n*\t0\t0\n# part\tall\tmine\n*\t0\t0\n# half\tam\tpm\n*\t0\t0\n# role\tshoot\tsecond camera\n*\t0\t0\n# pay\tday\tjob\n*\t0\t0\n# offer\toffer\tnone\n*\t0\t0\n# party\tname\tnone\n*\t0\t0\n# length\tone\tmore\n*\t0\t0\n# town\tplace\tnone\n*\t0\t0\n';
  test('weights are hundredths, a model for each name', () => {
    const { kind } = readLearned(list);
    // One known word: its weights as they stand, 1 / (1 + e^-2.2).
    expect(chancesIn(kind, ['film', 'never seen'])['inquiry']).toBeCloseTo(1 / (1 + Math.exp(-2.2)), 12);
    expect(likeliest(kind, ['never seen'])).toEqual({ is: 'inquiry', chance: 0.5 });
  });
  test('a line with too few weights is named', () =>
    expect(() => readLearned(`${list}late\t3\n`)).toThrow('line 25 of the learned weights is not whole'));
  test('a word that is no number is named', () =>
    expect(() => readLearned(`${list}late\t3\tx\n`)).toThrow('line 25 of the learned weights is not whole'));
  test('a model that is missing is named', () =>
    expect(() => readLearned('# kind\tinquiry\tnone\n*\t0\t0\n')).toThrow('the learned weights have no model of time'));
});

describe('fitting', () => {
  const cases = (count: number, is: string, ...features: string[]) =>
    Array.from({ length: count }, () => ({ features: new Set(features), is }));
  // Two classes and one word: the likeliest weights give the shares that were counted (Hastie, Tibshirani and Friedman, 4.4.1).
  test('without much penalty the chances are the counted shares', () => {
    const model = fit([...cases(30, 'a', 'x'), ...cases(10, 'b', 'x'), ...cases(5, 'a', 'y'), ...cases(20, 'b', 'y')], {
      trust: 1000,
      balanced: false,
      seldom: 1,
    });
    expect(chancesIn(model, ['x'])['a']).toBeCloseTo(0.75, 2);
    expect(chancesIn(model, ['y'])['a']).toBeCloseTo(0.2, 2);
  });
  test('a rare class that is balanced weighs as much as a common one', () => {
    const model = fit([...cases(90, 'a', 'x'), ...cases(10, 'b', 'x')], { trust: 1000, balanced: true, seldom: 1 });
    expect(chancesIn(model, ['x'])['a']).toBeCloseTo(0.5, 2);
  });
  test('the same cases give the same weights', () => {
    const some = [...cases(3, 'a', 'x', 'z'), ...cases(4, 'b', 'y', 'z')];
    const options = { trust: 5, balanced: false, seldom: 1 };
    expect([...fit(some, options).weights]).toEqual([...fit(some, options).weights]);
  });
});

test('words: endings cut, numbers by length, what is known as one word', () => {
  expect(spelled("We're filming 2 galas, Room 1234")).toEqual(["we're", 'film', '#1', 'gala', ',', 'room', '#4']);
  expect(spelled('by 3 May at noon', [{ kind: 'date', start: 3, end: 8 }])).toEqual(['by', '<date>', 'at', 'noon']);
});

test.each(['learned', 'network'] as const)('the %s on file is of the messages on file: npm run learn makes it anew', (of) =>
  expect(learnedFrom(of)).toBe(stamp(of)),
);
