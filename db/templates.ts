/**
 * Templates of what is delivered.
 */
import { count, eq, isNull, sql } from 'drizzle-orm';
import type { Template, TemplateFields } from '../core/contract/templates.ts';
import { newId } from './ids.ts';
import { insertRow, perStore } from './prepared.ts';
import { deliverables, templates } from './schema/deliverables.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const reading = perStore((db) => ({
  all: db
    .select()
    .from(templates)
    .where(isNull(templates.putAwayAt))
    .orderBy(sql`${templates.name} collate nocase`, templates.id)
    .prepare(),
  one: db
    .select()
    .from(templates)
    .where(eq(templates.id, sql.placeholder('id')))
    .prepare(),
  uses: db.select({ id: deliverables.templateId, uses: count() }).from(deliverables).groupBy(deliverables.templateId).prepare(),
}));

type Row = typeof templates.$inferSelect;

function templateOf(row: Row, uses: number): Template {
  const { putAwayAt: _putAwayAt, createdAt: _createdAt, updatedAt: _updatedAt, ...template } = row;
  return { ...template, uses };
}

const usesOf = (db: ReadableDb): Map<string | null, number> =>
  new Map(
    reading(db)
      .uses.all()
      .map(({ id, uses }) => [id, uses]),
  );

/** By name; those that were dropped are not among them. */
export function allTemplates(db: ReadableDb): Template[] {
  const uses = usesOf(db);
  return reading(db)
    .all.all()
    .map((row) => templateOf(row, uses.get(row.id) ?? 0));
}

/** One that was not dropped. */
export function templateById(db: ReadableDb, id: string): Template | undefined {
  const row = reading(db).one.get({ id });
  return row && row.putAwayAt === null ? templateOf(row, usesOf(db).get(id) ?? 0) : undefined;
}

/** Save a new one, or the next version of one; answers with its id. `now` in epoch milliseconds. */
export function saveTemplate(db: WritableDb, before: Template | undefined, fields: TemplateFields, now: number): string {
  const id = before?.id ?? newId();
  if (before)
    db.update(templates)
      .set({ ...fields, version: before.version + 1, updatedAt: now })
      .where(eq(templates.id, id))
      .run();
  else insertRow(db, templates, { ...fields, id, createdAt: now, updatedAt: now });
  return id;
}

/** Put one away: what was made from it still names it. `now` in epoch milliseconds. */
export function dropTemplate(db: WritableDb, { id, version }: Template, now: number): void {
  db.update(templates)
    .set({ putAwayAt: now, version: version + 1, updatedAt: now })
    .where(eq(templates.id, id))
    .run();
}
