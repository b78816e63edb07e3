/**
 * Hours on site: calls and wraps as they are worked, corrected, and read back.
 */
import type { Job } from '../../core/contract/jobs.ts';
import type { Worked, WorkedFields } from '../../core/contract/hours.ts';
import { liesOn, placedHours, type WorkedHours } from '../../core/hours/worked.ts';
import { wallAt } from '../../core/time/read.ts';
import { lengthInWords } from '../../core/words/amounts.ts';
import { dateInWords, wallInWords } from '../../core/words/dates.ts';
import { dropWorked, keepWorked, runningCalls, workedAsMet, workedById, workedOf, type WorkedRow } from '../../db/hours.ts';
import { daysOf } from '../../db/job-days.ts';
import { jobById } from '../../db/jobs.ts';
import { writeHistory } from '../../db/keeping.ts';
import { handById } from '../../db/people.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { deed } from './deed.ts';
import { hoursOf } from './hours-of.ts';
import { handPaid } from './hand-paid.ts';
import { whole } from './job-deed.ts';
import { badFacts, homeZone } from './job-facts.ts';
import { os } from './os.ts';
import { ask, dropAsk, openAsk, settleAsk } from './overtime.ts';
import { notFound, refused, stale } from './trouble.ts';

const of = os.hours.of.handler(({ input, context }) => context.store.read((db) => hoursOf(db, context, input.jobId)));

const save = os.hours.save.handler(({ input, context }) =>
  deed(context, 'hours.save', input, (db) => {
    const { jobId, id, version, fields } = input;
    const now = context.now();
    const job = workable(db, jobId, now);
    const before = id === undefined ? undefined : workedById(db, id);
    if (id !== undefined && before?.jobId !== jobId) throw notFound('These hours');
    if (before && before.version !== version) throw stale('These hours', workedAsMet(before), fields);
    if (fields.handId !== null && !handById(db, fields.handId)) throw notFound('This hand');
    const placed = placedHours(fields, now);
    if ('field' in placed) throw badFacts([placed]);
    return keep(db, job, before, { ...placed, note: fields.note }, now, 'hours.save');
  }),
);

const drop = os.hours.drop.handler(({ input, context }) =>
  deed(context, 'hours.drop', input, (db) => {
    const before = one(db, input);
    dropWorked(db, before.id);
    noteHours(db, before, 'hours.drop', `${hoursInWords(before)} were taken off.`, before, context.now());
    return {};
  }),
);

const callNow = os.hours.callNow.handler(({ input, context }) =>
  deed(context, 'hours.callNow', input, (db) => {
    const now = context.now();
    const job = workable(db, input.jobId, now);
    const handId = input.handId ?? null;
    if (handId !== null && !handById(db, handId)) throw notFound('This hand');
    const running =
      handId === null ? runningCalls(db) : workedOf(db, job.id).filter((each) => each.handId === handId && each.wrapAt === null);
    const [other] = running;
    if (other) throw refused(`${hoursInWords(other)} still run${titleOf(db, other, job, now)}.`, 'Wrap them first, then call anew.');
    const zone = job.place?.zone ?? homeZone(db, context);
    const callAt = now - (now % 60_000);
    const call = wallAt(callAt, zone);
    const date = call.slice(0, 10);
    const kind = daysOf(db, job.id).find((day) => day.date === date)?.kind ?? 'shoot';
    const hours = { handId, kind, zone, date, call, wrap: null, callAt, wrapAt: null, unpaidBreakMinutes: 0, note: '' };
    return keep(db, job, undefined, hours, now, 'hours.callNow');
  }),
);

const wrapNow = os.hours.wrapNow.handler(({ input, context }) =>
  deed(context, 'hours.wrapNow', input, (db) => {
    const now = context.now();
    const before = one(db, input);
    const job = workable(db, before.jobId, now);
    if (before.wrapAt !== null) throw refused(`${hoursInWords(before)} have their wrap.`, 'Correct it where it is listed.');
    const wrapAt = now - (now % 60_000);
    if (wrapAt <= before.callAt) throw refused('The call began this very minute.', 'Wrap it in a minute, or take it off.');
    const wrap = wallAt(wrapAt, before.zone);
    if (wrapAt - before.callAt > 86_400_000)
      throw refused(
        `The call has run since ${wallInWords(before.call)}: ${lengthInWords((wrapAt - before.callAt) / 60_000)}. One call lasts at most 24 h.`,
        'Type the wrap as it was.',
      );
    return keep(db, job, before, { ...before, wrap, wrapAt }, now, 'hours.wrapNow');
  }),
);

/** A job whose hours are logged: one in ink. */
function workable(db: ReadableDb, jobId: string, now: number): Job {
  const job = whole(db, jobId, now);
  if (job.state !== 'inked')
    throw refused(`${job.title} is not in ink.`, 'Note the yes first, who said it, when and how: its terms price the hours.');
  return job;
}

function one(db: ReadableDb, { id, version }: { id: string; version: number }): WorkedRow {
  const row = workedById(db, id);
  if (!row) throw notFound('These hours');
  if (row.version !== version) throw stale('These hours', workedAsMet(row), null);
  return row;
}

function keep(
  db: WritableDb,
  job: Job,
  before: WorkedRow | undefined,
  hours: WorkedHours & Pick<WorkedFields, 'note'>,
  now: number,
  name: string,
): { worked: Worked } {
  const others = workedOf(db, job.id).filter(({ id }) => id !== before?.id);
  const under = liesOn(hours, others, now);
  if (under)
    throw badFacts([
      { field: 'fields.call', sentence: `${hoursInWords(hours)} would lie on ${hoursInWords(under)}. Correct the one or the other.` },
    ]);
  const after = workedById(db, keepWorked(db, job.id, before, hours, now));
  if (!after) throw notFound('The hours that were just kept');
  const was = before ? ` Before: ${spanInWords(before)}.` : '';
  noteHours(db, after, name, `${hoursInWords(after)}.${was}`, before ?? null, now);
  return { worked: workedAsMet(after) };
}

function noteHours(db: WritableDb, { jobId }: WorkedRow, name: string, sentence: string, before: WorkedRow | null, at: number): void {
  writeHistory(db, { at, subject: 'job', subjectId: jobId, deed: name, sentence, before });
}

/** "Hours of Sat 12 December 2026, 07:00 to 22:40, 1 h of unpaid breaks". */
function hoursInWords(hours: WorkedHours & { handName?: string }): string {
  const whose = hours.handName ? `${hours.handName}'s hours` : 'Hours';
  return `${whose} of ${dateInWords(hours.date)}, ${spanInWords(hours)}`;
}

function spanInWords({ date, call, wrap, unpaidBreakMinutes }: WorkedHours): string {
  const to = wrap === null ? 'on' : `to ${wrap.slice(0, 10) === date ? wrap.slice(11) : wallInWords(wrap)}`;
  return `${call.slice(11)} ${to}${unpaidBreakMinutes > 0 ? `, ${lengthInWords(unpaidBreakMinutes)} of unpaid breaks` : ''}`;
}

/** The job of other hours, where it is another one. */
function titleOf(db: ReadableDb, { jobId }: WorkedRow, job: Job, now: number): string {
  return jobId === job.id ? '' : ` on ${jobById(db, jobId, now)?.title ?? 'another job'}`;
}

export const hours = { of, save, drop, callNow, wrapNow, ask, dropAsk, settleAsk, openAsk, handPaid };
