/**
 * Holds that ended lately: pencils that were let go or ran out, and ink that was cancelled.
 */
import type { Place } from '../core/contract/parts.ts';
import type { GoneHold } from '../core/desk/moved-up.ts';
import { belongingsOf } from './book.ts';
import { perStore } from './prepared.ts';
import type { ReadableDb } from './store.ts';

type Row = { id: string; jobId: string; title: string; place: string; pencilledAt: number | null; at: number; how: GoneHold['how'] };

// A pencil that ended after `since` runs out after it too, so the index on the expiry bounds the search. More time given to a live
// pencil ends its row before it ran out, and that is no end of the hold.
export const GONE_PENCILS = `
  select pencils.id, jobs.id as jobId, jobs.title, jobs.place, pencils.pencilled_at as pencilledAt,
    min(pencils.expires_at, coalesce(pencils.ended_at, pencils.expires_at)) as at,
    case when pencils.expires_at <= coalesce(pencils.ended_at, :now) then 'ran out' else 'let go' end as how
  from pencils join jobs on jobs.id = pencils.job_id
  where pencils.expires_at > :since and pencils.state <> 'inked' and jobs.place is not null
    and (pencils.expires_at <= coalesce(pencils.ended_at, :now) or (pencils.state = 'let go' and pencils.ended_at > :since))`;
const GONE_INK = `
  select callings_off.id, jobs.id as jobId, jobs.title, jobs.place, null as pencilledAt, callings_off.at, 'cancelled' as how
  from callings_off join jobs on jobs.id = callings_off.job_id
  where callings_off.at > :since and callings_off.taken_back_at is null and jobs.stage = 'cancelled' and jobs.place is not null`;

const reading = perStore((db) => ({
  gone: db.$client.prepare<[{ since: number; now: number }], Row>(`${GONE_PENCILS} union all ${GONE_INK}`),
}));

/** Holds that ended after `since`, with the days that they stood on; epoch ms. */
export function goneHolds(db: ReadableDb, span: { since: number; now: number }): GoneHold[] {
  const rows = reading(db).gone.all(span);
  const belongings = belongingsOf(
    db,
    rows.map(({ jobId }) => jobId),
  );
  return rows.map(({ id, jobId, title, place, pencilledAt, at, how }) => {
    const standing = { id: jobId, title, firmness: 'pencil' as const, pencilledAt, expiresAt: at };
    const { days, kit } = belongings(jobId);
    return { id, at, how, job: { ...standing, place: JSON.parse(place) as Place, days, kit } };
  });
}
