import { useQuery } from '@tanstack/react-query';
import type { KitItem } from '../../../core/contract/kit.ts';
import { blankItem } from '../../../core/kit/blank.ts';
import { ask } from '../../ask.ts';
import { client } from '../../door.ts';
import { Asked } from '../../parts/asked.tsx';
import { Empty } from '../../parts/empty.tsx';
import { Group } from '../../parts/group.tsx';
import { useKeptForm } from '../../parts/use-kept-form.ts';
import { ReadyAgain, WeightAndPower, WhatItIs, Worth } from './item-fields.tsx';
import { itemKind } from './item-kind.ts';
import { itemInWords } from './in-words.ts';
import { ListedSheet } from '../../parts/listed-sheet.tsx';
import { Units } from './units.tsx';
import { Where } from './where.tsx';

/** One thing, whole; without an id a new one. */
export function ItemPlace({ id }: { id?: string }) {
  const asked = useQuery(ask.kit.list.queryOptions({ input: {} }));
  const setup = useQuery(ask.setup.get.queryOptions({ input: {} }));
  return (
    <Asked asked={setup}>
      {({ setup: mine }) => (
        <Asked asked={asked}>
          {({ items }) => {
            const stored = items.find((item) => item.id === id);
            const currency = mine?.currency ?? 'USD';
            if (id !== undefined && !stored)
              return (
                <Empty title="Kit">
                  This thing is not on the list. <a href="#/kit">All things</a>
                </Empty>
              );
            return <ItemSheet currency={currency} {...(stored ? { stored } : {})} />;
          }}
        </Asked>
      )}
    </Asked>
  );
}

function ItemSheet({ stored, currency }: { stored?: KitItem; currency: string }) {
  const form = useKeptForm(itemKind(currency), stored ?? blankItem(''), stored);
  return (
    <ListedSheet
      kind="thing"
      title={stored?.name ?? 'New thing'}
      back={{ path: '/kit', name: 'All things' }}
      stored={stored}
      form={form}
      inWords={itemInWords}
      drop={({ id, version }) => client.kit.drop({ id, version })}
      putBack={({ id }) => client.kit.putBack({ id })}
      keepAgain={({ id, version: _version, ...fields }, { version }) => client.kit.save({ id, version, fields })}
    >
      {stored ? (
        <Group title="Where it is now">
          <Where id={stored.id} />
        </Group>
      ) : null}
      <Group title="What it is">
        <WhatItIs form={form} />
      </Group>
      <Group title="Units">
        <Units form={form} />
      </Group>
      <Group title="Weight and power">
        <WeightAndPower form={form} />
      </Group>
      <Group title="Ready again, service">
        <ReadyAgain form={form} />
      </Group>
      <Group title="Value and wear">
        <Worth form={form} />
      </Group>
    </ListedSheet>
  );
}
