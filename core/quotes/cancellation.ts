/**
 * What a cancellation or a postponement owes, by the scale that was frozen into the quote. Instants count, not dates, unless its terms say business days.
 */
import type { Cancellation, QuoteDraft, Section } from '../contract/quotes.ts';
import { decimalText, exact } from '../money/exact.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { add, compare, percentOf, subtract, zero, type Money } from '../money/money.ts';
import { closedDates } from '../people/closed.ts';
import { businessDaysBefore, type HolidayDates } from '../time/business.ts';
import { wallAt } from '../time/read.ts';
import { countInWords, lengthInWords } from '../words/amounts.ts';

/** Work that cannot be sold again; what is passed on as it is counts only once it is bound. */
export const cancelSections: readonly Section[] = ['days', 'kit', 'editing'];
/** Common practice: a date agreed anew within 30 days of the notice owes half of the scale. */
const POSTPONED_SHARE = '50';
const AGREED_WITHIN_DAYS = 30;

export type CancelInput = {
  draft: Pick<QuoteDraft, 'cancelBase' | 'terms' | 'clientClosed'>;
  /** Epoch milliseconds. */
  firstCallAt: number;
  at: number;
  /** My home: its clock and its public holidays, for terms that count business days. */
  home: { zone: string; holidays: HolidayDates };
  /** When a new date was agreed, epoch milliseconds; null where there is none, and the job is cancelled. */
  agreedAt: number | null;
  /** Costs already bound (rooms, tickets, sub-hire), owed in full. */
  bound: Money;
  depositPaid: Money;
};

type Step = QuoteDraft['terms']['cancellation'][number];
/** A notice as terms count it: whether it is strictly under a step, and how a sentence begins that says so. */
type Notice = { under: (step: Step) => boolean; words: string };

/** A step in business days: each started 24 hours are one. */
export function businessDaysOf(hours: number): number {
  return Math.ceil(hours / 24);
}

/** The share of the base owed under a notice in milliseconds, per cent: of the steps that it is strictly under, the shortest. */
export function cancelPercent(noticeMs: number, steps: readonly Step[]): string {
  return percentUnder(inHours(noticeMs), steps);
}

/** Whether a new date was agreed soon enough after the notice; both in epoch milliseconds, the last instant counts. */
function agreedInTime(at: number, agreedAt: number): boolean {
  return agreedAt - at <= AGREED_WITHIN_DAYS * 86_400_000;
}

function percentUnder({ under }: Notice, steps: readonly Step[]): string {
  return steps.toSorted((a, b) => a.underHours - b.underHours).find(under)?.percent ?? '0';
}

function inHours(noticeMs: number): Notice {
  return {
    under: ({ underHours }) => noticeMs < underHours * 3_600_000,
    words: noticeMs > 0 ? `${lengthInWords(Math.floor(noticeMs / 60_000))} before first call` : 'At or after first call',
  };
}

/** Dates are those at my home; the day of notice counts, that of the call does not (common practice). */
function inBusinessDays({ firstCallAt, at, home, draft }: CancelInput): Notice {
  const dateOf = (epochMs: number): string => wallAt(epochMs, home.zone).slice(0, 10);
  const without = (holidays: HolidayDates): number => businessDaysBefore(dateOf(firstCallAt), dateOf(at), holidays);
  const days = without(home.holidays.union(closedDates(draft.clientClosed ?? [])));
  const closed = without(home.holidays) - days;
  const count = days === 0 ? 'No business day' : countInWords(days, 'business day');
  const leftOut = closed === 0 ? '' : `, ${countInWords(closed, 'day')} of the client's own holidays left out`;
  return {
    under: ({ underHours }) => days < businessDaysOf(underHours),
    words: `${count} before first call, the day of notice counted and that of the call not${leftOut}:`,
  };
}

/**
 * What is owed when a job is called off at an instant.
 * @throws CurrencyMixError when bound costs or deposit are in another currency than the quote
 */
export function cancellationOf(input: CancelInput): Cancellation {
  const { draft, firstCallAt, at, agreedAt, bound, depositPaid } = input;
  const base = draft.cancelBase;
  const noticeMs = firstCallAt - at;
  const byDays = draft.terms.cancelBy === 'business days';
  const notice = byDays ? inBusinessDays(input) : inHours(noticeMs);
  const onScale = percentUnder(notice, draft.terms.cancellation);
  const postponed = agreedAt !== null && agreedInTime(at, agreedAt);
  const percent = postponed ? exact(onScale).mul(exact(POSTPONED_SHARE)).div(100n) : exact(onScale);
  const fee = percentOf(base, percent);
  const total = add(fee, bound);
  const left = subtract(total, depositPaid);
  const none = zero(base.currency);
  const half = postponed
    ? `, half of it for a date agreed anew within ${AGREED_WITHIN_DAYS} days: ${formatNumber(percent)} %`
    : agreedAt === null
      ? ''
      : `, all of it because the new date was agreed more than ${AGREED_WITHIN_DAYS} days after the notice`;
  const costs = bound.minor > 0 ? `, and ${formatMoney(bound)} of costs already bound` : '';
  return {
    noticeHours: noticeMs / 3_600_000,
    percent: decimalText(percent),
    base,
    fee,
    bound,
    total,
    deposit: depositPaid,
    owed: compare(left, none) > 0 ? left : none,
    paidBack: compare(left, none) < 0 ? subtract(none, left) : none,
    reason: `${notice.words} the scale says ${formatNumber(onScale)} % of ${formatMoney(base)} for days, kit and editing${half}${costs}.`,
    caution: `Whether tax is due on it is for your tax adviser to say.${byDays ? ' Public holidays at home are those of a public list: look at them.' : ''}`,
  };
}
