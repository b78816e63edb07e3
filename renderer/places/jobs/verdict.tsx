import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Finding, FitResult, Lift } from '../../../core/contract/fit.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { Stringline as Data } from '../../../core/contract/road.ts';
import { combined } from '../../../core/fit/combined.ts';
import { joined } from '../../../core/words/lists.ts';
import { askHolder } from '../../actions/challenge.ts';
import { pencilDates, renew } from '../../actions/renew.ts';
import { ask } from '../../ask.ts';
import { Button } from '../../parts/button.tsx';
import { Stringline } from '../../parts/stringline/stringline.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { sceneNow, useScenePart } from '../../scene.ts';
import { troubleOf } from '../../trouble.ts';
import { agreedChanges } from './agreed.ts';
import type { ChangeJob } from './change-job.ts';
import { NearestDates } from './verdict-dates.tsx';
import style from './verdict.module.css';

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
  if (!asked.data) return asked.error ? <TroubleNote trouble={troubleOf(asked.error)} /> : null;

  const { result, stringline } = asked.data;
  const places = stringline?.places.map((each) => each.place) ?? [];
  const agreed = agreedChanges(job, tryOn);
  const onLift = (lift: Lift): void => {
    if (lift.tryOn) setTried([...tried, lift]);
    else if (lift.way) setWay(lift.way);
    else if (lift.kind === 'other dates') setOtherDates(true);
    else if (lift.kind === 'challenge' && lift.jobId) void askHolder(lift.jobId);
    else if (lift.kind === 'second pencil') void pencilDates(job.id, job.version);
  };
  return (
    <section className={style.verdict} aria-labelledby="verdict" aria-live="polite">
      <h2 id="verdict" className={`${style.answer} ${result.answer === 'not possible' ? style.no : ''}`}>
        {result.missing.length > 0 ? 'Not known yet' : job.state === 'inked' ? 'Inked' : heads[result.answer]}
      </h2>
      <p className={style.counts}>
        {result.missing.length > 0 ? 'something is missing before it can be answered' : counts(result.findings)}
      </p>
      {tried.length > 0 ? (
        <div className={style.tried}>
          <ul className={style.triedList} aria-label="Tried on, not saved">
            <li className={style.or}>Tried on, not saved:</li>
            {tried.map((lift) => (
              <li key={lift.label}>
                {lift.label}{' '}
                <Button
                  kind="quiet"
                  onPress={() => setTried(tried.filter((other) => other !== lift))}
                  aria-label={`Take off: ${lift.label}`}
                >
                  Take off
                </Button>
              </li>
            ))}
          </ul>
          <span className={style.lifts}>
            {agreed && !locked ? (
              <Button onPress={() => void save(agreed, { settled: ['firstCall', 'lastWrap'] }).then((saved) => saved && setTried([]))}>
                They agreed: write it into the days
              </Button>
            ) : null}
            {tried.length > 1 ? <Button onPress={() => setTried([])}>Take all off</Button> : null}
          </span>
        </div>
      ) : null}
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
      {otherDates ? <NearestDates jobId={job.id} tryOn={tryOn} locked={locked} save={save} onClose={() => setOtherDates(false)} /> : null}
      {way !== null && job.place ? (
        <WayEditor way={way === 'own' ? null : way} home={home} place={job.place} places={places} onClose={() => setWay(null)} />
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

/** Lifts that are something to press; the others are said. */
function canAct(lift: Lift): boolean {
  if (lift.kind === 'second pencil') return renew.when(sceneNow());
  return lift.tryOn !== undefined || lift.way !== undefined || lift.jobId !== undefined || lift.kind === 'other dates';
}

function FindingRow({ finding, onLift, locked }: { finding: Finding; onLift: (lift: Lift) => void; locked: boolean }) {
  const acts = locked ? [] : finding.lifts.filter(canAct);
  const words = finding.lifts.filter((lift) => !acts.includes(lift));
  return (
    <li className={style[finding.hardness]}>
      <p>
        <span className="reader">{`${hardnessWords[finding.hardness]}: `}</span>
        {finding.sentence}
        {words.length > 0 ? (
          <span className={style.or}>{` Or ${joined(
            words.map((lift) => lift.label.charAt(0).toLowerCase() + lift.label.slice(1)),
            'or',
          )}.`}</span>
        ) : null}
      </p>
      {acts.length > 0 ? (
        <div className={style.lifts}>
          {acts.map((lift) => (
            <Button key={lift.label} onPress={() => onLift(lift)}>
              {lift.label}
            </Button>
          ))}
        </div>
      ) : null}
    </li>
  );
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
