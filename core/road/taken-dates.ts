/**
 * The dates at home that a job takes from editing: on site, or on the way. Edit days take none.
 */
import type { TakenDate } from '../deliverables/ground.ts';
import { datesTaken } from './edit-lane.ts';
import type { Line } from './lines.ts';

/** In order; a date on which one works on site and travels too is one on site. */
export function takenDates(line: Line, zone: string): TakenDate[] {
  const onSite = new Set(datesTaken({ ...line, moves: [], blocks: line.blocks.filter(({ kind }) => kind !== 'travel') }, zone));
  const { id, title } = line.job;
  return datesTaken(line, zone).map((date) => ({ date, jobId: id, title, how: onSite.has(date) ? 'shoot' : 'travel' }));
}
