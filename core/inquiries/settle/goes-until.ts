/**
 * Days of a run of which only is told until when something goes on then: "Friday and Saturday nights go until 1am", "on Friday the bar stays open
 * until 1am", "the last session on Friday ends at one". That says nothing of which days are mine.
 */
import type { DateMention } from './scene.ts';

const UNTIL_THEN =
  /^(?:'s)?(?: nights?| evenings?)?(?: (?:the|our|its) [\p{L}-]+(?: [\p{L}-]+)?)? (?:go(?:es)?(?: on)?|runs?(?: on)?|stays? open|(?:is|are) open|lasts?|carr(?:y|ies) on|ends?|finish(?:es)?|closes?)(?: late)? (?:until|till?|at|by|around)\b/iu;
/** The sentence goes on with me: "Friday ends at one, so come for the Thursday". */
const OF_ME = /\b(?:you|your|u|we (?:need|want)|so|only|just|film\w*|camera|record\w*)\b/i;
const REST = 90;

/** True for a weekday of which nothing else is told. */
export function goesUntil(text: string, { start, end, weekdayOnly }: DateMention): boolean {
  if (!weekdayOnly) return false;
  const sentence = text.slice(end, end + REST).split(/[.;!?\n]/)[0] ?? '';
  const lead =
    text
      .slice(Math.max(0, start - REST), start)
      .split(/[.;!?\n]/)
      .at(-1) ?? '';
  return UNTIL_THEN.test(sentence) && !OF_ME.test(lead) && !OF_ME.test(sentence);
}
