/**
 * Short names of weekdays and months in other languages: "vr 15 en za 16 januari", "ven. 11 juin", "Mo–Mi", "12 févr.".
 * They are plain words elsewhere ("do", "so", "set", "out"), so they count only in a message that is written in their language.
 */
import type { Token } from '../parts/tokens.ts';

type Tokens = readonly Token[];

/** Little words of each language that are none of English or of the others, as far as that can be. */
const littleWords: Readonly<Record<string, string>> = {
  de: 'und für ist wir ich nicht mit dich dir uns eine einen einer ein sind haben brauche brauchen suche suchen vom bis uhr auf zum zur oder das kannst könntest können könnten sie im bei',
  nl: 'het een voor wij je jij zoek zoeken hebben kun kunt niet met op om uur ook naar ik dat maar graag groet groeten aan bij wordt hoor laat',
  fr: 'nous vous pour avec est une les des du je notre votre cherchons cherche jour merci bonjour sur dans et heures qui pas au vos il',
  es: 'para con nos una el los las del por que somos buscamos busco hola gracias hay está es y necesitamos euros al lo',
  it: 'per con il una di che alle dalle cerchiamo cerco siamo gli della del grazie ciao non giorno abbiamo serve un',
  pt: 'para com uma um não você dia às os do da procuramos procuro obrigado obrigada olá precisamos temos até em',
  da: 'og vi til er på med søger søker har det den kl jeg dig deg vores vår fra',
  sv: 'och vi till är på med söker har det den kl jag dig vår från att',
};
const vocabulary = Object.entries(littleWords).map(([language, words]) => ({ language, words: new Set(words.split(' ')) }));
const english = new Set('the and you we for is are of to with our would from have it be this that'.split(' '));
/** So many words of a message tell its language, and at least so many of them must be little ones. */
const [MOST_READ, FEWEST] = [400, 3];

const known = new WeakMap<Tokens, string | undefined>();

/** The language of a message other than English; nothing where too few words tell it. */
function languageOf(tokens: Tokens): string | undefined {
  if (known.has(tokens)) return known.get(tokens);
  const words = tokens.slice(0, MOST_READ).map(({ lower }) => lower);
  const count = (of: ReadonlySet<string>): number => words.filter((word) => of.has(word)).length;
  const [best] = vocabulary.map(({ language, words: of }) => ({ language, hits: count(of) })).toSorted((a, b) => b.hits - a.hits);
  const language = best && best.hits >= FEWEST && best.hits > count(english) ? best.language : undefined;
  known.set(tokens, language);
  return language;
}

const bare = (name: string): string => name.toLowerCase().replace(/\.$/, '');

/** Short names by their number, from Unicode CLDR, also without their accents. */
function namesOf(
  language: string,
  count: number,
  options: Intl.DateTimeFormatOptions,
  nth: (at: number) => Temporal.PlainDate,
): Map<string, number> {
  const format = new Intl.DateTimeFormat(language, { ...options, timeZone: 'UTC' });
  return new Map(
    Array.from({ length: count }, (_, at) => {
      const moment = nth(at).toZonedDateTime('UTC').epochMilliseconds;
      const part = format.formatToParts(moment).find(({ type }) => type === 'month' || type === 'weekday')?.value ?? '';
      const name = bare(part);
      return [name, name.normalize('NFD').replace(/\p{M}/gu, '')].map((one) => [one, at + 1] as const);
    }).flat(),
  );
}

type Names = { weekdays: Map<string, number>; months: Map<string, number> };
const tables = new Map<string, Names>();

/** The names of a language, made when it is met for the first time. */
function tableOf(language: string): Names {
  const table = tables.get(language) ?? {
    // 1 January 2024 was a Monday.
    weekdays: namesOf(language, 7, { weekday: 'short' }, (at) => Temporal.PlainDate.from({ year: 2024, month: 1, day: at + 1 })),
    months: namesOf(language, 12, { day: 'numeric', month: 'short' }, (at) =>
      Temporal.PlainDate.from({ year: 2024, month: at + 1, day: 1 }),
    ),
  };
  tables.set(language, table);
  return table;
}

/** Weekdays that are no other word of their language: they stand for themselves also without a number beside them. */
const alone: Readonly<Record<string, RegExp>> = {
  de: /^(?:Mo|Di|Mi|Do|Fr|Sa)$/,
  nl: /^(?:ma|di|wo|do|vr|za)$/i,
  es: /^(?:lun|mié|mie|jue|vie|sáb|sab)$/i,
};
const JOINS = /^(?:[-+&/,>]|und|bis|en|et|y|e|au|al|tot|til|till|och|og|a|m)$/;

/** 1 for Monday, where a short name of the message's own language stands for a weekday. */
export function shortWeekday(tokens: Tokens, index: number): number | undefined {
  const token = tokens[index];
  const language = token && token.text.length <= LONGEST && languageOf(tokens);
  if (!token || !language) return undefined;
  const { weekdays } = tableOf(language);
  const weekday = weekdays.get(token.lower);
  if (weekday === undefined) return undefined;
  const pointed = tokens[index + 1]?.text === '.' || tokens[index + 1]?.text === ',' ? 1 : 0;
  const next = tokens[index + 1 + pointed];
  const numbered = next?.num !== undefined && next.num >= 1 && next.num <= 31 && next.text.length <= 2;
  const named = (at: number): boolean => weekdays.has(tokens[tokens[at]?.text === '.' ? at - 1 : at]?.lower ?? '');
  const joins = (at: number): boolean => JOINS.test(tokens[at]?.lower ?? '');
  const joined = (joins(index + 1 + pointed) && named(index + 2 + pointed)) || (joins(index - 1) && named(index - 2));
  const bracketed = tokens[index - 1]?.text === '(' && tokens[index + 1 + pointed]?.text === ')';
  if (numbered || joined || bracketed) return weekday;
  // "Fr. 450", "Fr. Keller", "di Lorenzo"
  const begins = /^[\p{Lu}\d]/u.test(next?.text ?? '') && next?.breaks === 0;
  return alone[language]?.test(token.text) && !(begins && (pointed > 0 || language === 'nl')) ? weekday : undefined;
}
const LONGEST = 5;

/** Languages whose speakers count the weeks of the year in everyday life. */
const COUNTS_WEEKS = /^(?:nl|da|sv|de)$/;
/** "week 24" counts lessons or weeks of a season in English as well, the smaller the number the more. */
const PLAINLY_OF_YEAR = 13;

/** True where "week" and a number at a token tell a week of the year. */
export const tellsWeeks = (tokens: Tokens, index: number): boolean =>
  COUNTS_WEEKS.test(languageOf(tokens) ?? '') || [1, 2, 3].some((ahead) => (tokens[index + ahead]?.num ?? 0) >= PLAINLY_OF_YEAR);

/** 1 for January, where a short name of the message's own language stands behind a day. */
export function shortMonth(tokens: Tokens, index: number): number | undefined {
  const token = tokens[index];
  const before = tokens[index - 1];
  const behind = before?.num !== undefined || (/^(?:\.|de)$/.test(before?.lower ?? '') && tokens[index - 2]?.num !== undefined);
  if (!token || !behind || token.text.length > LONGEST) return undefined;
  const language = languageOf(tokens);
  return language === undefined ? undefined : tableOf(language).months.get(token.lower);
}
