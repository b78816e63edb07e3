/**
 * "The hall has given us two dates, the 25th and the 4th", "one evening only": dates of which one will be the day, and nobody says yet which.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import { askedDays } from './days-among.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

/** Dates that somebody holds out to be chosen from. */
const GIVEN = anyOf(
  `
  {gave} us/me? {some} {free}? dates/days/options/possibilities/evenings/weekends | {some} {free} dates/days/options/possibilities/evenings/weekends | {some} dates/days/options/evenings/weekends ... {open} | {some} dates/days/options {gave}
`,
  {
    gave: `given | offered | suggested | proposed | gave | offers | suggests`,
    some: `two | three | a couple of | a choice of two | a choice of three | several | 2 | 3`,
    free: `possible | free | available | potential | alternative | provisional`,
    open: `on the table | to choose from | in mind | under discussion | still open | are possible | are free | are available | are on offer | up for grabs`,
  },
);
/** The day is one, however many are named. */
const ONE_ONLY =
  /\b(?:only|just) (?:one|a single) (?:evening|day|night|afternoon|morning)\b|\bit(?:'s| is| will be|'ll be) (?:only |just )?(?:one|a single) (?:evening|day|night|afternoon|morning)\b(?! (?:a|per|each|every|of)\b)/i;
/** Said in the sentence of the days. */
const ONLY_ONE = /\b(?:one|a single) (?:evening|day|night|afternoon|morning|date) only\b/i;
const ALL_OF_THEM = /\b(?:both|all (?:two|three|of them)|each of (?:them|these|those))\b(?! (?:free|available|possible|open)\b)/i;

/** The days that were settled, or each of them as a question where they were only given to choose from. */
export function heldAgainstGiven({ text, dates }: Scene, event: EventDays): EventDays {
  const told = dates.filter(({ start }) => event.where.some((one) => one.start === start));
  if (event.dates.length < 2 || event.dropped || event.counted || told.length === 0) return event;
  const last = told.at(-1) as DateMention;
  const behind = text.slice(last.end, sentenceAround(text, last.start, last.end).end);
  if (!ONE_ONLY.test(text) && !ONLY_ONE.test(behind.split(';')[0] ?? '') && (!GIVEN.test(text) || ALL_OF_THEM.test(text))) return event;
  return askedDays(event.where, told.length > 1 ? told.flatMap(({ readings }) => readings) : event.dates.map((day) => [day]), 'open');
}
