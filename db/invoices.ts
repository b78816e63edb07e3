/**
 * Issued invoices and credit notes, what happened to them since, and where they stand as of a date. Papers are only added.
 */
import { asc, desc, eq, sql } from 'drizzle-orm';
import type { InvoiceContent, InvoiceRow } from '../core/contract/invoices.ts';
import { standingOf, type InvoiceEvent } from '../core/invoices/standing.ts';
import { money, zero } from '../core/money/money.ts';
import { instantText } from '../core/time/read.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { invoiceNotes, invoices } from './schema/invoices.ts';
import type { ReadableDb, WritableDb } from './store.ts';

type InvoiceRecord = Omit<typeof invoices.$inferSelect, 'content'> & { content: InvoiceContent };
type NoteRow = typeof invoiceNotes.$inferSelect;

/** An issued paper with the sums of what came after it, up to a date. */
type StandingRow = Omit<InvoiceRecord, 'content' | 'paperId'> & {
  jobTitle: string | null;
  billedTo: string;
  paid: number;
  creditedMinor: number;
  writtenOff: number;
  disputed: number;
};

/** @param paid and credited, each an expression for what came up to the date, in minor units */
const columns = (paid: string, credited: string): string => `
  i.id, i.kind, i.series, i.year, i.sequence, i.number, i.job_id as jobId, i.client_id as clientId, i.issued_at as issuedAt,
  i.issue_date as issueDate, i.due_date as dueDate, i.currency, i.rate, i.rate_date as rateDate, i.net_minor as netMinor,
  i.tax_minor as taxMinor, i.gross_minor as grossMinor, i.to_pay_minor as toPayMinor, i.credits_id as creditsId,
  j.title as jobTitle, i.content ->> '$.billTo.name' as billedTo, coalesce(${paid}, 0) as paid, coalesce(${credited}, 0) as creditedMinor,
  exists (select 1 from invoice_notes n where n.invoice_id = i.id and n.kind = 'written off' and n.on_date <= @asOf) as writtenOff,
  coalesce((select n.kind = 'disputed' from invoice_notes n where n.invoice_id = i.id and n.kind in ('disputed', 'settled') and n.on_date <= @asOf
    order by n.at desc, n.id desc limit 1), 0) as disputed`;

// All papers at once: each sum is made in one pass.
const ALL = `
  with settled as (
    select part.invoice_id as id, sum(part.amount_minor) as paid
    from payment_parts part join payments payment on payment.id = part.payment_id
    where part.invoice_id is not null and payment.on_date <= @asOf group by part.invoice_id),
  turned as (
    select credits_id as id, sum(to_pay_minor) as credited from invoices
    where credits_id is not null and issue_date <= @asOf group by credits_id)
  select ${columns('settled.paid', 'turned.credited')}
  from invoices i left join jobs j on j.id = i.job_id left join settled on settled.id = i.id left join turned on turned.id = i.id
  where i.issue_date <= @asOf`;

// A few papers: their sums by index, whatever else lies in the store.
export const FEW_AS_OF = `
  select ${columns(
    `(select sum(part.amount_minor) from payment_parts part join payments payment on payment.id = part.payment_id
      where part.invoice_id = i.id and payment.on_date <= @asOf)`,
    '(select sum(c.to_pay_minor) from invoices c where c.credits_id = i.id and c.issue_date <= @asOf)',
  )}
  from invoices i left join jobs j on j.id = i.job_id
  where i.issue_date <= @asOf`;
const NEWEST = 'order by i.issued_at desc, i.year desc, i.sequence desc';

type Narrowed = { asOf: string; id?: string };

const reading = perStore((db) => {
  const standing = (from: string, where: string) => db.$client.prepare<[Narrowed], StandingRow>(`${from} ${where} ${NEWEST}`);
  return {
    all: standing(ALL, ''),
    unpaid: standing(ALL, "and i.kind <> 'credit note' and i.to_pay_minor > coalesce(settled.paid, 0) - coalesce(turned.credited, 0)"),
    one: standing(FEW_AS_OF, 'and i.id = @id'),
    byJob: standing(FEW_AS_OF, 'and i.job_id = @id'),
    byClient: standing(FEW_AS_OF, 'and i.client_id = @id'),
    row: db
      .select()
      .from(invoices)
      .where(eq(invoices.id, sql.placeholder('id')))
      .prepare(),
    credits: db
      .select()
      .from(invoices)
      .where(eq(invoices.creditsId, sql.placeholder('id')))
      .orderBy(asc(invoices.issuedAt), asc(invoices.sequence))
      .prepare(),
    ofJob: db
      .select()
      .from(invoices)
      .where(eq(invoices.jobId, sql.placeholder('jobId')))
      .orderBy(desc(invoices.issuedAt), desc(invoices.sequence))
      .prepare(),
    notes: db
      .select()
      .from(invoiceNotes)
      .where(eq(invoiceNotes.invoiceId, sql.placeholder('id')))
      .orderBy(asc(invoiceNotes.at), asc(invoiceNotes.id))
      .prepare(),
    last: db.$client.prepare<[string, number], { sequence: number | null; issueDate: string | null }>(
      'select max(sequence) as sequence, max(issue_date) as issueDate from invoices where series = ? and year = ?',
    ),
  };
});

