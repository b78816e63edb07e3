/**
 * Taxes by group. A group is a name, a rate and a state; its tax is round(net x rate), or what is left of a given gross where prices include tax.
 */
import { exact, roundHalfAway, type Exact } from './exact.ts';
import { add, money, subtract, sum, zero, type Money } from './money.ts';
import { shareOut } from './share.ts';

/** Whether a tax is charged at its rate, or why it is not. */
export type TaxState = 'rated' | 'exempt' | 'reverse charge' | 'not registered';

/** One named tax that a line bears. */
export type Tax = {
  name: string;
  /** Per cent, exact decimal. Counts only in the state "rated". */
  percent: string;
  state: TaxState;
  /** Why no tax is charged; printed beside the group. Empty where it is. */
  reason: string;
  /** Charged on the net and on the taxes before it in the list. */
  compound?: boolean;
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

/** The share of the net that each tax of a set comes to, in order: 0.05 and 0.07; a compound one also taxes those before it. */
export function factorsOf(taxes: readonly Tax[]): Exact[] {
  const factors: Exact[] = [];
  let soFar = exact(0);
  for (const tax of taxes) {
    const rate = tax.state === 'rated' ? exact(tax.percent).div(100n) : exact(0);
    const factor = tax.compound ? rate.mul(soFar.add(1n)) : rate;
    factors.push(factor);
    soFar = soFar.add(factor);
  }
  return factors;
}

const whole = (factors: readonly Exact[]): Exact => factors.reduce((total, factor) => total.add(factor), exact(0));
const times = <C extends string>(amount: Money<C>, factor: Exact): Money<C> =>
  money(roundHalfAway(factor.mul(amount.minor)), amount.currency);

/** A gross amount split into net and tax: net = round(gross / (1 + rates)), tax = gross - net. */
export function splitIncluded<C extends string>(gross: Money<C>, taxes: readonly Tax[]): { net: Money<C>; tax: Money<C> } {
  const net = money(roundHalfAway(exact(gross.minor).div(whole(factorsOf(taxes)).add(1n))), gross.currency);
  return { net, tax: subtract(gross, net) };
}

/**
 * Net, taxes by group and gross of lines.
 * @param included the lines' amounts hold their tax already: each basket's gross is given and its net worked out
 * @throws CurrencyMixError when a line is in another currency
 */
export function taxLines<C extends string>(currency: C, lines: readonly TaxedLine<NoInfer<C>>[], included: boolean): Taxed<C> {
  const bySet = new Map<string, { taxes: readonly Tax[]; places: number[] }>();
  lines.forEach((line, place) => {
    const key = line.taxes.map(keyOf).join();
    const basket = bySet.get(key) ?? { taxes: line.taxes, places: [] };
    basket.places.push(place);
    bySet.set(key, basket);
  });

  const lineNets = lines.map((line) => line.amount);
  const groups = new Map<string, { tax: Tax; factor: Exact; net: Money<C>; amount: Money<C> }>();
  const baskets: Basket<C>[] = [];
  for (const { taxes, places } of bySet.values()) {
    const given = sum(
      currency,
      places.map((place) => lines[place]!.amount),
    );
    const factors = factorsOf(taxes);
    const split = included ? splitIncluded(given, taxes) : { net: given, tax: zero(currency) };
    if (included) shareNets(split.tax, places, lineNets);
    const parts = included && split.tax.minor !== 0 ? shareOut(split.tax, factors) : factors.map(() => zero(currency));
    taxes.forEach((tax, order) => {
      const key = keyOf(tax);
      const group = groups.get(key) ?? { tax, factor: factors[order]!, net: zero(currency), amount: zero(currency) };
      groups.set(key, { ...group, net: add(group.net, split.net), amount: add(group.amount, parts[order]!) });
    });
    baskets.push({ taxes, net: split.net, tax: split.tax, gross: add(split.net, split.tax) });
  }

  const done = [...groups.values()].map(({ tax, factor, net, amount }) => ({ tax, net, amount: included ? amount : times(net, factor) }));
  if (!included) shareTaxes(done, baskets);
  const net = sum(
    currency,
    baskets.map((basket) => basket.net),
  );
  const tax = sum(
    currency,
    done.map((group) => group.amount),
  );
  return { net, groups: done, baskets, tax, gross: add(net, tax), lineNets };
}

/** Takes the tax of a basket out of its lines' amounts, so that the nets add up to the basket's net. */
function shareNets<C extends string>(tax: Money<C>, places: readonly number[], nets: Money<C>[]): void {
  if (tax.minor === 0) return;
  // A line of the other sign than its basket carries no share: shares are never below zero.
  const sign = Math.sign(tax.minor);
  const shares = shareOut(
    tax,
    places.map((place) => Math.max(0, sign * nets[place]!.minor)),
  );
  places.forEach((place, order) => (nets[place] = subtract(nets[place]!, shares[order]!)));
}

/** A group's tax is rounded on its whole net; where several baskets lie in it, each gets its share of that. */
function shareTaxes<C extends string>(groups: readonly TaxedGroup<C>[], baskets: Basket<C>[]): void {
  for (const group of groups) {
    const key = keyOf(group.tax);
    const inside = baskets.filter((basket) => basket.taxes.some((tax) => keyOf(tax) === key));
    if (group.amount.minor === 0) continue;
    const sign = Math.sign(group.amount.minor);
    const shares = shareOut(
      group.amount,
      inside.map((basket) => Math.max(0, sign * basket.net.minor)),
    );
    inside.forEach((basket, order) => {
      basket.tax = add(basket.tax, shares[order]!);
      basket.gross = add(basket.gross, shares[order]!);
    });
  }
}

/** One basket's part of a deposit. */
export type DepositPart<C extends string> = { taxes: readonly Tax[]; gross: Money<C>; net: Money<C>; tax: Money<C> };

/** A deposit shared over the baskets by gross, each part split as tax-included. */
export function depositParts<C extends string>(deposit: Money<C>, baskets: readonly Basket<NoInfer<C>>[]): DepositPart<C>[] {
  const shares = shareOut(
    deposit,
    baskets.map((basket) => Math.max(0, basket.gross.minor)),
  );
  return baskets.map((basket, order) => ({ taxes: basket.taxes, gross: shares[order]!, ...splitIncluded(shares[order]!, basket.taxes) }));
}

/**
 * What an e-invoice says of an included group: tax = round(net x rate), and the unit by which that differs goes to the rounding amount (BT-114).
 */
export function invoicedTax<C extends string>(group: TaxedGroup<C>): { tax: Money<C>; rounding: Money<C> } {
  const [factor] = factorsOf([group.tax]);
  const tax = times(group.net, factor!);
  return { tax, rounding: subtract(group.amount, tax) };
}
