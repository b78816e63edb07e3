import { sql } from 'drizzle-orm';
import { check, index, integer, primaryKey, sqliteTable, text, uniqueIndex, type AnySQLiteColumn } from 'drizzle-orm/sqlite-core';
import { id, updatedAt } from './columns.ts';
import { jobs } from './jobs.ts';
import { clients } from './people.ts';
import { papers } from './quotes.ts';

/** What a person changed on a draft bill, in batches so that it can be taken back; the draft is made anew each time. */
export const invoiceDrafts = sqliteTable(
  'invoice_drafts',
  {
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id, { onDelete: 'cascade' }),
    kind: text('kind').notNull(),
    changes: text('changes', { mode: 'json' }).$type<unknown[][]>().notNull(),
    draftVersion: integer('draft_version').notNull().default(1),
    updatedAt: updatedAt(),
  },
  (t) => [primaryKey({ columns: [t.jobId, t.kind] })],
);

/** Issued papers: invoices and credit notes, in one gapless run for each series and year. Never changed: a trigger refuses it. */
export const invoices = sqliteTable(
  'invoices',
  {
    id: id(),
    kind: text('kind', { enum: ['deposit', 'final', 'instalment', 'cancellation', 'credit note'] }).notNull(),
    series: text('series').notNull(),
    year: integer('year').notNull(),
    sequence: integer('sequence').notNull(),
    number: text('number').notNull(),
    jobId: text('job_id').references(() => jobs.id),
    clientId: text('client_id').references(() => clients.id),
    issuedAt: integer('issued_at').notNull(),
    issueDate: text('issue_date').notNull(),
    dueDate: text('due_date').notNull(),
    currency: text('currency').notNull(),
    /** Home currency for one unit, on the date of supply; null where it is the home currency. */
    rate: text('rate'),
    rateDate: text('rate_date'),
    netMinor: integer('net_minor').notNull(),
    taxMinor: integer('tax_minor').notNull(),
    grossMinor: integer('gross_minor').notNull(),
    toPayMinor: integer('to_pay_minor').notNull(),
    content: text('content', { mode: 'json' }).$type<unknown>().notNull(),
    paperId: text('paper_id')
      .notNull()
      .references(() => papers.id),
    creditsId: text('credits_id').references((): AnySQLiteColumn => invoices.id),
  },
  (t) => [
    uniqueIndex('invoices_sequence').on(t.series, t.year, t.sequence),
    uniqueIndex('invoices_number').on(t.number),
    index('invoices_by_job').on(t.jobId, t.issuedAt),
    index('invoices_by_client').on(t.clientId, t.issuedAt),
    index('invoices_by_due').on(t.dueDate),
    index('invoices_by_credit').on(t.creditsId),
    check('invoices_kind', sql`${t.kind} in ('deposit', 'final', 'instalment', 'cancellation', 'credit note')`),
    check('invoices_from_one', sql`${t.sequence} >= 1`),
    check('invoices_currency', sql`length(${t.currency}) = 3`),
    check('invoices_sum', sql`${t.netMinor} + ${t.taxMinor} = ${t.grossMinor}`),
    check('invoices_credit', sql`(${t.kind} = 'credit note') = (${t.creditsId} is not null)`),
    check('invoices_rate_whole', sql`(${t.rate} is null) = (${t.rateDate} is null)`),
    check('invoices_due', sql`${t.dueDate} >= ${t.issueDate}`),
    check('invoices_content_json', sql`json_valid(${t.content})`),
  ],
);

/** What happened to an issued paper beside money: reminders, a dispute and its end, a write-off. Only added to. */
export const invoiceNotes = sqliteTable(
  'invoice_notes',
  {
    id: id(),
    invoiceId: text('invoice_id')
      .notNull()
      .references(() => invoices.id),
    kind: text('kind', { enum: ['reminded', 'disputed', 'settled', 'written off'] }).notNull(),
    on: text('on_date').notNull(),
    at: integer('at').notNull(),
    words: text('words').notNull().default(''),
  },
  (t) => [
    index('invoice_notes_by_invoice').on(t.invoiceId, t.at),
    check('invoice_notes_kind', sql`${t.kind} in ('reminded', 'disputed', 'settled', 'written off')`),
  ],
);

/** Money that came or went. Never changed: a trigger refuses it; a mistake is turned by a reversal. */
export const payments = sqliteTable(
  'payments',
  {
    id: id(),
    kind: text('kind', { enum: ['payment', 'refund', 'credit used', 'reversal'] }).notNull(),
    clientId: text('client_id').references(() => clients.id),
    on: text('on_date').notNull(),
    amountMinor: integer('amount_minor').notNull(),
    currency: text('currency').notNull(),
    /** Home currency for one unit, on the date of payment; null where it is the home currency. */
    rate: text('rate'),
    rateDate: text('rate_date'),
    how: text('how').notNull().default(''),
    note: text('note').notNull().default(''),
    reversesId: text('reverses_id').references((): AnySQLiteColumn => payments.id),
    madeAt: integer('made_at').notNull(),
  },
  (t) => [
    index('payments_by_date').on(t.on),
    index('payments_by_client').on(t.clientId, t.on),
    uniqueIndex('payments_reversed_once').on(t.reversesId),
    check('payments_kind', sql`${t.kind} in ('payment', 'refund', 'credit used', 'reversal')`),
    check('payments_currency', sql`length(${t.currency}) = 3`),
    check('payments_rate_whole', sql`(${t.rate} is null) = (${t.rateDate} is null)`),
    check('payments_reversal', sql`(${t.kind} = 'reversal') = (${t.reversesId} is not null)`),
  ],
);

/** What a payment is for: an invoice, in its currency, or the client's credit where none is named. Never changed. */
export const paymentParts = sqliteTable(
  'payment_parts',
  {
    id: id(),
    paymentId: text('payment_id')
      .notNull()
      .references(() => payments.id),
    invoiceId: text('invoice_id').references(() => invoices.id),
    amountMinor: integer('amount_minor').notNull(),
    currency: text('currency').notNull(),
    /** Gain above zero, loss below, in the home currency; null where no rate was between. */
    gainMinor: integer('gain_minor'),
    gainCurrency: text('gain_currency'),
  },
  (t) => [
    index('payment_parts_by_payment').on(t.paymentId),
    index('payment_parts_by_invoice').on(t.invoiceId),
    check('payment_parts_amount', sql`${t.amountMinor} <> 0`),
    check('payment_parts_currency', sql`length(${t.currency}) = 3`),
    check('payment_parts_gain_whole', sql`(${t.gainMinor} is null) = (${t.gainCurrency} is null)`),
  ],
);

/** What was agreed after ink, in words: who, when, how. Never changed. */
export const amendments = sqliteTable(
  'amendments',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id),
    what: text('what').notNull(),
    who: text('who').notNull(),
    at: integer('at').notNull(),
    how: text('how').notNull(),
    madeAt: integer('made_at').notNull(),
  },
  (t) => [index('amendments_by_job').on(t.jobId, t.at)],
);
