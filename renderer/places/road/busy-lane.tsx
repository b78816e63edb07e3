import type { BusyBar } from '../../../core/contract/road.ts';
import type { Layout } from '../../parts/stringline/layout.ts';
import { inside } from '../../parts/stringline/strands.tsx';
import { meets, type Span } from '../../parts/stringline/strip.ts';
import { fitted } from '../../parts/stringline/text-width.ts';
import style from './busy-lane.module.css';

export type BusySpan = Omit<BusyBar, 'start' | 'end'> & Span;

/** How high the lane is, pixels. */
export const BUSY = 24;
const BAR = 15;
const NARROW = 30;

const marks = { never: 'never to be given up', settle: '', know: 'not yet for certain' };

/** What calendars of other programs take, on the strip of time. */
export function BusyLane({ busy, layout, top, clip }: { busy: readonly BusySpan[]; layout: Layout; top: number; clip: string }) {
  if (busy.length === 0) return null;
  const shown = busy.filter((bar) => meets(bar, layout));
  return (
    <>
      <text className={style.name} x={layout.left - 10} y={top + 12} textAnchor="end">
        Calendars
      </text>
      <g clipPath={`url(#${clip})`}>
        {shown.map((bar, index) => (
          <Busy key={`${bar.start} ${index}`} bar={bar} next={shown[index + 1]?.start ?? Infinity} layout={layout} top={top} />
        ))}
      </g>
      {shown.length === 0 ? (
        <text className={style.none} x={(layout.left + layout.right) / 2} y={top + 12} textAnchor="middle">
          other calendars take nothing in these days
        </text>
      ) : null}
    </>
  );
}

/** What is never to be given up has a firm border, what is not yet for certain a dashed one; the words run on where there is room. */
function Busy({ bar, next, layout, top }: { bar: BusySpan; next: number; layout: Layout; top: number }) {
  const { left, right } = inside(bar, layout);
  const titles = [...new Set(bar.parts.map(({ title }) => title))].join(', ');
  // Words that the bar is too narrow for stand behind it.
  const begin = right - left < NARROW ? Math.max(right, left + 2) : left;
  const room = Math.min(layout.right, layout.x(Math.min(next, layout.end))) - begin - 8;
  const told = bar.parts.map(({ title, calendar }) => `${title}, ${calendar}`);
  return (
    <g className={style[bar.hardness]}>
      <title>{[...told, marks[bar.hardness]].filter((part) => part !== '').join('; ')}</title>
      <rect className={style.bar} x={left} y={top} width={Math.max(2, right - left)} height={BAR} />
      <text className={style.words} x={begin + 4} y={top + 11.5}>
        {fitted(titles, room)}
      </text>
    </g>
  );
}
