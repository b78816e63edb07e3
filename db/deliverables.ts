/**
 * Deliverables with their stages and pins.
 */
import { and, asc, eq, sql } from 'drizzle-orm';
import type { Deliverable, EditStage } from '../core/contract/deliverables.ts';
import type { EditNumbers } from '../core/contract/templates.ts';
import { stageNames, type PlannedWork } from '../core/deliverables/make-stages.ts';
import { decimalText, exact } from '../core/money/exact.ts';
import { instantText } from '../core/time/read.ts';
import { newId } from './ids.ts';
import { insertRow, perStore } from './prepared.ts';
import { stagesOf as stageRowsOf } from './rounds.ts';
import { deliverables, pinnedBlocks, stages, templates } from './schema/deliverables.ts';
import { hands } from './schema/people.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const reading = perStore((db) => {
  const each = () =>
    db
      .select({ row: deliverables, template: templates.name, droppedAt: templates.putAwayAt, hand: hands.name })
      .from(deliverables)
      .leftJoin(templates, eq(templates.id, deliverables.templateId))
      .leftJoin(hands, eq(hands.id, deliverables.handId));
  return {
    ofJob: each()
      .where(eq(deliverables.jobId, sql.placeholder('id')))
      .orderBy(sql`${deliverables.offAt} is not null`, asc(deliverables.position), asc(deliverables.id))
      .prepare(),
    one: each()
      .where(eq(deliverables.id, sql.placeholder('id')))
      .prepare(),
    pins: db
      .select({ pin: pinnedBlocks })
      .from(pinnedBlocks)
      .innerJoin(stages, eq(stages.id, pinnedBlocks.stageId))
      .where(eq(stages.deliverableId, sql.placeholder('id')))
      .orderBy(asc(pinnedBlocks.startAt))
      .prepare(),
    ofStage: db
      .select({ id: stages.deliverableId })
      .from(stages)
      .where(eq(stages.id, sql.placeholder('id')))
      .prepare(),
    ofPin: db
      .select({ id: stages.deliverableId })
      .from(pinnedBlocks)
      .innerJoin(stages, eq(stages.id, pinnedBlocks.stageId))
      .where(eq(pinnedBlocks.id, sql.placeholder('id')))
      .prepare(),
    made: db
      .select({ madeFrom: deliverables.madeFrom })
      .from(deliverables)
      .where(and(eq(deliverables.jobId, sql.placeholder('id')), sql`${deliverables.madeFrom} is not null`))
      .prepare(),
  };
});

type Joined = ReturnType<ReturnType<typeof reading>['ofJob']['all']>[number];

function stagesOf(db: ReadableDb, id: string): EditStage[] {
  const rows = stageRowsOf(db, id);
  const pins = Map.groupBy(reading(db).pins.all({ id }), ({ pin }) => pin.stageId);
  const names = stageNames(rows.map(({ kind }) => kind));
  return rows.map((row, order) => ({
    id: row.id,
    version: row.version,
    position: row.position,
    kind: row.kind,
    name: names[order] ?? row.kind,
    halfHours: row.halfHours,
    releaseDate: row.releaseDate,
    doneAt: row.doneAt === null ? null : instantText(row.doneAt),
    pins: (pins.get(row.id) ?? []).map(({ pin }) => ({ id: pin.id, start: instantText(pin.startAt), end: instantText(pin.endAt) })),
  }));
}

function deliverableOf(db: ReadableDb, { row, template, droppedAt, hand }: Joined): Deliverable {
  const { templateId, madeFrom: _madeFrom, dueDate, agreedDueDate, offAt, createdAt: _createdAt, updatedAt: _updatedAt, ...fields } = row;
  const own = stagesOf(db, row.id);
  const isDone = (kind: string) => own.some((stage) => stage.kind === kind && stage.doneAt !== null);
  const halfHours = own.reduce((sum, stage) => sum + stage.halfHours, 0);
  return {
    ...fields,
    template: templateId === null ? null : { id: templateId, name: template ?? '', dropped: droppedAt !== null },
    due: dueDate,
    agreedDue: agreedDueDate,
    hand: row.handId === null ? null : { id: row.handId, name: hand ?? '' },
    off: offAt !== null,
    state: isDone('approved') ? 'approved' : isDone('delivered') ? 'delivered' : 'open',
    hours: decimalText(exact(halfHours).div(2n)),
    lacks: [...(dueDate === null ? ['when it is due'] : []), ...(halfHours === 0 ? ['how many hours it takes'] : [])],
    stages: own,
  };
}

/** What is promised of a job, in order; what was taken off stands at the end. */
export function deliverablesOf(db: ReadableDb, jobId: string): Deliverable[] {
  return reading(db)
    .ofJob.all({ id: jobId })
    .map((row) => deliverableOf(db, row));
}

