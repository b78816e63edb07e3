/**
 * What the Desk shows at once, and what can wait folded: nothing stands there that is not needed today.
 */
import { epochOf } from '../time/read.ts';
import { nearness } from '../words/left.ts';

/** So many clocks are shown even where they are further off. */
const LEAST = 6;
/** Of those that are late so many are shown, the newest: it is the older ones that pile up. */
const LATE = 3;
/** So many fit on a laptop; what bites tomorrow is folded beyond them, what bites today never. */
const MOST = 8;

type Parted<C> = { older: readonly C[]; near: readonly C[]; later: readonly C[] };

/**
 * Parts clocks, ordered by instant: late ones before the newest three, then those to show, then later ones.
 * One alone is not parted off: its fold would take the room that it needs itself. `now` in epoch ms; days are those of `zone`.
 */
export function partedByNeed<C extends { at: string }>(clocks: readonly C[], now: number, zone: string): Parted<C> {
  const all = clocks.map(({ at }) => nearness(epochOf(at), now, zone));
  const late = all.filter((near) => near === 'late').length;
  const from = late - LATE < 2 ? 0 : late - LATE;
  const today = all.filter((near) => near === 'late' || near === 'today').length;
  const tomorrow = today + all.filter((near) => near === 'tomorrow').length;
  const to = Math.max(today, Math.min(tomorrow, from + MOST), from + LEAST);
  const end = clocks.length - to < 2 ? clocks.length : to;
  return { older: clocks.slice(0, from), near: clocks.slice(from, end), later: clocks.slice(end) };
}
