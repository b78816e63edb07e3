import { useQuery } from '@tanstack/react-query';
import type { RateCard, RateCardFields } from '../../../core/contract/rates.ts';
import { ask } from '../../ask.ts';
import { say } from '../../deeds.ts';
import { Button } from '../../parts/button.tsx';
import { Group } from '../../parts/group.tsx';
import style from '../../parts/sheet.module.css';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { sceneNow } from '../../scene.ts';
import { Overtime, RushAndEditing, TheDay, TravelAndKit, WhatItIsFor } from './card-fields.tsx';
import { CardPreview } from './card-preview.tsx';
import { FloorNote } from './floor-note.tsx';
import { TermsFields } from './terms-fields.tsx';
import { useCardForm } from './use-card-form.ts';
import { usePreview } from './use-preview.ts';

/** One rate card, whole. */
export function CardSheet({ start, stored }: { start: RateCardFields; stored?: RateCard }) {
  const form = useCardForm(start, stored);
  const preview = usePreview(form.typed, stored);
  const mine = useQuery(ask.setup.get.queryOptions({ input: {} })).data?.setup;
  const save = async (): Promise<void> => {
    if (!(await form.save())) return;
    sceneNow().go('/rates');
    say('Saved. New quotes are priced with it; made versions stay as they are.');
  };
  return (
    <form
      className={style.page}
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <div className={style.head}>
        <div className={style.titles}>
          <h1 className={style.title}>{stored ? stored.name : 'New rate card'}</h1>
          <a href="#/rates">All rate cards</a>
        </div>
      </div>
      <Group title="What it is for">
        <WhatItIsFor form={form} />
      </Group>
      <Group title="The day">
        <FloorNote mine={mine} />
        <TheDay form={form} />
      </Group>
      <Group title="Overtime and turnaround">
        <Overtime form={form} />
      </Group>
      <Group title="Rush and editing">
        <RushAndEditing form={form} />
      </Group>
      <Group title="Travel and kit">
        <TravelAndKit form={form} />
      </Group>
      <Group title="Terms">
        <TermsFields terms={form.typed.terms} onChange={(terms) => form.change({ terms })} trouble={form.trouble} />
      </Group>
      {preview ? (
        <Group title="On the last quotes">
          <CardPreview preview={preview} />
        </Group>
      ) : null}
      <div className={style.bar}>
        {form.trouble ? <TroubleNote trouble={form.trouble} /> : null}
        <div className={style.row}>
          <Button kind="black" type="submit">
            Save the card
          </Button>
          <span role="status" className={style.second}>
            {preview?.sentence}
          </span>
        </div>
      </div>
    </form>
  );
}
