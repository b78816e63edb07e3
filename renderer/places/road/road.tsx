import { useQuery } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import type { z } from 'zod';
import type { JobRow } from '../../../core/contract/jobs.ts';
import {
  DAY_MS,
  datesOf,
  dayOf,
  inSight,
  lookingAt,
  panned,
  viewOf,
  windowAround,
  zoomOf,
  zooms,
  type Zoom,
} from '../../../core/road/view.ts';
import { dateIn } from '../../../core/time/wall.ts';
import { datesInWords } from '../../../core/words/dates.ts';
import { roadEarlier } from '../../actions/road-earlier.ts';
import { roadLater } from '../../actions/road-later.ts';
import { roadPrint } from '../../actions/road-print.ts';
import { roadToday } from '../../actions/road-today.ts';
import { ask } from '../../ask.ts';
import { Asked } from '../../parts/asked.tsx';
import { ActionButton } from '../../parts/action-button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Empty } from '../../parts/empty.tsx';
import { Fold } from '../../parts/fold.tsx';
import { Segments } from '../../parts/segments.tsx';
import { inWords } from '../../parts/stringline/stringline.tsx';
import { useWindowHeight } from '../../parts/use-window-height.ts';
import { useScenePart } from '../../scene.ts';
import { Clashes } from './clashes.tsx';
import { EditPlanPart } from './edit-plan.tsx';
import { LaidFindings, LaidOn } from './laid-on.tsx';
import { MovingView, useOfView, useViewAtRest } from './moving-view.ts';
import { OwnTime } from './own-time.tsx';
import { readForDrawing, within } from './read-road.ts';
import { RoadDrawing } from './road-drawing.tsx';
import { RoadTables } from './road-tables.tsx';
import style from './road.module.css';
import { useLaid, type Laid } from './use-laid.ts';

type Row = z.infer<typeof JobRow>;
const zoomOptions = (Object.keys(zooms) as Zoom[]).map((zoom) => ({ value: zoom, label: zoom }));
const NONE = 'none';

/** The Road: where am I, and does it fit? */
export function RoadPlace() {
  const setup = useQuery(ask.setup.get.queryOptions({ input: {} }));
  return (
    <Asked asked={setup}>
      {({ setup: mine }) =>
        mine ? (
          <>
            <Road unit={mine.distance} zone={mine.home.zone} />
            <EditPlanPart home={mine.home} />
            <OwnTime home={mine.home} />
          </>
        ) : (
          <Empty title="The Road">
            The Road needs a home to measure from. <a href="#/">Begin on the Desk.</a>
          </Empty>
        )
      }
    </Asked>
  );
}

