/**
 * An hour at which the wanted filming itself begins, told as such: "filming starts at 7", "we shoot from 8", "1-9pm coverage", "six hours from noon",
 * "from two for four hours", "only the parade, which leaves at 11", "you'd start by filming the parade at 11". It is the call where no earlier hour is told.
 */
import { CLAUSE_BEGINS } from '../parts/sentences.ts';
import { onlyThatHour } from './only-that-hour.ts';
import type { Where } from './scene.ts';

const FILMING = String.raw`(?:the |our |your )?(?:filming|shooting|recording|videoing|shoot|coverage|video coverage|film shoot)`;
const AT = String.raw`(?:(?:at|from|around|about|approx\.?|roughly|promptly at|between)\s){0,2}`;
const MAY = String.raw`(?:(?:'ll|'d| will| would| should| can| could| shall| is to| are to| is due to| want to| need to| hope to| plan to))?`;
const BEGINS = new RegExp(
  String.raw`${CLAUSE_BEGINS}(?:${FILMING}${MAY} (?:starts?|begins?|commences?|kicks? off|gets? going|gets? under ?way|be|is)|(?:we|you|u|i)${MAY} (?:start|begin) (?:the |our |your )?(?:filming|shooting|recording|videoing|to (?:film|shoot|record))(?: (?:the|our|some|with|all|your)(?: [\p{L}'-]+){1,3}?)?|(?:we|you)${MAY} (?:shoot|film|record|roll) from|(?:we|you)'re (?:shooting|filming|recording|rolling) from|${FILMING} from) ${AT}$`,
  'iu',
);
/** "filming would be over", "filming starts at the church at": what stands between may be where. */
const BEGINS_THERE = new RegExp(
  String.raw`${CLAUSE_BEGINS}(?:${FILMING}${MAY} (?:starts?|begins?)|(?:we|you|u)${MAY} (?:start|begin) (?:filming|shooting|recording)) (?:(?:in|at|on|outside|by|with) (?:the |our )?[\p{L}' -]{3,28}? )?${AT}$`,
  'iu',
);
/** "The job is 7 to 5", "your booking would run from 9 to 5" */
const HOURS_OF_JOB = new RegExp(
  String.raw`${CLAUSE_BEGINS}(?:(?:the|this|your|that) )?(?:job|gig|shoot|shift|booking|assignment|filming|coverage|recording|call)${MAY} (?:is|runs?|goes|lasts?|be|go|last) ${AT}$`,
  'iu',
);
const OF_COVERAGE = /^ (?:of )?(?:coverage|filming|shoot)(?=\s?(?:[.,;:!?)\n]|$|(?:please|pls|with|and|plus|on|for|in|at|of)\b))/i;
/** "6.00 am at the garden, 6.30 to 10.00 filming": the row of hours of a day. */
const HOUR_BEFORE = /\d[^.;!?\n]{0,40}$/;
/** "you'd start by filming the parade at", "your first job would be the parade at" */
const STARTS_WITH =
  /\b(?:(?:you|u)(?:'d|'ll| will| would| should)? (?:start|begin|kick off|open) (?:by|with) [^.;!?\n\d]{3,40}|your first (?:job|task|shot|thing|duty|part)(?: of the day)? (?:is|would be|will be) [^.;!?\n\d]{3,40}) (?:at|around|about) $/i;
/** "be there for the parade at", "come in time for the parade, which starts at" */
const THERE_FOR = new RegExp(
  String.raw`${CLAUSE_BEGINS}(?:please |pls |do )?(?:be|get|come|arrive)(?: (?:there|here|along|down))?(?: in time)? for (?:the|our) (?!(?:${'day|time|first time|last|most|rest|evening|morning|afternoon|weekend'})\b)[\p{L}'-]+(?: [\p{L}'-]+){0,2}?,? (?:(?:which|that) (?:starts?|begins?|is|leaves?|kicks off) )?(?:at|from) $`,
  'iu',
);
/** "Could you make 3 pm for a quick call?" */
const TO_TALK = /^[^.;!?\n]{0,30}\b(?:call|chat|meet(?:ing)?|phone|zoom|talk|visit|recce)\b/i;
/** "Can you make 7 am?", "Would a 7 am start be OK?", "Is 7 am OK for you to start?" */
const CAN_YOU = /\b(?:can|could|would|will) (?:you|u) (?:be able to )?(?:make|manage) (?:it (?:for|by|at) )?(?:an? )?$/i;
const WOULD_A = /\b(?:would|is|will) an? $/i;
const START_BE = /^ (?:start|call|arrival) (?:be|work|suit|ok|okay|fine|possible|too early)\b/i;
const IS_IT = /\b(?:is|would|will) $/i;
const FINE_TO_START =
  /^ (?:be )?(?:ok|okay|fine|good|alright|all right|possible|doable|too early|suit you|work)(?: for you)? (?:to (?:start|arrive|come|be (?:there|here)|set up|begin)|as (?:a|your) (?:start|call|arrival)|for (?:your|you) (?:arrival|start|call|coming))\b/i;

