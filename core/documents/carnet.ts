/**
 * What an ATA carnet costs where that is on file: fees by the value of the list, and the security that is held until it is given back.
 * United States Council for International Business, "Register and Apply" (fees and security deposits; the page bears no date, seen on
 * 26 November 2026): security 40 % of the list, 55 % for India; extra sets, bond premium and courier apart.
 */
import { money, percentOf, type Money } from '../money/money.ts';
import type { Source } from './rules.ts';

const SOURCE: Source = {
  publisher: 'United States Council for International Business',
  what: 'Register and Apply',
  on: '2026-11-26',
  status: 'seen',
};

/** List values in whole dollars from which a fee holds, highest first. */
const FEES: readonly (readonly [from: number, fee: number])[] = [
  [1_000_000, 545],
  [400_000, 480],
  [150_000, 425],
  [50_000, 365],
  [10_000, 300],
  [0, 255],
];

/** Fee and security for a list that goes to a country from the United States; null for another home or another currency. */
export function carnetCost(list: Money, home: string, country: string): { fee: Money; security: Money; source: Source } | null {
  if (home !== 'US' || list.currency !== 'USD' || list.minor <= 0) return null;
  const dollars = list.minor / 100;
  const fee = FEES.find(([from]) => dollars >= from)?.[1] ?? 0;
  return { fee: money(fee * 100, 'USD'), security: percentOf(list, country === 'IN' ? 55 : 40), source: SOURCE };
}
