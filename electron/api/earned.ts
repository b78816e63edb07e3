/**
 * What billed jobs kept per hour away: their papers, hours, trip and costs read together.
 */
import type { EarnedRow } from '../../core/contract/ledger.ts';
import type { Job } from '../../core/contract/jobs.ts';
import { finished } from '../../core/hours/worked.ts';
import { actualDays } from '../../core/hours/actual-days.ts';
import { earnedOf, earnedTogether, type EarnedFacts } from '../../core/ledger/earned.ts';
import { editMinutes, partOf, passedThrough } from '../../core/ledger/job-money.ts';
import { worthOf } from '../../core/ledger/sums.ts';
import { formatMoney } from '../../core/money/format.ts';
import { sum, type Money } from '../../core/money/money.ts';
import { expensesOf } from '../../db/expenses.ts';
import { workedOf } from '../../db/hours.ts';
import { invoiceRecordsOf, invoicesAsOf } from '../../db/invoices.ts';
import { daysOf } from '../../db/job-days.ts';
import { jobById } from '../../db/jobs.ts';
import { closedJobIds } from '../../db/ledger.ts';
import type { ReadableDb } from '../../db/store.ts';
import { agreedTerms } from './agreed-terms.ts';
import { billedBefore } from './billed-before.ts';
import { duesOf } from './hours-of.ts';
import { tripOf } from './trip-of.ts';

/** How many of the last jobs are taken together on the Desk. */
const TOGETHER = 5;

/** Every billed job, the newest bill first. @param now epoch milliseconds @param today date at home */
export function earnedRows(db: ReadableDb, now: number, today: string): EarnedRow[] {
  return [...rowsOf(db, closedJobIds(db), now, today)];
}

/** One after the other, so that who needs a few reads no more. */
function* rowsOf(db: ReadableDb, ids: readonly string[], now: number, today: string): Generator<EarnedRow> {
  for (const id of ids) {
    const job = jobById(db, id, now);
    const row = job && earnedRow(db, job, today);
    if (row) yield row;
  }
}

/** The last jobs in the home currency taken together. */
export function lastJobs(rows: readonly EarnedRow[], home: string): { jobs: number; perHour: Money } | null {
  const last = rows.filter(({ kept }) => kept.currency === home).slice(0, TOGETHER);
  const perHour = earnedTogether(last);
  return perHour && { jobs: last.length, perHour };
}

/** The same, read from the bills of this year and the last alone. */
export function lastJobsOf(db: ReadableDb, now: number, today: string, home: string): { jobs: number; perHour: Money } | null {
  const ids = closedJobIds(db, Number(today.slice(0, 4)) - 1);
  const last = rowsOf(db, ids, now, today)
    .filter(({ kept }) => kept.currency === home)
    .take(TOGETHER);
  return lastJobs([...last], home);
}

function earnedRow(db: ReadableDb, job: Job, today: string): EarnedRow | undefined {
  const standing = new Set(billedBefore(db, job.id).standing.map(({ number }) => number));
  const papers = invoiceRecordsOf(db, job.id);
  const bills = papers.filter(({ number }) => standing.has(number));
  const closing = bills.find(({ kind }) => kind === 'final' || kind === 'cancellation');
  if (!closing) return undefined;
  const { currency } = closing;
  const ids = new Set(bills.map(({ id }) => id));
  const credits = papers.filter(({ creditsId }) => creditsId !== null && ids.has(creditsId));
  const netAsked = ({ content: { totals, credited } }: (typeof papers)[number]): Money =>
    sum(currency, [totals.net, ...credited.map(({ net }) => net)]);
  const costs = costsOf(db, job, currency);
  const writtenOff = invoicesAsOf(db, today, { jobId: job.id }).filter((row) => row.writtenOff.minor > 0);
  const facts: EarnedFacts = {
    billed: sum(currency, bills.map(netAsked)),
    credited: sum(currency, credits.map(netAsked)),
    givenUp: sum(
      currency,
      writtenOff.map((row) => partOf(row.net, row.writtenOff, row.gross)),
    ),
    passed: sum(
      currency,
      bills.map(({ content }) => passedThrough(content)),
    ),
    ...costs.amounts,
    minutes: minutesOf(db, job),
    quoted: costs.quoted,
  };
  const earned = earnedOf(facts);
  return { jobId: job.id, title: job.title, on: closing.issueDate, ...earned, cautions: costs.cautions };
}

type Costs = {
  amounts: Pick<EarnedFacts, 'spent' | 'notCharged' | 'hands' | 'subHire' | 'wear'>;
  quoted: EarnedFacts['quoted'];
  cautions: string[];
};

function costsOf(db: ReadableDb, job: Job, currency: string): Costs {
  const terms = agreedTerms(db, job);
  const expenses = expensesOf(db, job.id).map(({ amount, rate, billed, category, what }) => ({
    worth: worthOf({ amount, rate: rate?.rate ?? null }, currency),
    billed,
    category,
    left: `${what}, ${formatMoney(amount, { code: true })}, has no rate to ${currency} and is not counted.`,
  }));
  const total = (amounts: readonly Money[]): Money =>
    sum(
      currency,
      amounts.filter((amount) => amount.currency === currency),
    );
  const quoted = (kind: 'hand' | 'sub-hire' | 'wear'): Money =>
    total((terms?.draft.costs ?? []).flatMap((cost) => (cost.kind === kind ? [cost.amount] : [])));
  // What was really paid for a sub-hire takes the place of what was quoted for it.
  const subHired = expenses.some(({ category }) => category === 'sub-hire');
  return {
    amounts: {
      spent: total(expenses.flatMap(({ worth }) => worth ?? [])),
      notCharged: total(expenses.flatMap(({ worth, billed }) => (worth && !billed ? [worth] : []))),
      hands: total(duesOf(db, job, workedOf(db, job.id), terms).map(({ amount }) => amount)),
      subHire: subHired ? total([]) : quoted('sub-hire'),
      wear: quoted('wear'),
    },
    quoted:
      terms && terms.draft.currency === currency
        ? { perHour: terms.draft.scale.keptPerHourAway, hours: terms.draft.scale.hoursAway, hands: quoted('hand') }
        : null,
    cautions: expenses.flatMap(({ worth, left }) => (worth ? [] : [left])),
  };
}

function minutesOf(db: ReadableDb, job: Job): EarnedFacts['minutes'] {
  const planned = daysOf(db, job.id);
  const mine = workedOf(db, job.id).filter(({ handId }) => handId === null);
  const { days } = actualDays(planned, mine);
  const lengthOf = (all: readonly { callAt: number; wrapAt: number }[]): number =>
    all.reduce((minutes, { callAt, wrapAt }) => minutes + Math.round((wrapAt - callAt) / 60_000), 0);
  const trip = tripOf(db, job);
  const worked = lengthOf(days.filter(({ kind }) => kind !== 'edit' && kind !== 'travel'));
  const out = lengthOf(days.filter(({ kind }) => kind !== 'edit'));
  const outside = finished(mine).filter(
    ({ kind, callAt, wrapAt }) => kind === 'edit' && !(trip?.away && callAt >= trip.doorOutAt && wrapAt <= trip.doorInAt),
  );
  return {
    away: trip?.away ? Math.max(Math.round(trip.hoursAway * 60), out) : out,
    worked,
    editing: mine.some(({ kind }) => kind === 'edit') ? lengthOf(outside) : editMinutes(agreedTerms(db, job)?.draft.lines ?? []),
  };
}
