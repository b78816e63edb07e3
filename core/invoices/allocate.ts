/**
 * Which invoices a payment is for. One that names none is proposed for the oldest due first; what is over becomes credit, asked.
 */
import { compare, subtract, zero, type Money } from '../money/money.ts';

export type Payable<C extends string = string> = { id: string; number: string; issueDate: string; dueDate: string; open: Money<C> };
type PaymentPart<C extends string = string> = { id: string; number: string; amount: Money<C> };
export type Proposal<C extends string = string> = { parts: PaymentPart<C>[]; over: Money<C> };

/**
 * Spread a payment over open invoices of its currency: oldest due first, then oldest issued, then by number.
 * @throws CurrencyMixError when an invoice is in another currency
 */
export function proposeParts<C extends string>(payment: Money<C>, invoices: readonly Payable<NoInfer<C>>[]): Proposal<C> {
  let left = payment;
  const parts: PaymentPart<C>[] = [];
  for (const { id, number, open } of invoices.toSorted(oldestFirst)) {
    const amount = compare(open, left) < 0 ? open : left;
    if (amount.minor <= 0) continue;
    parts.push({ id, number, amount });
    left = subtract(left, amount);
  }
  return { parts, over: left.minor > 0 ? left : zero(payment.currency) };
}

function oldestFirst(a: Payable, b: Payable): number {
  return order(a.dueDate, b.dueDate) || order(a.issueDate, b.issueDate) || order(a.number, b.number);
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
