/**
 * The version of a quote, and the offer on it, that a written yes is to.
 */
import type { Job } from '../../core/contract/jobs.ts';
import type { Offer, QuoteVersion } from '../../core/contract/quotes.ts';
import { takenOffer } from '../../core/quotes/agreed.ts';
import { offersAsked } from '../../core/quotes/offers.ts';
import { changesOf, saveChanges, versionsOf } from '../../db/quotes.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { badInput, notFound, refused } from './trouble.ts';

type Said = { quoteVersion?: number | undefined; offer?: number | undefined };

/** @throws REFUSED without a made quote or while it is open which offer is meant, NOT_FOUND and BAD_INPUT for what is not there */
export function agreedOn(db: ReadableDb, job: Job, said: Said): { quote: QuoteVersion; offer: Offer | undefined } {
  const made = versionsOf(db, job.id);
  if (made.length === 0) throw refused(`${job.title} has no made quote.`, 'Make the quote first: ink says yes to a version of it.');
  const quote = said.quoteVersion === undefined ? made[0] : made.find(({ number }) => number === said.quoteVersion);
  if (!quote) throw notFound(`Version ${said.quoteVersion} of this quote`);
  const { offers } = quote.draft;
  const taken = takenOffer(offers, said.offer);
  if (taken === 'unknown') throw badInput([{ field: 'offer', sentence: `is not on version ${quote.number} of the quote` }]);
  if (taken === 'open')
    throw refused(`Version ${quote.number} has ${offers.length} offers, and none is ticked.`, 'Say to which of them the yes is.');
  return { quote, offer: offers.find(({ number }) => number === taken) };
}

/** Tick the offer on the draft too, where it stands there under the same number and name, so that a later version goes on from it. */
export function tickAgreed(db: WritableDb, jobId: string, { number, name }: Offer, now: number): void {
  const { batches, draftVersion } = changesOf(db, jobId);
  const { names, ticked } = offersAsked(batches.flat());
  if (names[number - 1] !== name || ticked === number) return;
  saveChanges(db, jobId, { batches: [...batches, [{ op: 'tick', offer: number }]], draftVersion: draftVersion + 1 }, now);
}
