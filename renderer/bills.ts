/** Changing the bill that is being drafted, always against the newest draft on screen. */
import type { Trouble } from '../core/contract/base.ts';
import type { InvoiceChange, InvoiceDraft } from '../core/contract/invoices.ts';
import { ask, queries } from './ask.ts';
import { deed } from './deeds.ts';
import { client } from './door.ts';

/** Changes a draft bill. @returns whether it was changed; what was wrong goes to `onTrouble` */
export type ChangeBill = (changes: InvoiceChange[], onTrouble?: (trouble: Trouble) => void) => Promise<boolean>;

function newestOf({ jobId, kind, draftVersion }: InvoiceDraft) {
  const newest = queries.getQueryData(ask.invoices.draft.queryKey({ input: { jobId, kind } }))?.draft;
  return { jobId, kind, draftVersion: newest?.draftVersion ?? draftVersion };
}

export function billChanger(draft: InvoiceDraft): ChangeBill {
  return async (changes, onTrouble) => {
    const changed = await deed(() => client.invoices.change({ ...newestOf(draft), changes }), onTrouble);
    return changed !== undefined;
  };
}

/** Takes back the last change that was made to the bill by hand. */
export const takeBillBack = (draft: InvoiceDraft): Promise<unknown> => deed(() => client.invoices.undo(newestOf(draft)));