const NUMBER = String.raw`(?:\d{1,2}(?:[.,]5| ?(?:-|to|or) ?\d{1,2})?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?: and a half)?`;
const SO_LONG = String.raw`(?:${NUMBER}(?: |-)?(?:hours?|hrs?|h)(?:(?: |-)day)?|(?:half|half a|a half|a full|a whole|full|one full)(?: |-)?day)`;
/** Who has so many hours: nobody is named, or I am. */
const WANTED = String.raw`(?:(?:for|about|around|roughly|approx\.?|maybe|say|just|only|an?|it's|it is|it'd be|it would be|that's|this is|we(?:'d| would)? (?:need|want|like|think|reckon|say|guess)|we(?:'re| are) (?:after|looking for|thinking of)|i(?:'d| would)? (?:need|want|like|think|say|guess|suppose|reckon)|you(?:'d| would|'ll| will)? need|you(?:'d| would|'ll| will)? be (?:there|here|needed|wanted)|(?:need|want|book|have) you|of|some|filming|max\.?|shoot) )*`;
const LASTS = new RegExp(
  String.raw`${CLAUSE_BEGINS}${WANTED}${SO_LONG}(?: (?:of )?(?:filming|coverage|shooting|recording|work|video|footage|shoot|job))?(?:,? (?:max\.?|tops|at most|should do(?: it)?|would do(?: it)?|will do|is enough|is plenty|in all|all told|altogether|on site))?,? (?:say,? )?(?:(?:starting|beginning|commencing|start|from|starts?|begins?)(?: (?:at|from))?) (?:about |around )?$`,
  'iu',
);
const FROM_ALONE = new RegExp(
  String.raw`${CLAUSE_BEGINS}(?:(?:you(?:'d| would|'ll| will)? be (?:there|here|needed|wanted|filming)|(?:we(?:'d| would)? )?(?:need|want|book|have) you) )?(?:from|starting(?: at| from)?|start(?: at)?) $`,
  'i',
);
const FOR_SO_LONG = new RegExp(
  String.raw`^(?: on(?:wards?)?)?,? (?:and )?for (?:about |around |roughly |some )?${SO_LONG}(?=\s?(?:[.,;:!?)\n]|$|(?:of|in|please|or|or so|until|and)\b))`,
  'i',
);
/** "it isn't filming from", "no filming from" */
const DENIED = /(?:n't|\b(?:not|no|nor|never|without|before|until|till))\s(?:[\p{L}']+\s){0,3}$/iu;
const LEAD = 110;

/** True where the words around an hour, or hours from and to, say that the filming begins then. */
export function filmedThen(text: string, { start, end, to }: Where & { to?: unknown }): boolean {
  const lead = text.slice(Math.max(0, start - LEAD), start);
  const after = text.slice(end, end + LEAD);
  const begins = BEGINS.exec(lead) ?? BEGINS_THERE.exec(lead) ?? LASTS.exec(lead);
  if (begins) return !DENIED.test(lead.slice(0, begins.index + 1)) && !DENIED.test(begins[0].replace(/[\p{L}']+\s?$/u, ''));
  if (onlyThatHour(text, { start, end })) return true;
  if (to)
    return (
      HOURS_OF_JOB.test(lead) ||
      (OF_COVERAGE.test(after) && !HOUR_BEFORE.test(lead) && !/\b(?:photo|photos|photography|press|media|tv|radio)\s$/i.test(lead))
    );
  return (
    STARTS_WITH.test(lead) ||
    THERE_FOR.test(lead) ||
    (CAN_YOU.test(lead) && !TO_TALK.test(after)) ||
    (WOULD_A.test(lead) && START_BE.test(after)) ||
    (IS_IT.test(lead) && FINE_TO_START.test(after)) ||
    (FROM_ALONE.test(lead) && FOR_SO_LONG.test(after))
  );
}
