import type { Money } from '../contract/parts.ts';
import type { Stage } from '../jobs/state.ts';

/** Gross of the newest made quotes of inked jobs, one sum for each currency, in the order in which they are met. */
export function inkedTotals(jobs: readonly { stage: Stage; total: Money | null }[]): Money[] {
  const sums = new Map<string, number>();
  for (const { stage, total } of jobs)
    if (stage === 'inked' && total) sums.set(total.currency, (sums.get(total.currency) ?? 0) + total.minor);
  return [...sums].map(([currency, minor]) => ({ minor, currency }));
}
