/**
 * A client's statement: everything that was issued, paid, paid back and written off in one currency, with what is left after each.
 */
import { add, zero, type Money } from '../money/money.ts';

export const statementKinds = ['invoice', 'credit note', 'payment', 'refund', 'write-off'] as const;
/** Amounts carry their sign: an invoice adds, a credit note, payment or write-off takes away, a refund adds. */
export type StatementEntry<C extends string = string> = {
  on: string;
  kind: (typeof statementKinds)[number];
  name: string;
  amount: Money<C>;
};
export type StatementRow<C extends string = string> = StatementEntry<C> & { balance: Money<C> };

const KINDS: Record<StatementEntry['kind'], string> = {
  invoice: 'Invoice',
  'credit note': 'Credit note',
  payment: 'Payment',
  refund: 'Paid back',
  'write-off': 'Given up',
};

/** "Invoice 2026-004", "Payment, transfer, 2026-004". */
export function entryInWords({ kind, name }: Pick<StatementEntry, 'kind' | 'name'>): string {
  const apart = kind === 'payment' || kind === 'refund' ? ', ' : ' ';
  return [KINDS[kind], name].filter((part) => part !== '').join(apart);
}

/**
 * Entries up to a date in the order of their dates, each with the balance after it. Entries of one date stand in a fixed order
 * (invoices, credit notes, payments, refunds, write-offs; then by name and amount), so the order of entry changes nothing.
 * @throws CurrencyMixError when an entry is in another currency
 */
export function statementOf<C extends string>(
  currency: C,
  entries: readonly StatementEntry<NoInfer<C>>[],
  asOf: string,
): StatementRow<C>[] {
  let balance: Money<C> = zero(currency);
  return entries
    .filter(({ on }) => on <= asOf)
    .toSorted(inOrder)
    .map((entry) => {
      balance = add(balance, entry.amount);
      return { ...entry, balance };
    });
}

function inOrder(a: StatementEntry, b: StatementEntry): number {
  return (
    text(a.on, b.on) ||
    statementKinds.indexOf(a.kind) - statementKinds.indexOf(b.kind) ||
    text(a.name, b.name) ||
    a.amount.minor - b.amount.minor
  );
}

function text(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
