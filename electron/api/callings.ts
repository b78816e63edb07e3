/**
 * Calling off what is in ink: cancelled or postponed, with what it owes, and taken back again.
 */
import type { CallingOff } from '../../core/contract/callings.ts';
import type { Job } from '../../core/contract/jobs.ts';
import { factsOf } from '../../core/jobs/facts.ts';
import { postponed } from '../../core/jobs/postpone.ts';
import { formatMoney } from '../../core/money/format.ts';
import { epochOf, instantText } from '../../core/time/read.ts';
import { datesInWords } from '../../core/words/dates.ts';
import { addCalling, callingsOf, inkAgain, takeCallingBack, type CallingRow } from '../../db/callings-off.ts';
import { daysOf } from '../../db/job-days.ts';
import { saveJobFacts, setStage } from '../../db/jobs.ts';
import type { WritableDb } from '../../db/store.ts';
import { owedBy } from './cancellation.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { refuseDoubleInk } from './double-ink.ts';
import { done, note, opened, whole } from './job-deed.ts';
import { badFacts, homeZone, placedDays } from './job-facts.ts';
import { os } from './os.ts';
import { refused } from './trouble.ts';

const list = os.callings.list.handler(({ input, context }) =>
  context.store.read((db) => {
    whole(db, input.jobId, context.now());
    return { callings: callingsOf(db, input.jobId).map(met) };
  }),
);

const off = os.callings.off.handler(({ input, context }) =>
  deed(context, 'callings.off', input, (db) => {
    const now = context.now();
    const job = opened(db, input, 'call off', now);
    const toldAt = input.told ? epochOf(input.told) : now;
    refuseWrongNotice(job, toldAt, now);
    const { postponeTo } = input;
    const { version, cancellation } = owedBy(db, job, { ...input, at: toldAt, agreedAt: postponeTo === null ? null : now });
    if (postponeTo === null) setStage(db, job.id, 'cancelled', now);
    else moveDays(db, context, job, postponed(job.days, postponeTo), now);
    const calling = addCalling(db, {
      jobId: job.id,
      at: now,
      toldAt,
      quoteVersion: version,
      postponedTo: postponeTo,
      daysBefore: job.days,
      owes: cancellation,
    });
    const after = whole(db, job.id, now);
    const dates = ({ days }: Job): string => datesInWords(days.map(({ date }) => date));
    const what = postponeTo === null ? `Cancelled; ${dates(job)} free again` : `Postponed from ${dates(job)} to ${dates(after)}`;
    note(db, job, 'callings.off', `${what}. It owes ${formatMoney(cancellation.total, { code: true })}. ${cancellation.reason}`, now);
    return { job: after, calling: met(calling) };
  }),
);

const takeBack = os.callings.takeBack.handler(({ input, context }) =>
  done(context, 'callings.takeBack', 'take back', input, (db, job, now) => {
    const [newest] = callingsOf(db, job.id);
    if (!newest) throw refused(`${job.title} was not called off.`, 'There is nothing to take back.');
    takeCallingBack(db, newest.id, now);
    if (newest.postponedTo === null) {
      refuseDoubleInk(db, job, daysOf(db, job.id));
      inkAgain(db, job.id, now);
      return 'The cancellation was taken back: in ink again.';
    }
    moveDays(db, context, job, newest.daysBefore, now);
    return `The postponement was taken back: ${datesInWords(newest.daysBefore.map(({ date }) => date))} again.`;
  }),
);

function refuseWrongNotice(job: Job, toldAt: number, now: number): void {
  const sentence =
    toldAt > now
      ? 'Notice is dated after now. Give the moment at which it was given.'
      : job.ink && toldAt < epochOf(job.ink.at)
        ? 'Notice is dated before the yes. Give the moment at which it was given.'
        : null;
  if (sentence) throw badFacts([{ field: 'told', sentence }]);
}

/** Other dates for a job in ink, agreed with the client. */
function moveDays(db: WritableDb, context: Context, job: Job, days: Job['days'], now: number): void {
  const placed = placedDays(days, job.place, homeZone(db, context));
  const [first] = placed.days;
  if (first?.date === job.days[0]?.date)
    throw badFacts([{ field: 'postponeTo', sentence: 'The new date is the one that it has. Give another, or cancel.' }]);
  if (first && first.callAt <= now)
    throw badFacts([{ field: 'postponeTo', sentence: 'The first call on the new date is over. Give a later date.' }]);
  refuseDoubleInk(db, job, placed.days);
  saveJobFacts(db, job.id, { ...factsOf(job), days }, placed, job.questions, now);
}

function met({ id, at, toldAt, quoteVersion, postponedTo, daysBefore, owes }: CallingRow): CallingOff {
  const from = daysBefore[0]?.date ?? instantText(toldAt).slice(0, 10);
  return { id, at: instantText(at), told: instantText(toldAt), quoteVersion, from, postponedTo, owes };
}

export const callings = { list, off, takeBack };
