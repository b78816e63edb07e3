/**
 * What a person said by hand on a draft bill, besides changes of its lines; the last word counts.
 */
import type { DraftChange } from '../contract/quotes.ts';
import type { InvoiceChange } from '../contract/invoices.ts';

type OfKind<O extends InvoiceChange['op']> = Extract<InvoiceChange, { op: O }>;
type LineChange = OfKind<'set' | 'add' | 'drop' | 'restore' | 'tax'>;

const last = <O extends InvoiceChange['op']>(changes: readonly InvoiceChange[], op: O): OfKind<O> | undefined =>
  changes.findLast((change): change is OfKind<O> => change.op === op);

/** How much is asked for, when it is due, the dates of supply, the exchange rate, and a sentence of one's own. */
export type Asked = {
  ask: OfKind<'ask'> | undefined;
  due: string | undefined;
  supply: { from: string; to: string } | undefined;
  rate: { rate: string; date: string } | undefined;
  note: string;
};

export function askedByHand(changes: readonly InvoiceChange[]): Asked {
  const [supply, rate] = [last(changes, 'supply'), last(changes, 'rate')];
  return {
    ask: last(changes, 'ask'),
    due: last(changes, 'due')?.date,
    supply: supply && { from: supply.from, to: supply.to },
    rate: rate && { rate: rate.rate, date: rate.date },
    note: last(changes, 'note')?.text.trim() ?? '',
  };
}

const isOfLines = (change: InvoiceChange): change is LineChange => ['set', 'add', 'drop', 'restore', 'tax'].includes(change.op);

/** The changes of lines: a quote's own kind, so that the same pricing takes them in. */
export function lineChanges(changes: readonly InvoiceChange[]): DraftChange[] {
  return changes.filter(isOfLines);
}
