import type { HandBar } from '../../../core/contract/road.ts';
import type { Layout } from '../../parts/stringline/layout.ts';
import { inside } from '../../parts/stringline/strands.tsx';
import { meets, type Span } from '../../parts/stringline/strip.ts';
import { fitted } from '../../parts/stringline/text-width.ts';
import style from './lanes.module.css';

export type HandSpan = Omit<HandBar, 'start' | 'end'> & Span;

const ROW = 20;
const BAR = 15;

/** How high the lane is, pixels; nothing where no hand holds anything. */
export const handsHeight = (hands: readonly HandSpan[]): number =>
  hands.length === 0 ? 0 : Math.max(...hands.map(({ row }) => row + 1)) * ROW + 6;

/** Whom I have where: said yes is solid, in pencil dashed. */
export function HandsLane({ hands, layout, top, clip }: { hands: readonly HandSpan[]; layout: Layout; top: number; clip: string }) {
  if (hands.length === 0) return null;
  const shown = hands.filter((bar) => meets(bar, layout));
  return (
    <>
      <text className={style.name} x={layout.left - 10} y={top + 12} textAnchor="end">
        Hands
      </text>
      {shown.length === 0 ? (
        <text className={style.none} x={(layout.left + layout.right) / 2} y={top + 12} textAnchor="middle">
          no hand works for you in these days
        </text>
      ) : null}
      <g clipPath={`url(#${clip})`}>
        {shown.map((bar) => (
          <Bar key={`${bar.handId} ${bar.start}`} bar={bar} next={nextInRow(bar, shown)} layout={layout} top={top} />
        ))}
      </g>
    </>
  );
}

const nextInRow = (bar: HandSpan, bars: readonly HandSpan[]): number =>
  Math.min(Infinity, ...bars.filter((other) => other.row === bar.row && other.start >= bar.end).map(({ start }) => start));

function Bar({ bar, next, layout, top }: { bar: HandSpan; next: number; layout: Layout; top: number }) {
  const { left, right } = inside(bar, layout);
  const y = top + bar.row * ROW;
  const words = `${bar.name}: ${bar.title}`;
  return (
    <g className={style[bar.firmness]}>
      <title>{`${words}, ${bar.firmness === 'ink' ? 'said yes' : 'in pencil'}`}</title>
      <rect className={style.bar} x={left} y={y} width={Math.max(2, right - left)} height={BAR} />
      <text className={style.words} x={left + 4} y={y + 11.5}>
        {fitted(words, Math.min(layout.right, layout.x(Math.min(next, layout.end))) - left - 8)}
      </text>
    </g>
  );
}
