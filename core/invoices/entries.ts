/**
 * What stands on a client's statement: issued papers, money that came and went, and what was given up.
 */
import type { InvoiceRow } from '../contract/invoices.ts';
import type { Payment } from '../contract/payments.ts';
import { money, negate, sum } from '../money/money.ts';
import type { StatementEntry } from './statement.ts';

/** The entries of one currency. @param writtenOff date on which the rest of an invoice was given up, by its id */
export function entriesOf(
  currency: string,
  invoices: readonly InvoiceRow[],
  payments: readonly Payment[],
  writtenOff: ReadonlyMap<string, string>,
): StatementEntry[] {
  const own = invoices.filter((invoice) => invoice.currency === currency);
  return [
    ...own.map(({ kind, number, issueDate, toPay }): StatementEntry => ({
      on: issueDate,
      kind: kind === 'credit note' ? 'credit note' : 'invoice',
      name: number,
      amount: toPay,
    })),
    ...own.flatMap(({ id, number, writtenOff: given }): StatementEntry[] => {
      const on = writtenOff.get(id);
      return on === undefined || given.minor === 0 ? [] : [{ on, kind: 'write-off', name: number, amount: negate(given) }];
    }),
    ...payments.flatMap((payment) => paymentEntry(currency, payment)),
  ];
}

/** What a payment settles in a currency; credit that is only used comes to nothing. */
function paymentEntry(currency: string, { on, how, parts, kind }: Payment): StatementEntry[] {
  const settled = sum(
    currency,
    parts.filter(({ amount }) => amount.currency === currency).map(({ amount }) => money(amount.minor, currency)),
  );
  if (settled.minor === 0) return [];
  const numbers = [...new Set(parts.map(({ number }) => number).filter((number) => number !== ''))].join(', ');
  const name = [kind === 'reversal' ? 'reversed' : '', how, numbers].filter((part) => part !== '').join(', ');
  return [{ on, kind: settled.minor > 0 ? 'payment' : 'refund', name, amount: negate(settled) }];
}
