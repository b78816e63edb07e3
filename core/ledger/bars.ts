/**
 * How long the bars of a chart are, in per cent of the longest.
 */
import { weightOf, type Sum } from './sums.ts';

/** Bars of sums share one scale: their worth at home, else the largest amount of each. Nothing and less has no bar. */
export function barsOf(sums: readonly Sum[]): number[] {
  const weights = sums.map((sum) => Math.max(0, weightOf(sum)));
  const longest = Math.max(1, ...weights);
  return weights.map((weight) => Math.round((1000 * weight) / longest) / 10);
}
