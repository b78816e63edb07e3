/**
 * What I own, its presets, and what jobs need of it.
 */
import { and, asc, eq, gt, inArray, sql } from 'drizzle-orm';
import type { KitItem, KitItemFields, KitNeed, Preset } from '../core/contract/kit.ts';
import { blankItem, blankUnit } from '../core/kit/blank.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { jobDays, jobs } from './schema/jobs.ts';
import { jobKit, kitItems, kitPresets } from './schema/kit.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const reading = perStore((db) => ({
  items: db
    .select()
    .from(kitItems)
    .orderBy(sql`${kitItems.name} collate nocase`, asc(kitItems.id))
    .prepare(),
  item: db
    .select()
    .from(kitItems)
    .where(eq(kitItems.id, sql.placeholder('id')))
    .prepare(),
  presets: db
    .select()
    .from(kitPresets)
    .orderBy(sql`${kitPresets.name} collate nocase`, asc(kitPresets.id))
    .prepare(),
  preset: db
    .select()
    .from(kitPresets)
    .where(eq(kitPresets.id, sql.placeholder('id')))
    .prepare(),
  ofJob: db
    .select({ item: jobKit.itemId, name: kitItems.name, count: jobKit.count })
    .from(jobKit)
    .innerJoin(kitItems, eq(kitItems.id, jobKit.itemId))
    .where(eq(jobKit.jobId, sql.placeholder('jobId')))
    .orderBy(sql`${kitItems.name} collate nocase`, asc(kitItems.id))
    .prepare(),
  neededBy: db
    .selectDistinct({ title: jobs.title })
    .from(jobKit)
    .innerJoin(jobs, and(eq(jobs.id, jobKit.jobId), inArray(jobs.stage, ['inquiry', 'quoted', 'pencilled', 'inked'])))
    .innerJoin(jobDays, and(eq(jobDays.jobId, jobs.id), gt(jobDays.wrapAt, sql.placeholder('now'))))
    .where(eq(jobKit.itemId, sql.placeholder('itemId')))
    .prepare(),
}));

type Stored = Omit<KitItemFields, 'units'> & { units?: KitItemFields['units']; serials?: string[] };

/** Fields that a row was saved without, by an earlier version of the program, are not known. */
function itemOf({ id, version, fields }: Pick<typeof kitItems.$inferSelect, 'id' | 'version' | 'fields'>): KitItem {
  // Units were serials and nothing more once.
  const { serials = [], ...kept } = fields as Stored;
  return { ...blankItem(kept.name), units: serials.filter((serial) => serial !== '').map(blankUnit), ...kept, id, version };
}
const presetOf = ({ id, version, name, needs }: typeof kitPresets.$inferSelect): Preset => ({ id, version, name, needs });

export function allItems(db: ReadableDb): KitItem[] {
  return reading(db).items.all().map(itemOf);
}

export function itemById(db: ReadableDb, id: string): KitItem | undefined {
  const row = reading(db).item.get({ id });
  return row && itemOf(row);
}

export function allPresets(db: ReadableDb): Preset[] {
  return reading(db).presets.all().map(presetOf);
}

export function presetById(db: ReadableDb, id: string): Preset | undefined {
  const row = reading(db).preset.get({ id });
  return row && presetOf(row);
}

/** What a job needs, by name. */
export function kitOfJob(db: ReadableDb, jobId: string): { item: string; name: string; count: number }[] {
  return reading(db).ofJob.all({ jobId });
}

/** Titles of open jobs that need a thing on a date that is not over at `now` (epoch ms). */
export function jobsNeeding(db: ReadableDb, itemId: string, now: number): string[] {
  return reading(db)
    .neededBy.all({ itemId, now })
    .map(({ title }) => title);
}

/** Save a thing: a new one, or the next version of `before`. `now` in epoch ms. */
export function keepItem(db: WritableDb, before: KitItem | undefined, fields: KitItemFields, now: number): KitItem {
  const row = { id: before?.id ?? newId(), name: fields.name, fields, version: (before?.version ?? 0) + 1, createdAt: now, updatedAt: now };
  const { createdAt: _createdAt, ...change } = row;
  db.insert(kitItems).values(row).onConflictDoUpdate({ target: kitItems.id, set: change }).run();
  return itemOf(row);
}

export type OfJob = { jobId: string; count: number };

/** Take a thing off the list, and off the jobs that are over. @returns what those had of it */
export function dropItem(db: WritableDb, id: string): OfJob[] {
  const ofJobs = db.delete(jobKit).where(eq(jobKit.itemId, id)).returning({ jobId: jobKit.jobId, count: jobKit.count }).all();
  db.delete(kitItems).where(eq(kitItems.id, id)).run();
  return ofJobs;
}

/** Put a thing that was taken off on the list again under its own id, and on the jobs that had it. `now` in epoch ms. */
export function restoreItem(db: WritableDb, before: KitItem, ofJobs: readonly OfJob[], now: number): KitItem {
  const { id: _id, version: _version, ...fields } = before;
  const item = keepItem(db, before, fields, now);
  for (const { jobId, count } of ofJobs) db.insert(jobKit).values({ jobId, itemId: item.id, count }).run();
  return item;
}

/** Save a preset: a new one, or the next version of `before`. `now` in epoch ms. */
export function keepPreset(db: WritableDb, before: Preset | undefined, fields: { name: string; needs: KitNeed[] }, now: number): Preset {
  const row = { id: before?.id ?? newId(), ...fields, version: (before?.version ?? 0) + 1, updatedAt: now };
  db.insert(kitPresets).values(row).onConflictDoUpdate({ target: kitPresets.id, set: row }).run();
  return presetOf(row);
}

export function dropPreset(db: WritableDb, id: string): void {
  db.delete(kitPresets).where(eq(kitPresets.id, id)).run();
}

/** Put these needs, by item id, in the place of those that a job has. */
export function replaceJobKit(db: WritableDb, jobId: string, needs: readonly { item: string; count: number }[]): void {
  db.delete(jobKit).where(eq(jobKit.jobId, jobId)).run();
  for (const { item, count } of needs) db.insert(jobKit).values({ jobId, itemId: item, count }).run();
}
