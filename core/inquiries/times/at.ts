/**
 * One time of day as it is written: "8am", "0700", "14h00", "half eight", "noon", "6a". An hour without morning or evening stays open.
 */
import type { Token } from '../parts/tokens.ts';
import { numberWord } from '../words.ts';
import { minutesIn, ofThe, partAfter, partBefore, partElsewhere, type PartAt } from './day-parts.ts';
import { CLOCK, spokenElsewhere } from './elsewhere.ts';
import { ledAsHour } from './led.ts';

export type ClockTime = {
  first: number;
  next: number;
  /** Minutes after midnight; 1440 for a midnight that ends its day. */
  minutes: number;
  /** True when the writing leaves morning or evening open: "at 8", "7:30" where clocks of twelve hours are used. */
  open: boolean;
  /** A bare number, which is a time only beside a word that says so. */
  bare: boolean;
  midnight?: boolean;
  /** Four digits: two of them with a dash are hours, whatever stands around them. */
  military?: boolean;
};

type Tokens = readonly Token[];

/** A number after one of these counts them. */
const NUMBERED =
  /^(?:day|tag|jour|día|cam|camera|kamera|room|stage|hall|studio|no|number|part|act|item|heat|round|version|page|unit|level|floor|gate|platform|bay|block|zone|quay|pier|ref|job|grade|year|highway|route|junction|exit|channel|take|scene|lot|phase|tier|bus|train|option|local|pitch|court|pool|ward|under|over|age|aged)$/;
/** "U 12" is an age, "need u 5" an hour. */
const numbered = (before: Token | undefined): boolean => NUMBERED.test(before?.lower ?? '') || before?.text === 'U';
const counts =
  /^(?:%|people|persons?|pax|guests?|days?|weeks?|hours?|hrs?|minutes?|mins?|cameras?|cams?|ops?|operators?|speakers?|sessions?|rooms?|k|usd|cad|eur|gbp|per|x|of|years?|months?|miles?|km|stage|th|st|nd|rd|seconds?|secs?|nights?|clips?|videos?)$/;
/** "am", "a.m.", "a", "p" after an hour. */
function meridiemAt(tokens: Tokens, index: number): PartAt | undefined {
  const token = tokens[index];
  if (!token || token.breaks > 0) return undefined;
  // "07:00 am 25.", "9:30 am Samstag": a German preposition.
  const after = tokens[index + 1];
  // "um 12:30 am Standesamt"
  if (
    token.text === 'am' &&
    !token.tight &&
    /^\p{Lu}\p{Ll}/u.test(after?.text ?? '') &&
    tokens.slice(Math.max(0, index - 4), index).some(({ text }) => /^(?:um|gegen|ab|ca|etwa|bis)$/.test(text))
  )
    return undefined;
  if (
    token.text === 'am' &&
    after &&
    ((after.num !== undefined && tokens[index + 2]?.text === '.' && tokens[index + 2]?.tight) ||
      /^(?:\p{Lu}\p{Ll}*)?(?:tag|woch|abend|morgen|mittag)$/iu.test(after.text))
  )
    return undefined;
  if (token.lower === 'am' || token.lower === 'pm') return { part: token.lower, next: index + 1 };
  if ((token.lower === 'a' || token.lower === 'p') && tokens[index + 1]?.text === '.' && tokens[index + 2]?.lower === 'm')
    return {
      part: token.lower === 'a' ? 'am' : 'pm',
      next: tokens[index + 3]?.text === '.' && tokens[index + 3]?.tight ? index + 4 : index + 3,
    };
  if ((token.lower === 'a' || token.lower === 'p') && token.tight) return { part: token.lower === 'a' ? 'am' : 'pm', next: index + 1 };
  return undefined;
}

/** An hour of which words after it tell the part of the day. */
function inPart(first: number, { part, next }: PartAt, hour: number, minute: number): ClockTime {
  const minutes = minutesIn(hour, minute, part);
  return { first, next, minutes, open: false, bare: false, ...(minutes === 1440 ? { midnight: true } : {}) };
}

