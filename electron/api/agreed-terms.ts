/**
 * What a job in ink is priced by: the version and offer that was agreed on, and what was frozen with it.
 */
import type { Job } from '../../core/contract/jobs.ts';
import type { QuoteDraft, QuoteVersion } from '../../core/contract/quotes.ts';
import type { RateCard } from '../../core/contract/rates.ts';
import type { BookDay } from '../../core/fit/book.ts';
import { agreedDraft } from '../../core/quotes/agreed.ts';
import type { FrozenInputs } from '../../core/quotes/frozen.ts';
import { daysOf } from '../../db/job-days.ts';
import { inputsOf, versionsOf } from '../../db/quotes.ts';
import { cardById } from '../../db/rates.ts';
import type { ReadableDb } from '../../db/store.ts';

/** `planned` are the days that the price was for; without `inputs` the version is from before they were kept. */
export type AgreedTerms = {
  version: QuoteVersion;
  draft: QuoteDraft;
  card: RateCard;
  planned: readonly BookDay[];
  inputs: FrozenInputs | null;
};

/** Null where nothing was agreed on. A version from before its inputs were kept goes by its card and the days as they stand. */
export function agreedTerms(db: ReadableDb, { id, ink }: Job): AgreedTerms | null {
  const version = ink && versionsOf(db, id).find(({ number }) => number === ink.quoteVersion);
  if (!version) return null;
  const inputs = inputsOf(db, version.id);
  const card = inputs?.card ?? cardById(db, version.draft.cardId);
  return card ? { version, draft: agreedDraft(version.draft, ink.offer), card, planned: inputs?.days ?? daysOf(db, id), inputs } : null;
}
