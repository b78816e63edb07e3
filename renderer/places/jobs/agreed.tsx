import type { Job } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { QuoteVersion } from '../../../core/contract/quotes.ts';
import { agreedDraft } from '../../../core/quotes/agreed.ts';
import { epochOf, wallAt } from '../../../core/time/read.ts';
import { datesInWords, wallInWords } from '../../../core/words/dates.ts';
import { byHow } from '../../../core/words/how.ts';
import style from './agreed.module.css';
import { Amendments } from './amendments.tsx';
import { CallingOff } from './calling-off.tsx';
import { DepositFact } from './deposit-fact.tsx';
import { inkedTo } from './ink-form.tsx';
import { TermsPapers } from './terms-papers.tsx';

type Props = { job: Job; versions: readonly QuoteVersion[]; home: Place };

/** What was agreed: the yes, the deposit, the terms on paper and signed, what changed since, and how it ends before its time. */
export function Agreed({ job, versions, home }: Props) {
  const { ink } = job;
  return (
    <section className={style.agreed} aria-labelledby="agreed">
      <h2 id="agreed">{ink ? 'Agreed' : 'To be agreed'}</h2>
      <div className={style.columns}>
        {ink ? (
          <div className={style.part}>
            <Yes job={job} ink={ink} versions={versions} home={home} />
            <CallingOff job={job} home={home} />
          </div>
        ) : null}
        <TermsPapers job={job} home={home} />
        {ink ? <Amendments job={job} home={home} /> : null}
      </div>
    </section>
  );
}

/** The yes, and what it holds. */
function Yes({ job, ink, versions, home }: Props & { ink: NonNullable<Job['ink']> }) {
  const version = versions.find(({ number }) => number === ink.quoteVersion);
  const { deposit = null } = version ? agreedDraft(version.draft, ink.offer) : {};
  const dates = datesInWords(job.days.map(({ date }) => date));
  return (
    <>
      <p>
        <strong>{`Inked ${wallInWords(wallAt(epochOf(ink.at), home.zone))}.`}</strong>{' '}
        {`${ink.who} said yes ${byHow(ink.how)}${inkedTo(job, versions)}.`}
      </p>
      {job.state === 'inked' ? (
        <p
          className={style.second}
        >{`${dates} and the kit that it needs are held. Prices and terms are those of version ${ink.quoteVersion ?? 1}.`}</p>
      ) : null}
      <DepositFact jobId={job.id} deposit={deposit} />
    </>
  );
}
