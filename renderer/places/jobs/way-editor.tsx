import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Lift } from '../../../core/contract/fit.ts';
import type { Place } from '../../../core/contract/parts.ts';
import { parseLength } from '../../../core/money/parse.ts';
import { lengthInWords } from '../../../core/words/amounts.ts';
import { deed, say } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { placeInWords } from '../../parts/place-field.tsx';
import { Reader } from '../../parts/reader.ts';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../trouble.ts';
import style from './verdict.module.css';

/**
 * Types how long a drive really takes; it is remembered for both directions and used instead of the estimate.
 * @param way the two ends that are offered first; those of the job where none is given
 */
export function WayEditor({
  way,
  home,
  place,
  places,
  onTry,
  onClose,
}: {
  way: { from: Place; to: Place } | null;
  home: Place;
  place: Place;
  places: readonly Place[];
  onTry: (lift: Lift) => void;
  onClose: () => void;
}) {
  const all = [...new Map([home, place, ...(way ? [way.from, way.to] : []), ...places].map((each) => [each.key, each])).values()];
  const [fromKey, setFromKey] = useState((way?.from ?? home).key);
  const [toKey, setToKey] = useState((way?.to ?? place).key);
  const [typed, setTyped] = useState('');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const options = all.map((each) => ({ value: each.key, label: placeInWords(each) }));

  /** What is typed, or nothing with the trouble shown. */
  const read = (): { from: Place; to: Place; minutes: number } | null => {
    const reader = new Reader();
    const length = reader.take('minutes', parseLength(typed));
    if (length && !('minutes' in length)) reader.refuse('minutes', 'is in days; write it in hours, as 6h30');
    const [from, to] = [all.find((each) => each.key === fromKey), all.find((each) => each.key === toKey)];
    setTrouble(reader.trouble);
    if (reader.trouble || !length || !('minutes' in length) || !from || !to) return null;
    return { from, to, minutes: length.minutes };
  };
  const save = async (): Promise<void> => {
    const drive = read();
    if (!drive) return;
    const saved = await deed(() => client.trips.setWay({ fields: { ...drive, mode: 'drive', distance: null, note: '' } }), setTrouble);
    if (!saved) return;
    say('The drive is remembered and used from now on, in both directions.');
    onClose();
  };
  const tryIt = (): void => {
    const drive = read();
    if (!drive) return;
    const { from, to, minutes } = drive;
    onTry({
      kind: 'type way',
      label: `${from.name} to ${to.name} in ${lengthInWords(minutes)}`,
      way: { from, to },
      tryOn: { ways: [{ fromKey: from.key, toKey: to.key, mode: 'drive', minutes }] },
    });
    onClose();
  };

  return (
    <EditorForm label="How long the drive takes" className={style.wayEditor} onKeep={() => void save()} onLeave={onClose}>
      <div className={style.wayFields}>
        <Choice label="Drive from" value={fromKey} options={options} onChange={setFromKey} />
        <Choice label="To" value={toKey} options={options} onChange={setToKey} />
        <Field label="Takes" placeholder="6h30" value={typed} onChange={setTyped} error={fieldTrouble(trouble, 'minutes')} />
      </div>
      {trouble && !trouble.fields ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.lifts}>
        <Button type="submit">Remember it</Button>
        <Button onPress={tryIt}>Try it on</Button>
        <Button kind="quiet" onPress={onClose}>
          Leave the estimate
        </Button>
      </div>
    </EditorForm>
  );
}
