import type { QuoteDraft } from '../../../core/contract/quotes.ts';
import { newId } from '../../../db/ids.ts';
import { jobById, setStage } from '../../../db/jobs.ts';
import { papers, quoteVersions } from '../../../db/schema/quotes.ts';
import type { Context } from '../../../electron/api/context.ts';

/** A made version of 2,400.00 with nothing in it, for tests that only need one to be there. */
export function makeQuote({ store, now }: Context, jobId: string, validUntilAt = now() + 7 * 86_400_000): void {
  store.write((db) => {
    const paperId = newId();
    db.insert(papers)
      .values({
        id: paperId,
        jobId,
        kind: 'quote',
        name: 'Quote.pdf',
        type: 'application/pdf',
        hash: 'a'.repeat(64),
        bytes: 1,
        madeAt: now(),
      })
      .run();
    db.insert(quoteVersions)
      .values({
        id: newId(),
        jobId,
        number: 1,
        madeAt: now(),
        currency: 'USD',
        grossMinor: 240_000,
        validUntilAt,
        draft: { offers: [] } as unknown as QuoteDraft,
        replySubject: '',
        replyText: '',
        paperId,
      })
      .run();
    if (jobById(db, jobId, now())?.state === 'inquiry') setStage(db, jobId, 'quoted', now());
  });
}
