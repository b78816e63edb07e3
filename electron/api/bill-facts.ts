/**
 * A draft bill as it stands now: what the store knows of its job, joined with the rules of `core/invoices`.
 */
import type { DraftKind, InvoiceDraft } from '../../core/contract/invoices.ts';
import type { Job } from '../../core/contract/jobs.ts';
import type { Client } from '../../core/contract/people.ts';
import type { SetupFields } from '../../core/contract/setup.ts';
import { billedExpenses } from '../../core/expenses/billed.ts';
import { actualDays } from '../../core/hours/actual-days.ts';
import { overtimeCautions, overtimeOf } from '../../core/hours/overtime.ts';
import { askedByHand, lineChanges, type Asked } from '../../core/invoices/asked.ts';
import { billLines } from '../../core/invoices/bill-lines.ts';
import type { IssuedDeposit } from '../../core/invoices/deposit.ts';
import { draftOf, type DraftFacts } from '../../core/invoices/draft.ts';
import { finalBill, type Bill } from '../../core/invoices/final.ts';
import { sumsOf } from '../../core/invoices/lines.ts';
import { paperLacks } from '../../core/invoices/paper-lacks.ts';
import { cancellationBill, shareBill } from '../../core/invoices/part-bills.ts';
import { subtract, sum, zero, type Money } from '../../core/money/money.ts';
import { billedTo } from '../../core/quotes/billed.ts';
import { taxesOf } from '../../core/quotes/taxes.ts';
import { epochOf, wallAt } from '../../core/time/read.ts';
import { dateInWords } from '../../core/words/dates.ts';
import { billChangesOf, type KeptBillChanges } from '../../db/bill-drafts.ts';
import { callingsOf } from '../../db/callings-off.ts';
import { expensesOf } from '../../db/expenses.ts';
import { asksOf, workedOf } from '../../db/hours.ts';
import { daysOf } from '../../db/job-days.ts';
import { clientById } from '../../db/people.ts';
import { changesOf } from '../../db/quotes.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import { agreedTerms, type AgreedTerms } from './agreed-terms.ts';
import { billedBefore, type BilledBefore } from './billed-before.ts';
import { whole } from './job-deed.ts';
import { allChanges, tripOf } from './quote-draft.ts';
import { furtherRounds, laterBill } from './rounds-billed.ts';
import { badInput, refused } from './trouble.ts';

/** Everything that a bill is made from. */
export type BillFacts = { job: Job; client: Client | undefined; setup: SetupFields; kept: KeptBillChanges; draft: InvoiceDraft };

type Known = Omit<BillFacts, 'draft'> & { agreed: AgreedTerms; asked: Asked; before: BilledBefore; now: number; today: string };
/** What each kind of bill adds to what all have in common. */
type OfKind = Pick<DraftFacts, 'included' | 'later' | 'lines' | 'dropped' | 'before' | 'supply' | 'differences' | 'missing' | 'cautions'>;

/**
 * Load a job and make its bill.
 * @param now epoch milliseconds
 * @throws NOT_FOUND without the job, REFUSED while nothing was agreed on, BAD_INPUT when an amount is past what is reckoned with
 */
export function billFacts(db: ReadableDb, jobId: string, kind: DraftKind, now: number): BillFacts {
  const job = whole(db, jobId, now);
  const setup = setupRow(db)?.fields;
  if (!setup) throw refused('My details are not set up.', 'Fill in Setup first: a bill needs a sender and a currency.');
  const agreed = agreedTerms(db, job);
  if (!agreed || (job.state !== 'inked' && job.state !== 'cancelled'))
    throw refused(`${job.title} is not in ink.`, 'A bill follows from a written yes: ink it first.');
  const client = job.client ? clientById(db, job.client.id) : undefined;
  const kept = billChangesOf(db, jobId, kind);
  const asked = askedByHand(kept.batches.flat());
  const today = wallAt(now, setup.home.zone).slice(0, 10);
  const known = { job, client, setup, kept, agreed, asked, before: billedBefore(db, jobId), now, today };
  try {
    const draft = draftOf({ ...inCommon(known, kind), ...ofKind[kind](db, known) });
    return { job, client, setup, kept, draft: { ...draft, cautions: [...draft.cautions, ...paperLacks(draft, setup)] } };
  } catch (error) {
    if (error instanceof RangeError) throw badInput([{ field: 'changes', sentence: `cannot be reckoned with. ${error.message}` }]);
    throw error;
  }
}

function inCommon({ job, client, setup, kept, agreed, asked, today }: Known, kind: DraftKind): Omit<DraftFacts, keyof OfKind> {
  const payer = job.knows.payer.trim();
  return {
    jobId: job.id,
    kind,
    draftVersion: kept.draftVersion,
    undoable: kept.batches.length,
    currency: agreed.draft.currency,
    home: setup.currency,
    billTo: { ...billedTo(job, client), country: payer === '' ? (client?.country ?? null) : null },
    today,
    payDays: agreed.draft.terms.payDays,
    dueBy: job.days[0]?.date ?? null,
    lateInterest: setup.lateInterestPercent ?? null,
    series: setup.series ?? '',
    asked,
  };
}

