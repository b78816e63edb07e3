import { useQuery } from '@tanstack/react-query';
import type { KitItem, Preset } from '../../../core/contract/kit.ts';
import { joined } from '../../../core/words/lists.ts';
import { ask } from '../../ask.ts';
import { client } from '../../door.ts';
import { Asked } from '../../parts/asked.tsx';
import { Empty } from '../../parts/empty.tsx';
import { Field } from '../../parts/field.tsx';
import { Group } from '../../parts/group.tsx';
import { Rows } from '../../parts/rows.tsx';
import sheet from '../../parts/sheet.module.css';
import table from '../../parts/table.module.css';
import { useKeptForm } from '../../parts/use-kept-form.ts';
import { fieldTrouble } from '../../trouble.ts';
import { ListedSheet } from '../../parts/listed-sheet.tsx';
import { presetKind } from './preset-kind.ts';

type Needs = Pick<Preset, 'name' | 'needs'>;

const needsInWords = ({ needs }: Pick<Needs, 'needs'>, items: readonly KitItem[]): string =>
  joined(needs.map(({ item, count }) => `${count} × ${items.find(({ id }) => id === item)?.name ?? 'a thing no longer listed'}`));

/** Lists that are packed together. */
export function PresetTable({ presets, items }: { presets: readonly Preset[]; items: readonly KitItem[] }) {
  return (
    <div className={table.scroll}>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">Preset</th>
            <th scope="col">Expands to</th>
          </tr>
        </thead>
        <tbody>
          {presets.map((preset) => (
            <tr key={preset.id}>
              <th scope="row">
                <a href={`#/kit/preset/${preset.id}`}>{preset.name}</a>
              </th>
              <td>{needsInWords(preset, items)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** One preset; without an id a new one. */
export function PresetPlace({ id }: { id?: string }) {
  const asked = useQuery(ask.kit.list.queryOptions({ input: {} }));
  return (
    <Asked asked={asked}>
      {({ items, presets }) => {
        const stored = presets.find((preset) => preset.id === id);
        if (items.length === 0)
          return (
            <Empty title="Presets">
              A preset is made of things. <a href="#/kit/new">Add the first thing.</a>
            </Empty>
          );
        if (id !== undefined && !stored)
          return (
            <Empty title="Presets">
              This preset is not on the list. <a href="#/kit/presets">All presets</a>
            </Empty>
          );
        return <PresetSheet items={items} {...(stored ? { stored } : {})} />;
      }}
    </Asked>
  );
}

function PresetSheet({ stored, items }: { stored?: Preset; items: readonly KitItem[] }) {
  const first = items[0]?.id ?? '';
  const form = useKeptForm(presetKind, stored ?? { name: '', needs: [{ item: first, count: 1 }] }, stored);
  const { typed, change, trouble } = form;
  return (
    <ListedSheet
      kind="preset"
      title={stored?.name ?? 'New preset'}
      back={{ path: '/kit/presets', name: 'All presets' }}
      stored={stored}
      form={form}
      inWords={(of: Needs) => [
        { label: 'Name', text: of.name },
        { label: 'Expands to', text: needsInWords(of, items) },
      ]}
      drop={({ id, version }) => client.kit.dropPreset({ id, version })}
      putBack={({ name, needs }) => client.kit.savePreset({ fields: { name, needs } })}
      keepAgain={({ id, name, needs }, { version }) => client.kit.savePreset({ id, version, fields: { name, needs } })}
    >
      <Group title="What it stands for">
        <div className={sheet.texts}>
          <Field label="Name" value={typed.name} onChange={(name) => change({ name })} error={fieldTrouble(trouble, 'fields.name')} />
        </div>
        <Rows
          label="Things"
          columns={[
            { key: 'item', label: 'Thing', options: items.map(({ id, name }) => ({ value: id, label: name })) },
            { key: 'count', label: 'How many', figures: true },
          ]}
          rows={typed.needs}
          onChange={(needs) => change({ needs })}
          blank={{ item: first, count: '1' }}
          add="One more thing"
          error={(at, key) => fieldTrouble(trouble, `needs[${at}].${key}`)}
        />
        {fieldTrouble(trouble, 'fields.needs') ? <p>{`The preset ${fieldTrouble(trouble, 'fields.needs')}.`}</p> : null}
      </Group>
    </ListedSheet>
  );
}
