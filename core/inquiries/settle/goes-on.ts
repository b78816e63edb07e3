/**
 * More days than the one that is named, told behind it in its sentence: "and again the day after", "plus the Sunday", "and play every night until the
 * Tuesday", "and takes the whole weekend". Both are asked about.
 */
import { numberWord } from '../words.ts';
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const FAR = 130;
const LEAD = 60;
const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
const WEEKDAY = String.raw`(mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?`;
const NEXT = String.raw`((?:day|morning|afternoon|evening|night) (?:after(?:wards)?|following)|(?:next|following) (?:day|morning|afternoon|evening|night|one)|next)`;
/** Nothing more of the clause, or what only says that it counts as well. */
const ENDS = String.raw`(?=\s*(?:$|[.,;:!?)(]|too\b|as well\b|also\b|both\b|please\b|for\b|at\b|from\b|with you\b|same\b|(?:morning|afternoon|evening|night|lunchtime|repeat)\b))`;
const AND = String.raw`(?:,|\band|\bplus|&|\bthen|\bwith|\bas well as|\bfollowed by|\binto)\s(?:(?:and|again|also|then|plus|once more|on|into|over|the same|same|again|for|an?|one|another|the|second|last|final|more|other|show|performance|concert|round|night|evening|day|session|service|talks?|prizes|workshops|finals?|[\p{L}-]+ for|(?:an?|the|our|his|her) (?:[\p{L}'’-]+ ){1,2}(?=the |on ))\s?){0,6}(?:that\s)?`;
const JOINED = new RegExp(String.raw`${AND}(?:${NEXT}|${WEEKDAY})\b${ENDS}`, 'iu');
const UNTIL = new RegExp(
  String.raw`\b(?:until|till?|through|up to|(?:and|which|it|we) (?:ends?|finish(?:es)?|wraps? up|closes?|concludes?)(?: on)?|into|home(?: on)?)\s(?:on\s|and including\s)?(?:the\s)?(?:(?:last|night|evening|morning|end) of (?:the\s)?)?(?:${NEXT}|${WEEKDAY})\b`,
  'iu',
);
const RUNS =
  /\b(?:(?:the |takes? the |for the |takes? up the )?(?:whole|entire|rest of the|full) (?:of the |that )?(?:weekend|week)|(?:each|every) (?:day|night|evening|afternoon|morning) (?:of|until|till|that)\b|one a (?:day|night)|(?:a|and|then) day two|next (?:two|three|four|[2-4]) (?:mon|tues|wednes|thurs|fri|satur|sun)days|(?:daily|nightly)(?: after| until| till)|(?:two|three|four|five|six|seven|[2-7]) (?:days|nights|evenings|more days|more nights)(?: in a row| that follow| running)?(?! (?:later|before|after|notice|ago|ahead)))/iu;
const COUNT = /\b(two|three|four|five|six|seven|[2-7]) (?:days|nights|evenings)\b/i;
/** "The first of the three nights is" */
const FIRST_OF =
  /\bfirst of (?:the |our |these |all )?(two|three|four|five|six|seven|[2-7]) (?:days|nights|evenings|shows|sessions|concerts|dates)[^.;!?\n]{0,20}$/i;
/** "until the next morning", "till Sunday 2am": the night of the one day. */
const SMALL_HOURS = /^[^.;!?\n]{0,40}?(?:\bmorning\b|\b\d{1,2}(?:[:.]\d\d)?\s?a\.?m?\b|\b0\d[:.]?\d\d\b|\b(?:early|small) hours\b)/i;
/** What is done then without me, or that only the one day is wanted. */
const NOT_MINE =
  /\b(?:only|just|not|no|none|nobody|nothing|without|rest|sleep|home|leave|fly|drive|clear|clean\w*|strike|pack|take down|free|nephew|photographer|yours would|yours is|family|rain|weather|backup|back-up|either|or|instead|moved|edit|deliver\w*|post\w*|online|let (?:me|us) know|reply|answer|confirm|call|ring|every year)\b|n['’]t\b/i;

/** The days, or with those that are told behind the one as a question. */
export function heldAgainstWhatGoesOn({ text, dates }: Scene, event: EventDays): EventDays {
  const [day] = event.dates;
  const told = event.where.at(-1);
  if (event.dates.length !== 1 || day === undefined || !told || event.dropped || event.counted) return event;
  const rest = text.slice(told.end, Math.min(told.end + FAR, sentenceAround(text, told.start, told.end).end));
  const found = JOINED.exec(rest) ?? UNTIL.exec(rest);
  const runs = found ? null : RUNS.exec(rest);
  const hit = found ?? runs;
  const first = FIRST_OF.exec(text.slice(Math.max(0, told.start - LEAD), told.start))?.[1];
  if (first !== undefined && !NOT_MINE.test(rest))
    return askedDays(event.where, [[day], upTo(Temporal.PlainDate.from(day), countOf(first) - 1)]);
  if (!hit || NOT_MINE.test(rest.slice(0, hit.index + hit[0].length + 40))) return event;
  const from = Temporal.PlainDate.from(day);
  if (!found) {
    const count = COUNT.exec(rest)?.[1];
    const length = count === undefined ? 0 : countOf(count);
    return length > 1 ? askedDays(event.where, [[day], upTo(from, length - 1)]) : askedDays(event.where, [[day]]);
  }
  const weekday = found.slice(1).find((word) => word !== undefined && WEEKDAYS.includes(word.slice(0, 3).toLowerCase()));
  const ahead = weekday === undefined ? 1 : (WEEKDAYS.indexOf(weekday.slice(0, 3).toLowerCase()) + 1 - from.dayOfWeek + 7) % 7;
  // Another date of its own stands there: the rules for several days have seen it.
  const at = told.end + found.index;
  if (ahead === 0 || dates.some(({ start, end, explicit }) => explicit && start < at + found[0].length + 12 && end > at)) return event;
  const joined = JOINED.test(rest);
  if (!joined && SMALL_HOURS.test(rest.slice(found.index))) return event;
  return askedDays(event.where, [[day], joined ? [day, from.add({ days: ahead }).toString()] : upTo(from, ahead)]);
}

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
  const nextDay = Temporal.PlainDate.from(first).add({ days: 1 }).toString() === second;
  const ofElse = (OWN_CLAUSE.test(words) && WE_DO.test(rest)) || (nextDay && TILL_DAY.test(words) && AT_NIGHT.test(rest));
  return ofElse ? askedDays(event.where, [[first], [first, second]], 'open') : event;
}

const countOf = (word: string): number => numberWord(word.toLowerCase()) ?? Number(word);
const upTo = (from: Temporal.PlainDate, days: number): string[] =>
  Array.from({ length: days + 1 }, (_, more) => from.add({ days: more }).toString());
