import { describe, expect, test } from 'vitest';
import type { DraftChange } from '../../../core/contract/quotes.ts';
import { extra, lineOf, quoteOf } from './facts.ts';

const offers: DraftChange = { op: 'offers', names: ['Plain', 'With a crane', 'Short'] };
const changes: DraftChange[] = [
  offers,
  { op: 'add', section: 'kit', what: 'Crane', quantity: '2', unit: 'days', unitPrice: '400', offer: 2 },
  { op: 'set', id: 'days/shoot', quantity: '1', offer: 3 },
  extra('59'),
];

describe('three offers', () => {
  const draft = quoteOf({ changes });
  test('share what was changed for all, and keep their own', () => {
    expect(draft.offers.map((offer) => [offer.number, offer.name, offer.totals.gross.minor])).toEqual([
      [1, 'Plain', 205_900],
      [2, 'With a crane', 285_900],
      [3, 'Short', 105_900],
    ]);
  });
  test('until one is ticked, the cheapest counts for money and the dearest for time', () => {
    expect(draft.offers.map((offer) => [offer.forMoney, offer.forTime])).toEqual([
      [false, false],
      [false, true],
      [true, false],
    ]);
    expect(draft.totals).toEqual(draft.offers[2]?.totals);
    expect(draft.cautions[0]).toBe('3 offers: until one is ticked, "Short" counts for money, being the cheapest.');
  });
  test('the ticked one counts for both', () => {
    const ticked = quoteOf({ changes: [...changes, { op: 'tick', offer: 2 }] });
    expect(ticked.totals.gross.minor).toBe(285_900);
    expect(ticked.offers.map((offer) => [offer.ticked, offer.forMoney, offer.forTime])).toEqual([
      [false, false, false],
      [true, true, true],
      [false, false, false],
    ]);
    expect(ticked.cautions.join(' ')).not.toContain('ticked');
    expect(quoteOf({ changes: [...changes, { op: 'tick', offer: 2 }, { op: 'tick', offer: null }] })).toEqual(draft);
  });
  test('an addition keeps its name in every offer', () => {
    expect(draft.offers.map((offer) => offer.lines.filter((line) => line.id.includes('added')).map((line) => line.id))).toEqual([
      ['extras/added-2'],
      ['kit/added-1', 'extras/added-2'],
      ['extras/added-2'],
    ]);
  });
});

test('of equal offers the first counts', () => {
  const draft = quoteOf({ changes: [offers] });
  expect(draft.offers.map((offer) => [offer.forMoney, offer.forTime])).toEqual([
    [true, true],
    [false, false],
    [false, false],
  ]);
});

test('one offer is a plain quote, with what was changed in its first', () => {
  const draft = quoteOf({ changes: [...changes, { op: 'offers', names: [] }, { op: 'tick', offer: 3 }] });
  expect(draft.offers).toEqual([]);
  expect(draft.totals.gross.minor).toBe(205_900);
  expect(lineOf(draft, 'kit/added-1')).toBeUndefined();
});

test('what is missing in one offer is missing in all', () => {
  const draft = quoteOf({ changes: [offers, { op: 'drop', id: 'days/shoot', offer: 2 }] });
  expect(draft.missing).toEqual(['What is sold: every line was taken off.']);
});

describe('an offer taken out of the middle', () => {
  const kept: DraftChange = { op: 'offers', names: ['Plain', 'Short'], from: [1, 3] };
  const totalsOf = (all: readonly DraftChange[]) =>
    quoteOf({ changes: [...all] }).offers.map(({ number, name, totals }) => [number, name, totals.gross.minor]);

  test('leaves the others with their lines under their new numbers', () => {
    expect(totalsOf([...changes, kept])).toEqual([
      [1, 'Plain', 205_900],
      [2, 'Short', 105_900],
    ]);
  });
  test('later changes speak of the new numbers', () => {
    const later: DraftChange = { op: 'add', section: 'extras', what: 'Drone permit', quantity: '1', unit: '', unitPrice: '10', offer: 2 };
    expect(totalsOf([...changes, kept, later])).toEqual([
      [1, 'Plain', 205_900],
      [2, 'Short', 106_900],
    ]);
  });
  test('a tick goes along with its offer, and goes with one that is taken out', () => {
    const tickedNow = (offer: number) =>
      quoteOf({ changes: [...changes, { op: 'tick', offer }, kept] }).offers.find(({ ticked }) => ticked);
    expect(tickedNow(3)).toMatchObject({ number: 2, name: 'Short' });
    expect(tickedNow(2)).toBeUndefined();
  });
  test('an offer that is put in begins with what holds in all', () => {
    const added: DraftChange = { op: 'offers', names: ['Plain', 'Fresh', 'With a crane'], from: [1, null, 2] };
    expect(totalsOf([...changes, added])).toEqual([
      [1, 'Plain', 205_900],
      [2, 'Fresh', 205_900],
      [3, 'With a crane', 285_900],
    ]);
  });
  test('the one that is left alone is a plain quote with its own lines', () => {
    const draft = quoteOf({ changes: [...changes, { op: 'offers', names: ['With a crane'], from: [2] }] });
    expect(draft.offers).toEqual([]);
    expect(draft.totals.gross.minor).toBe(285_900);
  });
  test('offers made from a plain quote all begin with its lines', () => {
    const again: DraftChange = { op: 'offers', names: ['Crane', 'Crane and more'], from: [1, 1] };
    expect(totalsOf([...changes, { op: 'offers', names: ['With a crane'], from: [2] }, again])).toEqual([
      [1, 'Crane', 285_900],
      [2, 'Crane and more', 285_900],
    ]);
  });
});
