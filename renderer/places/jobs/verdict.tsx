import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { TryOn, type Finding, type FitResult, type Lift } from '../../../core/contract/fit.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { Stringline as Data } from '../../../core/contract/road.ts';
import { joined } from '../../../core/words/lists.ts';
import { ask } from '../../ask.ts';
import { Button } from '../../parts/button.tsx';
import { Stringline } from '../../parts/stringline/stringline.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { useScenePart } from '../../scene.ts';
import { troubleOf } from '../../trouble.ts';
import { agreedChanges } from './agreed.ts';
import type { ChangeJob } from './change-job.ts';
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
  const [way, setWay] = useState<string | null>(null);
  const tryOn = tried.reduce<TryOn>((all, lift) => ({ ...all, ...TryOn.parse(lift.tryOn ?? {}) }), {});
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
    else setWay(lift.label);
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
          <span>{`Tried on, not saved: ${tried.map((lift) => lift.label).join('; ')}.`}</span>
          <span className={style.lifts}>
            {agreed && !locked ? (
              <Button onPress={() => void save(agreed, { settled: ['firstCall', 'lastWrap'] }).then((saved) => saved && setTried([]))}>
                They agreed: write it into the days
              </Button>
            ) : null}
            <Button onPress={() => setTried([])}>Take off</Button>
          </span>
        </div>
      ) : null}
      <ol className={style.findings}>
        {result.findings.map((finding) => (
          <FindingRow key={`${finding.kind} ${finding.sentence}`} finding={finding} onLift={onLift} />
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
      {way !== null && job.place ? (
        <WayEditor label={way} home={home} place={job.place} places={places} onClose={() => setWay(null)} />
      ) : null}
      {stringline ? <Stringline data={asStored(stringline, job)} size="small" unit={unit} /> : null}
      {way === null && job.place && job.place.key !== home.key ? (
        <WaySentence home={home} place={job.place} onType={() => setWay('')} />
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

const canAct = (lift: Lift): boolean => lift.tryOn !== undefined || lift.kind === 'type way';

function FindingRow({ finding, onLift }: { finding: Finding; onLift: (lift: Lift) => void }) {
  const words = finding.lifts.filter((lift) => !canAct(lift));
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
      {finding.lifts.some(canAct) ? (
        <div className={style.lifts}>
          {finding.lifts.filter(canAct).map((lift) => (
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
