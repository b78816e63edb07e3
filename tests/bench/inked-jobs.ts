/**
 * Jobs in ink for the bench: one made through the program's own procedures, the others copies of it.
 */
import type { Job } from '../../core/contract/jobs.ts';
import type { SetupFields } from '../../core/contract/setup.ts';
import type { Context } from '../../electron/api/context.ts';
import { callProcedure } from '../../electron/api/serve.ts';
import { clonedJobs } from '../api/invoices/cloned-jobs.ts';

const DULUTH = { key: 'own:duluth', name: 'Duluth', region: 'Minnesota', country: 'US', lat: 46.78, lon: -92.1, zone: 'America/Chicago' };

export const SETUP: SetupFields = {
  name: 'Lakeline Pictures',
  address: '12 Harbor Street\nDuluth, MN 55802',
  email: 'post@lakeline.example',
  phone: '+1 218 555 0114',
  home: DULUTH,
  currency: 'USD',
  paper: 'Letter',
  distance: 'mi',
  registered: true,
  taxId: 'MN 4471',
  tax: { name: 'Sales tax', percent: '7.25', included: false },
  restHours: '8',
  year: null,
};

/** @returns the ids of so many jobs that were agreed on with a deposit */
export async function inkedJobs(context: Context, count: number): Promise<string[]> {
  const ask = async <T>(name: string, input: object): Promise<T> => (await callProcedure(context, name, input)) as T;
  const { fields } = await ask<{ fields: object }>('rates.defaults', { role: 'shoot', currency: 'USD', validFrom: '2026-01-01' });
  await ask('rates.save', { fields: { ...fields, dayRate: '1200' } });
  const days = ['12', '13'].map((date) => ({
    date: `2026-12-${date}`,
    kind: 'shoot',
    call: `2026-12-${date}T08:00`,
    wrap: `2026-12-${date}T18:00`,
  }));
  const facts = { title: 'Bakers congress', organisation: 'Northwind Bakers', role: 'shoot', place: DULUTH, days };
  const { job } = await ask<{ job: Job }>('jobs.add', { facts });
  const made = await ask<{ job: Job }>('quotes.make', { jobId: job.id, jobVersion: job.version, draftVersion: 0, pencil: true });
  await ask('jobs.ink', { id: job.id, version: made.job.version, who: 'Ilse Marrow', how: 'mail' });
  return [job.id, ...clonedJobs(context.store, job.id, count - 1)];
}
