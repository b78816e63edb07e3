import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Job } from '../../../core/contract/jobs.ts';
import { clientFrom, knownAs } from '../../../core/people/asked-by.ts';
import { ask } from '../../ask.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { ClientField } from '../../parts/client-field.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { newestJob } from './change-job.ts';
import style from './facts.module.css';

const setClient = (job: Job, clientId: string | null): Promise<unknown> =>
  client.jobs.setClient({ id: job.id, version: newestJob(job).version, clientId, key: crypto.randomUUID() });

/** Who gives the job, out of People: their terms price the quote, and what they always ask for is asked here too. */
export function ClientFact({ job }: { job: Job }) {
  const { running } = useDeeds();
  const [changing, setChanging] = useState(false);
  const name = (clientId: string | null): void => {
    setChanging(false);
    if (clientId !== (job.client?.id ?? null)) void deed(() => setClient(job, clientId));
  };
  const close = (): void => setChanging(false);
  return (
    <>
      <dt className={style.label}>Client</dt>
      <dd className={style.value}>
        {changing ? (
          <EditorForm label="Change Client" className={style.editor} onKeep={close} onLeave={close}>
            <ClientField label="Client" onChange={({ id }) => name(id)} />
            <span className={style.buttons}>
              {job.client ? <Button onPress={() => name(null)}>No client</Button> : null}
              <Button kind="quiet" onPress={close}>
                Leave as it was
              </Button>
            </span>
          </EditorForm>
        ) : (
          <span className={style.shown}>
            <span>
              {job.client ? (
                <a href={`#/people/client/${job.client.id}`}>{job.client.name}</a>
              ) : (
                <span className={style.unknown}>not in People</span>
              )}
            </span>
            <Button kind="quiet" isDisabled={running > 0} onPress={() => setChanging(true)} aria-label="Change Client">
              Change
            </Button>
          </span>
        )}
        {job.client || changing ? null : <Suggested job={job} />}
      </dd>
    </>
  );
}

/** Where no client is named: the one who looks the same, else a new one from what the inquiry says. */
function Suggested({ job }: { job: Job }) {
  const { running } = useDeeds();
  const { data } = useQuery(ask.people.clients.queryOptions({ input: {} }));
  const fresh = clientFrom(job);
  if (!data) return null;
  const known = knownAs(job, data.clients);
  if (known)
    return (
      <Button isDisabled={running > 0} onPress={() => void deed(() => setClient(job, known.id))}>
        {`It is ${known.name}`}
      </Button>
    );
  if (!fresh) return null;
  const addAndName = (): Promise<unknown> =>
    deed(async () => {
      const saved = await client.people.saveClient({ fields: fresh });
      await setClient(job, saved.client.id);
    });
  return (
    <Button isDisabled={running > 0} onPress={() => void addAndName()}>
      New client from this inquiry
    </Button>
  );
}
