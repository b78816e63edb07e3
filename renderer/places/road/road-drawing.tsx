import { useEffect, useEffectEvent, useMemo, useState } from 'react';
import { meets, type Span, type Strip, type StripJob } from '../../parts/stringline/strip.ts';
import { Drawing } from '../../parts/stringline/drawing.tsx';
import { layOut, type Layout } from '../../parts/stringline/layout.ts';
import lines from '../../parts/stringline/stringline.module.css';
import { useWidth } from '../../parts/use-width.ts';
import { DRAGGED, listen } from './gestures.ts';
import type { BusySpan } from './busy-lane.tsx';
import type { HandSpan } from './hands-lane.tsx';
import { laneMeasures, Lanes, type Bar, type Edit } from './lanes.tsx';
import { useView, type MovingView } from './moving-view.ts';
import style from './road.module.css';
import type { Laid } from './use-laid.ts';

/** What the road draws, read for drawing. */
export type RoadStrip = { strip: Strip; bars: Bar[]; hands: HandSpan[]; busy: BusySpan[]; edit: Edit; laidAt: number | null };
type Props = {
  road: RoadStrip;
  view: MovingView;
  /** The view as it came to rest, which settles what places have a line. */
  rest: Span;
  laid: Laid | null;
  unit: 'mi' | 'km';
  /** Pixels that everything may be high. */
  room: number;
  label: string;
};

/** Pixels; on a high window the slopes would only grow steeper. */
const TALLEST = 640;

/** The large drawing, which follows wheel, drag and pinch with every frame. */
export function RoadDrawing({ road, view, rest, laid, unit, room, label }: Props) {
  const [box, width] = useWidth();
  const shown = useView(view);
  const strip = useMemo(() => withMoved(road, laid), [road, laid]);
  const places = placesIn(strip, [rest, shown]);
  const lanesHeight = laneMeasures(road, 0).height;
  const layout = layOut({ places }, shown, width, 'large', Math.min(TALLEST, Math.max(250, room - lanesHeight)));
  const at = laneMeasures(road, layout.height);
  const candidate = strip.jobs.find((job) => job.firmness === 'candidate');

  const [svg, setSvg] = useState<SVGSVGElement | null>(null);
  const ground = useEffectEvent(() => ({ left: layout.left, right: layout.right }));
  const held = useEffectEvent(() => laid && { shift: laid.shift, move: laid.moveTo });
  useEffect(() => (svg ? listen(svg, { view, ground: () => ground(), laid: () => held() }) : undefined), [svg, view]);
  return (
    <div ref={box} className={lines.box}>
      {width > 0 ? (
        <svg
          ref={setSvg}
          role="img"
          aria-label={label}
          width={width}
          height={at.height}
          viewBox={`0 0 ${width} ${at.height}`}
          preserveAspectRatio="xMinYMin"
          className={`${lines.large} ${style.drawing}`}
        >
          <rect className={style.ground} x={0} y={0} width={width} height={at.height} />
          <Drawing strip={{ ...strip, places }} layout={layout} size="large" unit={unit} foot={at.ground} />
          <Lanes bars={road.bars} hands={road.hands} busy={road.busy} edit={road.edit} layout={layout} at={at} />
          {candidate && laid ? <Hold job={candidate} layout={layout} /> : null}
        </svg>
      ) : null}
    </div>
  );
}

/** Where the candidate can be taken hold of. */
function Hold({ job, layout }: { job: StripJob; layout: Layout }) {
  return job.blocks
    .filter((block) => meets({ start: job.start, end: job.end }, layout) && meets(block, layout))
    .map((block) => {
      const [left, right] = [layout.x(block.start), layout.x(block.end)];
      const more = Math.max(0, 24 - (right - left)) / 2;
      return (
        <rect
          key={block.start}
          {...{ [DRAGGED]: '' }}
          className={style.hold}
          x={left - more}
          width={right - left + 2 * more}
          y={layout.y(block.placeKey) - 14}
          height={28}
        />
      );
    });
}

/** The candidate where its days are moved to, also before the store has answered; what it clashes with is not known until then. */
function withMoved({ strip, laidAt }: RoadStrip, laid: Laid | null): Strip {
  const by = laid && laidAt !== null ? laid.firstCallAt - laidAt : 0;
  if (by === 0) return strip;
  const moved = <T extends Span>(parts: readonly T[]): T[] =>
    parts.map((part) => ({ ...part, start: part.start + by, end: part.end + by }));
  return {
    ...strip,
    clashes: [],
    jobs: strip.jobs.map((job) =>
      job.firmness === 'candidate'
        ? {
            ...job,
            start: job.start + by,
            end: job.end + by,
            blocks: moved(job.blocks),
            ways: moved(job.ways),
            stands: moved(job.stands),
            rests: moved(job.rests),
          }
        : job,
    ),
  };
}

/** Home, and the places of what meets any of these spans: a movement may bring lines in, and takes them out only once it rests. */
function placesIn(strip: Strip, spans: readonly Span[]): Strip['places'] {
  const keys = new Set<string>();
  const near = (part: Span): boolean => spans.some((span) => meets(part, span));
  for (const job of strip.jobs) {
    if (!near(job)) continue;
    for (const block of job.blocks) if (near(block)) keys.add(block.placeKey);
    for (const way of job.ways) if (near(way)) keys.add(way.fromKey).add(way.toKey);
    for (const stand of job.stands) if (near(stand)) keys.add(stand.placeKey);
  }
  return strip.places.filter(({ place, home }) => home || keys.has(place.key));
}
