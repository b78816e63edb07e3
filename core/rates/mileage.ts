/**
 * Distance rates by date: what a tax office publishes, and which of a card's rates is valid on a day.
 */
import type { z } from 'zod';
import type { MileageRate } from '../contract/rates.ts';

export type DatedRate = z.infer<typeof MileageRate>;

/**
 * US optional standard mileage rates for business use of a car, dollars a mile: Internal Revenue Service, Notice 2022-03 and Announcement
 * 2022-13 (2022), Notice 2023-03 (2023), Notice 2024-08 (2024), Notice 2025-5 (2025), Notice 2026-10 (2026).
 * Later years are not known here: the newest rate is used and the quote says from when it is.
 */
export const usMileage: readonly DatedRate[] = [
  { from: '2022-01-01', rate: '0.585' },
  { from: '2022-07-01', rate: '0.625' },
  { from: '2023-01-01', rate: '0.655' },
  { from: '2024-01-01', rate: '0.67' },
  { from: '2025-01-01', rate: '0.70' },
  { from: '2026-01-01', rate: '0.725' },
];

/** The rate that is valid on a date (YYYY-MM-DD): the newest that begins on or before it. */
export function rateOn(rates: readonly DatedRate[], date: string): DatedRate | undefined {
  return rates
    .filter((rate) => rate.from <= date)
    .reduce<DatedRate | undefined>((newest, rate) => (newest && newest.from > rate.from ? newest : rate), undefined);
}
