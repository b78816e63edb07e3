/**
 * Legs of a job: kept by the subject of trips.
 */
import { chainBreaks } from '../../core/trips/chain.ts';
import { staysOf } from '../../core/trips/stays.ts';
import { belongingsOf } from '../../db/book.ts';
import { jobById } from '../../db/jobs.ts';
import { writeHistory } from '../../db/keeping.ts';
import { dropLeg, keepLeg, legById, legsOfJob } from '../../db/legs.ts';
import { deed } from './deed.ts';
import { os } from './os.ts';
import { notFound, stale } from './trouble.ts';
import { placedLegs } from './unsaved.ts';

export const legs = os.trips.legs.handler(({ input, context }) =>
  context.store.read((db) => {
    if (!jobById(db, input.jobId, context.now())) throw notFound('This job');
    const { days, legs: placed } = belongingsOf(db, [input.jobId])(input.jobId);
    const breaks = chainBreaks(placed, staysOf(days)).flatMap(({ first, second, sentence }) =>
      first.id !== null && second.id !== null ? [{ first: first.id, second: second.id, sentence }] : [],
    );
    return { legs: legsOfJob(db, input.jobId), breaks };
  }),
);

export const setLeg = os.trips.setLeg.handler(({ input, context }) =>
  deed(context, 'trips.setLeg', {}, (db) => {
    const { jobId, fields } = input;
    const now = context.now();
    if (!jobById(db, jobId, now)) throw notFound('This job');
    const before = input.id === undefined ? undefined : legById(db, input.id);
    if (input.id !== undefined && before?.jobId !== jobId) throw notFound('This leg');
    if (before && before.version !== input.version) throw stale('This leg', before, fields);
    const [placed] = placedLegs([fields], 'fields');
    if (!placed) throw notFound('This leg');
    const leg = keepLeg(db, jobId, before, fields, { departAt: placed.departAt, arriveAt: placed.arriveAt, now });
    const sentence = `The ${fields.mode} from ${fields.from.name} to ${fields.to.name} is ${fields.source}.`;
    writeHistory(db, { at: now, subject: 'job', subjectId: jobId, deed: 'trips.setLeg', sentence, before: before ?? null });
    return { leg };
  }),
);

export const removeLeg = os.trips.dropLeg.handler(({ input, context }) =>
  deed(context, 'trips.dropLeg', {}, (db) => {
    const before = legById(db, input.id);
    if (!before) throw notFound('This leg');
    if (before.version !== input.version) throw stale('This leg', before, null);
    dropLeg(db, input.id);
    const sentence = `The ${before.mode} from ${before.from.name} to ${before.to.name} was taken off.`;
    writeHistory(db, { at: context.now(), subject: 'job', subjectId: before.jobId, deed: 'trips.dropLeg', sentence, before });
    return {};
  }),
);
