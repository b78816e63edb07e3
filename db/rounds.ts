/**
 * Cuts that were sent for notes, and the notes that came back.
 */
import { and, asc, desc, eq, gte, isNull, lte, sql } from 'drizzle-orm';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { deliverables, stages } from './schema/deliverables.ts';
import { jobs } from './schema/jobs.ts';
import { noteItems, rounds } from './schema/rounds.ts';
import type { ReadableDb, WritableDb } from './store.ts';

/** Instants are epoch milliseconds. */
export type RoundRow = typeof rounds.$inferSelect;
export type NoteRow = typeof noteItems.$inferSelect;
export type EditRow = typeof deliverables.$inferSelect;
export type StageRow = typeof stages.$inferSelect;

const reading = perStore((db) => ({
  edit: db
    .select()
    .from(deliverables)
    .where(eq(deliverables.id, sql.placeholder('id')))
    .prepare(),
  stages: db
    .select()
    .from(stages)
    .where(eq(stages.deliverableId, sql.placeholder('id')))
    .orderBy(asc(stages.position))
    .prepare(),
  rounds: db
    .select()
    .from(rounds)
    .where(eq(rounds.deliverableId, sql.placeholder('id')))
    .orderBy(asc(rounds.number))
    .prepare(),
  one: db
    .select()
    .from(rounds)
    .where(eq(rounds.id, sql.placeholder('id')))
    .prepare(),
  notes: db
    .select()
    .from(noteItems)
    .where(eq(noteItems.roundId, sql.placeholder('id')))
    .orderBy(asc(noteItems.position))
    .prepare(),
  note: db
    .select()
    .from(noteItems)
    .where(eq(noteItems.id, sql.placeholder('id')))
    .prepare(),
  waiting: db
    .select({
      round: rounds,
      name: deliverables.name,
      due: deliverables.dueDate,
      jobId: jobs.id,
      jobVersion: jobs.version,
      title: jobs.title,
      clientId: jobs.clientId,
    })
    .from(rounds)
    .innerJoin(deliverables, eq(deliverables.id, rounds.deliverableId))
    .innerJoin(jobs, eq(jobs.id, deliverables.jobId))
    .where(
      and(
        isNull(rounds.notesAt),
        lte(rounds.dueBack, sql.placeholder('to')),
        gte(rounds.dueBack, sql.placeholder('from')),
        isNull(deliverables.offAt),
        eq(jobs.stage, 'inked'),
      ),
    )
    .orderBy(asc(rounds.dueBack), asc(rounds.id))
    .prepare(),
  priced: db
    .select({
      round: rounds,
      name: deliverables.name,
      included: deliverables.rounds,
      earlier: sql<number>`(select count(*) from rounds earlier where earlier.deliverable_id = ${deliverables.id}
        and earlier.number < ${rounds.number} and earlier.notes <> '')`,
    })
    .from(rounds)
    .innerJoin(deliverables, eq(deliverables.id, rounds.deliverableId))
    .where(and(eq(deliverables.jobId, sql.placeholder('jobId')), sql`${rounds.price} is not null`))
    .orderBy(asc(deliverables.position), asc(rounds.number))
    .prepare(),
  pricedJobs: db
    .selectDistinct({ jobId: deliverables.jobId })
    .from(rounds)
    .innerJoin(deliverables, eq(deliverables.id, rounds.deliverableId))
    .where(and(sql`${rounds.price} ->> '$.state' <> 'declined'`, gte(rounds.notesAt, sql.placeholder('since'))))
    .prepare(),
}));

/** A deliverable as it is stored. */
export function editById(db: ReadableDb, id: string): EditRow | undefined {
  return reading(db).edit.get({ id });
}

/** Its stages in their order. */
export function stagesOf(db: ReadableDb, deliverableId: string): StageRow[] {
  return reading(db).stages.all({ id: deliverableId });
}

/** The rounds of a deliverable, first to last. */
export function roundsOf(db: ReadableDb, deliverableId: string): RoundRow[] {
  return reading(db).rounds.all({ id: deliverableId });
}

export function roundById(db: ReadableDb, id: string): RoundRow | undefined {
  return reading(db).one.get({ id });
}

/** The notes of a round in their order. */
export function notesOf(db: ReadableDb, roundId: string): NoteRow[] {
  return reading(db).notes.all({ id: roundId });
}

