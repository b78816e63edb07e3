/**
 * What a person should know before a quote goes out, and what must be known before it can be made.
 */
import type { Scale, Section } from '../contract/quotes.ts';
import { LONGEST_DUTY } from '../fit/duty.ts';
import { exact } from '../money/exact.ts';
import { formatMoney } from '../money/format.ts';
import { compare, negate, subtract, type Money } from '../money/money.ts';
import { stillPlanned } from '../trips/driven.ts';
import { lengthInWords } from '../words/amounts.ts';
import { dateInWords } from '../words/dates.ts';
import type { Overrides } from './changes.ts';
import { holidaysOn } from './holidays.ts';
import type { PricedLine } from './line.ts';
import type { PriceInput } from './input.ts';

export type CautionInput = {
  input: PriceInput;
  lines: readonly PricedLine[];
  scale: Scale;
  firstCallAt: number | null;
  /** Ids of all lines that stand or were taken off. */
  known: ReadonlySet<string>;
  overrides: Overrides;
};

/** Cautions in sentences; none of them stops a quote. */
export function cautionsOf({ input, lines, scale, firstCallAt, known, overrides }: CautionInput): string[] {
  const { job, setup, card, trip } = input;
  const said: string[] = [];
  if (firstCallAt !== null && firstCallAt <= input.now) said.push('First call is past.');
  if (trip?.away && trip.source === 'estimated' && stillPlanned(trip.legs, trip.driven ?? []).length > 0)
    said.push(estimatedDrive(Math.max(trip.outMinutes, trip.backMinutes)));
  if (
    trip?.away &&
    trip.mode === 'drive' &&
    trip.legs.some((leg) => !leg.ticketed) &&
    ![...known].some((id) => id.startsWith('travel/mileage'))
  )
    said.push('The rate card has no mileage rate for these dates; the drive is not charged.');
  if (trip && trip.nights > 0 && card.allowanceNight === null)
    said.push(
      `${trip.nights === 1 ? 'One night' : `${trip.nights} nights`} away, and the rate card charges no allowance. Who pays the room?`,
    );
  if (job.deliverables.length > 0 && !lines.some((line) => line.section === 'editing'))
    said.push('Deliverables are promised, but no edit hours are priced. Add them as a line when you know them.');
  if (scale.floor && lines.length > 0 && compare(scale.thisJob, scale.floor) < 0)
    said.push(
      `This job comes to ${formatMoney(scale.thisJob)} a day, ${formatMoney(subtract(scale.floor, scale.thisJob))} under your floor of ${formatMoney(scale.floor)}.`,
    );
  if (setup.year && setup.currency !== card.currency)
    said.push(`Your floor is in ${setup.currency} and this quote in ${card.currency}; it is not drawn.`);
  said.push(...holidayCautions(input, overrides), ...budgetCautions(input));
  if (setup.registered && setup.tax) said.push('Whether tax is due here, and at which rate, is for your tax adviser to say.');
  const lost = [...overrides.sets.keys(), ...overrides.dropped].filter((id) => !known.has(id));
  if (lost.length > 0) said.push(`Changes by hand no longer apply, because their lines are gone: ${[...new Set(lost)].join(', ')}.`);
  return said;
}

/** @param minutes of the longer way; one that nobody drives without a rest is rather flown */
function estimatedDrive(minutes: number): string {
  if (minutes <= LONGEST_DUTY) return 'The drive is estimated; type how long it takes and how far it is, and the quote follows.';
  return `The drive is estimated at up to ${lengthInWords(minutes)} one way. If you fly, type the flight: travel days, mileage and nights follow.`;
}

/** A holiday that a list proposes is charged until somebody has looked at it. */
function holidayCautions({ days, publicHolidays, card }: PriceInput, { holidays }: Overrides): string[] {
  if (holidays || exact(card.holidayPercent).equals(0)) return [];
  return holidaysOn(days, publicHolidays).map(
    ({ date, name }) =>
      `${dateInWords(date)} is ${name} at the place, by a public list, and charged as a holiday. If nobody keeps it there, take it off.`,
  );
}

function budgetCautions({ job, card }: PriceInput): string[] {
  const { budget } = job;
  if (!budget) return [];
  if (!budget.currency) return ['Their budget names no currency; it is not drawn.'];
  if (budget.currency !== card.currency)
    return [`Their budget is in ${budget.currency} and this quote in ${card.currency}; it is not drawn.`];
  return budget.per ? [] : ['Their budget does not say whether it is for a day or for the job; it is not drawn.'];
}

/** Facts without which no quote is made. A price that was typed on the line itself will do. */
export function missingOf({ job, days, card }: PriceInput, lines: readonly PricedLine[], gross: Money): string[] {
  const unpriced = (section: Section): boolean =>
    lines.some((line) => line.section === section && line.unitPrice.equals(0) && !line.changed);
  const missing: string[] = [];
  if (!job.place) missing.push('Where it is: the job has no place.');
  if (days.length === 0) missing.push('When it is: the job has no days.');
  if (exact(card.dayRate).equals(0) && unpriced('days')) missing.push(`What a day costs: the day rate of "${card.name}" is zero.`);
  if (exact(card.editHour).equals(0) && unpriced('editing'))
    missing.push(`What an edit hour costs: the edit hour of "${card.name}" is zero.`);
  if (days.length > 0 && lines.length === 0) missing.push('What is sold: every line was taken off.');
  if (gross.minor < 0) missing.push(`What is left: the discount is ${formatMoney(negate(gross))} more than everything else.`);
  return missing;
}
