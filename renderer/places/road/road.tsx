import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { dateIn, dateLater } from '../../../core/time/wall.ts';
import { datesInWords } from '../../../core/words/dates.ts';
import { roadEarlier } from '../../actions/road-earlier.ts';
import { roadLater } from '../../actions/road-later.ts';
import { roadToday } from '../../actions/road-today.ts';
import { ask } from '../../ask.ts';
import { Asked } from '../../parts/asked.tsx';
import { ActionButton } from '../../parts/action-button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Empty } from '../../parts/empty.tsx';
import { Fold } from '../../parts/fold.tsx';
import { Segments } from '../../parts/segments.tsx';
import { Stringline } from '../../parts/stringline/stringline.tsx';
import { useWindowHeight } from '../../parts/use-window-height.ts';
import { useScenePart } from '../../scene.ts';
import { OwnTime } from './own-time.tsx';
import { RoadTable } from './road-table.tsx';
import style from './road.module.css';

const zooms = ['day', 'week', 'fortnight', 'season', 'year'] as const;
type Zoom = (typeof zooms)[number];
const lengths: Record<Zoom, number> = { day: 1, week: 7, fortnight: 14, season: 91, year: 365 };
const zoomOptions = zooms.map((zoom) => ({ value: zoom, label: zoom }));
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

/** Where a zoom begins: a little before the day looked at, so that what just was is still seen. */
const firstDate = (day: string, zoom: Zoom): string => dateLater(day, -Math.floor(lengths[zoom] / 5));
const datesFrom = (from: string, days: number): string[] => Array.from({ length: days }, (_, index) => dateLater(from, index));

function Road({ unit, zone }: { unit: 'mi' | 'km'; zone: string }) {
  const today = dateIn(zone, Temporal.Now.instant().epochMilliseconds);
  const [zoom, setZoom] = useState<Zoom>('fortnight');
  const [day, setDay] = useState(today);
  const [candidate, setCandidate] = useState(NONE);
  const [from, days] = [firstDate(day, zoom), lengths[zoom]];
  const asked = useQuery(
    ask.road.see.queryOptions({ input: { from, days, ...(candidate === NONE ? {} : { candidate }) }, placeholderData: (before) => before }),
  );
  const open = useQuery(ask.jobs.list.queryOptions({ input: { states: ['inquiry', 'quoted', 'ran out'] } }));
  const candidates = open.data?.jobs.filter((job) => job.firstCall !== null) ?? [];
  const height = useWindowHeight();

  const atToday = day === today;
  const road = {
    move: (strips: number) => setDay((before) => dateLater(before, strips * Math.max(1, Math.round(days / 2)))),
    zoom: (steps: number) => setZoom((before) => zooms[Math.min(zooms.length - 1, Math.max(0, zooms.indexOf(before) + steps))] ?? before),
    toToday: () => setDay(today),
    atToday,
  };
  useScenePart('road', road);

  return (
    <div className={style.road}>
      <div className={style.head}>
        <h1 className={style.title}>{datesInWords(datesFrom(from, days))}</h1>
        <div className={style.tools}>
          <Segments label="How much of the road is shown" bare value={zoom} options={zoomOptions} onChange={setZoom} />
          <ActionButton action={roadEarlier} />
          <ActionButton action={roadToday} />
          <ActionButton action={roadLater} />
          {candidates.length > 0 ? (
            <Choice
              label="Lay an inquiry on"
              bare
              value={candidate}
              options={[
                { value: NONE, label: 'Nothing laid on' },
                ...candidates.map((job) => ({ value: job.id, label: `Laid on: ${job.title}` })),
              ]}
              onChange={(chosen) => {
                setCandidate(chosen);
                const first = candidates.find((job) => job.id === chosen)?.firstCall;
                if (first) setDay(first.wall.slice(0, 10));
              }}
            />
          ) : null}
        </div>
      </div>
      <Asked asked={asked}>
        {({ stringline }) => (
          <>
            <div className={style.sheet}>
              <Stringline data={stringline} size="large" unit={unit} room={Math.max(320, height - 330)} />
            </div>
            <p className={style.legend}>
              Height is distance from home; a slope is a journey, flat is being somewhere, a block is paid time, hatching is rest, dashes
              are pencil. One person can be on one line only: where a solid and a dashed line run at once, something has to give. Arrow keys
              move it, + and - zoom, Home goes to today.
            </p>
            {stringline.jobs.length === 0 ? (
              <p className={style.empty}>Nothing is on the road in these days. What you pencil or ink appears here.</p>
            ) : null}
            {stringline.clashes.length > 0 ? (
              <ul className={style.clashes} aria-label="Clashes">
                {stringline.clashes.map((clash) => (
                  <li key={`${clash.placeKey} ${clash.start}`}>
                    <strong className={style.short}>{`${clash.short.charAt(0).toUpperCase()}${clash.short.slice(1)}. `}</strong>
                    {clash.sentence}
                    {clash.jobIds.map((id) => (
                      <a key={id} href={`#/jobs/${id}`}>{`Open ${stringline.jobs.find((job) => job.jobId === id)?.title ?? 'the job'}`}</a>
                    ))}
                  </li>
                ))}
              </ul>
            ) : null}
            {stringline.jobs.length > 0 ? (
              <Fold title="The same as a table">
                <RoadTable data={stringline} />
              </Fold>
            ) : null}
          </>
        )}
      </Asked>
    </div>
  );
}
