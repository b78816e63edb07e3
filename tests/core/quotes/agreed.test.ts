import { expect, test } from 'vitest';
import type { DraftChange } from '../../../core/contract/quotes.ts';
import { agreedDraft, takenOffer } from '../../../core/quotes/agreed.ts';
import { quoteOf } from './facts.ts';

const changes: DraftChange[] = [
  { op: 'offers', names: ['Plain', 'With a crane'] },
  { op: 'add', section: 'kit', what: 'Crane', quantity: '2', unit: 'days', unitPrice: '400', offer: 2 },
];
const draft = quoteOf({ changes });

test('a yes is to the offer that was named, else to the ticked one; else it is open', () => {
  expect(takenOffer(draft.offers, 2)).toBe(2);
  expect(takenOffer(draft.offers, 3)).toBe('unknown');
  expect(takenOffer(draft.offers, undefined)).toBe('open');
  expect(takenOffer(quoteOf({ changes: [...changes, { op: 'tick', offer: 1 }] }).offers, undefined)).toBe(1);
  expect(takenOffer([], undefined)).toBeNull();
  expect(takenOffer([], 1)).toBe('unknown');
});

test('what was agreed on has the lines, totals, deposit and base of a cancellation of its offer', () => {
  const agreed = agreedDraft(draft, 2);
  expect(agreed.totals.gross.minor).toBe(280_000);
  expect(agreed.cancelBase.minor).toBe(280_000);
  expect(agreed.deposit?.amount.minor).toBe(140_000);
  expect(agreed.lines.map((line) => line.id)).toContain('kit/added-1');
  expect(agreedDraft(draft, null)).toBe(draft);
  expect(draft.totals.gross.minor).toBe(200_000);
});
