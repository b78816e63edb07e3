/**
 * Dates in points and spaces, as they are written from Prague to Helsinki: "4. 11. 2028", "Saturday 4. 11.", "2.-4. 2.", and with the year first: "2027. szeptember 4.".
 */
import { isDay, isYear, monthAt, weekdayAt, type Atom, type Tokens } from './pieces.ts';

/** What leads to a date and to no point of a list. */
const LEADS = /^(?:on|am|vom|den|dem|from|to|until|till|bis|dne|od|do|dnia|den|le|il|el|op|date|,)$/;
const JOINS = /^(?:-|to|till|til|until|bis|do|až|and|&|\+|und|et|a|i|e|og|och|\/)$/;

const isPoint = (tokens: Tokens, index: number): boolean => tokens[index]?.text === '.' && tokens[index]?.tight;
const smallNumber = (tokens: Tokens, index: number): number | undefined =>
  (tokens[index]?.text.length ?? 9) <= 2 ? tokens[index]?.num : undefined;

/** A day, a month and perhaps a year with a space behind each point. */
export function spacedAt(tokens: Tokens, index: number): Atom | undefined {
  if (tokens[index]?.text.length === 4) return yearFirst(tokens, index);
  const [day, month] = [smallNumber(tokens, index), smallNumber(tokens, index + 2)];
  if (!isDay(day) || month === undefined || month < 1 || month > 12 || !isPoint(tokens, index + 1) || !isPoint(tokens, index + 3))
    return undefined;
  if (tokens[index + 2]?.tight || tokens[index + 2]?.breaks !== 0) return undefined;
  const year = tokens[index + 4];
  if (year?.text.length === 4 && isYear(year.num) && year.breaks === 0)
    return { first: index, next: index + 5, day, month, year: year.num, dotted: true };
  return led(tokens, index) ? { first: index, next: index + 4, day, month, dotted: true } : undefined;
}

/** True where a weekday, a word for a date or the day before it stands before. */
function led(tokens: Tokens, index: number): boolean {
  const lead = tokens[index - 1];
  if (lead === undefined || tokens[index]?.breaks !== 0) return false;
  if ([1, 2].some((back) => weekdayAt(tokens, index - back)?.next === index)) return true;
  if (JOINS.test(lead.lower) && isPoint(tokens, index - 2) && smallNumber(tokens, index - 3) !== undefined) return true;
  return LEADS.test(lead.lower) && lead.text !== ',';
}

/** "2027. szeptember 4.", "2027. 09. 04." */
function yearFirst(tokens: Tokens, index: number): Atom | undefined {
  const year = tokens[index]?.num;
  if (!isYear(year) || !isPoint(tokens, index + 1) || tokens[index + 2]?.tight || tokens[index + 2]?.breaks !== 0) return undefined;
  const named = monthAt(tokens, index + 2);
  const number = named ? undefined : smallNumber(tokens, index + 2);
  const month = named?.month ?? (isPoint(tokens, index + 3) ? number : undefined);
  const at = named?.next ?? index + 4;
  const day = smallNumber(tokens, at);
  if (month === undefined || month < 1 || month > 12 || !isDay(day) || tokens[at]?.breaks !== 0) return undefined;
  return { first: index, next: isPoint(tokens, at + 1) ? at + 2 : at + 1, year, month, day, iso: true };
}
