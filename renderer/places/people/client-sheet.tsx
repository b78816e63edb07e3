import { useQuery } from '@tanstack/react-query';
import type { JobRow } from '../../../core/contract/jobs.ts';
import type { Money } from '../../../core/contract/parts.ts';
import type { Client } from '../../../core/contract/people.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { blankClient } from '../../../core/people/blank.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { joined } from '../../../core/words/lists.ts';
import { ask } from '../../ask.ts';
import { Asked } from '../../parts/asked.tsx';
import { Group } from '../../parts/group.tsx';
import { JobTable } from '../../parts/job-table.tsx';
import { AsksAndNotes, Billing, OwnHolidays, TaxAndTerms, WhoTheyAre } from './client-fields.tsx';
import { clientKind } from './client-kind.ts';
import { ClientStatement } from './client-statement.tsx';
import { clientInWords } from './in-words.ts';
import look from '../../parts/list.module.css';
import { PersonSheet } from './person-sheet.tsx';
import { useKeptForm } from '../../parts/use-kept-form.ts';

type Given = { jobs: JobRow[]; made: Money[] };

/** One client with what they gave. */
export function ClientPlace({ id }: { id: string }) {
  const asked = useQuery(ask.people.client.queryOptions({ input: { id } }));
  return <Asked asked={asked}>{({ client, ...given }) => <ClientSheet stored={client} given={given} />}</Asked>;
}

export const NewClientPlace = () => <ClientSheet />;

function ClientSheet({ stored, given }: { stored?: Client; given?: Given }) {
  const form = useKeptForm(clientKind, stored ?? blankClient(''), stored);
  return (
    <PersonSheet
      kind="client"
      title={stored?.name ?? 'New client'}
      back={{ path: '/people', name: 'All clients' }}
      stored={stored}
      form={form}
      inWords={clientInWords}
    >
      {given ? (
        <Group title="Jobs">
          <JobsGiven {...given} />
        </Group>
      ) : null}
      {stored ? <ClientStatement id={stored.id} /> : null}
      <Group title="Who they are">
        <WhoTheyAre form={form} />
      </Group>
      <Group title="Billing">
        <Billing form={form} />
      </Group>
      <Group title="Tax and terms">
        <TaxAndTerms form={form} />
      </Group>
      <Group title="Their own holidays">
        <OwnHolidays form={form} />
      </Group>
      <Group title="They always ask for">
        <AsksAndNotes form={form} />
      </Group>
    </PersonSheet>
  );
}

/** What they gave: every job with where it stands, and what was inked. */
function JobsGiven({ jobs, made }: Given) {
  if (jobs.length === 0) return <p className={look.second}>No job yet. Name this client on a job's sheet, and it stands here.</p>;
  const inked = joined(made.map((sum) => formatMoney(sum, { code: true })));
  return (
    <>
      <p>{`${countInWords(jobs.length, 'job')}. ${inked ? `Inked so far: ${inked}.` : 'Nothing inked yet.'}`}</p>
      <JobTable jobs={jobs} />
    </>
  );
}
