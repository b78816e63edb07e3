import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { KitItem, KitNeed, Preset } from '../../../core/contract/kit.ts';
import { expanded } from '../../../core/fit/kit-list.ts';
import { parseNumber } from '../../../core/money/parse.ts';
import { ask } from '../../ask.ts';
import { deed } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Reader } from '../../parts/reader.ts';
import { Rows } from '../../parts/rows.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../trouble.ts';
import { sayWithUndo } from '../../undo.ts';
import { PackList } from './pack-list.tsx';
import style from './trip.module.css';

type Named = KitNeed & { name: string };

/** What the job needs of the kit, with what is short and when, and the list to pack by; changed in place. @param zone of home */
export function JobKit({ jobId, zone, locked }: { jobId: string; zone: string; locked: boolean }) {
  const [changing, setChanging] = useState(false);
  const needs = useQuery(ask.kit.forJob.queryOptions({ input: { jobId } })).data?.needs;
  const list = useQuery(ask.kit.list.queryOptions({ input: {} })).data;
  const fit = useQuery(ask.fit.check.queryOptions({ input: { jobId } })).data;
  if (!needs || !list) return null;
  const verb = needs.length === 0 ? 'Say what it needs' : 'Change';
  const short = fit?.result.findings.filter(({ kind }) => kind === 'kit') ?? [];
  return (
    <>
      <section className={style.part} aria-labelledby="job-kit">
        <div className={style.head}>
          <h2 id="job-kit">Kit</h2>
          {needs.length === 0 && !changing ? (
            <span className={style.second}>None asked for; nothing is held against other jobs.</span>
          ) : null}
          {locked || changing ? null : list.items.length === 0 ? (
            <a href="#/kit">Put your kit on the list first</a>
          ) : (
            <Button kind="quiet" onPress={() => setChanging(true)} aria-label={verb === 'Change' ? 'Change the kit' : `${verb} of the kit`}>
              {verb}
            </Button>
          )}
        </div>
        {changing ? (
          <KitForm jobId={jobId} needs={needs} items={list.items} presets={list.presets} onDone={() => setChanging(false)} />
        ) : (
          <ul className={style.needs}>
            {needs.map((need) => (
              <li key={need.item}>
                <span className={style.count}>{need.count}</span> <a href={`#/kit/thing/${need.item}`}>{need.name}</a>
              </li>
            ))}
          </ul>
        )}
        {short.map(({ sentence }) => (
          <p key={sentence} className={style.broken}>
            {sentence}
          </p>
        ))}
      </section>
      {changing ? null : <PackList jobId={jobId} zone={zone} />}
    </>
  );
}

type Typed = { item: string; count: string };
const typedNeeds = (needs: readonly KitNeed[]): Typed[] => needs.map(({ item, count }) => ({ item, count: String(count) }));

function KitForm(props: {
  jobId: string;
  needs: readonly Named[];
  items: readonly KitItem[];
  presets: readonly Preset[];
  onDone: () => void;
}) {
  const { jobId, items, presets, onDone } = props;
  const first = items[0]?.id ?? '';
  const [typed, setTyped] = useState<Typed[]>(() =>
    props.needs.length > 0 ? typedNeeds(props.needs) : presets.length > 0 ? [] : [{ item: first, count: '1' }],
  );
  const [trouble, setTrouble] = useState<Trouble | null>(null);

  const read = (): { needs: KitNeed[]; trouble: Trouble | null } => {
    const reader = new Reader();
    const needs = typed.map(({ item, count }, at) => ({
      item,
      count: Number(reader.take(`needs[${at}].count`, parseNumber(count)) ?? '1'),
    }));
    return { needs, trouble: reader.trouble };
  };
  const keep = async (): Promise<void> => {
    const { needs, trouble: unread } = read();
    setTrouble(unread);
    if (unread) return;
    const kept = await deed(() => client.kit.setForJob({ jobId, needs, key: crypto.randomUUID() }), setTrouble);
    if (!kept) return;
    onDone();
    const before = props.needs.map(({ item, count }) => ({ item, count }));
    const undo = () => client.kit.setForJob({ jobId, needs: before, key: crypto.randomUUID() });
    sayWithUndo('The kit of the job is kept.', 'Undo', undo, 'The kit of the job is as it was.');
  };
  const putIn = (preset: Preset): void => {
    const { needs, trouble: unread } = read();
    setTrouble(unread);
    if (!unread) setTyped(typedNeeds(expanded(needs, [preset])));
  };
  return (
    <EditorForm label="What the job needs" className={style.form} onKeep={() => void keep()} onLeave={onDone}>
      {presets.length > 0 ? (
        <div className={style.buttons}>
          <span className={style.second}>Put in a preset; of a thing that stands in both, the larger count:</span>
          {presets.map((preset) => (
            <Button key={preset.id} onPress={() => putIn(preset)} aria-label={`Put in ${preset.name}`}>
              {preset.name}
            </Button>
          ))}
        </div>
      ) : null}
      <Rows
        label="Things"
        columns={[
          { key: 'item', label: 'Thing', options: items.map(({ id, name }) => ({ value: id, label: name })) },
          { key: 'count', label: 'How many', figures: true },
        ]}
        rows={typed}
        onChange={setTyped}
        blank={{ item: first, count: '1' }}
        add="One more thing"
        error={(at, key) => fieldTrouble(trouble, `needs[${at}].${key}`)}
      />
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">Keep the kit</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave as it was
        </Button>
      </div>
    </EditorForm>
  );
}
