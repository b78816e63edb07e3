/**
 * Dates told from today or by a name: "tomorrow", "in two weeks", "next Friday", "Saturday week", "last Friday in March", "New Year's Eve".
 */
import { numberWord } from '../words.ts';
import { besideAt, feastAt } from './feasts.ts';
import { namedDayAt } from './named-days.ts';
import { namedTimeAt } from './named-times.ts';
import { nearDayAt } from './near-days.ts';
import { notThisAt } from './not-this.ts';
import { monthEndAt } from './month-ends.ts';
import { everyAt, monthPhrase } from './of-months.ts';
import { weekdayPhrase, which } from './of-weeks.ts';
import { placesAt } from './several-places.ts';
import { shiftedAt } from './shifted.ts';
import { dayAt, DAYS_IN_WEEK, weekdayAt, type Atom, type Tokens } from './pieces.ts';
import { weeksAheadAt } from './weeks.ts';
import { namedAt, numericAt } from './written.ts';

/** "tomorrow", "in two weeks", "next Friday", "Friday week", "this weekend", "last Friday in March", "end of March" */
export function relativeAt(tokens: Tokens, index: number): Atom | undefined {
  return (
    nearDayAt(tokens, index) ??
    notThisAt(tokens, index) ??
    monthEndAt(tokens, index) ??
    namedDayAt(tokens, index) ??
    feastAt(tokens, index) ??
    besideOrShiftedAt(tokens, index) ??
    namedTimeAt(tokens, index) ??
    inLength(tokens, index) ??
    inWeeksAbroad(tokens, index) ??
    everyAt(tokens, index) ??
    placesAt(tokens, index) ??
    monthPhrase(tokens, index) ??
    weekdayPhrase(tokens, index)
  );
}

/** From another day; one that only its country's custom tells is not known. */
function besideOrShiftedAt(tokens: Tokens, index: number): Atom | undefined {
  const beside = besideAt(tokens, index);
  return beside?.relative?.kind === 'beside' ? beside : (shiftedAt(tokens, index) ?? beside);
}

const ROUGHLY = /^(?:about|around|roughly|approximately|circa|some)$/;

