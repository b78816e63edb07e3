/**
 * An end that is told from another hour: "the whole thing ends at 10 with an hour for the get-out", "music stops at 7, you're finished half an hour later".
 */
import { sentenceAround } from '../parts/sentences.ts';
import type { Scene, Where } from './scene.ts';

const AFTER =
  /\b(a quarter of an|three quarters of an|half an|an hour and a half|an?|one|two|three|\d{1,3}|fifteen|twenty|thirty|forty-?five|ninety) ?(?:good |full )?(hours?|hrs?|minutes?|mins?)? (?:later|after(?:wards)?\b(?! (?:the|we|you|that|lunch))|for (?:the |your )?(?:get-?out|de-?rig|strike|pack(?:ing)?(?:[- ](?:up|down))?|load-?out|tear-?down|clear(?:ing)?[- ]?up)|to (?:pack|strike|coil|de-?rig|clear|load out|get out|tear down|wrap up)\b)/gi;
/** "pack up an hour after we close at" */
const BEFORE_END =
  /\b(a quarter of an|three quarters of an|half an|an?|one|two|three|\d{1,3}|fifteen|twenty|thirty|forty-?five|ninety) ?(hours?|hrs?|minutes?|mins?)? (?:after|past|from when|later than) (?:(?:it|we|they|that|everything|(?:the )?(?:[\p{L}'’-]+ ){1,3})(?: \p{L}+)? ?){0,2}(?:at|about|around) $/iu;
/** "and the load-out takes an hour" */
const TAKES =
  /\b(?:load-?out|get-?out|de-?rig(?:ging)?|strike|striking|packing(?: (?:up|down))?|pack-?down|tear-?down|clearing (?:up|out))(?: then)? (?:takes|will take|would take|should take|lasts|needs|will need)(?: (?:you|us|about|around|roughly|another|a further)){0,2} (a quarter of an|three quarters of an|half an|an hour and a half|an?|one|two|three|\d{1,3}|fifteen|twenty|thirty|forty-?five|ninety) ?(hours?|hrs?|minutes?|mins?)?/gi;
const LEAD = 80;
const sizes = new Map([
  ['a quarter of an', 0.25],
  ['half an', 0.5],
  ['three quarters of an', 0.75],
  ['a', 1],
  ['an', 1],
  ['one', 1],
  ['an hour and a half', 1.5],
  ['two', 2],
  ['three', 3],
  ['fifteen', 15],
  ['twenty', 20],
  ['thirty', 30],
  ['forty-five', 45],
  ['fortyfive', 45],
  ['ninety', 90],
]);
const LONGEST_AFTER = 3 * 60;

/** The minutes after an end at which I am done; nothing where no such words follow it in its sentence or another end does. */
export function laterBy({ text, times }: Scene, end: Where): number | undefined {
  const sentence = sentenceAround(text, end.start, end.end);
  if (times.some((time) => time.start > end.start && time.start < sentence.end && (time.said === 'wrap' || time.said === undefined)))
    return undefined;
  const lead = BEFORE_END.exec(text.slice(Math.max(sentence.start, end.start - LEAD), end.start));
  for (const [, size = '', unit = ''] of [
    ...(lead ? [lead] : []),
    ...[AFTER, TAKES].flatMap((pattern) => [...text.slice(end.end, sentence.end).matchAll(pattern)]),
  ]) {
    const count = sizes.get(size.toLowerCase()) ?? Number(size);
    if (unit === '' && !/hal[fv]|hour/i.test(size)) continue;
    const minutes = /^m/i.test(unit) ? count : count * 60;
    if (minutes > 0 && minutes <= LONGEST_AFTER) return minutes;
  }
  return undefined;
}
