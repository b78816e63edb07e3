/**
 * Kit fees: flat sums for each date that uses the kit.
 */
import type { RateCardFields } from '../contract/rates.ts';
import { exact } from '../money/exact.ts';
import { formatNumber, formatPrice } from '../money/format.ts';
import { plural, slug, withOwnIds, type PricedLine } from './line.ts';

/** A line for each fee of the card. @param dates how many dates use the kit */
export function kitLines(card: Pick<RateCardFields, 'kit' | 'currency'>, dates: number): PricedLine[] {
  if (dates === 0) return [];
  const quantity = exact(dates);
  const days = plural(quantity, 'day');
  return withOwnIds(
    card.kit.map((fee) => ({
      id: `kit/${slug(fee.name)}`,
      section: 'kit',
      what: fee.name,
      quantity,
      unit: days,
      unitPrice: exact(fee.perDay),
      reason: `${formatNumber(quantity)} shooting ${days} at ${formatPrice(fee.perDay, card.currency)}.`,
      estimated: false,
      changed: false,
    })),
  );
}
