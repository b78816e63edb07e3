/**
 * What a client's own terms do to a quote, before anything is changed by hand.
 */
import type { Client } from '../contract/people.ts';
import type { DraftChange } from '../contract/quotes.ts';
import type { RateCardFields } from '../contract/rates.ts';
import type { Role } from '../contract/parts.ts';
import { chooseCard, type ChosenCard } from '../rates/choose.ts';

/** The client's tax treatment, days to pay and deposit as changes of a draft; without them the rate card and my own taxes hold. */
export function changesFor(client: Pick<Client, 'tax' | 'taxReason' | 'payDays' | 'depositPercent'>): DraftChange[] {
  const { tax, taxReason, payDays, depositPercent } = client;
  const terms = { ...(payDays === null ? {} : { payDays }), ...(depositPercent === null ? {} : { depositPercent }) };
  return [
    ...(tax === 'charge' ? [] : [{ op: 'tax' as const, state: tax, ...(taxReason ? { reason: taxReason } : {}) }]),
    ...(Object.keys(terms).length === 0 ? [] : [{ op: 'terms' as const, terms }]),
  ];
}

/**
 * The rate card of a job in the client's currency, else in mine, where there is one for its role; else any.
 * A client's currency that no card is in gets a caution that names both.
 * @param date first call of the job, YYYY-MM-DD
 * @param home ISO 4217 code of my own currency
 */
export function cardFor<T extends Pick<RateCardFields, 'name' | 'role' | 'currency' | 'validFrom' | 'validTo'>>(
  cards: readonly T[],
  role: Role,
  date: string,
  home: string,
  client: Pick<Client, 'name' | 'currency'> | undefined,
): ChosenCard<T> | undefined {
  const theirs = client?.currency ?? null;
  const within = [theirs, home]
    .map((currency) => cards.filter((card) => card.currency === currency && card.role === role))
    .find((found) => found.length > 0);
  const chosen = chooseCard(within ?? cards, role, date);
  if (!chosen || !client || theirs === null || chosen.card.currency === theirs) return chosen;
  const caution = `${client.name} pays in ${theirs}, and no rate card for ${role} is in ${theirs}; "${chosen.card.name}" is in ${chosen.card.currency}.`;
  return { card: chosen.card, caution: chosen.caution ? `${chosen.caution} ${caution}` : caution };
}
