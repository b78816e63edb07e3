import { useQuery } from '@tanstack/react-query';
import type { Hand } from '../../../core/contract/people.ts';
import { blankHand } from '../../../core/people/blank.ts';
import { dateIn } from '../../../core/time/wall.ts';
import { ask } from '../../ask.ts';
import { Asked } from '../../parts/asked.tsx';
import { Group } from '../../parts/group.tsx';
import { KitAndNotes, PapersAndPay, Rates, WhoTheyAre } from './hand-fields.tsx';
import { handKind } from './hand-kind.ts';
import { handInWords } from './in-words.ts';
import { PersonSheet } from './person-sheet.tsx';
import { useKeptForm } from '../../parts/use-kept-form.ts';

/** One hand. */
export function HandPlace({ id }: { id: string }) {
  const asked = useQuery(ask.people.hand.queryOptions({ input: { id } }));
  return <Asked asked={asked}>{({ hand }) => <HandSheet stored={hand} />}</Asked>;
}

export const NewHandPlace = () => <HandSheet />;

function HandSheet({ stored }: { stored?: Hand }) {
  const { data } = useQuery(ask.setup.get.queryOptions({ input: {} }));
  const zone = data?.setup?.home.zone ?? data?.suggestedZone ?? 'UTC';
  const start = { currency: data?.setup?.currency ?? 'USD', from: dateIn(zone, Temporal.Now.instant().epochMilliseconds) };
  const form = useKeptForm(handKind, stored ?? blankHand(''), stored);
  return (
    <PersonSheet
      kind="hand"
      title={stored?.name ?? 'New hand'}
      back={{ path: '/people/hands', name: 'All hands' }}
      stored={stored}
      form={form}
      inWords={handInWords}
    >
      <Group title="Who they are">
        <WhoTheyAre form={form} />
      </Group>
      <Group title="Roles and rates">
        <Rates form={form} start={start} />
      </Group>
      <Group title="Papers and pay">
        <PapersAndPay form={form} />
      </Group>
      <Group title="Kit and notes">
        <KitAndNotes form={form} />
      </Group>
    </PersonSheet>
  );
}
