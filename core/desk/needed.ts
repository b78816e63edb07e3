/**
 * What the Desk shows at once, and what can wait folded: nothing stands there that is not needed today.
 */
import { epochOf } from '../time/read.ts';
import { nearness } from '../words/left.ts';

/** So many clocks are shown even where they are further off. */
const LEAST = 6;

/**
 * Parts clocks, ordered by instant, into those that are late or run out by tomorrow, filled up to six, and the later ones.
 * A single later one is not parted off: its fold would take the room that it needs itself. `now` in epoch ms; days are those of `zone`.
 */
export function partedByNeed<C extends { at: string }>(
  clocks: readonly C[],
  now: number,
  zone: string,
): { near: readonly C[]; later: readonly C[] } {
  const soon = clocks.filter(({ at }) => ['late', 'today', 'tomorrow'].includes(nearness(epochOf(at), now, zone))).length;
  const shown = Math.max(soon, LEAST);
  return clocks.length - shown < 2 ? { near: clocks, later: [] } : { near: clocks.slice(0, shown), later: clocks.slice(shown) };
}
