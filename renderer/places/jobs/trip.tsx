import { useQuery } from '@tanstack/react-query';
import { Fragment, type ReactNode } from 'react';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { Leg } from '../../../core/contract/trips.ts';
import { formatMoney, formatNumber } from '../../../core/money/format.ts';
import { distanceKm } from '../../../core/places/distance.ts';
import { newsInWords } from '../../../core/trips/news.ts';
import { timeAround } from '../../../core/trips/ways.ts';
import { lengthInWords } from '../../../core/words/amounts.ts';
import { wallInWords, zoneInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { useOneOpen } from '../../parts/use-one-open.ts';
import { sayWithUndo } from '../../undo.ts';
import { RememberedWays } from './remembered-ways.tsx';
import { TicketReader } from './ticket-reader.tsx';
import { LegForm } from './trip-leg-form.tsx';
import { LegNewsForm } from './trip-leg-news.tsx';
import style from './trip.module.css';
import { blankLeg, typedLeg } from './typed-leg.ts';

/** The one form that is open: a new leg, a confirmation, a leg that is changed, or what became of its ticket. */
type Open = { what: 'new' | 'paste' } | { what: 'change' | 'news'; leg: string };

/** An airport or port this near to a place serves it, km: what is left is the way between the two. */
const SERVES = 80;

/** The movements of the job from home to home: legs that are known, and the estimated way where there is none. */
export function Trip({ job, home, currency, unit }: { job: Job; home: Place; currency: string; unit: 'mi' | 'km' }) {
  const [editing, setEditing, close] = useOneOpen<Open>();
  const data = useQuery(ask.trips.legs.queryOptions({ input: { jobId: job.id } })).data;
  if (!data) return null;
  const { legs, breaks } = data;
  const { place } = job;
  const last = legs.at(-1)?.to;
  const nextEnds = last && place ? blankLeg(last, last.key === place.key ? home : place, currency) : blankLeg(home, place, currency);
  const away = place && place.key !== home.key ? place : null;
  const serves = (end: Place): boolean => away !== null && (end.key === away.key || distanceKm(end, away) < SERVES);
  const isOpen = (what: 'change' | 'news', { id }: Leg): boolean =>
    editing !== null && 'leg' in editing && editing.what === what && editing.leg === id;
  const going = legs.filter(({ news }) => news?.kind !== 'cancelled');
  const [there, back] = [going.find(({ to }) => serves(to)), going.findLast(({ from }) => serves(from))];
  return (
    <section className={style.part} aria-labelledby="trip">
      <div className={style.head}>
        <h2 id="trip">Trip</h2>
        {editing === null ? (
          <>
            <Button kind="quiet" onPress={() => setEditing({ what: 'new' })}>
              {legs.length === 0 ? 'Add a leg' : 'One more leg'}
            </Button>
            <Button kind="quiet" onPress={() => setEditing({ what: 'paste' })}>
              Paste a confirmation
            </Button>
          </>
        ) : null}
      </div>
      <ol className={style.legs}>
        {away && there === undefined ? <Estimated from={home} to={away} /> : null}
        {legs.map((leg) =>
          isOpen('change', leg) ? (
            <li key={leg.id}>
              <LegForm jobId={job.id} start={typedLeg(leg, currency)} unit={unit} stored={leg} onDone={close} />
            </li>
          ) : (
            <Fragment key={leg.id}>
              <LegRow
                leg={leg}
                broken={breaks.find(({ second }) => second === leg.id)?.sentence}
                unit={unit}
                onChange={() => setEditing({ what: 'change', leg: leg.id })}
                onNews={() => setEditing({ what: 'news', leg: leg.id })}
              >
                {isOpen('news', leg) ? <LegNewsForm leg={leg} onDone={close} /> : null}
              </LegRow>
              {away && leg === there && leg.to.key !== away.key ? <Estimated from={leg.to} to={away} /> : null}
            </Fragment>
          ),
        )}
        {away && back === undefined ? <Estimated from={away} to={home} /> : null}
      </ol>
      {away || legs.length > 0 ? null : <p className={style.second}>{place ? 'At home: no way to go.' : 'The place is not known yet.'}</p>}
      {editing?.what === 'new' ? <LegForm jobId={job.id} start={nextEnds} unit={unit} onDone={close} /> : null}
      {editing?.what === 'paste' ? <TicketReader jobId={job.id} legs={legs} currency={currency} unit={unit} onDone={close} /> : null}
      <RememberedWays />
    </section>
  );
}

function Estimated({ from, to }: { from: Place; to: Place }) {
  const { data } = useQuery(ask.trips.estimate.queryOptions({ input: { from, to } }));
  return data ? <li className={style.second}>{data.sentence}</li> : null;
}

type RowProps = {
  leg: Leg;
  unit: 'mi' | 'km';
  /** Why it does not follow on the leg before it. */
  broken: string | undefined;
  onChange: () => void;
  onNews: () => void;
  /** The form for its news, while that is open. */
  children: ReactNode;
};

function LegRow({ leg, unit, broken, onChange, onNews, children }: RowProps) {
  const { running } = useDeeds();
  const names = `${leg.mode} ${leg.from.name} to ${leg.to.name}`;
  const takeOut = async (): Promise<void> => {
    const { id, version, jobId, news: _news, ...fields } = leg;
    const gone = await deed(() => client.trips.dropLeg({ id, version }));
    if (gone)
      sayWithUndo(`The ${names} was taken out.`, 'Put it back', () => client.trips.setLeg({ jobId, fields }), `The ${names} is back.`);
  };
  return (
    <li className={style.leg}>
      <span>
        <strong>{names}</strong> {`${whenOf(leg)}, ${leg.source}`}
        <span className={style.second}>{` ${besideOf(leg, unit)}`}</span>
      </span>
      <span className={style.buttons}>
        {leg.source === 'ticketed' ? (
          <Button kind="quiet" onPress={onNews} aria-label={`Late or cancelled: ${names}`}>
            Late or cancelled
          </Button>
        ) : null}
        <Button kind="quiet" onPress={onChange} aria-label={`Change the ${names}`}>
          Change
        </Button>
        <Button kind="quiet" isDisabled={running > 0} onPress={() => void takeOut()} aria-label={`Take out the ${names}`}>
          Take out
        </Button>
      </span>
      {leg.news ? <p className={style.brokenLeg}>{newsInWords(leg, leg.news)}.</p> : null}
      {broken ? <p className={style.brokenLeg}>{broken}</p> : null}
      {children}
    </li>
  );
}

/** Both ends on their own clocks, the second clock named where it is another. */
function whenOf({ depart, arrive, from, to }: Leg): string {
  const sameDate = depart.slice(0, 10) === arrive.slice(0, 10);
  const clock = from.zone === to.zone ? '' : ` in ${zoneInWords(to.zone)}`;
  return `${wallInWords(depart)} to ${sameDate ? arrive.slice(11) : wallInWords(arrive)}${clock}`;
}

/** What stands beside a leg: the time around it, its berth, its fare and baggage, what giving it up costs, its note. */
function besideOf({ mode, from, to, before, after, berth, distance, fare, baggage, cost, note }: Leg, unit: 'mi' | 'km'): string {
  const around = timeAround(mode, from, to);
  const [early, late] = [before ?? around.before, after ?? around.after];
  return [
    early > 0 ? `${lengthInWords(early)} before` : '',
    late > 0 ? `${lengthInWords(late)} after` : '',
    berth ? 'berth' : '',
    distance ? `${formatNumber(distance)} ${unit} driven` : '',
    fare ? formatMoney(fare, { code: true }) : '',
    baggage ?? '',
    cost ? `giving it up costs ${cost}` : '',
    note,
  ]
    .filter((part) => part !== '')
    .join(', ');
}
