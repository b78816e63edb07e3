import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ComboBox, Input, Label, ListBox, ListBoxItem, Popover } from 'react-aria-components';
import { ask } from '../ask.ts';
import list from './choice.module.css';
import field from './field.module.css';

/** One of the clients, found while a name or a contact is typed. */
export function ClientField({ label, onChange }: { label: string; onChange: (client: { id: string; name: string }) => void }) {
  const [text, setText] = useState('');
  const words = text.trim().slice(0, 120);
  const { data } = useQuery(ask.people.clients.queryOptions({ input: words ? { text: words } : {}, placeholderData: (before) => before }));
  const clients = data?.clients ?? [];
  return (
    <ComboBox
      className={field.field ?? ''}
      inputValue={text}
      onInputChange={setText}
      items={clients}
      selectedKey={null}
      onSelectionChange={(key) => {
        const chosen = clients.find((each) => each.id === key);
        if (chosen) onChange(chosen);
      }}
      allowsCustomValue
      allowsEmptyCollection
      menuTrigger="focus"
    >
      <Label className="reader">{label}</Label>
      <Input className={field.input ?? ''} placeholder="Name or contact of a client" />
      <Popover className={list.popover ?? ''}>
        <ListBox
          className={list.list ?? ''}
          renderEmptyState={() => <p className={list.empty}>{words ? 'No client holds these words.' : 'No client is known yet.'}</p>}
        >
          {(client: (typeof clients)[number]) => (
            <ListBoxItem id={client.id} textValue={client.name} className={list.item ?? ''}>
              {client.name} <span className={list.second}>{client.contacts[0]?.name ?? ''}</span>
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
