/**
 * Tables of the ledger as CSV.
 */
import { csvText, type Table } from '../../core/ledger/csv.ts';
import type { LedgerTable } from '../../core/contract/ledger.ts';
import { expenseTable, incomeTable, invoiceTable, mileageTable, paymentTable, perDiemTable } from '../../core/ledger/tables.ts';
import { yearSums } from '../../core/ledger/year.ts';
import { expensesBetween } from '../../db/expenses.ts';
import { invoicesAsOf } from '../../db/invoices.ts';
import { billedIn } from '../../db/ledger.ts';
import { paymentsBetween } from '../../db/payments.ts';
import { clientById } from '../../db/people.ts';
import type { ReadableDb } from '../../db/store.ts';
import { ownSetup } from './book.ts';
import { todayAtHome } from './invoice-of.ts';
import { mileageBetween, perDiemBetween } from './logs.ts';
import { os } from './os.ts';
import { receivedIn } from './received.ts';

type Span = { from: string; to: string };
type Asked = Span & { now: number; today: string };

const tables: Record<LedgerTable, (db: ReadableDb, asked: Asked) => Table> = {
  invoices: (db, { from, to, today }) =>
    invoiceTable(
      invoicesAsOf(db, today)
        .filter(({ issueDate }) => from <= issueDate && issueDate <= to)
        .toReversed(),
    ),
  payments: (db, { from, to }) =>
    paymentTable(paymentsBetween(db, from, to).toReversed(), (id) => (id === null ? '' : (clientById(db, id)?.name ?? ''))),
  expenses: (db, span) => expenseTable(expensesBetween(db, span)),
  mileage: (db, { now, ...span }) => mileageTable(mileageBetween(db, span, now)),
  'per diem': (db, { now, ...span }) => perDiemTable(perDiemBetween(db, span, now)),
  income: (db, span) =>
    incomeTable(
      yearsOf(span).map((year) => incomeOfYear(db, year, span)),
      ownSetup(db).currency,
    ),
};

export const csv = os.ledger.csv.handler(({ input: { what, from, to }, context }) =>
  context.store.read((db) => {
    const table = tables[what](db, { from, to, now: context.now(), today: todayAtHome(db, context) });
    return { name: `${what.replace(' ', '-')} ${from} to ${to}.csv`, text: csvText(table), rows: table.rows.length };
  }),
);

function yearsOf({ from, to }: Span): number[] {
  const [first, last] = [Number(from.slice(0, 4)), Number(to.slice(0, 4))];
  return Array.from({ length: last - first + 1 }, (_, index) => first + index);
}

/** A year, or the part of it that lies in the span. */
function incomeOfYear(db: ReadableDb, year: number, { from, to }: Span) {
  const home = ownSetup(db).currency;
  const within = { from: from > `${year}-01-01` ? from : `${year}-01-01`, to: to < `${year}-12-31` ? to : `${year}-12-31` };
  const billed = billedIn(db, year).filter(({ on }) => within.from <= on && on <= within.to);
  return yearSums(billed, receivedIn(db, within, home), year, home);
}
