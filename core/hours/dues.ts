/**
 * What I owe hands for a job, by the days that they worked, and what was paid.
 */
import type { HandDue } from '../contract/hours.ts';
import type { Hand } from '../contract/people.ts';
import type { Role } from '../contract/parts.ts';
import type { QuoteCost } from '../contract/quotes.ts';
import { exact, type Exact } from '../money/exact.ts';
import { formatMoney, formatNumber, formatPrice } from '../money/format.ts';
import { add, amountOf, money, subtract, sum, zero, type Money } from '../money/money.ts';
import { ratesOn } from '../people/hand-rates.ts';
import { plural } from '../quotes/line.ts';
import { dateLater } from '../time/wall.ts';
import { dateInWords, datesInWords } from '../words/dates.ts';
import { finished, type FinishedHours, type WorkedHours } from './worked.ts';

export type HandPaid = { handId: string; amount: Money };
export type DueFacts = {
  job: { id: string; title: string; role: Role };
  /** Everybody who worked on it, stands in its quote or was paid. */
  hands: readonly Hand[];
  worked: readonly WorkedHours[];
  /** Costs of the quote that was agreed on; a hand of whom no hours are known counts as it was quoted. */
  costs: readonly QuoteCost[];
  paid: readonly HandPaid[];
  /** The date of the job's last wrap, null where it has no days. */
  lastDate: string | null;
};

/**
 * One due for each hand and currency, in order of names. A date with hours is a day at the rate of its date, a half day half of one
 * (common practice); what is agreed beyond that is paid as it is typed.
 */
export function handDues(facts: DueFacts): HandDue[] {
  return facts.hands
    .toSorted((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((hand) => {
      const { amounts, reason, lastDate, cautions } = costOf(hand, facts);
      const paid = facts.paid.filter(({ handId }) => handId === hand.id).map(({ amount }) => amount);
      const currencies = [...new Set([...amounts, ...paid].map(({ currency }) => currency))];
      const due = lastDate === null ? null : dateLater(lastDate, hand.payDays);
      return currencies.map((currency): HandDue => {
        const of = (all: readonly Money[]): Money =>
          sum(
            currency,
            all.filter((each) => each.currency === currency),
          );
        const amount = of(amounts);
        const left = subtract(amount, of(paid));
        const { id: jobId, title } = facts.job;
        return { handId: hand.id, name: hand.name, jobId, title, amount, paid: of(paid), open: notBelowZero(left), due, reason, cautions };
      });
    });
}

type Cost = { amounts: Money[]; reason: string; lastDate: string | null; cautions: string[] };

function costOf(hand: Hand, facts: DueFacts): Cost {
  const days = finished(facts.worked).filter(({ handId }) => handId === hand.id);
  if (days.length > 0) return workedCost(hand, days, facts.job.role);
  const quoted = facts.costs.find(({ id }) => id === `hand/${hand.id}`);
  if (!quoted) return { amounts: [], reason: 'No hours of theirs are entered.', lastDate: null, cautions: [] };
  return {
    amounts: [quoted.amount],
    reason: `As quoted; no hours of theirs are entered. ${quoted.reason}`,
    lastDate: facts.lastDate,
    cautions: [],
  };
}

type Priced = { date: string; days: Exact; rate: { dayRate: string; currency: string; from: string } };

function workedCost(hand: Hand, days: readonly FinishedHours[], role: Role): Cost {
  const dates = [...Map.groupBy(days, ({ date }) => date)].sort(([a], [b]) => (a < b ? -1 : 1));
  const priced = dates.map(([date, same]): Priced | string => {
    const rates = ratesOn(hand.rates, date);
    const rate = rates.find((each) => each.role === role) ?? rates[0];
    if (!rate) return `${hand.name} has no day rate in People for ${dateInWords(date)}; what they cost is not counted.`;
    return { date, days: same.every(({ kind }) => kind === 'half') ? exact(1).div(2n) : exact(1), rate };
  });
  const known = priced.filter((each) => typeof each !== 'string');
  const byRate = [...Map.groupBy(known, ({ rate }) => `${rate.currency} ${rate.dayRate} ${rate.from}`).values()];
  const parts = byRate.map((same) => {
    const total = same.reduce((all, { days: each }) => all.add(each), exact(0));
    const { dayRate, currency, from } = same[0]?.rate ?? { dayRate: '0', currency: 'USD', from: '' };
    const amount = amountOf(total.mul(exact(dayRate)), currency);
    const dated = datesInWords(same.map(({ date }) => date));
    const reason = `${dated}: ${formatNumber(total)} ${plural(total, 'day')} at ${formatPrice(dayRate, currency)}, the rate from ${from}, ${formatMoney(amount, { code: true })}.`;
    return { amount, reason };
  });
  return {
    amounts: parts.map(({ amount }) => amount),
    reason: parts.map(({ reason }) => reason).join(' '),
    lastDate: dates.at(-1)?.[0] ?? null,
    cautions: priced.filter((each) => typeof each === 'string'),
  };
}

const notBelowZero = (amount: Money): Money => (amount.minor < 0 ? zero(amount.currency) : amount);

/** What may be taken back of payments to a hand: never more than was paid in that currency. */
export function paidInAll(paid: readonly HandPaid[], handId: string, currency: string): Money {
  return paid
    .filter((each) => each.handId === handId && each.amount.currency === currency)
    .reduce((total, { amount }) => add(total, money(amount.minor, currency)), zero(currency));
}
