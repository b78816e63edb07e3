/**
 * A year of deliverables in a store: jobs in ink week after week, so many edits in all, each of five stages and two rounds.
 */
import { newId } from '../../../db/ids.ts';
import { HIGHLIGHT } from './numbers.ts';
import { stagesFrom } from '../../../core/deliverables/make-stages.ts';
import { insertDeliverable } from '../../../db/deliverables.ts';
import { insertJob, setInk } from '../../../db/jobs.ts';
import { newFacts } from '../../../core/jobs/facts.ts';
import { placedDays } from '../../../electron/api/job-facts.ts';
import { dateLater } from '../../../core/time/wall.ts';
import { DULUTH, FARGO, type World } from '../world.ts';

/** @param count edits, five for each job of a day, spread over a year from a date on */
export function yearOfEdits({ context }: World, from: string, count: number): void {
  const jobs = Math.ceil(count / 5);
  context.store.write((db) => {
    const now = context.now();
    for (let job = 0; job < jobs; job += 1) {
      const first = dateLater(from, Math.floor((job * 360) / jobs));
      const place = job % 3 === 0 ? FARGO : DULUTH;
      const days = [{ date: first, kind: 'shoot' as const, call: `${first}T08:00`, wrap: `${first}T18:00` }];
      const facts = newFacts({ title: `Job ${job}`, place, days });
      const jobId = insertJob(db, {
        facts,
        placed: placedDays(days, place, 'America/Chicago'),
        message: null,
        questions: [],
        spans: [],
        receivedAt: now,
        receivedZone: 'America/Chicago',
        now,
      });
      setInk(db, jobId, { who: 'Ada Byrd', how: 'mail', at: now, quote: 1, offer: null }, now);
      for (let edit = 0; edit < 5 && job * 5 + edit < count; edit += 1) {
        const { due: _due, ...numbers } = {
          ...HIGHLIGHT,
          finishedMinutes: '1',
          editHoursPerMinute: '2',
          ingestHours: '0.5',
          hoursPerRound: '0.5',
        };
        const due = dateLater(first, 21 + edit * 7);
        insertDeliverable(
          db,
          {
            ...numbers,
            name: `Film ${job}/${edit}`,
            jobId,
            templateId: null,
            madeFrom: newId(),
            editHours: null,
            due,
            internalDate: null,
            handId: null,
          },
          stagesFrom(numbers),
          now,
        );
      }
    }
  });
}
