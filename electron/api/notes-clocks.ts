/**
 * Rounds on the Desk: cuts that wait for their notes, further rounds that came after the last bill, and a clock that was forgotten.
 */
import type { Clock } from '../../core/contract/desk.ts';
import { forgottenClock, furtherClock, notesClock } from '../../core/desk/notes-clock.ts';
import { dateIn, dateLater } from '../../core/time/wall.ts';
import { jobById } from '../../db/jobs.ts';
import { jobIdsWithPrices, stagesOf, waitingRounds } from '../../db/rounds.ts';
import { runningClock } from '../../db/spent.ts';
import type { ReadableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { calendarsOf } from './round-facts.ts';
import { homeZone } from './job-facts.ts';
import { furtherToBill } from './rounds-billed.ts';
import { LOOK_BACK } from './unbilled.ts';

/** Dates ahead that windows are shown for; and for how long notes that never came are. */
const AHEAD = 14;
const BACK = 120;

/** Clocks of notes that are due within two weeks, or overdue. */
export function notesClocks(db: ReadableDb, context: Context): Clock[] {
  const now = context.now();
  const today = dateIn(homeZone(db, context), now);
  const waiting = waitingRounds(db, { from: dateLater(today, -BACK), to: dateLater(today, AHEAD) });
  return waiting.map(({ round, name, due, jobId, jobVersion, title, clientId }) =>
    notesClock(
      {
        id: round.id,
        job: { id: jobId, version: jobVersion, title },
        name,
        due,
        cut: round.what,
        sentAt: round.sentAt,
        dueBack: round.dueBack,
      },
      calendarsOf(db, context, clientId, round.sentAt),
      now,
    ),
  );
}

/** Clocks of further rounds that are to be billed, once the bill at wrap stands. */
export function furtherClocks(db: ReadableDb, now: number, homeZone: string): Clock[] {
  return jobIdsWithPrices(db, now - LOOK_BACK).flatMap((id) => {
    const job = jobById(db, id, now);
    return job ? furtherToBill(db, id).map((round) => furtherClock({ ...round, job }, now, homeZone)) : [];
  });
}

/** The clock of an edit that nobody stopped; at most one runs. */
export function forgottenClocks(db: ReadableDb, now: number, homeZone: string): Clock[] {
  const running = runningClock(db);
  const job = running && jobById(db, running.jobId, now);
  if (!running || !job) return [];
  const { entry, name } = running;
  const stage = stagesOf(db, entry.deliverableId).find(({ id }) => id === entry.stageId)?.kind ?? 'other work';
  return [forgottenClock({ job, name, stage, startAt: entry.startAt }, now, homeZone) ?? []].flat();
}