function inLength(tokens: Tokens, index: number): Atom | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  let at = 0;
  const leads = word(0) === 'in';
  if (leads) at++;
  // "in about three weeks" is no one day.
  const roughly = leads && ROUGHLY.test(word(at));
  if (roughly || /^(?:exactly|just|about)$/.test(word(at))) at++;
  // "fortnight today"
  const bare = word(at) === 'fortnight' && /^(?:today|tomorrow)$/.test(word(at + 1));
  let count = bare ? 1 : (tokens[index + at]?.num ?? numberWord(word(at)));
  if (count === undefined) return undefined;
  if (!bare) at++;
  if (word(at - 1) === 'a' && word(at) === 'couple') {
    count = 2;
    at++;
    if (word(at) === 'of') at++;
  }
  const unit = word(at).replace(/'$/, '');
  const size = /^days?$/.test(unit) ? 1 : /^(?:weeks?|wks?)$/.test(unit) ? 7 : unit === 'fortnight' ? 14 : undefined;
  at++;
  if (/^months?$/.test(unit) && count <= MOST_MONTHS) return inMonths(tokens, index, at, count);
  if (size === undefined || count < 1 || count > 400) return undefined;
  if (roughly) return { first: index, next: index + at, relative: { kind: 'week', weeks: Math.floor((count * size) / DAYS_IN_WEEK) } };
  const weeks = (count * size) / DAYS_IN_WEEK;
  const onWeekday = ({ weekday, next }: { weekday: number; next: number }, how: 'ahead' | 'plain'): Atom => ({
    first: index,
    next,
    weekday,
    relative: { kind: 'weekday', weekday, which: how, weeks },
  });
  const tail = word(at) === "'" ? 1 : 0;
  const later = leads && size >= 7 ? weekdayThen(tokens, index + at + (word(at + tail) === 'time' ? tail + 1 : 0)) : undefined;
  if (later) return onWeekday(later, 'ahead');
  if (word(at + tail) === 'time' && leads)
    return { first: index, next: index + at + tail + 1, relative: { kind: 'days', days: count * size } };
  if (size >= 7 && /^(?:today|tomorrow)$/.test(word(at)))
    return { first: index, next: index + at + 1, relative: { kind: 'days', days: count * size + (word(at) === 'tomorrow' ? 1 : 0) } };
  if (word(at) === 'from' && (word(at + 1) === 'today' || word(at + 1) === 'now'))
    return { first: index, next: index + at + 2, relative: { kind: 'days', days: count * size } };
  if (word(at) === 'from' && word(at + 1) === 'tomorrow')
    return { first: index, next: index + at + 2, relative: { kind: 'days', days: count * size + 1 } };
  if ((word(at) === 'from' || word(at) === 'on') && size >= 7) {
    // "two weeks from this Saturday" is said from the coming one; "from next Saturday" from either.
    const coming = word(at + 1) === 'this' ? (/^(?:coming|upcoming)$/.test(word(at + 2)) ? 2 : 1) : 0;
    const weekday = which.has(word(at + 1 + coming)) ? undefined : weekdayAt(tokens, index + at + 1 + coming);
    if (weekday) return onWeekday(weekday, 'plain');
  }
  // "a week Saturday", "two weeks Sunday"; not "for two weeks, Saturday and Sunday"
  const direct = size >= 7 && !leads && tokens[index + at]?.breaks === 0 && !/^(?:for|over|of|last)$/.test(word(-1));
  const of = direct ? weekdayAt(tokens, index + at) : undefined;
  if (of && tokens[of.next - 1]?.breaks === 0 && dayAt(tokens, of.next) === undefined) return onWeekday(of, 'plain');
  // "filmed all in one day" tells how long it takes.
  if (leads && count * size > 1 && word(-1) !== 'all' && !/^(?:a|of|straight|running|total|between)$/.test(word(at)))
    return { first: index, next: index + at, relative: { kind: 'days', days: count * size } };
  return undefined;
}

/** "a month today", "two months from tomorrow" */
function inMonths(tokens: Tokens, index: number, at: number, months: number): Atom | undefined {
  const from = tokens[index + at]?.lower === 'from' ? 1 : 0;
  const day = tokens[index + at + from]?.lower ?? '';
  if (!/^(?:today|tomorrow)$/.test(day)) return undefined;
  return { first: index, next: index + at + from + 1, relative: { kind: 'days', days: day === 'tomorrow' ? 1 : 0, months } };
}
const MOST_MONTHS = 24;

/** "in a fortnight, on the Thursday": a weekday behind weeks ahead, where no date stands. */
function weekdayThen(tokens: Tokens, index: number): { weekday: number; next: number } | undefined {
  let at = tokens[index]?.text === ',' ? index + 1 : index;
  if (tokens[at]?.lower !== 'on' || tokens[at]?.breaks !== 0) return undefined;
  at++;
  if (tokens[at]?.lower === 'the') at++;
  const weekday = weekdayAt(tokens, at);
  if (!weekday || namedAt(tokens, weekday.next) || numericAt(tokens, weekday.next) || dayAt(tokens, weekday.next)) return undefined;
  return weekday;
}

/** "in zwei Wochen", "over twee weken", "dans quinze jours": not "spread over two weeks", nor what takes so long ("en dos semanas"). */
function inWeeksAbroad(tokens: Tokens, index: number): Atom | undefined {
  const ahead = /^(?:in|over|dans|dentro|tra|fra)$/.test(tokens[index]?.lower ?? '') ? weeksAheadAt(tokens, index) : undefined;
  const abroad =
    ahead && /^(?:woche|wochen|weken|semaines?|semanas?|settiman[ae]|jours|tagen|días|giorni)$/.test(tokens[ahead.next - 1]?.lower ?? '');
  if (!ahead || !abroad || /^(?:verspreid|verdeeld|gespreid)$/.test(tokens[index - 1]?.lower ?? '')) return undefined;
  return { first: index, next: ahead.next, relative: { kind: 'days', days: ahead.weeks * 7 } };
}
