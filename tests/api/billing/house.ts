/**
 * A business with one job of two days at 1,200.00, agreed on in writing, as the trials of billing begin: all of it told to the command line.
 */
import type { DraftKind, Invoice, InvoiceChange, InvoiceDraft, InvoiceRow } from '../../../core/contract/invoices.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Payment } from '../../../core/contract/payments.ts';
import type { Client, ClientFields } from '../../../core/contract/people.ts';
import type { DraftChange, QuoteVersion } from '../../../core/contract/quotes.ts';
import type { SetupFields } from '../../../core/contract/setup.ts';
import { blankClient } from '../../../core/people/blank.ts';
import { DULUTH, SETUP } from '../world.ts';
import { commandDoor, type Door } from './door.ts';

export const usd = (minor: number) => ({ minor, currency: 'USD' });
/** Registered, 20 % on top. */
export const TAXED: SetupFields = {
  ...SETUP,
  registered: true,
  taxId: 'MN 4471',
  tax: { name: 'Sales tax', percent: '20', included: false },
};

export type House = {
  door: Door;
  client: Client;
  version: QuoteVersion;
  job: () => Promise<Job>;
  draft: (kind: DraftKind) => Promise<InvoiceDraft>;
  /** Change a draft as asked, then issue it. */
  issue: (kind: DraftKind, changes?: InvoiceChange[]) => Promise<Invoice>;
  invoice: (id: string) => Promise<Invoice>;
  invoices: () => Promise<InvoiceRow[]>;
  pay: (amount: { minor: number; currency: string }, on: string, to: Invoice[], more?: object) => Promise<Payment>;
  worked: (call: string, wrap: string, unpaidBreakMinutes?: number) => Promise<void>;
};

type Asked = { setup?: SetupFields; client?: Partial<ClientFields>; currency?: string; changes?: DraftChange[]; facts?: object };

/** 12 and 13 December 2026, 08:00 to 18:00 in Duluth; received and inked on 1 October, so there is no rush. Half is asked for as a deposit. */
export async function house({ setup = SETUP, client: of = {}, currency = 'USD', changes = [], facts = {} }: Asked = {}): Promise<House> {
  const door = commandDoor('2026-10-01T15:00:00Z');
  const { call } = door;
  await call('setup.save', { fields: setup });
  const { fields } = await call<{ fields: object }>('rates.defaults', { role: 'shoot', currency, validFrom: '2026-01-01' });
  await call('rates.save', { fields: { ...fields, dayRate: '1200' } });
  const named = { ...blankClient('Northwind Bakers'), ...(currency === setup.currency ? {} : { currency }), ...of };
  const { client } = await call<{ client: Client }>('people.saveClient', { fields: named });
  const day = (date: string) => ({ date, kind: 'shoot', call: `${date}T08:00`, wrap: `${date}T18:00` });
  const days = [day('2026-12-12'), day('2026-12-13')];
  const added = await call<{ job: Job }>('jobs.add', { facts: { title: 'Bakers congress', role: 'shoot', place: DULUTH, days, ...facts } });
  const { id } = added.job;
  const { job } = await call<{ job: Job }>('jobs.setClient', { id, version: added.job.version, clientId: client.id });
  if (changes.length > 0) await call('quotes.change', { jobId: id, draftVersion: 0, changes });
  const draftVersion = changes.length > 0 ? 1 : 0;
  const made = await call<{ version: QuoteVersion; job: Job }>('quotes.make', {
    jobId: id,
    jobVersion: job.version,
    draftVersion,
    pencil: true,
  });
  await call('jobs.ink', { id, version: made.job.version, who: 'Ilse Marrow', how: 'mail' });

  const draft: House['draft'] = async (kind) => (await call<{ draft: InvoiceDraft }>('invoices.draft', { jobId: id, kind })).draft;
  const invoice: House['invoice'] = async (of) => (await call<{ invoice: Invoice }>('invoices.get', { id: of })).invoice;
  return {
    door,
    client,
    version: made.version,
    draft,
    invoice,
    job: async () => (await call<{ job: Job }>('jobs.get', { id })).job,
    issue: async (kind, bills = []) => {
      let { draftVersion: at } = await draft(kind);
      if (bills.length > 0) {
        const changed = await call<{ draft: InvoiceDraft }>('invoices.change', { jobId: id, kind, draftVersion: at, changes: bills });
        at = changed.draft.draftVersion;
      }
      return (await call<{ invoice: Invoice }>('invoices.issue', { jobId: id, kind, draftVersion: at })).invoice;
    },
    invoices: async () => (await call<{ invoices: InvoiceRow[] }>('invoices.list', { jobId: id })).invoices,
    pay: async (amount, on, to, more = {}) => {
      // Each bill is paid as far as the money goes, in the order given.
      let left = amount.minor;
      const parts = [];
      for (const { id: invoiceId } of to) {
        const { open } = await invoice(invoiceId);
        const minor = Math.min(left, open.minor);
        left -= minor;
        if (minor > 0) parts.push({ invoiceId, amount: { ...open, minor } });
      }
      const input = { amount, on, how: 'bank', note: '', parts, toCredit: false, ...more };
      return (await call<{ payment: Payment }>('payments.record', input)).payment;
    },
    worked: async (callAt, wrap, unpaidBreakMinutes = 0) => {
      const hours = { handId: null, kind: 'shoot', zone: 'America/Chicago', call: callAt, wrap, unpaidBreakMinutes, note: '' };
      await call('hours.save', { jobId: id, fields: hours });
    },
  };
}
