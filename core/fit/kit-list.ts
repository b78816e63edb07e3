/**
 * Kit as the contract has it, made ready for the check.
 */
import type { KitItem as Listed, KitNeed as Asked } from '../contract/kit.ts';
import { dateLater } from '../time/wall.ts';
import type { KitItem, KitNeed } from './book.ts';
import { countOf } from './kit.ts';

/** A thing with its services and those of its units on the clock at home; the last day of a service is in it. */
export function bookItem(
  { id, name, owned, resetMinutes, resetOnRoad, does, subHire, services, units }: Listed,
  homeZone: string,
): KitItem {
  const ofUnits = units.flatMap((unit) => unit.services.map((dates) => ({ ...dates, count: 1 })));
  const midnight = (date: string) => Temporal.PlainDate.from(date).toZonedDateTime(homeZone).epochMilliseconds;
  return {
    id,
    name,
    owned,
    resetMinutes,
    resetOnRoad,
    does,
    subHire,
    services: [...services, ...ofUnits].map(({ from, to, count }) => ({
      startAt: midnight(from),
      endAt: midnight(dateLater(to, 1)),
      count,
    })),
  };
}

/** Needs by the id of their thing, which may be given by its name; what is not on the list keeps the name that was given. */
export function needsById(asked: readonly Asked[], items: readonly { id: string; name: string }[]): KitNeed[] {
  const counts = new Map<string, number>();
  for (const { item, count } of asked) {
    const found = items.find(({ id }) => id === item) ?? items.find(({ name }) => name.toLowerCase() === item.toLowerCase());
    const key = found?.id ?? item;
    counts.set(key, (counts.get(key) ?? 0) + count);
  }
  return [...counts].map(([item, count]) => ({ item, count }));
}

/** Presets laid over needs: of a thing that stands in several, the larger count. */
export function expanded(needs: readonly Asked[], presets: readonly { needs: readonly Asked[] }[]): Asked[] {
  const counts = new Map<string, number>();
  for (const { item, count } of [...needs, ...presets.flatMap((preset) => preset.needs)])
    counts.set(item, Math.max(count, counts.get(item) ?? 0));
  return [...counts].map(([item, count]) => ({ item, count }));
}

/** Needs with some of one thing met by another. */
export function withInstead(needs: readonly KitNeed[], instead: readonly { item: string; other: string; count: number }[]): KitNeed[] {
  const less = needs.map((need) => ({ ...need, count: Math.max(0, need.count - countOf(instead, need.item)) }));
  const others = instead.map(({ other, count }) => ({ item: other, count }));
  return others.reduce((all, need) => {
    const known = all.find((item) => item.item === need.item);
    return known ? all.map((item) => (item === known ? { ...item, count: item.count + need.count } : item)) : [...all, need];
  }, less);
}

/** Needs less what is had from elsewhere; what is needed no more is left out. */
export function withFewer(needs: readonly KitNeed[], fewer: readonly KitNeed[]): KitNeed[] {
  return needs.map(({ item, count }) => ({ item, count: count - countOf(fewer, item) })).filter(({ count }) => count > 0);
}
