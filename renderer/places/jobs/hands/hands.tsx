import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { HandDate, HandOnJob, HandState } from '../../../../core/contract/hands.ts';
import type { Job } from '../../../../core/contract/jobs.ts';
import type { Place } from '../../../../core/contract/parts.ts';
import type { Hand } from '../../../../core/contract/people.ts';
import { askHandText } from '../../../../core/people/ask-hand.ts';
import { epochOf, wallAt } from '../../../../core/time/read.ts';
import { dateInWords, withoutYear } from '../../../../core/words/dates.ts';
import { ask } from '../../../ask.ts';
import { useDeeds } from '../../../deeds.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Tick } from '../../../parts/tick.tsx';
import { askFor, belowName, settle, shortDates } from './said.ts';
import style from './hands.module.css';

const CLOSED = ['let go', 'declined', 'cancelled'];

/** Who helps on a job: asked, in pencil, said yes; with what the check says of their own dates. */
export function Hands({ job, home }: { job: Job; home: Place }) {
  const [asking, setAsking] = useState(false);
  const { data } = useQuery(ask.hands.of.queryOptions({ input: { jobId: job.id } }));
  const known = useQuery(ask.people.hands.queryOptions({ input: {} })).data?.hands;
  const from = useQuery(ask.setup.get.queryOptions({ input: {} })).data?.setup?.name ?? '';
  if (!data || !known) return null;
  const open = !CLOSED.includes(job.state);
  const dates = [...new Set(job.days.map(({ date }) => date))].sort();
  const mine = dates.filter(
    (date) => !data.hands.some((hand) => hand.dates.some((each) => each.date === date && each.state === 'said yes')),
  );
  return (
    <section className={style.part} aria-labelledby="job-hands">
      <div className={style.head}>
        <h2 id="job-hands">Hands</h2>
        {data.hands.length === 0 && !asking ? <span className={style.second}>Nobody was asked; every day is mine.</span> : null}
        {!open || asking || dates.length === 0 || !job.place ? null : known.length === 0 ? (
          <a href="#/people/new-hand">Add a hand first</a>
        ) : (
          <Button kind="quiet" onPress={() => setAsking(true)}>
            Ask a hand
          </Button>
        )}
        {open && mine.length > 0 && ['inked', 'pencilled'].includes(job.state) ? (
          <a href={`#/cannot-come/${mine[0]}/${mine.at(-1)}`}>I cannot come</a>
        ) : null}
      </div>
      {asking && job.place ? (
        <AskForm job={job} place={job.place} hands={known} dates={dates} from={from} onDone={() => setAsking(false)} />
      ) : null}
      <ul className={style.hands}>
        {data.hands.map((hand) => (
          <OneHand key={hand.handId} jobId={job.id} hand={hand} zone={home.zone} open={open} />
        ))}
      </ul>
    </section>
  );
}

function OneHand({ jobId, hand, zone, open }: { jobId: string; hand: HandOnJob; zone: string; open: boolean }) {
  const byState = [...Map.groupBy(hand.dates, ({ state, wanted }) => `${state} ${wanted}`).values()];
  return (
    <li className={style.hand}>
      <span className={style.name}>
        <a href={`#/people/hand/${hand.handId}`}>{hand.name}</a>
        {hand.backup ? <span className={style.second}> backup</span> : null}
      </span>
      <div className={style.said}>
        {byState.map((dates) => (
          <Said key={dates[0]?.date} jobId={jobId} hand={hand} dates={dates} zone={zone} open={open} />
        ))}
        {hand.sentences.map((sentence) => (
          <p key={sentence} className={hand.answer === 'free' ? style.second : style.broken}>
            {belowName(hand.name, sentence)}
          </p>
        ))}
      </div>
    </li>
  );
}

const NEXT: Record<HandState, readonly { state: HandState; label: string }[]> = {
  asked: [
    { state: 'said yes', label: 'They said yes' },
    { state: 'pencilled', label: 'In pencil' },
    { state: 'said no', label: 'They said no' },
  ],
  pencilled: [
    { state: 'said yes', label: 'They said yes' },
    { state: 'let go', label: 'Let them go' },
  ],
  'said yes': [{ state: 'let go', label: 'Let them go' }],
  'said no': [],
  'let go': [],
};

/** Dates that stand alike, with what can become of them. */
function Said(props: { jobId: string; hand: HandOnJob; dates: readonly HandDate[]; zone: string; open: boolean }) {
  const { jobId, hand, dates, zone, open } = props;
  const { running } = useDeeds();
  const [first] = dates;
  if (!first) return null;
  const named = { jobId, handId: hand.handId, name: hand.name };
  const days = dates.map(({ date }) => date);
  const on = withoutYear(dateInWords(wallAt(epochOf(first.at), zone).slice(0, 10)));
  const how = first.how === '' ? '' : `, ${first.how}`;
  const next = NEXT[first.state].filter(({ state }) => (open && first.wanted) || state === 'said no' || state === 'let go');
  return (
    <div className={style.row}>
      <span className={first.state === 'said yes' ? style.yes : style.other}>{shortDates(days)}</span>
      <span>
        {first.state} <span className={style.second}>{`${on}${how}${first.wanted ? '' : '; no date of this job any more'}`}</span>
      </span>
      <span className={style.buttons}>
        {next.map(({ state, label }) => (
          <Button
            key={state}
            kind="quiet"
            isDisabled={running > 0}
            onPress={() => void settle(named, days, state, first.state)}
            aria-label={`${label}: ${hand.name}, ${shortDates(days)}`}
          >
            {label}
          </Button>
        ))}
      </span>
    </div>
  );
}

function AskForm(props: { job: Job; place: Place; hands: readonly Hand[]; dates: readonly string[]; from: string; onDone: () => void }) {
  const { job, place, hands, dates, from, onDone } = props;
  const [handId, setHandId] = useState(hands[0]?.id ?? '');
  const [ticked, setTicked] = useState<readonly string[]>(dates);
  const hand = hands.find(({ id }) => id === handId);
  const keep = async (): Promise<void> => {
    const wanted = dates.filter((date) => ticked.includes(date));
    if (!hand || wanted.length === 0) return;
    const days = job.days.filter(({ date }) => wanted.includes(date));
    const message = askHandText({ hand, role: job.role, place, days, from });
    if (await askFor({ jobId: job.id, handId: hand.id, name: hand.name }, wanted, message)) onDone();
  };
  return (
    <EditorForm label="Ask a hand" className={style.fields} onKeep={() => void keep()} onLeave={onDone}>
      <Choice label="Who" value={handId} options={hands.map(({ id, name }) => ({ value: id, label: name }))} onChange={setHandId} />
      <div role="group" aria-label="Dates" className={style.ticks}>
        {dates.map((date) => (
          <Tick
            key={date}
            checked={ticked.includes(date)}
            onChange={(on) => setTicked(on ? [...ticked, date] : ticked.filter((each) => each !== date))}
          >
            {withoutYear(dateInWords(date))}
          </Tick>
        ))}
      </div>
      <span className={style.buttons}>
        <Button type="submit" isDisabled={ticked.length === 0}>
          Copy the message, note the ask
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </span>
    </EditorForm>
  );
}
