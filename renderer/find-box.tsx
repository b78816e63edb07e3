import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState, type KeyboardEvent } from 'react';
import { ComboBox, Input, Label, ListBox, ListBoxItem, Popover } from 'react-aria-components';
import { FIND_BOX } from './actions/find.ts';
import { ask, queries } from './ask.ts';
import { rowsFor, type Row } from './find-rows.ts';
import { Marked } from './marked.tsx';
import list from './parts/choice.module.css';
import { sceneNow, useScene } from './scene.ts';
import style from './frame.module.css';

const MOST_LETTERS = 200;
const sought = (text: string) =>
  ask.find.search.queryOptions({ input: { text: text.slice(0, MOST_LETTERS), limit: 10 }, enabled: text.trim() !== '' });

/** Finds jobs, people, kit, papers and rate cards by their words, and actions by their names. */
export function FindBox() {
  const scene = useScene();
  const [text, setText] = useState('');
  const isAsked = text.trim() !== '';
  // What was found for the letters before stays until the new answer is there; an answer that comes too late is given up.
  const { data, isPlaceholderData } = useQuery({ ...sought(text), placeholderData: keepPreviousData });
  const rows = isAsked ? rowsFor(text, data?.found ?? [], scene) : [];
  const choose = (row: Row | undefined): void => {
    if (!row) return;
    setText('');
    row.open();
  };
  /** Enter before anything is marked takes the first row of what belongs to the words as they stand. */
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>): void => {
    if (event.key === 'Escape') setText('');
    if (event.key !== 'Enter' || !isAsked || event.currentTarget.getAttribute('aria-activedescendant')) return;
    void queries
      .fetchQuery(sought(text))
      .catch(() => undefined)
      .then((answer) => choose(rowsFor(text, answer?.found ?? [], sceneNow())[0]));
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
      allowsEmptyCollection={isAsked}
    >
      <Label className="reader">Find a job, a person, kit, a paper, a rate card or an action</Label>
      <Input id={FIND_BOX} className={style.findInput ?? ''} placeholder="Find a job, a person, kit, a paper …  /" onKeyDown={onKeyDown} />
      <Popover className={list.popover ?? ''} placement="top start">
        <ListBox
          className={list.list ?? ''}
          renderEmptyState={() => (
            <p className={list.empty}>{data && !isPlaceholderData ? 'Nothing holds these words, or words like them.' : 'Looking …'}</p>
          )}
        >
          {(row: Row) => (
            <ListBoxItem id={row.id} textValue={row.title} className={`${list.item} ${style.found}`}>
              <Marked text={row.title} words={row.words} />{' '}
              <span className={list.second}>
                <Marked text={row.second} words={row.words} />
              </span>
              {row.why !== '' && (
                <span className={style.why}>
                  <Marked text={row.why} words={row.words} />
                </span>
              )}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
