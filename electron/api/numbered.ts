/**
 * The next number of a series, and papers that take one: written before the books speak of them, one after the other.
 */
import type { InvoiceContent } from '../../core/contract/invoices.ts';
import type { SetupFields } from '../../core/contract/setup.ts';
import type { Numbered } from '../../core/invoices/content.ts';
import { invoiceNumber, yearOfNumber } from '../../core/invoices/number.ts';
import { instantText, wallAt } from '../../core/time/read.ts';
import { dateInWords } from '../../core/words/dates.ts';
import { deedByKey } from '../../db/keeping.ts';
import { lastOfSeries } from '../../db/invoices.ts';
import type { ReadableDb, Store, WritableDb } from '../../db/store.ts';
import { invoicePaper } from '../papers/invoice.ts';
import { keepPaper, type Kept } from '../papers/keep.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { notFound, refused, stale } from './trouble.ts';
import { written } from './written.ts';

export type NextNumber = Numbered & { series: string; year: number; sequence: number };

/**
 * The number that the next paper of my series takes. A series begins at 1 in each year; the year is that of the date at home.
 * @param now epoch milliseconds
 * @throws REFUSED while the clock stands before the last paper of the run: numbers and dates rise together
 */
export function nextNumber(db: ReadableDb, setup: SetupFields, now: number): NextNumber {
  const series = setup.series ?? '';
  const year = yearOfNumber(now, setup.home.zone);
  const issueDate = wallAt(now, setup.home.zone).slice(0, 10);
  const last = lastOfSeries(db, series, year);
  if (last.issueDate !== null && last.issueDate > issueDate)
    throw refused(
      `The last number of this run was given on ${dateInWords(last.issueDate)}, and the clock says ${dateInWords(issueDate)}.`,
      'Put the clock of this computer right: numbers and dates rise together.',
    );
  const sequence = last.sequence + 1;
  return { series, year, sequence, number: invoiceNumber(series, year, sequence), issueDate, issuedAt: instantText(now) };
}

/** Something that is about to be issued, and what it is put on the books with. */
export type Frozen = { setup: SetupFields; next: NextNumber; content: InvoiceContent };

/** Papers that take numbers wait for each other: all doors of a store are in one process, so a number that was read is still free. */
const turns = new WeakMap<Store, Promise<unknown>>();

/** How something is issued: under which name and key, what is frozen, and how that is put on the books. */
type Issuing<F extends Frozen, T> = {
  procedure: string;
  input: { key?: string | undefined };
  /** Reads what is issued and throws what stands against it; asked again inside the transaction. `now` in epoch milliseconds. */
  freeze: (db: ReadableDb, now: number) => F;
  put: (db: WritableDb, frozen: F, paper: Kept, now: number) => T;
};

/**
 * Freeze what is to be issued, write its paper, and put both on the books in one transaction that sees that nothing moved, the number included.
 * @throws STALE when what is issued changed while its paper was written
 */
export function issueInTurn<F extends Frozen, T>(context: Context, issuing: Issuing<F, T>): Promise<T> {
  const turn = (turns.get(context.store) ?? Promise.resolve()).then(() => issue(context, issuing));
  // The next in line goes on, whatever this one ended in.
  const ended = turn.then(
    () => undefined,
    () => undefined,
  );
  turns.set(context.store, ended);
  return turn;
}

async function issue<F extends Frozen, T>(context: Context, { procedure, input, freeze, put }: Issuing<F, T>): Promise<T> {
  const { store } = context;
  const { key } = input;
  if (key !== undefined && store.read((db) => deedByKey(db, key)))
    return deed(context, procedure, input, () => {
      throw notFound('The result of this deed');
    });
  const now = context.now();
  const frozen = store.read((db) => freeze(db, now));
  const paper = keepPaper(store.papers, await paperOf(frozen));
  return deed(context, procedure, input, (db) => {
    const again = freeze(db, now);
    if (JSON.stringify(again.content) !== JSON.stringify(frozen.content)) throw stale('The bill', again.content, frozen.content);
    return put(db, frozen, paper, now);
  });
}

function paperOf({ setup: { logo }, content }: Frozen): Promise<Uint8Array> {
  return written(invoicePaper({ ...content, sender: { ...content.sender, ...(logo ? { logo } : {}) } }));
}
