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
import { PaperError } from '../papers/trouble.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { refused, stale } from './trouble.ts';

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

/** Another paper took the number while this one was being written. */
class NumberTaken extends Error {}

/** Papers that take numbers wait for each other, so that none is written twice for nothing. */
const turns = new WeakMap<Store, Promise<unknown>>();

/**
 * Freeze what is to be issued, write its paper, and put both on the books in one transaction that sees that the number is still free.
 * @param freeze reads what is issued; it throws what stands against it, and is asked again inside the transaction
 * @param put puts it on the books
 * @throws STALE when what is issued changed while its paper was written
 */
export function issueInTurn<F extends Frozen, T>(
  context: Context,
  procedure: string,
  input: { key?: string | undefined },
  freeze: (db: ReadableDb, now: number) => F,
  put: (db: WritableDb, frozen: F, paper: Kept, now: number) => T,
): Promise<T> {
  const { store } = context;
  const before = turns.get(store) ?? Promise.resolve();
  const turn = before.then(() => issue(context, procedure, input, freeze, put));
  // The next in line goes on, whatever this one ended in.
  turns.set(
    store,
    turn.catch(() => undefined),
  );
  return turn;
}

async function issue<F extends Frozen, T>(...of: Parameters<typeof issueInTurn<F, T>>): Promise<T> {
  const [context, procedure, input, freeze, put] = of;
  const { store } = context;
  const { key } = input;
  if (key !== undefined && store.read((db) => deedByKey(db, key)))
    return deed(context, procedure, input, () => {
      throw new Error('The result of this deed is kept');
    });
  const now = context.now();
  const frozen = store.read((db) => freeze(db, now));
  const paper = keepPaper(store.papers, await paperOf(frozen));
  try {
    return deed(context, procedure, input, (db) => {
      const again = freeze(db, now);
      if (again.next.number !== frozen.next.number) throw new NumberTaken();
      if (JSON.stringify(again.content) !== JSON.stringify(frozen.content)) throw stale('The bill', again.content, frozen.content);
      return put(db, frozen, paper, now);
    });
  } catch (error) {
    if (error instanceof NumberTaken) return issue(...of);
    throw error;
  }
}

async function paperOf({ setup: { logo }, content }: Frozen): Promise<Uint8Array> {
  try {
    return await invoicePaper({ ...content, sender: { ...content.sender, ...(logo ? { logo } : {}) } });
  } catch (error) {
    if (error instanceof PaperError) throw refused(error.message, error.todo);
    throw error;
  }
}
