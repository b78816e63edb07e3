/**
 * Dates of which the words leave open how many there are: "the 12th and possibly also the 13th of November"; "11/12-14" where it is not known whether
 * the month stands first.
 */
import type { Order } from './order.ts';
import type { Atom } from './pieces.ts';
import type { Resolved } from './from-today.ts';
import type { Item } from './trims.ts';

type Resolve = (items: Item[], order: Order) => Resolved;

/** Both ways to read them, or the one that the order of day and month leaves. */
export function openReadings({ items }: { items: Item[] }, order: Order, resolve: Resolve): Resolved | undefined {
  return listedInNumbers(items, order, resolve) ?? withMaybe(items, order, resolve);
}

/** "11/12-14", "11/12, 13 and 14": only where the month stands first are the numbers behind it days of it. */
function listedInNumbers(items: readonly Item[], order: Order, resolve: Resolve): Resolved | undefined {
  const at = items.findIndex(({ atom }, index) => atom.slashed && isBareDay(items[index + 1]?.atom));
  if (at < 0) return undefined;
  const turned = items.map((item, index) => {
    const { slashed, day = 0, month = 0, ...atom } = item.atom;
    return index === at && slashed ? { ...item, atom: { ...atom, day: month, month: day, monthFirst: true } } : item;
  });
  const list = resolve(turned, order);
  if (order === 'month first') return list;
  const alone = resolve(items.slice(0, at + 1), 'day first');
  return { ...list, readings: [...list.readings, ...alone.readings], doubt: 'order' };
}
const isBareDay = (atom: Atom | undefined): boolean => atom?.day !== undefined && atom.month === undefined && atom.weekday === undefined;

/** "Friday 12 and maybe Saturday 13 November": with the days of which nobody is sure, and without them. */
function withMaybe(items: readonly Item[], order: Order, resolve: Resolve): Resolved | undefined {
  const at = items.findIndex(({ maybe }) => maybe);
  if (at < 1) return undefined;
  const sure = items.map(({ atom, join }) => ({ atom, join }));
  const all = resolve(sure, order);
  const certain = new Set(items.slice(0, at).map(({ atom }) => atom.day));
  const fewer = all.readings
    .map((days) => (certain.has(undefined) ? days.slice(0, at) : days.filter((day) => certain.has(Number(day.slice(-2))))))
    .filter(({ length }) => length > 0);
  return { ...all, readings: [...fewer, ...all.readings], doubt: all.doubt ?? 'choice' };
}
