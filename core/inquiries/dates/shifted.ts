/**
 * Days told from another day that is named: "the day before 14 November", "two weeks after the 7th", "the weekend before 20 November",
 * and, behind a date, "and again two weeks later", "and the Saturday before", "or the day after".
 */
import { numberWord } from '../words.ts';
import { before, nextWeekday, type Choices, type PlainDate } from './from-today.ts';
import { feastAt, isFurther } from './feasts.ts';
import { namedDayAt } from './named-days.ts';
import { monthPhrase } from './of-months.ts';
import { dayAt, DAYS_IN_WEEK, weekdayAt, type Atom, type Relative, type Shift, type Tokens } from './pieces.ts';
import { RANGE_WORDS } from './range-words.ts';
import { weekendWordAt } from './weeks.ts';
import { namedAt, numericAt } from './written.ts';

const DAY = /^(?:day|morning|afternoon|evening|night)$/;
/** A length of time is that of an occasion behind one of these, or a time limit. */
const LASTS =
  /^(?:for|within|over|during|last|lasts|lasting|takes?|taking|runs?|of|than|every|least|most|full|whole|to|until|till|up|once|twice|times|per)$/;
const ROUGHLY = /^(?:about|around|roughly|approximately|some|circa|approx|maybe|perhaps)$/;
const MOST = 60;

type Length = { days: number; months: number; next: number; rough: boolean };

/** "a week", "two weeks", "exactly a fortnight", "about a month", "a few days" */
function lengthAt(tokens: Tokens, index: number): Length | undefined {
  const word = (at: number): string => tokens[at]?.lower ?? '';
  let at = index;
  let rough = ROUGHLY.test(word(at));
  if (rough || /^(?:exactly|just|only)$/.test(word(at))) at++;
  if ((word(at) === 'a' && /^(?:few|couple)$/.test(word(at + 1))) || word(at) === 'several') {
    rough = true;
    at += word(at) === 'a' ? 1 : 0;
    if (word(at + 1) === 'of') at++;
  }
  const count = rough && !tokens[at]?.num ? (numberWord(word(at)) ?? 1) : (tokens[at]?.num ?? numberWord(word(at)));
  // "some days", "several weeks"
  const unit = rough && /^(?:days?|weeks?|months?)$/.test(word(at)) ? at : at + 1;
  if (count === undefined || count < 1 || count > MOST || tokens[unit]?.breaks !== 0) return undefined;
  const said = word(unit);
  const size = /^(?:days?|nights?)$/.test(said) ? 1 : /^(?:weeks?|wks?)$/.test(said) ? DAYS_IN_WEEK : said === 'fortnight' ? 14 : 0;
  if (size === 0 && !/^months?$/.test(said)) return undefined;
  return { days: count * size, months: size === 0 ? count : 0, next: unit + 1, rough };
}

/** "before", "prior to", "on from": on which side of the other day, and where that begins. */
function sideAt(tokens: Tokens, index: number): { after: boolean; next: number } | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  if (tokens[index]?.breaks !== 0) return undefined;
  const lead = /^(?:immediately|directly|right|straight|just)$/.test(word(0)) ? 1 : 0;
  if (word(0) === 'to' && word(1) === 'the' && word(2) === 'day') return sideAt(tokens, index + 3);
  if (/^(?:before|preceding)$/.test(word(lead))) return { after: false, next: index + lead + 1 };
  if (/^(?:after|following)$/.test(word(lead))) return { after: true, next: index + lead + 1 };
  if (word(0) === 'prior' && word(1) === 'to') return { after: false, next: index + 2 };
  if (word(0) === 'ahead' && word(1) === 'of') return { after: false, next: index + 2 };
  if (/^(?:later|earlier)$/.test(word(0)) && word(1) === 'than') return { after: word(0) === 'later', next: index + 2 };
  return word(0) === 'on' && word(1) === 'from' ? { after: true, next: index + 2 } : undefined;
}

