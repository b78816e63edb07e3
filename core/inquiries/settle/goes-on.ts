/**
 * More days than the one that is named, told behind it in its sentence: "and again the day after", "plus the Sunday", "and play every night until the
 * Tuesday", "and takes the whole weekend". Both are asked about.
 */
import { weekdayWord } from '../words.ts';
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays, settledDay } from './days-among.ts';
import { numberOf } from './marks.ts';
import { runFrom } from './run.ts';
import type { EventDays, Scene } from './scene.ts';

const FAR = 130;
const LEAD = 60;
/** What stands so far behind says whether it is mine. */
const BEHIND = 40;
/** A date that stands so near behind a weekday is that weekday's. */
const NEAR = 12;
const WEEKDAY = String.raw`((?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?)`;
const NEXT = String.raw`((?:day|morning|afternoon|evening|night) (?:after(?:wards)?|following)|(?:next|following) (?:day|morning|afternoon|evening|night|one)|next)`;
/** Nothing more of the clause, or what only says that it counts as well. */
const ENDS = String.raw`(?=\s*(?:$|[.,;:!?)(]|too\b|as well\b|also\b|both\b|please\b|for\b|at\b|from\b|with you\b|same\b|in the (?:morning|afternoon|evening)\b|(?:morning|afternoon|evening|night|lunchtime|repeat)\b))`;
const AND = String.raw`(?:,|\band|\bplus|&|\bthen|\bwith|\bas well as|\bfollowed by|\binto)\s(?:(?:and|again|also|then|plus|once more|on|into|over|the same|same|again|for|an?|one|another|the|second|last|final|more|other|show|performance|concert|round|night|evening|day|session|service|talks?|prizes|workshops|finals?|[\p{L}-]+ for|(?:an?|the|our|his|her) (?:[\p{L}'’-]+ ){1,2}(?=the |on ))\s?){0,6}(?:that\s)?`;
const JOINED = new RegExp(String.raw`${AND}(?:${NEXT}|${WEEKDAY})\b${ENDS}`, 'iu');
/** "12 December, Saturday": the weekday behind a date is its own. */
const OWN = new RegExp(String.raw`^,?\s\(?(?:an?\s)?${WEEKDAY}\b\)?`, 'iu');
const UNTIL = new RegExp(
  String.raw`\b(?:until|till?|through|up to|(?:and|which|it|we) (?:ends?|finish(?:es)?|wraps? up|closes?|concludes?)(?: on)?|into|home(?: on)?)\s(?:on\s|and including\s)?(?:the\s)?(?:(?:last|night|evening|morning|end) of (?:the\s)?)?(?:${NEXT}|${WEEKDAY})\b`,
  'iu',
);
const RUNS =
  /\b(?:(?:the |takes? the |for the |takes? up the )?(?:whole|entire|rest of the|full) (?:of the |that )?(?:weekend|week)|(?:each|every) (?:day|night|evening|afternoon|morning) (?:of|until|till|that)\b|one a (?:day|night)|(?:a|and|then) day two|\bday (?:straight|right|directly) after|(?:again|once more|(?:the|an?) (?:last|second|other|next)(?: one)?|another(?: one)?) (?:a|an|one|two|three|[2-9]) (?:days?|weeks?|fortnight|months?) later|next (?:two|three|four|[2-4]) (?:mon|tues|wednes|thurs|fri|satur|sun)days|(?:daily|nightly)(?: after| until| till)|(?:two|three|four|five|six|seven|[2-7]) (?:days|nights|evenings|more days|more nights)(?: in a row| that follow| running)?(?! (?:before|after|notice|ago|ahead)))/iu;
/** "and all weekend", ", the whole weekend" */
const WEEKEND = new RegExp(
  String.raw`(?:,|\band|\bplus|&|\bthen)\s(?:over |for |also )?(?:all|the|all the|all of the)\sweekend\b${ENDS}`,
  'iu',
);
/** "and repeat it two weeks later", "unless we move it a week later", "and the one after", "part two the day after" */
const ANOTHER = new RegExp(
  String.raw`\b(?:repeat\p{L}*|(?:do|done|happens|held|on|it|in [\p{L}-]+) again|the same(?: again)?|(?:part|day|round) two|the second(?: one| part| half| show)?|another(?: one)?|once more|unless|mov(?:e|ed) it|(?:and|plus|&)(?: the one)?)\b[^.;!?\n\d]{0,24}?\s(?:a|the|one|two|three|four|[2-6])\s(?:days?|weeks?|fortnight|months?|one)\s(?:later|earlier|(?:after(?:wards)?|before(?:hand)?)(?: that| it)?)${ENDS}`,
  'iu',
);
const COUNT = /\b(two|three|four|five|six|seven|[2-7]) (?:days|nights|evenings)\b/i;
/** "The first of the three nights is" */
const FIRST_OF =
  /\bfirst of (?:the |our |these |all )?(two|three|four|five|six|seven|[2-7]) (?:days|nights|evenings|shows|sessions|concerts|dates)[^.;!?\n]{0,20}$/i;
