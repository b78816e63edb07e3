/**
 * Up to three offers on one paper: the ticked one counts; until one is, the cheapest for money and the dearest for time.
 */
import type { DraftChange, Offer } from '../contract/quotes.ts';
import { compare } from '../money/money.ts';
import { after } from './offer-numbers.ts';
import type { PricedOffer } from './offer.ts';

export type OffersAsked = { names: readonly string[]; ticked: number | null };
export type NamedOffer = { number: number; name: string; priced: PricedOffer };
export type Counting = { forMoney: NamedOffer; forTime: NamedOffer; offers: Offer[] };

/** The names of the offers that were asked for, and the one that was ticked; the newest word counts. Fewer than two are none. */
export function offersAsked(changes: readonly DraftChange[]): OffersAsked {
  let names: readonly string[] = [];
  let ticked: number | null = null;
  for (const change of changes) {
    if (change.op === 'tick') ticked = change.offer;
    if (change.op !== 'offers') continue;
    names = change.names.length > 1 ? change.names : [];
    if (ticked !== null) ticked = after(change, ticked);
  }
  return { names, ticked: ticked !== null && ticked <= names.length ? ticked : null };
}

/** Which of several offers counts. Of equal ones the first. */
export function counting(first: NamedOffer, others: readonly NamedOffer[], ticked: number | null): Counting {
  const all = [first, ...others];
  const tick = all.find((offer) => offer.number === ticked);
  const forMoney = tick ?? others.reduce((least, offer) => (dearer(least, offer) ? offer : least), first);
  const forTime = tick ?? others.reduce((most, offer) => (dearer(offer, most) ? offer : most), first);
  const offers = all.map((offer): Offer => {
    const { lines, dropped, totals, cancelBase, deposit, discount, scale, costs } = offer.priced;
    const counts = { ticked: offer === tick, forMoney: offer === forMoney, forTime: offer === forTime };
    return { number: offer.number, name: offer.name, ...counts, lines, dropped, totals, cancelBase, deposit, discount, scale, costs };
  });
  return { forMoney, forTime, offers };
}

function dearer(one: NamedOffer, other: NamedOffer): boolean {
  return compare(one.priced.totals.gross, other.priced.totals.gross) > 0;
}
