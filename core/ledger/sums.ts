/**
 * Sums over amounts in several currencies. Currencies are never added but by the rate that is stored with each amount.
 */
import { exchanged } from '../money/exchange.ts';
import { add, sum, zero, type Money } from '../money/money.ts';

/**
 * An amount with its stored rate: home currency for one unit, exact decimal; null where none is known or it is the home currency.
 * `worth` where what it came to in the home currency is known by itself.
 */
export type Rated = { amount: Money; rate: string | null; worth?: Money };
/** What amounts come to in each currency, home first, then by code; and all of it in the home currency, null where a rate is not known. */
export type Sum = { by: Money[]; home: Money | null };

/** Each amount is turned into the home currency and rounded by itself, so that parts of a sum add up to the sum. */
export function sumOf(items: readonly Rated[], home: string): Sum {
  const by = new Map<string, Money>();
  let inHome: Money | null = zero(home);
  for (const { amount, rate, worth: known } of items) {
    by.set(amount.currency, add(by.get(amount.currency) ?? zero(amount.currency), amount));
    const worth = known ?? worthOf({ amount, rate }, home);
    inHome = inHome && worth ? add(inHome, worth) : null;
  }
  return { by: [...by.values()].filter(({ minor }) => minor !== 0).sort((a, b) => inOrder(a.currency, b.currency, home)), home: inHome };
}

/** An amount in the home currency by its stored rate; null where that is not known. */
export function worthOf({ amount, rate }: Pick<Rated, 'amount' | 'rate'>, home: string): Money | null {
  if (amount.currency === home) return amount;
  return rate === null ? null : exchanged(amount, { from: amount.currency, to: home, rate, date: '' });
}

/** The home currency first, then by code. */
export function inOrder(one: string, other: string, home: string): number {
  if (one === other) return 0;
  if (one === home || other === home) return one === home ? -1 : 1;
  return one < other ? -1 : 1;
}

/** What a sum weighs when groups are put in order: its worth at home, else its largest amount. */
export function weightOf({ home, by }: Sum): number {
  return home?.minor ?? Math.max(0, ...by.map(({ minor }) => minor));
}

/** Several sums as one; at home only where each of them is known there. */
export function addSums(sums: readonly Sum[], home: string): Sum {
  const by = sumOf(
    sums.flatMap((each) => each.by.map((amount) => ({ amount, rate: null }))),
    home,
  ).by;
  const known = sums.flatMap((each) => each.home ?? []);
  return { by, home: known.length === sums.length ? sum(home, known) : null };
}
