/**
 * How long the work goes on from its call, where that is told in hours beside it: "ten hours from 8", "from two for four hours".
 * A length that is told roughly ("about six hours", "4-5 hours") tells no end, nor does one that is rather what a day's rate is for ("10 hour day").
 */
import { sentenceAround } from '../parts/sentences.ts';
import { numberWord } from '../words.ts';
import type { Where } from './scene.ts';

const NUMBER = String.raw`(\d{1,2}(?:[.,]5)?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)( and a half)?`;
const HOURS = String.raw`${NUMBER}(?: |-)?(?:hours?|hrs?|h)(?![\p{L}\d])`;
const ROUGHLY =
  /\b(?:about|around|roughly|approx\.?|maybe|circa|ca\.?|up to|at least|at most|minimum|min|max|some|or so|between|under|over|less|more)\b|~|\d ?(?:-|–|to|or) ?\d/i;
/** Right before the hour: "ten hours from", "six hours of filming, beginning at" */
const BEFORE = new RegExp(
  String.raw`(?:^\s*|[.;:!?\n(]\s*|,\s|\b(?:for|an?|it's|it is|is|be|need|want|you|just|only|say|and)\s)${HOURS}(?: (?:of )?(?:filming|coverage|shooting|recording|work|video))?(?: on site)?,? (?:say,? )?(?:starting|beginning|commencing|from|starts?|begins?)(?: (?:at|from))? $`,
  'iu',
);
/** Right behind it: " for four hours", " and for six hours" */
const BEHIND = new RegExp(
  String.raw`^,? (?:and )?for ${HOURS}(?: (?:of )?(?:filming|coverage|shooting|recording|work))?(?=\s?(?:[.,;:!?)\n]|$|(?:and|with|please|in all|all told)\b))`,
  'iu',
);
/** Less is a part of the day, and more no day's work. */
const [SHORTEST, LONGEST] = [2 * 60, 14 * 60];
const REACH = 80;

/** The minutes for which the work goes on from an hour by the words beside it, and where those stand. */
export function lastsFor(text: string, { start, end }: Where): { minutes: number; where: Where } | undefined {
  const sentence = sentenceAround(text, start, end);
  const lead = text.slice(Math.max(sentence.start, start - REACH), start);
  const tail = text.slice(end, Math.min(sentence.end, end + REACH));
  const before = BEFORE.exec(lead);
  const found = before ?? BEHIND.exec(tail);
  if (!found || ROUGHLY.test(`${lead.slice(-REACH / 2)} ${tail.slice(0, REACH / 2)}`)) return undefined;
  const [, count = '', half] = found;
  const hours = numberWord(count.toLowerCase()) ?? Number(count.replace(',', '.'));
  const minutes = (hours + (half ? 0.5 : 0)) * 60;
  const from = before ? start - before[0].length : end;
  const at = from + found[0].search(new RegExp(HOURS, 'iu'));
  const where = { start: at, end: from + found[0].trimEnd().length };
  return minutes >= SHORTEST && minutes <= LONGEST ? { minutes, where } : undefined;
}
