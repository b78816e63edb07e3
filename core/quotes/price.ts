/**
 * A quote as rate card, trip, notice and changes by hand price it now. Pure: the same facts give the same quote.
 */
import type { QuoteDraft } from '../contract/quotes.ts';
import type { PriceInput } from './input.ts';
import { priceOffer, type PricedOffer } from './offer.ts';
import { counting, offersAsked } from './offers.ts';

/**
 * Price a quote: one offer, or up to three of which one counts.
 * The pencil's expiry is left open: it depends on the book as well.
 * @throws RangeError when an amount is past what is reckoned with
 */
export function priceQuote(input: PriceInput): QuoteDraft {
  const { names, ticked } = offersAsked(input.changes);
  const [first, ...others] = names.map((name, order) => ({ number: order + 1, name, priced: priceOffer(input, order + 1) }));
  if (!first) return quoteOf(input, priceOffer(input, 1), []);

  const { forMoney, offers } = counting(first, others, ticked);
  const open =
    ticked === null ? [`${offers.length} offers: until one is ticked, "${forMoney.name}" counts for money, being the cheapest.`] : [];
  const missing = [first, ...others].flatMap((offer) => offer.priced.missing);
  return quoteOf(input, { ...forMoney.priced, missing: [...new Set(missing)], cautions: [...open, ...forMoney.priced.cautions] }, offers);
}

function quoteOf({ job, card, cardCaution, draftVersion }: PriceInput, priced: PricedOffer, offers: QuoteDraft['offers']): QuoteDraft {
  return {
    jobId: job.id,
    draftVersion,
    cardId: card.id,
    cardName: card.name,
    currency: card.currency,
    ...priced,
    offers,
    pencilUntil: null,
    cautions: cardCaution ? [cardCaution, ...priced.cautions] : priced.cautions,
  };
}
