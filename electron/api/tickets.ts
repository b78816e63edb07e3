/**
 * Legs read from a pasted confirmation: nothing is saved until a person keeps them.
 */
import { readConfirmation } from '../../core/trips/confirmation/read.ts';
import { readInWords } from '../../core/trips/confirmation/say.ts';
import { wallAt } from '../../core/time/read.ts';
import { jobById } from '../../db/jobs.ts';
import { legsOfJob } from '../../db/legs.ts';
import { setupRow } from '../../db/setup.ts';
import { homeZone } from './job-facts.ts';
import { os } from './os.ts';
import { notFound } from './trouble.ts';

export const readTicket = os.trips.readConfirmation.handler(({ input: { jobId, text }, context }) =>
  context.store.read((db) => {
    const now = context.now();
    const job = jobId === undefined ? null : jobById(db, jobId, now);
    if (job === undefined) throw notFound('This job');
    const ends = jobId === undefined ? [] : legsOfJob(db, jobId).flatMap(({ from, to }) => [from, to]);
    const known = [job?.place, setupRow(db)?.fields.home, ...ends].filter((place) => place !== null && place !== undefined);
    const today = wallAt(now, homeZone(db, context)).slice(0, 10);
    const { cut, ...read } = readConfirmation(text, { gazetteer: context.gazetteer(), known, today });
    return { ...read, sentence: readInWords(read.legs, cut) };
  }),
);
