/**
 * Answers that are told by how long before another day they are wanted: "I print on 23 June and would like your answer the day before, by noon", "let me know two days earlier".
 */
import { numberWord } from '../words.ts';
import type { DateMention, SaidTime, Scene, Where } from './scene.ts';

/** What asks for an answer, and up to which day of another it asks. */
const EARLIER =
  /(?<!\p{L})(?:let (?:me|us) know|tell (?:me|us)|(?:get|come) back to (?:me|us)|repl(?:y|ies)|respond|response|answer|confirm\w*|hear|know|decision|quote|price|word|yes(?: or no)?|(need it|want it|have it))\b[^.?!;\n]{0,40}?\b(the|a|an?|one|two|three|four|[1-4]) (days?|weeks?) (?:before(?:hand)?|earlier|prior)(?! (?:the|our|my|your|his|her|their|we|you|it|he|she|they|a|an|\p{Lu}|\d))(?!\p{L})/giu;
/** A day further back than this is another story. */
const REACH = 160;
const LOOKED_THROUGH = 6000;
/** ", by noon" */
const HOUR = /^,? ?(?:(?:by|before|at|at the latest by|no later than) )?$/i;

export type Earlier = { on: string; where: Where[]; time: SaidTime | undefined };

/** The day by which an answer is wanted, counted back from the day named before it; with its hour where it has one. */
export function earlierThan({ text, dates, times }: Scene): Earlier | undefined {
  for (const found of text.slice(0, LOOKED_THROUGH).matchAll(EARLIER)) {
    const [words, thing, count = '', unit = ''] = found;
    const end = found.index + words.length;
    const from = dates.findLast((date: DateMention) => date.end <= end);
    const day = from?.readings[0]?.[0];
    if (!from || from.past || from.readings.length !== 1 || day === undefined || found.index - from.end > REACH) continue;
    // "I need it the day before" may be the film.
    if (thing !== undefined && from.said !== 'reply') continue;
    const many = /^the$/i.test(count) ? 1 : (numberWord(count.toLowerCase()) ?? Number(count));
    const on = Temporal.PlainDate.from(day).subtract({ days: many * (/^week/i.test(unit) ? 7 : 1) });
    const time = times.find((one) => !one.to && one.start >= end && HOUR.test(text.slice(end, one.start)));
    return { on: on.toString(), where: [from, { start: found.index, end }, ...(time ? [time] : [])], time };
  }
  return undefined;
}
