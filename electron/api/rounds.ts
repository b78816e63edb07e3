/**
 * Rounds of notes: cuts that are sent, notes that come, and what a further round costs.
 */
import type { Round } from '../../core/contract/rounds.ts';
import { stageOfPass } from '../../core/deliverables/cuts.ts';
import { moveInWords } from '../../core/deliverables/round-words.ts';
import { notesDue, passOf } from '../../core/deliverables/rounds.ts';
import { epochOf } from '../../core/time/read.ts';
import { countInWords } from '../../core/words/amounts.ts';
import { dateInWords } from '../../core/words/dates.ts';
import { writeHistory } from '../../db/keeping.ts';
import {
  addRound,
  dropRound,
  editById,
  markStages,
  noteById,
  notesOf,
  roundById,
  stagesOf,
  tickNote,
  type RoundRow,
} from '../../db/rounds.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { badFacts } from './job-facts.ts';
import { os } from './os.ts';
import { movesOf, roundAsMet, roundFacts, roundsAsMet, type RoundFacts } from './round-facts.ts';
import { firstNotes, moreNotes, notesTakenBack, readPasted } from './round-notes.ts';
import { answered, openAgain, priced } from './round-price.ts';
import { notFound, refused, stale } from './trouble.ts';

const of = os.rounds.of.handler(({ input, context }) =>
  context.store.read((db) => roundsAsMet(db, roundFacts(db, context, input.deliverableId))),
);

const send = os.rounds.send.handler(({ input, context }) =>
  deed(context, 'rounds.send', input, (db) => {
    const facts = workable(roundFacts(db, context, input.deliverableId));
    const { edit, rounds, calendars, now } = facts;
    const last = rounds.at(-1);
    if (last && last.notesAt === null)
      throw refused(
        `The ${last.what} still waits for its notes.`,
        'Note what came of it, or that it was approved, then send the next cut.',
      );
    const at = input.at === undefined ? now : epochOf(input.at);
    if (at > now) throw badFacts([{ field: 'at', sentence: 'The cut is dated after now. Give the moment at which it was sent.' }]);
    if (last && at < last.sentAt)
      throw badFacts([{ field: 'at', sentence: `The cut is dated before the ${last.what}, which went out first. Give a later moment.` }]);
    const pass = passOf(rounds);
    const windowDays = input.windowDays ?? edit.windowDays;
    const stages = stagesOf(db, edit.id);
    const closes = input.closes ? stages.find(({ id }) => id === input.closes) : undefined;
    if (input.closes && !closes) throw notFound('The stage that this cut closes');
    const done = closes ? stages.filter((stage) => stage.position <= closes.position && stage.doneAt === null) : [];
    markStages(
      db,
      done.map(({ id }) => id),
      at,
    );
    const dueBack = notesDue(at, windowDays, calendars);
    const id = addRound(db, {
      deliverableId: edit.id,
      stageId: stageOfPass(stages, pass)?.id ?? null,
      number: (last?.number ?? 0) + 1,
      what: input.what,
      sentAt: at,
      windowDays,
      dueBack,
      included: pass <= edit.rounds,
    });
    const window = windowDays === 0 ? 'that day' : dateInWords(dueBack);
    return after(db, context, facts, id, 'rounds.send', `The ${input.what} was sent; notes are due by ${window}.`, null);
  }),
);

const unsend = os.rounds.unsend.handler(({ input, context }) =>
  deed(context, 'rounds.unsend', input, (db) => {
    const { facts, row } = one(db, context, input);
    if (row.notesAt !== null || row.id !== facts.rounds.at(-1)?.id)
      throw refused(`The ${row.what} has its notes.`, 'Take the notes back first, if they were for another cut.');
    const closed = stagesOf(db, facts.edit.id).filter(({ doneAt }) => doneAt === row.sentAt);
    markStages(
      db,
      closed.map(({ id }) => id),
      null,
    );
    dropRound(db, row.id);
    say(db, facts, 'rounds.unsend', `The ${row.what} was not sent after all.`, row);
    return {};
  }),
);

