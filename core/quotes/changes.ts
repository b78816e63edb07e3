/**
 * What a person changed against the rate card, laid over lines that are priced anew each time.
 */
import type { DraftChange, Section } from '../contract/quotes.ts';
import type { Terms } from '../contract/rates.ts';
import { exact, type Exact } from '../money/exact.ts';
import { formatNumber, formatPrice } from '../money/format.ts';
import type { PricedLine } from './line.ts';

export type TaxChange = Extract<DraftChange, { op: 'tax' }>;
type SetChange = Extract<DraftChange, { op: 'set' }>;

/** The discount that was asked for; the newest word counts. */
export type DiscountAsked = { percent: string; fixed: string; over: readonly Section[] | null };

/** All changes of a draft, folded into what stands now. */
export type Overrides = {
  sets: ReadonlyMap<string, Omit<SetChange, 'op' | 'id'>>;
  dropped: ReadonlySet<string>;
  added: readonly PricedLine[];
  discount: DiscountAsked;
  terms: Partial<Terms>;
  taxes: readonly TaxChange[];
  /** Dates that were said to count as public holidays; null where nobody said. */
  holidays: readonly string[] | null;
};

/**
 * Fold the changes that hold in an offer, in the order in which they were made.
 * An added line is named by its place among all additions, so its id stays.
 */
export function foldChanges(changes: readonly DraftChange[], offer: number): Overrides {
  const sets = new Map<string, Omit<SetChange, 'op' | 'id'>>();
  const dropped = new Set<string>();
  const added: PricedLine[] = [];
  let discount: DiscountAsked = { percent: '0', fixed: '0', over: null };
  let terms: Partial<Terms> = {};
  let holidays: readonly string[] | null = null;
  const taxes: TaxChange[] = [];
  let additions = 0;

  for (const change of changes) {
    if (change.op === 'add') additions += 1;
    if ('offer' in change && change.offer !== undefined && change.offer !== offer) continue;
    if (change.op === 'set') sets.set(change.id, { ...sets.get(change.id), ...definedOf(change) });
    if (change.op === 'drop') dropped.add(change.id);
    if (change.op === 'restore') {
      sets.delete(change.id);
      dropped.delete(change.id);
    }
    if (change.op === 'add') added.push(addedLine(change, additions));
    if (change.op === 'discount') {
      discount = { percent: change.percent ?? '0', fixed: change.fixed ?? '0', over: change.over ?? null };
      for (const id of [...dropped].filter((line) => line.startsWith('discount/') && !line.includes('added'))) dropped.delete(id);
    }
    if (change.op === 'tax') taxes.push(change);
    if (change.op === 'holidays') holidays = change.dates;
    if (change.op === 'terms') terms = { ...terms, ...(change.terms as Partial<Terms>) };
  }
  return { sets, dropped, added, discount, terms, taxes, holidays };
}

/** Lines with what was changed, taken off and added. Additions go to the end of those given; sections are put in order later. */
export function overlay(
  lines: readonly PricedLine[],
  overrides: Overrides,
  belongs: (section: Section) => boolean,
  currency: string,
): PricedLine[] {
  return [...lines, ...overrides.added.filter((line) => belongs(line.section))]
    .filter((line) => !overrides.dropped.has(line.id))
    .map((line) => {
      const set = overrides.sets.get(line.id);
      return set ? changedLine(line, set, currency) : line;
    });
}

function changedLine(line: PricedLine, set: Omit<SetChange, 'op' | 'id'>, currency: string): PricedLine {
  const quantity = set.quantity === undefined ? line.quantity : exact(set.quantity);
  const price = set.unitPrice === undefined ? line.unitPrice : exact(set.unitPrice);
  // A discount is typed as what it takes off.
  const unitPrice = line.section === 'discount' && price.s > 0n ? price.neg() : price;
  const said = [
    quantity.equals(line.quantity) ? '' : `quantity ${formatNumber(quantity)} instead of ${formatNumber(line.quantity)}`,
    unitPrice.equals(line.unitPrice) ? '' : `price ${formatPrice(unitPrice, currency)} instead of ${formatPrice(line.unitPrice, currency)}`,
  ].filter((text) => text !== '');
  const reason = said.length > 0 ? `Changed by hand: ${said.join(', ')}. ${line.reason}` : line.reason;
  return {
    ...line,
    what: set.what ?? line.what,
    quantity,
    unitPrice,
    reason,
    changed: line.changed || said.length > 0 || set.what !== undefined,
    estimated: line.estimated && said.length === 0,
    ...costOf(set),
  };
}

function addedLine(change: Extract<DraftChange, { op: 'add' }>, number: number): PricedLine {
  const price = exact(change.unitPrice);
  return {
    id: `${change.section}/added-${number}`,
    section: change.section,
    what: change.what,
    quantity: exact(change.quantity),
    unit: change.unit,
    unitPrice: change.section === 'discount' && price.s > 0n ? price.neg() : price,
    reason: 'Added by hand.',
    estimated: false,
    changed: true,
    ...costOf(change),
  };
}

function costOf({ cost }: { cost?: string | undefined }): { cost?: Exact } {
  return cost === undefined ? {} : { cost: exact(cost) };
}

function definedOf({ quantity, unitPrice, what, cost }: SetChange): Omit<SetChange, 'op' | 'id'> {
  return {
    ...(quantity === undefined ? {} : { quantity }),
    ...(unitPrice === undefined ? {} : { unitPrice }),
    ...(what === undefined ? {} : { what }),
    ...(cost === undefined ? {} : { cost }),
  };
}
