/** The measures of a stringline: time runs right, distance from home runs up. */
import type { Span, Strip } from './strip.ts';

export type Size = 'small' | 'large';
export type Layout = Span & {
  width: number;
  height: number;
  left: number;
  /** Where the ground of the drawing ends on the right. */
  right: number;
  top: number;
  bottom: number;
  block: number;
  /** Pixels from the left of an instant, also of one that is not shown. */
  x: (at: number) => number;
  y: (placeKey: string) => number;
};

const measures = {
  small: { left: 104, top: 26, foot: 24, gap: 24, lane: 118, block: 13, right: 10 },
  large: { left: 128, top: 62, foot: 26, gap: 28, lane: 290, block: 15, right: 18 },
} as const;

/**
 * Lay a stringline out on a width in pixels.
 * @param view what is shown of it
 * @param room pixels that the lane may be high, where the caller knows
 */
export function layOut(strip: Pick<Strip, 'places'>, view: Span, width: number, size: Size, room?: number): Layout {
  const { left, top, foot, gap, lane, block, right } = measures[size];
  const places = [...strip.places].sort((a, b) => a.km - b.km);
  const laneHeight = Math.max(room ? room - top - foot : lane, gap * (places.length - 1));
  const heights = spread(
    places.map((place) => place.km),
    places.length === 1 ? 0 : laneHeight,
    gap,
  );
  const bottom = top + laneHeight;
  const heightOf = new Map(places.map(({ place }, index) => [place.key, bottom - (heights[index] ?? 0)]));
  const scale = Math.max(1, width - left - right) / (view.end - view.start);
  return {
    start: view.start,
    end: view.end,
    width,
    height: bottom + foot,
    left,
    right: width - right,
    top,
    bottom,
    block,
    x: (at) => left + (at - view.start) * scale,
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
