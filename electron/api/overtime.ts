/**
 * Overtime on site: asked for, approved or refused, with who said so, when and how.
 */
import type { OvertimeAsk } from '../../core/contract/hours.ts';
import { askInWords } from '../../core/hours/overtime.ts';
import { epochOf, instantText } from '../../core/time/read.ts';
import { lengthInWords } from '../../core/words/amounts.ts';
import { dateInWords } from '../../core/words/dates.ts';
import { askById, dropAsk as dropKeptAsk, keepAsk, workedOf } from '../../db/hours.ts';
import { writeHistory } from '../../db/keeping.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { deed } from './deed.ts';
import { whole } from './job-deed.ts';
import { badFacts, homeZone } from './job-facts.ts';
import { os } from './os.ts';
import { notFound, refused } from './trouble.ts';

export const ask = os.hours.ask.handler(({ input, context }) =>
  deed(context, 'hours.ask', input, (db) => {
    const { jobId, date, minutes } = input;
    const now = context.now();
    const job = whole(db, jobId, now);
    if (job.state !== 'inked') throw refused(`${job.title} is not in ink.`, 'Note the yes first: its terms say what overtime costs.');
    const dates = [...job.days, ...workedOf(db, jobId)].map((day) => day.date);
    if (!dates.includes(date)) throw badFacts([{ field: 'date', sentence: `${dateInWords(date)} is no date of ${job.title}.` }]);
    const id = keepAsk(db, { jobId, date, minutes, askedAt: instantText(now), state: 'asked', who: '', at: null, how: '' });
    noteAsk(db, jobId, 'hours.ask', `${lengthInWords(minutes)} of overtime asked for ${dateInWords(date)}.`, null, now);
    return { ask: known(db, id) };
  }),
);

export const dropAsk = os.hours.dropAsk.handler(({ input, context }) =>
  deed(context, 'hours.dropAsk', input, (db) => {
    const before = known(db, input.id);
    refuseUnless(before, before.state === 'asked');
    dropKeptAsk(db, before.id);
    const sentence = `${lengthInWords(before.minutes)} of overtime on ${dateInWords(before.date)} is not asked for any more.`;
    noteAsk(db, before.jobId, 'hours.dropAsk', sentence, before, context.now());
    return {};
  }),
);

export const settleAsk = os.hours.settleAsk.handler(({ input, context }) =>
  deed(context, 'hours.settleAsk', input, (db) => {
    const { id, approved, who, how } = input;
    const now = context.now();
    const before = known(db, id);
    refuseUnless(before, before.state === 'asked');
    const at = input.at ?? instantText(now);
    if (epochOf(at) > now) throw badFacts([{ field: 'at', sentence: 'The answer is dated after now. Give the moment it was said.' }]);
    keepAsk(db, { ...before, state: approved ? 'approved' : 'refused', who, how, at });
    const zone = whole(db, before.jobId, now).place?.zone ?? homeZone(db, context);
    const after = known(db, id);
    noteAsk(db, before.jobId, 'hours.settleAsk', `Overtime on ${dateInWords(before.date)}: ${askInWords(after, zone)}.`, before, now);
    return { ask: after };
  }),
);

export const openAsk = os.hours.openAsk.handler(({ input, context }) =>
  deed(context, 'hours.openAsk', input, (db) => {
    const before = known(db, input.id);
    if (before.state === 'asked') throw refused('This ask is open.', 'Nothing needs taking back.');
    keepAsk(db, { ...before, state: 'asked', who: '', how: '', at: null });
    const sentence = `The answer to ${lengthInWords(before.minutes)} of overtime on ${dateInWords(before.date)} was taken back; it was ${before.state} by ${before.who}.`;
    noteAsk(db, before.jobId, 'hours.openAsk', sentence, before, context.now());
    return { ask: known(db, input.id) };
  }),
);

function known(db: ReadableDb, id: string): OvertimeAsk {
  const found = askById(db, id);
  if (!found) throw notFound('This ask');
  return found;
}

function refuseUnless({ state, who }: OvertimeAsk, open: boolean): void {
  if (!open) throw refused(`It was ${state} by ${who}.`, 'Take the answer back first, if it was noted by mistake.');
}

function noteAsk(db: WritableDb, jobId: string, name: string, sentence: string, before: OvertimeAsk | null, at: number): void {
  writeHistory(db, { at, subject: 'job', subjectId: jobId, deed: name, sentence, before });
}
