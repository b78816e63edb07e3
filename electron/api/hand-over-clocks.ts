/**
 * Hand-overs on the Desk: what waits for a yes, and originals that may go.
 */
import type { Clock } from '../../core/contract/desk.ts';
import { approvalClock, originalsClock } from '../../core/desk/hand-over-clocks.ts';
import { dateIn, dateLater } from '../../core/time/wall.ts';
import { handedNotApproved, originalsUntil } from '../../db/hand-overs.ts';
import type { ReadableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { homeZone } from './job-facts.ts';
import { calendarsOf } from './round-facts.ts';

const DAY = 86_400_000;
/** Dates ahead that originals are told for; and for how long a yes that never came is asked for. */
const AHEAD = 14;
const BACK = 120 * DAY;

/** Clocks of deliverables that were handed over. */
export function handOverClocks(db: ReadableDb, context: Context): Clock[] {
  const now = context.now();
  const zone = homeZone(db, context);
  return [
    ...handedNotApproved(db, now - BACK).map((each) =>
      approvalClock({ ...each, id: each.handOverId, job: jobOf(each) }, calendarsOf(db, context, each.clientId, each.at), now),
    ),
    ...originalsUntil(db, dateLater(dateIn(zone, now), AHEAD)).map((each) =>
      originalsClock({ ...each, id: each.handOverId, job: jobOf(each) }, zone, now),
    ),
  ];
}

function jobOf({ jobId, jobVersion, title }: { jobId: string; jobVersion: number; title: string }) {
  return { id: jobId, version: jobVersion, title };
}
