/**
 * A deposit: its own invoice first, then set off against the final bill by tax group.
 */
import type { Totals } from '../contract/quotes.ts';
import { decimalText } from '../money/exact.ts';
import { majorOf, negate, sum, type Money } from '../money/money.ts';
import { depositParts, type Basket } from '../money/taxes.ts';
import type { InvoiceLine } from './lines.ts';

/** An issued deposit, as the final bill names it. */
export type IssuedDeposit = { invoiceId: string; number: string; date: string; totals: Totals };
/** What a deposit takes from one tax group of the final bill; amounts are below zero. */
type SetOff = { name: string; percent: string; note: string; net: Money; tax: Money };
export type DepositSetOff = Omit<IssuedDeposit, 'totals'> & { groups: SetOff[]; net: Money; tax: Money; gross: Money };

/**
 * The lines of a deposit invoice: one for each set of taxes, amounts with their tax included, so that the parts add up to the deposit to a unit.
 * @param what what the deposit is for, in words
 */
export function depositLines(deposit: Money, baskets: readonly Basket<string>[], what: string): InvoiceLine[] {
  return depositParts(deposit, baskets)
    .filter(({ gross }) => gross.minor !== 0)
    .map(({ gross, taxes }, order) => ({
      id: `deposit/${order + 1}`,
      section: 'deposit',
      what,
      quantity: '1',
      unit: '',
      unitPrice: decimalText(majorOf(gross)),
      amount: gross,
      taxes,
    }));
}

/** What issued deposits take from the final bill: for each tax group less its net and its tax, as their invoices say. */
export function setOff(deposits: readonly IssuedDeposit[]): DepositSetOff[] {
  return deposits.map(({ totals, ...named }) => ({
    ...named,
    groups: totals.taxes.map(({ name, percent, note, net, tax }) => ({ name, percent, note, net: negate(net), tax: negate(tax) })),
    net: negate(totals.net),
    tax: negate(totals.tax),
    gross: negate(totals.gross),
  }));
}

/** What is left to pay of a bill after its deposits. Below zero where the deposits were more. */
export function toPayOf({ gross }: Pick<Totals, 'gross'>, deposits: readonly Pick<DepositSetOff, 'gross'>[]): Money {
  return sum(gross.currency, [gross, ...deposits.map((deposit) => deposit.gross)]);
}
