/**
 * Several offers on one paper: each is printed like a quote of its own, under its number and name.
 */
import type { QuoteDraft } from '../contract/quotes.ts';

/** What a paper prints one after the other: the quote itself, or each of its offers. */
export type Offered = { draft: QuoteDraft; number: number | null; name: string };

/** The offers of a quote, or the quote alone. */
export function offeredOf(draft: QuoteDraft): Offered[] {
  if (draft.offers.length === 0) return [{ draft, number: null, name: '' }];
  return draft.offers.map(({ number, name, lines, dropped, totals, cancelBase, deposit, scale, costs }) => ({
    draft: { ...draft, lines, dropped, totals, cancelBase, deposit, scale, costs },
    number,
    name,
  }));
}
