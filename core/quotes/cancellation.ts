/**
 * What a cancellation or a postponement owes, by the scale that was frozen into the quote. Instants count, not dates.
 */
import type { Cancellation, QuoteDraft, Section } from '../contract/quotes.ts';
import { decimalText, exact } from '../money/exact.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { add, compare, percentOf, subtract, zero, type Money } from '../money/money.ts';
import { lengthInWords } from '../words/amounts.ts';

/** Work that cannot be sold again; what is passed on as it is counts only once it is bound. */
export const cancelSections: readonly Section[] = ['days', 'kit', 'editing'];
/** Common practice: a date agreed anew within 30 days owes half of the scale. */
const POSTPONED_SHARE = '50';

export type CancelInput = {
  draft: Pick<QuoteDraft, 'cancelBase' | 'terms'>;
  /** Epoch milliseconds. */
  firstCallAt: number;
  at: number;
  postponed: boolean;
  /** Costs already bound (rooms, tickets, sub-hire), owed in full. */
  bound: Money;
  depositPaid: Money;
};

/** The share of the base owed under a notice in milliseconds, per cent: of the steps that it is strictly under, the shortest. */
export function cancelPercent(noticeMs: number, steps: QuoteDraft['terms']['cancellation']): string {
  const step = steps.toSorted((a, b) => a.underHours - b.underHours).find(({ underHours }) => noticeMs < underHours * 3_600_000);
  return step?.percent ?? '0';
}

/**
 * What is owed when a job is called off at an instant.
 * @throws CurrencyMixError when bound costs or deposit are in another currency than the quote
 */
export function cancellationOf({ draft, firstCallAt, at, postponed, bound, depositPaid }: CancelInput): Cancellation {
  const base = draft.cancelBase;
  const noticeMs = firstCallAt - at;
  const onScale = cancelPercent(noticeMs, draft.terms.cancellation);
  const percent = postponed ? exact(onScale).mul(exact(POSTPONED_SHARE)).div(100n) : exact(onScale);
  const fee = percentOf(base, percent);
  const total = add(fee, bound);
  const left = subtract(total, depositPaid);
  const none = zero(base.currency);
  const notice = noticeMs > 0 ? `${lengthInWords(Math.floor(noticeMs / 60_000))} before first call` : 'At or after first call';
  const half = postponed ? `, half of it for a date agreed anew within 30 days: ${formatNumber(percent)} %` : '';
  const costs = bound.minor > 0 ? `, and ${formatMoney(bound)} of costs already bound` : '';
  return {
    noticeHours: noticeMs / 3_600_000,
    percent: decimalText(percent),
    base,
    fee,
    bound,
    total,
    owed: compare(left, none) > 0 ? left : none,
    paidBack: compare(left, none) < 0 ? subtract(none, left) : none,
    reason: `${notice} the scale says ${formatNumber(onScale)} % of ${formatMoney(base)} for days, kit and editing${half}${costs}.`,
    caution: 'Whether tax is due on it is for your tax adviser to say.',
  };
}
