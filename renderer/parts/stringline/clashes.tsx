import type { Stringline } from '../../../core/contract/road.ts';
import { epochOf } from '../../../core/time/read.ts';
import type { Layout, Size } from './layout.ts';
import style from './stringline.module.css';

/** Every clash ringed, with the missing hours in a few words beside the ring where there is room for them. */
export function Clashes({ data, layout, size }: { data: Stringline; layout: Layout; size: Size }) {
  return data.clashes
    .filter((clash) => epochOf(clash.end) > layout.from && epochOf(clash.start) < layout.to)
    .map((clash) => {
      const [left, right] = [layout.x(epochOf(clash.start)), layout.x(epochOf(clash.end))];
      const [cx, cy] = [(left + right) / 2, layout.y(clash.placeKey)];
      const rx = Math.max(size === 'large' ? 26 : 16, (right - left) / 2 + 8);
      const ry = size === 'large' ? 24 : 17;
      const atEnd = cx + rx + clash.short.length * 6.5 > layout.width;
      return (
        <g key={`${clash.placeKey} ${clash.start}`} className={style.clash}>
          <title>{clash.sentence}</title>
          <ellipse cx={cx} cy={cy} rx={rx} ry={ry} />
          {size === 'large' ? (
            <text x={atEnd ? cx - rx : cx + rx * 0.5} y={cy + ry + 15} textAnchor={atEnd ? 'end' : 'start'}>
              {clash.short}
            </text>
          ) : null}
        </g>
      );
    });
}
