import { useQuery } from '@tanstack/react-query';
import type { Deliverable } from '../../../../core/contract/deliverables.ts';
import type { Place } from '../../../../core/contract/parts.ts';
import { ask } from '../../../ask.ts';
import { Asked } from '../../../parts/asked.tsx';
import { Button } from '../../../parts/button.tsx';
import { useOneOpen } from '../../../parts/use-one-open.ts';
import { HandedOver } from './handed-over.tsx';
import { HandOverForm } from './hand-over-form.tsx';
import style from './hand-over.module.css';

/** Handing a deliverable over: what was handed over already, and the way to do it: read the files, say how, get the note and the message. */
export function HandOver({ deliverable, home }: { deliverable: Pick<Deliverable, 'id' | 'name' | 'off'>; home: Place }) {
  const asked = useQuery(ask.handovers.of.queryOptions({ input: { deliverableId: deliverable.id } }));
  const [wanted, want, leave] = useOneOpen<'form'>();
  const title = `hand-over-${deliverable.id}`;
  return (
    <section className={style.hand} aria-labelledby={title}>
      <Asked asked={asked}>
        {(data) => {
          const stand = data.handOvers.filter(({ takenBack }) => takenBack === null);
          const open = wanted !== null || data.reading?.state === 'reading';
          return (
            <>
              <div className={style.buttons}>
                <h4 id={title}>Handing over</h4>
                {data.handOvers.length === 0 ? <span className={style.second}>Not handed over yet.</span> : null}
                {open || deliverable.off ? null : (
                  <Button kind="quiet" onPress={() => want('form')} aria-label={`Hand over ${deliverable.name}`}>
                    {stand.length > 0 ? 'Hand it over once more' : 'Hand it over'}
                  </Button>
                )}
              </div>
              {open ? <HandOverForm deliverable={deliverable} home={home} begin={data} onDone={leave} /> : null}
              {data.handOvers.map((handOver) => (
                <HandedOver key={handOver.id} handOver={handOver} name={deliverable.name} home={home} />
              ))}
            </>
          );
        }}
      </Asked>
    </section>
  );
}
