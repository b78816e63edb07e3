/**
 * A date that is named of a day which is not fixed: "around 6 November", "any Saturday but the 6th", "no earlier than the 6th", "we have not settled on a
 * date", "the launch is on the 6th and we'd film some weeks before". It is asked about.
 */
import { askedDays } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const DAY = String.raw`(?:days?|dates?|evenings?|nights?|afternoons?|mornings?|weekends?|week(?:day)?s?|(?:mon|tues|wednes|thurs|fri|satur|sun)days?|time)`;
/** Right before the date. */
const LEADS = new RegExp(
  String.raw`(?:(?<!\p{L}|\b(?:you|u|ya|ye|yous|anyone|anybody|somebody|someone|still|is|are|re|was|were|i'm|we're|you're|town|shop|all|turn|get|way)(?: (?:be|still|guys|lot|all))? )around|(?<!\p{L})(?:roughly|circa|approx(?:imately)?\.?|somewhere near|give or take [\w ]{1,16},?|as early as|(?:no|not) (?:earlier|sooner) than|not (?:before|until)|between now and|(?:at the )?earliest(?: is)?|(?:any|some|which|whichever)(?: of)?(?: your| the)?(?: free| other)? ${DAY}(?: you like)? (?:after|from|before|until|till|up to|between|but|except|other than)|(?:your|any) free ${DAY} (?:after|before|from)|any|some|on or (?:about|around)|(?:it|that|this|the (?:day|date|fair|event|shoot|party|show|filming)) (?:could|might|may)(?: well| also| even)? be|(?:it's|it is|it'll be|it will be|held|happens|takes place|some ?time|a day|one day) (?:after|before|later than|past)|(?:days?|weeks?|fortnight|months?) (?:later|earlier) than))\s(?:on |the )*(?:\p{L}+day,? )?(?:the )?$`,
  'iu',
);
/** Right behind it. */
const BEHIND =
  /^,?\s\(?(?:plus or minus|give or take|±|\+\/-|at the earliest|(?:was|had been) (?:our|my|the|their) (?:first|original) (?:idea|choice|thought|plan)(?!\w)|(?:is|was|has)(?:n't| not)(?: yet| quite| really| been)* (?:fixed|settled|decided|set|final|definite|certain)\b(?! (?:up|out|aside|menu|meal|price|by)\b))/i;
/** Anywhere beside it. */
const NOT_SETTLED = new RegExp(
  [
    String.raw`\b(?:haven't|have not|hasn't|has not|not yet|not) (?:yet |really |quite )?(?:settled on|chosen|picked|decided on|fixed|agreed on|set)(?: (?:a|the|which|our|any) (?:exact |final |firm )?(?:date|day|one)\b)`,
    String.raw`\b(?:prefer|rather (?:have|take)|(?:look|hop)ing for|need to find) (?:another|a different|some other) (?:date|day|weekend|(?:mon|tues|wednes|thurs|fri|satur|sun)day)\b`,
    String.raw`\b(?:the (?:month|week|weekend)|which (?:month|week|weekend|day|date)) (?:(?:it is |it'll be )?(?:is |has )?(?:not|n't|yet to be|still to be)|isn't|hasn't been)(?: yet| been| quite)* (?:decided|fixed|chosen|known|settled|agreed|clear|confirmed)\b`,
    String.raw`\b(?:is|are|seems|looks|would be) (?:just )?as likely\b`,
    String.raw`\byou (?:can |could |may )?(?:choose|pick|name|tell us) (?:the|a|your) (?:day|date)\b`,
    String.raw`\b(?:film|record|shoot|interview|come)\w*\b[^.;!?\n]{0,40}\b(?:some day|whenever (?:it |that )?(?:suits|is convenient|is best)|(?:on|for) a day (?:in|of|to)\b|a (?:few|couple of) (?:days|weeks|months) (?:before|earlier|ahead|beforehand))`,
  ].join('|'),
  'i',
);
const LEAD = 60;
const REACH = 60;
const LOOKED_THROUGH = 6000;

/** The days that were settled, or as a question where their date is not fixed. */
export function heldAgainstUnfixed({ text }: Scene, event: EventDays): EventDays {
  if (event.dates.length === 0) return event;
  const loose = event.where.some(
    ({ start, end }) => LEADS.test(text.slice(Math.max(0, start - LEAD), start)) || BEHIND.test(text.slice(end, end + REACH)),
  );
  return loose || NOT_SETTLED.test(text.slice(0, LOOKED_THROUGH)) ? askedDays(event.where, [event.dates], 'open') : event;
}
