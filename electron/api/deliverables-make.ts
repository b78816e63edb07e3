/**
 * Deliverables made from the quote that was agreed on, in the deed of the ink or afterwards.
 */
import type { Deliverable } from '../../core/contract/deliverables.ts';
import type { Job } from '../../core/contract/jobs.ts';
import { fromQuote, type FromQuote } from '../../core/deliverables/from-quote.ts';
import { stagesFrom } from '../../core/deliverables/make-stages.ts';
import { countInWords } from '../../core/words/amounts.ts';
import { joined } from '../../core/words/lists.ts';
import { deliverableById, insertDeliverable, madeFromOf } from '../../db/deliverables.ts';
import { daysOf } from '../../db/job-days.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { allTemplates } from '../../db/templates.ts';
import { agreedTerms } from './agreed-terms.ts';
import type { Context } from './context.ts';
import { bothHolidays, lastWrapOf } from './edit-dates.ts';
import { homeZone } from './job-facts.ts';

/** What of the agreed quote is no deliverable yet; what was made, or taken off, is left out. */
export function notMadeYet(db: ReadableDb, context: Context, job: Job): FromQuote[] {
  const agreed = job.state === 'inked' ? agreedTerms(db, job) : null;
  if (!agreed) return [];
  const made = madeFromOf(db, job.id);
  const zone = homeZone(db, context);
  const days = daysOf(db, job.id);
  return fromQuote({
    job,
    lines: agreed.draft.lines,
    rounds: agreed.draft.terms.rounds,
    templates: allTemplates(db),
    lastWrap: lastWrapOf(days, zone)?.date ?? null,
    holidays: bothHolidays(db, context, job.client?.id ?? null, Math.min(context.now(), days[0]?.callAt ?? Infinity)),
  }).filter(({ madeFrom }) => !made.has(madeFrom));
}

/** Make them; `now` in epoch milliseconds. */
export function makeDeliverables(db: WritableDb, context: Context, job: Job, now: number): { made: Deliverable[]; sentence: string } {
  const made = notMadeYet(db, context, job).flatMap((each) => {
    const id = insertDeliverable(db, { ...each, jobId: job.id, handId: null }, stagesFrom(each), now);
    return deliverableById(db, id) ?? [];
  });
  return { made, sentence: madeSentence(made) };
}

/** "2 deliverables are planned: Highlight and Talks." Empty where none was made. */
function madeSentence(made: readonly Deliverable[]): string {
  if (made.length === 0) return '';
  const lacking = made.filter(({ lacks }) => lacks.length > 0);
  const asked =
    lacking.length === 0 ? '' : ` Still to be said: ${joined(lacking.map(({ name, lacks }) => `of ${name} ${joined(lacks)}`))}.`;
  return `${countInWords(made.length, 'deliverable')} ${made.length === 1 ? 'is' : 'are'} planned: ${joined(made.map(({ name }) => name))}.${asked}`;
}
