/**
 * Days of a run that are told to be no days of what is filmed: "the first two days are set-up", "with the last day for clearing up", "Saturday is a rest day",
 * "it includes one rest day"; and a run that is only how long a hall is held, with the one day of the occasion in it: "we have the hall from 11 to 15 November
 * and the concert is on the 13th". Whether all of the run is meant is asked about.
 */
import { clauseBefore, sentenceAround } from '../parts/sentences.ts';
import { OCCASION } from '../occasions.ts';
import { askedDays, MOST_MENTIONS, namedAmong, OF_ELSE } from './days-among.ts';
import { daysInPlace } from './in-place.ts';
import { numberOf } from './marks.ts';
import { isOff } from './off-days.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

/** What is done on a day that nobody films. */
const IDLE = String.raw`(?:set(?:ting)?[ -]?up|load(?:ing)?[ -](?:in|out)|get-?(?:in|out)|bump-?(?:in|out)|rig(?:ging)?|build(?:ing)?|strike|travel(?:ling|ing)?|arrivals?|departures?|rest(?:ing)?|check(?:ing)?[ -]in|clean(?:ing)?(?:[ -]?up)?|clear(?:ing)?(?:[ -]?up)?|tidy(?:ing)?(?:[ -]?up)?|pack(?:ing)?[ -](?:up|down)|tak(?:e|ing) down)`;
/** Filmed as often as not, unless somebody says that it is not. */
const TRAINING = '(?:training|practi[cs]e|rehears(?:al|ing)s?|preparations?)';
const NTH = 'first|opening|second|third|middle|last|final|closing';
const COUNT = '(?:(two|three|four|five|[2-5]) )?';
const IDLE_BY_PLACE = new RegExp(
  String.raw`\b(?:the|with the) (${NTH}) ${COUNT}(?:days?|of (?:which|these|them|those)|ones?)(?: (?:is|are|will be|being|would be))?(?: (?:only|just|mostly|all|purely|simply|reserved|kept|set aside))*(?: (?:for|a|our|the))* (?:${IDLE}|(${TRAINING}))(?![\p{L}-])`,
  'iu',
);
/** "including a day's travel each way", "with one rest day in between" */
const ONE_IDLE = new RegExp(
  String.raw`\b(?:includ(?:es|ing)|with|of which|minus|less|counting|has|have) (?:an?|one|two|1|2)(?: (?:is|are))?(?: an?)? (?:${IDLE} days?|free day|days?(?:['’]s?)? (?:of |for |is |are )?(?:for )?${IDLE})(?=\s?(?:[.,;:!?)\n]|$|each way\b|either (?:side|way)\b|in between\b|between\b|in the middle\b|at (?:the|each|either) end\b))`,
  'iu',
);
/** Who has to be there for it as well. */
const MINE =
  /\b(?:you|your|u|ye|crew|we(?:['’]d)? (?:need|want|like)|film\p{L}*|video\p{L}*|camera\p{L}*|operator|all (?:of )?(?:it|the days)|both|everything|paid|pay|also|too|as well)\b/iu;
/** What is said of the days that are idle, though the camera is named. */
const NOBODY = /\b(?:nobody|no one|no camera|not? filmed|nothing to film|no filming|not needed|no need|n['’]t)\b/i;
/** "you'd be free on the" */
const FREE_ON =
  /\byou(?:['’]d| would| will|['’]ll|['’]re| are)? (?:be |have (?:a )?)?(?:free|off|day off|not needed|not wanted)(?: (?:again|then))? on (?:the )?$/i;
/** "I doubt the 14th will happen", not "will be as busy" */
const HAPPENS =
  /^ (?:will|would|is going to|can|is)(?: really| even| still| actually)? (?:happen(?:ing)?|go(?:ing)? ahead|tak(?:e|ing) place|be (?:on|needed|held|possible)|needed|on|come off|come to anything)\b/i;
const DOUBTED = /\b(?:doubt|not sure|unsure|don['’]t think|unlikely)(?: that| if| whether| about)? (?:the )?$/i;
const HOUSE = String.raw`(?:hall|venue|church|theat(?:re|er)|barn|room|rooms|house|building|arena|stadium|studio|space|gym|school|club|place|chapel|auditorium|marquee|tent|field|ground|grounds|site)`;
/** "we have the hall from", "the hall is ours from" */
const HELD = new RegExp(
  String.raw`\b(?:(?:have|['’]ve|got|hire|hired|rent|rented|book|booked|reserved|taken|took|had)(?: got| booked| hired| rented)? (?:the|our|a) (?:[\p{L}'’-]+ ){0,2}?${HOUSE}|${HOUSE} (?:is|has been|['’]s) (?:ours|booked|hired|rented|reserved|taken))(?: (?:for us|booked|hired|to ourselves))?(?: (?:from|for|on))?(?: the)? $`,
  'iu',
);
/** "on Saturday it's the clean-up" */
const IS_IDLE = new RegExp(
  String.raw`^,? (?:it['’]s|is|there['’]s|there is|being|we (?:do|have)|for)(?: only| just)?(?: the| a| our)? ${IDLE}(?: day)?(?=\s?(?:[.,;:!?)\n]|$))`,
  'iu',
);
const OWN_CLAUSE = /\band (?:then )?on (?:the )?\p{L}+day$/iu;
const LOOKED_THROUGH = 6000;
const REACH = 110;

/** The run, or what is left of it as a question beside the whole. */
export function heldAgainstIdleDays({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  const { dates } = event;
  if (dates.length < 2 || event.dropped || event.counted) return event;
  const asked = (days: readonly string[]): EventDays =>
    askedDays(event.where, days.length > 0 && days.length < dates.length ? [[...days], dates] : [dates], 'open');
  const front = text.slice(0, LOOKED_THROUGH);
  const place = IDLE_BY_PLACE.exec(front);
  if (place && !isMine(front, place) && (place[3] === undefined || NOBODY.test(sentenceOf(front, place)))) {
    const out = daysInPlace(place[1] ?? '', dates, place[2] === undefined ? 1 : numberOf(place[2]));
    return asked(dates.filter((day) => !out.includes(day)));
  }
  const one = dates.length > 2 ? ONE_IDLE.exec(front) : null;
  if (one && !isMine(front, one)) return asked([]);
  for (const mention of mentions.slice(0, MOST_MENTIONS)) {
    const days = mention.past || mention.by ? [] : namedAmong(mention, dates);
    if (days.length === 0) continue;
    const sentence = sentenceAround(text, mention.start, mention.end);
    const rest = text.slice(mention.end, sentence.end);
    const idle = IS_IDLE.test(rest) && !MINE.test(rest);
    // "on Thursday and Friday and on Saturday it's the clean-up"
    if (idle && days.length === dates.length && OWN_CLAUSE.test(text.slice(mention.start, mention.end))) return asked(dates.slice(0, -1));
    if (days.length === dates.length) continue;
    if (idle) return asked(dates.filter((day) => !days.includes(day)));
    if (isTold(mention, event)) continue;
    const lead = text.slice(Math.max(0, mention.start - REACH), mention.start);
    const free = FREE_ON.test(lead) && !/^,? (?:from|at|after|until|till|before|by)\b/i.test(text.slice(mention.end, mention.end + 12));
    const fromThen = /^[^.;!?\n]{0,30}\b(?:free|off|resting) (?:from|at|after|until|till|by|before)\b/i.test(rest);
    if ((isOff(text, mention) && !fromThen) || free || (DOUBTED.test(lead) && HAPPENS.test(rest)))
      return asked(dates.filter((day) => !days.includes(day)));
    if (isOfHeld(text, mention, event)) return asked(days);
  }
  return event;
}

const isTold = ({ start, end }: DateMention, { where }: EventDays): boolean => where.some((one) => one.start <= start && one.end >= end);

function sentenceOf(text: string, { index, 0: words }: RegExpExecArray): string {
  const { start, end } = sentenceAround(text, index, index + words.length);
  return text.slice(start, end);
}

function isMine(text: string, found: RegExpExecArray): boolean {
  const sentence = sentenceOf(text, found);
  return MINE.test(sentence) && !NOBODY.test(sentence);
}

/** A day of the time for which a hall is held, on which the occasion is. */
function isOfHeld(text: string, mention: DateMention, { where }: EventDays): boolean {
  const [run] = where;
  if (!run || OF_ELSE.has(mention.said) || mention.start < run.end || mention.start - run.end > REACH) return false;
  const clause = clauseBefore(text, mention.start, REACH);
  return HELD.test(text.slice(Math.max(0, run.start - REACH), run.start)) && OCCASION.test(clause) && IS_ON.test(clause);
}
/** "the concert is on", not "the party on Saturday starts at 7" */
const IS_ON = /\b(?:is|will be|takes place|happens|falls)(?: held)?(?: only| just)? (?:on )?(?:the )?$/i;
