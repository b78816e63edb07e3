/**
 * Turnaround: the time from one wrap to the next call for the same client. A shortfall is a forced call and is paid for.
 */
import { exact, type Exact } from '../money/exact.ts';
import { formatNumber, formatPrice } from '../money/format.ts';
import { lineAmount, type Money } from '../money/money.ts';
import { lengthInWords } from '../words/amounts.ts';
import { hourlyBase, type DayTerms } from './pay.ts';

/** Hours missing between two days, and what they cost. */
export type ForcedCall = { missingMinutes: number; quantity: Exact; unitPrice: Exact; amount: Money; reason: string; caution: string };

const HALF_HOUR = 30 * 60_000;

/**
 * The forced call between a wrap and the next call (epoch milliseconds) for one client, or nothing when the turnaround is kept.
 * Missing time is billed by started half hour at the hourly base of the day before x the forced-call multiplier.
 * @param terms the card that priced the day before
 */
export function forcedCall(wrapAt: number, nextCallAt: number, terms: DayTerms): ForcedCall | undefined {
  const asked = Math.round(exact(terms.turnaroundHours).mul(3_600_000n).valueOf());
  const missing = asked - (nextCallAt - wrapAt);
  if (missing <= 0) return undefined;
  const had = lengthInWords(Math.floor((nextCallAt - wrapAt) / 60_000));
  const missingMinutes = Math.ceil(missing / 60_000);
  const quantity = exact(Math.ceil(missing / HALF_HOUR)).div(2n);
  const unitPrice = hourlyBase(terms).mul(exact(terms.forcedTimes));
  return {
    missingMinutes,
    quantity,
    unitPrice,
    amount: lineAmount(quantity, unitPrice, terms.currency),
    reason: `${had} from wrap to the next call, ${lengthInWords(missingMinutes)} short of the ${formatNumber(terms.turnaroundHours)} h agreed: ${formatNumber(quantity)} h at ${formatNumber(terms.forcedTimes)} x ${formatPrice(hourlyBase(terms), terms.currency)}, the rate of the day before.`,
    caution: `Only ${had} between wrap and the next call, ${lengthInWords(missingMinutes)} short of ${formatNumber(terms.turnaroundHours)} h. Short rest is a danger on the road and on the job.`,
  };
}
