/**
 * What a client was billed and has paid: read by currency, and put on paper.
 */
import type { Paper } from '../../core/contract/jobs.ts';
import type { Client } from '../../core/contract/people.ts';
import { entriesOf } from '../../core/invoices/entries.ts';
import { statementOf, type StatementRow } from '../../core/invoices/statement.ts';
import { formatMoney } from '../../core/money/format.ts';
import { zero, type Money } from '../../core/money/money.ts';
import { paperName } from '../../core/quotes/paper-name.ts';
import { instantText } from '../../core/time/read.ts';
import { paperDate } from '../../core/words/dates.ts';
import { invoicesAsOf, notesOf } from '../../db/invoices.ts';
import { deedByKey, writeHistory } from '../../db/keeping.ts';
import { insertPaper } from '../../db/papers.ts';
import { paymentsBetween } from '../../db/payments.ts';
import { clientById } from '../../db/people.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import { keepPaper } from '../papers/keep.ts';
import { statementPaper as writeStatement } from '../papers/statement.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { todayAtHome } from './invoice-of.ts';
import { os } from './os.ts';
import { notFound, refused, stale } from './trouble.ts';
import { written } from './written.ts';

/** Before every date that can be typed. */
const FIRST = '0000-00-00';

export const statement = os.invoices.statement.handler(({ input, context }) =>
  context.store.read((db) => {
    clientOf(db, input.clientId);
    const asOf = input.asOf ?? todayAtHome(db, context);
    return { asOf, statements: statementsOf(db, input.clientId, asOf) };
  }),
);

function clientOf(db: ReadableDb, id: string): Client {
  const client = clientById(db, id);
  if (!client) throw notFound('This client');
  return client;
}

type OneStatement = { currency: string; rows: StatementRow[]; balance: Money };

/** A statement for each currency in which something was billed or paid up to a date. */
function statementsOf(db: ReadableDb, clientId: string, asOf: string): OneStatement[] {
  const invoices = invoicesAsOf(db, asOf, { clientId });
  const payments = paymentsBetween(db, FIRST, asOf, { clientId });
  const writtenOff = new Map(invoices.flatMap(({ id }) => writtenOffOn(db, id, asOf)));
  const paidIn = payments.flatMap(({ parts }) => parts.map(({ amount }) => amount.currency));
  const currencies = [...new Set([...invoices.map(({ currency }) => currency), ...paidIn])].sort();
  return currencies.map((currency) => {
    const rows = statementOf(currency, entriesOf(currency, invoices, payments, writtenOff), asOf);
    return { currency, rows, balance: rows.at(-1)?.balance ?? zero(currency) };
  });
}

function writtenOffOn(db: ReadableDb, id: string, asOf: string): [string, string][] {
  const found = notesOf(db, id).find(({ kind, on }) => kind === 'written off' && on <= asOf);
  return found ? [[id, found.on]] : [];
}

export const statementPaper = os.invoices.statementPaper.handler(({ input, context }) => makeStatement(context, input));

type Asked = { clientId: string; currency: string; asOf?: string | undefined; key?: string | undefined };

/** Like a quote's paper it is written before the books speak of it. */
async function makeStatement(context: Context, input: Asked): Promise<{ paper: Paper }> {
  const { store } = context;
  const { key } = input;
  if (key !== undefined && store.read((db) => deedByKey(db, key)))
    return deed(context, 'invoices.statementPaper', input, () => {
      throw notFound('The result of this deed');
    });
  const now = context.now();
  const said = store.read((db) => matterOf(db, context, input, now));
  const kept = keepPaper(store.papers, await written(writeStatement(said)));
  return deed(context, 'invoices.statementPaper', input, (db) => {
    const again = matterOf(db, context, input, now);
    if (JSON.stringify(again) !== JSON.stringify(said)) throw stale('The statement', again.rows, said.rows);
    const { client, asOf, balance } = said;
    const paper = insertPaper(db, {
      jobId: null,
      kind: 'statement',
      name: paperName(`Statement ${asOf} ${input.currency}`, client.name),
      type: 'application/pdf',
      ...kept,
      madeAt: now,
    });
    writeHistory(db, {
      at: now,
      subject: 'client',
      subjectId: input.clientId,
      deed: 'invoices.statementPaper',
      sentence: `A statement of ${paperDate(asOf)} was put on paper: ${formatMoney(balance, { code: true })} open.`,
    });
    return { paper };
  });
}

/** What stands on the paper. @throws REFUSED without my details, and where there is nothing to state */
function matterOf(
  db: ReadableDb,
  context: Context,
  { clientId, currency, asOf: given }: Asked,
  now: number,
): Parameters<typeof writeStatement>[0] {
  const { name, billing } = clientOf(db, clientId);
  const sender = setupRow(db)?.fields;
  if (!sender) throw refused('My details are not set up.', 'Fill in Setup first: a paper needs a sender.');
  const asOf = given ?? todayAtHome(db, context);
  const one = statementsOf(db, clientId, asOf).find((each) => each.currency === currency);
  if (!one || one.rows.length === 0)
    throw refused(`Nothing was billed to ${name} or paid in ${currency} up to ${paperDate(asOf)}.`, 'Choose another date or currency.');
  return {
    sender,
    payTo: sender.payTo ?? { name: '', iban: '', bic: '', words: '' },
    client: { name: billing.name.trim() || name, address: billing.address },
    asOf,
    madeAt: instantText(now),
    rows: one.rows,
    balance: one.balance,
  };
}
