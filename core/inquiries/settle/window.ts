/**
 * "Between 10 and 20 February, two days": the dates are those among which the days of the work will lie, which are not known yet.
 */
import { daysSaid } from './days.ts';
import { askedDays } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const BETWEEN = /\bbetween (?:the )?$/i;
const LEAD = 16;

/** The days that were settled, or as a question where fewer are counted than the window has. */
export function heldAgainstWindow({ text }: Scene, event: EventDays): EventDays {
  const [told] = event.where;
  if (!told || event.dates.length < 2 || !BETWEEN.test(text.slice(Math.max(0, told.start - LEAD), told.start))) return event;
  const fewer = daysSaid(text).some(({ days }) => days < event.dates.length);
  return fewer ? askedDays(event.where, [event.dates], 'open') : event;
}
