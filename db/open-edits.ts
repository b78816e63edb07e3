/**
 * What is still to be edited, over all jobs in ink: read at once for the edit plan, however long the history is.
 */
import type { Block } from '../core/deliverables/schedule.ts';
import type { StageKind } from '../core/contract/deliverables.ts';
import { perStore } from './prepared.ts';
import type { ReadableDb } from './store.ts';

type EditRow = {
  id: string;
  jobId: string;
  jobTitle: string;
  clientId: string | null;
  name: string;
  due: string | null;
  internalDate: string | null;
  sameDay: number;
  windowDays: number;
  editor: string | null;
  filesAt: number | null;
};
type StageRow = {
  id: string;
  deliverableId: string;
  kind: StageKind;
  done: number;
  halfHours: number;
  releaseDate: string | null;
  spentMs: number;
  sentAt: number | null;
  dueBack: string | null;
  notesAt: number | null;
};

// The index of open stages is read first (a cross join keeps the order), not the history: a deliverable is open until its stage "delivered" is done.
export const OPEN_EDITS = `
  select d.id, d.job_id as jobId, j.title as jobTitle, j.client_id as clientId, d.name, d.due_date as due, d.internal_date as internalDate,
    d.same_day as sameDay, d.window_days as windowDays, h.name as editor,
    (select max(wrap_at) from job_days where job_id = d.job_id and kind not in ('edit', 'travel')) as filesAt
  from stages s indexed by stages_open
  cross join deliverables d on d.id = s.deliverable_id
  cross join jobs j on j.id = d.job_id
  left join hands h on h.id = d.hand_id
  where s.done_at is null and s.kind = 'delivered' and d.off_at is null and j.stage = 'inked'
  order by d.job_id, d.position, d.id`;

const STAGES = `
  select s.id, s.deliverable_id as deliverableId, s.kind, s.done_at is not null as done, s.half_hours as halfHours, s.release_date as releaseDate,
    coalesce((select sum(coalesce(t.end_at, max(t.start_at, :now)) - t.start_at) from time_spent t where t.stage_id = s.id), 0) as spentMs,
    r.sent_at as sentAt, r.due_back as dueBack, r.notes_at as notesAt
  from stages s
  left join rounds r on r.stage_id = s.id and r.number = (select max(number) from rounds where stage_id = s.id)
  where s.deliverable_id in (select value from json_each(:ids))
  order by s.deliverable_id, s.position`;

const PINS = `
  select p.stage_id as stageId, p.start_at as start, p.end_at as "end"
  from pinned_blocks p join stages s on s.id = p.stage_id
  where p.end_at > :now and s.done_at is null order by p.start_at`;

/** Edit days of jobs in ink that have no deliverable with hours: sold as days, so that nothing else is edited on them. */
const SOLD = `
  select d.call_at as start, d.wrap_at as "end", j.id as jobId, j.title
  from job_days d join jobs j on j.id = d.job_id
  where d.kind = 'edit' and d.wrap_at > :now and j.stage = 'inked'
    and not exists (select 1 from deliverables e join stages s on s.deliverable_id = e.id where e.job_id = j.id and e.off_at is null and s.half_hours > 0)
  order by d.call_at`;

const BEGUN = `
  select deliverable_id from stages s where s.done_at is not null and s.deliverable_id in (select deliverable_id from stages indexed by stages_open where done_at is null and kind = 'delivered')
  union select t.deliverable_id from time_spent t where t.deliverable_id in (select deliverable_id from stages indexed by stages_open where done_at is null and kind = 'delivered')`;

const VERSIONS = `select distinct j.id, j.version from (${OPEN_EDITS}) open join jobs j on j.id = open.jobId`;

const reading = perStore((db) => ({
  begun: db.$client.prepare<[], string>(BEGUN).pluck(),
  versions: db.$client.prepare<[], { id: string; version: number }>(VERSIONS),
  any: db.$client.prepare<[], number>(`select exists (${OPEN_EDITS})`).pluck(),
  edits: db.$client.prepare<[], EditRow>(OPEN_EDITS),
  stages: db.$client.prepare<[{ ids: string; now: number }], StageRow>(STAGES),
  pins: db.$client.prepare<[{ now: number }], Block>(PINS),
  sold: db.$client.prepare<[{ now: number }], { start: number; end: number; jobId: string; title: string }>(SOLD),
}));

/** Whether anything is still to be delivered. */
export function anyOpenEdit(db: ReadableDb): boolean {
  return reading(db).any.get() === 1;
}

export type StoredEdit = EditRow & { stages: StageRow[] };

/** Deliverables of jobs in ink that are not delivered, with all their stages in order. `now` in epoch milliseconds. */
export function openEdits(db: ReadableDb, now: number): StoredEdit[] {
  const edits = reading(db).edits.all();
  const ofEdit = Map.groupBy(reading(db).stages.all({ ids: JSON.stringify(edits.map(({ id }) => id)), now }), (row) => row.deliverableId);
  return edits.map((edit) => ({ ...edit, stages: ofEdit.get(edit.id) ?? [] }));
}

/** Pins of open stages that are not over. */
export function pinsAhead(db: ReadableDb, now: number): Block[] {
  return reading(db).pins.all({ now });
}

export function soldEditDays(db: ReadableDb, now: number): { start: number; end: number; jobId: string; title: string }[] {
  return reading(db).sold.all({ now });
}

/** Of what is to be delivered, that of which a stage is done or on which time was spent. */
export function begunEdits(db: ReadableDb): Set<string> {
  return new Set(reading(db).begun.all());
}

/** Row versions of the jobs with open edits. */
export function jobVersions(db: ReadableDb): Map<string, number> {
  return new Map(
    reading(db)
      .versions.all()
      .map(({ id, version }) => [id, version]),
  );
}
