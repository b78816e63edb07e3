/**
 * Credit notes. A full one repeats every amount with the sign turned. Part credits never exceed what is left of a line; the last takes the rest,
 * tax and all, so that an invoice and its credit notes come to zero.
 */
import type { Totals } from '../contract/quotes.ts';
import { decimalText, exact } from '../money/exact.ts';
import { formatMoney } from '../money/format.ts';
import { add, majorOf, negate, sum, zero, type Money } from '../money/money.ts';
import { sumsOf, type InvoiceLine } from './lines.ts';

type Group = Totals['taxes'][number];
/** What was issued: its lines, whether they hold their tax, and what they come to. */
export type Issued = { lines: readonly InvoiceLine[]; included: boolean; totals: Totals };
/** An earlier credit note of the same invoice; amounts are below zero. */
export type EarlierCredit = { lines: readonly Pick<InvoiceLine, 'id' | 'amount'>[]; totals: Totals };
export type CreditAsked = 'all' | readonly { id: string; amount: Money }[];
export type Credit = { lines: InvoiceLine[]; totals: Totals };

/** What is left to credit of each line, in the order of the paper; lines without anything left are there with zero. */
export function leftOfLines(issued: Issued, earlier: readonly EarlierCredit[]): { id: string; what: string; left: Money }[] {
  return issued.lines.map(({ id, what, amount }) => ({
    id,
    what,
    left: sum(amount.currency, [
      amount,
      ...earlier.flatMap(({ lines }) => lines.filter((line) => line.id === id).map((line) => line.amount)),
    ]),
  }));
}

/** Why a credit cannot be given, in sentences; none when it can. */
export function creditTroubles(issued: Issued, earlier: readonly EarlierCredit[], asked: CreditAsked): string[] {
  const left = new Map(leftOfLines(issued, earlier).map((line) => [line.id, line]));
  if ([...left.values()].every((line) => line.left.minor === 0)) return ['Everything on this invoice was credited already.'];
  if (asked === 'all') return [];
  if (asked.length === 0) return ['Name at least one line to credit.'];
  const names = asked.map(({ id }) => id);
  if (new Set(names).size < names.length) return ['A line is named twice; give it one amount.'];
  return asked.flatMap(({ id, amount }) => {
    const line = left.get(id);
    if (!line) return [`The invoice has no line "${id}".`];
    if (amount.currency !== line.left.currency) return [`${line.what} is in ${line.left.currency}, not in ${amount.currency}.`];
    const within = Math.sign(amount.minor) === Math.sign(line.left.minor) && Math.abs(amount.minor) <= Math.abs(line.left.minor);
    return within && amount.minor !== 0 ? [] : [`${line.what}: ${formatMoney(line.left)} is left to credit, not ${formatMoney(amount)}.`];
  });
}

/**
 * The credit note's lines and totals; every amount has the sign of the invoice turned.
 * `creditTroubles` has been asked before.
 */
export function creditOf(issued: Issued, earlier: readonly EarlierCredit[], asked: CreditAsked): Credit {
  const left = new Map(leftOfLines(issued, earlier).map((line) => [line.id, line.left]));
  const wanted = new Map(asked === 'all' ? left : asked.map(({ id, amount }): [string, Money] => [id, amount]));
  const lines = issued.lines.flatMap((line) => {
    const amount = wanted.get(line.id);
    return amount && amount.minor !== 0 ? [turned(line, amount)] : [];
  });
  const { currency } = issued.totals.gross;
  const own = sumsOf(currency, lines, issued.included);
  const rest = isLast(left, wanted) ? restOf(issued.totals, earlier) : null;
  return { lines, totals: rest ?? own };
}

/** The whole line with its quantity turned, or a part of it as one sum. */
function turned(line: InvoiceLine, amount: Money): InvoiceLine {
  const wholeLine = amount.minor === line.amount.minor;
  const negative = negate(amount);
  return wholeLine
    ? { ...line, quantity: decimalText(exact(line.quantity).neg()), amount: negative }
    : { ...line, quantity: '1', unit: '', unitPrice: decimalText(majorOf(negative)), amount: negative };
}

function isLast(left: ReadonlyMap<string, Money>, wanted: ReadonlyMap<string, Money>): boolean {
  return [...left].every(([id, amount]) => amount.minor === (wanted.get(id)?.minor ?? 0));
}

/** What is left of the invoice's own totals, with the sign turned. */
function restOf(totals: Totals, earlier: readonly EarlierCredit[]): Totals {
  const { currency } = totals.gross;
  const rest = (pick: (one: Totals) => Money) => negate(sum(currency, [pick(totals), ...earlier.map((credit) => pick(credit.totals))]));
  const taxes = totals.taxes.map((group): Group => {
    const same = [group, ...earlier.flatMap((credit) => credit.totals.taxes.filter((other) => keyOf(other) === keyOf(group)))];
    const left = (pick: (one: Group) => Money) => negate(same.reduce<Money>((total, one) => add(total, pick(one)), zero(currency)));
    return { ...group, net: left((one) => one.net), tax: left((one) => one.tax) };
  });
  return { net: rest((one) => one.net), taxes, tax: rest((one) => one.tax), gross: rest((one) => one.gross) };
}

function keyOf({ name, percent, state }: Group): string {
  return JSON.stringify([name, exact(percent).toFraction(), state ?? 'rated']);
}
