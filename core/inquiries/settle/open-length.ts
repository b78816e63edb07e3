/**
 * A first day of which nobody knows yet how many follow: "how many days we don't know", "the number of days depends on the cedar", "could be three, could be six".
 * Then only the first day is told.
 */
import { lineStart } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import { EITHER_COUNT } from './days.ts';
import type { Where } from './scene.ts';

const UNKNOWN = anyOf(
  `
  how_many/how_much {days} {be}? not known/clear/fixed/decided/settled/sure/certain/unknown/open | how_many {days} depends/depend/remains/will_depend | how_many {days} we/i/they/nobody can't/cannot/can/don't/do_not/does_not/doesn't know*/say/tell/yet
  not sure/certain/clear/decided/known ... how_many {days} | don't/do_not/can't/cannot/doesn't yet? know/say/tell how_many {days}
  number of {days} depends/depend/is_open/is_still/is_not/isn't/to_be/tbc/tbd/will_depend/unknown/varies | {days} open-ended | open-ended | for as_many {days} as it/we/you
`,
  {
    days: `days | nights | evenings | shoot days | filming days | of these days`,
    be: `is | are | it is | it'll be | it will be | that is`,
  },
);
/** An edit and an answer take as long as they take. */
const OF_AN_EDIT = /\b(?:edit\w*|deliver\w*|turn ?around|cut|post|reply|answer|notice|payment|refund|retention)\b/i;
const LOOKED_THROUGH = 6000;
const LEAD = 50;

/** Said of an end that is not known. */
const NOT_KNOWN = String.raw`(?:(?:is |are |was |still |as yet |yet )*(?:tb[acd]|open|unknown|undecided|unclear|not (?:yet )?(?:known|set|fixed|decided|settled|agreed|confirmed|clear|sure|final)|to be (?:agreed|fixed|confirmed|decided|announced|arranged|set|settled)|(?:being|getting) (?:worked out|decided|settled|negotiated)|depend(?:s|ing|ent)?\b|up in the air|anyone's guess)|follows? (?:later|next|soon|when|once|as soon))`;
const SOME_DAYS = String.raw`(?:(?:a )?(?:few|couple(?: of)?)|several|some|many|${EITHER_COUNT}(?:two|three|four|five|six|seven|eight|ten|[2-9]|10)) (?:more |full |shoot(?:ing)? |filming )?(?:days|nights|evenings|shifts)`;
const ONE_MORE = String.raw`(?:a second|a third|another|one more|an extra|an additional|a further) (?:day|night|evening|shift|one)`;

const NUMBER_OF_DAYS = String.raw`(?:up to )?(?:two|three|four|five|six|seven|[2-7]) (?:days|nights|evenings)`;

/** Wherever it is said. */
const MORE_DAYS = [
  String.raw`\b(?:end|finish(?:ing)?|last|closing|final|wrap)[ -](?:date|day)s?\b[\s:=–-]{0,3}${NOT_KNOWN}`,
  String.raw`(?:^|\n)\s*(?:end|finish|until|to)\s?[:=]\s?${NOT_KNOWN}`,
  String.raw`\b(?:length|duration)(?: of (?:the )?(?:job|shoot|booking|hire|filming|work|trial|event|run|dig|stay))?[\s:=–-]{0,3}${NOT_KNOWN}`,
  String.raw`\bthe end (?:of (?:it|the \p{L}+) )?(?:is |being )?${NOT_KNOWN}`,
  String.raw`\b(?:could|may|might|may well|might well) (?:well )?(?:take|last|run(?: to| for| over)?|need|go on for|stretch to|be spread over) ${NUMBER_OF_DAYS}\b`,
  String.raw`\bopen[ -]end(?:ed)?\b`,
  String.raw`\b(?:may|might|could|may well|might well|will probably|possibly|perhaps|maybe|probably)\b(?:,? (?!not\b)[\w']+){0,5}? ${ONE_MORE}(?! (?:instead|will|would|suits|works))`,
  String.raw`\b(?:plus|and|with|then) (?:perhaps|maybe|possibly|probably|potentially),? ${ONE_MORE}`,
  String.raw`\b(?:a|the) second (?:day|one|night)(?: is| as well| too|,)? (?:maybe|perhaps|possibly|possible|likely|if\b|tb[acd]|to be (?:confirmed|decided|agreed)|not (?:yet )?(?:sure|certain|fixed|confirmed))`,
  String.raw`\b(?:could|might|may) be (?:just )?(?:one|a|1) day,? (?:or )?(?:it )?(?:could|might|may) be (?:two|three|2|3)\b`,
  String.raw`\b(?:more|other|further|remaining|the rest of the|rest of the) (?:dates|days|shows|nights|schedule)(?: \w+){0,2} (?:to follow|will follow|follows?|to be (?:announced|confirmed|fixed|agreed)|tb[acd]|not (?:yet )?(?:set|fixed|known|confirmed))`,
  String.raw`\bsend (?:you )?the (?:other|remaining|further) (?:dates|days)\b`,
  String.raw`\bfirst of (?:several|some|a few|many|a number of|possibly (?:two|three|several)) (?:days|nights|dates|shoots|shows)\b`,
  String.raw`\b(?:haven't|have not|hasn't|not yet|still|yet to) (?:yet )?(?:decid|settl|work|agree|fix)\w*(?: out)?(?: on)? how many (?:days|nights|of the days)`,
  String.raw`\b(?:however|as) many (?:days|nights) (?:as )?(?!possible)\w+`,
];
const MORE_SAID = new RegExp(MORE_DAYS.join('|'), 'iu');

