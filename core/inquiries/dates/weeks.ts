/**
 * Weeks and weekends by their names in several languages: "next week", "nächste Woche", "la semaine prochaine", "KW 24", "this wknd".
 */
import { numberWord } from '../words.ts';
import type { Tokens } from './pieces.ts';

/** A week counted from this one, or by its number in the year. */
export type NamedWeek = { weeks: number; ofYear?: number; next: number };

const THIS = 0;
const NEXT = 1;
const AFTER_NEXT = 2;
/** Names of weeks as they are written, one space between the words. */
const weekNames: ReadonlyMap<string, number> = new Map([
  ...['this week', 'diese woche', 'dieser woche', 'cette semaine', 'esta semana', 'questa settimana', 'deze week'].map(
    (name) => [name, THIS] as const,
  ),
  ...[
    'next week',
    'the following week',
    'nxt week',
    'nächste woche',
    'nächster woche',
    'nächsten woche',
    'naechste woche',
    'naechster woche',
    'kommende woche',
    'kommender woche',
    'kommenden woche',
    'semaine prochaine',
    'prochaine semaine',
    'semana que viene',
    'próxima semana',
    'proxima semana',
    'semana próxima',
    'semana que vem',
    'prossima settimana',
    'settimana prossima',
    'volgende week',
    'komende week',
    'aankomende week',
    'næste uge',
    'neste uke',
    'nästa vecka',
  ].map((name) => [name, NEXT] as const),
  ...['week after next', 'übernächste woche', 'übernächster woche', 'uebernächste woche', 'uebernächster woche', 'semaine suivante'].map(
    (name) => [name, AFTER_NEXT] as const,
  ),
]);
const LONGEST_NAME = 3;
const firstWords: ReadonlySet<string> = new Set([...weekNames.keys()].map((name) => name.split(' ')[0] ?? ''));
const ARTICLE = /^(?:the|der|die|la|de|della|da|del|nella)$/;

/** Weeks of the year by their number, as ISO 8601 counts them and as calendars of the continent print them. */
const OF_YEAR = /^(?:kw|cw|kalenderwoche|uge|uke|vecka)$/;
const LAST_OF_YEAR = 53;

/** The week that is named at a token; a bare "week 24" only where `numbered` says that it may count those of the year. */
export function weekNamedAt(tokens: Tokens, index: number, numbered: boolean): NamedWeek | undefined {
  const from = ARTICLE.test(tokens[index]?.lower ?? '') ? index + 1 : index;
  for (let length = firstWords.has(wordOf(tokens, from)) ? LONGEST_NAME : 0; length > 1; length--) {
    const named = tokens.slice(from, from + length);
    const weeks = weekNames.get(named.map((_, at) => wordOf(tokens, from + at)).join(' '));
    if (weeks !== undefined && named.every(({ breaks }, at) => at === 0 || breaks === 0)) return { weeks, next: from + length };
  }
  return weekOfYear(tokens, from, numbered);
}

/** Short for a week, not behind a number. */
const wordOf = (tokens: Tokens, index: number): string => {
  const word = tokens[index]?.lower ?? '';
  return word === 'wk' ? 'week' : word;
};

function weekOfYear(tokens: Tokens, from: number, numbered: boolean): NamedWeek | undefined {
  const calendar = wordOf(tokens, from) === 'calendar' && wordOf(tokens, from + 1) === 'week' ? 1 : 0;
  const word = wordOf(tokens, from + calendar);
  const sure = calendar > 0 || OF_YEAR.test(word);
  if (!sure && !(numbered && /^(?:week|semaine|semana|settimana)$/.test(word))) return undefined;
  let at = from + calendar + 1;
  if (/^(?:nr|no|n)$/.test(tokens[at]?.lower ?? '')) at++;
  if (tokens[at]?.text === '.') at++;
  const number = tokens[at];
  return number?.num !== undefined && number.breaks === 0 && number.num >= 1 && number.num <= LAST_OF_YEAR && number.text.length <= 2
    ? { weeks: THIS, ofYear: number.num, next: at + 1 }
    : undefined;
}

