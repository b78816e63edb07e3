/**
 * What stands on a quote's paper, as data: strings in their places, nothing about points or fonts.
 */
import type { Job } from '../contract/jobs.ts';
import type { QuoteDraft, QuoteLine, Section } from '../contract/quotes.ts';
import { sections } from '../contract/quotes.ts';
import type { SetupFields } from '../contract/setup.ts';
import { subtract, sum } from '../money/money.ts';
import {
  factOf,
  frameOf,
  isKnown,
  onPaper,
  type PaperFact,
  type PaperFacts,
  type PaperFrame,
  type PaperRow,
  type PaperSection,
  type PaperSign,
  type PaperSum,
  type PaperTable,
} from '../papers/content.ts';
import { rowOf, SECTION_HEADS } from '../papers/rows.ts';
import { plainSum, rateName, taxSums } from '../papers/sums.ts';
import { countInWords } from '../words/amounts.ts';
import { datesInWords, deadlineInWords, paperDate, zoneInWords } from '../words/dates.ts';
import { ended } from '../words/ended.ts';
import { paperLines, paperText } from '../words/letters.ts';
import { billedTo, organisationOf, otherPayer, type Billed, type BilledClient } from './billed.ts';
import { hoursInWords, placeInWords, roleInWords, workDates } from './facts.ts';
import { notesForClient } from './notes.ts';
import { offeredOf, type Offered } from './paper-offers.ts';
import { termsInWords, type Term } from './terms.ts';

/** What a paper is made from; `madeAt` is the instant at which the version was frozen, UTC with Z. */
export type QuotePaperInput = {
  setup: SetupFields;
  job: Pick<Job, 'title' | 'organisation' | 'contact' | 'role' | 'place' | 'days' | 'deliverables' | 'knows'>;
  /** Who gave the job, where that is known. */
  client: BilledClient | undefined;
  draft: QuoteDraft;
  /** Version of the quote, from 1. */
  number: number;
  madeAt: string;
};

export type QuotePaper = PaperFrame &
  PaperTable & {
    /** Whom at the left, when and where at the right; what stands where there is room. */
    facts: PaperFacts;
    deliverables: string[];
    sums: PaperSum[];
    terms: Term[];
    notes: string[];
    sign: PaperSign;
  };

/** The whole content of a quote's paper. Texts come out composed (NFC) and without unseen marks. */
export function quotePaperContent({ setup, job, client, draft, number, madeAt }: QuotePaperInput): QuotePaper {
  const date = Temporal.Instant.from(madeAt).toZonedDateTimeISO(setup.home.zone).toPlainDate().toString();
  const offered = offeredOf(draft);
  const several = offered.length > 1;
  const billed = billedTo(job, client);
  const payer = otherPayer(job, client);
  const price = several ? 'the offer named below' : onPaper(draft.totals.gross, { code: true });
  return {
    ...frameOf(
      setup,
      'Quote',
      `Quote, version ${number}`,
      [`Version ${number}, ${paperDate(date)}`, `valid until ${validity(draft)}`],
      job.title,
    ),
    facts: factsOf(job, client, billed, setup),
    deliverables: job.deliverables.map(paperText).filter((line) => line !== ''),
    columns: { what: 'What', quantity: 'Quantity', price: 'Price', amount: `Amount, ${draft.currency}` },
    sections: offered.flatMap(sectionsOf),
    sums: offered.flatMap(sumsOf),
    terms: termsInWords(draft).map(({ label, text }) => ({ label, text: paperText(text) })),
    notes: notesForClient({ setup, job, draft }),
    sign: {
      head: 'Accepted',
      sentence: `Signing confirms the dates above for ${price}, on the terms above.${payer ? ` ${ended(`The invoices go to ${paperText(payer.name)}`)}` : ''}`,
      fields: [
        ...(several ? ['Offer taken'] : []),
        'Name',
        'Signature',
        'Date',
        ...(billed.order === '' ? ['Your order number, if you need one'] : []),
      ],
    },
  };
}

function validity({ validUntil }: QuoteDraft): string {
  return `${deadlineInWords(validUntil)}, ${zoneInWords(validUntil.zone)} time`;
}

function factsOf(job: QuotePaperInput['job'], client: BilledClient | undefined, billed: Billed, setup: SetupFields): QuotePaper['facts'] {
  const { contact } = job;
  const organisation = organisationOf(job, client);
  const bill = billTo(billed, organisation);
  const what = factOf('Job', [job.title, roleInWords(job.role)]);
  // Whom it is billed to takes the room below whom it is for; what it is about goes over to the other column.
  const facts = {
    left: [factOf('For', [organisation, contact.name, contact.email, contact.phone]), isKnown(bill) ? bill : what],
    right: [
      ...(isKnown(bill) ? [what] : []),
      factOf('Dates', [datesInWords(workDates(job)), ...hoursInWords(job, setup.home)]),
      factOf('Place', [job.place ? placeInWords(job.place, setup.home) : '']),
      factOf('Your order number', [billed.order]),
    ],
  };
  return { left: facts.left.filter(isKnown), right: facts.right.filter(isKnown) };
}

/** Said only where it tells more than whom the paper is for. */
function billTo({ name, address, taxId }: Billed, organisation: string): PaperFact {
  const more = [...paperLines(address), taxId.trim() === '' ? '' : `Tax id ${taxId}`];
  return factOf('Bill to', more.every((line) => line === '') && name === organisation ? [] : [name, ...more]);
}

/** An offer among others begins with a line that names it. */
function sectionsOf({ draft, number, name }: Offered): PaperSection[] {
  const head =
    number === null ? [] : [{ head: `Offer ${number}`, rows: [{ what: paperText(name), quantity: '', unit: '', price: '', amount: '' }] }];
  return [...head, ...sections.map((section) => sectionOf(section, draft)).filter(({ rows }) => rows.length > 0)];
}

function sectionOf(section: Section, { lines }: QuoteDraft): PaperSection {
  return { head: SECTION_HEADS[section], rows: lines.filter((line) => line.section === section).map(quotedRow) };
}

function quotedRow(line: QuoteLine): PaperRow {
  const row = rowOf(line);
  return line.estimated ? { ...row, what: `${row.what}, estimated` } : row;
}

/** Net, taxes and total, then deposit and rest. */
function sumsOf({ draft, number }: Offered): PaperSum[] {
  const { lines, totals, deposit, currency, terms } = draft;
  const inside =
    totals.tax.minor !== 0 &&
    sum(
      currency,
      lines.map((line) => line.amount),
    ).minor === totals.gross.minor;
  const total = `Total ${currency}${number === null ? '' : `, offer ${number}`}`;
  const sums = taxSums({ totals, inside, total, naming: rateName, taxInvoice: false });
  if (!deposit) return sums;
  const due = deposit.due === '' ? '' : `, due ${deposit.due}`;
  const days = terms.payDays === 0 ? 'on receipt of the invoice' : `${countInWords(terms.payDays, 'day')} after the invoice`;
  return [
    ...sums,
    plainSum(paperText(`Deposit${due}`), onPaper(deposit.amount), deposit.note),
    plainSum(`Rest, ${days} at wrap`, onPaper(subtract(totals.gross, deposit.amount))),
  ];
}
