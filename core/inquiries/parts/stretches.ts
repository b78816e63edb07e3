/**
 * Stretches of a message that are read already, so that no other finder reads them as something else.
 */
import type { Sequence } from '../dates/sequences.ts';
import type { Token } from './tokens.ts';

type Stretch = { start: number; end: number };

/** True for an offset inside one of some stretches. */
export function takenBy(stretches: readonly Stretch[]): (offset: number) => boolean {
  const sorted = stretches.toSorted((a, b) => a.start - b.start);
  return (offset) => {
    let [low, high] = [0, sorted.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((sorted[middle]?.end ?? 0) > offset) high = middle;
      else low = middle + 1;
    }
    return (sorted[low]?.start ?? Infinity) <= offset;
  };
}

/** Stretch each date of a run is written. */
export function datesApart(tokens: readonly Token[], { sequence, start, end }: Stretch & { sequence: Sequence }): Stretch[] {
  if (sequence.items.length === 0) return [{ start, end }];
  return sequence.items.map(({ atom }) => ({ start: tokens[atom.first]?.start ?? start, end: tokens[atom.next - 1]?.end ?? end }));
}
