/**
 * Net, taxes by group and gross of a quote's lines.
 */
import type { Section, Totals } from '../contract/quotes.ts';
import type { SetupFields } from '../contract/setup.ts';
import { sum, type Money } from '../money/money.ts';
import { shareOut } from '../money/share.ts';
import { taxLines, type Basket, type Tax, type Taxed } from '../money/taxes.ts';
import { expenseSections } from './discount.ts';
import { amountOfLine, type PricedLine } from './line.ts';

/** What decides about tax: who I am, and who pays. */
export type TaxFacts = { taxes: readonly Tax[]; included: boolean };

/** The taxes that my details put on a line. A sender who is not registered charges none. */
export function taxFactsOf(setup: Pick<SetupFields, 'registered' | 'tax'>): TaxFacts {
  if (!setup.registered || !setup.tax) return { taxes: [], included: false };
  const { name, percent, included } = setup.tax;
  return { taxes: [{ name, percent, state: 'rated', reason: '' }], included };
}

export type QuoteTotals = {
  totals: Totals;
  baskets: Basket<string>[];
  /** Net of what is passed on as it is, after its part of any discount. */
  expenses: Money;
};

type Piece = { section: Section; amount: Money; taxes: readonly Tax[] };

/**
 * Totals of lines, a discount shared over the groups of the sections it applies to in proportion to their amounts.
 * @param discounted sections that the discount lines apply to
 */
export function totalsOf(lines: readonly PricedLine[], facts: TaxFacts, discounted: readonly Section[], currency: string): QuoteTotals {
  const pieces: Piece[] = lines
    .filter((line) => line.section !== 'discount')
    .map((line) => ({ section: line.section, amount: amountOfLine(line, currency), taxes: facts.taxes }));
  const off = sum(
    currency,
    lines.filter((line) => line.section === 'discount').map((line) => amountOfLine(line, currency)),
  );
  const shares = sharesOf(off, pieces, discounted);
  const taxed = taxLines(currency, [...pieces, ...shares], facts.included);
  const expenses = sum(
    currency,
    taxed.lineNets.filter((_, place) => expenseSections.includes([...pieces, ...shares][place]!.section)),
  );
  return { totals: totalsText(taxed), baskets: taxed.baskets, expenses };
}

/** The discount cut into pieces that bear the taxes of the lines they belong to. */
function sharesOf(off: Money, pieces: readonly Piece[], discounted: readonly Section[]): Piece[] {
  if (off.minor === 0) return [];
  const within = pieces.filter((piece) => discounted.includes(piece.section) && piece.amount.minor > 0);
  const over = within.length > 0 ? within : pieces.filter((piece) => piece.amount.minor > 0);
  if (over.length === 0) return [{ section: 'discount', amount: off, taxes: pieces[0]?.taxes ?? [] }];
  return shareOut(
    off,
    over.map((piece) => piece.amount.minor),
  ).map((amount, order) => ({ ...over[order]!, amount }));
}

function totalsText(taxed: Taxed<string>): Totals {
  const taxes = taxed.groups.map(({ tax, net, amount }) => ({ name: tax.name, percent: tax.percent, net, tax: amount, note: tax.reason }));
  return { net: taxed.net, taxes, tax: taxed.tax, gross: taxed.gross };
}
