/**
 * The mileage log: each drive of a job with its distance and what the published rate of its date makes of it.
 */
import type { MileageRow } from '../contract/expenses.ts';
import type { Place } from '../contract/parts.ts';
import { decimalText, exact, measured } from '../money/exact.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { lineAmount } from '../money/money.ts';
import type { QuotedTrip } from '../quotes/trip.ts';
import { rateOn, usMileage, type DatedRate } from '../rates/mileage.ts';
import { inUnit, type Unit } from '../trips/distance.ts';
import { stillPlanned } from '../trips/driven.ts';

/** Rates of a log, with the unit and currency that they are in. */
export type LogRates = { rates: readonly DatedRate[]; unit: Unit; currency: string; source: string };
type Drive = Pick<MileageRow, 'date' | 'from' | 'to' | 'distance' | 'source'>;

/** The tax office's rates where they are known, else those of my own rate card. */
export function logRates(
  home: Pick<Place, 'country'>,
  card: { mileage: readonly DatedRate[]; mileageUnit: Unit; currency: string } | undefined,
): LogRates | null {
  if (home.country === 'US')
    return { rates: usMileage, unit: 'mi', currency: 'USD', source: 'the standard mileage rate of the Internal Revenue Service' };
  return card ? { rates: card.mileage, unit: card.mileageUnit, currency: card.currency, source: 'the rate of my own rate card' } : null;
}

/** Every drive of one job, in order of dates. @param unit of my setup */
export function mileageLog(
  job: { id: string; title: string; place: Place },
  trip: QuotedTrip,
  home: Place,
  unit: Unit,
  rates: LogRates | null,
): MileageRow[] {
  return drivesOf(trip, job.place, home, rates?.unit ?? unit)
    .toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
    .map((drive) => ({ jobId: job.id, title: job.title, ...drive, unit: rates?.unit ?? unit, ...pricedDrive(drive, rates) }));
}

function pricedDrive({ date, distance, source }: Drive, rates: LogRates | null): Pick<MileageRow, 'rate' | 'amount' | 'reason'> {
  const how = source === 'actual' ? 'As driven' : 'Estimated';
  const rate = rates && rateOn(rates.rates, date);
  if (!rates || !rate) return { rate: null, amount: null, reason: `${how}; no rate is known for ${date}.` };
  const amount = lineAmount(distance, rate.rate, rates.currency);
  const old = rate.from.slice(0, 4) < date.slice(0, 4) ? ` It is that of ${rate.from.slice(0, 4)}; ask whether there is a newer one.` : '';
  return {
    rate: rate.rate,
    amount,
    reason: `${how}: ${formatNumber(distance)} ${rates.unit} at ${rate.rate}, ${rates.source} from ${rate.from}, ${formatMoney(amount, { code: true })}.${old}`,
  };
}

/** What was driven as it was typed, and the ways that are only planned. */
function drivesOf(trip: QuotedTrip, place: Place, home: Place, unit: Unit): Drive[] {
  const driven = trip.driven ?? [];
  const actual = driven.map((leg): Drive => {
    const typed = exact(leg.distance);
    const distance = leg.unit === unit ? decimalText(typed) : decimalText(inUnit(typed, leg.unit, unit), 1);
    return { date: leg.date, from: leg.from, to: leg.to, distance, source: 'actual' };
  });
  const planned = (trip.away ? stillPlanned(trip.legs, driven) : []).flatMap(({ name, date, ticketed }): Drive[] => {
    const way = ticketed?.toHome ?? { mode: trip.mode, roadKm: trip.oneWayKm, roadKnown: trip.roadKnown };
    const distance = decimalText(inUnit(measured(way.roadKm, 6), 'km', unit), way.roadKnown ? 1 : 0);
    if (way.mode !== 'drive' || exact(distance).equals(0)) return [];
    const there = (name === 'out' ? ticketed?.legs[0]?.from : ticketed?.legs.at(-1)?.to) ?? place;
    const [from, to] = name === 'out' ? [home, there] : [there, home];
    return [{ date, from: from.name, to: to.name, distance, source: 'estimate' }];
  });
  return [...actual, ...planned];
}
