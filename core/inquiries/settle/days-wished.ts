/**
 * A day around the job that is told in a sentence of its own and is wanted as well, or may be: "the following day we'd like an hour of interviews too",
 * "Friday is optional", "if you can stretch to the Sunday". It is asked about beside the days that are named.
 */
import { weekdayWord } from '../words.ts';
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays, consecutive, inMonthOf, MOST_MENTIONS, OF_ELSE } from './days-among.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

const WEEKDAY = String.raw`(mon|tues|wednes|thurs|fri|satur|sun)day`;
/** "the day before", "the next morning", "the Monday after", "Friday", "the one after", "a second day" */
const DAY = new RegExp(
  [
    String.raw`\b(?:day|night|evening|afternoon|morning) (?<side>before|after)\b(?! (?:tomorrow|yesterday))`,
    String.raw`\b(?<next>(?:next|following) (?:day|morning|afternoon|evening))\b`,
    String.raw`\b${WEEKDAY}\b(?! \d|,? the \d| (?:school|league|club|market|papers?)\b)(?: (?<week>before|after|following)\b)?`,
    String.raw`\b(?<more>(?:a|one) (?:second|extra|further|additional|third) day|extra day|another day|day (?:two|2)|second day|(?:next|following) (?:two|three|four) (?:days|nights|evenings|(?:mon|tues|wednes|thurs|fri|satur|sun)days))\b`,
    String.raw`\bon the (?<eve>eve)\b(?! of)`,
    String.raw`\bthe one (?<one>before|after)\b`,
  ].join('|'),
  'giu',
);
/** What is said of a job of mine. */
const MINE =
  /\b(?:film(?:ed|ing)?|record(?:ed|ing)?|cover(?:ed|age|ing)?|captur(?:e|ed|ing)|stream(?:ed|ing)?|video(?:ed)?|footage|shoot(?:s|ing)?|shots?|same again|time[- ]?lapse|interviews?|needed|wanted|(?:need|want|have|like|love) you|would you (?:stay|come|(?:do|manage) (?:the|that|an?|half))|could you (?:also )?(?:come|stay|do))\b/i;
/** A wish, not only that there is a camera. */
const WISHED =
  /\b(?:we|i|they|you|client|couple)(?:'d| would|'ll| will)?(?: also| both| really| still)? (?:need|needed|want|wanted|like|love|wish|require|be needed|be wanted)\b|\b(?:need(?:s|ed)?|want(?:s|ed)?|required|please|same again|in the plan|to be (?:filmed|covered|captured|recorded)|shooting (?:starts|begins)|filming (?:starts|begins)|would you|could you|can you)\b/i;
