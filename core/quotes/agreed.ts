/**
 * What a yes is to: a made quote, or one of the offers on it.
 */
import type { Offer, QuoteDraft } from '../contract/quotes.ts';
import { offeredOf } from './paper-offers.ts';

/**
 * The number of the offer that is taken; null on a quote without offers.
 * Without a word the one that was ticked counts: where none was, it is "open"; a number that is not on the quote is "unknown".
 */
export function takenOffer(
  offers: readonly Pick<Offer, 'number' | 'ticked'>[],
  said: number | undefined,
): number | null | 'open' | 'unknown' {
  if (said !== undefined) return offers.some(({ number }) => number === said) ? said : 'unknown';
  if (offers.length === 0) return null;
  return offers.find(({ ticked }) => ticked)?.number ?? 'open';
}

/** A made quote as it was agreed on: with lines, totals and terms of the offer that was taken, else as it stands. */
export function agreedDraft(draft: QuoteDraft, offer: number | null): QuoteDraft {
  return (offer === null ? undefined : offeredOf(draft).find(({ number }) => number === offer)?.draft) ?? draft;
}