/** The day from which another is told: a date, a number with its ending, a day by its place in a month or by its name. */
function baseAt(tokens: Tokens, index: number): Atom | undefined {
  if (tokens[index]?.breaks !== 0) return undefined;
  const phrase = monthPhrase(tokens, index) ?? namedDayAt(tokens, index) ?? feastAt(tokens, index);
  if (phrase) return phrase;
  const the = tokens[index]?.lower === 'the' ? 1 : 0;
  const weekday = weekdayAt(tokens, index + the);
  let at = weekday?.next ?? index + the;
  if (weekday && /^(?:,|the)$/.test(tokens[at]?.lower ?? '')) at++;
  const dated = namedAt(tokens, at) ?? numericAt(tokens, at);
  const onWeekday = weekday ? { weekday: weekday.weekday } : {};
  if (dated?.day !== undefined) return { ...dated, ...onWeekday };
  const day = tokens[at]?.num === undefined ? undefined : dayAt(tokens, at);
  return day?.ordinal ? { first: index, next: day.next, day: day.day, ordinal: true, ...onWeekday } : undefined;
}

const shiftedBy = (first: number, next: number, of: Atom, shift: Shift): Atom => ({
  first,
  next,
  relative: { kind: 'shifted', of, shift },
});
const byLength = ({ days, months }: Length, after: boolean): Shift => ({ days: after ? days : -days, months: after ? months : -months });

/** "the day before 14 November", "a week after the 7th", "the Saturday after the first Sunday in May"; roughly told it is no day. */
export function shiftedAt(tokens: Tokens, index: number): Atom | undefined {
  const word = (at: number): string => tokens[at]?.lower ?? '';
  const at = word(index) === 'the' ? index + 1 : index;
  const roughly = (next: number): Atom => ({ first: index, next, relative: { kind: 'unknown' } });
  const day = DAY.test(word(at)) && at > index ? at + 1 : undefined;
  if (day !== undefined) {
    const side = sideAt(tokens, day);
    const of = side && baseAt(tokens, side.next);
    return of && shiftedBy(index, of.next, of, { days: side.after ? 1 : -1, months: 0 });
  }
  if (word(at) === 'eve' && at > index && word(at + 1) === 'of') {
    const of = baseAt(tokens, at + 2);
    return of && shiftedBy(index, of.next, of, { days: -1, months: 0 });
  }
  // "in the week after 6 November"
  if (word(at) === 'week' && at > index) {
    const side = sideAt(tokens, at + 1);
    const of = side?.after ? baseAt(tokens, side.next) : undefined;
    return of && roughly(of.next);
  }
  const weekend = weekendWordAt(tokens, at);
  const weekday = weekend === undefined ? weekdayAt(tokens, at) : undefined;
  if (weekend !== undefined || weekday) {
    const side = sideAt(tokens, weekend ?? (weekday?.next as number));
    const of = side && !(at === index && isFurther(tokens, index)) ? baseAt(tokens, side.next) : undefined;
    if (!of || !side) return undefined;
    return shiftedBy(index, of.next, of, { to: weekday?.weekday ?? 'weekend', after: side.after });
  }
  if (at > index || LASTS.test(word(index - 1))) return undefined;
  const length = lengthAt(tokens, index);
  if (!length) return undefined;
  // "It is a week from 7 November" may tell how long it takes.
  const open = word(length.next) === 'from' && length.days % DAYS_IN_WEEK === 0;
  const side = open ? { after: true, next: length.next + 1 } : sideAt(tokens, length.next);
  const of = side && (length.rough ? side.after : true) ? baseAt(tokens, side.next) : undefined;
  if (!of || !side) return undefined;
  // "a week from Saturday, Oct 10" says the same day twice.
  if (open && of.weekday !== undefined) return undefined;
  // "a week from 5 to 12 October"
  if (open && RANGE_WORDS.has(word(of.next))) return undefined;
  return open || length.rough ? roughly(of.next) : shiftedBy(index, of.next, of, byLength(length, side.after));
}

/** Nothing more of the clause, or what only says that it counts as well. */
function ends(tokens: Tokens, index: number): boolean {
  const [token, next] = [tokens[index], tokens[index + 1]?.lower ?? ''];
  if (token === undefined || token.breaks > 0 || /^[.;:!?)(]$/.test(token.text)) return true;
  if (token.text === ',') return /^(?:both|please|each|all)$/.test(next) || tokens[index + 1]?.num !== undefined;
  return /^(?:too|also|both|please|again|with)$/.test(token.lower) || (token.lower === 'as' && next === 'well');
}

