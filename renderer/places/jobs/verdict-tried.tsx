import type { Lift } from '../../../core/contract/fit.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import { Button } from '../../parts/button.tsx';
import type { ChangeJob } from './change-job.ts';
import { keepOf } from './keep-lift.ts';
import style from './verdict.module.css';

type Props = {
  tried: readonly Lift[];
  job: Job;
  save: ChangeJob;
  locked: boolean;
  takeBack: (lift: Lift) => void;
  takeAllBack: () => void;
};

/** What is tried on, each to be kept where that has a deed, or taken back. */
export function TriedOn({ tried, job, save, locked, takeBack, takeAllBack }: Props) {
  return (
    <div className={style.tried}>
      <div className={style.triedHead}>
        <h3 id="tried-on">Tried on, not saved</h3>
        {tried.length > 1 ? (
          <Button kind="quiet" onPress={takeAllBack}>
            Take all back
          </Button>
        ) : null}
      </div>
      <ul aria-labelledby="tried-on">
        {tried.map((lift) => (
          <li key={JSON.stringify(lift)}>
            <span>{lift.label}</span>
            <span className={style.triedActs}>
              {locked ? null : <KeepButton lift={lift} job={job} save={save} onKept={() => takeBack(lift)} />}
              <Button kind="quiet" onPress={() => takeBack(lift)} aria-label={`Take back: ${lift.label}`}>
                Take back
              </Button>
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}

function KeepButton({ lift, job, save, onKept }: { lift: Lift; job: Job; save: ChangeJob; onKept: () => void }) {
  const keep = keepOf(lift, job, save);
  if (!keep) return null;
  return (
    <Button kind="quiet" onPress={() => void keep.perform().then((kept) => kept && onKept())} aria-label={`${keep.label}: ${lift.label}`}>
      {keep.label}
    </Button>
  );
}
