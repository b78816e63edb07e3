/**
 * What a change to a rate card does to quotes, summed up.
 */
import type { Incomparable, PreviewRow } from '../contract/rates.ts';
import { formatMoney } from '../money/format.ts';
import { countInWords } from '../words/amounts.ts';
import { compare, subtract, sum, zero, type Money } from '../money/money.ts';

/** A row for one quote, from its gross before and after. */
export function previewRow(quote: Pick<PreviewRow, 'jobId' | 'title' | 'number'>, before: Money, after: Money): PreviewRow {
  return { ...quote, before, after, difference: subtract(after, before) };
}

/**
 * Why a quote cannot be compared, or null where it can.
 * @param quote currency in which it was made @param card that of the card as it is @param changed that of the card as it would be
 */
export function whyApart(quote: string, card: string, changed: string): string | null {
  if (quote !== card) return `It was made in ${quote}, and the card is in ${card} now.`;
  return card === changed ? null : `It was made in ${quote}, and the card would be in ${changed}.`;
}

/** All rows in one sentence, and how many stand apart; rows are of one currency, that of the card. */
export function previewSentence(rows: readonly PreviewRow[], currency: string, apart: readonly Incomparable[] = []): string {
  const all = rows.length + apart.length;
  if (all === 0) return 'No quote was made from this card yet.';
  if (rows.length === 0) return all === 1 ? 'The last quote cannot be compared.' : `None of the last ${all} quotes can be compared.`;
  return apart.length === 0
    ? together(rows, currency)
    : `${together(rows, currency)} ${countInWords(apart.length, 'quote')} cannot be compared.`;
}

function together(rows: readonly PreviewRow[], currency: string): string {
  const by = sum(
    currency,
    rows.map((row) => row.difference),
  );
  const quotes = rows.length === 1 ? 'The last quote' : `The last ${rows.length} quotes`;
  const order = compare(by, zero(currency));
  if (order === 0) return `${quotes} would come to the same together.`;
  return `${quotes} would come to ${formatMoney({ ...by, minor: Math.abs(by.minor) }, { code: true })} ${order > 0 ? 'more' : 'less'} together.`;
}
