import { useQuery } from '@tanstack/react-query';
import { useState, type ReactNode } from 'react';
import type { Job } from '../../../core/contract/jobs.ts';
import type { QuoteVersion } from '../../../core/contract/quotes.ts';
import type { Setup } from '../../../core/contract/setup.ts';
import { ask } from '../../ask.ts';
import { Asked } from '../../parts/asked.tsx';
import { Empty } from '../../parts/empty.tsx';
import { Fold } from '../../parts/fold.tsx';
import { useScene, useScenePart } from '../../scene.ts';
import { Agreed } from './agreed.tsx';
import { Billing } from './billing/billing.tsx';
import { Differences } from './differences.tsx';
import { Edits } from './edits/edits.tsx';
import { Facts } from './facts.tsx';
import { Expenses } from './expenses.tsx';
import { History } from './history.tsx';
import { Hands } from './hands/hands.tsx';
import { Hours } from './hours.tsx';
import money from './hours.module.css';
import { JobKit } from './job-kit.tsx';
import style from './jobs.module.css';
import { KnownSection } from './knows.tsx';
import { Made, type Next } from './made.tsx';
import { Message } from './message.tsx';
import { JobPapers } from './papers/papers.tsx';
import { Quote } from './quote.tsx';
import { Title } from './title.tsx';
import { Trip } from './trip.tsx';
import trip from './trip.module.css';
import { changeJob } from './change-job.ts';
import { Verdict } from './verdict.tsx';

const CLOSED = ['let go', 'declined', 'cancelled'];

/** The one thing to do next on a job: it alone is black. */
function nextOf(job: Job, newest: QuoteVersion | undefined): Next {
  if (CLOSED.includes(job.state) || job.state === 'inked') return 'none';
  if (!newest) return 'make';
  return newest.sentAt === null ? 'copy' : 'ink';
}

/** The quote as it stands is open until a version is made; then the next one is folded away. */
function NextVersion({ jobId, newest, children }: { jobId: string; newest: number | undefined; children: ReactNode }) {
  if (newest === undefined) return children;
  return (
    <Fold title={`Next version, ${newest + 1}`}>
      <Differences jobId={jobId} newest={newest} />
      {children}
    </Fold>
  );
}

/** Names of the taxes that I charge: none where I am not registered. */
const taxNames = ({ registered, tax, moreTaxes = [] }: Setup): string[] =>
  registered && tax ? [tax, ...moreTaxes].map(({ name }) => name) : [];

/** A job's sheet, with its answer on top. */
export function JobPlace({ id }: { id: string }) {
  const asked = useQuery(ask.jobs.get.queryOptions({ input: { id } }));
  const setup = useQuery(ask.setup.get.queryOptions({ input: {} }));
  return (
    <Asked asked={setup}>
      {({ setup: mine }) =>
        mine ? (
          <Asked asked={asked}>{({ job }) => <JobSheet job={job} mine={mine} />}</Asked>
        ) : (
          <Empty title="Jobs">
            A job needs a home to be measured from. <a href="#/">Begin on the Desk.</a>
          </Empty>
        )
      }
    </Asked>
  );
}

function JobSheet({ job, mine }: { job: Job; mine: Setup }) {
  const draft = useQuery(ask.quotes.draft.queryOptions({ input: { jobId: job.id } }));
  const made = useQuery(ask.quotes.versions.queryOptions({ input: { jobId: job.id } }));
  const { answer } = useScene();
  const [wanted, setWanted] = useState<boolean | null>(null);
  const pencil = wanted ?? answer !== 'not possible';
  const versions = made.data?.versions ?? [];
  useScenePart('job', job);
  useScenePart('draft', draft.data?.draft);
  useScenePart('version', versions[0]);
  useScenePart('pencil', pencil);

  const save = changeJob(job);
  const locked = CLOSED.includes(job.state) || job.state === 'inked';
  const [newest] = versions;
  const next = nextOf(job, newest);
  return (
    <div>
      <Title job={job} save={save} />
      <div className={style.columns}>
        <div className={style.column}>
          <Message job={job} />
          <Facts job={job} save={save} locked={locked} home={mine.home} />
        </div>
        <Verdict job={job} home={mine.home} unit={mine.distance} save={save} locked={locked} />
        <div>
          <Made job={job} versions={versions} home={mine.home} next={next} />
          {job.state === 'inked' ? null : (
            <Asked asked={draft}>
              {({ draft: now }) => (
                <NextVersion jobId={job.id} newest={newest?.number}>
                  <Quote job={job} draft={now} taxes={taxNames(mine)} pencil={pencil} onPencil={setWanted} black={next === 'make'} />
                </NextVersion>
              )}
            </Asked>
          )}
        </div>
      </div>
      {newest ? <Agreed job={job} versions={versions} home={mine.home} /> : null}
      <div className={trip.parts}>
        <JobKit jobId={job.id} zone={mine.home.zone} locked={CLOSED.includes(job.state)} />
        <Trip job={job} home={mine.home} currency={mine.currency} unit={mine.distance} />
        <Hands job={job} home={mine.home} />
      </div>
      <JobPapers job={job} home={mine.home} currency={mine.currency} />
      <Edits job={job} home={mine.home} />
      <div className={money.money}>
        <Hours job={job} home={mine.home} />
        <Expenses job={job} zone={mine.home.zone} taxes={taxNames(mine).length > 0} />
      </div>
      <Billing job={job} mine={mine} />
      <KnownSection job={job} />
      <History job={job} zone={mine.home.zone} />
    </div>
  );
}
