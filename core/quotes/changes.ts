/**
 * What a person changed against the rate card, laid over lines that are priced anew each time.
 */
import type { DraftChange, Section } from '../contract/quotes.ts';
import type { Terms } from '../contract/rates.ts';
import { exact, type Exact } from '../money/exact.ts';
import { formatNumber, formatPrice } from '../money/format.ts';
import { isOwnLine, type PricedLine } from './line.ts';
import { numbersOf } from './offer-numbers.ts';

export type TaxChange = Extract<DraftChange, { op: 'tax' }>;
type SetChange = Extract<DraftChange, { op: 'set' }>;
type MoveChange = Extract<DraftChange, { op: 'move' }>;

/** The discount that was asked for; the newest word counts. */
export type DiscountAsked = { percent: string; fixed: string; over: readonly Section[] | null };

/** All changes of a draft, folded into what stands now. */
export type Overrides = {
  sets: ReadonlyMap<string, Omit<SetChange, 'op' | 'id'>>;
  dropped: ReadonlySet<string>;
  added: readonly PricedLine[];
  /** Where lines of one's own were put, in the order in which that was said. */
  moves: readonly MoveChange[];
  discount: DiscountAsked;
  terms: Partial<Terms>;
  taxes: readonly TaxChange[];
  /** Hands that are named, with their days where they are not all dates, by id; and what is rented, with its cost, by its words. */
  hands: ReadonlyMap<string, { days?: string | undefined }>;
  subHires: ReadonlyMap<string, string>;
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
  const added: Addition[] = [];
  const moves: MoveChange[] = [];
  let discount: DiscountAsked = { percent: '0', fixed: '0', over: null };
  let terms: Partial<Terms> = {};
  let holidays: readonly string[] | null = null;
  const taxes: TaxChange[] = [];
  const hands = new Map<string, { days?: string | undefined }>();
  const subHires = new Map<string, string>();
  const numbers = numbersOf(changes, offer);
  let additions = 0;

  for (const [at, change] of changes.entries()) {
    if (change.op === 'add') additions += 1;
    if ('offer' in change && change.offer !== undefined && change.offer !== numbers[at]) continue;
    if (change.op === 'set') sets.set(change.id, { ...sets.get(change.id), ...definedOf(change) });
    if (change.op === 'drop') dropped.add(change.id);
    if (change.op === 'restore') {
      sets.delete(change.id);
      dropped.delete(change.id);
    }
    if (change.op === 'add') added.push({ change, id: `${change.section}/added-${additions}` });
    if (change.op === 'move') moves.push(change);
    if (change.op === 'discount') {
      discount = { percent: change.percent ?? '0', fixed: change.fixed ?? '0', over: change.over ?? null };
      for (const id of [...dropped].filter((line) => line.startsWith('discount/') && !isOwnLine(line))) dropped.delete(id);
    }
    if (change.op === 'hand') setOrDrop(hands, change.handId, { days: change.days }, change.days);
    if (change.op === 'sub-hire') setOrDrop(subHires, change.what, change.cost, change.cost);
    if (change.op === 'tax') taxes.push(change);
    if (change.op === 'holidays') holidays = change.dates;
    if (change.op === 'terms') terms = { ...terms, ...(change.terms as Partial<Terms>) };
  }
  const lines = added.map(({ change, id }) => addedLine(change, id, moves.findLast((move) => move.id === id)?.section));
  return { sets, dropped, added: lines, moves, discount, terms, taxes, hands, subHires, holidays };
}

/** Zero of a thing is none of it. */
function setOrDrop<T>(map: Map<string, T>, key: string, value: T, count: string | undefined): void {
  if (count !== undefined && exact(count).equals(0)) map.delete(key);
  else map.set(key, value);
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

/** Lines of one's own where they were put: before another line of the section, or at its end where that line is gone. */
export function arranged(lines: readonly PricedLine[], moves: readonly MoveChange[]): PricedLine[] {
  return moves.reduce<PricedLine[]>(
    (order, { id, section, before }) => {
      const line = order.find((each) => each.id === id);
      if (!line || line.section !== section) return order;
      const rest = order.filter((each) => each !== line);
      const next = rest.findIndex((each) => each.id === before && each.section === section);
      const end = rest.findLastIndex((each) => each.section === section) + 1;
      return rest.toSpliced(next >= 0 ? next : end > 0 ? end : order.indexOf(line), 0, line);
    },
    [...lines],
  );
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
  const what = set.what ?? line.what;
  const renamed = what === line.what ? [] : [`called "${what}" instead of "${line.what}"`];
  const words = [...renamed, ...said];
  const reason = words.length > 0 ? `Changed by hand: ${words.join(', ')}. ${line.reason}` : line.reason;
  return {
    ...line,
    what,
    quantity,
    unitPrice,
    reason,
    changed: line.changed || words.length > 0,
    estimated: line.estimated && said.length === 0,
    ...costOf(set),
  };
}

type Addition = { change: Extract<DraftChange, { op: 'add' }>; id: string };

/** A line of one's own; moved to another section it keeps its name. */
function addedLine(change: Addition['change'], id: string, section: Section = change.section): PricedLine {
  const price = exact(change.unitPrice);
  return {
    id,
    section,
    what: change.what,
    quantity: exact(change.quantity),
    unit: change.unit,
    unitPrice: section === 'discount' && price.s > 0n ? price.neg() : price,
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
