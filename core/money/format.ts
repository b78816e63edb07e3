/**
 * Amounts and numbers as they are read: a comma between thousands, a point before decimals, whatever the computer's locale.
 */
import { exponentOf } from './currencies.ts';
import { decimalText, exact, fixedText, type ExactSource } from './exact.ts';
import { majorOf, type Money } from './money.ts';

function grouped(decimal: string): string {
  const [whole = '', places] = decimal.split('.');
  const withCommas = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return places === undefined ? withCommas : `${withCommas}.${places}`;
}

/**
 * An amount with the places of its currency: "1,234.50", "1,001" for JPY, "1.500" for KWD, "-25.00".
 * @param options.code put the currency before it, "USD 1,234.50": wherever currencies could be mistaken for one another
 */
export function formatMoney(amount: Money, options: { code?: boolean } = {}): string {
  const figures = grouped(fixedText(majorOf(amount), exponentOf(amount.currency)));
  return options.code ? `${amount.currency} ${figures}` : figures;
}

/** A unit price: at least the places of its currency, at most four: "1,200.00", "0.725", "105.5556". */
export function formatPrice(price: ExactSource, currency: string): string {
  const least = exponentOf(currency);
  const shown = decimalText(price, Math.max(4, least));
  const places = shown.split('.')[1]?.length ?? 0;
  return grouped(places < least ? fixedText(price, least) : shown);
}

/** A quantity, rate or per cent without trailing zeros: "2.5", "1,250", "7.25"; at most four places. */
export function formatNumber(value: ExactSource): string {
  return grouped(decimalText(exact(value), 4));
}
