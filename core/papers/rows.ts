/**
 * Lines of a price as rows of a table.
 */
import type { Section } from '../contract/quotes.ts';
import { formatNumber, formatPrice } from '../money/format.ts';
import type { Money } from '../money/money.ts';
import { paperText } from '../words/letters.ts';
import { onPaper, signed, type PaperRow } from './content.ts';

/** What the sections of a price are called on paper. */
export const SECTION_HEADS: Record<Section, string> = {
  days: 'Days',
  kit: 'Kit',
  travel: 'Travel',
  allowances: 'Allowances',
  editing: 'Editing',
  extras: 'Licences and extras',
  rush: 'Rush',
  discount: 'Discount',
};

type Line = { what: string; quantity: string; unit: string; unitPrice: string; amount: Money };

/** False for a sum that is not counted in anything: one, or one taken back, without a unit. */
export function isCounted({ quantity, unit }: Pick<Line, 'quantity' | 'unit'>): boolean {
  return unit !== '' || !/^-?1$/.test(formatNumber(quantity));
}

/** A sum that is not counted shows its amount alone. */
export function rowOf(line: Line): PaperRow {
  const counted = isCounted(line);
  return {
    what: paperText(line.what),
    quantity: counted ? signed(formatNumber(line.quantity)) : '',
    unit: paperText(line.unit),
    price: counted ? signed(formatPrice(line.unitPrice, line.amount.currency)) : '',
    amount: onPaper(line.amount),
  };
}
