/**
 * Invoices: drafts, what was issued, what happened to it since, reminders and statements.
 */
import type { DraftKind, Invoice, InvoiceChange, InvoiceDraft } from '../../core/contract/invoices.ts';
import { narrowed } from '../../core/invoices/listed.ts';
import { reminderFor } from '../../core/invoices/reminders.ts';
import { formatMoney } from '../../core/money/format.ts';
import { toneOf } from '../../core/quotes/tone.ts';
import { saveBillChanges, type KeptBillChanges } from '../../db/bill-drafts.ts';
import { addInvoiceNote, invoicesAsOf } from '../../db/invoices.ts';
import { jobById } from '../../db/jobs.ts';
import { writeHistory } from '../../db/keeping.ts';
import { setupRow } from '../../db/setup.ts';
import { billFacts } from './bill-facts.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { issueBill, issueCredit } from './invoice-issue.ts';
import { todayAtHome, wholeInvoice } from './invoice-of.ts';
import { os } from './os.ts';
import { statement, statementPaper } from './statements.ts';
import { badInput, refused, stale } from './trouble.ts';

const draft = os.invoices.draft.handler(({ input, context }) =>
  context.store.read((db) => ({ draft: billFacts(db, input.jobId, input.kind, context.now()).draft })),
);

const change = os.invoices.change.handler(({ input, context }) =>
  redrafted(context, 'invoices.change', input, ({ batches }, before) => {
    const wrong = input.changes.flatMap((each) => troubleOf(each, before));
    if (wrong.length > 0) throw badInput(wrong.map((sentence) => ({ field: 'changes', sentence })));
    return { batches: [...batches, input.changes], sentence: `The draft of the ${nameOf[input.kind]} was changed by hand.` };
  }),
);

const undo = os.invoices.undo.handler(({ input, context }) =>
  redrafted(context, 'invoices.undo', input, ({ batches }) => {
    if (batches.length === 0) throw refused('Nothing was changed by hand on this bill.', 'There is nothing to take back.');
    return { batches: batches.slice(0, -1), sentence: `The last change of the ${nameOf[input.kind]} was taken back.` };
  }),
);

const nameOf: Record<DraftKind, string> = {
  deposit: 'deposit invoice',
  final: 'bill',
  instalment: 'instalment',
  cancellation: 'cancellation bill',
};

/** What a change names that is not there, or does not hold for this kind of bill. */
function troubleOf(each: InvoiceChange, { kind, lines, dropped }: InvoiceDraft): string[] {
  const ofShare = kind === 'deposit' || kind === 'instalment';
  if (each.op === 'ask') return ofShare ? [] : [`asks for an amount; the ${nameOf[kind]} comes from its lines`];
  if (ofShare && ['set', 'add', 'drop', 'restore', 'tax'].includes(each.op))
    return [`changes lines; a ${nameOf[kind]} is changed by how much it asks for`];
  const known = new Set([...lines, ...dropped].map(({ id }) => id));
  const named = each.op === 'tax' ? (each.ids ?? []) : 'id' in each ? [each.id] : [];
  return named.filter((id) => !known.has(id)).map((id) => `names ${id}, which is not a line of this bill`);
}

type DraftInput = { jobId: string; kind: DraftKind; draftVersion: number };
type Redraft = (kept: KeptBillChanges, before: InvoiceDraft) => { batches: KeptBillChanges['batches']; sentence: string };

/** Change what is kept of a draft, against the version that was read; the answer is the draft as it comes out then. */
function redrafted(context: Context, name: string, input: DraftInput, act: Redraft): { draft: InvoiceDraft } {
  return deed(context, name, {}, (db) => {
    const now = context.now();
    const { jobId, kind, draftVersion } = input;
    const before = billFacts(db, jobId, kind, now);
    if (before.kept.draftVersion !== draftVersion) throw stale('The bill', before.draft, input);
    const { batches, sentence } = act(before.kept, before.draft);
    saveBillChanges(db, jobId, kind, { batches, draftVersion: draftVersion + 1 }, now);
    writeHistory(db, { at: now, subject: 'bill draft', subjectId: jobId, deed: name, sentence, before: before.kept.batches });
    return { draft: billFacts(db, jobId, kind, now).draft };
  });
}

