/**
 * What the tests of the reader read with: a home in Duluth, a Wednesday morning.
 */
import type { Reading } from '../../../core/contract/inquiries.ts';
import { readInquiry } from '../../../core/inquiries/read.ts';
import { gazetteer, homeOf } from '../../reader/corpus.ts';
import { learned } from '../../reader/shipped.ts';

/** A Monday in October at the same home. */
export const OCTOBER = '2026-10-05T09:00:00-05:00[America/Chicago]';
const WEDNESDAY = '2026-11-25T09:12:00-06:00[America/Chicago]';
export { gazetteer, homeOf, learned };

/** Read a text as it would be read at a home at a moment. */
export function readAt(text: string, receivedAt = WEDNESDAY, home = 'duluth'): Reading {
  const homePlace = homeOf(home);
  return readInquiry({ text, receivedAt, homeZone: homePlace.zone, homePlace, gazetteer, learned });
}

/** Only what was stated. */
export function facts(text: string, receivedAt = WEDNESDAY, home = 'duluth'): Reading['fields'] {
  return readAt(text, receivedAt, home).fields;
}

/** What a job of one day and one of two begin with, before what is offered. */
export const ONE_DAY = 'Could you film our gala in Fargo on Saturday 12 December, 2pm to 9pm?';
export const TWO_DAYS = 'Could you film our fair in Fargo on 12 and 13 December, from 10 to 6?';

/** A message that asks for one fair, with a sentence of its days. */
export const aFair = (sentence: string): string =>
  `Hi Kit, could you film our fair in Ripon? ${sentence} Let me know what you would charge.\n\nThanks, Robin`;

/** What words offer for a job: amount, currency and unit, `-` for what is not known, `none` where nothing is offered. */
export function offerIn(asked: string, words: string): string {
  const { amount, currency = '-', per = '-' } = facts(`${asked} ${words}\n\nThanks, Robin`).budget ?? { amount: 'none' };
  return `${amount} ${currency} ${per}`;
}

/** A way to tell of days: the days as `daysOf` writes them, the text, and where and when it is read. */
export type WayOfDays = [days: string, text: string, home?: string, at?: string];

/** The days as they are stated, without their year; `ask` where they are asked about, `none` where no work is asked for. */
export function daysOf(text: string, home = 'leeds', at = '2027-09-01T10:00'): string {
  const received = Temporal.PlainDateTime.from(at).toZonedDateTime(homeOf(home).zone).toString();
  const { isInquiry, fields, datesFound } = readAt(text, received, home);
  if (!isInquiry) return 'none';
  const { start, end } = fields;
  const days = datesFound?.join() ?? (start === end ? start : `${start}..${end}`);
  return days?.replaceAll(/\d{4}-/g, '') ?? 'ask';
}

/** The first call of a job on 13 November, with what is told of its hours; `-` where none is stated; on the day before with its day. */
export function callOf(told: string): string {
  const { firstCall } = facts(
    `Hello,\n\nWe have an event coming up in Fargo on November 13, 2027 and need a videographer for the day. ${told}\n\nCould you reply by October 1 at 5 pm?\n\nBest,\nRobin`,
  );
  return firstCall?.replace('2027-11-13T', '').replace('2027-11-', '') ?? '-';
}

/** The ways of a list, one a line. */
export const lines = (list: string): string[] => list.trim().split(/\s*\n\s*/);
