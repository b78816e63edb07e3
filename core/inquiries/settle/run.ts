/**
 * A single day that is part of a run, or that is told as the day of the call alone.
 */
import { daysSaid } from './days.ts';
import { isEvent } from './pointed.ts';
import type { EventDays, Scene } from './scene.ts';

/** What leads to the last day of a run. */
export const ENDS =
  /\b(?:ends?|ending|finish(?:es|ing)?|closes|closing|concludes|concluding|runs? (?:to|until|through)|return(?:s|ing)?|back)\s?:?\s(?:on\s)?(?:the\s)?$/i;
const STARTS = /\b(?:start(?:s|ing)?|begin(?:s|ning)?|from|commenc(?:es|ing)|kick(?:s|ing) off)\s?:?\s(?:on\s)?(?:the\s)?$/i;
/** "two days, or three if the grant comes through" */
const OR_MORE = /\bdays?,? or (?:maybe |possibly |perhaps |even )?(?:two|three|four|five|six|[2-6])\b/i;
/** A longer run is asked about. */
export const LONGEST_STATED = 14;

/** So many days in a row. */
export function runFrom(first: string, length: number): string[] {
  const start = Temporal.PlainDate.from(first);
  return Array.from({ length }, (_, step) => start.add({ days: step }).toString());
}

/** A single day that is only the first: "starts Wednesday ... ends Friday", "three days from 12 March". */
export function lengthened(scene: Scene, settled: EventDays): EventDays {
  const first = settled.dates[0];
  if (settled.dates.length !== 1 || first === undefined) return settled;
  const start = Temporal.PlainDate.from(first);
  const end = scene.dates.find(
    (mention) => mention.said === 'wrap' && mention.readings.length === 1 && !mention.doubt && ENDS.test(mention.before),
  );
  const last = end?.readings[0]?.at(-1);
  if (end && last !== undefined && last > first) {
    const length = start.until(Temporal.PlainDate.from(last)).days + 1;
    if (length <= LONGEST_STATED)
      return { ...settled, dates: runFrom(first, length), where: [...settled.where, { start: end.start, end: end.end }] };
  }
  const begins = scene.dates.some((mention) => settled.where.some((where) => where.start === mention.start) && STARTS.test(mention.before));
  const said = [...new Set(daysSaid(scene.text).map(({ days }) => days))];
  const days = said[0];
  return begins && !OR_MORE.test(scene.text) && said.length === 1 && days !== undefined && days > 1 && days <= LONGEST_STATED
    ? { ...settled, dates: runFrom(first, days) }
    : settled;
}

/** "the meeting on the 24th, a rehearsal the day before, so two days, 23 and 24 March": a run that is counted holds the one day. */
export function wholeRun({ dates, text }: Scene, settled: EventDays): EventDays {
  const [day] = settled.dates;
  if (settled.dates.length !== 1 || day === undefined) return settled;
  const counts = daysSaid(text).map(({ days }) => days);
  const run = dates.find(
    ({ said, past, readings, explicit, doubt }) =>
      explicit &&
      !past &&
      !doubt &&
      (said === 'call' || said === 'wrap') &&
      readings.length === 1 &&
      (readings[0] ?? []).includes(day) &&
      counts.includes(readings[0]?.length ?? 0),
  );
  const days = run?.readings[0];
  return run && days && days.length > 1
    ? { ...settled, dates: days, where: [...settled.where, { start: run.start, end: run.end }] }
    : settled;
}

/** "Be in Goa by 8 on 24 June": where no other day is told, that of the call is the day; setting up alone may be the day before. */
export function dayOfCall({ dates, text }: Scene): EventDays {
  const ahead = dates.filter(({ past, said, vague }) => !past && !vague && (isEvent({ said }) || said === 'call' || said === 'wrap'));
  const [only, ...more] = ahead.filter(({ weekdayOnly, readings, doubt }) => !weekdayOnly && readings.length === 1 && !doubt);
  const reading = only?.readings[0];
  if (!only || !reading || ahead.length > 1 + more.length || only.said !== 'call') return { dates: [], where: [], choices: [] };
  const same = more.every(({ readings }) => readings[0]?.join() === reading.join());
  // "It has to be with us by 21 January": what is due then is no day of work.
  if (only.by && !BE_THERE.test(text.slice(Math.max(0, only.start - LONGEST_LEAD), only.start)))
    return { dates: [], where: [], choices: [] };
  const settingUp = SET_UP.test(text.slice(Math.max(0, only.start - LONGEST_LEAD), only.end + LONGEST_LEAD));
  return same && !settingUp ? { dates: reading, where: [only], choices: [] } : { dates: [], where: [], choices: [] };
}
const SET_UP =
  /\b(?:set-?up|setting up|load(?:ing)?[- ]?in|rig(?:ging)?|build|install\w*|prep|rehears\w*|get-?in|bump-?in|sound ?check|recce)\b/i;
const BE_THERE = /\b(?:you|crew|arrive|come|be (?:in|at|there|here|on)|report)\b/i;
const LONGEST_LEAD = 60;
