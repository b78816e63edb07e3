/**
 * A line of a quote while it is still being priced: exact quantity and unit price, with the sentence that says where they come from.
 */
import type { QuoteLine, Section } from '../contract/quotes.ts';
import { decimalText, type Exact } from '../money/exact.ts';
import { amountOf, lineAmount, type Money } from '../money/money.ts';
import type { Tax } from '../money/taxes.ts';

export type PricedLine = {
  id: string;
  section: Section;
  what: string;
  quantity: Exact;
  unit: string;
  unitPrice: Exact;
  reason: string;
  estimated: boolean;
  changed: boolean;
  /** What the whole line costs me, currency units. */
  cost?: Exact;
};

/** A line's amount: the one place where a quote rounds. */
export function amountOfLine(line: PricedLine, currency: string): Money {
  return lineAmount(line.quantity, line.unitPrice, currency);
}

/** A line as the contract writes it. A unit price that no decimal can hold is shown to nine places; the amount is exact. */
export function quoteLine(line: PricedLine, currency: string, taxes: readonly Tax[]): QuoteLine {
  const { quantity, unitPrice, cost, ...words } = line;
  const taxed = taxes.some((tax) => tax.state === 'rated');
  const state = taxes[0]?.state;
  const price = { quantity: decimalText(quantity), unitPrice: decimalText(unitPrice), amount: amountOfLine(line, currency), taxed };
  return {
    ...words,
    ...price,
    ...(state ? { bears: { state, names: taxes.map((tax) => tax.name) } } : {}),
    ...(cost ? { cost: amountOf(cost, currency) } : {}),
  };
}

/** Whether a line was added by hand: its name says so in every section. */
export const isOwnLine = (id: string): boolean => /\/added-\d+$/.test(id);

/** A name as part of a line's id: lower case, dashes, nothing else. */
export function slug(name: string): string {
  return name
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}.]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 40);
}

/** Lines whose names are their own: a second "kit/mixer" becomes "kit/mixer-2". */
export function withOwnIds<L extends Pick<PricedLine, 'id'>>(lines: readonly L[]): L[] {
  const seen = new Map<string, number>();
  return lines.map((line) => {
    const count = (seen.get(line.id) ?? 0) + 1;
    seen.set(line.id, count);
    return count === 1 ? line : { ...line, id: `${line.id}-${count}` };
  });
}

/** A thing's name in the number that its count asks for: "day", "days". */
export function plural(count: Exact, one: string, many = `${one}s`): string {
  return count.equals(1) ? one : many;
}
