/**
 * Issuing a bill or a credit note: numbered without gaps, on paper, and never changed again.
 */
import type { DraftKind, Invoice } from '../../core/contract/invoices.ts';
import { creditNoteContent, invoiceContent } from '../../core/invoices/content.ts';
import { creditOf, creditTroubles, leftOfLines, type CreditAsked } from '../../core/invoices/credit.ts';
import { formatMoney } from '../../core/money/format.ts';
import { paperName } from '../../core/quotes/paper-name.ts';
import { dateInWords } from '../../core/words/dates.ts';
import { endBillDraft } from '../../db/bill-drafts.ts';
import { creditNotesOf, insertInvoice, invoiceRecord, invoiceRecordsOf } from '../../db/invoices.ts';
import { writeHistory } from '../../db/keeping.ts';
import { insertPaper } from '../../db/papers.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import type { Kept } from '../papers/keep.ts';
import { billFacts, type BillFacts } from './bill-facts.ts';
import type { Context } from './context.ts';
import { wholeInvoice } from './invoice-of.ts';
import { issueInTurn, nextNumber, type Frozen } from './numbered.ts';
import { notFound, refused, stale } from './trouble.ts';

type IssueInput = { jobId: string; kind: DraftKind; draftVersion: number; override?: string | undefined; key?: string | undefined };
type FrozenBill = BillFacts & Frozen;

/** @throws STALE against an old draft, REFUSED while something is missing or the purchase-order number is */
export function issueBill(context: Context, input: IssueInput): Promise<{ invoice: Invoice }> {
  return issueInTurn(context, {
    procedure: 'invoices.issue',
    input,
    freeze: (db, now): FrozenBill => {
      const facts = billFacts(db, input.jobId, input.kind, now);
      refuseUnready(facts, input);
      const next = nextNumber(db, facts.setup, now);
      return { ...facts, next, content: invoiceContent(facts.draft, facts.setup, facts.job.title, next) };
    },
    put: (db, frozen, paper, now) => {
      const { job, draft, next } = frozen;
      const id = putOnBooks(db, frozen, paper, now, {
        kind: draft.kind,
        jobId: job.id,
        clientId: job.client?.id ?? null,
        dueDate: draft.dueDate,
        creditsId: null,
      });
      endBillDraft(db, job.id, draft.kind);
      const without = draft.billTo.order === '' && input.override ? ` Without a purchase-order number: ${input.override}.` : '';
      note(
        db,
        job.id,
        'invoices.issue',
        `Invoice ${next.number} was issued: ${formatMoney(draft.toPay, { code: true })}, due ${dateInWords(draft.dueDate)}.${without}`,
        now,
      );
      return { invoice: wholeInvoice(db, context, id) };
    },
  });
}

function refuseUnready({ job, draft }: BillFacts, input: IssueInput): void {
  if (draft.draftVersion !== input.draftVersion) throw stale('The bill', draft, input);
  if (draft.missing.length > 0) throw refused('The bill cannot be issued yet.', 'Fill in what is missing, then issue it.', draft.missing);
  if (job.knows.purchaseOrder.required && draft.billTo.order.trim() === '' && !input.override)
    throw refused(
      `${draft.billTo.name} pays only with a purchase-order number, and none is known.`,
      'Ask for it and put it into the job, or issue the bill without it and say why.',
    );
}

type CreditInput = { id: string; lines: CreditAsked; reason: string; key?: string | undefined };

/** @throws NOT_FOUND, REFUSED for what cannot be credited */
export function issueCredit(context: Context, input: CreditInput): Promise<{ invoice: Invoice }> {
  return issueInTurn(context, {
    procedure: 'invoices.credit',
    input,
    freeze: (db, now) => {
      const invoice = invoiceRecord(db, input.id);
      if (!invoice) throw notFound('This invoice');
      const earlier = creditNotesOf(db, invoice.id).map(({ content }) => content);
      refuseCredit(db, invoice, earlier, input.lines);
      const setup = setupRow(db)?.fields;
      if (!setup) throw refused('My details are not set up.', 'Fill in Setup first: a paper needs a sender.');
      const credit = creditOf(invoice.content, earlier, input.lines);
      const last = leftOfLines(invoice.content, [...earlier, credit]).every(({ left }) => left.minor === 0);
      const next = nextNumber(db, setup, now);
      return { invoice, setup, next, content: creditNoteContent(invoice.content, credit, last, setup, next, input.reason) };
    },
    put: (db, frozen, paper, now) => {
      const { invoice, next, content } = frozen;
      const id = putOnBooks(db, frozen, paper, now, {
        kind: 'credit note',
        jobId: invoice.jobId,
        clientId: invoice.clientId,
        dueDate: next.issueDate,
        creditsId: invoice.id,
      });
      if (invoice.jobId)
        note(
          db,
          invoice.jobId,
          'invoices.credit',
          `Credit note ${next.number} to ${invoice.number}: ${formatMoney(content.totals.gross, { code: true })}. ${input.reason}`,
          now,
        );
      return { invoice: wholeInvoice(db, context, id) };
    },
  });
}

type Issued = NonNullable<ReturnType<typeof invoiceRecord>>;

function refuseCredit(db: ReadableDb, invoice: Issued, earlier: Issued['content'][], asked: CreditAsked): void {
  if (invoice.kind === 'credit note')
    throw refused(`${invoice.number} is a credit note.`, 'Issue a new bill for what it should not have taken off.');
  const settled = invoice.jobId
    ? invoiceRecordsOf(db, invoice.jobId).find(
        (bill) =>
          bill.content.credited.some(({ invoiceId }) => invoiceId === invoice.id) &&
          leftOfLines(
            bill.content,
            creditNotesOf(db, bill.id).map(({ content }) => content),
          ).some(({ left }) => left.minor !== 0) &&
          bill.kind !== 'credit note',
      )
    : undefined;
  if (settled) throw refused(`${invoice.number} is set off in ${settled.number}.`, `Credit ${settled.number} first, then this one.`);
  const troubles = creditTroubles(invoice.content, earlier, asked);
  if (troubles.length > 0) throw refused(`${invoice.number} cannot be credited like that.`, 'Credit no more than is left.', troubles);
}

type PutAs = Pick<Issued, 'kind' | 'jobId' | 'clientId' | 'dueDate' | 'creditsId'>;

/** The row and its paper, under the number that was frozen. */
function putOnBooks(db: WritableDb, { next, content }: Frozen, paper: Kept, now: number, as: PutAs): string {
  const { series, year, sequence, number, issueDate } = next;
  const isCredit = as.kind === 'credit note';
  const { id: paperId } = insertPaper(db, {
    jobId: as.jobId,
    kind: isCredit ? 'credit note' : 'invoice',
    name: paperName(`${isCredit ? 'Credit note' : 'Invoice'} ${number}`, content.job?.title ?? content.billTo.name),
    type: 'application/pdf',
    ...paper,
    madeAt: now,
  });
  const { totals, toPay, currency, rate } = content;
  return insertInvoice(db, {
    ...as,
    series,
    year,
    sequence,
    number,
    issuedAt: now,
    issueDate,
    currency,
    rate: rate?.rate ?? null,
    rateDate: rate?.date ?? null,
    netMinor: totals.net.minor,
    taxMinor: totals.tax.minor,
    grossMinor: totals.gross.minor,
    toPayMinor: toPay.minor,
    content,
    paperId,
  });
}

function note(db: WritableDb, jobId: string, name: string, sentence: string, now: number): void {
  writeHistory(db, { at: now, subject: 'job', subjectId: jobId, deed: name, sentence });
}
