import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import type { DueRule, Format } from '../../core/contract/templates.ts';
import { createdAt, id, updatedAt, version } from './columns.ts';
import { jobs } from './jobs.ts';
import { hands } from './people.ts';

/** The numbers that stages are made from, which a template and a deliverable share. Exact decimals are text; hours are edit hours. */
const numbers = () => ({
  finishedMinutes: text('finished_minutes').notNull(),
  editHoursPerMinute: text('edit_hours_per_minute').notNull(),
  ingestHours: text('ingest_hours').notNull(),
  rounds: integer('rounds').notNull(),
  hoursPerRound: text('hours_per_round').notNull(),
  windowDays: integer('window_days').notNull(),
  internalDays: integer('internal_days').notNull(),
  format: text('format', { mode: 'json' }).$type<Format>().notNull(),
  sameDay: integer('same_day', { mode: 'boolean' }).notNull(),
});

/** Kinds of deliverables with the numbers that they begin with. One that is put away leaves what was made from it as it is. */
export const templates = sqliteTable(
  'templates',
  {
    id: id(),
    name: text('name').notNull(),
    ...numbers(),
    due: text('due', { mode: 'json' }).$type<DueRule>().notNull(),
    putAwayAt: integer('put_away_at'),
    version: version(),
    createdAt: createdAt(),
    updatedAt: updatedAt(),
  },
  (t) => [
    index('templates_by_name').on(t.name),
    check('templates_counts', sql`${t.rounds} >= 0 and ${t.windowDays} >= 0 and ${t.internalDays} >= 0`),
    check('templates_json', sql`json_valid(${t.due}) and json_valid(${t.format})`),
  ],
);

/**
 * One thing promised of a job in ink. `agreed_due_date` is what was promised first, `due_date` what holds now; null is not known yet.
 * `edit_hours` stands for finished minutes times hours where only the hours are known; it is null elsewhere.
 * `made_from` names what of the job it was made from, so that nothing is made twice. With `hand_id` a hand edits it.
 */
export const deliverables = sqliteTable(
  'deliverables',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id, { onDelete: 'cascade' }),
    templateId: text('template_id').references(() => templates.id, { onDelete: 'set null' }),
    position: integer('position').notNull(),
    name: text('name').notNull(),
    madeFrom: text('made_from'),
    ...numbers(),
    editHours: text('edit_hours'),
    dueDate: text('due_date'),
    agreedDueDate: text('agreed_due_date'),
    internalDate: text('internal_date'),
    handId: text('hand_id').references(() => hands.id),
    offAt: integer('off_at'),
    version: version(),
    createdAt: createdAt(),
    updatedAt: updatedAt(),
  },
  (t) => [
    index('deliverables_by_job').on(t.jobId, t.position),
    uniqueIndex('deliverables_made_once')
      .on(t.jobId, t.madeFrom)
      .where(sql`${t.madeFrom} is not null`),
    check('deliverables_counts', sql`${t.rounds} >= 0 and ${t.windowDays} >= 0 and ${t.internalDays} >= 0`),
    check('deliverables_internal_first', sql`${t.internalDate} is null or ${t.internalDate} <= ${t.dueDate}`),
    check('deliverables_json', sql`json_valid(${t.format})`),
  ],
);

/** What is done on a deliverable, in order. The last two are marks without hours. `release_date`: not before that date. */
export const stages = sqliteTable(
  'stages',
  {
    id: id(),
    deliverableId: text('deliverable_id')
      .notNull()
      .references(() => deliverables.id, { onDelete: 'cascade' }),
    position: integer('position').notNull(),
    kind: text('kind', {
      enum: ['ingest', 'selects', 'rough cut', 'fine cut', 'round', 'picture lock', 'delivered', 'approved'],
    }).notNull(),
    halfHours: integer('half_hours').notNull(),
    releaseDate: text('release_date'),
    doneAt: integer('done_at'),
    version: version(),
  },
  (t) => [
    uniqueIndex('stages_in_order').on(t.deliverableId, t.position),
    index('stages_open')
      .on(t.deliverableId)
      .where(sql`${t.doneAt} is null`),
    check(
      'stages_kind',
      sql`${t.kind} in ('ingest', 'selects', 'rough cut', 'fine cut', 'round', 'picture lock', 'delivered', 'approved')`,
    ),
    check('stages_hours', sql`${t.halfHours} >= 0`),
    check('stages_marks', sql`${t.halfHours} = 0 or ${t.kind} not in ('delivered', 'approved')`),
  ],
);

/** Stretches that are set aside for one stage, whatever the plan would say. Half-open [start, end). */
export const pinnedBlocks = sqliteTable(
  'pinned_blocks',
  {
    id: id(),
    stageId: text('stage_id')
      .notNull()
      .references(() => stages.id, { onDelete: 'cascade' }),
    startAt: integer('start_at').notNull(),
    endAt: integer('end_at').notNull(),
  },
  (t) => [
    index('pinned_blocks_by_stage').on(t.stageId),
    index('pinned_blocks_by_time').on(t.startAt),
    check('pinned_blocks_end_after_start', sql`${t.endAt} > ${t.startAt}`),
    check('pinned_blocks_length', sql`${t.endAt} - ${t.startAt} <= 86400000`),
  ],
);
