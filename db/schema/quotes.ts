import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import type { DraftChange, QuoteDraft } from '../../core/contract/quotes.ts';
import type { FrozenInputs } from '../../core/quotes/frozen.ts';
import { id, updatedAt } from './columns.ts';
import { jobs } from './jobs.ts';

/** What a person changed against the rate card, one batch for each save so that it can be taken back; the draft is priced anew each time. */
export const quoteDrafts = sqliteTable('quote_drafts', {
  jobId: text('job_id')
    .primaryKey()
    .references(() => jobs.id, { onDelete: 'cascade' }),
  changes: text('changes', { mode: 'json' }).$type<DraftChange[][]>().notNull(),
  draftVersion: integer('draft_version').notNull().default(1),
  updatedAt: updatedAt(),
});

/** Papers that were written, named by the hash of their bytes. Never changed: a trigger refuses it. */
export const papers = sqliteTable(
  'papers',
  {
    id: id(),
    jobId: text('job_id').references(() => jobs.id),
    kind: text('kind', {
      enum: ['quote', 'terms', 'invoice', 'credit note', 'statement', 'receipt', 'signed copy', 'delivery note', 'customs list', 'scan'],
    }).notNull(),
    name: text('name').notNull(),
    type: text('type').notNull(),
    hash: text('hash').notNull(),
    bytes: integer('bytes').notNull(),
    madeAt: integer('made_at').notNull(),
  },
  (t) => [
    index('papers_by_job').on(t.jobId, t.madeAt),
    check('papers_hash', sql`length(${t.hash}) = 64`),
    check('papers_bytes', sql`${t.bytes} > 0`),
  ],
);

/** Made versions. Never changed but for the moment of sending: a trigger refuses it. */
export const quoteVersions = sqliteTable(
  'quote_versions',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id),
    number: integer('number').notNull(),
    madeAt: integer('made_at').notNull(),
    currency: text('currency').notNull(),
    grossMinor: integer('gross_minor').notNull(),
    validUntilAt: integer('valid_until_at').notNull(),
    draft: text('draft', { mode: 'json' }).$type<QuoteDraft>().notNull(),
    replySubject: text('reply_subject').notNull(),
    replyText: text('reply_text').notNull(),
    paperId: text('paper_id')
      .notNull()
      .references(() => papers.id),
    /** What it was priced from; null on versions from before this was kept. */
    inputs: text('inputs', { mode: 'json' }).$type<FrozenInputs>(),
  },
  (t) => [
    uniqueIndex('quote_versions_number').on(t.jobId, t.number),
    check('quote_versions_currency', sql`length(${t.currency}) = 3`),
    check('quote_versions_gross', sql`typeof(${t.grossMinor}) = 'integer'`),
    check('quote_versions_draft_json', sql`json_valid(${t.draft})`),
  ],
);

/** When a version was noted as sent; kept apart so that the version itself stays frozen. */
export const quoteSendings = sqliteTable('quote_sendings', {
  versionId: text('version_id')
    .primaryKey()
    .references(() => quoteVersions.id),
  sentAt: integer('sent_at').notNull(),
});
