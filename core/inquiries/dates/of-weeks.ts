/**
 * Weekdays of a week that is named, and weekends: "next Friday", "Saturday week", "Tuesday of next week", "zaterdag over twee weken", "KW 24, Di bis Do".
 */
import type { Atom, Relative, Tokens } from './pieces.ts';
import { dayAt, weekdayAt } from './pieces.ts';
import { tellsWeeks } from './short-names.ts';
import { weekendElsewhereAt, weekendWordAt, weekNamedAt, weeksAheadAt, type NamedWeek } from './weeks.ts';
import { namedAt, numericAt } from './written.ts';

/** Which of the weekdays to come. */
export const which: ReadonlyMap<string, 'this' | 'next' | 'last' | 'coming'> = new Map([
  ['this', 'this'],
  ['next', 'next'],
  ['nxt', 'next'],
  ['last', 'last'],
  ['coming', 'coming'],
  ['following', 'next'],
  ['upcoming', 'coming'],
  ['past', 'last'],
]);
/** Next but one, in languages that have a word for it. */
const AFTER_NEXT = /^(?:über|ueber)nächste[nrsm]?$/;
const NEXT_ELSEWHERE = /^(?:nächste[nrsm]?|naechste[nrsm]?|volgende|prossim[oa])$/;
const NEXT_BEHIND = /^(?:prochaine?|prossim[oa])$/;
const WEEK = /^(?:week|wk)$/;
const dated = (tokens: Tokens, index: number): boolean => namedAt(tokens, index) !== undefined || numericAt(tokens, index) !== undefined;
/** "next Tuesday 29th": the number tells which. */
const numbered = (tokens: Tokens, index: number): boolean =>
  (tokens[index - 1]?.breaks ?? 0) === 0 && dayAt(tokens, index)?.ordinal === true;

/** A weekday told by its week, or a weekend told from today. */
export function weekdayPhrase(tokens: Tokens, index: number): Atom | undefined {
  return ofNamedWeek(tokens, index) ?? told(tokens, index) ?? weekendAbroad(tokens, index) ?? behind(tokens, index);
}

const atomOf = (
  first: number,
  next: number,
  weekday: number,
  relative: Omit<Relative & { kind: 'weekday' }, 'kind' | 'weekday'>,
): Atom => ({
  first,
  next,
  weekday,
  relative: { kind: 'weekday', weekday, ...relative },
});

const inWeek = (first: number, next: number, weekday: number, { weeks, ofYear }: NamedWeek): Atom =>
  atomOf(first, next, weekday, { which: 'this', weeks, ...(ofYear === undefined ? {} : { ofYear }) });

/** "next week Tuesday", "nächste Woche am Samstag", "KW 24, Tuesday", or the week alone. */
function ofNamedWeek(tokens: Tokens, index: number): Atom | undefined {
  const week = weekNamedAt(tokens, index, tellsWeeks(tokens, index));
  if (!week) return undefined;
  let at = week.next;
  for (let step = 0; step < 2 && /^(?:on|am|op|den|le|el|il|the|,|\(|:)$/.test(tokens[at]?.lower ?? ''); step++) at++;
  const weekday = weekdayAt(tokens, at);
  const joined = weekday && (tokens[at]?.breaks ?? 1) === 0 && tokens[weekday.next - 1]?.breaks === 0 && !dated(tokens, weekday.next);
  return joined
    ? inWeek(index, weekday.next, weekday.weekday, week)
    : { first: index, next: week.next, relative: { kind: 'week', weeks: week.weeks } };
}

/** "this Friday", "next weekend", "last week" */
function told(tokens: Tokens, index: number): Atom | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  let at = 0;
  if (word(0) === 'the' && which.has(word(1))) at++;
  let said = which.get(word(at));
  if (said) {
    at++;
    if (said === 'this' && (word(at) === 'coming' || word(at) === 'upcoming' || word(at) === 'past'))
      said = word(at++) === 'past' ? 'last' : 'coming';
    const weekend = weekendWordAt(tokens, index + at);
    if (weekend !== undefined)
      return { first: index, next: weekend, relative: { kind: 'weekend', which: said === 'coming' ? 'this' : said, weeks: 0 } };
    if (WEEK.test(word(at))) return { first: index, next: index + at + 1, relative: { kind: 'week', weeks: said === 'last' ? -1 : 0 } };
    const weekday = weekdayAt(tokens, index + at);
    if (!weekday || dated(tokens, weekday.next) || (said !== 'last' && numbered(tokens, weekday.next))) return undefined;
    return atomOf(index, weekday.next, weekday.weekday, { which: said, weeks: 0 });
  }
  const next = AFTER_NEXT.test(word(0)) ? 1 : NEXT_ELSEWHERE.test(word(0)) ? 0 : undefined;
  const weekday = next === undefined ? undefined : weekdayAt(tokens, index + 1);
  return next === undefined || !weekday || dated(tokens, weekday.next)
    ? undefined
    : atomOf(index, weekday.next, weekday.weekday, { which: 'next', weeks: next });
}

/** "dieses Wochenende", "le week-end prochain" */
function weekendAbroad(tokens: Tokens, index: number): Atom | undefined {
  const found = weekendElsewhereAt(tokens, index);
  return found && { first: index, next: found.next, relative: { kind: 'weekend', which: found.which, weeks: 0 } };
}

/** "Friday week", "jeudi en huit", "Samstag in zwei Wochen", "Tuesday of next week", "Friday after next", "samedi prochain" */
function behind(tokens: Tokens, index: number): Atom | undefined {
  const weekday = weekdayAt(tokens, index);
  if (!weekday || (tokens[weekday.next]?.breaks ?? 1) > 0) return undefined;
  const word = (offset: number): string => tokens[weekday.next + offset]?.lower ?? '';
  const atom = (length: number, of: Omit<Relative & { kind: 'weekday' }, 'kind' | 'weekday'>): Atom =>
    atomOf(index, weekday.next + length, weekday.weekday, of);
  const of = /^(?:of|in|de|van|\()$/.test(word(0)) ? 1 : 0;
  const numbered = word(0) === ',' ? 1 : of;
  const week =
    weekNamedAt(tokens, weekday.next + of, tellsWeeks(tokens, weekday.next + of)) ??
    weekNamedAt(tokens, weekday.next + numbered, tellsWeeks(tokens, weekday.next + numbered));
  if (week && (week.ofYear !== undefined || numbered === of)) return inWeek(index, week.next, weekday.weekday, week);
  if (WEEK.test(word(0))) return atom(1, { which: 'plain', weeks: 1 });
  if (word(0) === 'fortnight') return atom(1, { which: 'plain', weeks: 2 });
  const ahead = weeksAheadAt(tokens, weekday.next);
  if (ahead) return atom(ahead.next - weekday.next, { which: ahead.idiom ? 'plain' : 'ahead', weeks: ahead.weeks });
  if (which.get(word(of)) === 'last' && WEEK.test(word(of + 1))) return atom(of + 2, { which: 'this', weeks: -1 });
  if (word(0) === 'after' && word(1) === 'next') return atom(2, { which: 'next', weeks: 1 });
  return NEXT_BEHIND.test(word(0)) && !dated(tokens, weekday.next + 1) ? atom(1, { which: 'next', weeks: 0 }) : undefined;
}
