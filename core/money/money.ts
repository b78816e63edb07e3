/**
 * Amounts: whole minor units with an ISO 4217 currency. The only rounding is that of a line's amount, half away from zero.
 */
import { exponentOf } from './currencies.ts';
import { exact, roundHalfAway, type Exact, type ExactSource } from './exact.ts';

/** An amount in minor units (cents for USD, whole yen for JPY). `Money<'USD'>` and `Money<'EUR'>` do not mix in the compiler. */
export type Money<C extends string = string> = { readonly minor: number; readonly currency: C };

/** The largest amount that is reckoned with, in minor units; ten thousand times below what a number holds exactly. */
const LARGEST = 1_000_000_000_000n;

/** Thrown where amounts of two currencies meet without a dated rate between them. */
export class CurrencyMixError extends Error {
  constructor(one: string, other: string) {
    super(`${one} and ${other} cannot be added up without a dated rate between them.`);
  }
}

/**
 * An amount of whole minor units.
 * @throws RangeError past 10^12 minor units, and for an unknown currency
 */
export function money<C extends string>(minor: bigint | number, currency: C): Money<C> {
  exponentOf(currency);
  const whole = BigInt(minor);
  if (whole > LARGEST || whole < -LARGEST) throw new RangeError('The amount is past what a job can cost; check the figures.');
  return { minor: Number(whole), currency };
}

/** Nothing, in a currency. */
export function zero<C extends string>(currency: C): Money<C> {
  return money(0n, currency);
}

/** An amount in major units, exactly: 1234 cents are 12.34. */
export function majorOf(amount: Money): Exact {
  return exact(amount.minor).div(10n ** BigInt(exponentOf(amount.currency)));
}

/** Major units rounded to an amount, half away from zero: 633.3333 gives 633.33 in USD and 633 in JPY. */
export function amountOf<C extends string>(major: ExactSource, currency: C): Money<C> {
  return money(roundHalfAway(exact(major).mul(10n ** BigInt(exponentOf(currency)))), currency);
}

/** Quantity x unit price (major units), rounded once: the one place where money is rounded. */
export function lineAmount<C extends string>(quantity: ExactSource, unitPrice: ExactSource, currency: C): Money<C> {
  return amountOf(exact(quantity).mul(exact(unitPrice)), currency);
}

/** So many per cent of an amount, rounded half away from zero. */
export function percentOf<C extends string>(amount: Money<C>, percent: ExactSource): Money<C> {
  return money(roundHalfAway(exact(amount.minor).mul(exact(percent)).div(100n)), amount.currency);
}

function sameCurrency(one: Money, other: Money): void {
  if (one.currency !== other.currency) throw new CurrencyMixError(one.currency, other.currency);
}

/** @throws CurrencyMixError */
export function add<C extends string>(one: Money<C>, other: Money<NoInfer<C>>): Money<C> {
  sameCurrency(one, other);
  return money(one.minor + other.minor, one.currency);
}

/** @throws CurrencyMixError */
export function subtract<C extends string>(one: Money<C>, other: Money<NoInfer<C>>): Money<C> {
  sameCurrency(one, other);
  return money(one.minor - other.minor, one.currency);
}

/** The same amount with its sign turned. */
export function negate<C extends string>(amount: Money<C>): Money<C> {
  return money(0 - amount.minor, amount.currency);
}

/**
 * The sum of amounts in one currency; nothing sums to zero.
 * @throws CurrencyMixError
 */
export function sum<C extends string>(currency: C, amounts: readonly Money<NoInfer<C>>[]): Money<C> {
  return amounts.reduce<Money<C>>((total, amount) => add(total, amount), zero(currency));
}

/**
 * Below zero, zero or above, as `one` is less than, the same as or more than `other`.
 * @throws CurrencyMixError
 */
export function compare<C extends string>(one: Money<C>, other: Money<NoInfer<C>>): number {
  sameCurrency(one, other);
  return Math.sign(one.minor - other.minor);
}
