import { fc, test as law } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { compareLists, comparedInWords, isWhole } from '../../../core/handovers/compare.ts';

const file = (name: string, hash: string, bytes = 10) => ({ name, hash, bytes });
const kept = [file('film.mov', 'a'), file('Stills/1.png', 'b'), file('Stills/2.png', 'c')];

describe('a copy', () => {
  test('that is equal', () => {
    const compared = compareLists(kept, kept.toReversed());
    expect(compared).toEqual({ equal: ['film.mov', 'Stills/1.png', 'Stills/2.png'], changed: [], missing: [], extra: [], moved: [] });
    expect([isWhole(compared), comparedInWords(compared)]).toEqual([true, 'The copy is whole: 3 files equal.']);
  });

  test('with changed, missing, moved and other files', () => {
    const compared = compareLists(kept, [file('film.mov', 'x'), file('Old/1.png', 'b'), file('notes.txt', 'n')]);
    expect(compared).toEqual({
      equal: [],
      changed: ['film.mov'],
      missing: ['Stills/2.png'],
      extra: ['notes.txt'],
      moved: [{ from: 'Stills/1.png', to: 'Old/1.png' }],
    });
    expect([isWhole(compared), comparedInWords(compared)]).toEqual([
      false,
      'The copy is not whole: 1 file equal under another name, 1 changed, 1 missing and 1 not on the list.',
    ]);
  });

  test('with other bytes of the same checksum is changed', () =>
    expect(compareLists([file('film.mov', 'a', 10)], [file('film.mov', 'a', 11)]).changed).toEqual(['film.mov']));

  test('more than the list asks for is whole', () => expect(isWhole(compareLists(kept, [...kept, file('more.mov', 'm')]))).toBe(true));

  test('whose system writes a letter and its mark as two signs has the same names', () =>
    expect(compareLists([file('Caf\u00e9.mov', 'a')], [file('Cafe\u0301.mov', 'a')]).equal).toEqual(['Caf\u00e9.mov']));

  test('of equal files counts each of them once', () =>
    expect(compareLists([file('a', 'z'), file('b', 'z')], [file('c', 'z')])).toMatchObject({
      moved: [{ from: 'a', to: 'c' }],
      missing: ['b'],
      extra: [],
    }));
});

const lists = fc.uniqueArray(
  fc.record({ name: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'), hash: fc.constantFrom('x', 'y', 'z'), bytes: fc.constant(1) }),
  {
    selector: ({ name }) => name,
  },
);
law.prop([lists, lists], { seed: 20_261_126, numRuns: 200 })('every file of both lists stands in one place', (one, other) => {
  const { equal, changed, missing, extra, moved } = compareLists(one, other);
  expect([...equal, ...changed, ...missing, ...moved.map(({ from }) => from)].sort()).toEqual(one.map(({ name }) => name).sort());
  expect([...equal, ...changed, ...extra, ...moved.map(({ to }) => to)].sort()).toEqual(other.map(({ name }) => name).sort());
});