function Road({ unit, zone }: { unit: 'mi' | 'km'; zone: string }) {
  const today = dateIn(zone, Temporal.Now.instant().epochMilliseconds);
  const [view] = useState(() => new MovingView(viewOf(today, 'fortnight', zone)));
  const rest = useViewAtRest(view);
  const [from, days] = useOfView(view, (shown) => Object.values(windowAround(shown)).join(' ')).split(' ');
  const zoom = useOfView(view, zoomOf);
  const atToday = useOfView(view, (shown) => dayOf(shown, zone) === today);
  const [candidate, setCandidate] = useState<string | null>(null);
  const laid = useLaid(candidate);
  const asked = useQuery(
    ask.road.see.queryOptions({
      input: { from: from ?? today, days: Number(days), ...(laid ? { candidate: laid.job.id, shiftDays: laid.asked } : {}) },
      placeholderData: (before) => before,
    }),
  );
  // Days that cannot be are refused; what was drawn before stays, and what is laid on can be moved further.
  const [known, setKnown] = useState(asked.data);
  if (asked.data && asked.data !== known) setKnown(asked.data);
  const height = useWindowHeight();

  const shift = laid?.shift ?? 0;
  const road = useMemo(
    () => ({
      move: (halves: number) => view.show(panned(view.now(), (halves * (view.now().end - view.now().start)) / 2)),
      zoom: (steps: number) => view.zoom(2 ** steps),
      toToday: () => view.show(lookingAt(today, view.now(), zone)),
      atToday,
      laid: laid
        ? { shift, move: (by: number) => moveLaid(laid, by, view), keep: laid.keep, putBack: () => moveLaid(laid, -shift, view) }
        : undefined,
    }),
    [view, today, zone, atToday, laid, shift],
  );
  useScenePart('road', road);

  const layOn = (chosen: Row | undefined): void => {
    setCandidate(chosen?.id ?? null);
    if (chosen?.firstCall) view.show(viewOf(chosen.firstCall.wall.slice(0, 10), zoom ?? 'fortnight', zone));
  };
  const drawn = useMemo(() => known && readForDrawing(known), [known]);
  const seen = useMemo(() => known && within(known, rest), [known, rest]);
  const dates = datesInWords(datesOf(rest, zone));
  return (
    <div className={style.road}>
      <div className={style.head}>
        <h1 className={style.title}>{dates}</h1>
        <div className={style.tools}>
          <Segments
            label="How much of the road is shown"
            bare
            value={zoom}
            options={zoomOptions}
            onChange={(chosen) => view.show(viewOf(dayOf(view.now(), zone), chosen, zone))}
          />
          <ActionButton action={roadEarlier} />
          <ActionButton action={roadToday} />
          <ActionButton action={roadLater} />
          <LayOn chosen={candidate} onChoose={layOn} />
          <ActionButton action={roadPrint} />
        </div>
      </div>
      {laid ? <LaidOn laid={laid} /> : null}
      <Asked asked={{ data: drawn && seen && { drawn, seen }, error: asked.error }}>
        {({ drawn, seen }) => (
          <>
            <div className={style.sheet}>
              <RoadDrawing
                road={drawn}
                view={view}
                rest={rest}
                laid={laid}
                unit={unit}
                room={height - (laid ? 330 : 280)}
                label={inWords(seen.stringline)}
              />
            </div>
            <p className={style.legend}>
              Height is distance from home; a slope is a journey, flat is being somewhere, a block is paid time, hatching is rest, dashes
              are pencil. One person can be on one line only: where a solid and a dashed line run at once, something has to give.{' '}
              <span className={style.keys}>
                Drag or arrow keys move it; Ctrl and wheel, pinch or + and − zoom; Home goes to today.
                {laid ? ' Drag the dashed blocks of what is laid on, or Alt and arrow keys, to try other days.' : ''}
              </span>
            </p>
            {seen.stringline.jobs.length === 0 ? (
              <p className={style.empty}>
                Nothing is on the road in these days. What you pencil or ink appears here: <a href="#/">paste an inquiry on the Desk</a>,
                make its quote, and its dates stand here in pencil.
              </p>
            ) : null}
            {laid ? <LaidFindings laid={laid} /> : null}
            <Clashes seen={seen} findings={laid !== null} />
            {seen.stringline.jobs.length > 0 ? <Fold title="The same as a table">{() => <RoadTables seen={seen} />}</Fold> : null}
          </>
        )}
      </Asked>
    </div>
  );
}

/** Moved by keys or buttons, what is laid on stays in sight. */
function moveLaid(laid: Laid, by: number, view: MovingView): void {
  laid.moveTo(laid.shift + by);
  view.show(inSight(view.now(), laid.firstCallAt + by * DAY_MS));
}

/** Which open inquiry is laid on the road. */
function LayOn({ chosen, onChoose }: { chosen: string | null; onChoose: (row: Row | undefined) => void }) {
  const open = useQuery(ask.jobs.list.queryOptions({ input: { states: ['inquiry', 'quoted', 'ran out'] } }));
  const candidates = open.data?.jobs.filter((job) => job.firstCall !== null && job.place !== null) ?? [];
  if (candidates.length === 0 && chosen === null) return null;
  return (
    <Choice
      label="Lay an inquiry on"
      bare
      value={chosen ?? NONE}
      options={[{ value: NONE, label: 'Nothing laid on' }, ...candidates.map((job) => ({ value: job.id, label: `Laid on: ${job.title}` }))]}
      onChange={(id) => onChoose(candidates.find((job) => job.id === id))}
    />
  );
}