const issue = os.invoices.issue.handler(({ input, context }) => issueBill(context, input));
const credit = os.invoices.credit.handler(({ input, context }) => issueCredit(context, input));

const list = os.invoices.list.handler(({ input, context }) =>
  context.store.read((db) => {
    const { jobId, clientId } = input;
    const today = todayAtHome(db, context);
    const rows = invoicesAsOf(db, today, jobId ? { jobId } : clientId ? { clientId } : null);
    return { invoices: narrowed(rows, input) };
  }),
);

const get = os.invoices.get.handler(({ input, context }) => ({
  invoice: context.store.read((db) => wholeInvoice(db, context, input.id)),
}));

type NoteInput = { id: string; key?: string | undefined };

/** Something that happened to an issued paper: `act` says what, or refuses. */
function noted(
  context: Context,
  name: string,
  input: NoteInput,
  act: (invoice: Invoice) => { kind: Parameters<typeof addInvoiceNote>[1]['kind']; words: string; sentence: string },
): { invoice: Invoice } {
  return deed(context, name, input, (db) => {
    const now = context.now();
    const invoice = wholeInvoice(db, context, input.id);
    if (invoice.kind === 'credit note') throw refused(`${invoice.number} is a credit note.`, 'Open the invoice that it turns.');
    const { sentence, ...note } = act(invoice);
    addInvoiceNote(db, { invoiceId: invoice.id, on: todayAtHome(db, context), at: now, ...note });
    if (invoice.jobId) writeHistory(db, { at: now, subject: 'job', subjectId: invoice.jobId, deed: name, sentence });
    return { invoice: wholeInvoice(db, context, input.id) };
  });
}

const dispute = os.invoices.dispute.handler(({ input, context }) =>
  noted(context, 'invoices.dispute', input, ({ number, disputed, open }) => {
    if (input.why === null) {
      if (disputed === null) throw refused(`${number} is not disputed.`, 'Nothing needs settling.');
      return { kind: 'settled', words: '', sentence: `The dispute over ${number} is settled.` };
    }
    if (open.minor === 0) throw refused(`Nothing is open of ${number}.`, 'Credit it, where something is to be given back.');
    return { kind: 'disputed', words: input.why, sentence: `${number} is disputed: ${input.why}.` };
  }),
);

const writeOff = os.invoices.writeOff.handler(({ input, context }) =>
  noted(context, 'invoices.writeOff', input, ({ number, open }) => {
    if (open.minor === 0) throw refused(`Nothing is open of ${number}.`, 'There is nothing to write off.');
    const sentence = `${formatMoney(open, { code: true })} of ${number} was written off: ${input.reason}.`;
    return { kind: 'written off', words: input.reason, sentence };
  }),
);

const reminded = os.invoices.reminded.handler(({ input, context }) =>
  noted(context, 'invoices.reminded', input, (invoice) => {
    refuseReminder(invoice);
    return { kind: 'reminded', words: input.tone, sentence: `A ${input.tone} reminder of ${invoice.number} went out.` };
  }),
);

const reminder = os.invoices.reminder.handler(({ input, context }) =>
  context.store.read((db) => {
    const invoice = wholeInvoice(db, context, input.id);
    refuseReminder(invoice);
    const job = invoice.jobId ? jobById(db, invoice.jobId, context.now()) : undefined;
    const setup = setupRow(db)?.fields;
    if (!setup) throw refused('My details are not set up.', 'Fill in Setup first: a reminder is signed.');
    return reminderFor({
      tone: input.tone,
      voice: toneOf(job?.message ?? null, job?.contact.name ?? ''),
      setup,
      invoice,
      title: invoice.jobTitle,
      today: todayAtHome(db, context),
    });
  }),
);

function refuseReminder({ number, kind, open, disputed }: Invoice): void {
  if (kind === 'credit note' || open.minor === 0) throw refused(`Nothing is open of ${number}.`, 'There is nothing to remind of.');
  if (disputed !== null) throw refused(`${number} is disputed: ${disputed}.`, 'Settle that first; a reminder would not help.');
}

export const invoices = { draft, change, undo, issue, credit, dispute, writeOff, list, get, reminder, reminded, statement, statementPaper };
