/**
 * Jobs in ink that wait for their bill, as the Desk and the ledger see them.
 */
import type { Job } from '../../core/contract/jobs.ts';
import type { Money } from '../../core/contract/parts.ts';
import { toEnter } from '../../core/hours/actual-days.ts';
import { sum } from '../../core/money/money.ts';
import { epochOf } from '../../core/time/read.ts';
import { workedOf } from '../../db/hours.ts';
import { daysOf } from '../../db/job-days.ts';
import { jobById } from '../../db/jobs.ts';
import { unbilledJobIds } from '../../db/ledger.ts';
import type { ReadableDb } from '../../db/store.ts';
import { agreedTerms } from './agreed-terms.ts';
import { billedBefore } from './billed-before.ts';

const DAY = 86_400_000;
/** What was wrapped longer ago and never billed is no news any more: milliseconds. */
export const LOOK_BACK = 400 * DAY;

export type Unbilled = {
  job: Job;
  inkedAt: number;
  firstCallAt: number;
  lastWrapAt: number;
  lastDate: string;
  toEnter: string[];
  toEnterAt: number | null;
  /** Agreed deposit without a bill. */
  deposit: Money | null;
  total: Money;
  /** Of the total, what no bill has asked for, the deposit among it. */
  left: Money;
  payDays: number;
  orderMissing: boolean;
};

/** @param now epoch milliseconds */
export function unbilledJobs(db: ReadableDb, now: number): Unbilled[] {
  return unbilledJobIds(db, now - LOOK_BACK).flatMap((id) => unbilled(db, id, now) ?? []);
}

function unbilled(db: ReadableDb, id: string, now: number): Unbilled | undefined {
  const job = jobById(db, id, now);
  const days = daysOf(db, id);
  const [first] = days;
  const last = days.at(-1);
  const agreed = job && agreedTerms(db, job);
  if (!job?.ink || !agreed || !first || !last) return undefined;
  const { standing, open } = billedBefore(db, id);
  if (standing.some(({ kind }) => kind === 'final')) return undefined;
  const { draft } = agreed;
  const missing = toEnter(days, workedOf(db, id), now);
  const before = open.map(({ totals }) => totals.gross);
  const total = draft.totals.gross;
  return {
    job,
    inkedAt: epochOf(job.ink.at),
    firstCallAt: first.callAt,
    lastWrapAt: last.wrapAt,
    lastDate: last.date,
    toEnter: missing,
    toEnterAt: days.find(({ date }) => date === missing[0])?.wrapAt ?? null,
    deposit: standing.some(({ kind }) => kind === 'deposit') ? null : (draft.deposit?.amount ?? null),
    total,
    left: { ...total, minor: total.minor - sum(total.currency, before).minor },
    payDays: draft.terms.payDays,
    orderMissing: job.knows.purchaseOrder.required && job.knows.purchaseOrder.number.trim() === '',
  };
}
