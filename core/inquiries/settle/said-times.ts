/**
 * What each time of a message is said of, and on which date; numbers that nothing makes a time are left out.
 */
import { besideTheWork } from '../said/besides.ts';
import { CUE_REACH } from '../said/cues.ts';
import { ofOwnHours } from '../said/subject.ts';
import { tellsOfAside } from '../said/tells-of.ts';
import { sentenceAround } from '../parts/sentences.ts';
import type { TimeMention } from '../times/find.ts';
import { timesAcross } from './across.ts';
import { rowsOf } from './agenda.ts';
import { bareTime, UNTIL } from './bare-times.ts';
import { hoursAsWritten } from './hours-written.ts';
import { builtOf } from './built.ts';
import { dayOfMeeting, isOnTheDay, thatDay } from './that-day.ts';
import { columnsOf } from './columns.ts';
import { dateBeside, dateBetween, dateOfLine } from './date-of-hour.ts';
import { withCorrections } from './corrected.ts';
import { isException } from './exception.ts';
import { beginsForAll, labelOf } from './labels.ts';
import { holdsHours, lastOfRun } from './hours-in-dates.ts';
import { nearest, tailOf } from './nearest.ts';
import { dayUnder, headsOf } from './day-labels.ts';
import { whenItCame } from './note-head.ts';
import { nthHeading, nthIn, NTH_AFTER, NTH_REACH } from './nth-day.ts';
import type { DateMention, SaidTime, Where } from './scene.ts';
import { withoutStruck } from './struck-hours.ts';
import { toldThen } from './told-then.ts';
import { hourOfTravel } from './travel-hours.ts';

const DAY_BEFORE =
  /\b(?:(?:day|night|nite|evening|eve|afternoon|arvo) (?:before|prior)|(?:previous|prior|preceding) (?:day|night|nite|evening|eve|afternoon|arvo)|eve of|la veille|vortag|vorabend|(?:tag|abend) (?:davor|vorher|zuvor)|víspera|(?:día|noche) (?:antes|anterior)|vigilia|(?:giorno|sera) prima|(?:dag|avond) (?:ervoor|daarvoor|tevoren))\b/i;
/** "sound sets up the evening before but the cameras go in on the morning, 4.15am" */
const ON_THE_MORNING = /\bon the (?:same |actual |very )?(?:morning|day)(?: itself)?,? (?:at )?$/i;
const EVENING = /\b(?:evening|tonight|night|nite|afternoon|pm)\b/i;

