/**
 * What a job costs me beside its expenses: hands, sub-hire, wear of the kit. Never printed; taken off before "this job a day" and "kept per hour away".
 */
import type { Hand } from '../contract/people.ts';
import type { QuoteCost } from '../contract/quotes.ts';
import type { Role } from '../contract/parts.ts';
import { exact, type Exact } from '../money/exact.ts';
import { formatMoney, formatNumber, formatPrice } from '../money/format.ts';
import { amountOf, majorOf, sum, type Money } from '../money/money.ts';
import { ratesOn } from '../people/hand-rates.ts';
import { countInWords } from '../words/amounts.ts';
import type { Overrides } from './changes.ts';
import { plural, slug } from './line.ts';

/** Things of mine that the job uses, each with what a shoot day wears off one; null where that is not known. */
export type Wear = { id: string; name: string; count: number; perDay: Money | null };

export type CostInput = {
  overrides: Pick<Overrides, 'hands' | 'subHires'>;
  /** Those who may be named, put away or not. */
  hands: readonly Hand[];
  wear: readonly Wear[];
  role: Role;
  /** Paid dates on which somebody works, YYYY-MM-DD, in order. */
  dates: readonly string[];
  /** How many dates use the kit. */
  kitDates: number;
  currency: string;
};
export type Costs = { costs: QuoteCost[]; total: Money; cautions: string[] };

/** Every cost with the sentence that says where it comes from. One in another currency is not counted, and a caution says so. */
export function costsOfJob(input: CostInput): Costs {
  const found = [...handCosts(input), ...subHires(input), ...wearCosts(input)];
  const costs = found.filter((cost) => typeof cost !== 'string');
  return {
    costs,
    total: sum(
      input.currency,
      costs.map(({ amount }) => amount),
    ),
    cautions: found.filter((cost) => typeof cost === 'string'),
  };
}

function handCosts({ overrides, hands, role, dates, currency }: CostInput): (QuoteCost | string)[] {
  return [...overrides.hands].map(([handId, asked]) => {
    const hand = hands.find(({ id }) => id === handId);
    if (!hand) return 'A hand named on this quote is not in People any more; what they cost is not counted.';
    const [first] = dates;
    const rates = first === undefined ? [] : ratesOn(hand.rates, first);
    const rate = rates.find((each) => each.role === role) ?? rates[0];
    if (!rate) return `${hand.name} has no day rate in People for these dates; what they cost is not counted.`;
    if (rate.currency !== currency)
      return `${hand.name} costs ${formatPrice(rate.dayRate, rate.currency)} ${rate.currency} a day and this quote is in ${currency}; it is not counted.`;
    const days = asked.days === undefined ? exact(dates.length) : exact(asked.days);
    return {
      id: `hand/${handId}`,
      kind: 'hand' as const,
      what: hand.name,
      amount: amountOf(days.mul(exact(rate.dayRate)), currency),
      reason: `${formatNumber(days)} ${plural(days, 'day')} at ${formatPrice(rate.dayRate, currency)}, the rate of ${hand.name} for ${rate.role} from ${rate.from}, in People.`,
    };
  });
}

function subHires({ overrides, currency }: CostInput): QuoteCost[] {
  return [...overrides.subHires].map(([what, cost]) => ({
    id: `sub-hire/${slug(what)}`,
    kind: 'sub-hire' as const,
    what,
    amount: amountOf(cost, currency),
    reason: 'Sub-hire, as typed.',
  }));
}

function wearCosts({ wear, kitDates, currency }: CostInput): (QuoteCost | string)[] {
  if (kitDates === 0) return [];
  return wear.flatMap(({ id, name, count, perDay }): (QuoteCost | string)[] => {
    if (!perDay || perDay.minor === 0) return [];
    if (perDay.currency !== currency)
      return [`The wear of ${name} is in ${perDay.currency} and this quote in ${currency}; it is not counted.`];
    const each: Exact = majorOf(perDay);
    return [
      {
        id: `wear/${id}`,
        kind: 'wear',
        what: `Wear of ${name}`,
        amount: amountOf(each.mul(BigInt(count * kitDates)), currency),
        reason: `${count} x ${name}, ${countInWords(kitDates, 'shooting day')} at ${formatMoney(perDay)} of wear a day, by its sheet in Kit.`,
      },
    ];
  });
}
