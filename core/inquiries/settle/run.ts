/**
 * A single day that is part of a run, or that is told as the day of the call alone.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { numberWord } from '../words.ts';
import { daysSaid } from './days.ts';
import { askedDays, inMonthOf, union } from './days-among.ts';
import { firstOfForm, lastOfForm } from './form-days.ts';
import { allCounted } from './joined-up.ts';
import { isEvent } from './pointed.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

/** What leads to the last day of a run. */
export const ENDS =
  /\b(?:ends?|ending|finish(?:es|ing)?|closes?|closing|concludes?|concluding|runs? (?:to|until|through)|return(?:s|ing)?|back|last day (?:is|being|will be))\s?:?\s(?:on\s)?(?:the\s)?$/i;
/** "starts on Saturday 1 May and goes on till Sunday 2 May": in one breath with the day on which it begins. */
const goesOnTill = ({ text }: Scene, { before, start }: DateMention, { where }: EventDays): boolean => {
  const begin = where.findLast(({ end }) => end <= start);
  return begin !== undefined && GOES_ON_TILL.test(before) && !/[.;!?\n]/.test(text.slice(begin.end, start));
};
const GOES_ON_TILL = /\b(?:goes|carries|continues|lasts) (?:on )?(?:till?|until|to|through)\s(?:the\s)?$/i;
/** "the first day is Tuesday the 2nd and the last Thursday the 4th" */
const isFirst = (before: string): boolean => /\bfirst (?:day|evening|night)(?: is| being| will be|:)?,? (?:on )?(?:the )?$/i.test(before);
const isLast = (before: string): boolean =>
  /^[\s,;]{0,2}(?:and |with )?the last (?:one |day |evening |night )?(?:is |being |will be )?(?:on )?(?:the )?$/i.test(before);
/** Whether two dates are told as the first and the last day of what is between them. */
export const firstToLast = (first: DateMention, last: DateMention): boolean =>
  (isFirst(first.before) && isLast(last.before)) || (firstOfForm(first.before) && lastOfForm(last.before));
const STARTS = /\b(?:start(?:s|ing)?|begin(?:s|ning)?|from|commenc(?:es|ing)|kick(?:s|ing) off)\s?:?\s(?:on\s)?(?:the\s)?$/i;
/** "two days, or three if the grant comes through" */
const OR_MORE = /\bdays?,? or (?:maybe |possibly |perhaps |even )?(?:two|three|four|five|six|[2-6])\b/i;
/** "four days, the other three spread over the weeks after", "the rest to be agreed" */
const SPREAD =
  /\b(?:spread|scattered|dotted|non-?consecutive|not consecutive|at intervals|to be (?:agreed|fixed|arranged|confirmed|decided)|tb[acd])\b|\b(?:the )?(?:others?|rest)(?: (?:one|two|three|four|five|six|\d))?(?: days?)? (?:later|when(?:ever)?|as and when|over (?:the|several|some))\b/i;
const A_WEEK = 7;
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
  const end =
    scene.dates.find((mention) => endsIt(scene, mention, settled)) ??
    scene.dates.find(
      (mention) =>
        ((mention.said === 'wrap' && ENDS.test(mention.before)) ||
          (mention.by && mention.said === 'show' && goesOnTill(scene, mention, settled))) &&
        mention.readings.length === 1 &&
        !mention.doubt,
    );
  const last = end && (endsIt(scene, end, settled) ? lastOf(end, first) : end.readings[0]?.at(-1));
  if (end && last !== undefined && last > first) {
    const length = start.until(Temporal.PlainDate.from(last)).days + 1;
    // "We open on the 14th and run until the 24th": of so many days only some may be mine.
    if (length > A_WEEK && endsIt(scene, end, settled)) return askedDays([...settled.where, end], [[first], runFrom(first, length)]);
    if (length <= LONGEST_STATED)
      return { ...settled, dates: runFrom(first, length), where: [...settled.where, { start: end.start, end: end.end }] };
  }
  const more = followed(scene, settled);
  if (more > 0) return { ...settled, dates: runFrom(first, 1 + more), counted: true };
  const begins = scene.dates.some((mention) => settled.where.some((where) => where.start === mention.start) && STARTS.test(mention.before));
  const said = [...new Set(daysSaid(scene.text).map(({ days }) => days))];
  const days = said[0];
  return begins &&
    !OR_MORE.test(scene.text) &&
    !SPREAD.test(scene.text) &&
    said.length === 1 &&
    days !== undefined &&
    days > 1 &&
    days <= LONGEST_STATED
    ? { ...settled, dates: runFrom(first, days) }
    : settled;
}

