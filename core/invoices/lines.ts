/**
 * Lines of an issued paper, and what they come to.
 */
import type { Totals } from '../contract/quotes.ts';
import type { Money } from '../money/money.ts';
import { taxLines, type Tax } from '../money/taxes.ts';
import { totalsText } from '../quotes/totals.ts';

/** Amounts hold their tax where the paper says so, else they are net. Quantity and unit price are exact decimals. */
export type InvoiceLine = {
  id: string;
  section: string;
  what: string;
  quantity: string;
  unit: string;
  unitPrice: string;
  amount: Money;
  taxes: readonly Tax[];
};

/**
 * Net, taxes by group and gross of lines.
 * @param included the amounts hold their tax already
 * @throws CurrencyMixError when a line is in another currency
 */
export function sumsOf(currency: string, lines: readonly Pick<InvoiceLine, 'amount' | 'taxes'>[], included: boolean): Totals {
  return totalsText(taxLines(currency, lines, included));
}
