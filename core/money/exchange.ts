/**
 * Amounts in another currency, by a dated rate that is kept with the line it was used on.
 */
import { exact } from './exact.ts';
import { amountOf, CurrencyMixError, majorOf, type Money } from './money.ts';

/** An exact decimal: units of `to` for one unit of `from`, on a date (of supply on an invoice, of payment on a payment). */
export type ExchangeRate<From extends string = string, To extends string = string> = { from: From; to: To; rate: string; date: string };

/**
 * An amount in the rate's other currency, rounded once, half away from zero.
 * @throws CurrencyMixError when the rate is from another currency than the amount
 */
export function exchanged<From extends string, To extends string>(amount: Money<From>, rate: ExchangeRate<NoInfer<From>, To>): Money<To> {
  if (amount.currency !== rate.from) throw new CurrencyMixError(amount.currency, rate.from);
  return amountOf(majorOf(amount).mul(exact(rate.rate)), rate.to);
}
