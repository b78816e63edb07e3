/**
 * What came in: parts of payments with the tax that they hold and their worth at home.
 * Tax that was collected for a tax office is no income; each part of a payment holds its share of the invoice's.
 */
import { exchanged } from '../money/exchange.ts';
import { add, subtract, zero, type Money } from '../money/money.ts';
import { partOf } from './job-money.ts';

/** A part of a payment, with the invoice that it is for; null where it is kept as the client's credit. */
export type PartPaid = {
  id: string;
  on: string;
  /** Epoch milliseconds: which of two parts of one date came first. */
  madeAt: number;
  /** In the currency of the invoice; below zero where it went back. */
  amount: Money;
  /** Home currency: what the rate of the payment gained against the invoice's. */
  gain: Money | null;
  /** Of the payment; `rate` home currency for one unit, null in the home currency. */
  payment: { currency: string; rate: string | null };
  /** `asked` is what the paper asks for, `tax` what of that is tax; `rate` home currency for one unit. */
  invoice: { id: string; asked: Money; tax: Money; rate: string | null } | null;
};
export type Income = { id: string; on: string; amount: Money; tax: Money; home: { amount: Money; tax: Money } | null };

/**
 * Every part with its tax, in order of date. The shares of an invoice that is paid in parts add up to its tax: each is what
 * has been held by all parts so far, less what the parts before it held.
 */
export function incomeOf(parts: readonly PartPaid[], home: string): Income[] {
  const paid = new Map<string, Money>();
  return parts.toSorted(inTime).map((part) => {
    const { id, on, amount, invoice } = part;
    const before = (invoice && paid.get(invoice.id)) ?? zero(amount.currency);
    const after = add(before, amount);
    if (invoice) paid.set(invoice.id, after);
    const tax = invoice ? subtract(taxIn(after, invoice), taxIn(before, invoice)) : zero(amount.currency);
    const worth = homeWorth(part, home);
    return { id, on, amount, tax, home: worth && { amount: worth, tax: partOf(worth, tax, amount) } };
  });
}

function inTime(a: PartPaid, b: PartPaid): number {
  return a.on < b.on ? -1 : a.on > b.on ? 1 : a.madeAt - b.madeAt || (a.id < b.id ? -1 : 1);
}

/** The tax in what was paid of an invoice so far; what is paid past what it asks for holds none. */
function taxIn(paid: Money, { asked, tax }: NonNullable<PartPaid['invoice']>): Money {
  if (asked.minor <= 0 || paid.minor <= 0) return zero(tax.currency);
  return paid.minor >= asked.minor ? tax : partOf(paid, tax, asked);
}

/** By the rate of the payment: the invoice's worth and what the rate gained since; null where no rate is known. */
function homeWorth({ amount, gain, payment, invoice }: PartPaid, home: string): Money | null {
  const { currency } = amount;
  if (currency === home) return amount;
  const by = (rate: string) => exchanged(amount, { from: currency, to: home, rate, date: '' });
  if (payment.currency === currency && payment.rate !== null) return by(payment.rate);
  if (gain?.currency === home && invoice?.rate) return add(by(invoice.rate), gain);
  return null;
}
