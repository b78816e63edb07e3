/**
 * A call of several days that names no day, in a sentence that speaks of a later one before it: "the race on Saturday is at 9 and you'd be there from 7".
 * It is hardly that of the first day.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { namedAmong } from './days-among.ts';
import type { Scene, Where } from './scene.ts';

/** Of every day after all. */
const EVERY = /\b(?:both|each|every|all|daily|first|friday to|to (?:mon|tues|wednes|thurs|fri|satur|sun)day)\b/i;

/** True where only a later one of the days is named before an hour in its sentence. */
export function ofLaterDay({ text, dates }: Scene, hour: Where, days: readonly string[]): boolean {
  const [first] = days;
  if (
    first === undefined ||
    days.length < 2 ||
    ('date' in hour && hour.date !== undefined) ||
    ('nthDay' in hour && hour.nthDay !== undefined)
  )
    return false;
  const sentence = sentenceAround(text, hour.start, hour.end);
  if (EVERY.test(text.slice(sentence.start, sentence.end))) return false;
  const named = dates.filter(({ start, end }) => start >= sentence.start && end <= hour.start);
  return (
    named.length > 0 &&
    named.every((mention) => {
      const among = namedAmong(mention, days);
      return !mention.by && among.length === 1 && among[0] !== first;
    })
  );
}
