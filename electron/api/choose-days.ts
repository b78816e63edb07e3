/**
 * Days that a message leaves open, chosen and taken back: either way the message is read again, once as one that names no other days.
 */
import type { FactName, Reading } from '../../core/contract/inquiries.ts';
import type { Job } from '../../core/contract/jobs.ts';
import { daysBehind } from '../../core/inquiries/chosen.ts';
import { jobOf } from '../../core/inquiries/to-job.ts';
import { factsOf } from '../../core/jobs/facts.ts';
import { holdsDates } from '../../core/jobs/state.ts';
import { datesInWords } from '../../core/words/dates.ts';
import { saveJobFacts } from '../../db/jobs.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { done } from './job-deed.ts';
import { homeZone, placedDays } from './job-facts.ts';
import { readAgain } from './memory.ts';
import { os } from './os.ts';
import { usualOf } from './take-inquiry.ts';
import { refused } from './trouble.ts';

const OF_DAYS: ReadonlySet<FactName> = new Set(['start', 'end', 'firstCall', 'lastWrap', 'days']);
const CHANGE = 'Change its days instead.';

export const chooseDays = os.jobs.chooseDays.handler(async ({ input, context }) => {
  const read = await readAgain(context, input.id, input.days);
  return done(context, 'jobs.chooseDays', 'change', input, (db, job, now) => {
    refuseHeld(job);
    const again = isOpen(job.questions, input.days) ? daysRead(db, context, job, read, input.days[0]) : undefined;
    if (!again) throw refused(`${datesInWords(input.days)}: these are none of the days that ${job.title} leaves open.`, CHANGE);
    saveDays(db, context, job, again, now);
    return `Chosen of the days that the message leaves open: ${datesInWords(input.days)}.`;
  });
});

export const openDays = os.jobs.openDays.handler(async ({ input, context }) => {
  const read = await readAgain(context, input.id);
  return done(context, 'jobs.openDays', 'change', input, (db, job, now) => {
    refuseHeld(job);
    const chosen = job.days.map(({ date }) => date);
    const again = daysRead(db, context, job, read);
    if (!again || again.days.length > 0 || !isOpen(again.questions, chosen))
      throw refused(`The days of ${job.title} are not chosen of ones that its message leaves open.`, CHANGE);
    saveDays(db, context, job, again, now);
    return `Open again: ${datesInWords(chosen)} had been chosen of the days that the message leaves open.`;
  });
});

/** Dates that are held are not read anew: what is agreed on them would be passed over. */
function refuseHeld(job: Job): void {
  if (holdsDates(job.state)) throw refused(`${job.title} holds its dates.`, CHANGE);
}

type Again = Pick<Job, 'days' | 'questions' | 'spans'>;

/** What a job's message, as it was read, says of its days; undefined for a job without a message. */
function daysRead(db: ReadableDb, context: Context, job: Job, read: Reading | undefined, start?: string): Again | undefined {
  if (job.message === null || !read) return undefined;
  // What was corrected since stays: the days lie at the place as it stands, and are of the role as it stands.
  const reading = { ...read, fields: { ...read.fields, role: job.role }, placeFound: job.place ?? undefined };
  const { facts, questions } = jobOf(reading, job.message, job.title, usualOf(db, context, { role: job.role, start }));
  return { days: facts.days, questions: questions.filter(ofDays), spans: read.spans.filter(ofDays) };
}

/** Put what was read of the days in the place of what stood there. `now` in epoch milliseconds. */
function saveDays(db: WritableDb, context: Context, job: Job, { days, questions, spans }: Again, now: number): void {
  const facts = { ...factsOf(job), days };
  const asked = [...questions, ...job.questions.filter((question) => !ofDays(question))];
  const marks = [...job.spans.filter((span) => !ofDays(span)), ...spans].toSorted((a, b) => a.start - b.start);
  saveJobFacts(db, job.id, facts, placedDays(days, facts.place, homeZone(db, context)), asked, now, marks);
}

const ofDays = ({ field }: { field: FactName }): boolean => OF_DAYS.has(field);

/** Are these days a choice of a question that is open? */
const isOpen = (questions: Job['questions'], days: readonly string[]): boolean =>
  questions.some(({ field, choices }) => field === 'start' && choices.some(({ value }) => daysBehind(value)?.join() === days.join()));