/** "until the next morning", "till Sunday 2am": the night of the one day. */
const SMALL_HOURS = /^[^.;!?\n]{0,40}?(?:\bmorning\b|\b\d{1,2}(?:[:.]\d\d)?\s?a\.?m?\b|\b0\d[:.]?\d\d\b|\b(?:early|small) hours\b)/i;
/** "Both days of the tournament, starting", "the whole of the weekend that begins", "48 hours of gaming from noon on" */
const ALL_FROM =
  /\b(?:both (?:days|nights|evenings)|(?:all|each|every one) of (?:its|the) (?:days|nights|evenings)|whole (?:of the )?weekend|(?:24|36|48|72) hours)\b[^.;!?\n]*\b(?:start\w*|begin\w*|open\w*|from)\b[^.;!?\n]{0,20}$/i;
/** "On the eve there is a vigil to film, then the mass on" */
const EVE = /\b(?:on the eve|the (?:night|evening|day) before)\b[^.;!?\n]*\b(?:film|record|cover)\b[^.;!?\n]*$/i;
const BOTH = /\bboth\b/i;
const INTO = /\sinto\s/i;
const MORNING = 6 * 60;
/** What is done then without me, or that only the one day is wanted. */
const NOT_MINE =
  /\b(?:only|just|not|no|none|nobody|nothing|without|rest|sleep|home|leave|fly|drive|clear|clean\w*|strike|pack|take down|free|nephew|photographer|yours would|yours is|family|rain|weather|backup|back-up|either|or|instead|moved|edit|deliver\w*|post\w*|online|let (?:me|us) know|reply|answer|confirm|call|ring|every year)\b|n['’]t\b/i;

/** The days, or with those that are told beside the one as a question. */
export function heldAgainstWhatGoesOn({ text, dates, times }: Scene, event: EventDays): EventDays {
  const day = settledDay(event);
  const told = event.where.at(-1);
  if (day === undefined || !told) return event;
  const sentence = sentenceAround(text, told.start, told.end);
  const lead = text.slice(Math.max(sentence.start, told.start - LEAD), told.start);
  // "From 12 December into the Sunday" is the night of the first day, unless both are told.
  const into = BOTH.test(text.slice(told.end, sentence.end)) ? text.slice(told.start, told.end).search(INTO) : -1;
  const own = OWN.exec(text.slice(told.end, sentence.end));
  const behind = own && weekdayWord(own[1]?.toLowerCase() ?? '') === Temporal.PlainDate.from(day).dayOfWeek ? own[0].length : 0;
  const from = into < 0 ? told.end + behind : told.start + into;
  // "overnight Fri 18 June into Sat 19 June, out 11am Saturday": who is there in the morning works on both.
  const inTheMorning = times.some(
    ({ said, from: { minutes }, date }) => said === 'wrap' && date !== undefined && minutes >= MORNING && minutes < 1440,
  );
  if (INTO.test(text.slice(told.start, told.end)) && inTheMorning) return open(event, [day], runFrom(day, 2));
  const rest = text.slice(from, Math.min(from + FAR, sentence.end));
  const before = NOT_MINE.test(lead + rest) ? undefined : toldBefore(lead, day);
  if (before) return open(event, [day], ...before);
  const joined = JOINED.exec(rest);
  const hit = joined ?? UNTIL.exec(rest) ?? RUNS.exec(rest) ?? WEEKEND.exec(rest) ?? ANOTHER.exec(rest);
  if (!hit || NOT_MINE.test(rest.slice(0, hit.index + hit[0].length + BEHIND))) return event;
  const [next, weekday] = [hit[1], weekdayWord(hit[2]?.toLowerCase() ?? '')];
  // It goes on, and nothing says which days: they are as many as are counted.
  if (next === undefined && weekday === undefined) {
    const count = numberOf(COUNT.exec(rest)?.[1] ?? '');
    return open(event, [day], ...(count > 1 ? [runFrom(day, count)] : []));
  }
  const ahead = weekday === undefined ? 1 : (weekday - Temporal.PlainDate.from(day).dayOfWeek + 7) % 7;
  // Another date of its own stands there: the rules for several days have seen it.
  const at = from + hit.index;
  const another = dates.some(
    ({ start, end, explicit }) => explicit && start !== told.start && start < at + hit[0].length + NEAR && end > at,
  );
  if (ahead === 0 || another) return event;
  if (!joined && SMALL_HOURS.test(rest.slice(hit.index))) return event;
  const run = runFrom(day, ahead + 1);
  return open(event, [day], joined ? [day, run[ahead] as string] : run);
}

/** What is told of other days before the one: the days that it is one of, where they are known. */
function toldBefore(lead: string, day: string): string[][] | undefined {
  const count = FIRST_OF.exec(lead)?.[1];
  if (count !== undefined) return [runFrom(day, numberOf(count))];
  if (EVE.test(lead)) return [runFrom(Temporal.PlainDate.from(day).subtract({ days: 1 }).toString(), 2)];
  return ALL_FROM.test(lead) ? [] : undefined;
}

/** Which of these it is has to be asked, however sure the weights are of the day that is named. */
const open = ({ where }: EventDays, ...choices: string[][]): EventDays => askedDays(where, choices, 'open');
