/**
 * What stands on the large sign on site: whether I am on the clock, since when, and what the plan says.
 */
import type { JobHours, Worked } from '../contract/hours.ts';
import type { JobDay } from '../contract/jobs.ts';
import { epochOf } from '../time/read.ts';
import { lengthInWords } from '../words/amounts.ts';
import { dateInWords, wallInWords } from '../words/dates.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
/** How long before a planned call the sign is shown; once its wrap is past, the hours are typed. */
const AHEAD = 12 * HOUR;
/** Common practice: over this nobody should be driving. */
const LONGEST_DAY = 14 * HOUR;

/** `running` is my call that has no wrap; `caution` is empty where there is nothing to say. */
export type OnSite = { running: Worked | null; said: string; plan: string; caution: string };

/** The sign, or null where no date of the job is near and nothing runs. */
export function onSite({ now, zone, days }: Pick<JobHours, 'now' | 'zone' | 'days'>, planned: readonly JobDay[]): OnSite | null {
  const at = epochOf(now);
  const running = days.find(({ handId, wrapAt }) => handId === null && wrapAt === null);
  if (running) {
    const elapsed = at - epochOf(running.callAt);
    const plan = planned.find(({ date }) => date === running.date);
    return {
      running,
      said: `On the clock since ${running.call.slice(11)}, ${lengthInWords(Math.max(0, Math.floor(elapsed / MINUTE)))}`,
      plan: plan ? `Wrap planned at ${timeAfter(plan.wrap, plan.date)}.` : `Called on ${dateInWords(running.date)}.`,
      caution: elapsed > LONGEST_DAY ? 'Over 14 h: nobody should be driving now; sleep first.' : '',
    };
  }
  const mine = new Set(days.filter(({ handId }) => handId === null).map(({ date }) => date));
  const near = planned.find(({ date, call, wrap }) => !mine.has(date) && instant(call, zone) - AHEAD <= at && at < instant(wrap, zone));
  if (!near) return null;
  return {
    running: null,
    said: 'Not on the clock',
    plan: `Call planned on ${wallInWords(near.call)}, wrap at ${timeAfter(near.wrap, near.date)}.`,
    caution: '',
  };
}

const timeAfter = (wall: string, date: string): string => (wall.slice(0, 10) === date ? wall.slice(11) : wallInWords(wall));

/** A planned time was checked when it was kept; where clock rules changed since, any reading will do. */
const instant = (wall: string, zone: string): number => Temporal.PlainDateTime.from(wall).toZonedDateTime(zone).epochMilliseconds;
