/**
 * Time spent on deliverables: at most one clock runs in all.
 */
import { desc, eq, isNull, sql } from 'drizzle-orm';
import type { FinishedEdit } from '../core/deliverables/past.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { deliverables, templates } from './schema/deliverables.ts';
import { jobs } from './schema/jobs.ts';
import { timeSpent } from './schema/spent.ts';
import type { ReadableDb, WritableDb } from './store.ts';

/** Instants are epoch milliseconds. */
export type SpentRow = typeof timeSpent.$inferSelect;

/** Whole minutes by what they went to, of finished edits of a template that have time on record. */
export const FINISHED = `
  select d.finished_minutes as finishedMinutes,
    sum(case when s.kind = 'ingest' then t.minutes else 0 end) as ingest,
    sum(case when s.kind is null or s.kind not in ('ingest', 'round') then t.minutes else 0 end) as editing,
    sum(case when s.kind = 'round' then t.minutes else 0 end) as notes,
    (select count(*) from rounds r where r.deliverable_id = d.id and r.notes <> '') as rounds
  from deliverables d
    join (select deliverable_id, stage_id, (end_at - start_at) / 60000 as minutes from time_spent where end_at is not null) t
      on t.deliverable_id = d.id
    left join stages s on s.id = t.stage_id
  where d.template_id = @templateId and d.off_at is null
    and exists (select 1 from stages done where done.deliverable_id = d.id and done.kind in ('delivered', 'approved') and done.done_at is not null)
  group by d.id order by d.id`;

const reading = perStore((db) => ({
  of: db
    .select()
    .from(timeSpent)
    .where(eq(timeSpent.deliverableId, sql.placeholder('id')))
    .orderBy(desc(timeSpent.startAt), desc(timeSpent.id))
    .prepare(),
  one: db
    .select()
    .from(timeSpent)
    .where(eq(timeSpent.id, sql.placeholder('id')))
    .prepare(),
  running: db
    .select({ entry: timeSpent, name: deliverables.name, jobId: jobs.id, title: jobs.title })
    .from(timeSpent)
    .innerJoin(deliverables, eq(deliverables.id, timeSpent.deliverableId))
    .innerJoin(jobs, eq(jobs.id, deliverables.jobId))
    .where(isNull(timeSpent.endAt))
    .prepare(),
  template: db
    .select({ id: templates.id })
    .from(templates)
    .where(eq(templates.id, sql.placeholder('id')))
    .prepare(),
  finished: db.$client.prepare<[{ templateId: string }], Omit<FinishedEdit, 'finishedMinutes'> & { finishedMinutes: string }>(FINISHED),
}));

/** Time on a deliverable, newest first. */
export function spentOf(db: ReadableDb, deliverableId: string): SpentRow[] {
  return reading(db).of.all({ id: deliverableId });
}

export function spentById(db: ReadableDb, id: string): SpentRow | undefined {
  return reading(db).one.get({ id });
}

/** The clock that runs, with what it is for. */
export function runningClock(db: ReadableDb) {
  return reading(db).running.get();
}

export function isTemplate(db: ReadableDb, id: string): boolean {
  return reading(db).template.get({ id }) !== undefined;
}

/** Finished edits of a template with the time that they took. */
export function finishedEdits(db: ReadableDb, templateId: string): FinishedEdit[] {
  return reading(db)
    .finished.all({ templateId })
    .map(({ finishedMinutes, ...edit }) => ({ ...edit, finishedMinutes: Number(finishedMinutes) }));
}

/** Keep time: new, or the next version of `before`. */
export function keepSpent(db: WritableDb, before: SpentRow | undefined, fields: Omit<SpentRow, 'id' | 'version'>): string {
  const id = before?.id ?? newId();
  if (before)
    db.update(timeSpent)
      .set({ ...fields, version: before.version + 1 })
      .where(eq(timeSpent.id, id))
      .run();
  else
    db.insert(timeSpent)
      .values({ ...fields, id })
      .run();
  return id;
}

export function dropSpent(db: WritableDb, id: string): void {
  db.delete(timeSpent).where(eq(timeSpent.id, id)).run();
}
