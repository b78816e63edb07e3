import type { HandRate } from '../contract/people.ts';
import type { z } from 'zod';

type Rate = z.infer<typeof HandRate>;

/**
 * What a hand costs on a date: for each role the newest rate that begins on or before it, roles in the order in which they are kept.
 * A role whose rates all begin later is left out.
 * @param date YYYY-MM-DD
 */
export function ratesOn(rates: readonly Rate[], date: string): Rate[] {
  const newest = new Map<string, Rate>();
  for (const rate of rates) {
    const known = newest.get(rate.role);
    if (rate.from <= date && (!known || known.from <= rate.from)) newest.set(rate.role, rate);
  }
  return [...newest.values()];
}
