/**
 * Dates that belong together: "12-13 December", "Fri 12 to Sun 14 Dec", "3, 4 and 7 March", "12 or 19 December", "between 5 and 8 Nov".
 */
import type { Token } from '../parts/tokens.ts';
import { timeAt } from '../times/at.ts';
import { monthWord, weekdayWord } from '../words.ts';
import { atomAt } from './atoms.ts';
import { dayAt, type Atom } from './pieces.ts';
import { rangeAt } from './range-words.ts';
import { placeInNext } from './several-places.ts';
import { laterAt } from './shifted.ts';
import { bracketedDays, numbersWeekdays, ofThisMonth, weekdayOf, withItsWeekday } from './their-weekdays.ts';
import { yearInMonth } from './written.ts';
import { trimEnd, trimStart, type Item, type Join } from './trims.ts';

export type Sequence = {
  /** Token indexes, the last exclusive. */
  first: number;
  next: number;
  items: Item[];
  /** "the weekend of ...", "the week of ..." */
  around?: 'weekend' | 'weekends' | 'week';
  /** "early March", "in March", "mid June": a month without a day. */
  month?: { month: number; year: number | undefined };
};

type Tokens = readonly Token[];

const andWords = new Set(['and', '&', '+', ',', '/', 'plus', 'then', 'und', 'et', 'y', 'e', 'en', 'og', 'och', 'n', "n'"]);
/** A number after one of these counts rooms or cameras, not days. */
const counters = new Set(
  'room rooms hall studio camera cam stage level suite gate unit no number version day part chapter page block building floor session track category section highway hwy route channel series season bay dock door lot phase tier grade year pier platform at'.split(
    ' ',
  ),
);
/** "room 4", "bay 9"; not "Byron Bay 9-10 Oct". */
const counts = (tokens: Tokens, index: number): boolean =>
  counters.has(tokens[index]?.lower ?? '') &&
  !atTheDays(tokens, index) &&
  !(tokens[index]?.lower === 'block' && asksToBlock(tokens, index)) &&
  !(/^\p{Lu}/u.test(tokens[index]?.text ?? '') && /^\p{Lu}\p{Ll}/u.test(tokens[index - 1]?.text ?? ''));

/** "Please block 14, 15 and 16 February" */
const asksToBlock = (tokens: Tokens, index: number): boolean =>
  (tokens[index]?.breaks ?? 1) > 0 || /^(?:please|kindly|to|you|pls|and|[.,;:!?])$/.test(tokens[index - 1]?.lower ?? '.');

/** "at 8 and 9 of March", "at 8-10 March", as it is said by those who do not say "on". */
function atTheDays(tokens: Tokens, index: number): boolean {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  if (word(0) !== 'at' || dayAt(tokens, index + 1)?.next !== index + 2 || !/^(?:and|&|-|to|until)$/.test(word(2))) return false;
  const last = dayAt(tokens, index + 3);
  return (
    last !== undefined && monthWord(tokens[last.next]?.lower === 'of' ? word(last.next - index + 1) : word(last.next - index)) !== undefined
  );
}

function joinAt(tokens: Tokens, index: number, between: boolean): { join: Join; next: number; comma: boolean } | undefined {
  const token = tokens[index];
  if (!token || (token.breaks > 0 && !/\p{L}/u.test(token.text))) return undefined;
  // "the 2nd of October? or the 9th"
  if (token.text === '?' && tokens[index + 1]?.lower === 'or') return { join: 'or', next: index + 2, comma: false };
  let at = index;
  let comma = false;
  if (token.text === ',') {
    comma = true;
    at++;
    const word = tokens[at]?.lower ?? '';
    if (!/^(?:and|&|or|then|to|through|thru|until|till|bis|tot|hasta)$/.test(word))
      return { join: 'and', next: at + amAt(tokens, at), comma };
  }
  const word = tokens[at]?.lower ?? '';
  if (word === 'oder' || word === 'ou') return { join: 'or', next: at + 1, comma: false };
  if (word === 'or' || word === 'alternatively')
    return { join: 'or', next: tokens[at + 1]?.lower === 'else' ? at + 2 : at + 1, comma: false };
  if (between && /^(?:and|et|y|e|ed|und|en)$/.test(word)) return { join: 'range', next: at + 1, comma: false };
  const range = rangeAt(tokens, at);
  if (range !== undefined) return { join: 'range', next: range, comma: false };
  if (word === 'as' && tokens[at + 1]?.lower === 'well' && tokens[at + 2]?.lower === 'as')
    return { join: 'and', next: at + 3, comma: false };
  if (word === 'and' && (tokens[at + 1]?.lower === 'on' || tokens[at + 1]?.lower === 'then' || tokens[at + 1]?.lower === 'again'))
    return { join: 'and', next: at + 2, comma: false };
  // "and the final on 30/11"
  if (word === 'and' && tokens[at + 1]?.lower === 'the' && CLOSING.test(tokens[at + 2]?.lower ?? '') && tokens[at + 3]?.lower === 'on')
    return { join: 'and', next: at + 4, comma: false };
  if (andWords.has(word)) return { join: 'and', next: at + 1 + amAt(tokens, at + 1), comma: false };
  return undefined;
}

