/**
 * Net, taxes by group and gross of a quote's lines.
 */
import type { Section, Totals } from '../contract/quotes.ts';
import { sum, type Money } from '../money/money.ts';
import { shareOver } from '../money/share.ts';
import { taxLines, type Basket, type Tax, type Taxed } from '../money/taxes.ts';
import { amountOfLine, type PricedLine } from './line.ts';

/** A line with the taxes that it bears; a discount bears those of the lines that it is shared over. */
export type LineWithTaxes = { line: PricedLine; taxes: readonly Tax[] };
export type QuoteTotals = {
  totals: Totals;
  baskets: Basket<string>[];
  /** Net of some sections, after their part of any discount. */
  netOf: (sections: readonly Section[]) => Money;
};

/** An amount of a section with the taxes that it bears. */
export type Piece = { section: Section; amount: Money; taxes: readonly Tax[] };

/**
 * Totals of lines, a discount shared over the lines of the sections it applies to in proportion to their amounts.
 * @param included the amounts hold their tax already
 * @param discounted sections that the discount lines apply to
 */
export function totalsOf(
  lines: readonly LineWithTaxes[],
  included: boolean,
  discounted: readonly Section[],
  currency: string,
): QuoteTotals {
  const pieces = lines.map(({ line, taxes }): Piece => ({ section: line.section, amount: amountOfLine(line, currency), taxes }));
  const goods = pieces.filter((piece) => piece.section !== 'discount');
  const off = sum(
    currency,
    pieces.filter((piece) => piece.section === 'discount').map((piece) => piece.amount),
  );
  const all = [...goods, ...sharesOf(off, goods, discounted)];
  const taxed = taxLines(currency, all, included);
  const netOf = (sections: readonly Section[]): Money =>
    sum(
      currency,
      taxed.lineNets.filter((_, place) => sections.some((section) => section === all[place]?.section)),
    );
  return { totals: totalsText(taxed), baskets: taxed.baskets, netOf };
}

/** A discount cut into pieces that bear the taxes of the lines they belong to. */
export function sharesOf(off: Money, goods: readonly Piece[], discounted: readonly Section[]): Piece[] {
  if (off.minor === 0) return [];
  const priced = goods.filter((piece) => piece.amount.minor > 0);
  const within = priced.filter((piece) => discounted.includes(piece.section));
  const over = within.length > 0 ? within : priced;
  if (over.length === 0) return [{ section: 'discount', amount: off, taxes: [] }];
  return shareOver(off, over, (piece) => piece.amount.minor).map(({ thing, share }) => ({ ...thing, amount: share }));
}

/** Totals as the contract writes them. */
export function totalsText(taxed: Taxed<string>): Totals {
  const taxes = taxed.groups.map(({ tax, net, amount }) => ({
    name: tax.name,
    percent: tax.percent,
    net,
    tax: amount,
    note: tax.reason,
    state: tax.state,
  }));
  return { net: taxed.net, taxes, tax: taxed.tax, gross: taxed.gross };
}
