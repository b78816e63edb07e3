/**
 * What stands on the paper of an invoice or a credit note, as data. It holds what a tax invoice must where the sender is registered:
 * VAT Regulations 1995 reg. 14(1), Directive 2006/112/EC Art. 226.
 */
import type { InvoiceContent, InvoiceKind } from '../contract/invoices.ts';
import {
  factOf,
  frameOf,
  isKnown,
  onPaper,
  typedBySender,
  type PaperFacts,
  type PaperFrame,
  type PaperPay,
  type PaperSum,
  type PaperTable,
} from '../papers/content.ts';
import { payOf, typedOfAccount } from '../papers/pay.ts';
import { countryInWords } from '../words/countries.ts';
import { paperDate, paperSpan } from '../words/dates.ts';
import { paperLines, paperText, type TypedText } from '../words/letters.ts';
import { billTable } from './paper-rows.ts';
import { billSums, rateInWords } from './paper-sums.ts';

export type InvoicePaper = PaperFrame &
  PaperTable & {
    /** Whom it is billed to at the left, what for at the right. */
    facts: PaperFacts;
    sums: PaperSum[];
    /** Null where nothing is to pay, or nothing is known of how. */
    pay: PaperPay | null;
    notes: string[];
  };

const HEADS: Record<InvoiceKind, string> = {
  deposit: 'Deposit invoice',
  final: 'Invoice',
  instalment: 'Instalment invoice',
  cancellation: 'Cancellation invoice',
  'credit note': 'Credit note',
};

/** The whole content of the paper. Texts come out composed (NFC) and without unseen marks. */
export function invoicePaperContent(content: InvoiceContent): InvoicePaper {
  const { kind, number, issueDate, sender, job, credits } = content;
  const head = HEADS[kind];
  const named = `${head} ${paperText(number)}`;
  const due = isAsked(content) ? [`due ${dueInWords(content)}`] : [];
  return {
    ...frameOf(sender, head, named, [`Number ${paperText(number)}`, paperDate(issueDate), ...due], job?.title ?? ''),
    facts: { left: [billedFact(content)].filter(isKnown), right: rightFacts(content).filter(isKnown) },
    ...billTable(content),
    sums: billSums(content),
    pay: payOfBill(content),
    notes: [
      rateInWords(content),
      ...(credits
        ? [
            `This credit note takes the amount above off invoice ${credits.number} of ${paperDate(credits.date)}. If you have paid more than is left of it, the rest is your credit or is paid back.`,
          ]
        : content.terms),
    ]
      .map(paperText)
      .filter((text) => text !== ''),
  };
}

function billedFact({ billTo: { name, address, taxId, country } }: InvoiceContent) {
  const lines = paperLines(address);
  const land = country === null ? '' : countryInWords(country);
  const said = lines.some((line) => line.toLowerCase().includes(land.toLowerCase()));
  return factOf('Bill to', [name, ...lines, said ? '' : land, taxId.trim() === '' ? '' : `Tax id ${taxId}`]);
}

function rightFacts({ kind, job, supply, billTo, credits }: InvoiceContent) {
  const when = supply === null ? '' : paperSpan(supply.from, supply.to);
  return [
    factOf('Job', [job?.title ?? '']),
    // What is paid on account is for work that is still to come.
    factOf(kind === 'deposit' ? 'For work on' : 'Date of supply', [when]),
    factOf('Your order number', [billTo.order]),
    factOf('Credits', credits ? [`Invoice ${credits.number} of ${paperDate(credits.date)}`, credits.reason] : []),
  ];
}

/** A credit note asks for nothing, nor does a bill on which less is owed than was billed before. */
function isAsked({ kind, toPay }: InvoiceContent): boolean {
  return kind !== 'credit note' && toPay.minor > 0;
}

function dueInWords({ issueDate, dueDate }: InvoiceContent): string {
  return dueDate === null || dueDate === issueDate ? 'on receipt' : paperDate(dueDate);
}

function payOfBill(content: InvoiceContent): PaperPay | null {
  if (!isAsked(content)) return null;
  const { payTo, toPay } = content;
  const due = dueInWords(content);
  const reference = paperText(content.number);
  const what = `${onPaper(toPay, { code: true })} ${due === 'on receipt' ? due : `by ${due}`}`;
  return payOf(payTo, { what, amount: toPay, reference, coded: `Invoice ${reference}` });
}

/** Every text on it that somebody typed, in the order in which they stand on the paper. */
export function typedOnInvoice({
  sender,
  payTo,
  billTo,
  job,
  number,
  lines,
  totals,
  credited,
  credits,
  terms,
}: InvoiceContent): TypedText[] {
  return [
    ...typedBySender(sender),
    { field: 'the series of your numbers', text: [number, ...credited.map((one) => one.number)].join(' ') },
    { field: 'the billing name', text: billTo.name },
    { field: 'the billing address', text: billTo.address },
    { field: "the client's tax id", text: billTo.taxId },
    { field: "the client's order number", text: billTo.order },
    { field: "the job's title", text: job?.title ?? '' },
    { field: 'the reason of the credit', text: credits?.reason ?? '' },
    ...lines.map(({ what, unit, section }, index) => ({ field: `line ${index + 1} of the invoice`, text: `${what} ${unit} ${section}` })),
    ...totals.taxes.map(({ name, note }) => ({ field: 'a tax and its note', text: `${name} ${note}` })),
    ...typedOfAccount(payTo),
    { field: 'your terms', text: terms.join(' ') },
  ];
}
