import { useQuery } from '@tanstack/react-query';
import { useCallback } from 'react';
import type { Deliverable } from '../../../../core/contract/deliverables.ts';
import type { Job } from '../../../../core/contract/jobs.ts';
import type { Place } from '../../../../core/contract/parts.ts';
import { ask } from '../../../ask.ts';
import { deed, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Asked } from '../../../parts/asked.tsx';
import { Button } from '../../../parts/button.tsx';
import { useOneOpen } from '../../../parts/use-one-open.ts';
import { sayWithUndo } from '../../../undo.ts';
import { HandedOver } from './handed-over.tsx';
import { HandOverForm } from './hand-over-form.tsx';
import style from './hand-over.module.css';

/** Handing a deliverable over: what was handed over already, and the way to do it: read the files, say how, get the note and the message. */
export function HandOver({ job, deliverable, home }: { job: Job; deliverable: Deliverable; home: Place }) {
  const asked = useQuery(ask.handovers.of.queryOptions({ input: { deliverableId: deliverable.id } }));
  const [wanted, want, leave] = useOneOpen<'form'>();
  const begin = useCallback(() => want('form'), [want]);
  const title = `hand-over-${deliverable.id}`;
  return (
    <section className={style.hand} aria-labelledby={title}>
      <Asked asked={asked}>
        {(data) => {
          const stand = data.handOvers.filter(({ takenBack }) => takenBack === null);
          const open = wanted !== null || (data.reading?.state === 'reading' && data.reading.compares === null);
          return (
            <>
              <div className={style.buttons}>
                <h4 id={title}>Handing over</h4>
                {data.handOvers.length === 0 ? <span className={style.second}>Not handed over yet.</span> : null}
                {open || deliverable.off || job.state !== 'inked' ? null : (
                  <Button
                    kind="quiet"
                    onPress={begin}
                    aria-label={`${stand.length > 0 ? 'Hand it over once more' : 'Hand it over'}: ${deliverable.name}`}
                  >
                    {stand.length > 0 ? 'Hand it over once more' : 'Hand it over'}
                  </Button>
                )}
              </div>
              {stand.length > 0 && deliverable.state === 'delivered' ? <Approve deliverable={deliverable} /> : null}
              {open ? <HandOverForm deliverable={deliverable} home={home} begin={data} onOpen={begin} onDone={leave} /> : null}
              {data.handOvers.map((handOver) => (
                <HandedOver key={handOver.id} handOver={handOver} name={deliverable.name} home={home} reading={data.reading} />
              ))}
            </>
          );
        }}
      </Asked>
    </section>
  );
}

/** The client said yes to what was handed over. */
function Approve({ deliverable }: { deliverable: Deliverable }) {
  const { running } = useDeeds();
  const mark = deliverable.stages.find(({ kind }) => kind === 'approved');
  if (!mark || mark.doneAt !== null) return null;
  const approve = async (): Promise<void> => {
    const kept = await deed(() => client.deliverables.stageDone({ id: mark.id, version: mark.version, key: crypto.randomUUID() }));
    const now = kept?.deliverable.stages.find(({ id }) => id === mark.id);
    if (!now) return;
    const undo = () => client.deliverables.stageOpen({ id: now.id, version: now.version, key: crypto.randomUUID() });
    sayWithUndo(`${deliverable.name} is approved.`, 'Undo', undo, `${deliverable.name} waits for a yes again.`);
  };
  return (
    <div className={style.buttons}>
      <span>Waits for a yes.</span>
      <Button kind="quiet" isDisabled={running > 0} onPress={() => void approve()} aria-label={`They approved it: ${deliverable.name}`}>
        They approved it
      </Button>
    </div>
  );
}