export function noteById(db: ReadableDb, id: string): NoteRow | undefined {
  return reading(db).note.get({ id });
}

/** Cuts of jobs in ink whose notes are awaited and due between two dates, both counted. */
export function waitingRounds(db: ReadableDb, span: { from: string; to: string }) {
  return reading(db).waiting.all(span);
}

/** Further rounds of a job that were priced, declined ones among them. */
export function pricedRounds(db: ReadableDb, jobId: string) {
  return reading(db)
    .priced.all({ jobId })
    .flatMap(({ round: { id, what: cut, notesAt, price }, name, included, earlier }) =>
      price ? [{ id, pass: earlier + 1, cut, notesAt, of: name, included, price }] : [],
    );
}

/** Jobs with further rounds that were not declined. @param since epoch milliseconds: notes that came before that are left out */
export function jobIdsWithPrices(db: ReadableDb, since: number): string[] {
  return reading(db)
    .pricedJobs.all({ since })
    .map(({ jobId }) => jobId);
}

/** Keep a cut that was sent. */
export function addRound(db: WritableDb, round: Omit<RoundRow, 'id' | 'version' | 'notesAt' | 'notes' | 'price' | 'moved'>): string {
  const id = newId();
  db.insert(rounds)
    .values({ ...round, id })
    .run();
  return id;
}

/** The next version of a round. */
export function changeRound(db: WritableDb, { id, version }: RoundRow, change: Partial<RoundRow>): void {
  db.update(rounds)
    .set({ ...change, version: version + 1 })
    .where(eq(rounds.id, id))
    .run();
}

export function dropRound(db: WritableDb, id: string): void {
  db.delete(rounds).where(eq(rounds.id, id)).run();
}

/** Add notes behind those that a round has. */
export function addNotes(
  db: WritableDb,
  roundId: string,
  notes: readonly Pick<NoteRow, 'timecode' | 'frame' | 'toFrame' | 'text'>[],
): void {
  const last = db.select({ position: noteItems.position }).from(noteItems).where(eq(noteItems.roundId, roundId));
  const from = (last.orderBy(desc(noteItems.position)).limit(1).get()?.position ?? 0) + 1;
  notes.forEach((note, order) => {
    db.insert(noteItems)
      .values({ ...note, id: newId(), roundId, position: from + order })
      .run();
  });
}

export function dropNotes(db: WritableDb, roundId: string): void {
  db.delete(noteItems).where(eq(noteItems.roundId, roundId)).run();
}

/** Tick a note off, or open it again. @param doneAt epoch milliseconds */
export function tickNote(db: WritableDb, id: string, doneAt: number | null): void {
  db.update(noteItems).set({ doneAt }).where(eq(noteItems.id, id)).run();
}

/** Move the dates of a deliverable: its next version. */
export function moveDates(
  db: WritableDb,
  { id, version }: Pick<EditRow, 'id' | 'version'>,
  dates: Pick<EditRow, 'dueDate' | 'internalDate'>,
  now: number,
): void {
  db.update(deliverables)
    .set({ ...dates, version: version + 1, updatedAt: now })
    .where(eq(deliverables.id, id))
    .run();
}

/** Mark stages as done, or open them. @param doneAt epoch milliseconds */
export function markStages(db: WritableDb, ids: readonly string[], doneAt: number | null): void {
  for (const id of ids)
    db.update(stages)
      .set({ doneAt, version: sql`${stages.version} + 1` })
      .where(eq(stages.id, id))
      .run();
}

/** A stage for the work on one more round, before another stage, or last. */
export function addRoundStage(db: WritableDb, deliverableId: string, halfHours: number, before: string | null): string {
  const all = stagesOf(db, deliverableId);
  const at = all.find(({ id }) => id === before);
  const position = at?.position ?? (all.at(-1)?.position ?? 0) + 1;
  // From the last on, so that no two ever have one place.
  for (const stage of all.filter((each) => each.position >= position).toReversed())
    db.update(stages)
      .set({ position: stage.position + 1 })
      .where(eq(stages.id, stage.id))
      .run();
  const id = newId();
  db.insert(stages).values({ id, deliverableId, position, kind: 'round', halfHours }).run();
  return id;
}

export function dropStage(db: WritableDb, id: string): void {
  db.delete(stages).where(eq(stages.id, id)).run();
}
