/**
 * What takes the time of an edit that is late: the editing for other jobs between its release and its end, by hours, and the dates on which
 * a job is worked on site or travelled to, by days.
 */
import { joined } from '../words/lists.ts';
import { countInWords } from '../words/amounts.ts';
import { formatNumber } from '../money/format.ts';
import { exact } from '../money/exact.ts';
import type { TakenDate } from './ground.ts';

/** A stretch of editing; instants in epoch milliseconds. */
export type Worked = { editId: string; jobId: string | null; title: string; start: number; end: number };
export type Taker = { jobId: string | null; title: string; hours: number; days: number };

/**
 * What lies in [from, to) beside the edit itself, the most hours first, then the most days; of equals as they come.
 * @param dates those that are out for editing, between the same moments
 */
export function takersOf(editId: string, worked: readonly Worked[], dates: readonly TakenDate[], from: number, to: number): Taker[] {
  const takers = new Map<string, Taker>();
  const of = (jobId: string | null, title: string): Taker => {
    const known = takers.get(jobId ?? title);
    if (known) return known;
    const taker = { jobId, title, hours: 0, days: 0 };
    takers.set(jobId ?? title, taker);
    return taker;
  };
  for (const block of worked) {
    const within = Math.min(block.end, to) - Math.max(block.start, from);
    if (within > 0 && block.editId !== editId) of(block.jobId, block.title).hours += within / 3_600_000;
  }
  const counted = new Set<string>();
  for (const { jobId, title, date } of dates) {
    const key = `${date} ${jobId ?? title}`;
    if (counted.has(key)) continue;
    counted.add(key);
    of(jobId, title).days += 1;
  }
  return [...takers.values()].toSorted((a, b) => b.hours - a.hours || b.days - a.days);
}

/** Of many takers these are named; the rest is a sum. */
const NAMED = 3;

/** "14.5 h of editing for Curling and 5 days away for Bakers congress"; empty where nothing takes it. */
export function takersInWords(takers: readonly Taker[]): string {
  const edited = takers.filter(({ hours }) => hours > 0);
  const away = takers.filter(({ days }) => days > 0).toSorted((a, b) => b.days - a.days);
  const rest = (left: readonly Taker[], of: (taker: Taker) => number): number =>
    left.slice(NAMED).reduce((sum, taker) => sum + of(taker), 0);
  const moreHours = rest(edited, ({ hours }) => hours);
  const moreDays = rest(away, ({ days }) => days);
  return joined([
    ...edited.slice(0, NAMED).map(({ title, hours }, order) => `${inHours(hours)}${order === 0 ? ' of editing' : ''} for ${title}`),
    ...(moreHours > 0 ? [`${inHours(moreHours)} for others`] : []),
    ...away.slice(0, NAMED).map(({ title, days }, order) => `${countInWords(days, 'day')}${order === 0 ? ' away' : ''} for ${title}`),
    ...(moreDays > 0 ? [`${countInWords(moreDays, 'day')} for others`] : []),
  ]);
}

const inHours = (hours: number): string => `${formatNumber(exact(String(Math.round(hours * 100) / 100)))} h`;
