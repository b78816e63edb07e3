/**
 * Hand-overs as they are met: what the store knows of them, joined with the rules of `core/handovers`.
 */
import { HASH_KIND, type HandedFile, type HandOver } from '../../core/contract/handovers.ts';
import { mayGo, originalsInWords, originalsProposed, type Originals } from '../../core/handovers/originals.ts';
import { deliveryMessage } from '../../core/handovers/message.ts';
import { organisationOf } from '../../core/quotes/billed.ts';
import { workDates } from '../../core/quotes/facts.ts';
import { toneOf } from '../../core/quotes/tone.ts';
import { instantText } from '../../core/time/read.ts';
import { dateIn } from '../../core/time/wall.ts';
import { countInWords } from '../../core/words/amounts.ts';
import { bytesInWords } from '../../core/words/bytes.ts';
import { dateInWords, datesInWords } from '../../core/words/dates.ts';
import type { HandOverRow } from '../../db/hand-overs.ts';
import { paperById } from '../../db/papers.ts';
import { clientById } from '../../db/people.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import type { deliveryNote } from '../papers/delivery-note.ts';
import { agreedTerms } from './agreed-terms.ts';
import { badFacts } from './job-facts.ts';
import { movesOf, type RoundFacts } from './round-facts.ts';
import { refused } from './trouble.ts';

type Facts = Pick<RoundFacts, 'job' | 'edit' | 'calendars' | 'rounds' | 'now'>;

/** One hand-over as the contract shows it. */
export function handOverAsMet(db: ReadableDb, { job, calendars: { zone }, now }: Facts, row: HandOverRow): HandOver {
  const { id, version, deliverableId, how, where, at, files, hashKind, note, takenBackAt, takenBackWhy } = row;
  const bytes = files.reduce((sum, file) => sum + file.bytes, 0);
  const today = dateIn(zone, now);
  const originals = { kind: row.originals, until: row.originalsUntil };
  const goneAt = row.originalsGoneAt;
  const gone = goneAt === null ? null : { on: dateIn(zone, goneAt), why: row.originalsGoneWhy };
  return {
    id,
    version,
    deliverableId,
    how,
    where,
    at: instantText(at),
    files,
    bytes,
    hashKind,
    originals: {
      ...originals,
      goneAt: goneAt === null ? null : instantText(goneAt),
      goneWhy: row.originalsGoneWhy,
      mayGo: !gone && mayGo(originals, today),
      sentence: originalsInWords(originals, gone, today),
    },
    note,
    paper: row.paperId === null ? null : (paperById(db, row.paperId)?.paper ?? null),
    message: { to: job.contact.email, subject: row.messageSubject, text: row.messageText },
    takenBack: takenBackAt === null ? null : { at: instantText(takenBackAt), why: takenBackWhy },
    sentence: `${how === 'link' ? 'By link' : 'On a disk'} on ${dateInWords(dateIn(zone, at))}: ${countInWords(files.length, 'file')}, ${bytesInWords(bytes)}.`,
  };
}

/** What the terms that were agreed on say of the originals, counted from a date. */
export function proposedOriginals(db: ReadableDb, { job }: Pick<Facts, 'job'>, on: string) {
  const terms = agreedTerms(db, job)?.version.draft.terms.originals ?? '';
  const { kind, until, sentence } = originalsProposed(terms, on);
  return { originals: kind, until, sentence };
}

/** What is about to be handed over; `at` in epoch milliseconds. */
export type Handing = {
  how: 'link' | 'disk';
  where: string;
  at: number;
  files: readonly HandedFile[];
  originals: Originals;
  note: string;
};

/**
 * What stands on the delivery note, and the message that goes with it.
 * @throws REFUSED without my details
 */
export function matterOf(
  db: ReadableDb,
  facts: Facts,
  { at, ...handing }: Handing,
): { paper: Parameters<typeof deliveryNote>[0]; message: { subject: string; text: string }; hashKind: string } {
  const { job, edit, calendars, now } = facts;
  const sender = setupRow(db)?.fields;
  if (!sender) throw refused('My details are not set up.', 'Fill in Setup first: a paper needs a sender.');
  const client = job.client ? clientById(db, job.client.id) : undefined;
  const when = job.days.length > 0 ? datesInWords(workDates(job)) : '';
  return {
    hashKind: HASH_KIND,
    paper: {
      sender,
      client: { name: organisationOf(job, client), contact: job.contact.name },
      job: { title: job.title, lines: [[job.place?.name ?? '', when].filter((part) => part !== '').join(', ')] },
      deliverable: { name: edit.name, format: edit.format, agreedDue: edit.agreedDueDate, due: edit.dueDate },
      handOver: { ...handing, on: dateIn(calendars.zone, at) },
      moves: movesOf(facts),
      madeAt: instantText(now),
    },
    message: deliveryMessage({
      ...handing,
      what: edit.name,
      title: job.title,
      tone: toneOf(job.message, job.contact.name),
      sender,
    }),
  };
}

/** @throws REFUSED for a deliverable that was taken off */
export function handable<F extends Pick<Facts, 'edit'>>(facts: F): F {
  if (facts.edit.offAt !== null) throw refused(`${facts.edit.name} was taken off.`, 'Put it back first.');
  return facts;
}

/** @param from date of the hand-over at home @throws BAD_INPUT where what is said of the originals cannot be meant */
export function checkOriginals({ kind, until }: Originals, from: string): void {
  if (until === null) return;
  if (kind !== 'kept until')
    throw badFacts([
      { field: 'originalsUntil', sentence: 'A date is only for originals that are kept. Take it out, or choose that they are kept.' },
    ]);
  if (until < from)
    throw badFacts([
      {
        field: 'originalsUntil',
        sentence: `Originals cannot be kept until ${dateInWords(until)}: that is before they are handed over, ${dateInWords(from)}.`,
      },
    ]);
}
