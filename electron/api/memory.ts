/**
 * Corrections of what was read from a message: kept when a person changes an inquiry, laid over the next reading of the same sender.
 */
import { ORPCError } from '@orpc/server';
import type { Reading } from '../../core/contract/inquiries.ts';
import type { Job } from '../../core/contract/jobs.ts';
import { learned, rememberedWords, senderOf, stillRemembered, withMemory } from '../../core/inquiries/remember.ts';
import { factsOf, type Facts } from '../../core/jobs/facts.ts';
import { epochOf } from '../../core/time/read.ts';
import { correctionsFor, dropCorrection, forgetCorrection, keepCorrection } from '../../db/corrections.ts';
import { jobById, saveRemembered } from '../../db/jobs.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { done } from './job-deed.ts';
import { homeZone } from './job-facts.ts';
import { os } from './os.ts';
import { notFound } from './trouble.ts';

/**
 * A message as it reads at home, without memory.
 * @param receivedAt the moment with its zone, as in `2026-11-25T09:12:00-06:00[America/Chicago]`
 * @param chosenDays the days that a person chose of those that it leaves open
 */
export function readPlain(
  context: Context,
  message: { text: string; receivedAt: string; chosenDays?: readonly string[] | undefined },
): Promise<Reading> {
  const home = context.store.read((db) => ({ zone: homeZone(db, context), setup: setupRow(db)?.fields }));
  return context.readMessage({ ...message, homeZone: home.zone, homePlace: home.setup?.home, homeCurrency: home.setup?.currency });
}

/** The message that a job came with, which never changes, as it reads now; undefined for a job without one. */
export async function readAgain(context: Context, id: string, chosenDays?: readonly string[]): Promise<Reading | undefined> {
  const job = context.store.read((db) => jobById(db, id, context.now()));
  if (!job || job.message === null) return undefined;
  return readPlain(context, { text: job.message, receivedAt: receivedAt(job), chosenDays });
}

/**
 * What a change of a job may be learned from: its message as it reads now, where no quote was made yet. One that takes too long to read teaches nothing,
 * and the change is made all the same.
 */
export async function readToLearn(context: Context, id: string): Promise<Reading | undefined> {
  if (context.store.read((db) => jobById(db, id, context.now()))?.total !== null) return undefined;
  try {
    return await readAgain(context, id);
  } catch (error) {
    if (error instanceof ORPCError) return undefined;
    throw error;
  }
}

/** The moment at which a job's message came, with its zone. */
const receivedAt = ({ received: { at, zone } }: Job): string =>
  Temporal.Instant.fromEpochMilliseconds(epochOf(at)).toZonedDateTimeISO(zone).toString();

/** A reading with what was corrected before for its sender. */
export function remembering(db: ReadableDb, reading: Reading): Reading {
  const sender = senderOf(reading);
  return sender === null ? reading : withMemory(reading, correctionsFor(db, sender));
}

/**
 * Remember what a change of an inquiry corrects in its reading. Once a quote was made a change is another wish, not another reading.
 * @param reading of the job's message, where it has one
 * @returns the sentence that says so, if anything was learned
 */
export function learn(db: WritableDb, job: Job, reading: Reading | undefined, facts: Facts, now: number): string[] {
  const before = factsOf(job);
  const notes = job.remembered ?? [];
  const standing = stillRemembered(notes, before, facts);
  if (standing.length < notes.length) saveRemembered(db, job.id, standing, now);
  if (!reading || job.total !== null) return [];
  const sender = senderOf(reading);
  if (sender === null) return [];
  const { keep, drop } = learned(reading, before, facts);
  for (const point of drop) dropCorrection(db, sender, point);
  for (const correction of keep) keepCorrection(db, sender, correction, now);
  return keep.length > 0 ? [`Remembered for this sender: ${keep.map(({ fact }) => rememberedWords[fact]).join(', ')}.`] : [];
}

export const forget = os.jobs.forget.handler(({ input, context }) =>
  done(context, 'jobs.forget', 'know', input, (db, job, now) => {
    const notes = job.remembered ?? [];
    const note = notes.find(({ id }) => id === input.correction);
    if (!note) throw notFound('This correction');
    forgetCorrection(db, note.id);
    saveRemembered(
      db,
      job.id,
      notes.filter((one) => one !== note),
      now,
    );
    return `Forgot how their ${rememberedWords[note.fact]} was corrected.`;
  }),
);
