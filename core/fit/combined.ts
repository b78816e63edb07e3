/**
 * Changes that are tried on together, as one. The order in which they were tried on never matters.
 */
import type { EditTryOn } from '../contract/deliverables.ts';
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
    ...each('withoutImported', a, b),
    ...each('documents', a, b),
    ...(a.edits || b.edits ? { edits: bothEdits(a.edits ?? {}, b.edits ?? {}) } : {}),
    ...(a.customsList || b.customsList ? { customsList: true } : {}),
    ...(a.asSecondPencil || b.asSecondPencil ? { asSecondPencil: true } : {}),
    ...(a.stillOpen || b.stillOpen ? { stillOpen: true } : {}),
  };
}

/** Of two moves of one edit the later date counts, of two days the longer. */
function bothEdits(a: EditTryOn, b: EditTryOn): EditTryOn {
  const later = new Map<string, string>();
  for (const { deliverableId, due } of [...(a.moved ?? []), ...(b.moved ?? [])]) {
    const other = later.get(deliverableId);
    later.set(deliverableId, other !== undefined && other > due ? other : due);
  }
  const hired = [...new Set([...(a.hired ?? []), ...(b.hired ?? [])])].toSorted();
  const hoursADay = Math.max(a.hoursADay ?? 0, b.hoursADay ?? 0);
  const closed =
    a.closedWeekdays && b.closedWeekdays
      ? a.closedWeekdays.filter((day) => b.closedWeekdays?.includes(day))
      : (a.closedWeekdays ?? b.closedWeekdays);
  return {
    ...(hired.length > 0 ? { hired } : {}),
    ...(later.size > 0
      ? {
          moved: [...later]
            .map(([deliverableId, due]) => ({ deliverableId, due }))
            .toSorted((one, other) => one.deliverableId.localeCompare(other.deliverableId)),
        }
      : {}),
    ...(hoursADay > 0 ? { hoursADay } : {}),
    ...(a.onTravelDays || b.onTravelDays ? { onTravelDays: true } : {}),
    ...(a.onShootDays || b.onShootDays ? { onShootDays: true } : {}),
    ...(closed ? { closedWeekdays: closed } : {}),
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
