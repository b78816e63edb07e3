/**
 * The day of several that I am wanted on, told by its place in them or beside its name: "we want the closing night", "your part is the opening ceremony", "you'd
 * join us on the second day", "you're booked for 13 and 14", "the medals on Sunday are what we want", "you'd leave on Saturday night", "a two-day shoot". Whether it
 * is those days alone is asked about.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays, MOST_MENTIONS, namedAmong } from './days-among.ts';
import { daysInPlace } from './in-place.ts';
import { numberOf } from './marks.ts';
import type { DateMention, EventDays, Scene, Where } from './scene.ts';

const A_PART = '(?:night|day|evening|afternoon|morning|one|show|performance|matinee|session|concert|ceremony|party|gala)';
/** "the final" alone is a match of any day. */
const PLACE = String.raw`(first|second|third|fourth|middle|last|(?:opening|final|closing)(?= ${A_PART}(?!\p{L})))`;
const UNIT = String.raw`(?: ${A_PART}(?!\p{L}|['’]s))`;
const ENDS = String.raw`(?=\s?(?:[.;!?)\n]|$|only\b|please\b|on the\b|because\b|as\b|for us\b))`;
const YOU = String.raw`\byou(?:['’]d|['’]ll|['’]re| would| will| are)?(?: only| just)?(?: be)?`;
const BY_PLACE = new RegExp(
  [
    String.raw`\b(?:want|need|like|love|have|book|after|looking for)(?: you| someone| somebody| a camera| the camera| to film| to have| to book you)?(?: for| on| at| to film)? (?:only |just )?the ${PLACE}${UNIT}(?: (?:to be )?(?:filmed|recorded|covered|on film|on video|on camera))?${ENDS}`,
    String.raw`\b(?:filming|video|crew|camera|cameras|recording|your (?:part|day|job|bit|slot|night)|ours|mine)(?: is| are| will be| would be)? (?:on |for )?(?:only |just )?the ${PLACE}${UNIT}?${ENDS}`,
    String.raw`${YOU} (?:join(?:ing)? us|com(?:e|ing)|there|with us|arriv(?:e|ing)|turn up) (?:on|for) the ${PLACE}${UNIT}?${ENDS}`,
    String.raw`${YOU} (?:film|record|cover|shoot|do)(?:ing)? (?:the|our|a|their) (?:[\p{L}'’-]+ ){1,4}?on the ${PLACE}${UNIT}?${ENDS}`,
  ].join('|'),
  'iu',
);
const ALL = /\b(?:all|both|each|every|whole|entire|also|too|as well|especially|particularly|throughout|plus|not|never)\b|n['’]t\b/i;
/** "ends with a show, which is the bit you'd film" */
const ENDS_WITH =
  /\b(?:(?:(ends|closes|finishes|concludes|culminates)|opens|begins|starts|kicks off) (?:with|in)) (?:a|an|the|our|its) [^.;!?\n]{3,40}?(?:, (?:which|and that)|[.;] (?:that|this)) ?(?:is|['’]s) (?:the (?:bit|part|one|thing) (?:that )?(?:you|we|i)\b|what (?:you|we|i)\b|all (?:you|we|i)\b)/i;
/** "you're booked for", "your days are", "and you the": up to days that are named once more. */
const MINE_ON = new RegExp(
  String.raw`${YOU} (?:booked|down|confirmed|hired|pencilled in|engaged) (?:for|on) (?:the )?$|\byour days? (?:is|are|would be|will be|being) (?:the )?$|[,;] (?:and )?you (?:take |do |on )?the $`,
  'iu',
);
const LEAVE_ON = new RegExp(
  String.raw`${YOU} (?:leave|leaving|go home|going home|head home|fly home|drive home)(?: again)? (?:on )?(?:the )?$|\b(?:(?:need|want|like) you(?: there| here| with us)?|${YOU} (?:needed|wanted|with us|there|staying|stay)) (?:until|till|til|up to|through) (?:the )?$`,
  'iu',
);
/** "on Saturday at 10 and on Sunday at noon" tells of every day. */
const GOES_ON = /^[^.;!?\n]*(?:,|\band\b)/i;
const COME_ON = new RegExp(String.raw`${YOU} (?:arrive|arriving|start|starting|join us|joining us) (?:only )?on (?:the )?$`, 'iu');
const WHAT_WE_WANT =
  /^,? (?:is|are) (?:what|all|the (?:one|ones|day|days|bit|part)) (?:that )?(?:we|i)(?:['’]d)?(?: really| would)? (?:want|need|like|are after)(?: you(?: for)?| filmed| recorded| covered| on film| on video)?(?=\s?(?:[.;!?)\n]|$))/i;
/** "it's the dress rehearsal on 11 November that we want" */
const IT_IS_THE = /\bit(?:['’]s| is| would be|['’]d be) (?:only |just |really )?(?:the|our|a)\b[^.;!?\n]*$/i;
const THAT_WE_WANT =
  /^,? (?:that|which) (?:we|i)(?:['’]d|['’]re)?(?: really| would| only| just)* (?:want|need|like|love|after|looking for)\b/i;
const NOT_YOURS =
  /^[^.;!?\n]{0,40}\b(?:not (?:for|with) you|without you|don['’]t need you|do not need you|won['’]t need you|you(?:['’]re| are) not (?:needed|wanted))\b(?! (?:until|till|before|after|to|for|at)\b)/i;
/** "the paper films Friday, you would do the rest": what is left of days, not of work. */
const THE_REST =
  /\b(?:day|(?:mon|tues|wednes|thurs|fri|satur|sun)day|first|second|last|\d{1,2}(?:st|nd|rd|th))\b[^.!?\n]{0,40}\byou(?:['’]d| would|['’]ll| will) (?:do|film|cover|record|have) (?:the rest|the others|the other (?:two|three|days|nights))(?=\s?(?:[.;,!?)\n]|$))/i;
/** "We need a two-day shoot", "we are looking for two days of filming": not what such a thing costs. */
const SHOOT =
  /\b(?:thinking (?:of|about)|looking (?:for|at)|after|need|want|would like|['’]d like|(?:it|this|that)(?:['’]s| is| would be| will be)) (?:only |just )?(?:a |an )?(one|two|three|four|five|[1-5])[- ](?:day (?:shoot|job|booking|hire|filming|video shoot)|days['’]? (?:of )?(?:filming|shooting|camera work))\b/gi;
const REACH = 70;
const LOOKED_THROUGH = 6000;

/** The days, or those that I am wanted on as a question beside all of them. */
export function heldAgainstPlace({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  const { dates } = event;
  if (dates.length < 2 || event.dropped || event.counted) return event;
  const asked = (days: readonly string[]): EventDays | undefined =>
    days.length > 0 && days.length < dates.length ? askedDays(event.where, [[...days], dates], 'open') : undefined;
  const front = text.slice(0, LOOKED_THROUGH);
  const found = BY_PLACE.exec(front);
  const place = found?.slice(1).find((word) => word !== undefined);
  const told = found && place !== undefined && !ALL.test(around(front, found)) ? asked(daysInPlace(place, dates)) : undefined;
  if (told) return told;
  for (const mention of mentions.slice(0, MOST_MENTIONS)) {
    if (mention.past) continue;
    const open = asked(daysOfMine(text, mention, dates));
    if (open) return open;
  }
  const part = ENDS_WITH.exec(front);
  const open = part ? asked(part[1] === undefined ? dates.slice(0, 1) : dates.slice(-1)) : undefined;
  if (open) return open;
  const rest = THE_REST.exec(front);
  const shoots = [...front.matchAll(SHOOT)].map(([, count = '']) => numberOf(count));
  const fewer = shoots.length > 0 && shoots.every((count) => count > 0 && count < dates.length);
  return fewer || rest !== null
    ? askedDays(
        event.where,
        dates.map((day) => [day]),
        'open',
      )
    : event;
}

function around(text: string, { index, 0: words }: RegExpExecArray): string {
  const { start, end } = sentenceAround(text, index, index + words.length);
  return text.slice(Math.max(start, index - REACH), Math.min(end, index + words.length + REACH));
}

/** True for a day of which its sentence says that it is the one that is wanted. */
export function isTheOne(text: string, { start, end }: Where): boolean {
  const sentence = sentenceAround(text, start, end);
  return IT_IS_THE.test(text.slice(Math.max(sentence.start, start - REACH), start)) && THAT_WE_WANT.test(text.slice(end, sentence.end));
}

/** The days of mine by what is said beside one of them. */
function daysOfMine(text: string, mention: DateMention, dates: readonly string[]): readonly string[] {
  const named = namedAmong(mention, dates);
  const [day, last] = [named[0], named.at(-1)];
  if (day === undefined || last === undefined) return [];
  const sentence = sentenceAround(text, mention.start, mention.end);
  const lead = text.slice(Math.max(sentence.start, mention.start - REACH), mention.start);
  const rest = text.slice(mention.end, sentence.end);
  if (isTheOne(text, mention) || MINE_ON.test(lead) || WHAT_WE_WANT.test(rest)) return named;
  if (NOT_YOURS.test(rest)) return dates.filter((one) => !named.includes(one));
  if (GOES_ON.test(rest)) return [];
  if (LEAVE_ON.test(lead)) return dates.filter((one) => one <= last);
  return COME_ON.test(lead) ? dates.filter((one) => one >= day) : [];
}
