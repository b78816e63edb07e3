/**
 * What a billed job left for each hour away, as it really went, and what pulled it down against the quote that was agreed on.
 * Kept = net billed less what was passed through, expenses, hands, sub-hire, wear and what was given up. Hours = door-out to door-in
 * (at home call to wrap) and edit hours outside them.
 */
import { decimalText, exact, roundHalfAway, type Exact } from '../money/exact.ts';
import { formatMoney } from '../money/format.ts';
import { compare, money, negate, subtract, sum, zero, type Money } from '../money/money.ts';
import { lengthInWords } from '../words/amounts.ts';

/** All amounts in the currency of the bill, none below zero but `credited`. */
export type EarnedFacts = {
  /** Net over all papers of the job, credit notes before they are taken off. */
  billed: Money;
  /** Net of credit notes, below zero. */
  credited: Money;
  /** Net share of what was written off. */
  givenUp: Money;
  /** Mileage, fares and allowances on the bill: they pay for what they cost. */
  passed: Money;
  /** What was spent, charged on or not. */
  spent: Money;
  /** Of that, what was not charged on. */
  notCharged: Money;
  hands: Money;
  subHire: Money;
  wear: Money;
  minutes: { away: number; worked: number; editing: number };
  /** Of the quote that was agreed on. */
  quoted: { perHour: Money; hours: string; hands: Money } | null;
};
export type Earned = {
  kept: Money;
  /** Exact decimal. */
  hours: string;
  perHour: Money;
  quoted: Money | null;
  reason: string;
  pulledDown: string[];
};

/** More than this share of the hours away unpaid is worth a word. */
const MUCH_UNPAID = exact('0.4');

/** @throws CurrencyMixError when an amount is in another currency */
export function earnedOf(facts: EarnedFacts): Earned {
  const { billed, credited, givenUp, passed, spent, hands, subHire, wear, quoted } = facts;
  const kept = sum(billed.currency, [billed, credited, ...[givenUp, passed, spent, hands, subHire, wear].map((cost) => negate(cost))]);
  const hours = hoursOf(facts);
  const perHour = perHourOf(kept, hours);
  return {
    kept,
    hours: decimalText(hours, 2),
    perHour,
    quoted: quoted?.perHour ?? null,
    reason: reasonOf(facts, kept, hours),
    pulledDown: pulls(facts, perHour, hours),
  };
}

/** The same over several jobs of one currency; null where they took no time. */
export function earnedTogether(jobs: readonly Pick<Earned, 'kept' | 'hours'>[]): Money | null {
  const [first] = jobs;
  if (!first) return null;
  const hours = jobs.reduce((all, job) => all.add(exact(job.hours)), exact(0));
  if (hours.lte(0)) return null;
  return perHourOf(
    sum(
      first.kept.currency,
      jobs.map(({ kept }) => kept),
    ),
    hours,
  );
}

const hoursOf = ({ minutes }: EarnedFacts): Exact => exact(minutes.away + minutes.editing).div(60n);

function perHourOf(kept: Money, hours: Exact): Money {
  return hours.gt(0) ? money(roundHalfAway(exact(kept.minor).div(hours)), kept.currency) : zero(kept.currency);
}

const minutesOf = (hours: Exact): number => Number(roundHalfAway(hours.mul(60n)));

function reasonOf(facts: EarnedFacts, kept: Money, hours: Exact): string {
  const { billed, credited, givenUp, passed, spent, hands, subHire, wear, minutes } = facts;
  const less = [
    [negate(credited), 'credited'],
    [givenUp, 'written off'],
    [passed, 'passed through'],
    [spent, 'expenses'],
    [hands, 'hands'],
    [subHire, 'sub-hire'],
    [wear, 'wear'],
  ] as const;
  const parts = less.filter(([amount]) => amount.minor !== 0).map(([amount, what]) => `${formatMoney(amount)} ${what}`);
  const from = `${formatMoney(billed, { code: true })} net billed${parts.length > 0 ? ` less ${parts.join(', ')}` : ''}: ${formatMoney(kept)} kept.`;
  const unpaid = Math.max(0, minutes.away - minutes.worked);
  const spread = [
    minutes.worked > 0 ? `${lengthInWords(minutes.worked)} on the clock` : '',
    unpaid > 0 ? `${lengthInWords(unpaid)} on the way or waiting` : '',
    minutes.editing > 0 ? `${lengthInWords(minutes.editing)} editing` : '',
  ].filter((part) => part !== '');
  return `${from} ${lengthInWords(minutesOf(hours))} away: ${spread.join(', ')}.`;
}

function pulls(facts: EarnedFacts, perHour: Money, hours: Exact): string[] {
  const { credited, givenUp, notCharged, hands, minutes, quoted } = facts;
  const below = quoted !== null && compare(perHour, quoted.perHour) < 0;
  const longer = quoted ? minutesOf(hours) - minutesOf(exact(quoted.hours)) : 0;
  const dearer = quoted ? subtract(hands, quoted.hands) : zero(hands.currency);
  const unpaid = minutes.away - minutes.worked;
  const muchUnpaid = minutes.away > 0 && exact(unpaid).div(exact(minutes.away)).gt(MUCH_UNPAID);
  return [
    credited.minor < 0 ? `Credit notes took ${formatMoney(negate(credited))}.` : '',
    givenUp.minor > 0 ? `${formatMoney(givenUp)} was written off.` : '',
    notCharged.minor > 0 ? `${formatMoney(notCharged)} of expenses was not charged on.` : '',
    below && dearer.minor > 0 ? `Hands cost ${formatMoney(dearer)} more than quoted.` : '',
    below && longer > 0 ? `It took ${lengthInWords(longer)} more than quoted.` : '',
    muchUnpaid ? `${lengthInWords(unpaid)} of ${lengthInWords(minutes.away)} away was on the way or waiting.` : '',
  ].filter((sentence) => sentence !== '');
}