export function deliverableById(db: ReadableDb, id: string): Deliverable | undefined {
  const row = reading(db).one.get({ id });
  return row && deliverableOf(db, row);
}

/** The deliverable that a stage is of. */
export function deliverableOfStage(db: ReadableDb, stageId: string): Deliverable | undefined {
  const found = reading(db).ofStage.get({ id: stageId });
  return found && deliverableById(db, found.id);
}

export function deliverableOfPin(db: ReadableDb, pinId: string): Deliverable | undefined {
  const found = reading(db).ofPin.get({ id: pinId });
  return found && deliverableById(db, found.id);
}

/** What of a job was made into a deliverable already, taken off or not. */
export function madeFromOf(db: ReadableDb, jobId: string): Set<string> {
  return new Set(
    reading(db)
      .made.all({ id: jobId })
      .flatMap(({ madeFrom }) => madeFrom ?? []),
  );
}

/** What a person says of a deliverable. */
export type KeptFields = EditNumbers & Pick<Deliverable, 'name' | 'editHours' | 'due' | 'internalDate' | 'handId'>;
export type NewDeliverable = KeptFields & { jobId: string; templateId: string | null; madeFrom: string | null };

const columnsOf = ({ due, ...fields }: KeptFields) => ({ ...fields, dueDate: due });

/** Put one behind those that a job has. `now` in epoch milliseconds. */
export function insertDeliverable(
  db: WritableDb,
  { jobId, templateId, madeFrom, ...kept }: NewDeliverable,
  work: readonly PlannedWork[],
  now: number,
): string {
  const id = newId();
  const position = Math.max(0, ...deliverablesOf(db, jobId).map((each) => each.position)) + 1;
  insertRow(db, deliverables, {
    ...columnsOf(kept),
    id,
    jobId,
    templateId,
    madeFrom,
    position,
    agreedDueDate: kept.due,
    createdAt: now,
    updatedAt: now,
  });
  work.forEach(({ kind, halfHours }, order) => {
    insertRow(db, stages, { id: newId(), deliverableId: id, position: order + 1, kind, halfHours });
  });
  return id;
}

/** The next version of a deliverable. A date that is said for the first time is what was promised first. `now` in epoch milliseconds. */
export function updateDeliverable(db: WritableDb, before: Deliverable, kept: KeptFields, now: number): void {
  db.update(deliverables)
    .set({ ...columnsOf(kept), agreedDueDate: before.agreedDue ?? kept.due, version: before.version + 1, updatedAt: now })
    .where(eq(deliverables.id, before.id))
    .run();
}

/** Take it off at an instant, or put it back with null. `now` in epoch milliseconds. */
export function setOff(db: WritableDb, { id, version }: Deliverable, offAt: number | null, now: number): void {
  db.update(deliverables)
    .set({ offAt, version: version + 1, updatedAt: now })
    .where(eq(deliverables.id, id))
    .run();
}

/** A stage as it is to be: one that is there by its id, or a new one. */
export type KeptStage = PlannedWork & { id: string | null; doneAt: number | null };

/** Put these stages in the place of those that a deliverable has; what is not among them goes, with its pins. */
export function replaceStages(db: WritableDb, { id: deliverableId, stages: before }: Deliverable, kept: readonly KeptStage[]): void {
  const staying = new Set(kept.flatMap(({ id }) => id ?? []));
  for (const { id } of before) if (!staying.has(id)) db.delete(stages).where(eq(stages.id, id)).run();
  // Out of the way first: no two stages ever have one place.
  const away = Math.max(0, ...before.map(({ position }) => position)) + kept.length;
  db.update(stages)
    .set({ position: sql`${stages.position} + ${away}` })
    .where(eq(stages.deliverableId, deliverableId))
    .run();
  kept.forEach(({ id, kind, halfHours, doneAt }, order) => {
    const position = order + 1;
    if (id === null) {
      insertRow(db, stages, { id: newId(), deliverableId, position, kind, halfHours, doneAt });
      return;
    }
    const same = before.find((stage) => stage.id === id)?.halfHours === halfHours;
    db.update(stages)
      .set({ position, halfHours, doneAt, ...(same ? {} : { version: sql`${stages.version} + 1` }) })
      .where(eq(stages.id, id))
      .run();
  });
}

/** The next version of a stage. */
export function updateStage(db: WritableDb, { id, version }: EditStage, change: { halfHours?: number; releaseDate?: string | null }): void {
  db.update(stages)
    .set({ ...change, version: version + 1 })
    .where(eq(stages.id, id))
    .run();
}

/** Instants in epoch milliseconds. */
export function addPin(db: WritableDb, stageId: string, startAt: number, endAt: number): void {
  insertRow(db, pinnedBlocks, { id: newId(), stageId, startAt, endAt });
}

export function dropPin(db: WritableDb, id: string): void {
  db.delete(pinnedBlocks).where(eq(pinnedBlocks.id, id)).run();
}