/** "in zwei Wochen", "over twee weken", "dans quinze jours", "dentro de dos semanas", "tra due settimane", "en huit": weeks ahead. */
export function weeksAheadAt(tokens: Tokens, index: number): { weeks: number; next: number; idiom?: true } | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  // "jeudi en huit", "lundi en quinze"
  if (word(0) === 'en' && /^(?:huit|quinze)$/.test(word(1)) && !/^(?:jours?|minutes?|ans|personnes)$/.test(word(2)))
    return { weeks: word(1) === 'huit' ? 1 : 2, next: index + 2, idiom: true };
  const lead = /^(?:in|over|dans|tra|fra|en)$/.test(word(0)) ? 1 : word(0) === 'dentro' && word(1) === 'de' ? 2 : 0;
  if (lead === 0) return undefined;
  const count = tokens[index + lead]?.num ?? numberWord(word(lead)) ?? countsElsewhere.get(word(lead));
  const unit = word(lead + 1);
  if (count === undefined || tokens[index + lead + 1]?.breaks !== 0) return undefined;
  const time = word(lead + 2) === "'" ? 3 : 2;
  const next = index + lead + (word(lead + time) === 'time' ? time + 1 : 2);
  if (/^(?:weeks?|weeks'|wks?|wochen?|weken|week|semaines?|semanas?|settimane?|settimana)$/.test(unit))
    return count >= 1 && count <= MOST_WEEKS ? { weeks: count, next } : undefined;
  // Eight days are a week and fifteen a fortnight, in French, German, Spanish and Italian.
  const days = /^(?:jours|tagen|tage|días|dias|giorni|dagen)$/.test(unit) ? daysAsWeeks.get(count) : undefined;
  return days === undefined ? undefined : { weeks: days, next };
}
const MOST_WEEKS = 12;
const daysAsWeeks = new Map([
  [8, 1],
  [14, 2],
  [15, 2],
]);
const countsElsewhere: ReadonlyMap<string, number> = new Map(
  (
    [
      [1, 'ein eine einer einem een één un une una uno'],
      [2, 'zwei deux dos due twee'],
      [3, 'drei trois tres tre drie'],
      [4, 'vier quatre cuatro quattro'],
      [5, 'fünf cinq cinco cinque vijf'],
      [6, 'sechs seis sei zes'],
      [8, 'acht huit ocho otto'],
      [14, 'vierzehn veertien'],
      [15, 'quinze quince quindici'],
    ] as const
  ).flatMap(([count, words]) => words.split(' ').map((word) => [word, count] as const)),
);

/** Words for a weekend as one token, short ones too. */
const WEEKEND = /^(?:weekend|weekend's|wknd|wkend|wkd|weeknd|wochenende|wochenend|finde)$/;

/** Index behind a word for a weekend: "weekend", "week-end", "w/end", "fin de semana", "fine settimana". */
export function weekendWordAt(tokens: Tokens, index: number): number | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  if (WEEKEND.test(word(0))) return index + 1;
  if (/^(?:week|wk|w)$/.test(word(0)) && /^[-/]$/.test(word(1)) && /^(?:end|ending)$/.test(word(2)) && tokens[index + 2]?.tight)
    return word(2) === 'end' ? index + 3 : undefined;
  if (word(0) === 'fin' && word(1) === 'de' && word(2) === 'semana') return index + 3;
  return word(0) === 'fine' && word(1) === 'settimana' ? index + 2 : undefined;
}

const which = new Map<string, 'this' | 'next'>([
  ...'dieses diesem kommendes kommendem kommenden ce este questo dit komend aankomend'.split(' ').map((word) => [word, 'this'] as const),
  ...'nächstes nächstem nächsten prochain próximo proximo prossimo volgend'.split(' ').map((word) => [word, 'next'] as const),
]);

/** "dieses Wochenende", "le week-end prochain", "el próximo fin de semana", "questo weekend": before or behind the word. */
export function weekendElsewhereAt(tokens: Tokens, index: number): { which: 'this' | 'next'; next: number } | undefined {
  const word = (at: number): string => tokens[at]?.lower ?? '';
  const led = which.get(word(index));
  const behind = led && weekendWordAt(tokens, index + 1);
  if (led && behind !== undefined) return { which: led, next: behind };
  const next = weekendWordAt(tokens, index);
  if (next === undefined || tokens[next]?.breaks !== 0) return undefined;
  if (/^(?:prochain|próximo|proximo|prossimo)$/.test(word(next))) return { which: 'next', next: next + 1 };
  return word(next) === 'que' && /^(?:viene|vem)$/.test(word(next + 1)) ? { which: 'next', next: next + 2 } : undefined;
}
