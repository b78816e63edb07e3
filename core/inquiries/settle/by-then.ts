/**
 * The day by which an answer is wanted where another sentence or another word names it: "Friday, so reply by 6pm that day", "The board meets on the 7th, so by then".
 */
import type { DateMention, SaidTime, Scene } from './scene.ts';

const THAT_DAY_AFTER = /^(?: \p{Lu}\p{L}+(?: time)?)?,? (?:on |of )?(?:that (?:same )?(?:day|morning|afternoon|evening)|the same day)\b/iu;
const THAT_DAY_BEFORE = /\bthat (?:same )?(?:day|morning|afternoon|evening)(?: at|,)? $/i;
/** "Thursday before 6pm" */
const UP_TO = /^,?\s(?:by|before|avant|vor|voor|antes de(?: las?)?|bis|until)\s$/i;
const NEAR = 24;

/** The day of an hour that stands without one: the one named before it, today where none is. */
export function dayOfHour({ text, dates }: Scene, { start, end }: SaidTime): DateMention | undefined {
  const told = dates.filter((mention) => mention.end <= start && mention.readings.length === 1);
  if (THAT_DAY_AFTER.test(text.slice(end, end + NEAR + 6)) || THAT_DAY_BEFORE.test(text.slice(Math.max(0, start - NEAR), start)))
    return told.at(-1);
  const last = told.at(-1);
  return last && !last.past && start - last.end < NEAR && UP_TO.test(text.slice(last.end, start)) ? last : undefined;
}

const ASKED = String.raw`(?:let (?:me|us) know|tell (?:me|us)|repl(?:y|ies)|respond|response|answer|confirm\w*|ok(?:ay)?|hear|know|decide|decision|quote|yes|word|shout|holler|ring|call|text|message)`;
/** "so I'd need to hear by then", "an answer before that would be helpful" */
const BY_THEN = new RegExp(
  String.raw`\b(?:${ASKED}\b[^.?!;\n]{0,40}?|so,? (?:ideally |hopefully |please )?)(?<!\p{L})(?:((?:by|until|till) then|by that (?:date|day)|(?:on )?that (?:same )?(?:day|date))|before (?:then|that|it(?=[.,;!?)\n]|$))|beforehand)(?!\p{L})`,
  'giu',
);
const REACH = 160;

/**
 * The day that "by then" or "before that" means, with its hour where it has one.
 * "Before that" needs an hour: without one the day itself may be too late.
 */
export function thenMeant({ text, dates, times }: Scene): { date: DateMention; time?: SaidTime } | undefined {
  for (const found of text.slice(0, LOOKED_THROUGH).matchAll(BY_THEN)) {
    const date = dates.findLast(({ end }) => end <= found.index + found[0].length);
    if (!date || date.past || date.readings.length !== 1 || date.readings[0]?.length !== 1) continue;
    // The only day of a message is the day of the job.
    if (!dates.some((other) => other !== date && !other.past)) continue;
    if (date.said === 'event' || date.said === 'call' || date.said === 'wrap' || found.index - date.end > REACH) continue;
    const time = times.find((one) => !one.to && (one.date === date || /^(?:,? (?:at )?)$/i.test(text.slice(date.end, one.start))));
    // "9 AM their time"
    if (time && /^,? \p{L}+ time\b/iu.test(text.slice(time.end, time.end + NEAR))) continue;
    if (time || found[1]) return { date, ...(time ? { time } : {}) };
  }
  return undefined;
}
const LOOKED_THROUGH = 6000;
