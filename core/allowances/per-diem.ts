/**
 * The per-diem log: what each date of a trip is allowed for meals and incidentals, by the published rule
 * (US Federal Travel Regulation, 41 CFR 301-11.101, 301-11.102 and 301-11.18). An estimate for the accountant, not tax advice.
 */
import { exact, type Exact } from '../money/exact.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { amountOf, type Money } from '../money/money.ts';
import { joined } from '../words/lists.ts';
import { perDiemOn, type Meal, type PerDiemRate } from './rates.ts';

/** Trips of this many hours or less are allowed nothing. */
const SHORTEST_HOURS = 12;
/** The share of the day's rate that the first and the last date of a trip are allowed. */
const EDGE_SHARE = '75';

/** One date away: where the next night is spent (for the last date, where the previous one was), and which meals were furnished. */
export type DateAway = { date: string; place: string; furnished: readonly Meal[] };
export type PerDiemTrip = {
  /** Elapsed from leaving home to being home again, hours. Between two jobs without home in between it is one trip. */
  hoursAway: number;
  /** Nights that were spent away. */
  nights: number;
  dates: readonly DateAway[];
};
export type PerDiemLine = { date: string; amount: Money | null; reason: string };

/**
 * What each date of a trip is allowed. A date whose rate is not known has no amount and says so.
 * @returns nothing for a trip of twelve hours or less
 */
export function perDiemOf(trip: PerDiemTrip, rates: readonly PerDiemRate[]): PerDiemLine[] {
  if (trip.hoursAway <= SHORTEST_HOURS) return [];
  // Without a night the trip is allowed once, however the clock stood at midnight.
  const dates = trip.nights === 0 ? trip.dates.slice(0, 1) : trip.dates;
  return dates.map((away, order) => lineOf(away, order === 0 || order === dates.length - 1, rates));
}

function lineOf({ date, place, furnished }: DateAway, edge: boolean, rates: readonly PerDiemRate[]): PerDiemLine {
  const rate = perDiemOn(rates, place, date);
  if (!rate) return { date, amount: null, reason: `No per-diem rate for ${place} is known on ${date}; ask for the one in force.` };
  const share = exact(edge ? EDGE_SHARE : '100');
  const allowed = exact(rate.day).mul(share).div(100n);
  const deducted = furnished.reduce<Exact>((sum, meal) => sum.add(exact(rate.meals[meal])), exact(0));
  // Furnished meals are deducted in full, also on a date of 75 per cent; the incidental part always stays.
  const least = exact(rate.incidental);
  const left = allowed.sub(deducted);
  const amount = amountOf(left.lt(least) ? least : left, rate.currency);
  const meals = furnished.length > 0 ? ` less ${joined(furnished)} furnished` : '';
  return {
    date,
    amount,
    reason: `${formatNumber(share)} % of ${rate.day} for ${place}${meals}: ${formatMoney(amount, { code: true })}. ${rate.source}.`,
  };
}
