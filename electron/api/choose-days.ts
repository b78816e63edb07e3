/**
 * One of the sets of days that a message leaves open, taken for its days: the message is read again as one that names no others.
 */
import type { FactName } from '../../core/contract/inquiries.ts';
import type { Job } from '../../core/contract/jobs.ts';
import { daysBehind } from '../../core/inquiries/chosen.ts';
import { jobOf } from '../../core/inquiries/to-job.ts';
import { factsOf } from '../../core/jobs/facts.ts';
import { datesInWords } from '../../core/words/dates.ts';
import { saveJobFacts } from '../../db/jobs.ts';
import { done } from './job-deed.ts';
import { homeZone, placedDays } from './job-facts.ts';
import { readPlain, receivedAt } from './memory.ts';
import { os } from './os.ts';
import { usualOf } from './take-inquiry.ts';
import { refused } from './trouble.ts';

const OF_DAYS: ReadonlySet<FactName> = new Set(['start', 'end', 'firstCall', 'lastWrap', 'days']);

export const chooseDays = os.jobs.chooseDays.handler(({ input, context }) =>
  done(context, 'jobs.chooseDays', 'change', input, (db, job, now) => {
    if (job.message === null || !isOpen(job, input.days))
      throw refused(`${datesInWords(input.days)}: these are none of the days that ${job.title} leaves open.`, 'Change its days instead.');
    const read = readPlain(db, context, { text: job.message, receivedAt: receivedAt(job), chosenDays: input.days });
    // What was corrected since stays: the days lie at the place as it stands, and are of the role as it stands.
    const reading = { ...read, fields: { ...read.fields, role: job.role }, placeFound: job.place ?? undefined };
    const again = jobOf(reading, job.message, job.title, usualOf(db, context, { role: job.role, start: input.days[0] }));
    const questions = [...again.questions.filter(ofDays), ...job.questions.filter((question) => !ofDays(question))];
    const spans = [...job.spans.filter((span) => !ofDays(span)), ...read.spans.filter(ofDays)].toSorted((a, b) => a.start - b.start);
    const facts = { ...factsOf(job), days: again.facts.days };
    saveJobFacts(db, job.id, facts, placedDays(facts.days, facts.place, homeZone(db, context)), questions, now, spans);
    return `Chosen of the days that the message leaves open: ${datesInWords(input.days)}.`;
  }),
);

const ofDays = ({ field }: { field: FactName }): boolean => OF_DAYS.has(field);

/** Are these days a choice of a question that is still open? */
const isOpen = ({ questions }: Job, days: readonly string[]): boolean =>
  questions.some(({ field, choices }) => field === 'start' && choices.some(({ value }) => daysBehind(value)?.join() === days.join()));
