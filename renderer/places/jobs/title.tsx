import { useState } from 'react';
import type { Job } from '../../../core/contract/jobs.ts';
import { askForYes } from '../../actions/challenge.ts';
import { jobPrint } from '../../actions/job-print.ts';
import { letGo } from '../../actions/let-go.ts';
import { renew } from '../../actions/renew.ts';
import { reopen } from '../../actions/reopen.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { Button } from '../../parts/button.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Field } from '../../parts/field.tsx';
import { StateMark } from '../../parts/state-mark.tsx';
import { useScene } from '../../scene.ts';
import style from './jobs.module.css';
import type { ChangeJob } from './change-job.ts';
import { PencilStanding } from './pencil-standing.tsx';
import { Sender } from './sender.tsx';

/** The job's name, where it stands, and what can be done with its pencil. */
export function Title({ job, save }: { job: Job; save: ChangeJob }) {
  const [typed, setTyped] = useState<string | null>(null);
  const scene = useScene();
  const close = (): void => setTyped(null);
  return (
    <div className={style.head}>
      <Sender />
      {typed === null ? (
        <div className={style.titles}>
          <h1 className={style.title}>{job.title}</h1>
          <Button kind="quiet" onPress={() => setTyped(job.title)}>
            Rename
          </Button>
          <StateMark state={job.state} />
        </div>
      ) : (
        <EditorForm
          label="Rename the job"
          className={style.rename}
          onKeep={() => void save({ title: typed }).then((saved) => saved && close())}
          onLeave={close}
        >
          <Field label="Title of the job" bare value={typed} onChange={setTyped} />
          <Button type="submit">Keep</Button>
          <Button kind="quiet" onPress={close}>
            Leave as it was
          </Button>
        </EditorForm>
      )}
      <div className={style.deeds}>
        {[renew, askForYes, letGo, reopen]
          .filter((action) => action.when(scene) && (action !== renew || job.state === 'ran out'))
          .map((action) => (
            <ActionButton key={action.name} action={action} />
          ))}
        <ActionButton action={jobPrint} kind="quiet" />
      </div>
      <PencilStanding job={job} />
    </div>
  );
}
