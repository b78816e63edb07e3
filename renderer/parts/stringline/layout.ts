/** The measures of a stringline: time runs right, distance from home runs up. */
import type { Stringline } from '../../../core/contract/road.ts';
import { epochOf } from '../../../core/time/read.ts';

export type Size = 'small' | 'large';
export type Layout = {
  width: number;
  height: number;
  left: number;
  top: number;
  bottom: number;
  block: number;
  from: number;
  to: number;
  x: (at: number) => number;
  y: (placeKey: string) => number;
};

const measures = {
  small: { left: 104, top: 26, foot: 24, gap: 24, lane: 118, block: 13, right: 10 },
  large: { left: 128, top: 62, foot: 26, gap: 46, lane: 290, block: 15, right: 18 },
} as const;

/**
 * Lay a stringline out on a width in pixels.
 * @param room pixels that the lane may be high, where the caller knows
 */
export function layOut(data: Stringline, width: number, size: Size, room?: number): Layout {
  const { left, top, foot, gap, lane, block, right } = measures[size];
  const places = [...data.places].sort((a, b) => a.km - b.km);
  const laneHeight = Math.max(room ? room - top - foot : lane, gap * (places.length - 1));
  const heights = spread(
    places.map((place) => place.km),
    places.length === 1 ? 0 : laneHeight,
    gap,
  );
  const bottom = top + laneHeight;
  const heightOf = new Map(places.map(({ place }, index) => [place.key, bottom - (heights[index] ?? 0)]));
  const [from, to] = [epochOf(data.from), epochOf(data.to)];
  const inside = Math.max(1, width - left - right);
  return {
    width,
    height: bottom + foot,
    left,
    top,
    bottom,
    block,
    from,
    to,
    x: (at) => left + (Math.min(Math.max(at, from), to) - from) * (inside / (to - from)),
    y: (placeKey) => heightOf.get(placeKey) ?? bottom,
  };
}

/** Heights in proportion to distance, pushed apart to at least `gap` where places crowd, and never over `room`. */
export function spread(distances: readonly number[], room: number, gap: number): number[] {
  const furthest = Math.max(1, ...distances);
  const heights: number[] = [];
  for (const distance of distances) {
    const wanted = (distance / furthest) * room;
    heights.push(heights.length === 0 ? 0 : Math.max(wanted, (heights.at(-1) ?? 0) + gap));
  }
  for (let index = heights.length - 1; index > 0; index -= 1) {
    const above = index === heights.length - 1 ? room : (heights[index + 1] ?? room) - gap;
    heights[index] = Math.min(heights[index] ?? 0, above);
  }
  return heights;
}
