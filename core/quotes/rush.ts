/**
 * Rush: a share of the section "days" when there is little notice, and of those edits that are due inside it.
 */
import type { RateCardFields } from '../contract/rates.ts';
import { exact } from '../money/exact.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { majorOf, sum, type Money } from '../money/money.ts';
import { lengthInWords } from '../words/amounts.ts';
import { joined } from '../words/lists.ts';
import type { PricedLine } from './line.ts';

/** The step that a notice falls under: strictly under its hours; of several the shortest. Notice in milliseconds. */
function rushStep(noticeMs: number, steps: RateCardFields['rush']): RateCardFields['rush'][number] | undefined {
  return steps.toSorted((a, b) => a.underHours - b.underHours).find((step) => noticeMs < step.underHours * 3_600_000);
}

/**
 * The rush line, on the amounts of the section "days" before any discount.
 * @param noticeMs from received to first call, milliseconds
 */
export function rushLine(noticeMs: number, steps: RateCardFields['rush'], daysAmount: Money): PricedLine[] {
  const step = rushStep(noticeMs, steps);
  if (!step || exact(step.percent).equals(0) || daysAmount.minor <= 0) return [];
  const notice =
    noticeMs > 0 ? `${lengthInWords(Math.floor(noticeMs / 60_000))} from the message to first call` : 'The message came after first call';
  return [
    {
      id: 'rush/notice',
      section: 'rush',
      what: `Rush, under ${hoursInWords(step.underHours)}, ${formatNumber(step.percent)} % of days`,
      quantity: exact(1),
      unit: '',
      unitPrice: majorOf(daysAmount).mul(exact(step.percent)).div(100n),
      reason: `${notice}, under ${hoursInWords(step.underHours)}: ${formatNumber(step.percent)} % of ${formatMoney(daysAmount)} for days, before any discount.`,
      estimated: false,
      changed: false,
    },
  ];
}

/** An edit line with its due date. */
export type DueEdit = { what: string; amount: Money; dueAt: number };

/**
 * Rush on edits: for each step one line, on the amounts of exactly those edits that are due strictly inside it, before any discount.
 * @param receivedAt instant of the message, epoch milliseconds as the due instants are
 */
export function editRushLines(
  edits: readonly DueEdit[],
  receivedAt: number,
  steps: RateCardFields['rush'],
  currency: string,
): PricedLine[] {
  const inside = edits.flatMap((edit) => {
    const step = rushStep(edit.dueAt - receivedAt, steps);
    return step && !exact(step.percent).equals(0) && edit.amount.minor > 0 ? [{ edit, step }] : [];
  });
  return [...Map.groupBy(inside, ({ step }) => step)].map(([step, due]) => {
    const amount = sum(
      currency,
      due.map(({ edit }) => edit.amount),
    );
    const each = due.map(({ edit }) => `${edit.what} is due ${sinceMessage(edit.dueAt - receivedAt)}`);
    return {
      id: `rush/editing-${step.underHours}h`,
      section: 'rush',
      what: `Rush, under ${hoursInWords(step.underHours)}, ${formatNumber(step.percent)} % of ${joined(due.map(({ edit }) => edit.what))}`,
      quantity: exact(1),
      unit: '',
      unitPrice: majorOf(amount).mul(exact(step.percent)).div(100n),
      reason: `${joined(each)}, under ${hoursInWords(step.underHours)}: ${formatNumber(step.percent)} % of ${formatMoney(amount)} for editing, before any discount.`,
      estimated: false,
      changed: false,
    };
  });
}

function sinceMessage(ms: number): string {
  return ms > 0 ? `${lengthInWords(Math.floor(ms / 60_000))} after the message` : 'before the message';
}

function hoursInWords(hours: number): string {
  return hours > 72 && hours % 24 === 0 ? `${hours / 24} days` : `${hours} h`;
}
