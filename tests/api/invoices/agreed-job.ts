/**
 * A job of two days at home, agreed on in writing, that the tests of bills and payments begin with.
 */
import { call } from '@orpc/server';
import type { Job } from '../../../core/contract/jobs.ts';
import type { InvoiceChange, DraftKind, Invoice } from '../../../core/contract/invoices.ts';
import type { SetupFields } from '../../../core/contract/setup.ts';
import { hours } from '../../../electron/api/hours.ts';
import { invoices } from '../../../electron/api/invoices.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { people } from '../../../electron/api/people.ts';
import { quotes } from '../../../electron/api/quotes.ts';
import { rates } from '../../../electron/api/rates.ts';
import { blankClient } from '../../../core/people/blank.ts';
import type { ClientFields } from '../../../core/contract/people.ts';
import type { DraftChange } from '../../../core/contract/quotes.ts';
import { DULUTH, SETUP, world, type World } from '../world.ts';

/** Registered, 20 % on top. */
export const TAXED: SetupFields = {
  ...SETUP,
  registered: true,
  taxId: 'MN 4471',
  tax: { name: 'Sales tax', percent: '20', included: false },
};

export type Agreed = { at: World; job: Job; clientId: string };
type More = {
  setup?: SetupFields;
  client?: Partial<ClientFields>;
  currency?: string;
  changes?: DraftChange[];
  facts?: object;
  /** What the card says besides its day rate. */
  card?: object;
  at?: World;
};

/**
 * 12 and 13 December 2026, 08:00 to 18:00, at 1,200.00 a day; half of it as a deposit, 14 days to pay. Received and inked on 1 October,
 * so there is no rush.
 */
export async function agreedJob({
  setup = SETUP,
  client = {},
  currency = 'USD',
  changes = [],
  facts = {},
  card = {},
  at,
}: More = {}): Promise<Agreed> {
  const w = at ?? (await world('2026-10-01T15:00:00Z', setup));
  const { context } = w;
  const { fields } = await call(rates.defaults, { role: 'shoot', currency, validFrom: '2026-01-01' }, { context });
  await call(rates.save, { fields: { ...fields, dayRate: '1200', ...card } }, { context });
  const named = { ...blankClient('Northwind Bakers'), ...(currency === 'USD' ? {} : { currency }), ...client };
  const saved = await call(people.saveClient, { fields: named }, { context });
  const days = ['12', '13'].map((date) => ({
    date: `2026-12-${date}`,
    kind: 'shoot' as const,
    call: `2026-12-${date}T08:00`,
    wrap: `2026-12-${date}T18:00`,
  }));
  const added = await call(jobs.add, { facts: { title: 'Bakers congress', role: 'shoot', place: DULUTH, days, ...facts } }, { context });
  const clientId = saved.client.id;
  const { job } = await call(jobs.setClient, { id: added.job.id, version: added.job.version, clientId }, { context });
  if (changes.length > 0) await call(quotes.change, { jobId: job.id, draftVersion: 0, changes }, { context });
  const draftVersion = changes.length > 0 ? 1 : 0;
  const made = await call(quotes.make, { jobId: job.id, jobVersion: job.version, draftVersion, pencil: true }, { context });
  const inked = await call(jobs.ink, { id: job.id, version: made.job.version, who: 'Ilse Marrow', how: 'mail' }, { context });
  return { at: w, job: inked.job, clientId };
}

/** Change a draft as asked, then issue it. */
export async function issued({ at: { context }, job }: Agreed, kind: DraftKind, changes: InvoiceChange[] = []): Promise<Invoice> {
  const { draft } = await call(invoices.draft, { jobId: job.id, kind }, { context });
  const { draftVersion } =
    changes.length === 0
      ? draft
      : (await call(invoices.change, { jobId: job.id, kind, draftVersion: draft.draftVersion, changes }, { context })).draft;
  return (await call(invoices.issue, { jobId: job.id, kind, draftVersion }, { context })).invoice;
}

/** Hours of mine on a date of the job. */
export async function worked({ at: { context }, job }: Agreed, from: string, to: string, unpaidBreakMinutes = 0): Promise<void> {
  const fields = { handId: null, kind: 'shoot' as const, zone: 'America/Chicago', call: from, wrap: to, unpaidBreakMinutes, note: '' };
  await call(hours.save, { jobId: job.id, fields }, { context });
}
