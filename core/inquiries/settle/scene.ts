/**
 * What all the deciders look at: the text, its words, the dates, times and amounts in it, and what each date and time is said of.
 */
import type { Amount } from '../money/find.ts';
import { cuesIn, CUE_REACH, type Cue } from '../dates/cues.ts';
import type { Resolved } from '../dates/resolve.ts';
import type { Sequence } from '../dates/sequences.ts';
import { sentenceAround } from '../parts/sentences.ts';
import type { Token } from '../parts/tokens.ts';
import { settledPair, type TimeMention } from '../times/find.ts';

export type DateMention = Resolved & {
  start: number;
  end: number;
  sequence: Sequence;
  said: Cue | undefined;
  /** "by Friday" */
  by: boolean;
  /** What stands before it in its sentence. */
  before: string;
};
export type SaidTime = TimeMention & {
  said: Cue | undefined;
  date: DateMention | undefined;
  dayBefore: boolean;
  nthDay: number | undefined;
  /** "until 20:30" */
  until: boolean;
  evening: boolean;
};
export type Where = { start: number; end: number };

export type Scene = {
  text: string;
  tokens: readonly Token[];
  received: Temporal.ZonedDateTime;
  dates: readonly DateMention[];
  times: readonly SaidTime[];
  amounts: readonly Amount[];
};

const BY =
  /\b(?:by|before|until|till|no later than|not later than|due|deadline|within|latest|bis(?: zum)?|spätestens|avant(?: le)?|antes del?|entro(?: il)?|uiterlijk)\b[^,;]{0,28}$/i;
