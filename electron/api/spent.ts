/**
 * Time spent on edits: one clock that is started and stopped, time that is typed, and what past edits took.
 */
import type { DeliverableTime, Past, Running, TimeSpent } from '../../core/contract/spent.ts';
import { pastInWords, pastOf } from '../../core/deliverables/past.ts';
import { minutesOf, spentByStage, spentInWords } from '../../core/deliverables/spent.ts';
import { epochOf, instantText } from '../../core/time/read.ts';
import { dateIn } from '../../core/time/wall.ts';
import { lengthInWords } from '../../core/words/amounts.ts';
import { dateInWords } from '../../core/words/dates.ts';
import { writeHistory } from '../../db/keeping.ts';
import { editById, stagesOf, type EditRow } from '../../db/rounds.ts';
import { dropSpent, finishedEdits, isTemplate, keepSpent, runningClock, spentById, spentOf, type SpentRow } from '../../db/spent.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { badFacts, homeZone } from './job-facts.ts';
import { os } from './os.ts';
import { notFound, refused, stale } from './trouble.ts';

const DAY = 86_400_000;

const of = os.spent.of.handler(({ input, context }) =>
  context.store.read((db): DeliverableTime => {
    const edit = editFor(db, input.deliverableId);
    const stages = stagesOf(db, edit.id);
    const kept = spentOf(db, edit.id);
    const now = context.now();
    const rows = spentByStage(stages, kept, now);
    const minutes = rows.reduce((sum, row) => sum + row.minutes, 0);
    const estimate = rows.reduce((sum, row) => sum + row.estimate, 0);
    return {
      now: instantText(now),
      running: runningNow(db, context),
      stages: rows.map((row) => {
        const stage = stages.find(({ id }) => id === row.stageId);
        return {
          ...row,
          kind: stage?.kind ?? 'other work',
          done: (stage?.doneAt ?? null) !== null,
          sentence: spentInWords(row.minutes, row.estimate),
        };
      }),
      total: { minutes, estimate, sentence: spentInWords(minutes, estimate) },
      entries: kept.map((row) => asMet(db, context, row)),
      past: edit.templateId === null ? null : pastFor(db, edit.templateId),
    };
  }),
);

const running = os.spent.running.handler(({ context }) => ({ running: context.store.read((db) => runningNow(db, context)) }));

const past = os.spent.past.handler(({ input, context }) =>
  context.store.read((db) => {
    if (!isTemplate(db, input.templateId)) throw notFound('This template');
    return { past: pastFor(db, input.templateId) };
  }),
);

const start = os.spent.start.handler(({ input, context }) =>
  deed(context, 'spent.start', input, (db) => {
    const now = context.now();
    const edit = workable(db, input.deliverableId);
    const stage = stageFor(db, edit, input.stageId);
    const before = runningClock(db);
    if (before && before.entry.deliverableId === edit.id && before.entry.stageId === input.stageId)
      throw refused(`The clock runs on ${edit.name}${stage} already.`, 'Stop it when the work ends.');
    const stopped = before ? ended(db, context, before.entry, now) : null;
    const id = keepSpent(db, undefined, {
      deliverableId: edit.id,
      stageId: input.stageId,
      startAt: now,
      endAt: null,
      typed: false,
      note: '',
    });
    say(db, edit, 'spent.start', `The clock was started${stage}.`, null, now);
    return { entry: known(db, context, id), stopped };
  }),
);

const stop = os.spent.stop.handler(({ input, context }) =>
  deed(context, 'spent.stop', input, (db) => {
    const now = context.now();
    const before = one(db, context, input);
    if (before.endAt !== null) throw refused('This clock was stopped.', 'Correct its time where it is listed.');
    const at = input.at === undefined ? now : epochOf(input.at);
    if (at > now) throw badFacts([{ field: 'at', sentence: 'The end is dated after now. Give the moment at which the work ended.' }]);
    return { entry: ended(db, context, before, at) };
  }),
);

const type = os.spent.type.handler(({ input, context }) =>
  deed(context, 'spent.type', input, (db) => {
    const { deliverableId, id, version, stageId, on, minutes, note } = input;
    const now = context.now();
    const edit = workable(db, deliverableId);
    const before = id === undefined ? undefined : spentById(db, id);
    if (id !== undefined && before?.deliverableId !== edit.id) throw notFound('This time');
    if (before && before.version !== version) throw stale('This time', asMet(db, context, before), { ...input, key: undefined });
    const stage = stageFor(db, edit, stageId);
    const zone = homeZone(db, context);
    if (on > dateIn(zone, now))
      throw badFacts([{ field: 'on', sentence: `${dateInWords(on)} is still to come. Give the date of the work.` }]);
    const startAt = Temporal.PlainDate.from(on).toZonedDateTime(zone).epochMilliseconds;
    const kept = keepSpent(db, before, { deliverableId, stageId, startAt, endAt: startAt + minutes * 60_000, typed: true, note });
    const sentence = `${lengthInWords(minutes)} on ${dateInWords(on)}${stage}${before ? ', corrected' : ''}.`;
    say(db, edit, 'spent.type', sentence, before ?? null, now);
    return { entry: known(db, context, kept) };
  }),
);

