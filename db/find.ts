/**
 * What the find box looks through. Accents and case are folded by the caller's words, so the texts are handed over as they are.
 */
import { desc } from 'drizzle-orm';
import { allClients, allHands } from './people.ts';
import { perStore } from './prepared.ts';
import { jobs } from './schema/jobs.ts';
import { papers } from './schema/quotes.ts';
import { rateCards } from './schema/rates.ts';
import type { ReadableDb } from './store.ts';

const reading = perStore((db) => ({
  jobs: db
    .select({
      id: jobs.id,
      title: jobs.title,
      organisation: jobs.organisation,
      contactName: jobs.contactName,
      contactEmail: jobs.contactEmail,
      place: jobs.place,
      notes: jobs.notes,
      stage: jobs.stage,
    })
    .from(jobs)
    .orderBy(desc(jobs.updatedAt))
    .prepare(),
  papers: db
    .select({ id: papers.id, jobId: papers.jobId, name: papers.name, madeAt: papers.madeAt })
    .from(papers)
    .orderBy(desc(papers.madeAt))
    .prepare(),
  cards: db
    .select({ id: rateCards.id, name: rateCards.name, role: rateCards.role, currency: rateCards.currency, validFrom: rateCards.validFrom })
    .from(rateCards)
    .orderBy(desc(rateCards.validFrom))
    .prepare(),
}));

/** Names and short texts of jobs, papers and rate cards, last changed first; clients and hands that are not put away, by name. */
export function findable(db: ReadableDb) {
  const { jobs: everyJob, papers: everyPaper, cards } = reading(db);
  return { jobs: everyJob.all(), papers: everyPaper.all(), cards: cards.all(), clients: allClients(db), hands: allHands(db) };
}
