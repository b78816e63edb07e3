/**
 * Days of which the words say that one of them is to be chosen: "possible dates: 5 November, 12 November", "the hall has given us two dates, the 25th and the
 * 4th", "any of 5, 12 and 19 November", "we are voting on the 5th versus the 12th", "some day between the 8th and the 12th", "one evening only". Which it is is
 * asked about.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { consecutive, askedDays, MOST_MENTIONS, OF_ELSE } from './days-among.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

const DAYS = String.raw`(?:dates?|days?|evenings?|nights?|afternoons?|mornings?|weekends?|slots?|(?:mon|tues|wednes|thurs|fri|satur|sun)days?)`;
/** What a list of days is said to be, before the first of them. */
const CHOICE = new RegExp(
  [
    String.raw`(?<!\bonly )\b(?:possible|potential|candidate|alternative|short-?listed|feasible|conceivable)(?: \p{L}+)? ${DAYS}\b[^.;!?]{0,40}$`,
    String.raw`\b(?:our|the|my|your|two|three|four) (?:options|choices|candidates|alternatives|possibilities)\b(?: \p{L}+){0,4}?(?: are| would be|:)[^.;!?\d]{0,16}$`,
    String.raw`(?:^|[.;!?\n]\s?)(?:options|choices|candidates|alternatives|possibilities)(?: for (?:the )?${DAYS})?(?: are)?\s?[:–-][^.;!?\d]{0,16}$`,
    String.raw`\b${DAYS} (?:that )?(?:under (?:consideration|discussion)|we (?:have|had) in mind|we(?:'re| are) (?:considering|looking at|thinking (?:of|about)|weighing up|deciding between|choosing from)|on the table|in the running|to choose from|that (?:would|could|might) (?:work|suit|do))\b[^.;!?\d]{0,24}$`,
    String.raw`\b(?:given|gave|offered|offers|suggested|suggests|proposed) (?:us |me )?(?:two|three|several|a couple of|a choice of (?:two|three)|[23]) (?:(?:possible|free|available) )?${DAYS}\b[^.;!?\d]{0,24}$`,
    String.raw`\b(?:two|three|several|[23]) ${DAYS}\b[^.;!?\d]{0,16}\b(?:in mind|up for grabs|on offer|still open|(?:are|is) (?:possible|free|available))\b[^.;!?\d]{0,16}$`,
    String.raw`\b(?:any|either|whichever) of (?:these|those|the following|the|them|our)\b[^.;!?\d]{0,50}$|\b(?:any|either) of (?:the )?$`,
    String.raw`\b(?:choos|pick|select|decid)ing (?:from|between|among)\b[^.;!?\d]{0,24}$`,
    String.raw`\b(?:vot\w+ on|vote between|poll (?:on|for|between|with)|torn between|wavering between|toss-?up between)\b[^.;!?\d]{0,24}$`,
    String.raw`(?:\bnot|n['’]t)(?: yet| quite| really)? (?:chosen|decided|picked|settled|fixed|agreed|made up our minds?)(?: yet)?(?: (?:on|between|which(?: (?:it is|one|day|date))?))?[:, –-][^.;!?\d]{0,16}$`,
  ].join('|'),
  'iu',
);
/** Said of days that may well be all meant: only days that are not in a row are a choice then. */
const PROPOSED = new RegExp(
  String.raw`(?<!\bonly )\b(?:proposed|suggested|preferred|available|free|offered)(?: \p{L}+)? ${DAYS}(?: (?:are|would be|so far|for (?:the|our) [\p{L} ]{3,20}))?\s?[:–-]?[^.;!?\d]{0,10}$`,
  'iu',
);
/** One day of a stretch, before it. */
const SOMEWHERE = new RegExp(
  String.raw`\b(?:somewhere|some ?time|some day|any ?time|any day|(?:a|one|some) (?:single )?(?:day|date|evening|night|afternoon|morning|(?:mon|tues|wednes|thurs|fri|satur|sun)day)) (?:in )?between (?:the )?$|(?:\bnot|n['’]t)(?: yet)? (?:chosen|decided|picked|settled)(?: yet)? between (?:the )?$`,
  'iu',
);
/** Right behind them. */
const FREE = /^,? (?:are|would be) (?:both|all|all three) (?:free|available|possible|open)\b/i;
/** The day is one, however many are named. */
const ONE_ALONE =
  /\b(?:only|just) (?:one|a single) (?:evening|day|night|afternoon|morning)\b|\bit(?:'s| is| will be|'ll be) (?:only |just )?(?:one|a single) (?:evening|day|night|afternoon|morning)\b(?! (?:a|per|each|every|of)\b)/i;
