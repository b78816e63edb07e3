/**
 * Rush: a share of the section "days" when there is little notice.
 */
import type { RateCardFields } from '../contract/rates.ts';
import { exact } from '../money/exact.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { majorOf, type Money } from '../money/money.ts';
import { lengthInWords } from '../words/amounts.ts';
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

function hoursInWords(hours: number): string {
  return hours > 72 && hours % 24 === 0 ? `${hours / 24} days` : `${hours} h`;
}
