/**
 * Lifts that are tried on together.
 */
import { TryOn, type Lift } from '../../../core/contract/fit.ts';

/** One change out of several: lists are joined, of a figure the last counts. */
export function triedTogether(lifts: readonly Lift[]): TryOn {
  return lifts
    .map((lift) => TryOn.parse(lift.tryOn ?? {}))
    .reduce(
      (all, one) => ({
        ...all,
        ...one,
        ...joinedLists('ways', all, one),
        ...joinedLists('kitExtra', all, one),
        ...joinedLists('kitInstead', all, one),
        ...joinedLists('withoutJobs', all, one),
      }),
      {},
    );
}

function joinedLists<K extends 'ways' | 'kitExtra' | 'kitInstead' | 'withoutJobs'>(
  key: K,
  all: TryOn,
  one: TryOn,
): Pick<TryOn, K> | object {
  const joined = [...(all[key] ?? []), ...(one[key] ?? [])];
  return joined.length > 0 ? { [key]: joined } : {};
}