/** "two weeks later", "the Saturday before", "the day after that": from the date that stands right before it. */
export function laterAt(tokens: Tokens, index: number, of: Atom): Atom | undefined {
  const word = (at: number): string => tokens[at]?.lower ?? '';
  let at = index;
  while (/^(?:again|then|also|once|more|on|another|one|same)$/.test(word(at)) && tokens[at]?.breaks === 0) at++;
  const again = /^(?:again|more|another)$/.test(word(at - 1));
  const the = word(at) === 'the' ? 1 : 0;
  const behind = (next: number): number => (/^(?:that|it)$/.test(word(next)) ? next + 1 : next);
  const done = (next: number, shift: Shift): Atom | undefined => (ends(tokens, next) ? shiftedBy(index, next, of, shift) : undefined);
  const weekday = weekdayAt(tokens, at + the);
  if (weekday) {
    if (/^(?:before|preceding)$/.test(word(weekday.next))) return done(behind(weekday.next + 1), { to: weekday.weekday, after: false });
    if (/^(?:after|following)$/.test(word(weekday.next))) return done(behind(weekday.next + 1), { to: weekday.weekday, after: true });
    const length = lengthAt(tokens, weekday.next);
    const later = length && laterSide(tokens, length.next);
    return later && !length.rough && length.days % DAYS_IN_WEEK === 0
      ? done(later.next, { ...byLength(length, later.after), on: weekday.weekday })
      : undefined;
  }
  if (the === 1 && /^(?:following|next|previous|preceding)$/.test(word(at + 1))) {
    const after = /^(?:following|next)$/.test(word(at + 1));
    const named = weekdayAt(tokens, at + 2);
    if (named) return done(named.next, { to: named.weekday, after });
    if (DAY.test(word(at + 2))) return done(at + 3, { days: after ? 1 : -1, months: 0 });
    return again && word(at + 2) === 'week' ? done(at + 3, { days: after ? DAYS_IN_WEEK : -DAYS_IN_WEEK, months: 0 }) : undefined;
  }
  if (the === 1 && DAY.test(word(at + 1)) && /^(?:before|after|following|preceding)$/.test(word(at + 2)))
    return done(behind(at + 3), { days: /^(?:after|following)$/.test(word(at + 2)) ? 1 : -1, months: 0 });
  if (the === 1 && again && word(at + 1) === 'week' && /^(?:before|after)$/.test(word(at + 2)))
    return done(behind(at + 3), { days: word(at + 2) === 'after' ? DAYS_IN_WEEK : -DAYS_IN_WEEK, months: 0 });
  const length = lengthAt(tokens, at);
  const later = length && !length.rough ? laterSide(tokens, length.next) : undefined;
  return length && later ? done(later.next, byLength(length, later.after)) : undefined;
}

/** "later", "after that", "earlier", "beforehand" */
function laterSide(tokens: Tokens, index: number): { after: boolean; next: number } | undefined {
  const word = tokens[index]?.lower ?? '';
  if (!/^(?:later|after|afterwards|on|earlier|before|beforehand)$/.test(word) || tokens[index]?.breaks !== 0) return undefined;
  const that = /^(?:that|it)$/.test(tokens[index + 1]?.lower ?? '') && /^(?:after|before)$/.test(word);
  return { after: /^(?:later|after|afterwards|on)$/.test(word), next: index + (that ? 2 : 1) };
}

/** The days so far from those of the date from which they are told. */
export function shiftDays({ shift }: Relative & { kind: 'shifted' }, { dates, doubt }: Choices, today: PlainDate): Choices {
  const moved = dates.flatMap((days) => {
    const [first, last] = [days[0], days.at(-1)];
    if (!first || !last) return [];
    const found = 'to' in shift ? toNearest(shift, first, last) : [first.add({ months: shift.months }).add({ days: shift.days })];
    // "Sunday 14 November and the Saturday two weeks later": of another weekday it is not so long after.
    return 'on' in shift && found[0]?.dayOfWeek !== shift.on ? [] : [found];
  });
  return { dates: moved, ...(doubt ? { doubt } : {}), past: moved.length > 0 && moved.every(([day]) => day && before(day, today)) };
}

const SATURDAY = 6;
function toNearest({ to, after }: Extract<Shift, { to: unknown }>, first: PlainDate, last: PlainDate): PlainDate[] {
  const weekday = to === 'weekend' ? SATURDAY : to;
  if (to !== 'weekend')
    return [after ? nextWeekday(last.add({ days: 1 }), weekday) : nextWeekday(first.subtract({ days: DAYS_IN_WEEK }), weekday)];
  const saturday = after ? nextWeekday(last.add({ days: 1 }), weekday) : nextWeekday(first.subtract({ days: DAYS_IN_WEEK + 1 }), weekday);
  return [saturday, saturday.add({ days: 1 })];
}