/** It may be or not. */
const MAY_BE =
  /(?:\bnot|n['’]t)(?: yet)? (?:decided|sure|certain|settled)\b(?! (?:who|what|how|where|when|why)\b)|\b(?:possibly|perhaps|maybe|optional|optionally|an option|bonus|stretch to|tbc|to be confirmed|tba|up in the air|undecided|still open(?! (?:on|till|until|to))|whether (?:or not )?we (?:do|shoot|film|need|have|add|want)|could be that|we(?:'d| would) add (?:the|that|an?)|(?:thinking|talking) (?:of|about) (?:adding|extending|staying on|doing)|if it happens|if possible|depend(?:s|ing) on|with and without|not out of the question|(?:may|might)(?: also)? (?:be|add|need|want|ask|have|extend|run)\b|(?:could|might) (?:we|you) (?:also )?(?:add|extend|stay on)|(?:quote|price) (?:\p{L}+ ){0,4}(?:separately|as an? (?:option|extra))|in case we (?:want|need|decide)|(?:(?:would|are|'d) (?:you|u)(?: be| also be)?|(?:whether|if) (?:you|u)(?:'d| would| are|'re)(?: be| also be)?) (?:free|available|up for)|(?:budget|money|funds|time) (?:allow(?:s|ing)?|permit(?:s|ting)?|stretch(?:es)?))\b/iu;
/** The days of others, of bad weather, of going there, of an answer, of the edit, of talking it over, of making ready; or of what was. */
const NOT_SO =
  /\b(?:no|not(?! (?:decided|out of|sure|yet (?:clear|known|decided)))|nothing|nobody|none|never|only|just|without(?! (?:the|a|that|\p{L}+day))|neither|rain\p{L}*|weather|storm\p{L}*|wet|wash-?out|back-?up|fall-?back|reserve|postpon\p{L}*|instead|moved?|rather than|another (?:videographer|crew|team|company)|(?:our|their|his|her|my) (?:own|brother|sister|cousin|friend|nephew|niece|uncle|dad|photographer)|photograph\p{L}*|travel\p{L}*|fly|flights?|trains?|drive|hotel|room|sleep|put you up|arriv\p{L}*|home|leave|by|deadline|answer|reply|let (?:me|us) know|hear|confirm|decide by|call|ring|phone|zoom|chat|meet|meeting|quote by|deliver\p{L}*|edit\p{L}*|teaser|highlights?|upload\p{L}*|post(?:ed|ing)?|online|website|email|send|invoice|pay|paid|deposit|contract|finished|ready|channel|screen\p{L}*|shown?|talk to|to talk|for questions|enjoy|gear|voicemail|messaged?|was|were|had|did|met|saw|spoke|last (?:year|week|month)|every|each|usually|always|collect|pick (?:up|you)|return|back|deliver|drop|strike|de-?rig|clear|clean\p{L}*|pack|works?|office|closed|open till)\b|n['’]t\b(?! (?:yet )?(?:decided|sure|certain|settled|out of))/iu;
/** What denies nothing. */
const NO_DENIAL =
  /\b(?:isn['’]t out of|no (?:worries|problem|pressure)(?: (?:at all|if not))?|(?:but )?if not|(?:could|can) you (?:tell|let) (?:me|us)(?: know)?)\b/gi;
/** "5 am next morning": the end of the night of the one day. */
const SMALL_HOURS = /\b0?[1-6](?:[:.]\d\d)? ?a\.?m\b/i;
/** "the recording up the next morning" */
const HANDED_OVER =
  /\b(?:film|video|recording|footage|clips?|cut|reel) (?:up|ready|done|back|out|live|finished|online|on the|sent|in our)\b/i;
const PREPARES =
  /\b(?:set(?:ting)?[- ]?up|load(?:ing)?[- ]?in|rig(?:s|ged|ging)?|build|install\w*|prep\w*|rehears\w*|run-?through|dress|get-?in|fit-?up|bump-?in|pre-?light\w*|recce|walk-?through|sound ?check|tech|test\w*|checks?|briefing|mount|cables?|gear)\b/i;
/** What is only made ready is mine where it is filmed. */
const FILMED =
  /\b(?:film(?:ed|ing)|record(?:ed|ing)|covered|captur(?:e|ed|ing)|time[- ]?lapse|on (?:film|video|camera))\b|\b(?:film|record|cover|shoot) (?:that|it|this|the)\b/i;
/** Another clause that speaks of the same day. */
const OF_THAT =
  /^ ?(?:and |but |which |so |please )?.{0,40}\b(?:that|those|these|them|it|this|too|as well|also|which|not sure|still open|two hours?|half (?:a )?day|optional|if)\b/i;
const LOOKED_THROUGH = 6000;
const MOST_HITS = 40;
const MOST_AWAY = 3;
const LONGEST_OPENING = 5;
const CLAUSE = /,\s|\s[-–—]+\s|[()]/;

/** The days, or with the one that is wished for as a question. */
export function heldAgainstWishes({ text, dates: mentions, times }: Scene, event: EventDays): EventDays {
  const [first, last] = [event.dates[0], event.dates.at(-1)];
  if (first === undefined || last === undefined || event.dropped || event.counted || !consecutive(event.dates)) return event;
  const told = [...daysTold(text, first, last), ...numbersTold(mentions, first, last)];
  // One of which it is told which it is goes before "a second day".
  for (const { start, end, other } of told.toSorted((one, two) => Number(one.other === '') - Number(two.other === ''))) {
    const mention = mentions.find((one) => one.start < end && one.end > start);
    if (mention && (mention.explicit || isOfElse(mention))) continue;
    const clause = clauseOf(text, start, end, mentions);
    // An hour tells of a call, and other rules have weighed it.
    if (!isWished(clause) || times.some((time) => time.said === 'call' && time.start >= clause.from && time.start < clause.to)) continue;
    return askedDays(event.where, other === '' ? [event.dates] : [event.dates, [...event.dates, other].toSorted()], 'open');
  }
  return event;
}

type Told = { start: number; end: number; other: string };

/** Days by what they are to those of the job. */
const daysTold = (text: string, first: string, last: string): Told[] =>
  [...text.slice(0, LOOKED_THROUGH).matchAll(DAY)].slice(0, MOST_HITS).flatMap((hit) => {
    const other = dayOf(hit, first, last);
    return other === undefined ? [] : [{ start: hit.index, end: hit.index + hit[0].length, other }];
  });

/** "the 11th" beside the 12th */
const numbersTold = (mentions: readonly DateMention[], first: string, last: string): Told[] =>
  mentions.slice(0, MOST_MENTIONS).flatMap(({ start, end, explicit, weekdayOnly, sequence: { items } }) => {
    const [item, ...more] = items;
    if (explicit || weekdayOnly || more.length > 0 || item?.atom.day === undefined) return [];
    const other = inMonthOf(first, item.atom.day);
    return other !== undefined && awayFrom(other, first, last) ? [{ start, end, other }] : [];
  });

/** Before or after the days, and near. */
const awayFrom = (day: string, first: string, last: string): boolean =>
  (day < first && Temporal.PlainDate.from(day).until(first).days <= MOST_AWAY) ||
  (day > last && Temporal.PlainDate.from(last).until(day).days <= MOST_AWAY);

const isOfElse = ({ said, past, by }: DateMention): boolean => past || by || OF_ELSE.has(said);

type Clause = { words: string; from: number; to: number };

/** What is said of the day: its clause, and the next one where that takes it up; no further than to another date. */
function clauseOf(text: string, start: number, end: number, mentions: readonly DateMention[]): Clause {
  const sentence = sentenceAround(text, start, end);
  const before = mentions.findLast((one) => one.explicit && one.end <= start && one.end > sentence.start);
  const behind = mentions.find((one) => one.explicit && one.start >= end && one.start < sentence.end);
  const [from, to] = [before?.end ?? sentence.start, behind?.start ?? sentence.end];
  const lead = text.slice(from, start).split(CLAUSE).at(-1) ?? '';
  const [rest = '', ...more] = text.slice(end, to).split(CLAUSE);
  const next = more.filter((words) => OF_THAT.test(words)).join(' , ');
  // "Perhaps, on Friday": an opening of one word belongs to what follows.
  const opening = text.slice(from, start).split(CLAUSE).slice(0, -1).join(' ');
  const words = `${opening.length > 0 && opening.trim().split(/\s/).length <= LONGEST_OPENING ? `${opening} ` : ''}${lead}${text.slice(start, end)}${rest} ${next}`;
  return { words, from, to };
}

function isWished({ words }: Clause): boolean {
  const said = words.replace(NO_DENIAL, (denial) => (/^isn/i.test(denial) ? 'is not out of' : ''));
  const maybe = MAY_BE.test(said);
  if (NOT_SO.test(said) || HANDED_OVER.test(said) || SMALL_HOURS.test(said) || (PREPARES.test(said) && !FILMED.test(said) && !maybe))
    return false;
  return maybe || /\bstretch\b/i.test(said) || (MINE.test(said) && WISHED.test(said));
}

/** The other day; an empty text where it is not said which; nothing where it is one of the days or far away. */
function dayOf({ 0: words, groups = {} }: RegExpExecArray, first: string, last: string): string | undefined {
  const [from, to] = [Temporal.PlainDate.from(first), Temporal.PlainDate.from(last)];
  if (groups['more'] !== undefined) return first === last ? '' : undefined;
  if (groups['one'] !== undefined)
    return (groups['one'].toLowerCase() === 'before' ? from.subtract({ weeks: 1 }) : to.add({ weeks: 1 })).toString();
  if (groups['next'] !== undefined || groups['side']?.toLowerCase() === 'after') return to.add({ days: 1 }).toString();
  if (groups['side'] !== undefined || groups['eve'] !== undefined) return from.subtract({ days: 1 }).toString();
  const weekday = weekdayWord(words.slice(0, 3).toLowerCase());
  if (weekday === undefined) return undefined;
  const [ahead, ago] = [(weekday - to.dayOfWeek + 7) % 7, (from.dayOfWeek - weekday + 7) % 7];
  if (groups['week'] !== undefined)
    return (groups['week'].toLowerCase() === 'before' ? from.subtract({ days: ago || 7 }) : to.add({ days: ahead || 7 })).toString();
  if (ahead === 0 || ago === 0 || ahead + ago !== 7 - (from.until(to).days % 7)) return undefined;
  if (ahead <= MOST_AWAY) return to.add({ days: ahead }).toString();
  return ago <= MOST_AWAY ? from.subtract({ days: ago }).toString() : undefined;
}
