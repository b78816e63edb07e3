/**
 * Changes that are tried on together, as one. The order in which they were tried on never matters.
 */
import type { TryOn } from '../contract/try-on.ts';

/**
 * One change out of several. Of two later calls the later counts, of two earlier wraps the earlier, of two rests the shorter;
 * moves by days add up, and lists are laid together, each entry once but for kit, whose counts add up.
 */
export function combined(changes: readonly TryOn[]): TryOn {
  return changes.reduce(both, {});
}

function both(a: TryOn, b: TryOn): TryOn {
  return {
    ...figure('restMinutes', a, b, Math.min),
    ...figure('firstCallLaterMinutes', a, b, Math.max),
    ...figure('lastWrapEarlierMinutes', a, b, Math.max),
    ...figure('shiftDays', a, b, (one, other) => one + other),
    ...each('daysMoved', a, b),
    ...each('ways', a, b),
    ...each('legs', a, b),
    ...each('withoutTickets', a, b),
    ...all('kitExtra', a, b),
    ...all('kitInstead', a, b),
    ...each('couriers', a, b),
    ...each('hands', a, b),
    ...all('withJobs', a, b),
    ...each('withoutJobs', a, b),
    ...each('withoutPersonal', a, b),
    ...each('documents', a, b),
    ...(a.customsList || b.customsList ? { customsList: true } : {}),
    ...(a.asSecondPencil || b.asSecondPencil ? { asSecondPencil: true } : {}),
    ...(a.stillOpen || b.stillOpen ? { stillOpen: true } : {}),
  };
}

type Figure = 'restMinutes' | 'firstCallLaterMinutes' | 'lastWrapEarlierMinutes' | 'shiftDays';

function figure(key: Figure, a: TryOn, b: TryOn, join: (one: number, other: number) => number): TryOn {
  const [one, other] = [a[key], b[key]];
  const value = one === undefined ? other : other === undefined ? one : join(one, other);
  return value === undefined ? {} : { [key]: value };
}

type List = { [K in keyof TryOn]-?: NonNullable<TryOn[K]> extends readonly unknown[] ? K : never }[keyof TryOn];

function all(key: List, a: TryOn, b: TryOn): TryOn {
  const joined = [...(a[key] ?? []), ...(b[key] ?? [])];
  return joined.length > 0 ? { [key]: joined } : {};
}

/** What is tried on twice is tried on once. */
function each(key: List, a: TryOn, b: TryOn): TryOn {
  const once = new Map([...(a[key] ?? []), ...(b[key] ?? [])].map((entry) => [JSON.stringify(entry), entry]));
  return once.size > 0 ? { [key]: [...once.values()] } : {};
}
