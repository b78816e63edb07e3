import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { JobState } from '../../../core/contract/jobs.ts';
import { newJob } from '../../actions/new-job.ts';
import { ask } from '../../ask.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { Asked } from '../../parts/asked.tsx';
import { Field } from '../../parts/field.tsx';
import { JobTable } from '../../parts/job-table.tsx';
import { Segments } from '../../parts/segments.tsx';
import style from './jobs.module.css';

const kinds = {
  all: undefined,
  asked: ['inquiry', 'quoted'],
  'in pencil': ['pencilled', 'ran out'],
  'in ink': ['inked'],
  closed: ['let go', 'declined', 'cancelled'],
} satisfies Record<string, JobState[] | undefined>;
type Kind = keyof typeof kinds;
const isKind = (text: string): text is Kind => text in kinds;
const kindOptions = Object.keys(kinds)
  .filter(isKind)
  .map((kind) => ({ value: kind, label: kind }));

/** Jobs: what did we agree, and where does it stand? */
export function JobsPlace() {
  const [text, setText] = useState('');
  const [kind, setKind] = useState<Kind>('all');
  const states = kinds[kind];
  const asked = useQuery(
    ask.jobs.list.queryOptions({
      input: { ...(text.trim() ? { text: text.trim().slice(0, 120) } : {}), ...(states ? { states } : {}) },
      placeholderData: (before) => before,
    }),
  );
  const narrowed = text.trim() !== '' || kind !== 'all';
  return (
    <div className={style.list}>
      <div className={style.listHead}>
        <h1 className={style.title}>Jobs</h1>
        <div className={style.search}>
          <Field
            label="Search jobs by title, client or place"
            bare
            placeholder="Title, client or place"
            type="search"
            value={text}
            onChange={setText}
          />
        </div>
        <Segments label="Which jobs" bare value={kind} options={kindOptions} onChange={setKind} />
        <span className={style.push}>
          <ActionButton action={newJob} />
        </span>
      </div>
      <Asked asked={asked}>
        {({ jobs }) =>
          jobs.length > 0 ? (
            <JobTable jobs={jobs} />
          ) : (
            <p className={style.second}>
              {narrowed ? 'No job holds these words.' : 'No job yet. Paste an inquiry on the Desk; it becomes the first.'}
            </p>
          )
        }
      </Asked>
    </div>
  );
}
