/**
 * A day that other words move or put right: "they moved it by a week, to the 20th", "it's in fact the 14th", "update: now a day later", "we had to put the 6 November
 * date back a fortnight", "moved from Sunday 14 November to the Saturday". Which day it is now is asked about.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { weekdayWord } from '../words.ts';
import { askedDays, inMonthOf, MOST_MENTIONS, OF_ELSE, settledDay } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const IT = String.raw`(?:it|this|that|everything|(?:the|our|this) (?:whole )?(?:(?:\d{1,2}(?:st|nd|rd|th)? )?(?:\p{L}+ )?(?:date|day)|event|thing|fixture|match|game))`;
/** "moved", "moved it", "put it off", "changed the date": what is put, set or changed may be anything else. */
const MOVES = String.raw`(?:(?:mov(?:e|ed|ing)|push(?:ed|ing)?|shift(?:ed|ing)?|postpon(?:e|ed|ing)|switch(?:ed|ing)?|slid|slipped|delay(?:ed)?|put off)(?: ${IT})?|(?:put|bring|brought|chang(?:e|ed|ing)|swapp(?:ed|ing)) ${IT}|been (?:changed|put|brought))(?: (?:off|back|forward|on|again))?`;
/** "but after all it stays where it was" */
const STAYS =
  /\b(?:stays?|remains?|(?:is|are) staying|keep(?:ing)? it|leave it|left it) (?:where|as|when) (?:it|we|they) (?:was|is|were|are|had|always)\b|\b(?:stays?|remains?) (?:put|the same|unchanged)\b|\bnot moving after all\b/i;
const LENGTH = String.raw`(?:(?:a|one|two|three|four|\d) (?:days?|weeks?|fortnights?|months?))`;
/** Up to a day that is told by its number alone. */
const INSTEAD = new RegExp(
  String.raw`(?:\b${MOVES}\b[^.;!?\n]{0,36}\b(?:to|until|till|onto)(?: the)?(?: following| next| same)?(?: (?:mon|tues|wednes|thurs|fri|satur|sun)day,?)?|\b(?:or rather|in fact|make (?:that|it)|i meant|i mean|should (?:be|read|say|have been)|correction:?|(?:it|that)['’]s actually|it is actually|actually)(?: it(?:['’]s| is))?(?: on)?) (?:the )?$`,
  'iu',
);
/** "the 20th", and not "the 20th in its history". */
const ALONE = /^(?: of \p{L}+)?(?=\s?(?:[.,;:!?)\n]|$|instead\b|now\b|because\b|as\b|so\b|and\b|but\b))/iu;
/** By how much, where the new day is not named. */
const BY_LENGTH = new RegExp(
  String.raw`\b(?:now|it['’]s|it is|it will be) (?:now |all )?(?:exactly |just )?${LENGTH} (?:later|earlier)(?! than\b)(?=\s?[.,;!?)\n])|\b${MOVES}(?: from [^.;!?\n]{0,24})?(?: (?:back|forwards?|out|by))*(?<=back|forwards?|out|by) ${LENGTH}\b`,
  'giu',
);
const WEEKDAY = '(?:mon|tues|wednes|thurs|fri|satur|sun)day';
/** "moved from Sunday 14 November to the Saturday" */
const TO_BESIDE = new RegExp(
  String.raw`\b${MOVES}(?: from [^.;!?\n]{0,30})? (?:to|until|till|onto) (?:the )?(?:day (?:before|after)|(?:following|previous|next) (?:day|week|weekend|${WEEKDAY})|(${WEEKDAY}))(?=\s?(?:[.,;:!?)\n]|$|instead\b|now\b|because\b|as\b|so\b|and\b|but\b))(?!,? (?:the )?\d{1,2} \p{L})`,
  'giu',
);
const A_MOVE = new RegExp(String.raw`\b${MOVES}\b[^.;!?\n]*$`, 'iu');
/** What is moved is something else. */
const OF_ELSE_MOVED =
  /\b(?:start|hour|time|doors|kick-?off|clocks?|deadline|reply|answer|rehears\w*|set[- ]?up|delivery|(?:the|our|your|finished|final) (?:film|edit|video|call)|meeting|deposit|payment|invoice|furniture|chairs|stage|gear|cameras?|we (?:move|moved) (?:house|in|out|here|there)|moved (?:house|in|out|here|there|away)|forward to)\b/i;
const REACH = 90;
const LOOKED_THROUGH = 6000;
const MOST_FOUND = 4;

/** The one day, or with what moves it as a question. */
export function heldAgainstMoved({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  const day = settledDay(event);
  const [told] = event.where;
  if (day === undefined || !told) return event;
  const around = sentenceAround(text, told.start, told.end);
  if (STAYS.test(text.slice(told.end, told.end + 2 * REACH)) && A_MOVE.test(text.slice(around.start, told.start)))
    return askedDays(event.where, [[day]], 'open');
  const seen = mentions.slice(0, MOST_MENTIONS);
  for (const { start, end, explicit, past, by, said, sequence } of seen) {
    const number = sequence.items.length === 1 ? sequence.items[0]?.atom.day : undefined;
    const near: string | undefined =
      number === undefined || explicit || past || by || OF_ELSE.has(said) ? undefined : inMonthOf(day, number);
    if (near === undefined || near === day || start < told.end) continue;
    const lead = text.slice(Math.max(0, start - REACH), start);
    if (INSTEAD.test(lead) && ALONE.test(text.slice(end)) && !OF_ELSE_MOVED.test(sentenceOf(text, start, end)))
      return askedDays(event.where, [[near], [day]], 'open');
  }
  for (const words of [BY_LENGTH, TO_BESIDE]) {
    for (const found of [...text.slice(0, LOOKED_THROUGH).matchAll(words)].slice(0, MOST_FOUND)) {
      const end = found.index + found[0].length;
      // "from Friday to Saturday", which is the day that is told
      if (!/\d/.test(found[0]) && weekdayWord(found[1]?.toLowerCase() ?? '') === Temporal.PlainDate.from(day).dayOfWeek) continue;
      // "brought forward by a day to 13 November" names the day.
      const named = seen.some(
        (mention) =>
          (mention.explicit || event.where.some((one) => one.start === mention.start)) &&
          mention.start >= end - found[0].length &&
          mention.start < end + NAMED &&
          isNew(text, mention.start),
      );
      if (!named && !OF_ELSE_MOVED.test(sentenceOf(text, found.index, end))) return askedDays(event.where, [[day]], 'open');
    }
  }
  return event;
}
const NAMED = 30;

/** A day that is told as the new one: "to 13 November", ", so 13 November". */
const isNew = (text: string, at: number): boolean =>
  /(?:\b(?:to|so|now|on|till|until|is|be|i\.e\.)|[,:(–-])\s(?:now |on |it's |the |\p{L}+day,? )*$/iu.test(
    text.slice(Math.max(0, at - 24), at),
  );

function sentenceOf(text: string, start: number, end: number): string {
  const sentence = sentenceAround(text, start, end);
  return text.slice(sentence.start, sentence.end);
}
