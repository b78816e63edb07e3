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
