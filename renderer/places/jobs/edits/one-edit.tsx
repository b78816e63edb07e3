import { useState } from 'react';
import type { Deliverable, EditPlan } from '../../../../core/contract/deliverables.ts';
import type { Job } from '../../../../core/contract/jobs.ts';
import type { Place } from '../../../../core/contract/parts.ts';
import { formatInWords } from '../../../../core/deliverables/format-words.ts';
import { formatNumber } from '../../../../core/money/format.ts';
import { dateInWords } from '../../../../core/words/dates.ts';
import { useDeeds } from '../../../deeds.ts';
import { Button } from '../../../parts/button.tsx';
import { Fold } from '../../../parts/fold.tsx';
import { ChangeForm } from './change-form.tsx';
import { HandOver } from './hand-over.tsx';
import { Rounds } from './rounds.tsx';
import { Spent } from './spent.tsx';
import { Stages } from './stages.tsx';
import style from './edits.module.css';

type Props = {
  job: Job;
  home: Place;
  deliverable: Deliverable;
  plan: EditPlan | undefined;
  /** It is the only one, and so need not be opened. */
  alone: boolean;
  onOff: () => void;
};

/** One promised edit: how it stands on top, everything about it below. */
export function OneEdit({ job, home, deliverable, plan, alone, onOff }: Props) {
  const [changing, setChanging] = useState(false);
  const { running } = useDeeds();
  const planned = plan?.edits.find(({ deliverableId }) => deliverableId === deliverable.id);
  const late = planned !== undefined && (planned.lateDays > 0 || planned.unplaced > 0);
  const { name, due, agreedDue, internalDate, hand, hours, state, lacks, format } = deliverable;
  const words = formatInWords(format);
  return (
    <article className={style.edit} aria-label={name}>
      <div className={style.head}>
        <h3>{name}</h3>
        <span className={late ? style.late : style.strong}>{due === null ? 'no date yet' : `due ${dateInWords(due)}`}</span>
        {agreedDue !== null && agreedDue !== due ? (
          <span className={style.second}>{`first promised for ${dateInWords(agreedDue)}`}</span>
        ) : null}
        <span className={style.second}>{state === 'open' ? `${formatNumber(hours)} h of editing` : state}</span>
        {state === 'approved' ? null : (
          <span className={style.buttons}>
            <Button kind="quiet" onPress={() => setChanging(!changing)} aria-label={`Change ${name}`}>
              Change
            </Button>
            <Button kind="quiet" isDisabled={running > 0} onPress={onOff} aria-label={`Take off: ${name}`}>
              Take off
            </Button>
          </span>
        )}
      </div>
      {planned ? <p className={late ? style.broken : undefined}>{planned.sentence}</p> : null}
      {planned && planned.waits !== '' ? <p className={style.second}>{`It waits for ${planned.waits}.`}</p> : null}
      {planned?.pastInternal && internalDate ? (
        <p className={style.second}>{`Planned after my own date, ${dateInWords(internalDate)}.`}</p>
      ) : null}
      {lacks.length > 0 ? <p className={style.broken}>{`Not said yet: ${lacks.join(', ')}.`}</p> : null}
      {hand ? <p className={style.second}>{`${hand.name} edits it.`}</p> : null}
      {words === '' ? null : <p className={style.second}>{words}</p>}
      {changing ? <ChangeForm deliverable={deliverable} onDone={() => setChanging(false)} /> : null}
      <Fold title="Stages, notes, time and handing over" open={alone}>
        {() => (
          <div className={style.form}>
            <Stages deliverable={deliverable} plan={plan} home={home} locked={job.state !== 'inked'} />
            <Rounds job={job} deliverable={deliverable} home={home} />
            <Spent job={job} deliverable={deliverable} home={home} />
            <HandOver job={job} deliverable={deliverable} home={home} />
          </div>
        )}
      </Fold>
    </article>
  );
}
