/**
 * Another date that is offered in place of the one, or told as one more, in a sentence of its own: "We could also do 17 April.", "If not, the 11th?", "The 16th as
 * well?", "We also have one on the 16th." What is meant by it is asked about.
 */
import { clauseBefore, sentenceAround } from '../parts/sentences.ts';
import { askedDays, inMonthOf, MOST_MENTIONS, OF_ELSE, union } from './days-among.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

const REACH = 70;
/** "We could also do", "If you're booked, then" */
const IN_PLACE =
  /\b(?:we|i|they) (?:could|can|might|would) (?:also|just as well|equally|otherwise|instead) (?:do|make|manage|offer|take|have|go for|live with)(?: on)?(?: the)? $|(?:^|[.;!?\n]\s?)(?:if not(?: that)?|otherwise|or else|failing that|alternatively|or|what about|how about|if (?:you're|you are|you|that's|that is|it's|it is|that|it) (?:booked|busy|taken|gone|no good|full|not free|already booked|can't|doesn't suit|doesn't work))[,:]? (?:then |maybe |perhaps |possibly |how about |what about |we could do |could you do |would )?(?:on )?(?:the )?$/i;
const IN_PLACE_TOO =
  /^(?: [ap]m)?,? (?:(?:would|could|might|will|is)(?: also| equally)? (?:be )?(?:do|fine|possible|an option|work|suit|the (?:second|other|alternative))|works? (?:too|as well|equally)|at a pinch|as (?:an alternative|a (?:fall-?back|back-?up|second choice)|plan b))\b/i;
/** "We also have one on", "Also the" at the beginning of a sentence */
const ONE_MORE =
  /\b(?:we|they|i)(?:'ve| have|'re| are)? (?:also|likewise) (?:have |got |hold |holding |do |doing )?(?:one|another|a second(?: one)?|it)? ?on (?:the )?$|\bthere(?:'s| is) (?:also one|another(?: one)?) on (?:the )?$|(?:^|[.;!?\n]\s?)(?:also|plus|and|maybe|possibly|perhaps|and also|and maybe|ideally also) (?:on )?(?:the )?$/i;
const AS_WELL = /^,? ?(?:too|as well|also)\b|^,? if (?:possible|you (?:can|could|like|have time|are free))\b/i;
const BEGINS = /(?:^|[.;!?\n])\s?(?:and |maybe |possibly |perhaps |would you do |could you do |how about )?(?:on )?(?:the )?$/i;
/** What is then of something else. */
const OF_OTHERS =
  /\b(?:not|no|never|rehears\w*|set[- ]?up|rig\w*|photographer|deadline|confirm\w*|reply|answer|invoice|deposit|payment|deliver\w*|edit\w*|last year|rain|weather|arriv\w*|travel\w*|travel|hotel|guests|meet(?:ing)?|calls?|chat|zoom|phone|visit|viewing|recce|walk-?through)\b|n['’]t\b/i;

/** The days, or with what another date adds to them or puts in their place as a question. */
export function heldAgainstOtherDay({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  const [first] = event.dates;
  if (first === undefined || event.counted) return event;
  for (const mention of mentions.slice(0, MOST_MENTIONS)) {
    const how = howTold(text, mention, event);
    // Of several days one may have been taken already; what is offered in its place is open again.
    const days = how === undefined || (how === 'more' && event.dropped) ? [] : daysOf(mention, first);
    const left = event.dates.filter((day) => !days.includes(day));
    if (how === 'in place' && left.length > 0 && left.length < event.dates.length) return askedDays(event.where, [left, days], 'open');
    if (days.length === 0 || left.length < event.dates.length) continue;
    return askedDays(event.where, [event.dates, how === 'more' ? union(event.dates, days) : days], 'open');
  }
  return event;
}

function howTold(
  text: string,
  { start, end, past, by, said, weekdayOnly, vague }: DateMention,
  { where }: EventDays,
): 'more' | 'in place' | undefined {
  if (by || vague || weekdayOnly || (where[0] && where[0].start <= start && where[0].end >= end)) return undefined;
  const sentence = sentenceAround(text, start, end);
  const lead = text.slice(Math.max(0, sentence.start - 2, start - REACH), start);
  const rest = text.slice(end, sentence.end);
  if (OF_OTHERS.test(clauseBefore(text, start, REACH)) || OF_OTHERS.test(rest)) return IF_NOT.test(lead) ? 'in place' : undefined;
  if (IN_PLACE.test(lead) || (IN_PLACE_TOO.test(rest) && !where.some((one) => one.start > start))) return 'in place';
  if (past || OF_ELSE.has(said)) return undefined;
  return ONE_MORE.test(lead) || (AS_WELL.test(rest) && BEGINS.test(lead)) ? 'more' : undefined;
}
const IF_NOT = /(?:^|[.;!?\n]\s?)if not,? (?:then |maybe |how about )?(?:on )?(?:the )?$/i;

/** The days of a mention; a number alone is of the month of the days that are told, where it is later than they. */
function daysOf({ readings, doubt, explicit, sequence: { items } }: DateMention, first: string): string[] {
  const [item, ...more] = items;
  const near = explicit || more.length > 0 || item?.atom.day === undefined ? undefined : inMonthOf(first, item.atom.day);
  if (near !== undefined && near > first) return [near];
  return readings.length === 1 && !doubt ? (readings[0] ?? []) : [];
}
