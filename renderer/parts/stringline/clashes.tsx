import type { Layout, Size } from './layout.ts';
import { meets, type Strip } from './strip.ts';
import style from './stringline.module.css';
import { textWidth } from './text-width.ts';

type Ring = { key: string; sentence: string; short: string; cx: number; cy: number; rx: number; ry: number; x: number; y: number };

const LINE = 15;

/** Where the rings of what clashes stand, and the words beside each: below it, and below the words of another where they would touch. */
export function ringsOf(clashes: Strip['clashes'], layout: Layout, size: Size): Ring[] {
  const rings: Ring[] = [];
  for (const clash of clashes.filter((each) => meets(each, layout))) {
    const [left, right] = [layout.x(Math.max(clash.start, layout.start)), layout.x(Math.min(clash.end, layout.end))];
    const [cx, cy] = [(left + right) / 2, layout.y(clash.placeKey)];
    const rx = Math.max(size === 'large' ? 26 : 16, (right - left) / 2 + 8);
    const ry = size === 'large' ? 24 : 17;
    const { short, sentence, placeKey, start } = clash;
    const width = textWidth(short, 600) + 8;
    const x = Math.max(layout.left, Math.min(cx + rx * 0.5, layout.right - width));
    const touches = (y: number): boolean =>
      rings.some((other) => Math.abs(other.y - y) < LINE && x < other.x + textWidth(other.short, 600) + 8 && other.x < x + width);
    let y = cy + ry + LINE;
    while (touches(y)) y += LINE;
    rings.push({ key: `${placeKey} ${start}`, sentence, short, cx, cy, rx, ry, x, y });
  }
  return rings;
}

/** The room that rings and the words beside them take, which other words keep clear of. */
export const roomOf = (rings: readonly Ring[]) =>
  rings.flatMap(({ cx, cy, rx, ry, x, y, short }) => [
    { left: cx - rx, right: cx + rx, top: cy - ry, bottom: cy + ry },
    { left: x - 4, right: x + textWidth(short, 600) + 4, top: y - 11, bottom: y + 3 },
  ]);

/** Every clash ringed, with the missing hours in a few words beside the ring where there is room for them. */
export function Clashes({ rings, size }: { rings: readonly Ring[]; size: Size }) {
  return rings.map(({ key, sentence, short, cx, cy, rx, ry, x, y }) => (
    <g key={key} className={style.clash}>
      <title>{sentence}</title>
      <ellipse cx={cx} cy={cy} rx={rx} ry={ry} />
      {size === 'large' ? (
        <text x={x} y={y}>
          {short}
        </text>
      ) : null}
    </g>
  ));
}
