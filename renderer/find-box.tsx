import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ComboBox, Input, Label, ListBox, ListBoxItem, Popover } from 'react-aria-components';
import type { Found } from '../core/contract/find.ts';
import type { Action } from './actions/action.ts';
import { actions } from './actions/all.ts';
import { FIND_BOX } from './actions/find.ts';
import { ask } from './ask.ts';
import list from './parts/choice.module.css';
import { sceneNow, useScene, type Scene } from './scene.ts';
import style from './frame.module.css';
import { savePaper } from './parts/paper-file.ts';
import { deed } from './deeds.ts';

type Row = { id: string; title: string; second: string; open: () => void };

function pathOf({ kind, id, jobId }: Found): string {
  if (kind === 'rate card') return `/rates/${id}`;
  if (kind === 'client' || kind === 'hand') return `/people/${kind}/${id}`;
  return `/jobs/${jobId ?? id}`;
}

function open(found: Found): void {
  const { go } = sceneNow();
  if (found.kind === 'paper') void deed(() => savePaper(found.id));
  else go(pathOf(found));
}

const actionRow = (action: Action, scene: Scene): Row => ({
  id: `action ${action.name}`,
  title: action.label(scene),
  second: action.shortcut ?? 'action',
  open: () => void action.perform(sceneNow()),
});

/** Finds jobs, papers, people and rate cards by their words, and actions by their names. */
export function FindBox() {
  const scene = useScene();
  const [text, setText] = useState('');
  const words = text.trim().toLowerCase();
  // Only what belongs to the words as they stand: a row that vanishes under the marked one would lose the mark.
  const { data } = useQuery(ask.find.search.queryOptions({ input: { text: words.slice(0, 100), limit: 10 }, enabled: words.length > 0 }));
  const rows: Row[] =
    words === ''
      ? []
      : [
          // A place has no sheet of its own to open.
          ...(data?.found ?? [])
            .filter((found) => found.kind !== 'place')
            .map((found) => ({
              id: `${found.kind} ${found.id}`,
              title: found.title,
              second: `${found.kind} · ${found.second}`,
              open: () => open(found),
            })),
          ...actions
            .filter((action) => action.name !== 'find' && action.when(scene) && action.label(scene).toLowerCase().includes(words))
            .map((action) => actionRow(action, scene)),
        ];
  const choose = (row: Row | undefined): void => {
    if (!row) return;
    setText('');
    row.open();
  };
  return (
    <ComboBox
      className={style.find ?? ''}
      inputValue={text}
      onInputChange={setText}
      items={rows}
      selectedKey={null}
      onSelectionChange={(key) => choose(rows.find((each) => each.id === key))}
      menuTrigger="input"
      allowsCustomValue
      allowsEmptyCollection={words !== ''}
    >
      <Label className="reader">Find a job, a paper, a person, a rate card or an action</Label>
      <Input
        id={FIND_BOX}
        className={style.findInput ?? ''}
        placeholder="Find a job, a person, a paper …  /"
        onKeyDown={(event) => {
          // Enter before anything is marked takes the first row.
          if (event.key === 'Enter' && !event.currentTarget.getAttribute('aria-activedescendant')) choose(rows[0]);
        }}
      />
      <Popover className={list.popover ?? ''} placement="top start">
        <ListBox className={list.list ?? ''} renderEmptyState={() => <p className={list.empty}>Nothing holds these words.</p>}>
          {(row: Row) => (
            <ListBoxItem id={row.id} textValue={row.title} className={list.item ?? ''}>
              {row.title} <span className={list.second}>{row.second}</span>
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
