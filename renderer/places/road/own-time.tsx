import { useQuery } from '@tanstack/react-query';
import type { Place } from '../../../core/contract/parts.ts';
import type { Personal } from '../../../core/contract/personal.ts';
import { zoneInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { useOneOpen } from '../../parts/use-one-open.ts';
import { sayWithUndo } from '../../undo.ts';
import { OwnTimeForm } from './own-time-form.tsx';
import { ownSpanInWords } from './own-time-words.ts';
import style from './own-time.module.css';

const hardnessWords = { never: 'never: it blocks a job', settle: 'can be talked about' };

/** Days and hours that are mine: a job on them is not possible, or must be settled. */
export function OwnTime({ home }: { home: Place }) {
  const [editing, setEditing, close] = useOneOpen<Personal | 'new'>();
  const own = useQuery(ask.personal.list.queryOptions({ input: {} })).data?.personal;
  if (!own) return null;
  return (
    <section aria-labelledby="own-time" className={style.part}>
      <div className={style.head}>
        <h2 id="own-time">Time of my own</h2>
        {own.length === 0 && editing === null ? <span className={style.second}>None kept: every day can be sold.</span> : null}
        {editing === null ? (
          <Button kind="quiet" onPress={() => setEditing('new')}>
            Keep time for myself
          </Button>
        ) : null}
      </div>
      <ul>
        {own.map((one) =>
          editing !== 'new' && editing?.id === one.id ? (
            <li key={one.id}>
              <OwnTimeForm home={home} stored={one} onDone={close} />
            </li>
          ) : (
            <OwnTimeRow key={one.id} one={one} home={home} onChange={() => setEditing(one)} />
          ),
        )}
      </ul>
      {editing === 'new' ? <OwnTimeForm home={home} onDone={close} /> : null}
    </section>
  );
}

function OwnTimeRow({ one, home, onChange }: { one: Personal; home: Place; onChange: () => void }) {
  const { running } = useDeeds();
  const takeOff = async (): Promise<void> => {
    const { id, version, ...fields } = one;
    const gone = await deed(() => client.personal.drop({ id, version }));
    if (gone)
      sayWithUndo(`${one.title} was taken off.`, 'Put it back', () => client.personal.save({ fields }), `${one.title} is yours again.`);
  };
  const zone = one.zone === home.zone ? '' : ` in ${zoneInWords(one.zone)}`;
  return (
    <li className={style.row}>
      <span>
        <strong>{one.title}</strong> {`${ownSpanInWords(one)}${zone}`}
        <span className={style.second}>{` ${[hardnessWords[one.hardness], one.note].filter(Boolean).join('; ')}`}</span>
      </span>
      <span className={style.head}>
        <Button kind="quiet" onPress={onChange} aria-label={`Change ${one.title}`}>
          Change
        </Button>
        <Button kind="quiet" isDisabled={running > 0} onPress={() => void takeOff()} aria-label={`Take off ${one.title}`}>
          Take off
        </Button>
      </span>
    </li>
  );
}
