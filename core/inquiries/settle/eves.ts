/**
 * The evening before, told with its date: "the crew meeting is the evening before the start, Jan 29 at 6 pm", "we build up on the evening before, so Thursday, 9 September".
 * I come then, and it is no day of the occasion, where it is for setting up or for being told things; a dinner that is filmed is asked about.
 */
import { sentenceAround } from '../parts/sentences.ts';
import type { DateMention } from './scene.ts';

const DAY_BEFORE =
  /\b(?:day|night|nite|evening|afternoon|morning) before(?: (?:the |it|that|our |everything )?(?:start|event|race|wedding|show|opening|day|party|first day|kick-?off)?)?,?\s?[(–:-]?\s?(?:so |i\.e\. |that is |that's |which is |on |the )*$/i;
const PREPARES =
  /\b(?:set(?:s|ting)?[- ]?up|load(?:s|ing)?[- ]?in|rigs?|rigging|builds?|install\w*|rehears\w*|run-?through|get-?in|fit-?up|bump-?in|walk-?through|sound ?check|briefings?|(?:crew|team|safety|production) meeting|recce)\b/i;
const FILMED_TOO = /\b(?:also|as well|too|both)\b|\b(?:film|record|cover|captur)\w*\b/i;
const LEAD = 60;

/** The dates without the evenings before one of them on which things are only made ready. */
export const withoutEves = (text: string, mentions: readonly DateMention[]): DateMention[] => {
  const firsts = new Set(mentions.flatMap(({ explicit, readings }) => (explicit && readings.length === 1 ? (readings[0]?.[0] ?? []) : [])));
  return mentions.filter(({ explicit, readings, start, end }) => {
    const [day, ...more] = readings.length === 1 ? (readings[0] ?? []) : [];
    if (!explicit || day === undefined || more.length > 0 || !firsts.has(Temporal.PlainDate.from(day).add({ days: 1 }).toString()))
      return true;
    if (!DAY_BEFORE.test(text.slice(Math.max(0, start - LEAD), start))) return true;
    const sentence = sentenceAround(text, start, end);
    const said = text.slice(sentence.start, sentence.end);
    return !PREPARES.test(said) || FILMED_TOO.test(said);
  });
};
