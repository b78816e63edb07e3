import type { Remembered as Note } from '../../../core/contract/inquiries.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import { rememberedWords } from '../../../core/inquiries/remember.ts';
import { epochOf, wallAt } from '../../../core/time/read.ts';
import { paperDate } from '../../../core/words/dates.ts';
import { client } from '../../door.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { Button } from '../../parts/button.tsx';
import { newestJob, type FactProps } from './change-job.ts';
import style from './facts.module.css';

const forget = (job: Job, { id }: Note): Promise<unknown> =>
  client.jobs.forget({ id: job.id, version: newestJob(job).version, correction: id, key: crypto.randomUUID() });

/** Which parts of a fact stand as they were corrected before for this sender. Forgetting changes the next reading, not this job. */
export function Remembered({ job, home, notes }: Pick<FactProps, 'job' | 'home'> & { notes: readonly Note[] }) {
  const { running } = useDeeds();
  return notes.map((note) => {
    const words = rememberedWords[note.fact];
    return (
      <p key={note.id} className={style.second}>
        {`${words} as you corrected it for them on ${paperDate(wallAt(epochOf(note.at), home.zone).slice(0, 10))} `}
        <Button
          kind="quiet"
          isDisabled={running > 0}
          onPress={() => void deed(() => forget(job, note))}
          aria-label={`Forget it: ${words} as you corrected it`}
        >
          Forget it
        </Button>
      </p>
    );
  });
}
