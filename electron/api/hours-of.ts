/**
 * The hours of a job read back: what was worked, what it comes to, what is not approved, not entered, not paid.
 */
import type { HandDue, JobHours } from '../../core/contract/hours.ts';
import type { Job } from '../../core/contract/jobs.ts';
import { bookDay, toEnter } from '../../core/hours/actual-days.ts';
import { longDayCautions } from '../../core/hours/cautions.ts';
import { handDues } from '../../core/hours/dues.ts';
import { overtimeOf } from '../../core/hours/overtime.ts';
import { hoursPay } from '../../core/hours/pay.ts';
import { finished } from '../../core/hours/worked.ts';
import { instantText } from '../../core/time/read.ts';
import { asksOf, handPaymentsOf, workedAsMet, workedOf, type WorkedRow } from '../../db/hours.ts';
import { daysOf } from '../../db/job-days.ts';
import { handById } from '../../db/people.ts';
import type { ReadableDb } from '../../db/store.ts';
import { agreedTerms, type AgreedTerms } from './agreed-terms.ts';
import type { Context } from './context.ts';
import { whole } from './job-deed.ts';
import { homeZone } from './job-facts.ts';

/** @throws NOT_FOUND without the job */
export function hoursOf(db: ReadableDb, context: Context, jobId: string): JobHours {
  const now = context.now();
  const job = whole(db, jobId, now);
  const zone = job.place?.zone ?? homeZone(db, context);
  const worked = workedOf(db, jobId);
  const asks = asksOf(db, jobId);
  const terms = agreedTerms(db, job);
  const mine = finished(worked)
    .filter(({ handId }) => handId === null)
    .map(bookDay);
  const pay =
    terms && mine.length > 0
      ? hoursPay({ days: mine, zone, role: job.role, card: terms.card, holidays: terms.draft.holidays ?? [] })
      : { lines: [], total: null, cautions: [] };
  const overtime = terms ? overtimeOf({ actual: mine, planned: terms.planned, asks, terms: terms.card, zone }) : [];
  const approver = job.knows.overtimeApprover.trim() || (terms?.draft.terms.overtimeApprover.trim() ?? '');
  const names = new Map(worked.map(({ handId, handName }) => [handId, handName]));
  return {
    now: instantText(now),
    zone,
    days: worked.map(workedAsMet),
    asks,
    overtime: overtime.map(({ date, over, open, sentence }) => ({ date, over, open, sentence })),
    lines: pay.lines,
    total: pay.total,
    owed: duesOf(db, job, worked, terms),
    cautions: [...pay.cautions, ...longDayCautions(worked, (handId) => names.get(handId) ?? '')],
    toEnter: job.state === 'inked' ? toEnter(daysOf(db, jobId), worked, now) : [],
    approver,
  };
}

/** What hands are owed for a job: those who worked on it, stand in its quote or were paid. */
export function duesOf(db: ReadableDb, job: Job, worked: readonly WorkedRow[], terms: AgreedTerms | null): HandDue[] {
  const costs = terms?.draft.costs ?? [];
  const paid = handPaymentsOf(db, job.id);
  const ids = [
    ...worked.flatMap(({ handId }) => handId ?? []),
    ...costs.flatMap(({ id, kind }) => (kind === 'hand' ? id.replace('hand/', '') : [])),
    ...paid.map(({ handId }) => handId),
  ];
  const hands = [...new Set(ids)].flatMap((id) => handById(db, id) ?? []);
  return handDues({ job, hands, worked, costs, paid, lastDate: job.days.at(-1)?.date ?? null });
}
