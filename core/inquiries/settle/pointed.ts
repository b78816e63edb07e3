/**
 * Which of several days is mine, where the sender says so.
 */
import { lineAround, lineStart, sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import { askedDays, consecutive, namedAmong } from './days-among.ts';
import type { DateMention, EventDays, Scene, Where } from './scene.ts';

/** A date of the occasion or the work, or of nothing in particular. */
export const isEvent = (mention: Pick<DateMention, 'said'>): boolean =>
  mention.said === undefined || mention.said === 'event' || mention.said === 'show';

/** Of several days the sender says which is mine: "the 22nd is the one I'd like you on", "THIS IS THE ONE WE NEED YOU FOR", "for 8 Jul it's photography", "so you're with us for the Tuesday". */
const POINTS = anyOf(`
  where you'd/you_would/you come in | is what i'm/we're asking | resolved to ask | offen ist | the one/ones we/i/that/you | this/that one is/for | is/are the one/ones | is where you/we | i'd/we'd like you on/for | need/want you on/for/there | you're/you_are/you'd_be/you_would_be with_us/on/needed/wanted | can/could/would/will you do/take/cover/make | for you it's/it_is | still open | is open | for you: | what i'm asking | i'm asking about | that is/that's you/yours
`);
/** "YOU + ME" in one row of several. */
const WITH_ME = /(?<!\b(?:not|without) )\b(?:you|u)\b(?! (?:don't|aren't|can't|won't))/i;
/** Days of a plan that are nobody's work. */
const MIXED = /\b(?:off|travel|ignore|fyi|confirmed|cancelled|only|home|rest|tbc|open|hold)\b/i;

/** The days narrowed to those that are pointed at; asked where a plan has days of nobody and none is pointed at. */
export function pointedAt(scene: Scene, candidates: readonly DateMention[], settled: EventDays): EventDays {
  const { text } = scene;
  const lineOf = (where: Where): string => {
    const line = lineAround(text, where);
    return text.slice(line.start, line.end);
  };
  const several = settled.doubt === 'several' && settled.choices.length > 1;
  const mixed =
    settled.dates.length > 2 &&
    candidates.length > 2 &&
    candidates.filter((one) => MIXED.test(lineOf(one))).length > 0 &&
    inRows(text, candidates);
  if (!several && !mixed) return settled;
  const known = candidates.flatMap(({ readings }) => (readings.length === 1 ? (readings[0] ?? []) : []));
  const chosen = new Set<string>();
  for (const mention of scene.dates) {
    if (mention.past || !(isEvent(mention) || mention.said === 'call')) continue;
    const sentence = sentenceAround(text, mention.start, mention.end);
    const around = text.slice(sentence.start, sentence.end);
    const row = lineOf(mention);
    if (!POINTS.test(around) && !(row.length < 160 && POINTS.test(row))) continue;
    for (const date of namedAmong(mention, known)) chosen.add(date);
  }
  const rows = chosen.size === 0 && inRows(text, candidates) ? candidates.filter((one) => WITH_ME.test(lineOf(one))) : [];
  const [row] = rows;
  if (row && rows.length === 1) for (const date of row.readings[0] ?? []) chosen.add(date);
  const dates = [...chosen].sort();
  if (dates.length > 0 && dates.length < new Set(known).size && consecutive(dates))
    return { dates, where: settled.where, choices: [], dropped: [...new Set(known)].filter((date) => !chosen.has(date)) };
  return mixed
    ? askedDays(
        settled.where,
        settled.dates.map((date) => [date]),
      )
    : settled;
}

/** True for dates of which three and more begin a line each. */
const inRows = (text: string, mentions: readonly DateMention[]): boolean =>
  mentions.filter(({ start }) => /^[\s\d\p{L}).:|-]{0,12}$/u.test(text.slice(lineStart(text, start), start))).length >= 3;
