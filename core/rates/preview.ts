/**
 * What a change to a rate card does to quotes, summed up.
 */
import type { PreviewRow } from '../contract/rates.ts';
import { formatMoney } from '../money/format.ts';
import { compare, subtract, sum, zero, type Money } from '../money/money.ts';

/** A row for one quote, from its gross before and after. */
export function previewRow(quote: Pick<PreviewRow, 'jobId' | 'title' | 'number'>, before: Money, after: Money): PreviewRow {
  return { ...quote, before, after, difference: subtract(after, before) };
}

/** All rows in one sentence; rows are of one currency, that of the card. */
export function previewSentence(rows: readonly PreviewRow[], currency: string): string {
  if (rows.length === 0) return 'No quote was made from this card yet.';
  const by = sum(
    currency,
    rows.map((row) => row.difference),
  );
  const quotes = rows.length === 1 ? 'The last quote' : `The last ${rows.length} quotes`;
  const order = compare(by, zero(currency));
  if (order === 0) return `${quotes} would come to the same together.`;
  return `${quotes} would come to ${formatMoney({ ...by, minor: Math.abs(by.minor) }, { code: true })} ${order > 0 ? 'more' : 'less'} together.`;
}
