/**
 * What happened by itself and is told on the Desk until it is put away: pencils that moved up, and what moved because clock rules changed.
 */
import type { DeskLine } from '../../core/contract/desk.ts';
import type { Job } from '../../core/contract/jobs.ts';
import { calendarLines } from '../../core/calendars/desk.ts';
import { SHOWN } from '../../core/desk/clocks.ts';
import { movedUp } from '../../core/desk/moved-up.ts';
import { ranksOf } from '../../core/fit/ranks.ts';
import { instantText } from '../../core/time/read.ts';
import { outRow } from '../../db/calendar-out.ts';
import { calendarReadStates } from '../../db/calendars.ts';
import { clockNotesOf, putClockNoteAway } from '../../db/clock-rules.ts';
import { goneHolds } from '../../db/gone.ts';
import { writeHistory } from '../../db/keeping.ts';
import { bringBack as bringLineBack, putAway as putLineAway, putAwaySince } from '../../db/put-away.ts';
import type { ReadableDb } from '../../db/store.ts';
import { deed } from './deed.ts';
import { os } from './os.ts';
import { pencilOnBooks } from './pencils.ts';

/** The lines of live pencils that moved up in the last fourteen days, newest first. `now` in epoch ms. */
export function linesOf(db: ReadableDb, jobs: readonly Job[], now: number, homeZone: string): DeskLine[] {
  const since = now - SHOWN;
  const gone = goneHolds(db, { since, now });
  if (gone.length === 0) return [];
  const away = putAwaySince(db, since);
  return jobs
    .flatMap((job) => {
      const held = pencilOnBooks(db, job, now);
      if (!held) return [];
      const ranks = ranksOf(held.candidate, held.jobs, held.ground);
      return movedUp({ job: held.candidate, ranks, gone, ground: held.ground, now, homeZone });
    })
    .filter(({ id }) => !away.has(id))
    .sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : a.id < b.id ? -1 : 1));
}

/** What moved because the rules of a clock changed, newest first. */
export function clockLines(db: ReadableDb): DeskLine[] {
  return clockNotesOf(db).map(({ id, at, jobId, sentence }) => ({
    id: `clock:${id}`,
    at: instantText(at),
    jobId,
    sentence,
    second: 'It keeps its time on the clock there.',
  }));
}

/** Calendars that cannot be read, and the file of my dates that cannot be written; what was put away stays so while it lasts. */
export function calendarTroubles(db: ReadableDb): DeskLine[] {
  const unread = calendarReadStates(db).flatMap(({ calendar: { id, name, isOn, trouble }, troubleAt }) =>
    isOn && trouble && troubleAt !== null ? [{ id, name, trouble, at: troubleAt }] : [],
  );
  const row = outRow(db);
  const lines = calendarLines(unread, row?.isOn && row.trouble ? { trouble: row.trouble, at: row.updatedAt } : null);
  if (lines.length === 0) return lines;
  const away = putAwaySince(db, 0);
  return lines.filter(({ id }) => !away.has(id));
}

/** The id of the note behind a line on clocks. */
const clockNoteOf = (line: string): string | undefined => /^clock:(.*)$/.exec(line)?.[1];

export const putAway = os.desk.putAway.handler(({ input: { line }, context }) =>
  deed(context, 'desk.putAway', {}, (db) => {
    const at = context.now();
    const note = clockNoteOf(line);
    if (note) putClockNoteAway(db, note, at);
    else putLineAway(db, line, at);
    writeHistory(db, { at, subject: 'desk', subjectId: line, deed: 'desk.putAway', sentence: 'Read and put away.' });
    return {};
  }),
);

export const bringBack = os.desk.bringBack.handler(({ input: { line }, context }) =>
  deed(context, 'desk.bringBack', {}, (db) => {
    const note = clockNoteOf(line);
    if (note) putClockNoteAway(db, note, null);
    else bringLineBack(db, line);
    writeHistory(db, { at: context.now(), subject: 'desk', subjectId: line, deed: 'desk.bringBack', sentence: 'Brought back.' });
    return {};
  }),
);
