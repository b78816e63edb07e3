/**
 * Weekdays that are told from a feast or from another date: "Good Friday", "Ostermontag", "the Monday after 12 March", "Black Friday".
 */
import type { Atom, Tokens } from './pieces.ts';
import { dayAt, weekdayAt } from './pieces.ts';
import { weekendWordAt } from './weeks.ts';
import { namedAt, numericAt } from './written.ts';

/** Days from Easter Sunday, by the words in which a feast is written. */
const feasts = new Map<string, number>(
  Object.entries({
    'shrove tuesday': -47,
    'pancake tuesday': -47,
    'shrove monday': -48,
    'ash wednesday': -46,
    'mothering sunday': -21,
    'palm sunday': -7,
    'maundy thursday': -3,
    'holy thursday': -3,
    'good friday': -2,
    'easter sunday': 0,
    'easter monday': 1,
    'ascension thursday': 39,
    'ascension day': 39,
    'low sunday': 7,
    'whit sunday': 49,
    'pentecost sunday': 49,
    'trinity sunday': 56,
    'whit monday': 50,
    aschermittwoch: -46,
    gründonnerstag: -3,
    karfreitag: -2,
    ostersonntag: 0,
    ostermontag: 1,
    'christi himmelfahrt': 39,
    himmelfahrt: 39,
    auffahrt: 39,
    hemelvaartsdag: 39,
    hemelvaart: 39,
    ascensione: 39,
    "l'ascension": 39,
    pfingstsonntag: 49,
    pfingstmontag: 50,
    fronleichnam: 60,
    'vendredi saint': -2,
    'dimanche de pâques': 0,
    'lundi de pâques': 1,
    "jeudi de l'ascension": 39,
    'lundi de pentecôte': 50,
    'viernes santo': -2,
    'domingo de resurrección': 0,
    'lunes de pascua': 1,
    'venerdì santo': -2,
    pasquetta: 1,
    'goede vrijdag': -2,
    'tweede paasdag': 1,
    'eerste paasdag': 0,
    'tweede pinksterdag': 50,
  }),
);
const LONGEST_FEAST = 3;
const firstWords: ReadonlySet<string> = new Set([...feasts.keys()].map((name) => name.split(' ')[0] ?? ''));
/** With one of these a weekday is a day that only its country's custom tells. */
const NAMED_FOR =
  /^(?:black|cyber|super|giving|easter|bank|holiday|rose|fat|casual|labor|labour|memorial|thanksgiving|carnival|holy|bright|advent|stir-up|victoria|rogation|plough|harvest|bible|passion|gaudete|laetare|sea|pride|rush|mad|collop|spy|remembrance)$/;
/** What follows "Friday after" without making it another day. */
const PLAIN_AFTER =
  /^(?:noon|midday|midnight|lunch|lunchtime|dinner|breakfast|work|school|hours|that|then|it|i|we|you|he|she|they|next|all|class|dark|church|mass|doors|wrap|closing|opening|final|last|ceremony|service|show|speeches|party|reception|session|match|concert)$/;