/** "begins Tuesday 8 June and takes also the two following days": how many days follow in the same sentence. */
function followed({ text }: Scene, { where }: EventDays): number {
  const told = where.at(-1);
  if (!told) return 0;
  const rest = text.slice(told.end, Math.min(told.end + LONGEST_LEAD, sentenceAround(text, told.start, told.end).end));
  const count = FOLLOWED.exec(rest)
    ?.slice(1)
    .find((word) => word !== undefined);
  return count === undefined ? 0 : (numberWord(count.toLowerCase()) ?? Number(count));
}
const FOLLOWED =
  /(?:,|\b(?:and|plus|also|with|for|over))\s(?:on\s|over\s|for\s)?the\s(?:(two|three|four|[2-4])\s(?:following|next)\s(?:days|nights|evenings|mornings)|(?:following|next)\s(two|three|four|[2-4])(?:\s(?:days|nights|evenings|mornings))?(?=\s?[.,;!)\n]|$| in | at | as well| too| also)|(two|three|four|[2-4])\s(?:days|nights|evenings|mornings)\s(?:after(?:wards)?|following)(?! (?:you|we|i|the|your|our)\b))/i;

/** The day on which a run ends that begins on `first`: a number alone is of its month, a weekday alone the next one. */
function lastOf({ readings, sequence: { items } }: DateMention, first: string): string | undefined {
  const atom = items[0]?.atom;
  if (atom === undefined || atom.relative) return readings[0]?.at(-1);
  const start = Temporal.PlainDate.from(first);
  if (atom.day === undefined) return start.add({ days: ((atom.weekday ?? 0) - start.dayOfWeek + 7) % 7 }).toString();
  const last = inMonthOf(first, atom.day);
  return last !== undefined && (atom.weekday === undefined || Temporal.PlainDate.from(last).dayOfWeek === atom.weekday) ? last : undefined;
}

/** "starts on Sunday 19 September and runs to Wednesday the 22nd": what begins and ends in one sentence is one thing. */
export function endsIt({ text }: Scene, { start, explicit, past, said, sequence }: DateMention, { where }: EventDays): boolean {
  const begin = where.findLast((one) => one.end <= start);
  if (!begin || explicit || past || sequence.items.length !== 1 || !(isEvent({ said }) || said === 'wrap')) return false;
  return start < sentenceAround(text, begin.start, begin.end).end && IT_ENDS.test(text.slice(begin.end, start));
}
const IT_ENDS =
  /(?:^|[,;(\u2013-]|\b(?:and|then|but))\s?(?:it |we |which |(?:it )?goes on |carries on )?(?:ends?|ending|finish(?:es|ing)?|closes|closing|concludes|concluding|runs?|running|lasts|lasting|until|till|through|to)\s(?:(?:to|until|till|through|on)\s)?(?:the\s)?$/i;

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
  const single = ahead.filter(({ readings, doubt }) => readings.length === 1 && !doubt);
  const dated = single.filter(({ weekdayOnly }) => !weekdayOnly);
  // "thurs, Perth, arrive 1500": a weekday is the day where none but weekdays are told.
  const [only, ...more] = dated.length > 0 ? dated : single;
  const called = ahead.filter(({ explicit, readings, said, doubt }) => explicit && said === 'call' && readings.length === 1 && !doubt);
  // "Wed 7 July is the rehearsal (you on site 2pm) and Thurs 8 July is the awards itself ... both days"
  if (
    called.length === ahead.filter(({ explicit }) => explicit).length &&
    (allCounted(text, called) || (called.length === 2 && BOTH_DAYS.test(text)))
  )
    return { dates: union(...called.flatMap(({ readings }) => readings)), where: called, choices: [], counted: true };
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
const BOTH_DAYS = /\bboth (?:days|dates|nights|evenings)\b/i;
const BE_THERE = /\b(?:you|crew|arrive|come|be (?:in|at|there|here|on)|report)\b/i;
const LONGEST_LEAD = 60;