const CONNECTS = /^[\s,(:@-]*(?:(?:on|at|from|by|is|for|of|the|are|will be|around|about|approx|in|~)\s*){0,3}$/i;
/** A thing has a due date only with a word for it; what is delivered or published may also be "on" a day. */
const DUE = /\b(?:by|before|due|within|until|deadline|no later|ready|latest|wants?|needed)\b/i;
const DUE_OR_ON = /\b(?:by|before|due|within|until|deadline|no later|end of|on|is|ready|live|latest)\b/i;
const DELIVERS = /^(?:deliver|publish|upload|post|go|premier|air)/i;
const CALLED_AFTER = /^[\s(]*(?:crew |is |a )?calls?\b(?!\s(?:me|you|us|him|her|back))/i;
/** "2am out", "9pm done" */
const OUT_AFTER = /^\s(?:out|done|finish|end)\b(?!\s(?:of|by|at|\d))/i;
const SPOKE_AFTER = /^,?\s(?:we|i) (?:spoke|talked|met|saw|chatted)\b/i;
const CHAT_AFTER =
  /^[^.;?!,]{0,20}\b(?:to (?:chat|talk|speak|discuss)|for a (?:quick |short )?(?:call|chat|zoom)|by phone|on the phone)\b/i;
/** "bis zum 15. Februar Bescheid" */
const ANSWER_AFTER = /^[^.;?!,]{0,12}\b(?:bescheid|rückmeldung|antwort\w*|zu antworten|répon\w*)/i;
const NOT_IT = /\b(?:was|were|not|originally|instead of|rather than|except|excluding|unless)\s(?:on\s|for\s)?(?:the\s)?$/i;
const EVENT_NOUN = /^\s(?:shoot|event|conference|wedding|gig|job|show|festival|summit|gala|date|dates)\b/i;
const ASKS_NOW = /\b(?:need|want|looking|would like|this year|hoping|plan|now)\b/i;

/** Words between a cue and a bare number that keep it a time: "call at 8", "wrap by about 6", "load-in Friday at 2". */
const TO_NUMBER =
  /^[\s:=,(-]*(?:(?:is|are|at|by|from|for|of|on|will be|would be|around|about|approx|approximately|no later than|time|times|the|day|before|evening|morning|early|starts?|starting|\d{1,2}(?:st|nd|rd|th)?|\p{L}{3,9}day|mon|tue|wed|thu|fri|sat|sun|each|every|both|days|ab|um|ca|gegen|à|a las|las|alle|om|dès|vers|night|=|@|~|:|,|-)[\s:,]*){0,6}$/iu;

/** What a stretch of text is said of, by the nearest cue; dates need the cue for a delivery or a past event to be close and plain. */
function nearest(
  text: string,
  piece: Where,
  tail: Where & { shared?: boolean },
  isDate: boolean,
): { cue: Cue | undefined; end: number; after: boolean } {
  const before = text.slice(piece.start, piece.end);
  const after = text.slice(tail.start, tail.end);
  const last = cuesIn(text, piece.start, piece.end, !isDate)[0];
  const gap = last ? before.slice(last.end) : '';
  const tight = last !== undefined && CONNECTS.test(gap);
  const follows = cuesIn(text, tail.start, tail.end).toSorted((a, b) => a.start - b.start)[0];
  const lead = follows ? after.slice(0, follows.start) : '';
  const close = follows !== undefined && /^[\s(]*(?:(?:is|for|the|as|our|a|crew|will be|are|to|=)\s+){0,3}$/i.test(lead);
  const mine = close && follows && ['call', 'wrap', 'reply', 'delivery', 'show', 'other'].includes(follows.cue);
  if (CALLED_AFTER.test(after) && !tight) return { cue: 'call', end: CALLED_AFTER.exec(after)?.[0].length ?? 0, after: true };
  if (isDate && ANSWER_AFTER.test(after)) return { cue: 'reply', end: 0, after: false };
  if (isDate && NOT_IT.test(before)) return { cue: 'past', end: 0, after: false };
  if (CHAT_AFTER.test(after)) return { cue: 'other', end: 0, after: false };
  if (isDate && SPOKE_AFTER.test(after)) return { cue: 'past', end: 0, after: false };
  if (isDate && close && follows?.cue === 'event' && !(tight && last?.cue === 'reply') && EVENT_NOUN.test(after))
    return { cue: 'event', end: 0, after: false };
  const bracketed = (!isDate || tail.shared === true) && lead.includes('(');
  const fromAfter = { cue: follows?.cue, end: follows?.end ?? 0, after: true };
  if (OUT_AFTER.test(after) && !isDate && !tight) return { cue: 'wrap', end: 5, after: true };
  if (mine && !tight && !bracketed) return fromAfter;
  if (
    mine &&
    isDate &&
    last &&
    (last.cue === 'event' || last.cue === 'show') &&
    (follows.cue === 'call' || follows.cue === 'reply') &&
    /\bis\b|\bfor\b|\(/.test(lead)
  )
    return fromAfter;
  if (last) {
    if (last.cue === 'delivery' && !(DELIVERS.test(before.slice(last.start)) ? DUE_OR_ON : DUE).test(before.slice(last.start)))
      return { cue: undefined, end: 0, after: false };
    if (last.cue === 'past' && ASKS_NOW.test(gap)) return { cue: 'event', end: 0, after: false };
    if (last.cue === 'show' && !isDate && !TO_NUMBER.test(gap)) return { cue: undefined, end: 0, after: false };
    // "be at the dock by 8, back around 1pm": the cue belongs to the first hour.
    if (!isDate && /\b(?:by|at|from)\s\d/.test(gap)) return { cue: undefined, end: 0, after: false };
    if (last.cue === 'other' && (gap.length > 45 || gap.includes(')'))) return { cue: undefined, end: 0, after: false };
    return { cue: last.cue, end: 0, after: false };
  }
  return mine && !bracketed ? fromAfter : { cue: undefined, end: 0, after: false };
}

/** What follows up to the next comma. */
function tailOf(text: string, start: number, to: number): Where {
  // A point that ends a short month may end the sentence as well.
  if (text[start - 1] === '.' && /^\s+\p{Lu}/u.test(text.slice(start, start + 4))) return { start, end: start };
  const end = Math.max(start, to);
  const comma = text.slice(start, end).search(/[,;]/);
  return { start, end: comma < 0 ? end : start + comma };
}

/** Say of every date what it is a date of. */
export function sayDates(
  text: string,
  found: readonly { sequence: Sequence; resolved: Resolved; start: number; end: number }[],
): DateMention[] {
  let consumed = 0;
  return found.map((item, index) => {
    const sentence = sentenceAround(text, item.start, item.end);
    const previous = found[index - 1];
    const from = Math.max(sentence.start, item.start - CUE_REACH, consumed, previous?.end ?? 0);
    const before = text.slice(from, item.start);
    const next = found[index + 1];
    const tail = tailOf(text, item.end, Math.min(sentence.end, next?.start ?? text.length, item.end + 60));
    // A cue in brackets that leads on to another date is that one's: "11 December (backup 12 December)".
    const hit = nearest(text, { start: from, end: item.start }, { ...tail, shared: tail.end === next?.start }, true);
    if (hit.after) consumed = item.end + hit.end;
    // "every Tuesday" is no one day.
    if (item.resolved.weekdayOnly && /\b(?:every|each)\s$/i.test(before))
      return {
        ...item.resolved,
        readings: [],
        vague: true,
        start: item.start,
        end: item.end,
        sequence: item.sequence,
        said: hit.cue,
        by: false,
        before,
      };
    return { ...item.resolved, start: item.start, end: item.end, sequence: item.sequence, said: hit.cue, by: BY.test(before), before };
  });
}

const UNTIL = /\b(?:until|till|til|thru|through)\s(?:about |around )?$/i;
const DAY_BEFORE =
  /\b(?:(?:day|night|evening|afternoon) (?:before|prior)|(?:previous|prior|preceding) (?:day|night|evening|afternoon)|eve of)\b/i;
const NTH = /\b(?:day (one|two|three|four|five|1|2|3|4|5)|(first|second|third|fourth|fifth|last|final|opening|closing) day)\b/i;
const order: Record<string, number> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  first: 1,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  last: -1,
  final: -1,
  opening: 1,
  closing: -1,
};
const EVENING = /\b(?:evening|tonight|night|afternoon|pm)\b/i;

function nthIn(piece: string): number | undefined {
  const match = NTH.exec(piece);
  const word = match?.[1] ?? match?.[2];
  return word === undefined ? undefined : (order[word.toLowerCase()] ?? Number(word));
}

/** Say of every time what it is a time of, and on which date; numbers that nothing makes a time are left out. */
export function sayTimes(text: string, times: readonly TimeMention[], dates: readonly DateMention[]): SaidTime[] {
  const said: SaidTime[] = [];
  let consumed = 0;
  for (const [index, time] of times.entries()) {
    const sentence = sentenceAround(text, time.start, time.end);
    const previous = times[index - 1];
    const from = Math.max(sentence.start, time.start - CUE_REACH, consumed, previous && !previous.bare ? previous.end : 0);
    const before = text.slice(from, time.start);
    const next = times[index + 1];
    const tail = tailOf(text, time.end, Math.min(sentence.end, next?.start ?? text.length, time.end + 40));
    const hit = nearest(text, { start: from, end: time.start }, tail, false);
    const date =
      dateBeside(text, time, dates, sentence) ??
      (hit.cue === 'call' || hit.cue === 'wrap' ? dateBetween(from, time, dates, hit.after) : undefined);
    if (time.bare && !bareTime(text, time, { start: from, end: time.start }, hit, date)) continue;
    if (hit.after) consumed = time.end + hit.end;
    const until = hit.cue === undefined && !time.to && UNTIL.test(before);
    const cue = until ? 'wrap' : hit.cue;
    // "10am call Friday": the weekday is the call's, not the event's.
    if (date?.weekdayOnly && date.said === undefined && (cue === 'call' || cue === 'wrap' || cue === 'reply')) date.said = cue;
    const clause = `${before.split(/[,;]/).at(-1)} ${text.slice(tail.start, tail.end)}`;
    said.push({
      ...time,
      said: cue,
      until,
      date,
      dayBefore: DAY_BEFORE.test(`${before} ${clause}`),
      nthDay: nthIn(clause),
      evening: EVENING.test(clause),
    });
  }
  return said;
}

function bareTime(
  text: string,
  time: TimeMention,
  piece: Where,
  hit: { cue: Cue | undefined; after: boolean },
  date: DateMention | undefined,
): boolean {
  if (time.to) {
    const lead = text.slice(Math.max(0, time.start - 24), time.start);
    if (
      /(?:^|[.,;:\n(])\s*$/.test(lead) &&
      /^\s*(?:[.,;)\n]|$)/.test(text.slice(time.end, time.end + 3)) &&
      settledPair(time.from, time.to) &&
      time.from.minutes >= 6 * 60
    )
      return true;
    const tail = text.slice(time.end, time.end + 24);
    return (
      /\b(?:from|hours?|times?|between)\s?:?\s$/i.test(lead) ||
      /^\s?(?:each|every|both|all|daily|on (?:the|both)|per day|\(?local)/i.test(tail) ||
      hit.cue === 'call' ||
      hit.cue === 'show' ||
      (date !== undefined && /^[\s,:(@-]*$/.test(text.slice(date.end, time.start)) && date.end <= time.start)
    );
  }
  const before = text.slice(piece.start, piece.end);
  const last = cuesIn(text, piece.start, piece.end, true)[0];
  if (hit.after && /\d/.test(text[time.start] ?? '') && (hit.cue === 'call' || hit.cue === 'wrap' || hit.cue === 'show'))
    return time.from.minutes % 60 === 0 || time.from.minutes >= 60;
  if (!last || !(last.cue === 'call' || last.cue === 'wrap' || last.cue === 'show' || last.cue === 'reply')) return false;
  const gap = before.slice(last.end);
  const reply = last.cue === 'reply' || last.cue === 'show';
  if (last.cue === 'call' && /^[\s\w'-]{0,30}\b(?:by|at)\s*$/.test(gap)) return true;
  return TO_NUMBER.test(gap) && (!reply || /\b(?:at|by)\s*$/i.test(before));
}

/** A date between the words for a call and its hour belongs to them, whatever else stands there. */
function dateBetween(from: number, time: TimeMention, dates: readonly DateMention[], after: boolean): DateMention | undefined {
  return after
    ? undefined
    : dates.findLast((date) => date.start >= from && date.end <= time.start && (date.said === 'call' || date.said === 'wrap'));
}

/** The date that stands next to a time, with only small words between them. */
function dateBeside(text: string, time: TimeMention, dates: readonly DateMention[], sentence: Where): DateMention | undefined {
  let best: { date: DateMention; gap: number } | undefined;
  for (const date of dates) {
    if (date.end < sentence.start || date.start > sentence.end) continue;
    const between =
      date.end <= time.start ? text.slice(date.end, time.start) : date.start >= time.end ? text.slice(time.end, date.start) : '';
    if (between.length > 40) continue;
    const beforeIt = date.end <= time.start;
    const small = beforeIt
      ? /^[\s,:(@-]*(?:(?:at|from|by|around|about|the|in|starting|no later than|morning|afternoon|evening|arvo|night|before|call|load-in|call time|time|is|set-up|setup|arrive|wrap|,|:|-)[\s,:]*){0,4}$/i.test(
          between,
        )
      : /^[\s,(-]*(?:(?:on|the|in|morning|evening|of|local|this|next|time|call|load-in|sharp|prompt|,)[\s,]*){0,3}$/i.test(between);
    if (!small) continue;
    // A comma parts more than a few words do: "Friday, noon call Saturday".
    const gap = between.length + (between.includes(',') ? 8 : 0);
    if (!best || gap < best.gap) best = { date, gap };
  }
  return best?.date;
}
