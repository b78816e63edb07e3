import { Fragment } from 'react';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { QuoteDraft, QuoteVersion } from '../../../core/contract/quotes.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { deadlineInWords, wallInWords } from '../../../core/words/dates.ts';
import { epochOf, wallAt } from '../../../core/time/read.ts';
import { copyReply } from '../../actions/copy-reply.ts';
import { savePaper } from '../../actions/save-paper.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { Fold } from '../../parts/fold.tsx';
import { CallingOff } from './calling-off.tsx';
import { InkForm } from './ink-form.tsx';
import style from './quote.module.css';

export type Next = 'make' | 'copy' | 'ink' | 'none';

/** The newest made version: its paper, its reply, and the yes when it comes. */
export function Made({ job, versions, home, next }: { job: Job; versions: readonly QuoteVersion[]; home: Place; next: Next }) {
  const [newest, ...older] = versions;
  if (!newest) return null;
  const moment = (at: string): string => wallInWords(wallAt(epochOf(at), home.zone));
  return (
    <section className={style.made} aria-labelledby="made">
      <h2 id="made">
        {`Version ${newest.number} is made`} <span className={style.second}>{moment(newest.madeAt)}</span>
      </h2>
      <MadeTotal job={job} draft={newest.draft} />
      <div className={style.buttons}>
        <ActionButton action={savePaper} />
        <ActionButton action={copyReply} kind={next === 'copy' ? 'black' : 'plain'} />
      </div>
      <p className={style.second}>
        {newest.sentAt ? `Sent ${moment(newest.sentAt)}. ` : 'Not sent yet. '}
        {job.pencil?.state === 'live' ? `In pencil until ${deadlineInWords(job.pencil.expires)}.` : ''}
        {job.pencil?.state === 'ran out' ? `The pencil ran out on ${deadlineInWords(job.pencil.expires)}; it holds nothing.` : ''}
      </p>
      {job.ink ? null : <CallingOff job={job} home={home} />}
      <Fold title="The reply" open={newest.sentAt === null}>
        <p className={style.second}>{`Subject: ${newest.reply.subject}`}</p>
        <pre className={style.reply}>{newest.reply.text}</pre>
      </Fold>
      {['quoted', 'pencilled', 'ran out'].includes(job.state) ? (
        <InkForm job={job} versions={versions} home={home} black={next === 'ink'} />
      ) : null}
      {older.length > 0 ? (
        <Fold title={<span className={style.second}>Older versions</span>}>
          <ul>
            {older.map((version) => (
              <li
                key={version.id}
              >{`Version ${version.number}, ${moment(version.madeAt)}, ${formatMoney(version.draft.totals.gross, { code: true })}`}</li>
            ))}
          </ul>
        </Fold>
      ) : null}
    </section>
  );
}

/** What was inked; until then what the newest version comes to, or each of its offers. */
function MadeTotal({ job, draft }: { job: Job; draft: QuoteDraft }) {
  if (!job.ink && draft.offers.length > 0)
    return (
      <dl className={style.figures}>
        {draft.offers.map((offer) => (
          <Fragment key={offer.number}>
            <dt>{`${offer.number}. ${offer.name}`}</dt>
            <dd className={style.strong}>{formatMoney(offer.totals.gross, { code: true })}</dd>
          </Fragment>
        ))}
      </dl>
    );
  const total = (job.ink && job.total) ?? draft.totals.gross;
  return (
    <p className={style.total}>
      <span>{`Total ${total.currency}`}</span> <span>{formatMoney(total)}</span>
    </p>
  );
}