const CALL_IS = /\bcall(?: time)?(?: is|'s)(?: at)?\s$/i;

/** "Scratch that, 7:30" takes back what stands before it. */
const VOID =
  /\b(?:ignore|disregard|forget|scratch|never ?mind)(?: about)?\b(?!(?: (?:that|this|it|all that|(?:the|my|our) (?:last|earlier|previous|old|first|other)(?: (?:one|mail|e-?mail|message|text|brief|note|dates?|version))?|what (?:i|we) (?:sent|said|wrote|told you)[^.;:\n\d]{0,20}))?\s?(?:[,.;:!-]|and\b|$))/i;
/** "1 PM, not 11 AM", "your call moves from 8 am to 7" */
const NOT_THEN =
  /(?:^|[,;(]\s?)(?:and )?(?:not|instead of|rather than)\s(?:at\s|the\s)?$|\b(?:moves?|moved|shift(?:s|ed)?|change[sd]?|(?:brought|put|pushed|pulled) (?:forward|back|up)|earlier|later) from $/i;
const LAST_TIME =
  /\b(?:last (?:year|time|month|week|spring|summer|autumn|fall|winter|edition)|previously|in the past|(?<!\b(?:bin|scrap|ignore|forget|disregard|replaces?|delete|supersedes?|unlike|cancel|drop) )the (?:last|previous) (?:one|event|edition|show)(?!(?: [a-z]+){0,4}? (?:is|are|will|would|should|left|can|may|arrives?|comes?|leaves?|goes|ends?|starts?|finish(?:es)?|stops?|lands?|gets?|runs?)\b|'s)|(?:back )?in (?:19|20)\d\d)\b/gi;
const THIS_TIME =
  /\b(?:this (?:year|time|month|week|spring|summer|autumn|fall|winter|one)|now|again|same|today|but|though|whereas|need|want|like)\b/i;

/** "Last year you came at 7": an hour of what is over. */
function pastBefore(text: string, from: number, to: number): boolean {
  const lead = text.slice(from, to);
  const last = [...lead.matchAll(LAST_TIME)].at(-1);
  return last !== undefined && !THIS_TIME.test(lead.slice(last.index + last[0].length));
}

/** Hours in which a place is open or ours, at the end of what stands before them. */
const OPEN_HOURS =
  /\b(?:open to (?:the )?(?:public|visitors|everyone|all)|(?:museum|shop|office|bar|café|cafe|kitchen|library|phone lines?) (?:is|are) open|(?:booked|hired|rented|reserved|we have|we've got) (?:the |a )?(?:hall|room|venue|church|space|place|theatre|theater|studio|barn|marquee))\b[^.;,]{0,16}$/i;
/** "you're free until 2", "break until 14h", "du bist bis 13 Uhr frei": work goes on then. */
const BREAK =
  /\b(?:(?:are|'re|be|is|bist|sind|êtes|es|estás|está) (?:then |all |dann )?(?:free|off|frei|libres?|vrij)|break|lunch|pause|pauze|rest|nap|descanso|pausa)\b[^.;,!?\n\d]{0,24}$/i;
/** "8.30 in the morning up to 6 in the evening" */
const UP_TO = /^ (?:right |on |then )?up to $/i;
/** "nothing to rig until 8" */
const NOT_YET = /\b(?:not|nothing|nobody|no[- ](?:one|need)|dont|wont|\p{L}+n't)\b[^.;,]*$/iu;
/** What may stand between two hours of two days that are said of the same: "wrap 5 pm Thursday, 2 pm Friday". */
const AND_ALSO = /^[\s,/&+-]*(?:(?:and|then|on|at|by|und|et|y|e|en)[\s,]*)*$/i;

/** Say of every time what it is a time of, and on which date; numbers that no rule makes a time stand apart. */
export function sayTimes(
  text: string,
  found: readonly TimeMention[],
  dates: readonly DateMention[],
): { times: SaidTime[]; numbers: SaidTime[] } {
  const times = hoursAsWritten(text, found);
  const said: SaidTime[] = [];
  const numbers: SaidTime[] = [];
  let consumed = 0;
  const across = timesAcross(text, times, dates);
  const heads = headsOf(text, dates);
  const rows = rowsOf(text, times);
  const labelled = times.some((time) => labelOf(text, time) === 'mine');
  const columns = columnsOf(text, times);
  for (const [index, time] of times.entries()) {
    const sentence = sentenceAround(text, time.start, time.end);
    const previous = times[index - 1];
    const from = Math.max(sentence.start, time.start - CUE_REACH, consumed, previous && !previous.bare ? previous.end : 0);
    const before = text.slice(from, time.start);
    const next = times[index + 1];
    const tail = tailOf(text, time.end, Math.min(sentence.end, next?.start ?? text.length, time.end + 40));
    const [row, column] = [rows.get(time), columns.get(time)];
    if (column) {
      said.push({
        ...time,
        said: column,
        until: false,
        date: dateOfLine(text, time, dates, true) ?? dayUnder(text, time, heads),
        dayBefore: false,
        nthDay: undefined,
        evening: false,
      });
      continue;
    }
    if (row) {
      said.push({
        ...time,
        said: row,
        until: row === 'wrap' && time.to !== undefined,
        date: dayUnder(text, time, heads) ?? dateBeside(text, time, dates, sentence),
        dayBefore: false,
        nthDay: undefined,
        evening: false,
      });
      continue;
    }
    const hit = nearest(text, { start: from, end: time.start }, tail, false);
    const beside = isOnTheDay(text.slice(time.end, sentence.end))
      ? undefined
      : (dateBeside(text, time, dates, sentence) ??
        dateOfLine(text, time, dates) ??
        (heads.length > 0 && hit.cue !== 'reply' ? dayUnder(text, time, heads) : undefined) ??
        (hit.cue === 'call' || hit.cue === 'wrap' ? dateBetween(from, time, dates, hit.after) : undefined) ??
        thatDay(text, before, time, dates) ??
        dayOfMeeting(text, time, dates, previous, sentence));
    const date = beside && time.to && beside.end <= time.start && holdsHours(text, beside) ? lastOfRun(beside) : beside;
    const free = hit.cue !== 'reply' && hit.cue !== 'delivery' && hit.cue !== 'past' && date?.said !== 'reply';
    const label = labelOf(text, time);
    const owned =
      (label === 'theirs' && (time.to !== undefined || labelled)) || beginsForAll(text, time)
        ? 'show'
        : label === 'mine' && (!time.bare || /^\s*(?:[.,;()\n]|$|until|till?|not)/.test(text.slice(time.end, time.end + 8)))
          ? 'call'
          : undefined;
    const built = free ? (toldThen(text, time) ?? builtOf(text, time, sentence, from)) : undefined;
    if (
      time.bare &&
      !across.has(time) &&
      !bareTime(text, time, { start: from, end: time.start }, hit, date, built?.cue ?? (owned === 'call' ? owned : undefined)) &&
      alsoSaid(text, time, time.from.military ? date : undefined, said.at(-1)) === undefined
    ) {
      numbers.push({ ...time, said: undefined, until: false, date, dayBefore: false, nthDay: undefined, evening: false });
      continue;
    }
    if (hit.after) consumed = time.end + hit.end;
    if (hourOfTravel(text, time, before, built?.cue === 'wrap') || whenItCame(text, time)) continue;
    const toldSo = built && (built.strong || hit.cue === undefined || hit.cue === 'event' || hit.cue === 'show') ? built.cue : undefined;
    // "be there from 15:00 and film until 22:00"
    const spanned = previous !== undefined && previous.end > sentence.start && !NOT_YET.test(before);
    const until =
      (toldSo === 'wrap' && time.to !== undefined) ||
      ((hit.cue === undefined || hit.cue === 'event' || (hit.cue === 'call' && !hit.after && spanned)) &&
        !time.to &&
        toldSo === undefined &&
        !BREAK.test(before) &&
        (UNTIL.test(before) || (!time.bare && UP_TO.test(before))));
    const aside = hit.cue !== 'reply' && !toldThen(text, time) && besideTheWork(text, time);
    if (aside || (until && !time.to && (ofOwnHours(text, time.start) || tellsOfAside(text, time.start)))) {
      said.push({ ...time, said: 'other', until: false, date: undefined, dayBefore: false, nthDay: undefined, evening: false });
      continue;
    }
    const end = across.get(time);
    const ofDate = date?.said === 'call' && !time.to && (hit.cue === undefined || hit.cue === 'event') && !end ? 'call' : undefined;
    const cue = until
      ? 'wrap'
      : (toldSo ??
        (hit.cue === undefined || hit.cue === 'event' || hit.cue === 'show' || hit.cue === 'call' ? owned : undefined) ??
        ofDate ??
        ((hit.cue === undefined || hit.cue === 'event' || (end === 'wrap' && hit.cue === 'call')) && end ? end : hit.cue));
    const also = cue === undefined ? alsoSaid(text, time, date, said.at(-1)) : undefined;
    // "the museum is open from 10 to 5", "we have booked the hall from 8 to 11"
    const open =
      time.to !== undefined &&
      (cue === undefined || cue === 'event' || cue === 'call') &&
      OPEN_HOURS.test(text.slice(sentence.start, time.start));
    const ofReply =
      date?.said === 'reply' && cue !== 'call' && cue !== 'wrap' && /^[\s,(]*(?:at |by )?$/i.test(text.slice(date.end, time.start));
    const over =
      (pastBefore(text, sentence.start, time.start) ||
        date?.said === 'past' ||
        VOID.test(text.slice(sentence.start, time.start)) ||
        NOT_THEN.test(before)) &&
      cue !== 'reply' &&
      // "Same drill as last year, only worse: call is 3.45am"
      !(cue === 'call' && CALL_IS.test(before));
    // "10am call Friday": the weekday is the call's, not the event's.
    if (date?.said === undefined && date && (cue === 'reply' || (date.weekdayOnly && (cue === 'call' || cue === 'wrap')))) date.said = cue;
    const clause = `${ownClause(before).split(/[,;]/).at(-1)} ${text.slice(tail.start, tail.end)}`;
    said.push({
      ...time,
      said: over ? 'past' : ofReply ? 'reply' : open ? 'other' : (cue ?? also),
      until,
      date,
      // "the evening before you dine with us and on Saturday we start at 7": the day that is named last counts.
      dayBefore:
        (!ON_THE_MORNING.test(before) &&
          DAY_BEFORE.test(
            date && date.start >= from && date.end <= time.start
              ? `${text.slice(date.start, time.start)} ${text.slice(tail.start, tail.end)}`
              : `${ownClause(before)} ${clause}`,
          )) ||
        (date === undefined && saidAgain(said.at(-1), time, sentence)),
      nthDay:
        nthIn(
          // "call 8 first day with load in Aug 2 from noon": the date is nearer.
          (date && isOneDay(date) && date.end <= time.start
            ? text.slice(Math.max(date.end, time.start - before.length), time.start)
            : before
          )
            .split(/[,;]|\band\b/)
            .at(-1) ?? '',
          text.slice(time.end, Math.max(tail.end, time.end + NTH_REACH)).split(/[,;.\n]|(?<!\bday )\d/i)[0] ?? '',
        ) ?? (date ? undefined : nthHeading(text.slice(sentence.start, time.start))),
      evening: EVENING.test(clause),
    });
  }
  return withoutStruck(text, withCorrections(text, said, numbers));
}

/** A date of one day that is told with its month. */
const isOneDay = ({ explicit, readings: [days, ...more] }: DateMention): boolean => explicit && more.length === 0 && days?.length === 1;

/** "the evening before, between 19h00 and 20h00, so come at 19h00": the same hour of the same day. */
const saidAgain = (last: SaidTime | undefined, { from }: TimeMention, sentence: Where): boolean =>
  last?.dayBefore === true && last.start >= sentence.start && [last.from, last.to].some((one) => one?.minutes === from.minutes);

const NTH_AND =
  /^[ap. m]{0,5}(?: on)? (?:(?:the \w+(?: (?:day|evening|night|morning|afternoon))?),? (?:and|then) |day (?:\d|one|two|three|four),? ?(?:and|then|[;/&])? )(?:at )?$/i;

/** What the hour before it is said of, where both are hours of different days of one list. */
function alsoSaid(text: string, time: TimeMention, date: DateMention | undefined, last: SaidTime | undefined): 'call' | 'wrap' | undefined {
  // "back on the dock 4pm (3pm on the last day)"
  if (last?.said === 'wrap' && !time.to && isException(text, last, time)) return 'wrap';
  // "wrap 6 the first evening and 4 the second"
  if (last?.nthDay !== undefined && (last.said === 'call' || last.said === 'wrap') && !time.to)
    return NTH_AND.test(text.slice(last.end, time.start)) && NTH_AFTER.test(text.slice(time.end, time.end + NTH_REACH))
      ? last.said
      : undefined;
  if (!date) return undefined;
  if (!last?.date || last.date === date || (last.said !== 'call' && last.said !== 'wrap') || time.to) return undefined;
  const between = text.slice(last.end, time.start);
  const cut = [last.date, date].reduce(
    (rest, { start, end }) => (start >= last.end && end <= time.start ? rest.replace(text.slice(start, end), '') : rest),
    between,
  );
  return AND_ALSO.test(cut) ? last.said : undefined;
}

/** "Stage is built the afternoon before so you needn't come until": what begins with me anew is not told of the day before. */
const ownClause = (before: string): string => before.split(/\b(?:so|but|though|because|as)\s(?=(?:you|u|your|we|i)\b)/i).at(-1) ?? '';
