/**
 * What the paper of an invoice or credit note says, frozen when it is issued.
 */
import type { InvoiceContent, InvoiceDraft } from '../contract/invoices.ts';
import type { SetupFields } from '../contract/setup.ts';
import { add, negate, sum } from '../money/money.ts';
import type { Credit } from './credit.ts';

/** The number that it takes, on the date at home, at an instant (UTC with Z). */
export type Numbered = { number: string; issueDate: string; issuedAt: string };

type Sender = Pick<InvoiceContent, 'sender' | 'payTo'>;

/** The sender's picture stands on the paper, and is not kept a second time with each. */
function senderOf(setup: SetupFields): Sender {
  const { name, address, email, phone, registered, taxId, paper, accent, payTo } = setup;
  return {
    sender: { name, address, email, phone, registered, taxId, paper, ...(accent ? { accent } : {}) },
    payTo: payTo ?? { name: '', iban: '', bic: '', words: '' },
  };
}

export function invoiceContent(draft: InvoiceDraft, setup: SetupFields, title: string, of: Numbered): InvoiceContent {
  const { kind, dueDate, billTo, supply, currency, included, totals, credited, toPay, rate, terms } = draft;
  return {
    kind,
    number: of.number,
    issueDate: of.issueDate,
    issuedAt: of.issuedAt,
    dueDate,
    ...senderOf(setup),
    billTo,
    job: { title },
    supply,
    currency,
    included,
    lines: draft.lines.map(({ reason: _reason, estimated: _estimated, changed: _changed, unapproved: _unapproved, ...line }) => line),
    totals,
    credited,
    toPay,
    rate,
    terms,
    credits: null,
  };
}

/**
 * A credit note: what is credited, with every amount turned. The one that leaves nothing of the invoice also gives back what that had set off.
 * @param last nothing is left to credit after it
 */
export function creditNoteContent(
  invoice: InvoiceContent,
  { lines, totals }: Credit,
  last: boolean,
  setup: SetupFields,
  of: Numbered,
  reason: string,
): InvoiceContent {
  const credited = last ? invoice.credited.map(turned) : [];
  const { number, issueDate: date, billTo, job, supply, currency, included, rate } = invoice;
  return {
    kind: 'credit note',
    number: of.number,
    issueDate: of.issueDate,
    issuedAt: of.issuedAt,
    dueDate: null,
    ...senderOf(setup),
    billTo,
    job,
    supply,
    currency,
    included,
    lines: lines.map((line) => ({ ...line, taxes: [...line.taxes] })),
    totals,
    credited,
    toPay: add(
      totals.gross,
      sum(
        currency,
        credited.map(({ gross }) => gross),
      ),
    ),
    rate,
    terms: [],
    credits: { number, date, reason },
  };
}

function turned(off: InvoiceContent['credited'][number]): InvoiceContent['credited'][number] {
  return {
    ...off,
    groups: off.groups.map((group) => ({ ...group, net: negate(group.net), tax: negate(group.tax) })),
    net: negate(off.net),
    tax: negate(off.tax),
    gross: negate(off.gross),
  };
}
