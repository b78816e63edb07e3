/**
 * Sharing an amount out so that the parts always add up to it.
 */
import { exact, type Exact, type ExactSource } from './exact.ts';
import { money, type Money } from './money.ts';

/**
 * An amount shared out in proportion to weights by largest remainder, ties by order; a negative amount by magnitude with the sign put back.
 * A total of zero gives zeros.
 * @throws RangeError for a weight below zero, and when there is something to share but every weight is zero
 */
export function shareOut<C extends string>(total: Money<C>, weights: readonly ExactSource[]): Money<C>[] {
  const shares = weights.map((weight) => exact(weight));
  if (shares.some((share) => share.s < 0n)) throw new RangeError('A share cannot be below zero.');
  const whole = shares.reduce<Exact>((sum, share) => sum.add(share), exact(0));
  if (total.minor === 0) return shares.map(() => money(0n, total.currency));
  if (whole.s === 0n || whole.n === 0n) throw new RangeError('There is nothing to share this amount over.');

  const magnitude = BigInt(Math.abs(total.minor));
  const parts = shares.map((share, order) => {
    const ideal = share.mul(magnitude).div(whole);
    const floor = ideal.n / ideal.d;
    return { order, floor, remainder: ideal.sub(floor) };
  });
  let left = Number(magnitude - parts.reduce((sum, part) => sum + part.floor, 0n));
  const byRemainder = parts.toSorted((a, b) => b.remainder.compare(a.remainder) || a.order - b.order);
  for (const part of byRemainder) {
    if (left === 0) break;
    part.floor += 1n;
    left -= 1;
  }
  return parts.map((part) => money(total.minor < 0 ? -part.floor : part.floor, total.currency));
}

/** The same over things that know their weight: each thing with its share, in order. */
export function shareOver<C extends string, T>(
  total: Money<C>,
  things: readonly T[],
  weightOf: (thing: T) => ExactSource,
): { thing: T; share: Money<C> }[] {
  const shares = shareOut(total, things.map(weightOf));
  return things.map((thing, order) => ({ thing, share: shares[order] ?? money(0n, total.currency) }));
}
