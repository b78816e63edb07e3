/**
 * Taxes by group. A group is a name, a rate and a state; its tax is round(net x rate), or what is left of a given gross where prices include tax.
 */
import { exact, roundHalfAway, type Exact } from './exact.ts';
import { add, money, subtract, sum, zero, type Money } from './money.ts';
import { shareOver } from './share.ts';

/** Whether a tax is charged at its rate, or why it is not. */
type TaxState = 'rated' | 'exempt' | 'reverse charge' | 'not registered';

/** One named tax that a line bears. */
export type Tax = {
  name: string;
  /** Per cent, exact decimal. Counts only in the state "rated". */
  percent: string;
  state: TaxState;
  /** Why no tax is charged; printed beside the group. Empty where it is. */
  reason: string;
  /** Charged on the net and on the taxes before it in the list. */
  compound?: boolean | undefined;
};

export type TaxedLine<C extends string> = { amount: Money<C>; taxes: readonly Tax[] };
export type TaxedGroup<C extends string> = { tax: Tax; net: Money<C>; amount: Money<C> };
/** Lines that bear the same set of taxes, with what they come to. */
export type Basket<C extends string> = { taxes: readonly Tax[]; net: Money<C>; tax: Money<C>; gross: Money<C> };
export type Taxed<C extends string> = {
  net: Money<C>;
  groups: TaxedGroup<C>[];
  baskets: Basket<C>[];
  tax: Money<C>;
  gross: Money<C>;
  lineNets: Money<C>[];
};

const keyOf = (tax: Tax): string => JSON.stringify([tax.name, exact(tax.percent).toFraction(), tax.state, tax.compound ?? false]);

/** A tax with the share of the net that it comes to. */
type Factored = { tax: Tax; factor: Exact };

/** The share of the net that each tax of a set comes to, in order: 0.05 and 0.07; a compound one also taxes those before it. */
export function factorsOf(taxes: readonly Tax[]): Factored[] {
  let soFar = exact(0);
  return taxes.map((tax) => {
    const rate = tax.state === 'rated' ? exact(tax.percent).div(100n) : exact(0);
    const factor = tax.compound ? rate.mul(soFar.add(1n)) : rate;
    soFar = soFar.add(factor);
    return { tax, factor };
  });
}

const whole = (factored: readonly Factored[]): Exact => factored.reduce((total, { factor }) => total.add(factor), exact(0));
const times = <C extends string>(amount: Money<C>, factor: Exact): Money<C> =>
  money(roundHalfAway(factor.mul(amount.minor)), amount.currency);

/** A gross amount split into net and tax: net = round(gross / (1 + rates)), tax = gross - net. */
export function splitIncluded<C extends string>(gross: Money<C>, taxes: readonly Tax[]): { net: Money<C>; tax: Money<C> } {
  const net = money(roundHalfAway(exact(gross.minor).div(whole(factorsOf(taxes)).add(1n))), gross.currency);
  return { net, tax: subtract(gross, net) };
}

type Entry<C extends string> = { taxes: readonly Tax[]; net: Money<C> };
type Group<C extends string> = { tax: Tax; factor: Exact; net: Money<C>; amount: Money<C>; baskets: Basket<C>[] };

/**
 * Net, taxes by group and gross of lines.
 * @param included the lines' amounts hold their tax already: each basket's gross is given and its net worked out
 * @throws CurrencyMixError when a line is in another currency
 */
export function taxLines<C extends string>(currency: C, lines: readonly TaxedLine<NoInfer<C>>[], included: boolean): Taxed<C> {
  const entries = lines.map((line): Entry<C> => ({ taxes: line.taxes, net: line.amount }));
  const groups = new Map<string, Group<C>>();
  const baskets: Basket<C>[] = [];
  for (const same of Map.groupBy(entries, (entry) => entry.taxes.map(keyOf).join()).values()) {
    const taxes = same[0]?.taxes ?? [];
    const given = sum(
      currency,
      same.map((entry) => entry.net),
    );
    const split = included ? splitIncluded(given, taxes) : { net: given, tax: zero(currency) };
    if (included) takeOut(split.tax, same);
    const basket = { taxes, ...split, gross: add(split.net, split.tax) };
    baskets.push(basket);
    collect(groups, basket);
  }

  if (!included) for (const group of groups.values()) chargeGroup(group);
  const net = sum(
    currency,
    baskets.map((basket) => basket.net),
  );
  const tax = sum(
    currency,
    [...groups.values()].map((group) => group.amount),
  );
  return {
    net,
    groups: [...groups.values()].map((group) => ({ tax: group.tax, net: group.net, amount: group.amount })),
    baskets,
    tax,
    gross: add(net, tax),
    lineNets: entries.map((entry) => entry.net),
  };
}

/** Adds a basket to the groups of its taxes; tax that was included is parted by the rates. */
function collect<C extends string>(groups: Map<string, Group<C>>, basket: Basket<C>): void {
  const nothing = zero(basket.net.currency);
  for (const { thing, share } of shareOver(basket.tax, factorsOf(basket.taxes), ({ factor }) => factor)) {
    const key = keyOf(thing.tax);
    const group = groups.get(key) ?? { ...thing, net: nothing, amount: nothing, baskets: [] };
    groups.set(key, { ...group, net: add(group.net, basket.net), amount: add(group.amount, share), baskets: [...group.baskets, basket] });
  }
}

/** Takes the tax of a basket out of its lines, so that their nets add up to the basket's net. */
function takeOut<C extends string>(tax: Money<C>, entries: readonly Entry<C>[]): void {
  for (const { thing, share } of shareOver(
    tax,
    entries,
    weightOn(tax, (entry: Entry<C>) => entry.net),
  ))
    thing.net = subtract(thing.net, share);
}

/** A group's tax is rounded on its whole net; where several baskets lie in it, each gets its share of that. */
function chargeGroup<C extends string>(group: Group<C>): void {
  group.amount = times(group.net, group.factor);
  for (const { thing, share } of shareOver(
    group.amount,
    group.baskets,
    weightOn(group.amount, (basket: Basket<C>) => basket.net),
  )) {
    thing.tax = add(thing.tax, share);
    thing.gross = add(thing.gross, share);
  }
}

/** Weights by amount; a part of the other sign than the whole carries no share, since shares are never below zero. */
function weightOn<T>(total: Money, amountOf: (thing: T) => Money): (thing: T) => number {
  const sign = Math.sign(total.minor);
  return (thing) => Math.max(0, sign * amountOf(thing).minor);
}

/** One basket's part of a deposit. */
export type DepositPart<C extends string> = { taxes: readonly Tax[]; gross: Money<C>; net: Money<C>; tax: Money<C> };

/** A deposit shared over the baskets by gross, each part split as tax-included. */
export function depositParts<C extends string>(deposit: Money<C>, baskets: readonly Basket<NoInfer<C>>[]): DepositPart<C>[] {
  return shareOver(deposit, baskets, (basket) => Math.max(0, basket.gross.minor)).map(({ thing, share }) => ({
    taxes: thing.taxes,
    gross: share,
    ...splitIncluded(share, thing.taxes),
  }));
}

/**
 * What an e-invoice says of an included group: tax = round(net x rate), and the unit by which that differs goes to the rounding amount (BT-114).
 */
export function invoicedTax<C extends string>(group: TaxedGroup<C>): { tax: Money<C>; rounding: Money<C> } {
  const tax = times(group.net, whole(factorsOf([group.tax])));
  return { tax, rounding: subtract(group.amount, tax) };
}
