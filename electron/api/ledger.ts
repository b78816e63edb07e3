/**
 * The ledger read back: who owes me, what did it earn?
 */
import { expectedByWeek, type ToCome } from '../../core/ledger/expected.ts';
import { ageings, clientsOwing, owedOf } from '../../core/ledger/owed.ts';
import { shownPapers } from '../../core/ledger/shown.ts';
import { yearSetAside } from '../../core/ledger/year-set-aside.ts';
import { yearSums } from '../../core/ledger/year.ts';
import type { InvoiceRow } from '../../core/contract/invoices.ts';
import { dateIn, dateLater } from '../../core/time/wall.ts';
import { openAsOf, invoicesAsOf } from '../../db/invoices.ts';
import { billedIn, ledgerYears, paidToHands, spentBetween } from '../../db/ledger.ts';
import { ownSetup } from './book.ts';
import { earnedRows, lastJobs } from './earned.ts';
import { todayAtHome } from './invoice-of.ts';
import { csv } from './ledger-csv.ts';
import { os } from './os.ts';
import { receivedIn } from './received.ts';
import { unbilledJobs, type Unbilled } from './unbilled.ts';

/** So many papers are listed at once; the search finds the others. */
const LISTED = 200;

const see = os.ledger.see.handler(({ input, context }) =>
  context.store.read((db) => {
    const setup = ownSetup(db);
    const home = setup.currency;
    const asOf = input.asOf ?? todayAtHome(db, context);
    const papers = openAsOf(db, asOf);
    const waiting = unbilledJobs(db, context.now());
    const toCome = [...papers.map(asToCome), ...waiting.flatMap((each) => yetToBill(each, asOf, setup.home.zone))];
    return {
      asOf,
      home,
      ...owedOf(papers, home),
      ageing: ageings(papers, asOf, home),
      clients: clientsOwing(papers, home),
      expected: expectedByWeek(toCome, asOf, home).map((week) => ({
        ...week,
        parts: week.parts.map(({ kind, on, what, jobId, amount }) => ({ kind, on, what, jobId, amount })),
      })),
    };
  }),
);

function asToCome({ state, dueDate, number, billedTo, jobId, open, rate }: InvoiceRow): ToCome {
  const kind = state === 'disputed' ? 'disputed' : 'due';
  return { kind, on: dueDate, what: `${number}, ${billedTo}`, jobId, amount: open, rate: rate?.rate ?? null };
}

/** The agreed deposit by first call, the rest when the bill that follows the last wrap falls due. */
function yetToBill({ job, firstCallAt, lastDate, deposit, left, payDays }: Unbilled, asOf: string, zone: string): ToCome[] {
  const of = { jobId: job.id, rate: null };
  const billedOn = lastDate < asOf ? asOf : lastDate;
  const rest = { ...left, minor: left.minor - (deposit?.minor ?? 0) };
  const items: ToCome[] = [{ ...of, kind: 'to bill', on: dateLater(billedOn, payDays), what: job.title, amount: rest }];
  if (deposit) items.push({ ...of, kind: 'deposit', on: dateIn(zone, firstCallAt), what: job.title, amount: deposit });
  return items.filter(({ amount }) => amount.minor > 0);
}

const papers = os.ledger.papers.handler(({ input, context }) =>
  context.store.read((db) => {
    const asOf = input.asOf ?? todayAtHome(db, context);
    const { show } = input;
    const rows = shownPapers(show === 'open' || show === 'late' ? openAsOf(db, asOf) : invoicesAsOf(db, asOf), show, input.text ?? '');
    return { asOf, rows: rows.slice(0, LISTED), more: Math.max(0, rows.length - LISTED) };
  }),
);

const year = os.ledger.year.handler(({ input, context }) =>
  context.store.read((db) => {
    const { currency, home, year: own } = ownSetup(db);
    const asked = input.year ?? Number(todayAtHome(db, context).slice(0, 4));
    const span = { from: `${asked}-01-01`, to: `${asked}-12-31` };
    const received = receivedIn(db, span, currency);
    const { billed, received: all, months, clients, jobs } = yearSums(billedIn(db, asked), received, asked, currency);
    const { profit, amount, reason, income, collected, costs, selfEmployment, cautions } = yearSetAside({
      year: asked,
      home: { currency, country: home.country },
      percent: own?.setAsidePercent ?? null,
      received,
      spent: spentBetween(db, span, currency),
      paidToHands: paidToHands(db, span).map((paid) => ({ amount: paid, rate: null })),
    });
    return {
      year: asked,
      years: [...new Set([Number(todayAtHome(db, context).slice(0, 4)), ...ledgerYears(db)])].sort((a, b) => b - a),
      home: currency,
      billed,
      received: all,
      months,
      clients,
      jobs,
      setAside: { income, collected, costs, profit, amount, reason, selfEmployment, cautions },
    };
  }),
);

const earned = os.ledger.earned.handler(({ context }) =>
  context.store.read((db) => {
    const rows = earnedRows(db, context.now(), todayAtHome(db, context));
    return { rows, together: lastJobs(rows, ownSetup(db).currency) };
  }),
);

export const ledger = { see, papers, year, earned, csv };
