/**
 * The month of a day that is written without one: "the Saturday of the May long weekend (the 22nd)".
 */
import { monthWord } from '../words.ts';
import { sentenceAround } from '../parts/sentences.ts';
import type { Tokens } from './pieces.ts';
import type { Sequence } from './sequences.ts';

/** The one month that is named outside of every date: "the May long weekend". */
export function strayMonth(tokens: Tokens, found: readonly Sequence[]): number | undefined {
  const months = new Set<number>();
  for (const [index, token] of tokens.entries()) {
    const month = /^\p{Lu}\p{Ll}{2,}$/u.test(token.text) ? monthWord(token.lower) : undefined;
    const begins = index === 0 || token.breaks > 0 || /^[.!?,]$/.test(tokens[index - 1]?.text ?? '');
    if (month === undefined || begins || found.some(({ first, next }) => index >= first && index < next)) continue;
    months.add(month);
  }
  return months.size === 1 ? [...months][0] : undefined;
}

/** The one month of the other dates of a sentence, where the weekdays of numbered days fit into it: "Friday the 4th, Saturday the 5th and the day itself, Sunday 6 February". */
export function monthBeside(
  text: string,
  tokens: Tokens,
  sequence: Sequence,
  found: readonly Sequence[],
  today: Temporal.PlainDate,
): number | undefined {
  const atoms = sequence.items.map(({ atom }) => atom);
  const [start, end] = [tokens[sequence.first]?.start ?? 0, tokens[sequence.next - 1]?.end ?? 0];
  if (atoms.length === 0 || atoms.some(({ day, weekday, month }) => day === undefined || weekday === undefined || month !== undefined))
    return undefined;
  const sentence = sentenceAround(text, start, end);
  const beside = found.filter(({ first }) => (tokens[first]?.start ?? 0) >= sentence.start && (tokens[first]?.start ?? 0) < sentence.end);
  const months = new Set(beside.flatMap(({ items }) => items.flatMap(({ atom }) => atom.month ?? [])));
  const [month] = months;
  if (month === undefined || months.size > 1) return undefined;
  const year = month < today.month ? today.year + 1 : today.year;
  const fits = atoms.every(({ day, weekday }) => {
    const date = Temporal.PlainDate.from({ year, month, day: day ?? 1 }, { overflow: 'constrain' });
    return date.day === day && date.dayOfWeek === weekday;
  });
  return fits ? month : undefined;
}

/** "The sangeet is on 24th April and the wedding on the 25th": a number a little after the day that its sentence names before it is of the same month. */
export function monthOfEarlier(text: string, tokens: Tokens, { first, items }: Sequence, found: readonly Sequence[]): number | undefined {
  const [item] = items;
  const { day, month, monthsAhead } = item?.atom ?? {};
  if (day === undefined || items.some(({ atom }) => atom.relative) || month !== undefined || monthsAhead !== undefined) return undefined;
  const earlier = found.findLast((one) => one.next <= first)?.items.at(-1)?.atom;
  if (earlier?.month === undefined || earlier.day === undefined || earlier.slashed) return undefined;
  const [from, start] = [tokens[earlier.first]?.start ?? 0, tokens[first]?.start ?? 0];
  const ahead = day - earlier.day;
  return ahead > 0 && ahead <= NEAR_DAYS && sentenceAround(text, start, start).start <= from && !closesAt(text, start)
    ? earlier.month
    : undefined;
}
const NEAR_DAYS = 4;

/** "by the 4th", "before Friday, the 4th": till then an answer is wanted, whatever days stand around it. */
export const closesAt = (text: string, start: number): boolean => CLOSES.test(text.slice(Math.max(0, start - CLOSING_LEAD), start));
const CLOSING_LEAD = 30;
const CLOSES = /\b(?:by|before|until|till?)\s(?:\p{L}{2,9},?\s)?(?:the\s)?$/iu;

/** The month of the week that is named before a day in its sentence: "the week of June 7, on the Wednesday and Thursday (the 9th and 10th)". */
export function monthOfWeek(text: string, tokens: Tokens, { first, items }: Sequence, found: readonly Sequence[]): number | undefined {
  const start = tokens[first]?.start ?? 0;
  if (items.length === 0 || items.some(({ atom }) => atom.day === undefined || atom.month !== undefined)) return undefined;
  const week = found.findLast((one) => one.first < first && one.around === 'week');
  const named = tokens[week?.first ?? 0]?.start ?? 0;
  return week && sentenceAround(text, start, start).start <= named ? week.items[0]?.atom.month : undefined;
}

/** "next month, the 10th and 11th": the month of numbers right behind it. */
export function monthAhead(text: string, tokens: Tokens, { first, items }: Sequence, today: Temporal.PlainDate): number | undefined {
  if (items.length === 0 || items.some(({ atom }) => atom.day === undefined || atom.month !== undefined)) return undefined;
  const start = tokens[first]?.start ?? 0;
  return NEXT_MONTH.test(text.slice(Math.max(0, start - LEAD), start)) ? today.with({ day: 1 }).add({ months: 1 }).month : undefined;
}
/** "the bank holiday Monday in May, the 1st", "the date in October that you asked for: the 9th": the month that is named right before a number. */
export function monthBefore(text: string, tokens: Tokens, { first, items }: Sequence): number | undefined {
  if (items.length === 0 || items.some(({ atom }) => atom.day === undefined || atom.month !== undefined || atom.monthsAhead !== undefined))
    return undefined;
  const start = tokens[first]?.start ?? 0;
  const lead = text.slice(Math.max(0, start - MONTH_LEAD), start);
  const word = (IN_MONTH.exec(lead) ?? OF_HOLIDAY.exec(lead))?.[1];
  return word === undefined ? undefined : monthWord(word.toLowerCase());
}
const MONTH_LEAD = 60;
const IN_MONTH =
  /(?<!\p{L})(?:in|of|im|en|i)\s(\p{L}{3,10})(?:\s[\p{L}']{1,9}){0,4}(?:\s?[,:(–-]\s?(?:\p{L}{2,6}\s)?|\s(?:is|will be|falls on|would be)\s(?:on\s)?)(?:the\s)?$/iu;
/** "August Bank Holiday Monday, that's the 30th" */
const OF_HOLIDAY =
  /(?<!\p{L}|\b(?:after|following|from|before) (?:the )?)(\p{L}{3,10}) (?:bank holiday|long weekend)(?: \p{L}{3,6}day)?\s?[,:(–-]?\s?(?:(?:so |and )?(?:that's|that is|which is|it's|i\.e\.|this year)\s)?(?:the\s)?$/iu;

const LEAD = 40;
const NEXT_MONTH =
  /(?<!\p{L})(?:(?:next|nxt) month|nächsten monat|kommenden monat|le mois prochain|el mes que viene|el próximo mes|il mese prossimo|volgende maand)(?!\p{L}|'s)[^.;!?\n\d]{0,20}$/iu;