/** A weekday that is not the next one of its name; `undefined` where none of this is written. */
export function feastAt(tokens: Tokens, index: number): Atom | undefined {
  for (let length = firstWords.has(tokens[index]?.lower ?? '') ? LONGEST_FEAST : 0; length >= 1; length--) {
    const words = tokens
      .slice(index, index + length)
      .map((token) => token.lower)
      .join(' ');
    const days = feasts.get(words);
    if (days === undefined) continue;
    const next = index + length;
    const open = /^[,(]$/.test(tokens[next]?.text ?? '') ? next + 1 : next;
    const at = tokens[open]?.lower === 'the' ? open + 1 : open;
    // "Whit Sunday, 4 June": the date says it already.
    if (namedAt(tokens, at) || numericAt(tokens, at)) return undefined;
    return { first: index, next, relative: { kind: 'easter', days } };
  }
  return longWeekend(tokens, index) ?? (NAMED_FOR.test(tokens[index]?.lower ?? '') ? namedWeekday(tokens, index) : undefined);
}

/** "may long wknd, the saturday", "bank holiday weekend": which one it is only its country's custom tells. */
function longWeekend(tokens: Tokens, index: number): Atom | undefined {
  const word = tokens[index]?.lower;
  const length = word === 'long' ? 1 : word === 'bank' && tokens[index + 1]?.lower === 'holiday' ? 2 : 0;
  const ends = length > 0 ? weekendWordAt(tokens, index + length) : undefined;
  if (ends === undefined) return undefined;
  const open = /^[,(]$/.test(tokens[ends]?.text ?? '') ? ends + 1 : ends;
  const at = tokens[open]?.lower === 'the' ? open + 1 : open;
  const weekday = (tokens[at]?.breaks ?? 1) === 0 && !namedAt(tokens, at) ? weekdayAt(tokens, at) : undefined;
  const dated = weekday && (namedAt(tokens, weekday.next) ?? numericAt(tokens, weekday.next) ?? dayAt(tokens, weekday.next));
  return { first: index, next: weekday && !dated ? weekday.next : ends, relative: { kind: 'unknown' } };
}

/** "Black Friday", "bank holiday Monday", without the date beside it. */
function namedWeekday(tokens: Tokens, index: number): Atom | undefined {
  let at = index;
  while (at - index < LONGEST_FEAST && NAMED_FOR.test(tokens[at]?.lower ?? '')) at++;
  const weekday = weekdayAt(tokens, at);
  if (!weekday || (tokens[at]?.breaks ?? 1) > 0) return undefined;
  const open = /^[,(]$/.test(tokens[weekday.next]?.text ?? '') ? weekday.next + 1 : weekday.next;
  const day = tokens[open]?.lower === 'the' ? open + 1 : open;
  if (namedAt(tokens, day) || numericAt(tokens, day) || tokens[day]?.num !== undefined) return undefined;
  return { first: index, next: weekday.next, relative: { kind: 'unknown' } };
}

/** "the second Friday before Christmas" is not the one right beside it. */
export const isFurther = (tokens: Tokens, index: number): boolean => FURTHER.test(tokens[index - 1]?.lower ?? '');
const FURTHER = /^(?:second|third|fourth|penultimate|one|2nd|3rd|nd|rd)$/;
/** Feasts from which a weekday is told; of one right beside the feast it is asked which week is meant. */
const FEASTS_BESIDE: Readonly<Record<string, { month: number; day: number; feast: 'fixed' | 'easter' }>> = {
  'before christmas': { month: 12, day: 25, feast: 'fixed' },
  'before xmas': { month: 12, day: 25, feast: 'fixed' },
  'after easter': { month: 0, day: 0, feast: 'easter' },
};
/** "the Monday after 12 March", "the Thursday before Easter": told from another date, known or not. */
export function besideAt(tokens: Tokens, index: number): Atom | undefined {
  const led = tokens[index]?.lower === 'the' ? 1 : 0;
  const last = tokens[index + led]?.lower === 'last' ? 1 : 0;
  const weekday = weekdayAt(tokens, index + led + last);
  const side = weekday && tokens[weekday.next]?.breaks === 0 ? tokens[weekday.next]?.lower : undefined;
  if (last === 1 && side !== 'before') return undefined;
  if (!weekday || (side !== 'after' && side !== 'before' && side !== 'following')) return undefined;
  const further = led === 0 && last === 0 && isFurther(tokens, index);
  let at = weekday.next + 1;
  const article = /^(?:the|our|your|this|my)$/.test(tokens[at]?.lower ?? '');
  if (article) at++;
  const other = tokens[at];
  if (!other || other.breaks > 0 || PLAIN_AFTER.test(other.lower)) return undefined;
  const second = weekdayAt(tokens, at);
  const date = namedAt(tokens, second?.next ?? at) ?? numericAt(tokens, second?.next ?? at);
  if (date?.month !== undefined && date.day !== undefined && !date.slashed)
    return {
      first: index,
      next: date.next,
      weekday: weekday.weekday,
      relative: further
        ? { kind: 'unknown' }
        : { kind: 'beside', weekday: weekday.weekday, after: side !== 'before', month: date.month, day: date.day, year: date.year },
    };
  if (other.num !== undefined) return undefined;
  const feast = article ? undefined : FEASTS_BESIDE[`${side} ${other.lower}`];
  if (feast && !/^(?:monday|sunday|week|weekend|eve|party|market|do|dinner|lunch|concert|service)$/.test(tokens[at + 1]?.lower ?? ''))
    return {
      first: index,
      next: at + (tokens[at + 1]?.lower === 'day' ? 2 : 1),
      weekday: weekday.weekday,
      relative: further
        ? { kind: 'unknown' }
        : { kind: 'beside', weekday: weekday.weekday, after: side !== 'before', year: undefined, ...feast },
    };
  if (last === 1 && !/^\p{Lu}/u.test(other.text)) return undefined;
  const named = /^\p{Lu}/u.test(other.text) || (led === 1 && article);
  return named ? { first: index, next: weekday.next, relative: { kind: 'unknown' } } : undefined;
}
