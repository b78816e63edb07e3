/**
 * A draft bill put together: its lines, what they come to, what was billed before, when it is due, and what is still missing.
 */
import type { DraftKind, InvoiceDraft } from '../contract/invoices.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { negate } from '../money/money.ts';
import { dateLater } from '../time/wall.ts';
import { countInWords } from '../words/amounts.ts';
import { dateInWords, paperDate } from '../words/dates.ts';
import type { Asked } from './asked.ts';
import type { BillLine } from './bill-lines.ts';
import { setOff, toPayOf, type IssuedDeposit } from './deposit.ts';
import { sumsOf } from './lines.ts';

export type DraftFacts = {
  jobId: string;
  kind: DraftKind;
  draftVersion: number;
  undoable: number;
  currency: string;
  /** Currency of my home. */
  home: string;
  included: boolean;
  /** Only what came after the last bill. */
  later?: true;
  billTo: InvoiceDraft['billTo'];
  lines: BillLine[];
  dropped: InvoiceDraft['dropped'];
  /** Deposits and instalments that this bill sets off. */
  before: readonly IssuedDeposit[];
  supply: InvoiceDraft['supply'];
  /** Today at home: the issue date if it is issued now. */
  today: string;
  payDays: number;
  /** A deposit is due by first call; null where that is not known or past. */
  dueBy: string | null;
  /** Per cent a year, or none. */
  lateInterest: string | null;
  series: string;
  asked: Asked;
  differences: string[];
  missing: string[];
  cautions: string[];
};

/** @throws RangeError when a sum is past what is reckoned with */
export function draftOf(facts: DraftFacts): InvoiceDraft {
  const { jobId, kind, draftVersion, undoable, currency, included, billTo, lines, dropped, series, asked, today } = facts;
  const totals = sumsOf(currency, lines, included);
  const credited = setOff(facts.before);
  const toPay = toPayOf(totals, credited);
  const dueDate = asked.due ?? usualDue(facts);
  const supply = asked.supply ?? facts.supply;
  const rate = currency === facts.home || !asked.rate ? null : { ...asked.rate, home: facts.home };
  return {
    jobId,
    kind,
    draftVersion,
    currency,
    included,
    ...(facts.later ? { later: true } : {}),
    billTo,
    lines: lines.map((line) => ({ ...line, taxes: [...line.taxes] })),
    dropped,
    credited,
    totals,
    toPay,
    supply,
    dueDate,
    rate,
    note: asked.note,
    terms: termsOf(facts, dueDate),
    series,
    differences: facts.differences,
    missing: [
      ...facts.missing,
      ...(lines.length === 0 && facts.missing.length === 0 ? ['At least one line.'] : []),
      ...(billTo.name === '' ? ['Whom to bill: name the client of the job, or who pays.'] : []),
      ...(dueDate < today ? [`Its due date ${dateInWords(dueDate)} is over; give a later one.`] : []),
      ...(currency !== facts.home && !rate
        ? [`The exchange rate: ${facts.home} for one ${currency}${supply ? ` on ${dateInWords(supply.to)}` : ''}.`]
        : []),
    ],
    cautions: [
      ...facts.cautions,
      ...(toPay.minor < 0
        ? [
            `More was billed before than is owed: ${formatMoney(negate(toPay), { code: true })} stands to the client's credit and can be paid back.`,
          ]
        : []),
    ],
    undoable,
  };
}

function usualDue({ kind, today, payDays, dueBy }: DraftFacts): string {
  const due = dateLater(today, payDays);
  return kind === 'deposit' && dueBy !== null && dueBy >= today && dueBy < due ? dueBy : due;
}

function termsOf({ asked, lateInterest, today, payDays }: DraftFacts, dueDate: string): string[] {
  const within =
    asked.due === undefined && dueDate === dateLater(today, payDays) && payDays > 0 ? `, within ${countInWords(payDays, 'day')}` : '';
  return [
    asked.note,
    dueDate === today ? 'Due on receipt.' : `Due by ${paperDate(dueDate)}${within}.`,
    lateInterest === null || Number(lateInterest) === 0
      ? ''
      : `What is paid later bears simple interest of ${formatNumber(lateInterest)} % a year from the day after.`,
  ].filter((sentence) => sentence !== '');
}
