import { useId } from 'react';
import type { EditLane } from '../../../core/contract/road.ts';
import type { Layout } from '../../parts/stringline/layout.ts';
import { inside } from '../../parts/stringline/strands.tsx';
import { meets, type Span } from '../../parts/stringline/strip.ts';
import { fitted, textWidth } from '../../parts/stringline/text-width.ts';
import { BUSY, BusyLane, type BusySpan } from './busy-lane.tsx';
import { HandsLane, handsHeight, type HandSpan } from './hands-lane.tsx';
import style from './lanes.module.css';

type Short = { words: string; sentence: string };
export type Bar = Span & { jobId: string | null; title: string; firmness: string; row: number; words: string; short: Short[] };
type EditDay = Omit<EditLane['days'][number], 'start' | 'end'> & Span;
export type Edit = Omit<EditLane, 'days'> & { days: EditDay[] };

const ROW = 20;
const BAR = 15;
const EDIT = 40;

/** Where the lanes stand below the stringline, pixels from the top. */
export function laneMeasures(
  { bars, hands, busy }: { bars: readonly Bar[]; hands: readonly HandSpan[]; busy: readonly BusySpan[] },
  top: number,
) {
  const rows = Math.max(1, ...bars.map(({ row }) => row + 1));
  // Whoever keeps no other calendar, or has no hand, sees no lane of them.
  const calendars = top + 8;
  const handsAt = calendars + (busy.length > 0 ? BUSY : 0);
  const kit = handsAt + handsHeight(hands);
  const edit = kit + rows * ROW + 24;
  return { calendars, hands: handsAt, kit, edit, ground: edit + EDIT, height: edit + EDIT + 22 };
}
type LaneMeasures = ReturnType<typeof laneMeasures>;

type LanesProps = {
  bars: readonly Bar[];
  hands: readonly HandSpan[];
  busy: readonly BusySpan[];
  edit: Edit;
  layout: Layout;
  at: LaneMeasures;
};

/** What other calendars take, kit that is out, and hours of editing, on the same strip of time. */
export function Lanes({ bars, hands, busy, edit, layout, at }: LanesProps) {
  const clip = useId();
  const shownBars = bars.filter((bar) => meets(bar, layout));
  const shownDays = edit.days.filter((day) => meets(day, layout));
  const ceiling = edit.ceiling ?? Math.max(8, ...edit.days.map(({ hours }) => hours));
  const middle = (layout.left + layout.right) / 2;
  return (
    <>
      <clipPath id={clip}>
        <rect x={layout.left} y={at.calendars - 4} width={layout.right - layout.left} height={at.height - at.calendars + 4} />
      </clipPath>
      <BusyLane busy={busy} layout={layout} top={at.calendars} clip={clip} />
      <HandsLane hands={hands} layout={layout} top={at.hands} clip={clip} />
      <text className={style.name} x={layout.left - 10} y={at.kit + 12} textAnchor="end">
        Kit out
      </text>
      {shownBars.length === 0 ? (
        <text className={style.none} x={middle} y={at.kit + 12} textAnchor="middle">
          no kit is out in these days
        </text>
      ) : null}
      <g clipPath={`url(#${clip})`}>
        {shownBars.map((bar) => (
          <KitBar key={`${bar.jobId} ${bar.start}`} bar={bar} next={nextInRow(bar, shownBars)} layout={layout} top={at.kit} />
        ))}
      </g>
      <text className={style.name} x={layout.left - 10} y={at.edit + 12} textAnchor="end">
        Edit hours
      </text>
      {edit.ceiling === null ? null : (
        <>
          <text className={style.second} x={layout.left - 10} y={at.edit + 25} textAnchor="end">
            {`of ${edit.ceiling} a day`}
          </text>
          <line className={style.ceiling} x1={layout.left} x2={layout.right} y1={at.edit} y2={at.edit} />
        </>
      )}
      <line className={style.ground} x1={layout.left} x2={layout.right} y1={at.ground} y2={at.ground} />
      {shownDays.length === 0 ? (
        <text className={style.none} x={middle} y={at.ground - 12} textAnchor="middle">
          no editing is planned in these days
        </text>
      ) : null}
      <g clipPath={`url(#${clip})`}>
        {shownDays.map((day) => (
          <DayOfEditing key={day.date} day={day} ceiling={ceiling} layout={layout} ground={at.ground} />
        ))}
      </g>
      <LostWords edit={edit} days={shownDays} layout={layout} y={at.ground + 14} />
    </>
  );
}

const nextInRow = (bar: Bar, bars: readonly Bar[]): number =>
  Math.min(Infinity, ...bars.filter((other) => other.row === bar.row && other.start >= bar.end).map(({ start }) => start));

/** A bar narrower than this lets its words run on, where nothing follows in the row. */
const WORDY = 80;

/** A bar with what is out, cut to its length; what is short is said whole as far as there is room behind it. */
function KitBar({ bar, next, layout, top }: { bar: Bar; next: number; layout: Layout; top: number }) {
  const { left, right } = inside(bar, layout);
  const y = top + bar.row * ROW;
  const short = bar.short.map(({ words }) => words).join(', ');
  const words = short === '' ? bar.words : `${short}; ${bar.words}`;
  const runsOn = short !== '' || right - left < WORDY;
  const room = (runsOn ? Math.min(layout.right, layout.x(next)) : right) - left - 8;
  return (
    <g className={`${style[bar.firmness]} ${short === '' ? '' : style.short}`}>
      <title>{[`${bar.title}: ${bar.words}`, ...bar.short.map(({ sentence }) => sentence)].join('. ')}</title>
      <rect className={style.bar} x={left} y={y} width={Math.max(2, right - left)} height={BAR} />
      <text className={style.words} x={left + 4} y={y + 11.5}>
        {fitted(words, room)}
      </text>
    </g>
  );
}

/** The hours of one date, on the scale of what a day holds. */
function DayOfEditing({ day, ceiling, layout, ground }: { day: EditDay; ceiling: number; layout: Layout; ground: number }) {
  const { left, right } = inside(day, layout);
  const gap = Math.min(5, (right - left) / 8);
  const height = Math.min(1.3, day.hours / ceiling) * EDIT;
  const words = `${day.hours}`;
  return (
    <g className={day.lost ? style.lost : day.over ? style.over : style.planned}>
      <title>{day.parts.map(({ title, hours }) => `${title}: ${hours} h`).join('; ')}</title>
      <rect className={style.hours} x={left + gap} y={ground - height} width={Math.max(1.5, right - left - 2 * gap)} height={height} />
      {right - left > textWidth(words) + 2 ? (
        <text className={style.figure} x={(left + right) / 2} y={ground - height - 4} textAnchor="middle">
          {words}
        </text>
      ) : null}
    </g>
  );
}

/** What loses its day, under the days that lose it. */
function LostWords({ edit, days, layout, y }: { edit: Edit; days: readonly EditDay[]; layout: Layout; y: number }) {
  const first = days.find(({ lost }) => lost);
  if (!first) return null;
  const words = fitted(edit.lost, layout.right - layout.left - 8);
  const x = Math.max(layout.left, Math.min(layout.x(first.start) + 4, layout.right - textWidth(words)));
  return (
    <text className={style.lostWords} x={x} y={y}>
      {words}
    </text>
  );
}
