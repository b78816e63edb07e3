/**
 * A pasted message put on the books as an inquiry, with what was read from it.
 */
import { jobOf, type Usual } from '../../core/inquiries/to-job.ts';
import type { InquiryFields } from '../../core/contract/inquiries.ts';
import { defaultCard } from '../../core/rates/defaults.ts';
import { chooseCard } from '../../core/rates/choose.ts';
import { wallAt } from '../../core/time/read.ts';
import { insertJob } from '../../db/jobs.ts';
import { writeHistory } from '../../db/keeping.ts';
import { allCards } from '../../db/rates.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import { deed } from './deed.ts';
import type { Context } from './context.ts';
import { homeZone, placedDays } from './job-facts.ts';
import { readPlain, remembering } from './memory.ts';
import { os } from './os.ts';

export const take = os.inquiries.take.handler(async ({ input, context }) => {
  const now = context.now();
  const zone = context.store.read((db) => homeZone(db, context));
  const receivedAt =
    input.receivedAt ?? Temporal.Instant.fromEpochMilliseconds(now).toZonedDateTimeISO(zone).toString({ smallestUnit: 'second' });
  const received = Temporal.ZonedDateTime.from(receivedAt, { offset: 'use' });
  const read = await readPlain(context, { text: input.text, receivedAt });
  return deed(context, 'inquiries.take', input, (db) => {
    const reading = remembering(db, read);
    const { facts, questions } = jobOf(reading, input.text, input.title ?? '', usualOf(db, context, reading.fields));
    const jobId = insertJob(db, {
      facts,
      placed: placedDays(facts.days, facts.place, zone),
      message: input.text,
      questions,
      spans: reading.spans,
      remembered: reading.remembered,
      receivedAt: received.epochMilliseconds,
      receivedZone: received.timeZoneId,
      now,
    });
    writeHistory(db, { at: now, subject: 'job', subjectId: jobId, deed: 'inquiries.take', sentence: 'Read from a pasted message.' });
    return { jobId, reading };
  });
});

/** The length of days by the card that will price it, or by the defaults of the trade before there is one. */
export function usualOf(db: ReadableDb, context: Context, { role = 'shoot', start }: Pick<InquiryFields, 'role' | 'start'>): Usual {
  const zone = homeZone(db, context);
  const today = wallAt(context.now(), zone).slice(0, 10);
  const card = chooseCard(allCards(db), role, start ?? today)?.card ?? defaultCard(role, setupRow(db)?.fields.currency ?? 'USD', today);
  return { homeZone: zone, dayMinutes: minutes(card.dayHours), halfMinutes: minutes(card.halfUpToHours) };
}

const minutes = (hours: string) => Math.round(Number(hours) * 60);
