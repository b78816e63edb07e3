/**
 * What the trip costs: travel days, distance, nights away.
 */
import type { RateCardFields } from '../contract/rates.ts';
import { decimalText, exact, measured, type Exact } from '../money/exact.ts';
import { formatNumber, formatPrice } from '../money/format.ts';
import { rateOn } from '../rates/mileage.ts';
import { lengthInWords } from '../words/amounts.ts';
import { datesInWords } from '../words/dates.ts';
import { plural, type PricedLine } from './line.ts';
import type { QuotedLeg, QuotedTrip } from './trip.ts';

export type TripTerms = Pick<RateCardFields, 'currency' | 'dayRate' | 'travelPercent' | 'mileage' | 'mileageUnit' | 'allowanceNight'>;
export type TripLines = { lines: PricedLine[]; cautions: string[] };

/** Kilometres in an international mile: exactly 1.609344. */
const KM_IN_MILE = '1.609344';

/** Travel dates that hold no paid work, at the card's share of the day rate; they stand in the section "days". */
export function travelDayLine(trip: QuotedTrip, terms: TripTerms): PricedLine[] {
  const { travelDates } = trip;
  if (travelDates.length === 0 || exact(terms.travelPercent).equals(0)) return [];
  const quantity = exact(travelDates.length);
  const rate = formatPrice(terms.dayRate, terms.currency);
  return [
    {
      id: 'days/travel',
      section: 'days',
      what: `Travel day at ${formatNumber(terms.travelPercent)} %`,
      quantity,
      unit: plural(quantity, 'day'),
      unitPrice: exact(terms.dayRate).mul(exact(terms.travelPercent)).div(100n),
      reason: `${datesInWords(travelDates)}: the way of ${lengthInWords(Math.max(trip.outMinutes, trip.backMinutes))}, ${trip.source}, needs a date of its own beside the work. A travel day costs ${formatNumber(terms.travelPercent)} % of the day rate ${rate}.`,
      estimated: trip.source === 'estimated',
      changed: false,
    },
  ];
}

/** Distance at the rate valid on the date that each way is left for. */
export function mileageLines(trip: QuotedTrip, terms: TripTerms): TripLines {
  if (!trip.away || trip.mode !== 'drive') return { lines: [], cautions: otherWay(trip) };
  const distance = distanceOf(trip, terms);
  const rated = trip.legs.flatMap((leg) => {
    const rate = rateOn(terms.mileage, leg.date);
    return rate ? [{ ...leg, rate }] : [];
  });
  const byRate = [...Map.groupBy(rated, (leg) => leg.rate.rate)];
  const lines = byRate.map(([rate, same]): PricedLine => {
    const from = same.map((leg) => leg.rate.from).at(-1);
    const measured = trip.source === 'typed' ? 'as typed' : 'estimated from the map';
    return {
      id: byRate.length === 1 ? 'travel/mileage' : `travel/mileage-${from}`,
      section: 'travel',
      what: 'Mileage',
      quantity: distance.mul(BigInt(same.length)),
      unit: terms.mileageUnit,
      unitPrice: exact(rate),
      reason: `${formatNumber(distance)} ${terms.mileageUnit} one way, ${measured}; ${waysInWords(same)} at ${formatPrice(rate, terms.currency)}, the rate valid from ${from}, leaving on ${datesInWords(same.map((leg) => leg.date))}.`,
      estimated: trip.source !== 'typed',
      changed: false,
    };
  });
  return { lines, cautions: rated.flatMap((leg) => oldRate(leg.rate.from, leg.date)).slice(-1) };
}

function waysInWords(legs: readonly QuotedLeg[]): string {
  const outs = legs.filter((leg) => leg.name === 'out').length;
  const backs = legs.length - outs;
  if (outs === 0 || backs === 0) return outs > 0 ? 'the way out' : 'the way back';
  if (outs !== backs) return `${legs.length} ways`;
  return outs === 1 ? 'out and back' : `home every night, ${outs} times out and back`;
}

/** The charged allowance for each night away. The per-diem log for the tax office is another thing. */
export function allowanceLine(trip: QuotedTrip, terms: TripTerms): PricedLine[] {
  if (terms.allowanceNight === null || exact(terms.allowanceNight).equals(0) || trip.nights === 0) return [];
  const quantity = exact(trip.nights);
  return [
    {
      id: 'allowances/night',
      section: 'allowances',
      what: 'Allowance, nights away',
      quantity,
      unit: plural(quantity, 'night'),
      unitPrice: exact(terms.allowanceNight),
      reason: `${formatNumber(quantity)} ${plural(quantity, 'night')} away from home at ${formatPrice(terms.allowanceNight, terms.currency)}.`,
      estimated: trip.source === 'estimated',
      changed: false,
    },
  ];
}

/** One way in the card's unit: to a tenth where it was typed, in whole units where it is estimated. */
function distanceOf(trip: QuotedTrip, terms: TripTerms): Exact {
  const km = measured(trip.oneWayKm, 6);
  const inUnit = terms.mileageUnit === 'mi' ? km.div(exact(KM_IN_MILE)) : km;
  return exact(decimalText(inUnit, trip.source === 'typed' ? 1 : 0));
}

function otherWay(trip: QuotedTrip): string[] {
  return trip.away && trip.mode !== 'drive' ? [`The way is by ${trip.mode}: its fare is not in the quote. Add it as a line.`] : [];
}

function oldRate(from: string, date: string): string[] {
  return from.slice(0, 4) < date.slice(0, 4)
    ? [`The newest mileage rate is valid from ${from}; ask whether there is one for ${date.slice(0, 4)}.`]
    : [];
}
