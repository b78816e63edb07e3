/**
 * What stands on a quote's paper, as data: strings in their places, nothing about points or fonts.
 */
import type { Job } from '../contract/jobs.ts';
import type { QuoteDraft, QuoteLine, Section } from '../contract/quotes.ts';
import { sections } from '../contract/quotes.ts';
import type { Logo, SetupFields } from '../contract/setup.ts';
import { formatMoney, formatNumber, formatPrice } from '../money/format.ts';
import { subtract, sum } from '../money/money.ts';
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

/** A heading with the lines under it. */
type PaperFact = { label: string; lines: string[] };
export type PaperRow = { what: string; quantity: string; unit: string; price: string; amount: string };
type PaperSection = { head: string; rows: PaperRow[] };
/** A line of the sum: what, how much, and a small remark under it. */
export type PaperSum = { label: string; amount: string; note: string; weight: 'plain' | 'total' };

export type QuotePaper = {
  size: SetupFields['paper'];
  title: string;
  sender: { name: string; lines: string[]; logo: Logo | null };
  /** `#rrggbb` of the strong rules, null for ink. */
  accent: string | null;
  head: string;
  about: string[];
  /** Whom at the left, when and where at the right; what stands where there is room. */
  facts: { left: PaperFact[]; right: PaperFact[] };
  deliverables: string[];
  columns: { what: string; quantity: string; price: string; amount: string };
  sections: PaperSection[];
  sums: PaperSum[];
  terms: Term[];
  notes: string[];
  sign: { head: string; sentence: string; fields: string[] };
  foot: string;
  page: (page: number, of: number) => string;
};

const HEADS: Record<Section, string> = {
  days: 'Days',
  kit: 'Kit',
  travel: 'Travel',
  allowances: 'Allowances',
  editing: 'Editing',
  extras: 'Licences and extras',
  rush: 'Rush',
  discount: 'Discount',
};

/** The whole content of a quote's paper. Texts come out composed (NFC) and without unseen marks. */
export function quotePaperContent({ setup, job, client, draft, number, madeAt }: QuotePaperInput): QuotePaper {
  const name = paperText(setup.name);
  const title = paperText(job.title);
  const date = Temporal.Instant.from(madeAt).toZonedDateTimeISO(setup.home.zone).toPlainDate().toString();
  const offered = offeredOf(draft);
  const several = offered.length > 1;
  const billed = billedTo(job, client);
  const payer = otherPayer(job, client);
  const price = several ? 'the offer named below' : signed(formatMoney(draft.totals.gross, { code: true }));
  return {
    size: setup.paper,
    title: `Quote, version ${number}: ${title}`,
    sender: { name, lines: senderLines(setup), logo: setup.logo ?? null },
    accent: setup.accent ?? null,
    head: 'Quote',
    about: [`Version ${number}, ${paperDate(date)}`, `valid until ${validity(draft)}`],
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
    foot: `${name} · Quote, version ${number} · ${title}`,
    page: (page, of) => `page ${page} of ${of}`,
  };
}

function senderLines(setup: SetupFields): string[] {
  const reach = [setup.email, setup.phone].map(paperText).filter((text) => text !== '');
  return [
    paperLines(setup.address).join(', '),
    reach.join(' · '),
    setup.registered && setup.taxId !== '' ? `Tax id ${paperText(setup.taxId)}` : '',
  ].filter((line) => line !== '');
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

function isKnown({ lines }: PaperFact): boolean {
  return lines.length > 0;
}

function factOf(label: string, lines: readonly string[]): PaperFact {
  return { label, lines: lines.map(paperText).filter((line) => line !== '') };
}

/** An offer among others begins with a line that names it. */
function sectionsOf({ draft, number, name }: Offered): PaperSection[] {
  const head =
    number === null ? [] : [{ head: `Offer ${number}`, rows: [{ what: paperText(name), quantity: '', unit: '', price: '', amount: '' }] }];
  return [...head, ...sections.map((section) => sectionOf(section, draft)).filter(({ rows }) => rows.length > 0)];
}

function sectionOf(section: Section, { lines, currency }: QuoteDraft): PaperSection {
  return { head: HEADS[section], rows: lines.filter((line) => line.section === section).map((line) => rowOf(line, currency)) };
}

/** A sum that is not counted in anything (one, without a unit) shows its amount alone. */
function rowOf(line: QuoteLine, currency: string): PaperRow {
  const counted = line.unit !== '' || formatNumber(line.quantity) !== '1';
  return {
    what: paperText(line.what) + (line.estimated ? ', estimated' : ''),
    quantity: counted ? signed(formatNumber(line.quantity)) : '',
    unit: paperText(line.unit),
    price: counted ? signed(formatPrice(line.unitPrice, currency)) : '',
    amount: signed(formatMoney(line.amount)),
  };
}

/**
 * Net, each tax group, the total, then deposit and rest. Where lines bear their tax inside, the total comes first and the taxes say "of which".
 */
function sumsOf({ draft, number }: Offered): PaperSum[] {
  const { lines, totals, deposit, currency, terms } = draft;
  const ofOffer = number === null ? '' : `, offer ${number}`;
  const plain = (label: string, amount: PaperSum['amount'], note = ''): PaperSum => ({
    label,
    amount,
    note: paperText(note),
    weight: 'plain',
  });
  const inside =
    totals.tax.minor !== 0 &&
    sum(
      currency,
      lines.map((line) => line.amount),
    ).minor === totals.gross.minor;
  const net = plain(inside ? 'Of which net' : 'Net', signed(formatMoney(totals.net)));
  const groups = totals.taxes.map((group) =>
    plain(
      `${inside ? 'Of which ' : ''}${paperText(group.name)} ${formatNumber(group.percent)} % on ${signed(formatMoney(group.net))}`,
      signed(formatMoney(group.tax)),
      group.note,
    ),
  );
  // A single group without tax has nothing to add up: its reason stands under the total, unless it is the tax itself that is not charged.
  const [only, ...others] = totals.taxes;
  const relieved = totals.taxes.some(({ state }) => state === 'exempt' || state === 'reverse charge');
  const untaxed = totals.tax.minor === 0 && others.length === 0 && !relieved ? paperText(only?.note ?? '') : '';
  const total: PaperSum = {
    label: `Total ${currency}${ofOffer}`,
    amount: signed(formatMoney(totals.gross)),
    note: untaxed,
    weight: 'total',
  };
  const taxed = totals.tax.minor !== 0 || groups.length > 1 || relieved;
  const sums = inside ? [total, net, ...groups] : [...(taxed ? [net, ...groups] : []), total];
  if (!deposit) return sums;
  const due = deposit.due === '' ? '' : `, due ${deposit.due}`;
  const days = terms.payDays === 0 ? 'on receipt of the invoice' : `${countInWords(terms.payDays, 'day')} after the invoice`;
  return [
    ...sums,
    plain(paperText(`Deposit${due}`), signed(formatMoney(deposit.amount)), deposit.note),
    plain(`Rest, ${days} at wrap`, signed(formatMoney(subtract(totals.gross, deposit.amount)))),
  ];
}

/** A true minus sign before figures, as wide as a digit. */
function signed(figures: string): string {
  return figures.replace('-', '−');
}
