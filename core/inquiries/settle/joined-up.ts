/**
 * Dates that are told one after another and are all of the job: in one list, in rows, or as many of them as are counted.
 */
import { lineStart, sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import { numberWord } from '../words.ts';
import { consecutive, union } from './days-among.ts';
import type { DateMention, Where } from './scene.ts';

/** "DAY 1 | Fri 18 June | ...", one line for each day: what stands before the dates is the same but for its numbers. */
function inTable(text: string, sets: readonly DateMention[]): boolean {
  const lines = sets.map(({ start }) => text.slice(lineStart(text, start), start).toLowerCase());
  const rows = new Set(sets.map(({ start }) => lineStart(text, start)));
  const shapes = new Set(lines.map((line) => line.replace(/\d+|\b(?:one|two|three|four|five)\b/g, '#').replace(/\s+/g, ' ')));
  return rows.size === sets.length && shapes.size === 1 && !/\b(?:or|option|either|choice|alternative)\b/.test(lines.join(' '));
}

/** "a birthday on the 3rd and an anniversary on the 10th": two things, of which one may be asked. */
const TWO_OCCASIONS = /\band (?:an?|the|his|her|their|our) (?:[\p{L}'-]+\s){1,4}on (?:the )?$/iu;
const AN_OCCASION = /\ban? (?:[\p{L}'-]+\s){1,3}on (?:the )?$/iu;

/** "we open on 1 June and the party is": what has a verb of its own is another thing. */
const OWN_CLAUSE = /\band (?:the|our|my|a|an|its|their)\s[^.;,]{1,40}\b(?:is|are|will be|starts?|begins?|opens?|falls|on)\b/i;

/** "October 1; October 8; October 15" */
const LISTED = /^\s?[;,]\s(?:(?:and|&|\+)\s)?$/;
/** "Possible dates: 5 May; 12 May" */
const MAY_BE =
  /\b(?:possible|potential|candidate|proposed|suggested|consider\w*|options?|prefer\w*|could|might|may be|alternat\w+|available)\b/i;

/** Dates in one list, one below the other or with their own labels: all of them are meant. */
export function joinedUp(text: string, sets: readonly DateMention[]): boolean {
  if (inTable(text, sets) && !/\b(?:or|either|option|options)\b/i.test(text.slice(sets[0]?.start ?? 0, sets.at(-1)?.start ?? 0)))
    return true;
  const first = sets[0]?.start ?? 0;
  return sets.every((mention, at) => {
    const previous = sets[at - 1];
    if (!previous) return true;
    const between = text.slice(previous.end, mention.start);
    return (
      between.length <= 160 &&
      (mention.readings[0]?.[0] ?? '') >= (previous.readings[0]?.[0] ?? '') &&
      !(TWO_OCCASIONS.test(between) && AN_OCCASION.test(previous.before)) &&
      !/\b(?:or|options?|alternatively|otherwise|instead|not|if|failing|backup|reserve|rain|originally|was|(?:may|might) (?:also|even|well))\b/i.test(
        between,
      ) &&
      (/^,? (?:too|as well|also)\b/i.test(text.slice(mention.end, mention.end + 10)) ||
        /^\s?\([^()\n]{2,40}\)[,;]?\s(?:and\s)?$|^\s\p{Lu}[^\d.;!?,\n]{1,40},\s$/u.test(between) ||
        /^\s(?:u\.?|und|et|y|e|en|og|och|&|\+)\s(?:\p{L}{2,10}[.,]{0,2}\s)?(?:den\s|am\s|le\s|el\s|de\s)?$/iu.test(between) ||
        (LISTED.test(between) && !MAY_BE.test(text.slice(lineStart(text, first), first))) ||
        /^[^\n]{0,80}\n\s{0,4}(?:[-+]|\d[.)]|day \w+|and)?\s{0,3}(?:[\p{L} ]{0,24}:)?\s{0,3}$/iu.test(between) ||
        (/\b(?:and|then|plus|also|again|as well as|second|followed by)\b[^.;!?]{0,40}$/i.test(between) &&
          (!OWN_CLAUSE.test(between) || consecutive(union(previous.readings[0] ?? [], mention.readings[0] ?? [])))))
    );
  });
}

const COUNTED = anyOf(
  `{count} ... {things} | all {count} {things} | for all {count} | all {count} of them | both {things}`,
  {
    count: `two | three | four | five | six | 2 | 3 | 4 | 5 | 6`,
    things: `days | dates | evenings | nights | mornings | afternoons | events | things | gigs | jobs | shoots | concerts | shows | sessions | ceremonies | visits | occasions | matches | keynotes | talks | weddings | functions | performances | lectures | parties | filmed | recorded | covered | streamed`,
  },
  'gi',
);
/** What is counted is asked of me. */
const ASKED = anyOf(`
  film* | record* | stream* | livestream* | shoot | cover | covered | camera* | videographer | you free/available | are you ... free/available | both/all filmed/recorded/covered/streamed | needed/wanted for
`);
const OPEN =
  /\b(?:or|either|option|options|alternatively|otherwise|instead|not|backup|reserve|rain|(?<!\bin \p{L}{2,20} )only|just|one of|could be|depends|sorted|already|haven't)\b/iu;

/** "two things filmed: on Tuesday 4 May ..., then on Thursday 6 May": of which there are as many days as are counted. */
export function allCounted(text: string, sets: readonly DateMention[]): boolean {
  const [first, last] = [sets[0], sets.at(-1)];
  if (!first || !last || sets.length < 2 || sets.some(({ readings: [days = [], ...more] }) => days.length === 0 || more.length > 0))
    return false;
  if (OPEN.test(text.slice(Math.max(0, first.start - LEAD), last.end + LEAD))) return false;
  const lists = sets.flatMap(({ readings }) => readings);
  const days = union(...lists).length;
  // A day that is told once more is pointed at.
  if (days < lists.flat().length) return false;
  return [...text.slice(0, LOOKED_THROUGH).matchAll(COUNTED)].some(({ index, 0: words }) => {
    const [, count = ''] = /^(?:for )?(?:all )?(\w+)/i.exec(words) ?? [];
    // "We want day 2 filmed" counts nothing.
    if (A_NUMBER.test(text.slice(Math.max(0, index - LEAD), index))) return false;
    const number = /^both$/i.test(count) ? 2 : (numberWord(count.toLowerCase()) ?? Number(count));
    const { start, end } = sentenceAround(text, index, index + words.length);
    return number === days && ASKED.test(text.slice(start, end));
  });
}
/** "We would need you on Saturday 12 December and again the day after" */
const WANTS_ON = /\b(?:need|want|like|book|hire) you (?:there |here |with us |both )?(?:for |on )(?:the )?$/i;
const AND_AGAIN = /^,? (?:and|&|plus)(?: then)?(?: again)?(?: on)?(?: the)? $/i;

const AND = / (?:and|&|plus) /i;
/** "and the 13th is for the clean-up", "and the day after if it rains" */
const ELSE_THEN = /^,? (?:is|are|was|will|would|may|might|if|unless|maybe|perhaps|possibly)\b/i;

/** True where I am asked for on days that are told in one breath, in one mention or in several, and on no choice of them. */
export function wantedTogether(text: string, where: readonly Where[]): boolean {
  const told = where.toSorted((a, b) => a.start - b.start);
  const [first, last] = [told[0], told.at(-1)];
  if (!first || !last || !WANTS_ON.test(text.slice(Math.max(0, first.start - LEAD), first.start))) return false;
  const joined =
    first === last
      ? AND.test(text.slice(first.start, first.end))
      : told.slice(1).every(({ start }, at) => AND_AGAIN.test(text.slice(told[at]?.end, start)));
  const rest = sentenceRest(text, last.end);
  return joined && !ELSE_THEN.test(rest) && !OPEN.test(rest);
}
const sentenceRest = (text: string, from: number): string => text.slice(from, Math.min(from + LEAD, sentenceAround(text, from, from).end));

const A_NUMBER = /\b(?:day|part|round|show|session|date|game|match|no\.?|number) $/i;
const LEAD = 40;
const LOOKED_THROUGH = 6000;
