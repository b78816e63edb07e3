/**
 * A pasted message put on the books as an inquiry, with what was read from it.
 */
import { jobOf } from '../../core/inquiries/to-job.ts';
import type { RateCardFields } from '../../core/contract/rates.ts';
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
import { placedDays } from './job-facts.ts';
import { readPlain, remembering } from './memory.ts';
import { os } from './os.ts';

export const take = os.inquiries.take.handler(({ input, context }) =>
  deed(context, 'inquiries.take', input, (db) => {
    const now = context.now();
    const setup = setupRow(db)?.fields;
    const homeZone = setup?.home.zone ?? context.systemZone;
    const receivedAt =
      input.receivedAt ?? Temporal.Instant.fromEpochMilliseconds(now).toZonedDateTimeISO(homeZone).toString({ smallestUnit: 'second' });
    const received = Temporal.ZonedDateTime.from(receivedAt, { offset: 'use' });
    const reading = remembering(db, readPlain(db, context, input.text, receivedAt));
    const card = cardFor(db, reading.fields, setup?.currency ?? 'USD', wallAt(now, homeZone).slice(0, 10));
    const usual = { homeZone, dayMinutes: minutes(card.dayHours), halfMinutes: minutes(card.halfUpToHours) };
    const { facts, questions } = jobOf(reading, input.text, input.title ?? '', usual);
    const jobId = insertJob(db, {
      facts,
      placed: placedDays(facts.days, facts.place, homeZone),
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
  }),
);

/** The card that will price it, or the defaults of the trade before there is one. */
function cardFor(db: ReadableDb, fields: InquiryFields, currency: string, today: string): RateCardFields {
  const role = fields.role ?? 'shoot';
  return chooseCard(allCards(db), role, fields.start ?? today)?.card ?? defaultCard(role, currency, today);
}

const minutes = (hours: string) => Math.round(Number(hours) * 60);
