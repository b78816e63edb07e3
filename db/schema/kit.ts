import { sql } from 'drizzle-orm';
import { check, index, integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { KitItemFields, KitNeed } from '../../core/contract/kit.ts';
import { createdAt, id, updatedAt, version } from './columns.ts';
import { jobs } from './jobs.ts';

/** What I own; the fields are one document that the contract has checked. */
export const kitItems = sqliteTable(
  'kit_items',
  {
    id: id(),
    name: text('name').notNull(),
    fields: text('fields', { mode: 'json' }).$type<KitItemFields>().notNull(),
    version: version(),
    createdAt: createdAt(),
    updatedAt: updatedAt(),
  },
  (t) => [index('kit_items_by_name').on(t.name), check('kit_items_fields_json', sql`json_valid(${t.fields})`)],
);

/** Lists that are packed together; expanded when they are put on a job. */
export const kitPresets = sqliteTable(
  'kit_presets',
  {
    id: id(),
    name: text('name').notNull().unique(),
    needs: text('needs', { mode: 'json' }).$type<KitNeed[]>().notNull(),
    version: version(),
    updatedAt: updatedAt(),
  },
  (t) => [check('kit_presets_needs_json', sql`json_valid(${t.needs})`)],
);

/** What a job needs. */
export const jobKit = sqliteTable(
  'job_kit',
  {
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id, { onDelete: 'cascade' }),
    itemId: text('item_id')
      .notNull()
      .references(() => kitItems.id),
    count: integer('count').notNull(),
  },
  (t) => [primaryKey({ columns: [t.jobId, t.itemId] }), index('job_kit_by_item').on(t.itemId), check('job_kit_count', sql`${t.count} > 0`)],
);

/** What was packed for a job, and what became of it: a row for each unit with a serial, one for the counted rest of a thing. */
export const jobPacks = sqliteTable(
  'job_packs',
  {
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id, { onDelete: 'cascade' }),
    itemId: text('item_id')
      .notNull()
      .references(() => kitItems.id, { onDelete: 'cascade' }),
    serial: text('serial').notNull().default(''),
    out: integer('out').notNull(),
    back: integer('back').notNull().default(0),
    missing: integer('missing').notNull().default(0),
    updatedAt: updatedAt(),
  },
  (t) => [
    primaryKey({ columns: [t.jobId, t.itemId, t.serial] }),
    index('job_packs_still_out')
      .on(t.jobId)
      .where(sql`${t.out} > ${t.back} + ${t.missing}`),
    check('job_packs_counts', sql`${t.out} > 0 and ${t.back} >= 0 and ${t.missing} >= 0 and ${t.back} + ${t.missing} <= ${t.out}`),
    check('job_packs_unit', sql`${t.serial} = '' or ${t.out} = 1`),
  ],
);
