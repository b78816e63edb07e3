/**
 * The lines of a quote before anything was changed by hand: what card, dates and trip come to, but for rush and discount.
 */
import { dayLines, kitDays } from './days.ts';
import { deliverableLines, editingLine } from './editing.ts';
import { kitLines } from './kit.ts';
import type { PricedLine } from './line.ts';
import type { PriceInput } from './input.ts';
import { allowanceLine, mileageLines, travelDayLine } from './travel.ts';

/** Lines, what to know about them, how many dates the job uses up, the dates of work in order, and on how many the kit is used. */
export type BaseLines = { lines: PricedLine[]; cautions: string[]; dates: number; worked: string[]; kitDates: number };

/** @param holidays dates that count as public holidays, YYYY-MM-DD, with their names */
export function baseLines(input: PriceInput, holidays: ReadonlyMap<string, string>): BaseLines {
  const { card, trip, setup } = input;
  const zone = input.job.place?.zone ?? setup.home.zone;
  const priced = dayLines({ days: input.days, zone, role: input.job.role, terms: card, holidays });
  const way = trip ? mileageLines(trip, card) : { lines: [], cautions: [] };
  const lines = [
    ...joined(priced.lines, trip ? travelDayLine(trip, card) : []),
    ...kitLines(card, kitDays(priced.worked, card)),
    ...way.lines,
    ...(trip ? allowanceLine(trip, card) : []),
    ...editingLine(input.days, card),
    ...deliverableLines(input.job, card),
    ...(input.more ?? []),
  ];
  return {
    lines,
    cautions: [...priced.cautions, ...way.cautions],
    dates: priced.worked.length + (trip?.travelDates.length ?? 0),
    worked: priced.worked.map(({ date }) => date),
    kitDates: kitDays(priced.worked, card),
  };
}

/** Travel days that were sold as such and those that the way asks for are one line. */
function joined(lines: readonly PricedLine[], travel: readonly PricedLine[]): PricedLine[] {
  const [more] = travel;
  const place = lines.findIndex((line) => line.id === more?.id);
  const same = lines[place];
  if (!more || !same) return [...lines, ...travel];
  const quantity = same.quantity.add(more.quantity);
  return lines.with(place, { ...same, quantity, unit: more.unit, reason: `${same.reason} ${more.reason}`, estimated: more.estimated });
}
