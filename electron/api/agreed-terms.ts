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
import { agreedOf } from '../../db/jobs.ts';
import { inputsOf, versionsOf } from '../../db/quotes.ts';
import { setupRow } from '../../db/setup.ts';
import { cardById } from '../../db/rates.ts';
import type { ReadableDb } from '../../db/store.ts';

/** `planned` are the days that the price was for; without `inputs` the version is from before they were kept. */
export type AgreedTerms = {
  version: QuoteVersion;
  draft: QuoteDraft;
  /** Null where the version had no offers. */
  offer: number | null;
  card: RateCard;
  planned: readonly BookDay[];
  inputs: FrozenInputs | null;
};

/** Null where nothing was agreed on. A version from before its inputs were kept goes by its card and the days as they stand. */
export function agreedTerms(db: ReadableDb, { id }: Pick<Job, 'id'>): AgreedTerms | null {
  const agreed = agreedOf(db, id);
  const version = agreed && versionsOf(db, id).find(({ number }) => number === agreed.quoteVersion);
  if (!version) return null;
  const inputs = inputsOf(db, version.id);
  const card = inputs?.card ?? cardById(db, version.draft.cardId);
  return card
    ? {
        version,
        draft: agreedDraft(version.draft, agreed.offer),
        offer: agreed.offer,
        card,
        planned: inputs?.days ?? daysOf(db, id),
        inputs,
      }
    : null;
}

/** The currency of what was agreed on, else of the newest made quote, else mine. */
export function currencyOfJob(db: ReadableDb, job: Job): string {
  return agreedTerms(db, job)?.draft.currency ?? job.total?.currency ?? setupRow(db)?.fields.currency ?? 'USD';
}
