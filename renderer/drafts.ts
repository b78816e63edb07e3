/** Changing the quote that is being drafted, always against the newest draft on screen. */
import type { Trouble } from '../core/contract/base.ts';
import type { DraftChange, Offer, QuoteDraft } from '../core/contract/quotes.ts';
import { ask, queries } from './ask.ts';
import { deed } from './deeds.ts';
import { client } from './door.ts';

/** Changes a draft. @returns whether it was changed; what was wrong goes to `onTrouble` */
export type ChangeDraft = (changes: DraftChange[], onTrouble?: (trouble: Trouble) => void) => Promise<boolean>;

/** What is shown of a quote: one of its offers, or the quote itself where there are none. */
export type Shown = Pick<Offer, 'lines' | 'dropped' | 'totals' | 'deposit' | 'scale' | 'costs' | 'discount'>;

const newestVersion = (draft: QuoteDraft): number =>
  (queries.getQueryData(ask.quotes.draft.queryKey({ input: { jobId: draft.jobId } }))?.draft ?? draft).draftVersion;

/** Changes lines, offers, taxes or terms of a draft. */
export function draftChanger(draft: QuoteDraft): ChangeDraft {
  return async (changes, onTrouble) => {
    const changed = await deed(() => client.quotes.change({ jobId: draft.jobId, draftVersion: newestVersion(draft), changes }), onTrouble);
    return changed !== undefined;
  };
}

/** The same, for one offer only. What is said of terms, taxes or holidays holds in all of them. */
export function inOffer(change: ChangeDraft, offer: number | undefined): ChangeDraft {
  if (offer === undefined) return change;
  return (changes, onTrouble) =>
    change(
      changes.map((each) =>
        ['set', 'add', 'move', 'drop', 'restore', 'discount', 'hand', 'sub-hire'].includes(each.op) ? { ...each, offer } : each,
      ),
      onTrouble,
    );
}

/** Takes back the last change that was made to the draft by hand. */
export const takeBack = (draft: QuoteDraft): Promise<unknown> =>
  deed(() => client.quotes.undo({ jobId: draft.jobId, draftVersion: newestVersion(draft) }));
