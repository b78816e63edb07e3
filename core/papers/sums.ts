/**
 * The sum under a table: net, each tax group, the total.
 */
import type { Totals } from '../contract/quotes.ts';
import { formatNumber } from '../money/format.ts';
import { paperText } from '../words/letters.ts';
import { onPaper, type PaperSum } from './content.ts';

type Group = Totals['taxes'][number];
type Summed = {
  totals: Totals;
  /** The lines hold their tax. */
  inside: boolean;
  /** The label of the total. */
  total: string;
  /** How a tax group is called. */
  naming: (group: Group) => string;
  /** A tax invoice names every rate, also one of nothing, and the tax in all where several groups are charged. */
  taxInvoice: boolean;
};

/** A plain line of the sum. */
export function plainSum(label: string, amount: string, note = ''): PaperSum {
  return { label, amount, note: paperText(note), weight: 'plain' };
}

/** "VAT 20 %". */
export function rateName({ name, percent }: Pick<Group, 'name' | 'percent'>): string {
  return `${paperText(name)} ${formatNumber(percent)} %`;
}

/** True where a tax is named that is not charged for a reason that the paper must give. */
export function isRelieved({ state }: Pick<Group, 'state'>): boolean {
  return state === 'exempt' || state === 'reverse charge';
}

/** Where lines hold their tax, the total comes first and the taxes say "of which". */
export function taxSums({ totals, inside, total, naming, taxInvoice }: Summed): PaperSum[] {
  const net = plainSum(inside ? 'Of which net' : 'Net', onPaper(totals.net));
  const several = totals.taxes.filter(({ tax }) => tax.minor !== 0).length > 1;
  const groups = [
    ...totals.taxes.map((group) =>
      plainSum(`${inside ? 'Of which ' : ''}${naming(group)} on ${onPaper(group.net)}`, onPaper(group.tax), group.note),
    ),
    ...(taxInvoice && several ? [plainSum('Tax in all', onPaper(totals.tax))] : []),
  ];
  // A single group without tax has nothing to add up: its reason stands under the total, unless it is the tax itself that is not charged.
  const [only, ...others] = totals.taxes;
  const named = totals.taxes.some((group) => isRelieved(group) || (taxInvoice && group.state === 'rated'));
  const untaxed = totals.tax.minor === 0 && others.length === 0 && !named ? paperText(only?.note ?? '') : '';
  const whole: PaperSum = { label: total, amount: onPaper(totals.gross), note: untaxed, weight: 'total' };
  const taxed = totals.tax.minor !== 0 || others.length > 0 || named;
  return inside ? [whole, net, ...groups] : [...(taxed ? [net, ...groups] : []), whole];
}
