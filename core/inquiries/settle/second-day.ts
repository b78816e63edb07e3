/**
 * A second day that may only be when somebody does something else, or when the night of the first one ends: both are asked about.
 */
import { askedDays } from './days-among.ts';
import { runFrom } from './run.ts';
import type { EventDays, Scene } from './scene.ts';

const FAR = 130;
/** "Saturday 12 December, and on Monday we all go home": a weekday that begins a clause of its own. */
const OWN_CLAUSE = /\band (?:on )?(?:the )?\p{L}+day$/iu;
const WE_DO =
  /^ (?:we|i|they|he|she|everyone|everybody|people)\b(?![^.;!?\n]*\b(?:film\w*|record\w*|shoot\w*|cover\w*|stream\w*|want|need|you|also|too|again|both)\b)/i;
/** "on Saturday 12 December from 8pm till Sunday 2am": the night of the one day. */
const TILL_DAY = /\d[^;!?\n]*(?:till?|until|to|[-–])\s[^;!?\n]{2,24}$/i;
const AT_NIGHT = /^,? (?:at )?(?:0?[1-5](?:[:.]\d\d)? ?a\.?m?\b|0[1-5][:.]\d\d\b)/i;

/** Two days, or with the first of them alone as a question where the second may only be when somebody does something else or a night ends. */
export function heldAgainstTheSecond({ text }: Scene, event: EventDays): EventDays {
  const [first, second] = event.dates;
  const told = event.where.at(-1);
  if (event.dates.length !== 2 || first === undefined || second === undefined || !told || event.dropped || event.counted) return event;
  const [words, rest] = [text.slice(told.start, told.end), text.slice(told.end, told.end + FAR)];
  const ofElse =
    (OWN_CLAUSE.test(words) && WE_DO.test(rest)) || (runFrom(first, 2)[1] === second && TILL_DAY.test(words) && AT_NIGHT.test(rest));
  return ofElse ? askedDays(event.where, [[first], [first, second]], 'open') : event;
}