function made(
  tokens: Tokens,
  first: number,
  next: number,
  hour: number,
  minute: number,
  sure: boolean,
  bare: boolean,
): ClockTime | undefined {
  if (hour > 24 || minute > 59 || (hour === 24 && minute > 0)) return undefined;
  const half = meridiemAt(tokens, next) ?? partAfter(tokens, next);
  if (half && hour >= 1 && hour <= 12) return inPart(first, half, hour, minute);
  const settled = sure || hour > 12 || hour === 0;
  const part = settled ? undefined : partBefore(tokens, first, hour);
  // Whether a number alone is an hour at all its neighbours decide as before.
  if (part) return { first, next, minutes: minutesIn(hour, minute, part), open: false, bare };
  return { first, next, minutes: hour * 60 + minute, open: !settled && hour <= 12, bare };
}

/** Hours that have names: "half past midnight". */
const wholeHour = new Map([
  ['noon', 720],
  ['midday', 720],
  ['midnight', 0],
]);

/** Minutes that are spoken before a whole hour. */
const TO_THE_HOUR = new Set([5, 10, 20, 25]);

/** Minutes that are spoken after an hour; forty only with a five. */
const spelledMinutes = new Map([
  ['thirty', 30],
  ['fifteen', 15],
  ['forty', 40],
]);

function spokenAt(tokens: Tokens, index: number): ClockTime | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  const hourAt = (offset: number): number | undefined => {
    const hour = tokens[index + offset]?.num ?? numberWord(word(offset));
    return hour !== undefined && hour >= 1 && hour <= 12 && word(offset) !== 'a' && word(offset) !== 'an' && word(offset) !== 'couple'
      ? hour
      : undefined;
  };
  const elsewhere = spokenElsewhere(tokens, index);
  if (elsewhere) return made(tokens, index, elsewhere.next, elsewhere.hour, elsewhere.minute, false, false);
  if (word(0) === 'midi' && word(-1) === '-') return undefined;
  if (/^(?:noon|midday|noontime|midi|mittags?|mediodía|mezzogiorno)$/.test(word(0)))
    return { first: index, next: index + 1, minutes: 720, open: false, bare: false };
  if (word(0) === '12' && /^(?:noon|midday|nn)$/.test(word(1)))
    return { first: index, next: index + 2, minutes: 720, open: false, bare: false };
  if (word(0) === '12' && word(1) === 'midnight')
    return { first: index, next: index + 2, minutes: 1440, open: false, bare: false, midnight: true };
  if (/^(?:midnight|minuit|mitternacht|medianoche|mezzanotte|middernacht)$/.test(word(0)))
    return { first: index, next: index + 1, minutes: 1440, open: false, bare: false, midnight: true };
  if (word(0) === 'half') {
    const past = word(1) === 'past' ? 1 : 0;
    const whole = past === 1 ? wholeHour.get(word(2)) : undefined;
    if (whole !== undefined) return { first: index, next: index + 3, minutes: whole + 30, open: false, bare: false };
    const hour = hourAt(1 + past);
    if (hour !== undefined && (!counts.test(word(2 + past)) || ofThe(tokens, index + 2 + past)))
      return made(tokens, index, index + 2 + past, hour, 30, false, false);
  }
  const quarter = word(0) === 'quarter' ? 0 : word(0) === 'a' && word(1) === 'quarter' ? 1 : undefined;
  if (quarter !== undefined) {
    const way = word(quarter + 1);
    const hour = hourAt(quarter + 2);
    const whole = wholeHour.get(word(quarter + 2));
    if (whole !== undefined && /^(?:past|after|to|before|of)$/.test(way))
      return {
        first: index,
        next: index + quarter + 3,
        minutes: (whole + (/^(?:past|after)$/.test(way) ? 15 : 1425)) % 1440,
        open: false,
        bare: false,
      };
    if (hour !== undefined && (way === 'past' || way === 'after')) return made(tokens, index, index + quarter + 3, hour, 15, false, false);
    if (hour !== undefined && (way === 'to' || way === 'before' || way === 'of'))
      return made(tokens, index, index + quarter + 3, hour === 1 ? 12 : hour - 1, 45, false, false);
  }
  const minutes = tokens[index]?.num ?? numberWord(word(0));
  if (
    (minutes === 10 || minutes === 20 || minutes === 5 || minutes === 25) &&
    (word(1) === 'past' || (word(1) === 'to' && tokens[index]?.num === undefined))
  ) {
    const hour = hourAt(2);
    if (hour !== undefined)
      return word(1) === 'past'
        ? made(tokens, index, index + 3, hour, minutes, false, false)
        : made(tokens, index, index + 3, hour === 1 ? 12 : hour - 1, 60 - minutes, false, false);
  }
  // "at ten to midnight", "by five past noon"; "from ten to midnight" is a stretch.
  const named = wholeHour.get(word(2));
  const way = word(1);
  if (
    named !== undefined &&
    ((way === 'past' && minutes !== undefined && minutes < 60) ||
      (way === 'to' && minutes !== undefined && TO_THE_HOUR.has(minutes) && /^(?:at|by|is|till|until|about|around)$/.test(word(-1))))
  )
    return {
      first: index,
      next: index + 3,
      minutes: (named + (way === 'past' ? minutes : 1440 - minutes)) % 1440,
      open: false,
      bare: false,
    };
  // "be there 4 half 5", as it is typed on a telephone
  if (word(0) === '4' && word(1) === 'half' && hourAt(2) !== undefined)
    return made(tokens, index, index + 3, hourAt(2) ?? 0, 30, false, false);
  const hour = tokens[index]?.num === undefined ? hourAt(0) : undefined;
  // "one night", "two evening panels"
  if (hour !== undefined && !/^(?:morning|evening|afternoon|night)s?$/.test(word(1))) {
    const clock = word(1) === "o'clock" || word(1) === 'oclock' ? 1 : 0;
    // "seven-thirty", "eight forty-five"
    const dash = word(1) === '-' && tokens[index + 1]?.tight ? 1 : 0;
    const spelled = spelledMinutes.get(word(1 + dash));
    const five =
      word(1 + dash) === 'forty' ? (word(2 + dash) === '-' && word(3 + dash) === 'five' ? 2 : word(2 + dash) === 'five' ? 1 : 0) : 0;
    const minute = spelled === 40 && five === 0 ? 0 : (spelled ?? 0) === 40 ? 45 : (spelled ?? 0);
    const length = minute === 0 ? clock : dash + 1 + five;
    const time = made(tokens, index, index + 1 + length, hour, minute, false, length === 0);
    if (time && (!time.bare || !counts.test(word(1)))) return time;
  }
  return undefined;
}

