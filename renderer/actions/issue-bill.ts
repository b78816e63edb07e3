import type { DraftKind } from '../../core/contract/invoices.ts';
import { deed, say } from '../deeds.ts';
import { client } from '../door.ts';
import type { Action } from './action.ts';

const labels: Record<DraftKind, string> = {
  deposit: 'Issue the deposit invoice',
  instalment: 'Issue the instalment',
  final: 'Issue the bill',
  cancellation: 'Issue the cancellation bill',
};

/** Gives the bill on the screen its number and its paper; it never changes after that. */
export const issueBill: Action = {
  name: 'issue-bill',
  label: ({ bill }) => labels[bill?.draft.kind ?? 'final'],
  when: ({ bill }) => bill !== undefined && bill.draft.missing.length === 0 && (!bill.orderMissing || bill.override.trim() !== ''),
  perform: ({ bill }) =>
    deed(async () => {
      if (!bill) return;
      const { jobId, kind, draftVersion } = bill.draft;
      const override = bill.orderMissing ? { override: bill.override } : {};
      const { invoice } = await client.invoices.issue({ jobId, kind, draftVersion, ...override, key: crypto.randomUUID() });
      say(`Invoice ${invoice.number} is issued. Save its PDF and send it.`);
    }),
};
