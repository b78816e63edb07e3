/**
 * A hand who was asked and has not answered is a clock: after a day (a default), and never later than the first call of what they were asked for.
 */
import type { Clock } from '../contract/desk.ts';
import { instantText } from '../time/read.ts';
import { datesInWords, withoutYear } from '../words/dates.ts';
import { whenWords } from './when.ts';

const A_DAY = 86_400_000;

export type HandAsked = {
  handId: string;
  name: string;
  job: { id: string; version: number; title: string };
  /** Dates without an answer that the job still has; epoch ms of the ask and of the first call. */
  dates: readonly string[];
  askedAt: number;
  firstCallAt: number;
};

/** Clocks until an answer is noted; none once the call has come. `now` in epoch ms. */
export function handClocks(asks: readonly HandAsked[], now: number, homeZone: string): Clock[] {
  return asks
    .filter(({ firstCallAt, dates }) => firstCallAt > now && dates.length > 0)
    .map(({ handId, name, job, dates, askedAt, firstCallAt }) => {
      const at = Math.min(askedAt + A_DAY, firstCallAt);
      return {
        id: `hand:${job.id}:${handId}`,
        kind: 'hand',
        at: instantText(at),
        late: at <= now,
        jobId: job.id,
        jobVersion: job.version,
        sentence: `${job.title}: ${name} has not answered`,
        second: `asked ${whenWords(askedAt, homeZone, now)} for ${withoutYear(datesInWords([...dates].sort()))}`,
        action: 'open',
      };
    });
}
