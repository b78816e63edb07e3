/**
 * Chance that is the same on every machine.
 */

export type Random = () => number;

/** A small seeded generator (mulberry32): the same numbers on every machine. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

export function shuffled<T>(items: readonly T[], random: Random): T[] {
  const left = [...items];
  return items.map(() => left.splice(Math.floor(random() * left.length), 1)[0] as T);
}
