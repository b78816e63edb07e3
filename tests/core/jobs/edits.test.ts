import { expect, test } from 'vitest';
import { editsOf, knownEdits } from '../../../core/jobs/edits.ts';

const film = { what: 'a film', due: '2026-12-18', hours: '6' };
const reel = { what: 'a reel', due: null, hours: null };

test('one edit for each deliverable in their order, what is not said is open, what is no deliverable any more is gone', () => {
  expect(editsOf({ deliverables: ['a reel', 'a film'], edits: [film, { ...film, what: 'gone' }] })).toEqual([reel, film]);
  expect(editsOf({ deliverables: ['a film'] })).toEqual([{ ...film, due: null, hours: null }]);
  expect(knownEdits({ deliverables: ['a reel', 'a film'], edits: [film] })).toEqual([film]);
});

test('two deliverables of one name keep an edit each', () => {
  const second = { ...film, hours: '2' };
  expect(editsOf({ deliverables: ['a film', 'a film', 'a film'], edits: [film, second] })).toEqual([
    film,
    second,
    { ...film, due: null, hours: null },
  ]);
});
