/**
 * Hours that can hardly be meant as they were read: a call in the dead of night, a day's work without an end, a call days ahead.
 * Common practice: no one person films for sixteen hours, and who sets up comes the day before.
 */
import { LONGEST_SHIFT } from './ends-late.ts';
import type { Calls, Moment } from './points.ts';

/** A call from midnight to this hour is asked about. */
const DEAD_OF_NIGHT = '03:00';
const MOST_DAYS_AHEAD = 2;

/** The hours as they were read; those of them that hardly anybody means are choices of a question. */
export function likelyHours(calls: Calls, days: readonly string[]): Calls {
  const { firstCall, lastWrap, ...rest } = calls;
  const [first] = days;
  if (!firstCall || first === undefined) return calls;
  const [on, at = ''] = firstCall.wall.split('T');
  const askedCall = { ...rest, callChoices: asked(firstCall) };
  const ahead = Temporal.PlainDate.from(on ?? first).until(first).days;
  if (at < DEAD_OF_NIGHT || ahead > MOST_DAYS_AHEAD) return lastWrap ? { ...askedCall, lastWrap } : askedCall;
  if (!lastWrap || days.length > 1 || on !== first) return calls;
  const minutes = Temporal.PlainDateTime.from(firstCall.wall).until(lastWrap.wall).total('minutes');
  return minutes < LONGEST_SHIFT ? calls : { ...askedCall, wrapChoices: asked(lastWrap) };
}

const asked = ({ wall, where }: Moment) => ({ walls: [wall], where: where[0] ?? { start: 0, end: 0 }, why: 'day' as const });
