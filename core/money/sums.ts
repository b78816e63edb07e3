/**
 * Amounts of several currencies side by side: they are never added without a dated rate.
 */
import { sum, type Money } from './money.ts';

/** One sum for each currency, in order of its code. */
export function sumsByCurrency(amounts: readonly Money[]): Money[] {
  return [...Map.groupBy(amounts, ({ currency }) => currency)]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([currency, same]) => sum(currency, same));
}
