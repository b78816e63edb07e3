import { useQuery } from '@tanstack/react-query';
import { useCallback, useRef, useState } from 'react';
import type { Finding, FitResult, Lift } from '../../../core/contract/fit.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { Stringline as Data } from '../../../core/contract/road.ts';
import { combined } from '../../../core/fit/combined.ts';
import { decline } from '../../actions/decline.ts';
import { newHand } from '../../actions/new-hand.ts';
import { ask } from '../../ask.ts';
import { Button } from '../../parts/button.tsx';
import { Stringline } from '../../parts/stringline/stringline.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { sceneNow, useScene, useScenePart } from '../../scene.ts';
import { troubleOf } from '../../trouble.ts';
import type { ChangeJob } from './change-job.ts';
import { NearestDates } from './verdict-dates.tsx';
import style from './verdict.module.css';
import { TriedOn } from './verdict-tried.tsx';
import { WayEditor } from './way-editor.tsx';

const heads: Record<FitResult['answer'], string> = { free: 'Free', 'free if': 'Free if …', 'not possible': 'Not possible' };

const WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const thingsInWords = (count: number): string => `${WORDS[count] ?? count} ${count === 1 ? 'thing' : 'things'}`;

function counts(findings: readonly Finding[]): string {
  const of = (hardness: Finding['hardness']): number => findings.filter((finding) => finding.hardness === hardness).length;
  const parts = [
    of('blocks') > 0 ? `${thingsInWords(of('blocks'))} ${of('blocks') === 1 ? 'stands' : 'stand'} against it` : '',
    of('settle') > 0 ? `${thingsInWords(of('settle'))} must be settled` : '',
    of('know') > 0 ? `${WORDS[of('know')] ?? of('know')} ${of('know') === 1 ? 'is' : 'are'} good to know` : '',
  ];
  return parts.filter((part) => part !== '').join('; ') || 'nothing stands against it';
}

/** The answer: can this be taken, what breaks, and what would lift it. Lifts are tried on before anything is saved. */
export function Verdict({ job, home, unit, save, locked }: { job: Job; home: Place; unit: 'mi' | 'km'; save: ChangeJob; locked: boolean }) {
  const [tried, setTried] = useState<Lift[]>([]);
  const [way, setWay] = useState<'own' | NonNullable<Lift['way']> | null>(null);
  const [otherDates, setOtherDates] = useState(false);
  const tryOn = combined(tried.map((lift) => lift.tryOn ?? {}));
  const asked = useQuery(
    ask.fit.check.queryOptions({ input: { jobId: job.id, ...(tried.length > 0 ? { tryOn } : {}) }, placeholderData: (before) => before }),
  );
  useScenePart('answer', tried.length === 0 ? asked.data?.result.answer : undefined);
  // The button that was pressed is gone afterwards, so whoever uses the keyboard goes on from the answer that it changed.
  const head = useRef<HTMLHeadingElement>(null);
  const setAndRead = (lifts: Lift[]): void => {
    setTried(lifts);
    head.current?.focus();
  };
  const tryIt = useCallback((lift: Lift): void => {
    setTried((now) => [...now, lift]);
    head.current?.focus();
  }, []);
  useScenePart('tryIt', tryIt);
  const takeBack = (lift: Lift): void => setAndRead(tried.filter((other) => other !== lift));
  const triedOn =
    tried.length > 0 ? (
      <TriedOn tried={tried} job={job} save={save} locked={locked} takeBack={takeBack} takeAllBack={() => setAndRead([])} />
    ) : null;
  if (!asked.data)
    return asked.error ? (
      <div>
        <TroubleNote trouble={troubleOf(asked.error)} />
        {triedOn}
      </div>
    ) : null;

  const { result, stringline } = asked.data;
  const places = stringline?.places.map((each) => each.place) ?? [];
  const onLift = (lift: Lift): void => {
    if (lift.tryOn) tryIt(lift);
    else if (lift.way) setWay(lift.way);
    else if (lift.kind === 'other dates') setOtherDates(true);
    else if (lift.kind === 'legs') document.getElementById('trip')?.scrollIntoView({ block: 'center' });
    else if (lift.kind === 'hand') void newHand.perform(sceneNow());
  };
  return (
    <section className={style.verdict} aria-labelledby="verdict" aria-live="polite">
      <h2 id="verdict" ref={head} tabIndex={-1} className={`${style.answer} ${result.answer === 'not possible' ? style.no : ''}`}>
        {result.missing.length > 0 ? 'Not known yet' : job.state === 'inked' ? 'Inked' : heads[result.answer]}
      </h2>
      <p className={style.counts}>
        {result.missing.length > 0 ? 'something is missing before it can be answered' : counts(result.findings)}
      </p>
      {triedOn}
      <ol className={style.findings}>
        {result.findings.map((finding) => (
          <FindingRow key={`${finding.kind} ${finding.sentence}`} finding={finding} onLift={onLift} locked={locked} />
        ))}
      </ol>
      {result.fine ? (
        <p className={style.fine}>
          {result.missing.length === 0 ? (
            <span className={style.ok} aria-hidden>
              ✓
            </span>
          ) : null}
          {result.fine}
        </p>
      ) : null}
      {otherDates ? <NearestDates jobId={job.id} tryOn={tryOn} locked={locked} onTry={tryIt} onClose={() => setOtherDates(false)} /> : null}
      {way !== null && job.place ? (
        <WayEditor
          way={way === 'own' ? null : way}
          home={home}
          place={job.place}
          places={places}
          onTry={tryIt}
          onClose={() => setWay(null)}
        />
      ) : null}
      {stringline ? <Stringline data={asStored(stringline, job)} unit={unit} /> : null}
      {way === null && job.place && job.place.key !== home.key ? (
        <WaySentence home={home} place={job.place} onType={() => setWay('own')} />
      ) : null}
    </section>
  );
}

