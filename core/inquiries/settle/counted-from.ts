/**
 * What is to be filmed, or the occasion itself, told by how far it is from another one whose date is named: "the AGM is on 6 November, the fair a week later",
 * "the gala is on the 13th; the workshop you would film is two days after", "it is a week after our open day on 6 November". The date that is named is
 * that of the other one, so both days are asked about.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { numberWord } from '../words.ts';
import { OCCASION } from '../occasions.ts';
import { askedDays } from './days-among.ts';
import { FILM } from './day-of-run.ts';
import type { EventDays, Scene, Where } from './scene.ts';

const COUNT = String.raw`(?:one|an?|two|three|four|five|six|seven|eight|nine|ten|\d{1,2})`;
const WEEKDAY = String.raw`(?:mon|tues|wednes|thurs|fri|satur|sun)day`;
const PART = String.raw`(?:day|night|evening|afternoon|morning)`;
const LENGTH = String.raw`${COUNT} (?:days?|nights?|weeks?|fortnights?|months?)`;
/** "a week later", "the following Friday", "the evening before", "the next day" */
const FAR = new RegExp(
  String.raw`(?<!\p{L})(?:${LENGTH} (?:later|after|afterwards|earlier|before|beforehand|on)|the (?:following|next|previous|preceding) (?:${PART}|${WEEKDAY}|week(?:end)?|one)|the (?:${PART}|${WEEKDAY}|week(?:end)?) (?:after|before|following))(?: (?:that|this|it))?(?=\s?(?:[.,;:!?)\n]|$|and\b|at\b|in the\b|when\b|is when\b))`,
  'giu',
);
/** Who is wanted then, or what is filmed then, in the clause before. */
const MINE = new RegExp(
  String.raw`\b(?:you(?:['’]d| would| will|['’]ll|['’]re| are)(?: only| just)?(?: be)?(?: asked to| needed to| there to)? ${FILM}\b|(?:to be|being|get(?:s|ting)?|want(?:ed)?|need(?:ed)?|like) (?:it |this |that )?(?:filmed|recorded|covered|captured)\b|what (?:we|i)(?:['’]d)?(?: would| really| actually| only| just)* (?:want|need|like)\b|filming (?:is|would be|will be|takes place|happens)|the one (?:for you|you)\b|for which (?:we|i)(?:['’]d)? (?:need|want|would like|like) you\b)`,
  'iu',
);
/** "the fair", "with the party", "our dinner comes": the occasion that is told so, as the whole of its clause. */
const THING = new RegExp(
  String.raw`^\s*(?:and |with |followed by |then |(?:opens|begins|starts|kicks off|ends|closes|finishes) with )*(?:(?:the|our|a|an|my|his|her|their) )(?:[\p{L}'’-]+ ){0,2}?([\p{L}'’-]{2,20})(?: itself)?,?(?: (?:is|will be|follows|comes|takes place|happens|being|is held|falls))?(?: (?:on|exactly|just|always|only|then))*\s*$`,
  'iu',
);
/** What is then is no day of the camera: setting up, the finished film, an answer. */
const OF_ELSE =
  /\b(?:no|not|never|nobody|nothing(?! else)|without|set(?:s|ting)?[- ]?up|load\w*|rig\w*|build\w*|prep\w*|rehears\w*(?! (?:dinner|supper|meal))|run-?through|sound ?check|recce|strike|clean\w*|clear\w*|deliver\w*|edit\w*|edited|cut|files?|footage|ready|send|sent|upload\w*|link|call|ring|phone|meet\w*|chat|talk|reply|answer|confirm\w*|let (?:me|us) know|pay\w*|invoice|deposit|travel\w*|fly|arriv\w*|hotel|leave|photographer|rain|weather|last year|members|dress|tech|fitting|check-?in)\b|n['’]t\b/i;
/** "it is a week after our open day on", "the day before the parade of": up to the date from which it is told. */
const FROM_NAMED = new RegExp(
  String.raw`(?:^\s*|[.;:!?,\n(]\s*|\b(?:and|but|so|as) )(?:(it|that|this|which)|(?:the|our|a|my) (?:[\p{L}'’-]+ ){0,2}?([\p{L}'’-]{3,20}))(?:['’]s| is| will be| takes place| falls| comes| happens| is held| follows)(?: (?:on|exactly|always|just|usually|held|traditionally))* (?:${LENGTH}|the (?:first |next )?(?:${PART}|${WEEKDAY}|week(?:end)?)) (?:after|before|following|ahead of|prior to) (?:(?:the|our|my|their|his|her) )?(?:[\p{L}'’-]+ ){0,4}?[\p{L}'’-]{3,}(?:,? \(?which (?:is|falls|takes place|will be)(?: on)?|,? being(?: on)?| held on| on| of)(?: the)? $`,
  'iu',
);
/** "the Saturday after Thanksgiving on 27 November": everybody knows when that is, so the date is the day's own. */
const HOLIDAY =
  /\b(?:thanksgiving|christmas|easter|new year(?:['’]s)?|halloween|boxing day|labou?r day|memorial day|bonfire night|whitsun|pentecost|diwali|hanukkah|eid)(?: day| eve| sunday| monday)? (?:on|of)(?: the)? $/i;
/** "The fair follows the AGM of 6 November by a week" */
const FOLLOWS = /\bfollows? (?:the|our|my) (?:[\p{L}'’-]+ ){0,3}?[\p{L}'’-]+ (?:on|of) (?:the )?$/iu;
const BY_LENGTH = new RegExp(String.raw`^,? by ${LENGTH}\b`, 'iu');
/** "Two weeks after the open day on 30 October we hold our fair" */
const LED = new RegExp(
  String.raw`(?:^\s*|[.;:!?\n(]\s*)(?:exactly |just )?(?:${LENGTH}|the ${PART}) (?:after|before|following|ahead of) (?:the|our|my|their|his|her) (?:[\p{L}'’-]+ ){0,4}?[\p{L}'’-]+,? (?:on|of) (?:the )?$`,
  'iu',
);
const WE_HOLD =
  /^,? (?:(?:we|i|they)(?:['’]ll| will)? (?:hold|have|are having|celebrate|put on|run|stage|throw|host|do)|(?:comes?|is|follows|there(?:['’]s| is)) (?:the|our|a))\b/i;
const REACH = 130;
const LOOKED_THROUGH = 6000;
const MOST_FOUND = 5;

/** The days, or with those that are told from them as a question. */
export function heldAgainstCountedFrom({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  const [first, last] = [event.dates[0], event.dates.at(-1)];
  if (first === undefined && event.doubt === undefined) {
    const other = mentions.find((mention) => mention.by && mention.said === 'event' && isTheOthers(text, mention));
    return other ? askedDays([other], other.readings, 'open') : event;
  }
  if (first === undefined || last === undefined || event.dropped || event.counted) return event;
  if (event.where.every((where) => isTheOthers(text, where))) return askedDays(event.where, [event.dates], 'open');
  for (const found of [...text.slice(0, LOOKED_THROUGH).matchAll(FAR)].slice(0, MOST_FOUND)) {
    const [start, end] = [found.index, found.index + found[0].length];
    // "the following Friday, 19 November" tells its day itself.
    const dated = mentions.some((one) => one.end > start && one.start < end + NEXT_TO && one.explicit);
    const from = event.where.find((one) => one.end <= start && start - one.end < REACH);
    if (dated || !from) continue;
    const told = text.slice(from.end, start);
    const own = told.split(CLAUSE).at(-1) ?? '';
    // "the opening, for which we need you, is the evening before"
    const clause = IS.test(own) ? (told.split(SENTENCE).at(-1) ?? '') : own;
    const rest = text.slice(end, sentenceAround(text, start, end).end);
    const when = IS_WHEN.test(rest);
    if (!when && (OF_ELSE.test(clause) || OF_ELSE.test(rest))) continue;
    const thing = THING.exec(clause)?.[1];
    if (!MINE.test(clause) && !when && (thing === undefined || !(A_DO.test(thing) || (OCCASION.test(thing) && isToldAgain(text, thing)))))
      continue;
    const other = dayAt(BACK.test(found[0]) ? first : last, found[0]);
    return askedDays(event.where, other === undefined ? [event.dates] : [[other], event.dates], 'open');
  }
  return event;
}
/** "the Christmas party a month later" may be nobody's to film, but not "the fair" where a fair is asked for. */
const isToldAgain = (text: string, thing: string): boolean => text.toLowerCase().split(thing.toLowerCase()).length > 2;
const CLAUSE = /[.;:!?\n(]|,\s|\s-+\s|\b(?:and|but|so)\b/i;
/** "the farewell do" */
const A_DO = /^do$/i;
const IS = /^\s*(?:is|are|will be|takes place|happens|follows)(?: on)?\s*$/i;
const SENTENCE = /[.;:!?\n(]/;
const IS_WHEN = /^ (?:is|was) (?:when|what|where) (?:we|i) (?:need|want|would|'d)\b/i;
const NEXT_TO = 6;

/** A date that only says from where the occasion is counted. */
function isTheOthers(text: string, { start, end }: Where): boolean {
  const sentence = sentenceAround(text, start, end);
  const lead = text.slice(Math.max(sentence.start, start - REACH), start);
  const rest = text.slice(end, sentence.end);
  const [, it, thing] = (HOLIDAY.test(lead) ? null : FROM_NAMED.exec(lead)) ?? [];
  if (it !== undefined || (thing !== undefined && OCCASION.test(thing))) return true;
  return (FOLLOWS.test(lead) && BY_LENGTH.test(rest)) || (LED.test(lead) && WE_HOLD.test(rest));
}

const BACK = /\b(?:earlier|before|beforehand|previous|preceding)\b/i;
/** The day that is so far from another one; none where only its weekday or its week is told. */
function dayAt(from: string, words: string): string | undefined {
  const back = BACK.test(words);
  const [, count = '', unit = ''] = /^(\S+) (day|night|week|fortnight|month)s?\b/i.exec(words) ?? [];
  const one = /^the\b/i.test(words) && new RegExp(String.raw`\b${PART}\b`, 'i').test(words);
  const many = one ? 1 : (numberWord(count.toLowerCase()) ?? Number(/^an?$/i.test(count) ? 1 : count));
  if ((!one && unit === '') || Number.isNaN(many) || /^month/i.test(unit)) return undefined;
  const days = many * (/^week/i.test(unit) ? 7 : /^fortnight/i.test(unit) ? 14 : 1);
  return Temporal.PlainDate.from(from)
    .add({ days: back ? -days : days })
    .toString();
}
