import { useQuery } from '@tanstack/react-query';
import type { Deliverable } from '../../../../core/contract/deliverables.ts';
import type { Job } from '../../../../core/contract/jobs.ts';
import type { Place } from '../../../../core/contract/parts.ts';
import type { DeliverableRounds, Round } from '../../../../core/contract/rounds.ts';
import { ask } from '../../../ask.ts';
import { deed, say, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { copyText } from '../../../parts/copy.ts';
import { useOneOpen } from '../../../parts/use-one-open.ts';
import { NotesForm } from './notes-form.tsx';
import { Notes } from './notes.tsx';
import { RoundPrice } from './round-price.tsx';
import style from './rounds.module.css';
import { SendForm } from './send-form.tsx';

type Open = { send: true } | { notes: string };
type Reply = { subject: string; text: string };

/** Rounds of notes on one deliverable: cuts that went out, what came back, and the dates that late notes moved. */
export function Rounds({ job, deliverable, home }: { job: Job; deliverable: Pick<Deliverable, 'id' | 'name' | 'off'>; home: Place }) {
  const data = useQuery(ask.rounds.of.queryOptions({ input: { deliverableId: deliverable.id } })).data;
  const [open, setOpen, close] = useOneOpen<Open>();
  if (!data) return null;
  const locked = job.state !== 'inked' || deliverable.off;
  const { rounds, next, sentence, rate, dates, cautions } = data;
  if (locked && rounds.length === 0) return null;
  const send = rounds.length === 0 ? 'Send a cut' : 'Send the next cut';
  const title = `rounds-${deliverable.id}`;
  return (
    <section className={style.part} aria-labelledby={title}>
      <div className={style.head}>
        <h4 id={title}>Rounds of notes</h4>
        <span className={style.second}>{sentence}</span>
        {locked || !next || open ? null : (
          <Button kind="quiet" onPress={() => setOpen({ send: true })} aria-label={`${send}: ${deliverable.name}`}>
            {send}
          </Button>
        )}
      </div>
      {open && 'send' in open && next ? <SendForm deliverableId={deliverable.id} next={next} zone={home.zone} onDone={close} /> : null}
      {rounds.length > 0 ? (
        <ol className={style.rounds}>
          {rounds.map((round) => (
            <li key={round.id}>
              <RoundHead
                round={round}
                last={round.id === rounds.at(-1)?.id}
                locked={locked || open !== null}
                onNotes={() => setOpen({ notes: round.id })}
              />
              {open && 'notes' in open && open.notes === round.id ? (
                <NotesForm round={round} rate={rate} zone={home.zone} onDone={close} />
              ) : null}
              <Notes round={round} locked={locked} />
              {round.included || round.items.length === 0 ? null : <RoundPrice round={round} locked={locked} />}
            </li>
          ))}
        </ol>
      ) : null}
      <Moved dates={dates} />
      {locked
        ? null
        : cautions.map((caution) => (
            <p key={caution} className={style.second}>
              {caution}
            </p>
          ))}
    </section>
  );
}

function RoundHead(props: { round: Round; last: boolean; locked: boolean; onNotes: () => void }) {
  const { round, last, locked, onNotes } = props;
  const { running } = useDeeds();
  const { id, version, what, sentence, lost, notesAt, items, message } = round;
  const act = (work: () => Promise<unknown>): void => void deed(work);
  const key = () => crypto.randomUUID();
  return (
    <div className={style.row}>
      <p className={notesAt === null && lost > 0 ? style.broken : undefined}>{sentence}</p>
      {locked ? null : (
        <span className={style.buttons}>
          {notesAt === null ? (
            <>
              <Button kind="plain" onPress={onNotes} aria-label={`Take the notes in: ${what}`}>
                Take the notes in
              </Button>
              <CopyButton words={message} label={`Copy the message: ${what}`}>
                Copy the message
              </CopyButton>
              {last ? (
                <Button
                  kind="quiet"
                  isDisabled={running > 0}
                  onPress={() => act(() => client.rounds.unsend({ id, version, key: key() }))}
                  aria-label={`It was not sent: ${what}`}
                >
                  It was not sent
                </Button>
              ) : null}
            </>
          ) : last ? (
            <>
              {items.length > 0 ? (
                <Button kind="quiet" onPress={onNotes} aria-label={`Add notes: ${what}`}>
                  Add notes
                </Button>
              ) : null}
              <Button
                kind="quiet"
                isDisabled={running > 0}
                onPress={() => act(() => client.rounds.notesBack({ id, version, key: key() }))}
                aria-label={`${items.length > 0 ? 'Take the notes back' : 'Take the yes back'}: ${what}`}
              >
                {items.length > 0 ? 'Take the notes back' : 'Take the yes back'}
              </Button>
            </>
          ) : null}
        </span>
      )}
    </div>
  );
}

/** The words for the client where late notes moved the date. */
function Moved({ dates }: Pick<DeliverableRounds, 'dates'>) {
  if (!dates) return null;
  const [promised, ...moves] = dates.text.split('\n');
  return (
    <div className={style.row}>
      <p>{[promised, ...moves.slice(0, -1)].join(' ')}</p>
      <CopyButton words={dates} label="Copy it for the client: the new date">
        Copy it for the client
      </CopyButton>
    </div>
  );
}

function CopyButton({ words, label, children }: { words: Reply; label: string; children: string }) {
  const copy = async (): Promise<void> => {
    const done = await copyText(`${words.subject}\n\n${words.text}`);
    say(done ? 'Copied. Paste it into your mail.' : 'The browser does not let it be copied here.');
  };
  return (
    <Button kind="quiet" onPress={() => void copy()} aria-label={label}>
      {children}
    </Button>
  );
}
