/**
 * Today, tomorrow and the day after, in several languages and as they are typed in a hurry; "tomorrow week", "heute in zwei Wochen".
 */
import { DAYS_IN_WEEK, type Atom, type Tokens } from './pieces.ts';
import { weekNamedAt, weeksAheadAt } from './weeks.ts';

const TOMORROW = /^(?:tomorrow|tmrw|tmr|tmw|tmrow|tmorrow|tomo|tomorow|tommorow|tommorrow|tmoz|tomoz|tomorrow's)$/;
/** Today and tomorrow in other languages; with a capital or after some words they are mornings. */
const elsewhere: ReadonlyMap<string, number> = new Map([
  ['heute', 0],
  ['morgen', 1],
  ['übermorgen', 2],
  ['uebermorgen', 2],
  ["aujourd'hui", 0],
  ['demain', 1],
  ['hoy', 0],
  ['mañana', 1],
  ['oggi', 0],
  ['domani', 1],
  ['dopodomani', 2],
  ['vandaag', 0],
  ['overmorgen', 2],
  ['amanhã', 1],
]);
const MORNING_AFTER = /^(?:guten|la|por|de|goede|am)$/;

type Near = { days: number; next: number };

function dayAtToken(tokens: Tokens, index: number): Near | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  const near = (length: number, days: number): Near => ({ days, next: index + length });
  if (/^(?:today|tonight|tonite)$/.test(word(0))) return near(1, 0);
  if (word(0) === 'this' && /^(?:evening|afternoon|morning)$/.test(word(1))) return near(2, 0);
  // "2moro", "2nite": a figure and letters are two tokens.
  if (word(0) === '2' && tokens[index + 1]?.tight && /^(?:mor+ow|moro|morro|mora|mrw|mro|moz|nite|night|day)$/.test(word(1)))
    return near(2, word(1).startsWith('m') ? 1 : 0);
  if (TOMORROW.test(word(0)))
    // "tomorrow's tomorrow"
    return word(0).endsWith("'s") && word(1).startsWith('tom') ? near(2, 2) : near(1, 1);
  const the = word(0) === 'the' ? 1 : 0;
  if (word(the) === 'day' && word(the + 1) === 'after' && word(the + 2) === 'tomorrow') return near(the + 3, 2);
  if (word(0) === 'après' && word(1) === '-' && word(2) === 'demain') return near(3, 2);
  if (word(0) === 'pasado' && word(1) === 'mañana') return near(2, 2);
  if (word(0) === 'yesterday') return near(1, -1);
  if (tokens[index]?.text !== word(0) || (word(-2) !== 'antes' && MORNING_AFTER.test(word(-1)))) return undefined;
  const days = elsewhere.get(word(0));
  return days === undefined ? undefined : near(1, days);
}

/** A day near today, or the same one so many weeks later. */
export function nearDayAt(tokens: Tokens, index: number): Atom | undefined {
  const near = dayAtToken(tokens, index);
  if (!near) return undefined;
  const { days, next } = near;
  const atom = (to: number, weeks: number): Atom => ({
    first: index,
    next: to,
    relative: { kind: 'days', days: days + weeks * DAYS_IN_WEEK },
  });
  if (tokens[next]?.breaks !== 0 || days < 0) return atom(next, 0);
  const word = tokens[next]?.lower ?? '';
  // "overmorgen week 24" names the week of the year.
  if (/^(?:week|wk)$/.test(word) && !weekNamedAt(tokens, next, true)) return atom(next + 1, 1);
  if (word === 'fortnight') return atom(next + 1, 2);
  const ahead = weeksAheadAt(tokens, next);
  return ahead ? atom(ahead.next, ahead.weeks) : atom(next, 0);
}
