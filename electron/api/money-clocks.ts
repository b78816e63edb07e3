/**
 * Money on the Desk: the clocks about it, what is owed, and what the last jobs kept.
 */
import type { Clock } from '../../core/contract/desk.ts';
import type { SetupFields } from '../../core/contract/setup.ts';
import { moneyClocks, type HandToPay, type OpenBill } from '../../core/desk/money-clocks.ts';
import type { MonthMoney } from '../../core/desk/month.ts';
import { owedOf } from '../../core/ledger/owed.ts';
import type { InvoiceRow, ReminderTone } from '../../core/contract/invoices.ts';
import { endOfDay } from '../../core/quotes/deadlines.ts';
import { workedOf } from '../../db/hours.ts';
import { notesOf, openAsOf } from '../../db/invoices.ts';
import { jobById } from '../../db/jobs.ts';
import { jobIdsWithHands } from '../../db/ledger.ts';
import type { ReadableDb } from '../../db/store.ts';
import { agreedTerms } from './agreed-terms.ts';
import { lastJobsOf } from './earned.ts';
import { duesOf } from './hours-of.ts';
import { LOOK_BACK, unbilledJobs } from './unbilled.ts';

/** `now` in epoch milliseconds, `today` the date at home. */
export function moneyOnDesk(
  db: ReadableDb,
  { home, currency }: Pick<SetupFields, 'home' | 'currency'>,
  now: number,
  today: string,
): { clocks: Clock[]; month: MonthMoney } {
  const open = openAsOf(db, today);
  const facts = {
    unbilled: unbilledJobs(db, now),
    bills: open.flatMap((row) => openBill(db, row, now, home.zone) ?? []),
    hands: handsToPay(db, now, home.zone),
  };
  const owed = owedOf(open, currency);
  return {
    clocks: moneyClocks(facts, now, home.zone),
    month: { owed: { open: owed.open, late: owed.late }, perHour: lastJobsOf(db, now, today, currency) },
  };
}

function openBill(db: ReadableDb, row: InvoiceRow, now: number, zone: string): OpenBill | undefined {
  const job = row.jobId === null ? undefined : jobById(db, row.jobId, now);
  if (!job) return undefined;
  const reminded = notesOf(db, row.id).flatMap(({ kind, words, at }) => (kind === 'reminded' ? [{ tone: words as ReminderTone, at }] : []));
  return { ...row, job, dueAt: endOfDay(row.dueDate, zone), reminded };
}

/** What is open to hands who worked since the look-back; what was only quoted is not owed before they have worked. */
function handsToPay(db: ReadableDb, now: number, zone: string): HandToPay[] {
  return jobIdsWithHands(db, now - LOOK_BACK).flatMap((id) => {
    const job = jobById(db, id, now);
    if (!job) return [];
    return duesOf(db, job, workedOf(db, id), agreedTerms(db, job)).flatMap(({ handId, name, open, due }) =>
      open.minor > 0 && due !== null ? [{ handId, name, open, job, dueAt: endOfDay(due, zone) }] : [],
    );
  });
}
