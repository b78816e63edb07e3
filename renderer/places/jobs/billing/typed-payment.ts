import type { Invoice } from '../../../../core/contract/invoices.ts';
import { exponentOf } from '../../../../core/money/currencies.ts';
import { amountOf, compare, subtract, zero, type Money } from '../../../../core/money/money.ts';
import { parseAmount } from '../../../../core/money/parse.ts';

/** A payment as a person types it. */
export type TypedPayment = {
  on: string;
  amount: string;
  currency: string;
  /** Home currency for one unit. */
  rate: string;
  /** What it settles of the invoice, where that is in another foreign currency. */
  settles: string;
  how: string;
  note: string;
  spread: 'this' | 'oldest';
  toCredit: boolean;
};

type Part = { invoiceId: string; number: string; dueDate: string; amount: Money };
type Proposal = { parts: Part[]; over: Money };

/**
 * What a payment would settle and what would be over.
 * @param comes what it comes to in the currency of the invoice; null where only the person can say
 * @param oldest what the store proposes, oldest due first
 */
export function proposed(
  invoice: Pick<Invoice, 'id' | 'number' | 'dueDate' | 'currency'>,
  payable: Money,
  typed: TypedPayment,
  amount: Money | undefined,
  comes: Money | null,
  oldest: Proposal | undefined,
): Proposal {
  const nothing = zero(invoice.currency);
  if (!amount) return { parts: [], over: nothing };
  const { id: invoiceId, number, dueDate } = invoice;
  if (comes === null) {
    const settles = parseAmount(typed.settles, exponentOf(invoice.currency));
    const part = settles.ok ? amountOf(settles.value, invoice.currency) : payable;
    return { parts: [{ invoiceId, number, dueDate, amount: part }], over: nothing };
  }
  if (typed.spread === 'oldest' && typed.currency === invoice.currency) return oldest ?? { parts: [], over: nothing };
  const part = compare(comes, payable) > 0 ? payable : comes;
  return { parts: part.minor > 0 ? [{ invoiceId, number, dueDate, amount: part }] : [], over: subtract(comes, part) };
}
