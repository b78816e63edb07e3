import type { Layout, Size } from './layout.ts';
import type { Strip } from './strip.ts';
import style from './stringline.module.css';
import { ticks, weekends } from './ticks.ts';

/** Midnights, hours or months as lines, their dates above, and weekends shaded. @param foot how far down the lines go */
export function Calendar({ zone, layout, size, foot }: { zone: string; layout: Layout; size: Size; foot: number }) {
  const all = ticks(layout.start, layout.end, zone);
  const room = (layout.right - layout.left) / Math.max(1, all.length);
  const step = Math.max(1, Math.ceil((size === 'large' ? 52 : 22) / room));
  const wide = room * step > 62;
  return (
    <>
      {weekends(layout.start, layout.end, zone).map((shade) => (
        <rect
          key={shade.from}
          className={style.weekend}
          x={layout.x(shade.from)}
          width={layout.x(shade.to) - layout.x(shade.from)}
          y={layout.top - 8}
          height={foot - layout.top + 8}
        />
      ))}
      {all.map((tick) => (
        <g key={tick.at}>
          <line
            className={tick.major ? style.midnight : style.hour}
            x1={layout.x(tick.at)}
            x2={layout.x(tick.at)}
            y1={layout.top - 8}
            y2={foot}
          />
          {tick.order % step === 0 && layout.x(tick.at) < layout.width - (size === 'large' ? 60 : 18) ? (
            <text className={style.tick} x={layout.x(tick.at) + 4} y={size === 'large' ? 18 : 12}>
              {size === 'large' && wide ? `${tick.before} ` : ''}
              <tspan className={style.bold}>{tick.bold}</tspan>
              {size === 'large' && wide ? ` ${tick.after}` : ''}
            </text>
          ) : null}
        </g>
      ))}
    </>
  );
}

/** The line of now, where it is shown. */
export function Now({ strip, layout, foot }: { strip: Strip; layout: Layout; foot: number }) {
  if (strip.now < layout.start || strip.now > layout.end) return null;
  const x = layout.x(strip.now);
  const atEnd = x > layout.right - 30;
  return (
    <g className={style.now}>
      <line x1={x} x2={x} y1={layout.top - 10} y2={foot} />
      <text x={atEnd ? x - 4 : x + 4} textAnchor={atEnd ? 'end' : 'start'} y={layout.bottom + 20}>
        now
      </text>
    </g>
  );
}