/** "as of Monday 8 March", "we start on Monday 8 March", "day one is Monday 8 March": what leads to a day on which something only begins. */
const BEGINS =
  /\b(?:(?:start|begin|open|launch|commence|kick off|get going)(?:s|es|ing)?|starting|beginning|kicks off|kicking off|from|as (?:of|from)|(?:first|opening) (?:day|date|shoot|show)(?: is| being)?|day (?:one|1)(?: is)?|start date(?: is)?)(?:\s(?:filming|shooting|work|rigging|recording))?\s?[:=–-]?\s?(?:(?:on|the)\s){0,2}$/i;
/** "Monday 8 March is the first day", "8 March is day 1" */
const IS_FIRST =
  /^,?\s(?:is|being|will be|would be)\s(?:the\s|our\s|my\s|your\s)?(?:(?:first|opening) (?:day|one|date|show)|day (?:one|1)\b|start of)/i;
/** "Monday 8 March onwards", "Monday 8 March till whenever", "8 March - ?" */
const NO_END = new RegExp(
  String.raw`^,?\s?(?:onwards?\b(?! (?:flight|travel|journey|train))|on(?=\s?[.;!?\n]|$)|(?:to|till|until|til|through|[-–—])\s?(?:\?|${NOT_KNOWN}|whenever|further notice))`,
  'i',
);
/** What tells, of something that begins, that its end is not known. */
const ENDS_SOMEWHEN = new RegExp(
  [
    String.raw`\b(?:for|probably|maybe|perhaps|likely|last(?:s|ing)?|tak(?:es?|ing)|runs?|running|over|need(?: you)?(?: for)?) (?:about |around |maybe |probably |perhaps )?${SOME_DAYS}`,
    String.raw`\bhow (?:long|many days)\b(?! (?:do|would|will|does|did|is|are) (?:you|it|the edit))`,
    String.raw`\bas long as (?:it|there|the|they|we)\b`,
    String.raw`\bhowever long\b`,
    String.raw`\b(?:don't|do not|doesn't|nobody|no one|can't|cannot) (?:can )?(?:yet )?(?:know|say|tell)s? (?:yet )?(?:the end|when it (?:ends|finishes|stops|is over))`,
    String.raw`\b(?:decide|decides|agree|fix)\w* (?:on )?(?:the )?(?:closing|last|final|end) (?:day|date)`,
    String.raw`\b(?:last|wrap|final) day depends`,
  ].join('|'),
  'i',
);
/** "We begin on Monday 8 March and go on until it is done": of days, where no hour stands before it. */
const UNTIL_DONE =
  /^(?:(?!\d ?[ap]m|\d[:h.]\d\d|noon|o'clock)[^\n])*?\b(?:go|goes|going|carr(?:y|ies)|keep|keeps|stay|film|filming|there|on) (?:on |going |you )?(?:until|till|til) (?:it|they|we|the [\w ]{2,20}?)(?:'s|'re| is| are) (?:done|in|up|finished|over|found|complete|ready|built|through|out)\b/i;
/** "From 8 March until we are done" */
const UNTIL_OVER =
  /^,? (?:un)?till? (?:it|they|we|everything|all|the [\w ]{2,20}?)(?:'s|'re|'ve| is| are| have| has) (?:been |all |got )*(?:done|in|up|finished|over|found|complete|ready|built|through|out|seen|covered|sold|everything)\b/i;
const BEHIND = 160;

/**
 * True where how many days it takes is told to be open.
 * @param day where its one day is named
 */
export function lengthIsOpen(text: string, day: Where | undefined): boolean {
  const front = text.slice(0, LOOKED_THROUGH);
  if ([UNKNOWN, MORE_SAID].some((said) => isOfTheWork(front, said.exec(front)))) return true;
  if (!day) return false;
  const behind = front.slice(day.end, day.end + BEHIND);
  if (NO_END.test(behind)) return true;
  const begins = BEGINS.test(front.slice(lineStart(front, day.start), day.start)) || IS_FIRST.test(behind);
  const told = twoSentences(behind);
  return begins && isOfTheWork(front, ENDS_SOMEWHEN.exec(told) ?? UNTIL_DONE.exec(told) ?? UNTIL_OVER.exec(told), day.end);
}

/** What is said in the sentence of a day and in the next one. */
const twoSentences = (behind: string): string => /^[^.!?\n]*(?:[.!?]\s[^.!?\n]*)?/.exec(behind)?.[0] ?? '';

function isOfTheWork(front: string, found: RegExpExecArray | null, from = 0): boolean {
  if (!found) return false;
  const start = from + found.index;
  return !OF_AN_EDIT.test(front.slice(Math.max(0, start - LEAD), start + found[0].length + LEAD));
}
