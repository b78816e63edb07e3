/**
 * Edit hours: those on dates that are sold as edit days, and those of deliverables once they are known.
 */
import type { Edit } from '../contract/jobs.ts';
import type { RateCardFields } from '../contract/rates.ts';
import { workedMs } from '../days/pay.ts';
import type { BookDay } from '../fit/book.ts';
import { exact, type Exact } from '../money/exact.ts';
import { formatNumber, formatPrice } from '../money/format.ts';
import { editsOf } from '../jobs/edits.ts';
import { dateInWords, datesInWords } from '../words/dates.ts';
import { plural, slug, withOwnIds, type PricedLine } from './line.ts';

const HALF_HOUR = 30 * 60_000;

/** Hours of the edit days of a job, by started half hour a day. */
function editHours(days: readonly BookDay[]): Exact {
  return days
    .filter((day) => day.kind === 'edit')
    .reduce((sum, day) => sum.add(exact(Math.ceil(workedMs({ unpaidBreakMinutes: 0, ...day }) / HALF_HOUR)).div(2n)), exact(0));
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

/** The edits of a job that are priced, each with the name of its line. */
export function pricedEdits(job: Parameters<typeof editsOf>[0]): { edit: Edit; hours: Exact; id: string }[] {
  const edits = editsOf(job).flatMap((edit) =>
    edit.hours === null || exact(edit.hours).lte(0) ? [] : [{ edit, hours: exact(edit.hours) }],
  );
  const names = withOwnIds(edits.map(({ edit }) => ({ id: `editing/of-${slug(edit.what) || 'deliverable'}` })));
  return edits.map((each, order) => ({ ...each, id: names[order]?.id ?? '' }));
}

/** One line for each deliverable whose edit hours are known. */
export function deliverableLines(
  job: Parameters<typeof editsOf>[0],
  { editHour, currency }: Pick<RateCardFields, 'editHour' | 'currency'>,
): PricedLine[] {
  return pricedEdits(job).map(({ edit, hours, id }) => ({
    id,
    section: 'editing',
    what: `Editing: ${edit.what}`,
    quantity: hours,
    unit: plural(hours, 'hour'),
    unitPrice: exact(editHour),
    reason: `${formatNumber(hours)} edit ${plural(hours, 'hour')} for ${edit.what}${edit.due ? `, due ${dateInWords(edit.due)},` : ''} at ${formatPrice(editHour, currency)}.`,
    estimated: true,
    changed: false,
  }));
}