/** A job that is in pencil or ink already is drawn as that, not as a candidate. */
function asStored(stringline: Data, job: Job): Data {
  const firmness = job.state === 'inked' ? 'ink' : job.state === 'pencilled' ? 'pencil' : 'candidate';
  return {
    ...stringline,
    jobs: stringline.jobs.map((each) => (each.jobId === job.id || each.jobId === null ? { ...each, firmness } : each)),
  };
}

const hardnessWords: Record<Finding['hardness'], string> = { blocks: 'stands against it', settle: 'must be settled', know: 'good to know' };

/** A finding with its lifts: pressing one tries it on, or opens what it needs first. */
function FindingRow({ finding, onLift, locked }: { finding: Finding; onLift: (lift: Lift) => void; locked: boolean }) {
  const lifts = locked ? [] : finding.lifts;
  return (
    <li className={style[finding.hardness]}>
      <p>
        <span className="reader">{`${hardnessWords[finding.hardness]}: `}</span>
        {finding.sentence}
      </p>
      {lifts.length > 0 ? (
        <div className={style.lifts}>
          {lifts.map((lift) => (
            <Button key={lift.label} onPress={() => onLift(lift)}>
              {lift.label}
            </Button>
          ))}
          {finding.hardness === 'blocks' ? <DeclineLift /> : null}
        </div>
      ) : null}
    </li>
  );
}

/** What always remains: a kind no, which can be taken back. */
function DeclineLift() {
  const scene = useScene();
  return decline.when(scene) ? <Button onPress={() => void decline.perform(scene)}>{decline.label(scene)}</Button> : null;
}

function WaySentence({ home, place, onType }: { home: Place; place: Place; onType: () => void }) {
  const asked = useQuery(ask.trips.estimate.queryOptions({ input: { from: home, to: place } }));
  if (!asked.data || asked.data.source === 'same place') return null;
  return (
    <p className={style.way}>
      {asked.data.sentence}{' '}
      <Button kind="quiet" onPress={onType}>
        {asked.data.source === 'typed' ? 'Change the time' : 'Type the real time'}
      </Button>
    </p>
  );
}
