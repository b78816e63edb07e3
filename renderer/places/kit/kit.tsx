import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { holdsWords } from '../../../core/words/holds.ts';
import { bringKit } from '../../actions/bring-kit.ts';
import { newPreset } from '../../actions/new-preset.ts';
import { newThing } from '../../actions/new-thing.ts';
import { ask } from '../../ask.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { Asked } from '../../parts/asked.tsx';
import { Field } from '../../parts/field.tsx';
import { Segments } from '../../parts/segments.tsx';
import { sceneNow } from '../../scene.ts';
import { ItemTable } from './item-table.tsx';
import look from '../../parts/list.module.css';
import { PresetTable } from './presets.tsx';

type KitList = 'things' | 'presets';
const paths: Record<KitList, string> = { things: '/kit', presets: '/kit/presets' };
const lists = [
  { value: 'things', label: 'things' },
  { value: 'presets', label: 'presets' },
] as const;

/** Kit: what do I own, where is it, will it fly? */
export function KitPlace({ list }: { list: KitList }) {
  const [text, setText] = useState('');
  const asked = useQuery(ask.kit.list.queryOptions({ input: {} }));
  const holdsTyped = holdsWords(text);
  const holds: typeof holdsTyped = (...texts) => text.trim() === '' || holdsTyped(...texts);
  return (
    <div className={look.list}>
      <div className={look.head}>
        <h1 className={look.title}>Kit</h1>
        <div className={look.search}>
          <Field
            label={list === 'things' ? 'Search things by name, serial, place or what they do' : 'Search presets by name'}
            bare
            placeholder={list === 'things' ? 'Name, serial or what it does' : 'Name'}
            type="search"
            value={text}
            onChange={setText}
          />
        </div>
        <Segments label="Things or presets" bare value={list} options={lists} onChange={(next) => sceneNow().go(paths[next])} />
        <span className={look.push}>
          <ActionButton action={bringKit} />
          <ActionButton action={list === 'things' ? newThing : newPreset} />
        </span>
      </div>
      <Asked asked={asked}>
        {({ items, presets }) => {
          if (list === 'presets') {
            const found = presets.filter(({ name }) => holds(name));
            if (found.length > 0) return <PresetTable presets={found} items={items} />;
            return (
              <p className={look.second}>
                {presets.length > 0 ? 'No preset holds these words.' : 'No preset yet. Put together what is always packed together.'}
              </p>
            );
          }
          const found = items.filter(({ name, does, units, note }) =>
            holds(name, does, note, ...units.flatMap(({ serial, place }) => [serial, place])),
          );
          if (found.length === 0)
            return (
              <p className={look.second}>
                {items.length > 0
                  ? 'Nothing on the list holds these words.'
                  : 'Nothing on the list yet. Bring in the list you have, or type the first thing; then a job says what is short.'}
              </p>
            );
          return (
            <>
              <ItemTable items={found} />
              <p className={look.second}>
                By air is what the published limits say of lithium batteries on passenger flights. The operator decides; limits differ and
                change.
              </p>
            </>
          );
        }}
      </Asked>
    </div>
  );
}