const drop = os.spent.drop.handler(({ input, context }) =>
  deed(context, 'spent.drop', input, (db) => {
    const before = one(db, context, input);
    dropSpent(db, before.id);
    const { minutes, date } = asMet(db, context, before);
    say(
      db,
      editFor(db, before.deliverableId),
      'spent.drop',
      `${lengthInWords(minutes)} on ${dateInWords(date)} was taken off.`,
      before,
      context.now(),
    );
    return {};
  }),
);

/**
 * End a stretch that runs. One of less than a minute is no time spent and goes: null.
 * @throws REFUSED for a clock that was forgotten for more than a day
 */
function ended(db: WritableDb, context: Context, entry: SpentRow, at: number): TimeSpent | null {
  const edit = editFor(db, entry.deliverableId);
  const now = context.now();
  if (at - entry.startAt > DAY)
    throw refused(
      `The clock on ${edit.name} has run for ${lengthInWords(minutesOf(entry, at))}: it was forgotten.`,
      'Stop it with the moment at which the work ended.',
    );
  if (at < entry.startAt)
    throw badFacts([{ field: 'at', sentence: 'The end is before the start. Give the moment at which the work ended.' }]);
  if (at - entry.startAt < 60_000) {
    dropSpent(db, entry.id);
    say(db, edit, 'spent.stop', 'The clock was stopped within its first minute: nothing was spent.', entry, now);
    return null;
  }
  keepSpent(db, entry, { ...entry, endAt: at });
  say(db, edit, 'spent.stop', `The clock was stopped after ${lengthInWords(minutesOf(entry, at))}.`, entry, now);
  return known(db, context, entry.id);
}

function runningNow(db: ReadableDb, context: Context): Running | null {
  const found = runningClock(db);
  if (!found) return null;
  const { entry, jobId, title, name } = found;
  const stage = stagesOf(db, entry.deliverableId).find(({ id }) => id === entry.stageId)?.kind ?? 'other work';
  return { ...asMet(db, context, entry), jobId, title, name, stage };
}

function pastFor(db: ReadableDb, templateId: string): Past {
  const known = pastOf(finishedEdits(db, templateId));
  return { ...known, sentences: pastInWords(known) };
}

function asMet(db: ReadableDb, context: Context, { startAt, endAt, ...row }: SpentRow): TimeSpent {
  return {
    ...row,
    startAt: instantText(startAt),
    endAt: endAt === null ? null : instantText(endAt),
    date: dateIn(homeZone(db, context), startAt),
    minutes: minutesOf({ startAt, endAt }, context.now()),
  };
}

function editFor(db: ReadableDb, id: string): EditRow {
  const edit = editById(db, id);
  if (!edit) throw notFound('This deliverable');
  return edit;
}

function workable(db: ReadableDb, id: string): EditRow {
  const edit = editFor(db, id);
  if (edit.offAt !== null) throw refused(`${edit.name} was taken off.`, 'Put it back among the edits first.');
  return edit;
}

/** " on rough cut", or nothing. @throws NOT_FOUND for a stage of something else */
function stageFor(db: ReadableDb, edit: EditRow, stageId: string | null): string {
  if (stageId === null) return '';
  const stage = stagesOf(db, edit.id).find(({ id }) => id === stageId);
  if (!stage) throw notFound('This stage');
  return ` on ${stage.kind}`;
}

function one(db: ReadableDb, context: Context, { id, version }: { id: string; version: number }): SpentRow {
  const row = spentById(db, id);
  if (!row) throw notFound('This time');
  if (row.version !== version) throw stale('This time', asMet(db, context, row), null);
  return row;
}

function known(db: ReadableDb, context: Context, id: string): TimeSpent {
  const row = spentById(db, id);
  if (!row) throw notFound('This time');
  return asMet(db, context, row);
}

function say(db: WritableDb, edit: EditRow, name: string, sentence: string, before: unknown, at: number): void {
  writeHistory(db, { at, subject: 'job', subjectId: edit.jobId, deed: name, sentence: `${edit.name}: ${sentence}`, before });
}

export const spent = { of, running, past, start, stop, type, drop };
