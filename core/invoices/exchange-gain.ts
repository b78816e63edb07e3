/**
 * What the exchange rate did between an invoice and its payment. Both rates are exact decimals, home currency for one unit of the other:
 * the invoice's of the date of supply, the payment's of its own date.
 */
import { exchanged, type ExchangeRate } from '../money/exchange.ts';
import { subtract, type Money } from '../money/money.ts';

/**
 * Gain (above zero) or loss in the home currency, for one part of a payment. Each of the two worths is rounded once.
 * @param part what the payment settles, in the invoice's currency
 * @throws CurrencyMixError when a rate is from another currency than the part
 */
export function exchangeGain<C extends string, H extends string>(
  part: Money<C>,
  atSupply: ExchangeRate<NoInfer<C>, H>,
  atPayment: ExchangeRate<NoInfer<C>, NoInfer<H>>,
): Money<H> {
  return subtract(exchanged(part, atPayment), exchanged(part, atSupply));
}
