/**
 * Dates that are counted off and are all of the job: "part one is on 14 November and part two on the 28th", "Day 1: ... Day 2: ...", "first show ... second show ...",
 * "once on the 14th, once on the 28th". What is counted off to choose from, an option or a first choice, is none.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { numberWord, ordinalWord } from '../words.ts';
import type { DateMention } from './scene.ts';

const THING = String.raw`(?:filming |shooting |shoot )?(?:parts?|days?|dates?|sessions?|shoots?|shows?|rounds?|legs?|events?|concerts?|performances?|games?|matches|match|jobs?|evenings?|nights?|sittings?|visits?|weekends?|halves|half|recitals?|talks?|lectures?|ceremony|stages?|heats?)`;
const TO_DAY = String.raw`(?:,? (?:is|it is|it's|will be|takes place|happens|follows))?(?: on)?\s?[:=(–-]?\s?(?:the )?(?:on )?(?:\p{L}{2,9}day,? (?:the )?)?$`;
const NUMBERED = new RegExp(
  String.raw`(?<!\p{L})(?<thing>${THING}) (?:no\.? |number |#)?(?<count>\d|one|two|three|four|five|six|i{1,3}|iv)${TO_DAY}`,
  'iu',
);
const NTH = new RegExp(
  String.raw`(?<!\p{L})(?<count>first|second|third|fourth|fifth|1st|2nd|3rd|4th|5th)(?: (?<thing>${THING}|one|of them))${TO_DAY}`,
  'iu',
);
const ONCE = /(?<!\p{L})(?:once|one|another|the other|again)(?: one)?(?: is| will be)? on (?:the )?(?:\p{L}{2,9}day,? (?:the )?)?$/iu;
const TO_CHOOSE =
  /\b(?:or|options?|choices?|alternativ\p{L}*|otherwise|instead|not|if|failing|backup|reserve|rain|originally|was|either|possible|potential|proposed|suggested|prefer\p{L}*|could|might|may be|available|poll|vote|deadline|draft|instalment|payment)\b/iu;
/** Said of them elsewhere: one of them alone is for me. */
const ONE_OF_THEM =
  /\b(?:(?:one|either|any|which) of (?:them|these|those|the two)|(?:the|at the|for the|on the) (?:first|second|latter|other|later|last)(?: one)? (?:is|needs|should|only|please|would)|(?:at|for|on|camera (?:at|for|on)) the (?:first|second|latter|last)(?=\s?[.,;!?)\n])|(?:only|just) (?:the|one|on|film|day|part|need|want)|(?:want|need|film|cover|record|you(?:'d)? (?:for|on)|like) (?:the )?(?:first|second|third|last|latter|(?:day|part|round|show|session) (?:\d|one|two|three)))\b/iu;
const ROMAN = ['i', 'ii', 'iii', 'iv'];
const LEAD = 60;
const FARTHEST = 120;
const LOOKED_THROUGH = 6000;

/** Whether the dates are counted off, from the first on and without a gap. */
export function countedOff(text: string, sets: readonly DateMention[]): boolean {
  const [first, last] = [sets[0], sets.at(-1)];
  if (!first || !last || sets.length < 2) return false;
  const [from, to] = [sentenceAround(text, first.start, first.end).start, sentenceAround(text, last.start, last.end).end];
  if (TO_CHOOSE.test(text.slice(from, to)) || ONE_OF_THEM.test(text.slice(0, LOOKED_THROUGH))) return false;
  const leads = sets.map(({ start }, at) => text.slice(Math.max(sets[at - 1]?.end ?? 0, start - LEAD), start));
  if (sets.some(({ start }, at) => at > 0 && start - (sets[at - 1]?.end ?? 0) > FARTHEST)) return false;
  const rises = sets.every(({ readings }, at) => at === 0 || (readings[0]?.[0] ?? '') > (sets[at - 1]?.readings[0]?.[0] ?? ''));
  return rises && (leads.every((lead) => ONCE.test(lead)) || leads.every((lead, at) => placeIn(lead) === at + 1));
}

/** Which one of several a date is, by the words before it. */
function placeIn(lead: string): number {
  const count = (NUMBERED.exec(lead) ?? NTH.exec(lead))?.groups?.['count']?.toLowerCase() ?? '';
  if (/^\d/.test(count)) return Number(count[0]);
  return ordinalWord(count) ?? numberWord(count) ?? ROMAN.indexOf(count) + 1;
}
