/**
 * What notes change when they come, and when they are taken back: the list, the dates, the plan and the price.
 */
import { stageOfPass } from '../../core/deliverables/cuts.ts';
import { readNotes, noteTime, type CutNote, type NotesRead } from '../../core/deliverables/notes.ts';
import { businessDaysLate, dateMoved, passOf, type RoundMove } from '../../core/deliverables/rounds.ts';
import { frameRates, type FrameRate } from '../../core/deliverables/timecode.ts';
import { exact } from '../../core/money/exact.ts';
import { dateInWords } from '../../core/words/dates.ts';
import { joined } from '../../core/words/lists.ts';
import {
  addNotes,
  addRoundStage,
  changeRound,
  dropNotes,
  dropStage,
  moveDates,
  stagesOf,
  type NoteRow,
  type RoundRow,
} from '../../db/rounds.ts';
import { spentOf } from '../../db/spent.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { badFacts } from './job-facts.ts';
import { priceOfFurther, type RoundFacts } from './round-facts.ts';
import { refuseBilled } from './rounds-billed.ts';
import { refused } from './trouble.ts';

type NewNote = Pick<NoteRow, 'timecode' | 'frame' | 'toFrame' | 'text'>;
export type Pasted = { notes: NewNote[]; troubles: NotesRead['troubles'] };

/**
 * Notes of a pasted text.
 * @param named the rate by its name, else the one of the format counts
 * @throws BAD_INPUT where time codes stand in it and their rate is not known
 */
export function readPasted(text: string, named: string | undefined, ofFormat: string): Pasted {
  const rate = frameRates.find(({ name }) => name === (named ?? ofFormat));
  const read = readNotes(text, rate ?? (frameRates[0] as FrameRate));
  const hasCodes = read.troubles.length > 0 || read.notes.some(({ from }) => from !== null);
  const known = joined(
    frameRates.map(({ name }) => name),
    'or',
  );
  if (!rate && (hasCodes || named !== undefined))
    throw badFacts([{ field: 'rate', sentence: `Say at which frame rate the cut counts, for its time codes to be read: ${known}.` }]);
  return {
    notes: read.notes.map((note) => newNote(note, rate)),
    troubles: read.troubles,
  };
}

function newNote(note: CutNote, rate: FrameRate | undefined): NewNote {
  return { timecode: rate ? noteTime(note, rate) : '', frame: note.from, toFrame: note.to, text: note.text };
}

/** Notes that came once some are there: added to the list. They change no date and no price. */
export function moreNotes(db: WritableDb, row: RoundRow, text: string, notes: readonly NewNote[]): void {
  if (notes.length === 0) throw badFacts([{ field: 'text', sentence: 'There is no note in it. Paste what came.' }]);
  if (row.notes === '') throw refused(`The ${row.what} was approved without notes.`, 'Take the yes back first, then paste what came.');
  addNotes(db, row.id, notes);
  changeRound(db, row, { notes: `${row.notes}\n${text}` });
}

type Came = { at: number; text: string; notes: readonly NewNote[]; keepDate: boolean };

/** The first notes on a cut, or a yes without any: which dates they moved, null for none. */
export function firstNotes(db: WritableDb, facts: RoundFacts, row: RoundRow, { at, text, notes, keepDate }: Came): RoundMove | null {
  const { edit, calendars, now } = facts;
  const lost = businessDaysLate(row.dueBack, at, calendars);
  const { dueDate, internalDate } = edit;
  const moved =
    lost > 0 && dueDate !== null && !keepDate
      ? {
          lost,
          from: dueDate,
          to: dateMoved(dueDate, lost, calendars),
          internalFrom: internalDate,
          internalTo: internalDate && dateMoved(internalDate, lost, calendars),
        }
      : null;
  if (moved) moveDates(db, edit, { dueDate: moved.to, internalDate: moved.internalTo }, now);
  addNotes(db, row.id, notes);
  const approved = notes.length === 0;
  // A yes without notes uses up no round: the work that was planned for one is there for the next cut.
  const stageId = approved ? null : (row.stageId ?? stageForFurther(db, facts));
  const price = approved || row.included ? null : priceOfFurther(db, facts);
  changeRound(db, row, { notesAt: at, notes: approved ? '' : text, moved, price, stageId });
  return moved;
}

/** Work that the plan did not have: a stage of its own before the picture is locked. */
export function stageForFurther(db: WritableDb, { edit }: Pick<RoundFacts, 'edit'>): string | null {
  const halfHours = Number(exact(edit.hoursPerRound).mul(2n).ceil().toString());
  if (halfHours === 0) return null;
  const lock = stagesOf(db, edit.id).find(({ kind }) => kind === 'picture lock' || kind === 'delivered' || kind === 'approved');
  return addRoundStage(db, edit.id, halfHours, lock?.id ?? null);
}

/** Take that work out of the plan again, unless it is done or begun. */
export function withoutStage(db: WritableDb, { edit }: Pick<RoundFacts, 'edit'>, row: RoundRow): void {
  const stage = stagesOf(db, edit.id).find(({ id }) => id === row.stageId);
  if (row.included || !stage || stage.doneAt !== null || isBegun(db, edit.id, stage.id)) return;
  dropStage(db, stage.id);
}

function isBegun(db: ReadableDb, deliverableId: string, stageId: string): boolean {
  return spentOf(db, deliverableId).some((each) => each.stageId === stageId);
}

/**
 * The notes go, with all that they changed.
 * @returns what became of the dates, as a sentence; empty where they stand
 * @throws REFUSED without notes, after a later cut, and once they were billed
 */
export function notesTakenBack(db: WritableDb, facts: RoundFacts, row: RoundRow): string {
  if (row.notesAt === null) throw refused(`The ${row.what} has no notes yet.`, 'Nothing needs taking back.');
  const later = facts.rounds.find(({ number }) => number > row.number);
  if (later) throw refused(`The ${later.what} was sent since.`, `Take back the ${later.what} first, if it was not sent.`);
  refuseBilled(db, facts, row);
  dropNotes(db, row.id);
  withoutStage(db, facts, row);
  const pass = passOf(facts.rounds.filter(({ number }) => number < row.number));
  const stageId = stageOfPass(stagesOf(db, facts.edit.id), pass)?.id ?? null;
  changeRound(db, row, { notesAt: null, notes: '', moved: null, price: null, stageId });
  return datesPutBack(db, facts, row);
}

function datesPutBack(db: WritableDb, { edit, now }: RoundFacts, { moved }: RoundRow): string {
  if (!moved) return '';
  if (edit.dueDate !== moved.to) return ` Its date was changed since and stays.`;
  // One that was set since stays, but never after the promised date.
  const since = edit.internalDate === moved.internalTo ? moved.internalFrom : edit.internalDate;
  const internalDate = since !== null && since > moved.from ? moved.from : since;
  moveDates(db, edit, { dueDate: moved.from, internalDate }, now);
  return ` It is due on ${dateInWords(moved.from)} again.`;
}
