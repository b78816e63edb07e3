/**
 * What a payment settles: its parts in the currency of the invoices, what is over, and what the exchange rate did.
 */
import { exchanged } from '../money/exchange.ts';
import { formatMoney } from '../money/format.ts';
import { compare, negate, subtract, sum, zero, type Money } from '../money/money.ts';
import { shareOver } from '../money/share.ts';
import { exchangeGain } from './exchange-gain.ts';

/** An invoice that can be paid: what is open, written off included, since money that comes after a write-off reverses it. */
export type Settled = {
  id: string;
  number: string;
  payable: Money;
  void: boolean;
  /** Home currency for one unit at supply; null in the home currency. */
  rate: { rate: string; date: string } | null;
};
type Paid = { amount: Money; rate: { rate: string; date: string } | null; home: string };
export type Part = { invoiceId: string | null; amount: Money; gain: Money | null };

/** A payment's worth at home; null where no rate says so. */
function worthOf({ amount, rate, home }: Paid): Money | null {
  if (amount.currency === home) return amount;
  return rate && exchanged(amount, { from: amount.currency, to: home, ...rate });
}

/** What a payment comes to in a currency of invoices; null where its rate does not say that. */
export function paymentIn(currency: string, paid: Paid): Money | null {
  if (paid.amount.currency === currency) return paid.amount;
  return currency === paid.home ? worthOf(paid) : null;
}

/**
 * Why a payment cannot settle its parts, in sentences; none when it can.
 * @param parts amounts above zero, in the currency of their invoices
 */
export function settleTroubles(paid: Paid, parts: readonly { invoice: Settled; amount: Money }[], toCredit: boolean): string[] {
  const currencies = [...new Set(parts.map(({ invoice }) => invoice.payable.currency))];
  const [currency = paid.amount.currency, ...others] = currencies;
  if (others.length > 0) return [`The invoices are in ${currencies.join(' and ')}. Record one payment for each currency.`];
  if (paid.amount.currency !== paid.home && !paid.rate)
    return [`${paid.amount.currency} needs its rate: ${paid.home} for one ${paid.amount.currency} on the date of payment.`];
  const troubles = parts.flatMap(({ invoice, amount }) => partTroubles(invoice, amount));
  if (troubles.length > 0) return troubles;
  const settled = sum(
    currency,
    parts.map(({ amount }) => amount),
  );
  const comes = paymentIn(currency, paid);
  // What another foreign currency is worth in the invoice's is said by its parts alone.
  if (comes === null) return parts.length > 0 ? [] : ['Say which invoices it is for.'];
  const over = subtract(comes, settled);
  if (over.minor < 0) return [`${formatMoney(settled, { code: true })} is set on invoices, and ${formatMoney(comes)} came.`];
  if (over.minor > 0 && !toCredit)
    return [`${formatMoney(over, { code: true })} is over. Keep it as credit of the client, or correct the amount.`];
  return [];
}

function partTroubles({ number, payable, void: isVoid }: Settled, amount: Money): string[] {
  if (isVoid) return [`${number} was credited; nothing can be paid on it. Pay the one that took its place.`];
  if (amount.currency !== payable.currency) return [`${number} is in ${payable.currency}, not in ${amount.currency}.`];
  if (amount.minor <= 0) return [`${number}: a part is above zero.`];
  return compare(amount, payable) > 0 ? [`${number}: ${formatMoney(payable)} is open, not ${formatMoney(amount)}.`] : [];
}

/** The parts of a payment that `settleTroubles` has passed, credit last. */
export function settledParts(paid: Paid, parts: readonly { invoice: Settled; amount: Money }[]): Part[] {
  const currency = parts[0]?.amount.currency ?? paid.amount.currency;
  const settled = sum(
    currency,
    parts.map(({ amount }) => amount),
  );
  const gains = gainsOf(paid, parts);
  const comes = paymentIn(currency, paid);
  const over = comes === null ? zero(currency) : subtract(comes, settled);
  return [
    ...parts.map(({ invoice, amount }, order): Part => ({ invoiceId: invoice.id, amount, gain: gains[order] ?? null })),
    ...(over.minor > 0 ? [{ invoiceId: null, amount: over, gain: null }] : []),
  ];
}

/** By each part what it was worth when it came, less what its invoice was worth at supply. */
function gainsOf(paid: Paid, parts: readonly { invoice: Settled; amount: Money }[]): (Money | null)[] {
  const { home, rate } = paid;
  const worth = worthOf(paid);
  const shares = worth && parts.length > 0 ? shareOver(worth, parts, ({ amount }) => amount.minor) : [];
  return parts.map(({ invoice, amount }, order) => {
    if (!invoice.rate) return null;
    const atSupply = { from: amount.currency, to: home, ...invoice.rate };
    if (amount.currency === paid.amount.currency && rate)
      return exchangeGain(amount, atSupply, { from: amount.currency, to: home, ...rate });
    const came = shares[order]?.share;
    return came ? subtract(came, exchanged(amount, atSupply)) : null;
  });
}

/** Where credit lies: with the client, or past what an invoice asked for. The client's own comes first. */
export type Credit = { invoiceId: string | null; amount: Money };

/** Parts that take so much out of credit, in order; null where there is not enough. */
export function takenFrom(credits: readonly Credit[], wanted: Money): Part[] | null {
  let left = wanted;
  const parts: Part[] = [];
  for (const { invoiceId, amount } of credits) {
    if (left.minor === 0) break;
    const taken = compare(amount, left) < 0 ? amount : left;
    parts.push({ invoiceId, amount: negate(taken), gain: null });
    left = subtract(left, taken);
  }
  return left.minor === 0 ? parts : null;
}
