import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Leg } from '../../../core/contract/trips.ts';
import { newsInWords } from '../../../core/trips/news.ts';
import { zoneInWords } from '../../../core/words/dates.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Field } from '../../parts/field.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../trouble.ts';
import { sayWithUndo } from '../../undo.ts';
import style from './trip.module.css';

type Told = Parameters<typeof client.trips.legNews>[0]['told'];

/** What the carrier says of a ticket now: other times, or that it does not go; or that it goes as ticketed after all. */
export function LegNewsForm({ leg, onDone }: { leg: Leg; onDone: () => void }) {
  const { running } = useDeeds();
  const [depart, setDepart] = useState(leg.depart);
  const [arrive, setArrive] = useState(leg.arrive);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const tell = async (told: Told): Promise<void> => {
    const kept = await deed(() => client.trips.legNews({ id: leg.id, version: leg.version, told }), setTrouble);
    if (!kept) return;
    onDone();
    const { id, version, news } = kept.leg;
    const back = (): Promise<unknown> => client.trips.legNews({ id, version, told: toldBefore(leg) });
    sayWithUndo(news ? `${newsInWords(kept.leg, news)}.` : 'It goes as ticketed.', 'Undo', back, 'The leg is as it was.');
  };
  const problem = fieldTrouble(trouble, 'told.0') ?? fieldTrouble(trouble, 'told.depart') ?? fieldTrouble(trouble, 'told.arrive');
  return (
    <EditorForm
      label={`What changed: ${leg.mode} ${leg.from.name} to ${leg.to.name}`}
      className={style.form}
      onKeep={() => void tell({ kind: 'moved', depart, arrive })}
      onLeave={onDone}
    >
      <div className={style.grid}>
        <Field label={`Now leaves, clock of ${zoneInWords(leg.from.zone)}`} type="datetime-local" value={depart} onChange={setDepart} />
        <Field label={`Now arrives, clock of ${zoneInWords(leg.to.zone)}`} type="datetime-local" value={arrive} onChange={setArrive} />
      </div>
      {problem ? <p className={style.broken}>{problem}</p> : null}
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit" isDisabled={running > 0}>
          Note the new times
        </Button>
        <Button isDisabled={running > 0} onPress={() => void tell({ kind: 'cancelled' })}>
          It is cancelled
        </Button>
        {leg.news ? (
          <Button isDisabled={running > 0} onPress={() => void tell({ kind: 'as ticketed' })}>
            It goes as ticketed
          </Button>
        ) : null}
        <Button kind="quiet" onPress={onDone}>
          Leave as it was
        </Button>
      </div>
    </EditorForm>
  );
}

/** What was told of the leg before. */
function toldBefore({ news, depart, arrive }: Leg): Told {
  if (!news) return { kind: 'as ticketed' };
  return news.kind === 'cancelled' ? { kind: 'cancelled' } : { kind: 'moved', depart, arrive };
}
