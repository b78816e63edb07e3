/**
 * What the trip costs: travel days, distance, nights away.
 */
import type { RateCardFields } from '../contract/rates.ts';
import { decimalText, exact, measured, type Exact } from '../money/exact.ts';
import { formatNumber, formatPrice } from '../money/format.ts';
import { rateOn } from '../rates/mileage.ts';
import { inUnit } from '../trips/distance.ts';
import { stillPlanned, type DrivenLeg } from '../trips/driven.ts';
import { lengthInWords } from '../words/amounts.ts';
import { datesInWords } from '../words/dates.ts';
import { joined } from '../words/lists.ts';
import { plural, type PricedLine } from './line.ts';
import type { QuotedLeg, QuotedTrip } from './trip.ts';

export type TripTerms = Pick<RateCardFields, 'currency' | 'dayRate' | 'travelPercent' | 'mileage' | 'mileageUnit' | 'allowanceNight'>;
export type TripLines = { lines: PricedLine[]; cautions: string[] };

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

/**
 * Distance at the rate valid on the date that each way is left for. By tickets only the way between home and them is driven;
 * what was driven as it was typed stands in place of the way that was planned.
 */
export function mileageLines(trip: QuotedTrip, terms: TripTerms): TripLines {
  const driven = trip.driven ?? [];
  const planned = trip.away ? stillPlanned(trip.legs, driven) : [];
  const ways = [
    ...driven.map((leg) => ({ ...leg, distance: distanceOf(leg, terms), typed: true })),
    ...planned.map((leg) => ({ ...leg, ...drivenBy(leg, trip, terms) })),
  ];
  const rated = ways.flatMap((way) => {
    const rate = rateOn(terms.mileage, way.date);
    return rate && way.distance.gt(0) ? [{ ...way, rate }] : [];
  });
  const byRate = [...Map.groupBy(rated, (leg) => leg.rate.rate)];
  const lines = byRate.map(([rate, same]): PricedLine => {
    const from = same.map((leg) => leg.rate.from).at(-1);
    return {
      id: byRate.length === 1 ? 'travel/mileage' : `travel/mileage-${from}`,
      section: 'travel',
      what: 'Mileage',
      quantity: same.reduce((sum, leg) => sum.add(leg.distance), exact(0)),
      unit: terms.mileageUnit,
      unitPrice: exact(rate),
      reason: `${allInWords(same, terms.mileageUnit)} at ${formatPrice(rate, terms.currency)}, the rate valid from ${from}, leaving on ${datesInWords(same.map((leg) => leg.date))}.`,
      estimated: same.some((leg) => !leg.typed),
      changed: false,
    };
  });
  return { lines, cautions: [...(trip.away ? fares(trip) : []), ...rated.flatMap((leg) => oldRate(leg.rate.from, leg.date)).slice(-1)] };
}

/** What was driven, leg by leg, then what is planned. */
function allInWords(ways: readonly (DrivenWay | (QuotedLeg & Driven))[], unit: string): string {
  const driven = ways.filter((way) => 'half' in way);
  const planned = ways.filter((way): way is QuotedLeg & Driven => !('half' in way));
  return [
    ...driven.map(({ distance, from, to }) => `${formatNumber(distance)} ${unit} ${from} to ${to}, as driven`),
    ...(planned.length > 0 ? [distancesInWords(planned, unit)] : []),
  ].join('; ');
}

type DrivenWay = Omit<DrivenLeg, 'distance'> & Driven;
type Driven = { distance: Exact; typed: boolean };

/** What of a way is driven, in the card's unit: to a tenth where it was typed, in whole units where it is estimated. */
function drivenBy({ ticketed }: QuotedLeg, trip: QuotedTrip, terms: TripTerms): Driven {
  const way = ticketed?.toHome ?? { mode: trip.mode, roadKm: trip.oneWayKm, roadKnown: trip.roadKnown };
  const typed = way.roadKnown;
  return { distance: way.mode === 'drive' ? distanceIn(terms, way.roadKm, typed) : exact(0), typed };
}

/** "250 mi one way, as typed; out and back", or each way by itself where they differ. */
function distancesInWords(legs: readonly (QuotedLeg & Driven)[], unit: string): string {
  const [first] = legs;
  const known = ({ typed }: Driven): string => (typed ? 'as typed' : 'estimated from the map');
  if (first && legs.every((leg) => leg.distance.equals(first.distance) && leg.typed === first.typed && !leg.ticketed))
    return `${formatNumber(first.distance)} ${unit} one way, ${known(first)}; ${waysInWords(legs)}`;
  return legs
    .map((leg) => `${formatNumber(leg.distance)} ${unit} ${leg.ticketed ? endInWords(leg) : waysInWords([leg])}, ${known(leg)}`)
    .join('; ');
}

function endInWords({ name, ticketed }: QuotedLeg): string {
  const mode = name === 'out' ? ticketed?.legs[0]?.mode : ticketed?.legs.at(-1)?.mode;
  return name === 'out' ? `from home to the ${mode}` : `home from the ${mode}`;
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

/** What was driven, as it was typed; to a tenth where the card counts in the other unit. */
function distanceOf({ distance, unit }: DrivenLeg, { mileageUnit }: TripTerms): Exact {
  const typed = exact(distance);
  return unit === mileageUnit ? typed : exact(decimalText(inUnit(typed, unit, mileageUnit), 1));
}

/** Kilometres in the card's unit: to a tenth where they were typed, whole where they are estimated. */
function distanceIn({ mileageUnit }: TripTerms, roadKm: number, typed: boolean): Exact {
  return exact(decimalText(inUnit(measured(roadKm, 6), 'km', mileageUnit), typed ? 1 : 0));
}

/** What moves me for a fare. */
function fares({ legs, mode }: QuotedTrip): string[] {
  const modes = legs.flatMap(({ ticketed }) => ticketed?.legs.map((leg) => leg.mode) ?? [mode]);
  const paid = [...new Set(modes)].filter((each) => each !== 'drive');
  return paid.length > 0 ? [`The way is by ${joined(paid, 'and')}: its fare is not in the quote. Add it as a line.`] : [];
}

function oldRate(from: string, date: string): string[] {
  return from.slice(0, 4) < date.slice(0, 4)
    ? [`The newest mileage rate is valid from ${from}; ask whether there is one for ${date.slice(0, 4)}.`]
    : [];
}
