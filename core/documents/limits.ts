/**
 * Limits of insurances as people type them: whole units of a currency.
 */
import { lineAmount, majorOf, type Money } from '../money/money.ts';
import { exponentOf } from '../money/currencies.ts';
import { fixedText } from '../money/exact.ts';

/** The largest limit that is typed: a billion. */
const LARGEST = 1_000_000_000;

/** A limit of whole units; null where nothing, or nothing that can be read, is typed. Commas and blanks between figures are passed over. */
export function limitOf(typed: string, currency: string): Money | null {
  const figures = typed.replace(/[\s,’']/g, '');
  const units = /^\d+$/.test(figures) ? Number(figures) : 0;
  return units > 0 && units <= LARGEST ? lineAmount(units, 1, currency) : null;
}

/** Whole units of a limit, as they are typed. */
export function wholeUnits(limit: Money): string {
  return fixedText(majorOf(limit), exponentOf(limit.currency)).replace(/\.0+$/, '');
}
