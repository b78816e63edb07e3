/**
 * An issued paper, whole, as it stands today.
 */
import type { Invoice, ReminderTone } from '../../core/contract/invoices.ts';
import { leftOfLines } from '../../core/invoices/credit.ts';
import { instantText, wallAt } from '../../core/time/read.ts';
import { creditNotesOf, invoiceAsOf, invoiceRecord, notesOf } from '../../db/invoices.ts';
import { paperById } from '../../db/papers.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { notFound } from './trouble.ts';

/** Today's date at home; on the clock of this computer before that is known. */
export function todayAtHome(db: ReadableDb, context: Context): string {
  return wallAt(context.now(), setupRow(db)?.fields.home.zone ?? context.systemZone).slice(0, 10);
}

/** @throws NOT_FOUND */
export function wholeInvoice(db: ReadableDb, context: Context, id: string): Invoice {
  const record = invoiceRecord(db, id);
  // A clock that was put back does not hide what is on the books.
  const today = todayAtHome(db, context);
  const row = record && invoiceAsOf(db, id, record.issueDate > today ? record.issueDate : today);
  const paper = record && paperById(db, record.paperId)?.paper;
  if (!record || !row || !paper) throw notFound('This invoice');
  const { content, series, year, sequence } = record;
  const notes = notesOf(db, id);
  const last = notes.findLast(({ kind }) => kind === 'disputed' || kind === 'settled');
  const reminders = notes.filter(({ kind }) => kind === 'reminded');
  const credits = creditNotesOf(db, id).map((note) => note.content);
  return {
    ...row,
    series,
    year,
    sequence,
    content,
    paper,
    reminders: reminders.map(({ words, at }) => ({ tone: words as ReminderTone, at: instantText(at) })),
    disputed: last?.kind === 'disputed' ? last.words : null,
    left: record.kind === 'credit note' ? [] : leftOfLines(content, credits),
  };
}
