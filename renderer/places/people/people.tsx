import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { bringPeople } from '../../actions/bring-people.ts';
import { newClient } from '../../actions/new-client.ts';
import { newHand } from '../../actions/new-hand.ts';
import { ask } from '../../ask.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { Asked } from '../../parts/asked.tsx';
import { Field } from '../../parts/field.tsx';
import { Segments } from '../../parts/segments.tsx';
import { sceneNow } from '../../scene.ts';
import { AwayList } from './away.tsx';
import { ClientTable } from './client-table.tsx';
import { Doubles } from './doubles.tsx';
import { HandTable } from './hand-table.tsx';
import look from '../../parts/list.module.css';

export type PeopleList = 'clients' | 'hands' | 'away';
const paths: Record<PeopleList, string> = { clients: '/people', hands: '/people/hands', away: '/people/away' };
const lists = [
  { value: 'clients', label: 'clients' },
  { value: 'hands', label: 'hands' },
  { value: 'away', label: 'put away' },
] as const;

/** People: who are they, what did they ask last time, who can help me? */
export function PeoplePlace({ list }: { list: PeopleList }) {
  const [text, setText] = useState('');
  return (
    <div className={look.list}>
      <div className={look.head}>
        <h1 className={look.title}>People</h1>
        {list === 'away' ? null : (
          <div className={look.search}>
            <Field
              label={list === 'clients' ? 'Search clients by name or contact' : 'Search hands by name or role'}
              bare
              placeholder={list === 'clients' ? 'Name or contact' : 'Name or role'}
              type="search"
              value={text}
              onChange={setText}
            />
          </div>
        )}
        <Segments label="Which people" bare value={list} options={lists} onChange={(next) => sceneNow().go(paths[next])} />
        <span className={look.push}>
          <ActionButton action={bringPeople} />
          {list === 'away' ? null : <ActionButton action={list === 'clients' ? newClient : newHand} />}
        </span>
      </div>
      {list === 'clients' ? <Clients text={text} /> : list === 'hands' ? <Hands text={text} /> : <AwayList />}
    </div>
  );
}

const searching = (text: string) => ({
  input: text.trim() ? { text: text.trim().slice(0, 120) } : {},
  placeholderData: <T,>(before: T) => before,
});

function Clients({ text }: { text: string }) {
  const asked = useQuery(ask.people.clients.queryOptions(searching(text)));
  return (
    <Asked asked={asked}>
      {({ clients }) =>
        clients.length > 0 ? (
          <>
            <ClientTable clients={clients} />
            <Doubles kind="client" />
          </>
        ) : (
          <p className={look.second}>
            {text.trim()
              ? 'No client holds these words.'
              : 'No client yet. Name one on a job’s sheet, bring in a file of contacts, or type the first by hand.'}
          </p>
        )
      }
    </Asked>
  );
}

function Hands({ text }: { text: string }) {
  const asked = useQuery(ask.people.hands.queryOptions(searching(text)));
  return (
    <Asked asked={asked}>
      {({ hands }) =>
        hands.length > 0 ? (
          <>
            <HandTable hands={hands} />
            <Doubles kind="hand" />
          </>
        ) : (
          <p className={look.second}>
            {text.trim()
              ? 'No hand holds these words.'
              : 'No hand yet. Type the first: a name, a role and what a day costs; then you know whom to ask when you are ill.'}
          </p>
        )
      }
    </Asked>
  );
}