const FIRST_FLEMISH = 7;
/** Hours that are counted before or after another. */
const LONGEST_BEFORE = 5;
const AHEAD = /^(?:before|beforehand|earlier|prior|ahead|later|avant|plus|antes|después|prima|dopo|vorher|davor|vor|eerder|long)$/;
const GERMAN_COUNTS = /^(?:gäste|leute|personen|teilnehmer|kinder|minuten|euro|fotos|kameras|€|%)/;

/** The time of day written at a token, if there is one. A bare number up to 24 counts as one; its neighbours decide. */
export function timeAt(tokens: Tokens, index: number): ClockTime | undefined {
  const token = tokens[index];
  if (!token) return undefined;
  const before = tokens[index - 1];
  if (token.tight && before && /[\p{L}\d$£€.,:/#]$/u.test(before.text) && token.num !== undefined) return undefined;
  const spoken = spokenAt(tokens, index);
  if (spoken) return spoken;
  if (token.num === undefined || (before && /^[$£€¥₹#]$/.test(before.text))) return undefined;
  const [mark, second] = [tokens[index + 1], tokens[index + 2]];
  const twoDigits = second?.tight && second.text.length === 2 && second.num !== undefined && second.num < 60;
  if (token.text.length <= 2 && mark?.tight && twoDigits && (mark.text === ':' || /^[hu]$/.test(mark.lower) || mark.text === '.')) {
    const afterwards = tokens[index + 3];
    if (afterwards?.tight && /^[.:/%]$/.test(afterwards.text) && tokens[index + 4]?.tight && tokens[index + 4]?.num !== undefined) {
      if (!(mark.text === ':' && afterwards.text === ':')) return undefined;
    }
    const hours = tokens[index + 3]?.lower;
    const suffix = hours !== undefined && (/^(?:h|hrs|hours)$/.test(hours) || CLOCK.test(hours)) ? 1 : 0;
    const padded = token.text.startsWith('0');
    const time = made(
      tokens,
      index,
      index + 3 + suffix,
      token.num,
      second.num as number,
      padded || /^[hu]$/.test(mark.lower) || suffix > 0,
      mark.text === '.' && suffix === 0 && !ledAsHour(tokens, index, index + 3),
    );
    return time;
  }
  if (token.text.length === 4 && token.num <= 2400 && token.num % 100 < 60) {
    const hours = mark?.lower === 'h' || mark?.lower === 'hrs' || mark?.lower === 'hours' || mark?.lower === 'hr';
    const half = meridiemAt(tokens, index + 1);
    if (half && Math.floor(token.num / 100) <= 12 && token.num >= 100)
      return inPart(index, half, Math.floor(token.num / 100), token.num % 100);
    return {
      first: index,
      next: index + (hours ? 2 : 1),
      minutes: Math.floor(token.num / 100) * 60 + (token.num % 100),
      open: false,
      bare: !hours,
      military: true,
    };
  }
  if (token.text.length === 3 && token.num >= 100 && token.num % 100 < 60) {
    const [hour, minute] = [Math.floor(token.num / 100), token.num % 100];
    const half = meridiemAt(tokens, index + 1);
    if (half) return inPart(index, half, hour, minute);
    // "be there 130": only beside a word for a call, and no count.
    return minute % 15 === 0 && !counts.test(mark?.lower ?? '')
      ? { first: index, next: index + 1, minutes: hour * 60 + minute, open: true, bare: true }
      : undefined;
  }
  if (token.text.length > 2 || (numbered(before) && !/^(?:am|pm|h|uhr|uur|:)$/.test(mark?.lower ?? ''))) return undefined;
  // "9 h 30", "17 h"
  if (mark?.text === 'h' && !mark.tight && mark.breaks === 0 && token.num <= 24 && !/^(?:days?|shifts?)$/.test(second?.lower ?? '')) {
    const minutes =
      second?.breaks === 0 && second.text.length === 2 && second.num !== undefined && second.num < 60 ? second.num : undefined;
    return {
      first: index,
      next: index + (minutes === undefined ? 2 : 3),
      minutes: token.num * 60 + (minutes ?? 0),
      open: false,
      bare: false,
    };
  }
  // "1h before the mass"
  if (mark?.lower === 'h' && token.num <= LONGEST_BEFORE && AHEAD.test(second?.lower ?? '')) return undefined;
  // "22u" is an hour in Belgium; "2u" is "to you".
  const marked = mark?.tight === true && (mark.lower === 'h' || (mark.lower === 'u' && token.num >= FIRST_FLEMISH));
  if (mark && (marked || CLOCK.test(mark.lower)) && token.num <= 24) {
    // "6 Uhr 45"
    const minute = !marked && second?.breaks === 0 && second.text.length === 2 ? second.num : undefined;
    if (minute !== undefined && minute < 60 && !GERMAN_COUNTS.test(tokens[index + 3]?.lower ?? ''))
      return made(tokens, index, index + 3, token.num, minute, true, false);
    const part = token.num >= 1 && token.num <= 12 ? partElsewhere(tokens, index + 2) : undefined;
    if (part) return inPart(index, part, token.num, 0);
    return { first: index, next: index + 2, minutes: token.num * 60, open: false, bare: false };
  }
  if (mark?.lower === "o'clock" || mark?.lower === 'oclock') return made(tokens, index, index + 2, token.num, 0, false, false);
  const time = made(tokens, index, index + 1, token.num, 0, token.text.startsWith('0') && token.text.length === 2, true);
  if (!time || !time.bare) return time;
  if (
    mark &&
    mark.breaks === 0 &&
    (counts.test(mark.lower) ||
      (mark.tight && /^[/%.,]$/.test(mark.text) && tokens[index + 2]?.tight && tokens[index + 2]?.num !== undefined))
  )
    return undefined;
  return { ...time, bare: !ledAsHour(tokens, index, index + 1) };
}