const notesIn = os.rounds.notesIn.handler(({ input, context }) =>
  deed(context, 'rounds.notesIn', input, (db) => {
    const { facts, row } = one(db, context, input);
    const { notes, troubles } = readPasted(input.text, input.rate, facts.edit.format.rate);
    if (row.notesAt !== null) {
      moreNotes(db, row, input.text, notes);
      const sentence = `${capital(countInWords(notes.length, 'more note'))} on the ${row.what}.`;
      return { ...after(db, context, facts, row.id, 'rounds.notesIn', sentence, row), troubles };
    }
    const at = input.at === undefined ? facts.now : epochOf(input.at);
    const wrong =
      at > facts.now
        ? 'The notes are dated after now. Give the moment at which they came.'
        : at < row.sentAt
          ? `The notes are dated before the ${row.what} was sent. Give the moment at which they came.`
          : null;
    if (wrong) throw badFacts([{ field: 'at', sentence: wrong }]);
    const moved = firstNotes(db, facts, row, { at, text: input.text, notes, keepDate: input.keepDate ?? false });
    const came =
      notes.length === 0
        ? `The ${row.what} was approved without notes.`
        : `${capital(countInWords(notes.length, 'note'))} on the ${row.what} came.`;
    const read = roundFacts(db, context, facts.edit.id);
    const move = moved && movesOf(read).at(-1);
    const sentence = move ? `${came} ${moveInWords(move)}` : came;
    return { ...after(db, context, facts, row.id, 'rounds.notesIn', sentence, row), troubles };
  }),
);

const notesBack = os.rounds.notesBack.handler(({ input, context }) =>
  deed(context, 'rounds.notesBack', input, (db) => {
    const { facts, row } = one(db, context, input);
    const items = notesOf(db, row.id);
    const date = notesTakenBack(db, facts, row);
    return after(db, context, facts, row.id, 'rounds.notesBack', `The notes on the ${row.what} were taken back.${date}`, { row, items });
  }),
);

const tick = os.rounds.tick.handler(({ input, context }) =>
  deed(context, 'rounds.tick', input, (db) => {
    const item = noteById(db, input.note);
    const row = item && roundById(db, item.roundId);
    if (!item || !row) throw notFound('This note');
    const facts = roundFacts(db, context, row.deliverableId);
    if ((item.doneAt !== null) === input.done) return { round: roundAsMet(db, facts, row) };
    tickNote(db, item.id, input.done ? facts.now : null);
    const sentence = `Note ${item.position} on the ${row.what} is ${input.done ? 'done' : 'open again'}.`;
    return after(db, context, facts, row.id, 'rounds.tick', sentence, item);
  }),
);

const setPrice = os.rounds.setPrice.handler(({ input, context }) =>
  deed(context, 'rounds.setPrice', input, (db) => {
    const { facts, row } = one(db, context, input);
    const sentence = priced(db, facts, row, input);
    return after(db, context, facts, row.id, 'rounds.setPrice', sentence, row);
  }),
);

const settlePrice = os.rounds.settlePrice.handler(({ input, context }) =>
  deed(context, 'rounds.settlePrice', input, (db) => {
    const { facts, row } = one(db, context, input);
    const sentence = answered(db, facts, row, input);
    return after(db, context, facts, row.id, 'rounds.settlePrice', sentence, row);
  }),
);

const openPrice = os.rounds.openPrice.handler(({ input, context }) =>
  deed(context, 'rounds.openPrice', input, (db) => {
    const { facts, row } = one(db, context, input);
    const sentence = openAgain(db, facts, row);
    return after(db, context, facts, row.id, 'rounds.openPrice', sentence, row);
  }),
);

/** A round for a deed: refuse an old version with both states. */
function one(db: ReadableDb, context: Context, input: { id: string; version: number }): { facts: RoundFacts; row: RoundRow } {
  const row = roundById(db, input.id);
  if (!row || !editById(db, row.deliverableId)) throw notFound('This round');
  const facts = roundFacts(db, context, row.deliverableId);
  if (row.version !== input.version) throw stale(`The ${row.what}`, roundAsMet(db, facts, row), { ...input, key: undefined });
  return { facts: workable(facts), row };
}

/** Cuts go out for jobs in ink, of what is still promised. */
function workable(facts: RoundFacts): RoundFacts {
  const { job, edit } = facts;
  if (edit.offAt !== null) throw refused(`${edit.name} was taken off.`, 'Put it back among the edits first.');
  if (job.state !== 'inked') throw refused(`${job.title} is not in ink.`, 'Edits are sent for jobs in ink alone.');
  return facts;
}

/** History, and the round as it is now. */
function after(
  db: WritableDb,
  context: Context,
  before: RoundFacts,
  id: string,
  name: string,
  sentence: string,
  was: unknown,
): { round: Round } {
  say(db, before, name, sentence, was);
  const row = roundById(db, id);
  if (!row) throw notFound('This round');
  return { round: roundAsMet(db, roundFacts(db, context, row.deliverableId), row) };
}

function say(db: WritableDb, { job, edit, now }: RoundFacts, name: string, sentence: string, before: unknown): void {
  writeHistory(db, { at: now, subject: 'job', subjectId: job.id, deed: name, sentence: `${edit.name}: ${sentence}`, before });
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const rounds = { of, send, unsend, notesIn, notesBack, tick, setPrice, settlePrice, openPrice };