/** The same, in the sentence of the days. */
const ONE_ONLY = /^[^.;!?\n]{0,40}\b(?:one|a single) (?:evening|day|night|afternoon|morning|date) only\b/i;
const VERSUS = /^[^.;!?\n\d]{0,20}\b(?:versus|vs\.?|v\.)(?: on)?(?: the)? ?$/i;
const ALL_OF_THEM =
  /\b(?:all|both|each|every)(?: of)?(?: (?:the|these|those|them|our))?(?: (?:two|three|four|five))?\b(?! (?:fine|good|ok|okay|possible|suit|work|right))/i;
const LEAD = 90;

/** The days, or each of them as a question where one is to be chosen. */
export function heldAgainstChoice({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  const [first, ...more] = event.dates;
  if (first === undefined || event.counted) return event;
  const ahead = mentions.slice(0, MOST_MENTIONS).filter(({ past, by, said, explicit }) => explicit && !past && !by && !OF_ELSE.has(said));
  const versus = ahead.findIndex((mention, at) => at > 0 && VERSUS.test(text.slice(ahead[at - 1]?.end ?? 0, mention.start)));
  if (versus > 0) return asked(event, [...daysOf(ahead[versus - 1]), ...daysOf(ahead[versus])]);
  if (more.length === 0 || event.dropped) return event;
  if (ONE_ALONE.test(text) || event.where.some(({ end }) => ONE_ONLY.test(text.slice(end, end + LEAD)))) return asked(event, event.dates);
  for (const { start, end } of event.where) {
    const sentence = sentenceAround(text, start, start);
    // A heading stands in a line of its own.
    const lead = text.slice(Math.max(text.slice(0, sentence.start).trimEnd().lastIndexOf('\n') + 1, start - LEAD, 0), start);
    const own = text.slice(Math.max(sentence.start, start - LEAD), start);
    if (ALL_OF_THEM.test(own)) continue;
    if (SOMEWHERE.test(own)) return asked(event, event.dates);
    if (/\brange\b/.test(joinsAt(mentions, start))) continue;
    if (CHOICE.test(own) || (/[:\n]\s*(?:[-*•] ?)?$/.test(lead) && CHOICE.test(lead.replace(/\s*\n\s*(?:[-*•] ?)?$/, ' '))))
      return asked(event, event.dates);
    if ((PROPOSED.test(own) || FREE.test(text.slice(end, end + LEAD))) && !consecutive(event.dates)) return asked(event, event.dates);
  }
  return event;
}

const daysOf = (mention: DateMention | undefined): readonly string[] => mention?.readings[0] ?? [];
const asked = (event: EventDays, days: readonly string[]): EventDays => ({
  ...askedDays(
    event.where,
    days.map((day) => [day]),
    'open',
  ),
  count: 1,
});

/** How the days of the mention at a place are joined. */
const joinsAt = (mentions: readonly DateMention[], at: number): string =>
  mentions
    .filter(({ start, end }) => start <= at && end > at)
    .flatMap(({ sequence: { items } }) => items.map(({ join }) => join ?? ''))
    .join(' ');
