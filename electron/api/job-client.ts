/**
 * Who gave a job, and what it knows of papers, site and wishes.
 */
import { withAsked } from '../../core/jobs/knows.ts';
import { saveKnows as keepKnows, setClient as nameClient } from '../../db/job-client.ts';
import { clientById } from '../../db/people.ts';
import { done } from './job-deed.ts';
import { os } from './os.ts';
import { notFound } from './trouble.ts';

export const setClient = os.jobs.setClient.handler(({ input, context }) =>
  done(context, 'jobs.setClient', 'know', input, (db, job, now) => {
    if (input.clientId === null) {
      nameClient(db, job.id, null, job.knows, now);
      return 'The client was taken off.';
    }
    const client = clientById(db, input.clientId);
    if (!client) throw notFound('This client');
    nameClient(db, job.id, client.id, withAsked(job.knows, client.asks), now);
    return `The client is ${client.name}.`;
  }),
);

export const saveKnows = os.jobs.saveKnows.handler(({ input, context }) =>
  done(context, 'jobs.saveKnows', 'know', input, (db, job, now) => {
    keepKnows(db, job.id, input.knows, now);
    return 'What the job knows was changed.';
  }),
);