/** "am 18., am 19. und am 21. August" */
const amAt = (tokens: Tokens, index: number): 0 | 1 => (tokens[index]?.lower === 'am' && tokens[index + 1]?.num !== undefined ? 1 : 0);

const CLOSING = /^(?:final|finale|last|finals|closer|second|third|other)$/;

/** "Nov 5 6 7": the next day's number right after, with nothing between. */
function followsOn(tokens: Tokens, index: number, last: Atom | undefined): { join: Join; next: number; comma: boolean } | undefined {
  const next = tokens[index];
  const follows =
    next?.num !== undefined &&
    next.breaks === 0 &&
    next.text.length <= 2 &&
    last?.day !== undefined &&
    (last.monthFirst || last.bare || last.ordinal) &&
    next.num === last.day + 1;
  if (follows && timeAt(tokens, index + 1)?.bare !== false) return { join: 'and', next: index, comma: false };
  // "the fifth sixth and seventh of May", as it is spoken
  const spoken = next?.breaks === 0 && next.num === undefined ? dayAt(tokens, index) : undefined;
  return spoken && spoken.day === (last?.day ?? 0) + 1 ? { join: 'and', next: index, comma: false } : undefined;
}

/** "November fifth to the seventh": a small ordinal in words is a day after another day. */
function ordinalAfter(tokens: Tokens, index: number, join: Join, last: Atom | undefined): Atom | undefined {
  const day = tokens[index]?.lower === 'the' && tokens[index + 1]?.num === undefined ? dayAt(tokens, index + 1) : undefined;
  const ends =
    day &&
    (tokens[day.next]?.breaks !== 0 || !/^\p{L}/u.test(tokens[day.next]?.text ?? '') || AFTER_DAY.test(tokens[day.next]?.lower ?? ''));
  return day && ends && last?.day !== undefined && day.day > last.day && join !== 'or'
    ? { first: index, next: day.next, day: day.day, ordinal: true, bare: true }
    : undefined;
}
const AFTER_DAY = /^(?:of|in|at|for|from|with|we|and|it's|inclusive|please|if|are|is|plus)$/;

/** A time of day between two dates: "Fri 12 Dec 9am to Sun 14 Dec 5pm". */
function afterTime(tokens: Tokens, index: number): number {
  let at = index;
  if (/^(?:,|at|from|@|\()$/.test(tokens[at]?.lower ?? '')) at++;
  const time = timeAt(tokens, at);
  if (!time || time.bare) return index;
  return tokens[time.next]?.text === ')' ? time.next + 1 : time.next;
}

/** An hour before the last day of a run: "Tues 16 March to 4pm Wed 17 March". */
function afterHour(tokens: Tokens, index: number): number {
  const hour = timeAt(tokens, index);
  if (!hour || hour.bare) return index;
  const next = /^(?:on|of)$/.test(tokens[hour.next]?.lower ?? '') ? hour.next + 1 : hour.next;
  const atom = (tokens[next]?.breaks ?? 1) === 0 ? atomAt(tokens, next) : undefined;
  return atom && (atom.weekday !== undefined || atom.month !== undefined) ? next : index;
}

const BESIDE_ELSE = /^(?:after|before)$/;

function known(atom: Atom): boolean {
  return (
    atom.month !== undefined ||
    atom.monthsAhead !== undefined ||
    atom.weekday !== undefined ||
    atom.relative !== undefined ||
    (atom.ordinal === true && !atom.bare)
  );
}

/** The longest run of joined dates that begins at a token. */
function sequenceAt(tokens: Tokens, index: number, between: boolean): Sequence | { skipTo: number } | undefined {
  const first = atomAt(tokens, index);
  if (!first) return undefined;
  if (first.bare && counts(tokens, index - 1) && (tokens[index]?.breaks ?? 0) === 0) return undefined;
  const items: Item[] = [{ atom: first, join: undefined }];
  const commas: boolean[] = [false];
  let at = first.next;
  while (items.length < 40) {
    const skipped = afterTime(tokens, at);
    const join =
      followsOn(tokens, at, items.at(-1)?.atom) ??
      joinAt(tokens, skipped, between) ??
      (skipped === at ? undefined : joinAt(tokens, at, between));
    if (!join) break;
    let from = join.next;
    while (/^(?:from|on|also|maybe|possibly|perhaps|including|either|el|le|il|am|den|dem|op|zum)$/.test(tokens[from]?.lower ?? '')) from++;
    const maybe = join.join !== 'or' && tokens.slice(join.next, from).some(({ lower }) => /^(?:maybe|possibly|perhaps)$/.test(lower));
    if (tokens[from]?.lower === 'the' && weekdayWord(tokens[from + 1]?.lower ?? '') !== undefined && dayAt(tokens, from + 2) === undefined)
      from++;
    const parted = skipped !== at && (tokens[at]?.text === ',' || tokens[join.next - 1]?.text === '-');
    if (join.join === 'range' && !parted) from = afterHour(tokens, from);
    // "until the afternoon of 13 December"
    if (/^(?:morning|afternoon|evening|night)$/.test(tokens[from + 1]?.lower ?? '') && tokens[from + 2]?.lower === 'of') from += 3;
    const last = items.at(-1)?.atom;
    const later = last && join.join !== 'range' && !(join.comma && join.next === from) ? laterAt(tokens, join.next, last) : undefined;
    const atom =
      later ??
      (last && placeInNext(tokens, from, last)) ??
      weekdayOf(tokens, withItsWeekday(tokens, atomAt(tokens, from) ?? ordinalAfter(tokens, from, join.join, last), last), items);
    if (!atom || (skipped !== at && (atom.bare || join.join === 'or'))) break;
    // "and the Saturday after we leave": not the next one of its name.
    if (atom.weekday !== undefined && atom.day === undefined && !atom.relative && BESIDE_ELSE.test(tokens[atom.next]?.lower ?? '')) break;
    if (join.comma && (atom.relative !== undefined) !== (first.relative !== undefined)) break;
    // "Monday to Wednesday, December 14 to 16": the weekdays only say more about the dates.
    if (join.comma && atom.day !== undefined && items.every((item) => item.atom.day === undefined)) break;
    // "the 18th and 19th of February, Friday and Saturday": so do weekdays after them.
    if (
      join.comma &&
      atom.weekday !== undefined &&
      atom.day === undefined &&
      !atom.relative &&
      items.every((item) => item.atom.day !== undefined || item.atom.relative?.kind === 'monthEnd')
    )
      break;
    // "Thursday the 16th - the 15th is the dinner": what goes back is no run.
    if (join.join === 'range' && atom.ordinal && /^(?:is|was|are)$/.test(tokens[atom.next]?.lower ?? '') && !between) break;
    items.push({ atom, join: join.join, ...(maybe ? { maybe } : {}) });
    commas.push(join.comma);
    at = atom.next;
  }
  // A run of numbers without a month anywhere is none, wherever one begins in it.
  if (numbersWeekdays(tokens, index, items) || bracketedDays(tokens, index, items) || ofThisMonth(tokens, index, items))
    for (const { atom } of items) {
      delete atom.bare;
      atom.ordinal = true;
    }
  if (items.every(({ atom }) => atom.bare)) return items.length > 1 ? { skipTo: at } : undefined;
  trimEnd(tokens, items, commas);
  trimStart(tokens, items, commas);
  const begin = items[0]?.atom;
  const end = items.at(-1)?.atom;
  if (!begin || !end || !items.some(({ atom }) => known(atom))) return undefined;
  if (begin.bare && counts(tokens, begin.first - 1)) return undefined;
  return { first: begin.first, next: end.next, items: items.map((item, at) => (at === 0 ? { atom: item.atom, join: undefined } : item)) };
}

/** "in March", "early June 2027", "end of May": said of a month only. */
function monthOnlyAt(tokens: Tokens, index: number): Sequence | undefined {
  const lead = tokens[index]?.lower ?? '';
  // "end of May", "mid-June"
  const two = tokens[index + 1]?.lower === 'of' || (/^(?:early|mid|late|end)$/.test(lead) && tokens[index + 1]?.text === '-') ? 2 : 1;
  const name = tokens[index + two];
  const month = name && /^\p{Lu}/u.test(name.text) ? monthWord(name.lower) : undefined;
  const ofWeek = lead === 'of' && /^(?:week|weekend|half|part|days)$/.test(tokens[index - 1]?.lower ?? '');
  if (
    !(ofWeek || /^(?:in|early|mid|late|end|middle|beginning|start|during|next|this|for|sometime|until)$/.test(lead)) ||
    month === undefined
  )
    return undefined;
  const dot = tokens[index + two + 1]?.text === '.' && tokens[index + two + 1]?.tight ? 1 : 0;
  const year = tokens[index + two + 1 + dot]?.num;
  const short = dot === 0 ? yearInMonth(tokens, index + two, index + two + 1) : undefined;
  if (short !== undefined) return { first: index, next: index + two + 2, items: [], month: { month, year: short } };
  if (year !== undefined && year >= 1 && year <= 31) return undefined;
  const stated = year !== undefined && year >= 1800 && year < 2100 ? year : undefined;
  return { first: index, next: index + two + (stated ? 2 : 1), items: [], month: { month, year: stated } };
}

/** "am Wochenende vom", "le week-end du", "el fin de semana del", "in het weekend van": where the day of it begins. */
function weekendElsewhere(tokens: Tokens, index: number): number | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  const length =
    word(0) === 'wochenende' || word(0) === 'weekend' || word(0) === 'finde'
      ? 1
      : (word(0) === 'week' && word(1) === '-' && word(2) === 'end') || (word(0) === 'fin' && word(1) === 'de' && word(2) === 'semana')
        ? 3
        : 0;
  return length > 0 && /^(?:vom|von|des|um|du|de|del|dell|van|rond)$/.test(word(length)) ? index + length + 1 : undefined;
}

/** "12 March Street" is an address. */
const STREET = /^(?:street|st|road|rd|avenue|ave|lane|drive|square|crescent|terrace|boulevard|blvd)$/;

/** "between the 8th and the 10th", "entre 8 e 10 de julho" */
const BETWEEN = /^(?:between|entre|tra|fra|zwischen|tussen)$/;

/** More dates than this are a calendar, not a message. */
const MOST_DATES = 500;

/** Every date and run of dates in a text, in order. */
export function sequencesOf(tokens: Tokens): Sequence[] {
  const found: Sequence[] = [];
  let index = 0;
  while (index < tokens.length && found.length < MOST_DATES) {
    const word = tokens[index]?.lower ?? '';
    let at = index;
    let around: Sequence['around'];
    const elsewhere = weekendElsewhere(tokens, index);
    if (
      /^(?:weekend|wkend|week|wk)$/.test(word) &&
      /^(?:of|commencing|comm|beginning|starting|ending)$/.test(tokens[index + 1]?.lower ?? '')
    ) {
      around = word.endsWith('end') ? 'weekend' : 'week';
      at = index + 2;
    } else if (word === 'weekends' && /^(?:of|on|:)$/.test(tokens[index + 1]?.lower ?? '')) {
      around = word;
      at = index + 2;
    } else if (elsewhere !== undefined) {
      around = 'weekend';
      at = elsewhere;
    } else if (word === 'wc' || (word === 'w' && tokens[index + 1]?.text === '/' && /^[ce]$/.test(tokens[index + 2]?.lower ?? ''))) {
      around = 'week';
      at = word === 'wc' ? index + 1 : index + 3;
    }
    const between =
      BETWEEN.test(tokens[at - 1]?.lower ?? '') ||
      (/^(?:the|le|el|il)$/.test(tokens[at - 1]?.lower ?? '') && BETWEEN.test(tokens[at - 2]?.lower ?? ''));
    const sequence = sequenceAt(tokens, at, between) ?? (around ? undefined : monthOnlyAt(tokens, at));
    if (!sequence || 'skipTo' in sequence) {
      index = sequence ? Math.max(sequence.skipTo, index + 1) : index + 1;
      continue;
    }
    if (STREET.test(tokens[sequence.next]?.lower ?? '') && tokens[sequence.next]?.breaks === 0) {
      index = sequence.next;
      continue;
    }
    found.push(around ? { ...sequence, first: index, around } : sequence);
    index = Math.max(sequence.next, index + 1);
  }
  return found;
}