const ofKind: Record<DraftKind, (db: ReadableDb, known: Known) => OfKind> = {
  deposit: (_, { job, setup, agreed: { draft }, asked, before }) => {
    const included = setup.tax?.included ?? false;
    const lines = billLines(draft, taxesOf(setup));
    const bill = shareBill(
      { currency: draft.currency, lines, included },
      asked,
      draft.deposit?.amount ?? null,
      draft.totals.gross,
      `Deposit for ${job.title}`,
    );
    const none = draft.deposit || asked.ask ? [] : ['No deposit was agreed on. Say how much it asks for.'];
    return {
      ...bill,
      ...partOfWhole,
      missing: [...billedAlready(before, 'deposit'), ...called(job), ...(none.length > 0 ? none : bill.missing)],
    };
  },
  instalment: (db, known) => {
    const { job, asked, before, agreed } = known;
    const { lines, cautions } = actualBill(db, known);
    const included = known.setup.tax?.included ?? false;
    const left = subtract(sumsOf(agreed.draft.currency, lines, included).gross, grossOf(before.open, agreed.draft.currency));
    const bill = shareBill({ currency: agreed.draft.currency, lines, included }, asked, null, left, `Instalment for ${job.title}`);
    return { ...bill, ...partOfWhole, cautions, missing: [...billedAlready(before, 'final'), ...called(job), ...bill.missing] };
  },
  final: (db, known) => {
    const { before, job, today, setup } = known;
    const bill = actualBill(db, known);
    const later = laterBill(before, bill.lines, furtherRounds(db, job.id, known.agreed.draft.currency), today);
    return {
      ...bill,
      ...later,
      included: setup.tax?.included ?? false,
      before: before.open,
      missing: [...(later ? [] : billedAlready(before, 'final')), ...called(job)],
    };
  },
  cancellation: (db, { job, setup, kept, before }) => {
    const [calling] = callingsOf(db, job.id);
    if (!calling) throw refused(`${job.title} was not called off.`, 'Bill it at wrap, or call it off first.');
    const { owes, postponedTo, toldAt, at } = calling;
    const name = postponedTo === null ? 'Cancellation' : 'Postponement';
    const bill = cancellationBill(owes, setup, lineChanges(kept.batches.flat()), {
      fee: `${name} of ${job.title}, ${owes.percent} % by the terms`,
      bound: 'Costs already bound',
    });
    const told = wallAt(toldAt, setup.home.zone).slice(0, 10);
    return {
      ...bill,
      included: setup.tax?.included ?? false,
      // A deposit stays with a job that only moves.
      before: postponedTo === null ? before.open : [],
      supply: { from: told, to: told },
      differences: [owes.reason],
      missing: [...billedAlready(before, 'cancellation', at), ...bill.missing],
      cautions: [owes.caution].filter((caution) => caution !== ''),
    };
  },
};

/** A share of a sum: amounts hold their tax, nothing is set off, and what it is for is still to come. */
const partOfWhole = { included: true, before: [], supply: null, differences: [], cautions: [] };

/** What was agreed on, priced on the hours as they are known, with changes by hand on top. */
function actualBill(db: ReadableDb, { job, client, setup, kept, agreed, now }: Known): Bill {
  const { inputs, card, draft, version, planned } = agreed;
  const dates = daysOf(db, job.id);
  const { days, notEntered } = actualDays(dates, workedOf(db, job.id));
  const zone = job.place?.zone ?? setup.home.zone;
  const overtime = overtimeOf({ actual: days, planned: dates, asks: asksOf(db, job.id), terms: card, zone });
  const trip = tripOf(db, job, dates, setup);
  const agreedCallAt = planned[0]?.callAt;
  const expenses = billedExpenses(expensesOf(db, job.id), draft.currency);
  const further = furtherRounds(db, job.id, draft.currency);
  const bill = finalBill({
    agreed: draft,
    offer: agreed.offer ?? 1,
    input: {
      job,
      days,
      publicHolidays: inputs?.publicHolidays ?? (draft.holidays ?? []).map((date) => ({ date, name: '' })),
      card,
      cardCaution: null,
      setup,
      // What was typed, ticketed or driven since takes the place of an estimate; else the estimate that was agreed on stands.
      trip: trip && (trip.source !== 'estimated' || (trip.driven ?? []).length > 0) ? trip : (inputs?.trip ?? trip),
      hands: [],
      wear: [],
      changes: [
        ...(inputs?.changes ?? allChanges(client, changesOf(db, job.id))),
        ...expenses.changes,
        ...lineChanges(kept.batches.flat()),
      ],
      more: [...expenses.lines, ...further.lines],
      draftVersion: kept.draftVersion,
      now: epochOf(version.madeAt),
      ...(agreedCallAt === undefined ? {} : { agreedCallAt }),
    },
    notEntered: notEntered.filter((date) => dates.some((day) => day.date === date && day.kind !== 'travel' && day.kind !== 'edit')),
    overtime: {
      sentences: overtime.filter(({ over, quoted }) => over > quoted).map(({ sentence }) => `Overtime on ${sentence}`),
      cautions: overtimeCautions(overtime, job.knows.overtimeApprover.trim()),
    },
    over: days.every((day) => day.wrapAt <= now),
  });
  return {
    ...bill,
    lines: bill.lines.map((line) => (further.asked.has(line.id) ? { ...line, unapproved: true } : line)),
    cautions: [...bill.cautions, ...expenses.cautions, ...further.cautions],
  };
}

function grossOf(deposits: readonly IssuedDeposit[], currency: string): Money {
  return deposits.length === 0
    ? zero(currency)
    : sum(
        currency,
        deposits.map(({ totals }) => totals.gross),
      );
}

/** @param since epoch milliseconds: only bills issued after that count */
function billedAlready({ standing }: BilledBefore, kind: DraftKind, since = 0): string[] {
  const bill = standing.find((each) => each.kind === kind && each.issuedAt >= since);
  return bill ? [`${bill.number} of ${dateInWords(bill.issueDate)} is this bill already. Credit it first, and issue it anew.`] : [];
}

function called({ state, title }: Job): string[] {
  return state === 'cancelled' ? [`${title} was cancelled: bill what its terms say.`] : [];
}
