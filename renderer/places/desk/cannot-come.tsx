import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { HeldJob, StandIn } from '../../../core/contract/hands.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { dateIn, dateLater } from '../../../core/time/wall.ts';
import { dateInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { say, useDeeds } from '../../deeds.ts';
import { Asked } from '../../parts/asked.tsx';
import { Button } from '../../parts/button.tsx';
import { copyText } from '../../parts/copy.ts';
import { Empty } from '../../parts/empty.tsx';
import { Field } from '../../parts/field.tsx';
import { Fold } from '../../parts/fold.tsx';
import { StateMark } from '../../parts/state-mark.tsx';
import { troubleOf } from '../../trouble.ts';
import { askFor, belowName } from '../jobs/hands/said.ts';
import style from './cannot-come.module.css';

/** Ill, or held up: what is held in these days, who could take over, what to write to whom. Nothing is changed by looking. */
export function CannotComePlace({ first, last }: { first?: string; last?: string }) {
  const setup = useQuery(ask.setup.get.queryOptions({ input: {} }));
  return (
    <Asked asked={setup}>
      {({ setup: mine }) =>
        mine ? (
          <CannotCome zone={mine.home.zone} {...(first && last ? { given: { first, last } } : {})} />
        ) : (
          <Empty title="I cannot come">
            There is nothing on the books yet. <a href="#/">Begin on the Desk.</a>
          </Empty>
        )
      }
    </Asked>
  );
}

function CannotCome({ zone, given }: { zone: string; given?: { first: string; last: string } }) {
  const today = dateIn(zone, Temporal.Now.instant().epochMilliseconds);
  const [from, setFrom] = useState(given?.first ?? today);
  const [to, setTo] = useState(given?.last ?? dateLater(today, 1));
  const asked = useQuery({
    ...ask.hands.cannotCome.queryOptions({ input: { from, to } }),
    enabled: from !== '' && to !== '',
    retry: false,
  });
  const trouble = asked.error ? troubleOf(asked.error) : null;
  const jobs = asked.data?.jobs;
  return (
    <div className={style.page}>
      <h1>I cannot come</h1>
      <div className={style.fields}>
        <Field label="First day" type="date" value={from} onChange={setFrom} />
        <Field
          label="Last day"
          type="date"
          value={to}
          onChange={setTo}
          error={trouble?.fields?.find(({ field }) => field === 'to')?.sentence}
        />
        <p className={style.second}>Nothing is changed by looking. What is agreed with a client is agreed with them.</p>
      </div>
      {jobs?.length === 0 ? <p>Nothing of mine is held in these days.</p> : null}
      {jobs?.map((job) => (
        <Held key={job.jobId} job={job} />
      ))}
    </div>
  );
}

function Held({ job }: { job: HeldJob }) {
  const { contact } = job;
  return (
    <section className={style.job} aria-labelledby={`held-${job.jobId}`}>
      <div className={style.head}>
        <h2 id={`held-${job.jobId}`}>
          <a href={`#/jobs/${job.jobId}`}>{job.title}</a>
        </h2>
        <StateMark state={job.state} />
        <span className={style.second}>{job.place}</span>
      </div>
      <ul>
        {job.days.map(({ date, call, wrap }) => (
          <li key={call}>{`${dateInWords(date)}, ${call.slice(11)} to ${wrap.slice(11)}`}</li>
        ))}
        {job.byHands.map(({ date, name }) => (
          <li key={date} className={style.second}>{`${dateInWords(date)}: ${name} does it, and it stands`}</li>
        ))}
      </ul>
      <h3>Who could take over</h3>
      {job.standIns.length === 0 ? (
        <p className={style.second}>
          Nobody on file has a rate for this role. <a href="#/people/new-hand">Add a hand.</a>
        </p>
      ) : (
        <ul className={style.hands}>
          {job.standIns.map((hand) => (
            <Somebody key={hand.handId} job={job} hand={hand} />
          ))}
        </ul>
      )}
      <div className={style.head}>
        <h3>Tell the client</h3>
        <span className={style.second}>{[contact.name, contact.phone, contact.email].filter((part) => part !== '').join(', ')}</span>
        <Button
          onPress={() =>
            void copyText(job.message).then((copied) => say(copied ? 'Copied. Nothing was sent.' : `The message: ${job.message}`))
          }
          aria-label={`Copy the message to the client of ${job.title}`}
        >
          Copy the message
        </Button>
      </div>
      <Fold title="The message">
        <pre className={style.message}>{job.message}</pre>
      </Fold>
    </section>
  );
}

const ANSWERS = { free: 'Free by what is on file', 'free if': 'Free if', 'not possible': 'Cannot' };

function Somebody({ job, hand }: { job: HeldJob; hand: StandIn }) {
  const { running } = useDeeds();
  const dates = [...new Set(job.days.map(({ date }) => date))];
  const named = { jobId: job.jobId, handId: hand.handId, name: hand.name };
  return (
    <li className={style.hand}>
      <span className={style.name}>
        {hand.name}
        {hand.backup ? <span className={style.second}> backup</span> : null}
      </span>
      <div>
        <p className={hand.answer === 'not possible' ? style.broken : undefined}>
          {ANSWERS[hand.answer]}
          <span className={style.second}>
            {hand.cost.length > 0 ? `, ${hand.cost.map((money) => formatMoney(money, { code: true })).join(' and ')}` : ''}
            {hand.asked ? '; asked already' : ''}
          </span>
        </p>
        {hand.sentences.map((sentence) => (
          <p key={sentence} className={style.second}>
            {belowName(hand.name, sentence)}
          </p>
        ))}
      </div>
      {hand.answer === 'not possible' ? null : (
        <Button
          kind="quiet"
          isDisabled={running > 0}
          onPress={() => void askFor(named, dates, hand.message)}
          aria-label={`Copy the message, note the ask: ${hand.name} for ${job.title}`}
        >
          Copy the message, note the ask
        </Button>
      )}
    </li>
  );
}
