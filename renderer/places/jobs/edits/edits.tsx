import { useQuery } from '@tanstack/react-query';
import type { Deliverable } from '../../../../core/contract/deliverables.ts';
import type { Job } from '../../../../core/contract/jobs.ts';
import type { Place } from '../../../../core/contract/parts.ts';
import { ask } from '../../../ask.ts';
import { deed, say, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { useOneOpen } from '../../../parts/use-one-open.ts';
import { sayWithUndo } from '../../../undo.ts';
import { AddForm } from './add-form.tsx';
import { OneEdit } from './one-edit.tsx';
import style from './edits.module.css';

/** What was promised of a job: how each edit stands, its stages and rounds, the time that it took, and handing it over. */
export function Edits({ job, home }: { job: Job; home: Place }) {
  const data = useQuery(ask.deliverables.of.queryOptions({ input: { jobId: job.id } })).data;
  const plan = useQuery(ask.deliverables.plan.queryOptions({ input: {} })).data?.plan;
  const [adding, setAdding, close] = useOneOpen<'new'>();
  const { running } = useDeeds();
  if (!data || (job.state !== 'inked' && data.deliverables.length === 0)) return null;
  const open = job.state === 'inked';
  const shown = data.deliverables.filter(({ off }) => !off);
  const off = data.deliverables.filter((each) => each.off);
  const make = async (): Promise<void> => {
    const made = await deed(() => client.deliverables.makeFromQuote({ jobId: job.id, key: crypto.randomUUID() }));
    if (made) say(made.sentence);
  };
  return (
    <section className={style.part} aria-labelledby="edits">
      <div className={style.head}>
        <h2 id="edits">Edits</h2>
        {shown.length === 0 && adding === null ? <span className={style.second}>Nothing is promised.</span> : null}
        {open && data.canMake ? (
          <Button kind="quiet" isDisabled={running > 0} onPress={() => void make()}>
            Take over what the quote promises
          </Button>
        ) : null}
        {open && adding === null ? (
          <Button kind="quiet" onPress={() => setAdding('new')}>
            {shown.length === 0 ? 'Promise something' : 'Promise one more'}
          </Button>
        ) : null}
      </div>
      {adding ? <AddForm job={job} onDone={close} /> : null}
      {shown.map((deliverable) => (
        <OneEdit
          key={deliverable.id}
          job={job}
          home={home}
          deliverable={deliverable}
          plan={plan}
          alone={shown.length === 1}
          onOff={() => void takeOff(deliverable)}
        />
      ))}
      {off.length > 0 ? (
        <p className={style.buttons}>
          <span className={style.second}>Taken off:</span>
          {off.map((deliverable) => (
            <Button
              key={deliverable.id}
              kind="quiet"
              isDisabled={running > 0}
              onPress={() => void restore(deliverable)}
              aria-label={`Put back: ${deliverable.name}`}
            >
              {`Put back: ${deliverable.name}`}
            </Button>
          ))}
        </p>
      ) : null}
    </section>
  );
}

async function takeOff({ id, version, name }: Deliverable): Promise<void> {
  const gone = await deed(() => client.deliverables.takeOff({ id, version, key: crypto.randomUUID() }));
  if (!gone) return;
  const back = () => client.deliverables.restore({ id, version: gone.deliverable.version, key: crypto.randomUUID() });
  sayWithUndo(`${name} was taken off.`, 'Put it back', back, `${name} is promised again.`);
}

async function restore({ id, version, name }: Deliverable): Promise<void> {
  const back = await deed(() => client.deliverables.restore({ id, version, key: crypto.randomUUID() }));
  if (back) say(`${name} is promised again.`);
}
