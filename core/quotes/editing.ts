/**
 * Edit hours: those on dates that are sold as edit days. Hours for deliverables are priced only once they are known.
 */
import type { RateCardFields } from '../contract/rates.ts';
import type { BookDay } from '../fit/book.ts';
import { exact, type Exact } from '../money/exact.ts';
import { formatNumber, formatPrice } from '../money/format.ts';
import { datesInWords } from '../words/dates.ts';
import { plural, type PricedLine } from './line.ts';

const HALF_HOUR = 30 * 60_000;

/** Hours of the edit days of a job, by started half hour a day. */
function editHours(days: readonly BookDay[]): Exact {
  return days
    .filter((day) => day.kind === 'edit')
    .reduce((sum, day) => sum.add(exact(Math.ceil((day.wrapAt - day.callAt) / HALF_HOUR)).div(2n)), exact(0));
}

/** One line for all edit days. */
export function editingLine(days: readonly BookDay[], card: Pick<RateCardFields, 'editHour' | 'currency'>): PricedLine[] {
  const quantity = editHours(days);
  if (quantity.equals(0)) return [];
  const dates = days.filter((day) => day.kind === 'edit').map((day) => day.date);
  return [
    {
      id: 'editing/days',
      section: 'editing',
      what: 'Editing',
      quantity,
      unit: plural(quantity, 'hour'),
      unitPrice: exact(card.editHour),
      reason: `${datesInWords(dates)}: ${formatNumber(quantity)} edit hours by started half hour at ${formatPrice(card.editHour, card.currency)}.`,
      estimated: true,
      changed: false,
    },
  ];
}