const whole = (row: typeof invoices.$inferSelect): InvoiceRecord => ({ ...row, content: row.content as InvoiceContent });

/** One issued paper with what it says. */
export function invoiceRecord(db: ReadableDb, id: string): InvoiceRecord | undefined {
  const row = reading(db).row.get({ id });
  return row && whole(row);
}

/** Every issued paper of a job with what it says, newest first. */
export function invoiceRecordsOf(db: ReadableDb, jobId: string): InvoiceRecord[] {
  return reading(db).ofJob.all({ jobId }).map(whole);
}

/** The credit notes of an invoice, oldest first. */
export function creditNotesOf(db: ReadableDb, id: string): InvoiceRecord[] {
  return reading(db).credits.all({ id }).map(whole);
}

/** Issued papers as they stand as of a date, newest first: all of them, those of a job or of a client. */
export function invoicesAsOf(db: ReadableDb, asOf: string, of: { jobId: string } | { clientId: string } | null = null): InvoiceRow[] {
  const { all, byJob, byClient } = reading(db);
  const rows =
    of === null ? all.all({ asOf }) : 'jobId' in of ? byJob.all({ asOf, id: of.jobId }) : byClient.all({ asOf, id: of.clientId });
  return rows.map((row) => rowAsMet(row, asOf));
}

/** Invoices that something is open of as of a date, newest first: the others are not even read. */
export function openAsOf(db: ReadableDb, asOf: string): InvoiceRow[] {
  return reading(db)
    .unpaid.all({ asOf })
    .map((row) => rowAsMet(row, asOf))
    .filter(({ open }) => open.minor !== 0);
}

/** One issued paper as it stands as of a date. */
export function invoiceAsOf(db: ReadableDb, id: string, asOf: string): InvoiceRow | undefined {
  const row = reading(db).one.get({ asOf, id });
  return row && rowAsMet(row, asOf);
}

function rowAsMet(row: StandingRow, asOf: string): InvoiceRow {
  const { currency } = row;
  const amount = (minor: number) => money(minor, currency);
  const toPay = amount(row.toPayMinor);
  // The sums are those up to the date already, so each stands as one event of that date.
  const events: InvoiceEvent[] = [
    { kind: 'paid', on: asOf, amount: amount(row.paid) },
    { kind: 'credited', on: asOf, amount: amount(row.creditedMinor) },
    ...(row.writtenOff ? [{ kind: 'written off' as const, on: asOf }] : []),
    ...(row.disputed ? [{ kind: 'disputed' as const, on: asOf }] : []),
  ];
  const none = zero(currency);
  const turned = { state: 'credited' as const, open: none, paid: none, credited: none, writtenOff: none, over: none, daysLate: 0 };
  // What a credit note takes away counts on the invoice that it turns.
  const standing = row.kind === 'credit note' ? turned : standingOf(toPay, row.dueDate, events, asOf);
  return {
    id: row.id,
    kind: row.kind,
    number: row.number,
    jobId: row.jobId,
    jobTitle: row.jobTitle ?? '',
    clientId: row.clientId,
    billedTo: row.billedTo,
    issuedAt: instantText(row.issuedAt),
    issueDate: row.issueDate,
    dueDate: row.dueDate,
    currency,
    rate: row.rate === null || row.rateDate === null ? null : { rate: row.rate, date: row.rateDate },
    net: amount(row.netMinor),
    tax: amount(row.taxMinor),
    gross: amount(row.grossMinor),
    toPay,
    credits: row.creditsId,
    ...standing,
  };
}

/** The last number that was taken in a series and year, zero before the first, and the date of the last paper. */
export function lastOfSeries(db: ReadableDb, series: string, year: number): { sequence: number; issueDate: string | null } {
  const row = reading(db).last.get(series, year);
  return { sequence: row?.sequence ?? 0, issueDate: row?.issueDate ?? null };
}

/** Put an issued paper on the books; the index refuses a number that is taken. Answers with its id. */
export function insertInvoice(db: WritableDb, row: Omit<InvoiceRecord, 'id'>): string {
  const id = newId();
  db.insert(invoices)
    .values({ id, ...row })
    .run();
  return id;
}

/** What happened to an issued paper beside money, oldest first. */
export function notesOf(db: ReadableDb, invoiceId: string): NoteRow[] {
  return reading(db).notes.all({ id: invoiceId });
}

/** `at` in epoch milliseconds; `words` the tone of a reminder, or why. */
export function addInvoiceNote(db: WritableDb, note: Pick<NoteRow, 'invoiceId' | 'kind' | 'on' | 'at' | 'words'>): void {
  db.insert(invoiceNotes)
    .values({ id: newId(), ...note })
    .run();
}
