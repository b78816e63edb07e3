/**
 * The editing that is planned next, by dates at home.
 */
import type { EditPlan } from '../contract/deliverables.ts';
import { exact } from '../money/exact.ts';
import { formatNumber } from '../money/format.ts';
import { epochOf, wallAt } from '../time/read.ts';
import { dateInWords, withoutYear } from '../words/dates.ts';
import { joined } from '../words/lists.ts';

const HALF_HOUR = 30 * 60_000;

/** The first two by name. */
function named(names: readonly string[]): string {
  return names.length > 2 ? `${names.slice(0, 2).join(', ')} and ${names.length - 2} more` : joined(names);
}

/** "today 4 h: Highlights; Fri 27 November 6 h: Highlights and Regional film": the first dates on which editing is planned; empty where none is. */
export function editingAhead({ at, zone, blocks, edits }: Pick<EditPlan, 'at' | 'zone' | 'blocks' | 'edits'>, dates = 2): string {
  const today = wallAt(epochOf(at), zone).slice(0, 10);
  const names = new Map(edits.map(({ deliverableId, name }) => [deliverableId, name]));
  const coming = blocks.filter(({ end }) => epochOf(end) > epochOf(at));
  const byDate = [...Map.groupBy(coming, ({ start }) => wallAt(epochOf(start), zone).slice(0, 10))].slice(0, dates);
  return byDate
    .map(([date, all]) => {
      const halves = all.reduce((sum, { start, end }) => sum + (epochOf(end) - epochOf(start)) / HALF_HOUR, 0);
      const day = date === today ? 'today' : withoutYear(dateInWords(date));
      return `${day} ${formatNumber(exact(halves).div(2n))} h: ${named([...new Set(all.map(({ deliverableId }) => names.get(deliverableId) ?? ''))])}`;
    })
    .join('; ');
}
