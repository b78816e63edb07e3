/**
 * Days of a run that somebody else films, and weekends of several of which one is mine: "we've an operator for the Tuesday",
 * "our usual cameraman takes the first and the last". The days are asked about.
 */
import { weekdayWord } from '../words.ts';
import { askedDays } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const WHO = String.raw`(?:camera\p{L}*(?: (?:man|woman|person|op\p{L}*))?|operator|op|videographer|shooter|filmmaker|editor|colleague|brother|sister|friend|mate|cousin|son|daughter|husband|wife|dad|someone|somebody|student|guy|lad)`;
const DAY = String.raw`(?:the )?(first|second|last|mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?(?!\p{L})`;
/** "we've an operator for the Tuesday" */
const HAVE = new RegExp(
  String.raw`\b(?:we|i)(?:'ve| have)(?: already)?(?: got)? (?:an?|my|our|another)?\s?(?:\p{L}+ )?${WHO} (?:on|for) ${DAY}`,
  'giu',
);
/** "My brother is filming the Saturday", "our usual cameraman takes the first" */
const TAKES = new RegExp(
  String.raw`\b(?:my|our|their|his|her|the|an?) (?:\p{L}+ ){0,2}${WHO} (?:(?:is|was|will be) )?(?:film\p{L}*|tak(?:es|ing)|do(?:es|ing)|cover(?:s|ing)|shoot(?:s|ing)|has|handl\p{L}*|record\p{L}*) (?:on |for )?${DAY}`,
  'giu',
);
const WEEKEND =
  /\b(?:first|second|third|middle|last|other) (?:one|weekend) (?:only|alone|is (?:yours|for you|what)|would be yours)\b|\b(?:only|just) (?:for )?the (?:first|second|third|middle|last) weekend\b/iu;
const LOOKED_THROUGH = 6000;

/** The days, or those that are left to me as a question beside all of them. */
export function heldAgainstSomebodyElse({ text }: Scene, event: EventDays): EventDays {
  if (event.dates.length < 2 || event.dropped) return event;
  const front = text.slice(0, LOOKED_THROUGH);
  const runs = runsOf(event.dates);
  if (runs.length > 1 && runs.length < event.dates.length && WEEKEND.test(front)) return askedDays(event.where, [...runs, event.dates]);
  const theirs = [...front.matchAll(HAVE), ...front.matchAll(TAKES)].map(([, word = '']) => word.toLowerCase());
  if (theirs.length === 0) return event;
  const rest = event.dates.filter(
    (date, at) =>
      !theirs.some(
        (word) =>
          (word === 'first' && at === 0) ||
          (word === 'second' && at === 1) ||
          (word === 'last' && at === event.dates.length - 1) ||
          weekdayWord(word.slice(0, 3)) === Temporal.PlainDate.from(date).dayOfWeek,
      ),
  );
  return rest.length === event.dates.length || rest.length === 0 ? event : askedDays(event.where, [rest, event.dates]);
}

/** Days that follow each other, together. */
function runsOf(dates: readonly string[]): string[][] {
  const runs: string[][] = [];
  for (const date of dates) {
    const last = runs.at(-1);
    if (last && Temporal.PlainDate.from(last.at(-1) as string).until(Temporal.PlainDate.from(date)).days === 1) last.push(date);
    else runs.push([date]);
  }
  return runs;
}
