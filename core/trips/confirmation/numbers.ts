/**
 * Flight and train numbers, how one goes, and what was paid: what a confirmation says besides places and times.
 */
import type { Money } from '../../contract/parts.ts';
import type { Mode } from '../../contract/trips.ts';
import { exponentOf, isCurrency } from '../../money/currencies.ts';
import { amountOf } from '../../money/money.ts';
import { parseAmount } from '../../money/parse.ts';
import { monthWord } from '../../inquiries/words.ts';

export type NumberMark = { start: number; end: number; text: string };

/** "QX 412": two letters, or a letter and a figure, of an airline, and up to four figures (IATA). */
const FLIGHT =
  /(?<![\p{L}\p{N}-])(?<line>[A-Z]{2}|[A-Z]\d|\d[A-Z])\s?-?(?<number>\d{1,4})(?![\p{L}\p{N}/]|[.,:]\d|\s?(?:kg|lb|am|pm|h)\b)/gu;
const NAMED =
  /(?<!\p{L})(?:flight|train|service|sailing|voyage|zug|vol|bus|coach)\s?(?:no\.?|number|nr\.?|#)?\s?:?\s?(?<number>(?:[A-Z]{1,3}\s?)?\d{1,5})(?![\p{L}\p{N}/]|[.,:]\d)/giu;
/** The same way under another carrier's number. */
const OTHER_NUMBER = /(?:operated by|operating as|codeshare|also sold as|marketed (?:by|as))[^,;]{0,30}$/i;
/** Two letters that stand before figures in a confirmation and are no airline. */
const NO_AIRLINE = new Set('NO PO ST RD AT IN ON TO OF UP BY PM AM KG LB HR'.split(' '));

/** Numbers of a unit; the same in another writing is one. `flights` where flights are spoken of, so that "QX 412" alone is one. */
export function numbersIn(text: string, flights: boolean): NumberMark[] {
  const found: NumberMark[] = [];
  const put = (start: number, end: number, name: string): void => {
    if (OTHER_NUMBER.test(text.slice(0, start)) || found.some((each) => each.start < end && each.end > start)) return;
    found.push({ start, end, text: name });
  };
  if (flights)
    for (const { index, 0: all, groups } of text.matchAll(FLIGHT)) {
      const line = groups?.['line'] ?? '';
      if (!NO_AIRLINE.has(line) && !isMonthPart(text, index)) put(index, index + all.length, `${line} ${groups?.['number'] ?? ''}`);
    }
  // "Flight 1: ZQ 412" counts the flights.
  if (found.length > 0) return found;
  for (const { index, 0: all, groups } of text.matchAll(NAMED)) {
    const number = groups?.['number'] ?? '';
    put(index + all.length - number.length, index + all.length, number.replace(/^([A-Z]{1,3})\s?(\d)/i, '$1 $2').toUpperCase());
  }
  return found.toSorted((a, b) => a.start - b.start);
}

/** "14DE 26" is no flight. */
const isMonthPart = (text: string, at: number): boolean =>
  monthWord(/[A-Za-z]{3}/.exec(text.slice(at, at + 4))?.[0]?.toLowerCase() ?? '') !== undefined;

const modes: readonly (readonly [Mode, RegExp])[] = [
  ['flight', /(?<!\p{L})(?:flights?|airlines?|airways|airports?|e-?ticket|flug|vol|vuelo|volo|boarding pass)(?!\p{L})/iu],
  [
    'rail',
    /(?<!\p{L})(?:trains?|rail(?:way|road)?|carriage|platform|(?:nacht|fern)?zug|bahn|hbf|ice|wagen|gleis|voiture|sleeper)(?!\p{L})/iu,
  ],
  ['ferry', /(?<!\p{L})(?:ferry|ferries|sailing|sails|vessel|crossing|port|foot passenger|fähre|ship)(?!\p{L})/iu],
  ['ride', /(?<!\p{L})(?:bus|coach (?:service|station|ticket)|by coach|shuttle|transfer|driver|pick-?up)(?!\p{L})/iu],
];

/** How one goes, as often as it is said. */
export function modesIn(text: string): Mode[] {
  const found = modes.flatMap(([mode, words]) => (words.test(text) ? [mode] : []));
  // A station alone is one of trains.
  return found.length === 0 && /(?<!\p{L})stations?(?!\p{L})/iu.test(text) ? ['rail'] : found;
}

const SYMBOLS: Record<string, string> = { '€': 'EUR', '£': 'GBP' };
const TOTAL =
  /(?<!\p{L})(?:grand )?(?:total(?: (?:paid|price|fare|amount|cost|charged))?|amount (?:paid|charged)|price|fare|you paid|gesamt(?:preis|betrag)?|prix|importe)(?!\p{L})[^\d\n]{0,24}?(?<before>[A-Z]{3}|[€£])?\s?(?<amount>\d[\d.,' ]{0,14}\d|\d)\s?(?<after>[A-Z]{3}(?!\p{L})|[€£])?/giu;

/** What was paid in all, where a currency stands beside it; of several sums the last. A bare "$" may be of several countries and is left. */
export function totalIn(text: string): { money: Money; start: number; end: number } | null {
  let found: { money: Money; start: number; end: number } | null = null;
  for (const { index, 0: all, groups } of text.matchAll(TOTAL)) {
    const said = groups?.['before'] ?? groups?.['after'] ?? '';
    const currency = SYMBOLS[said] ?? said;
    if (!isCurrency(currency)) continue;
    const read = parseAmount(groups?.['amount'] ?? '', exponentOf(currency));
    if (read.ok) found = { money: amountOf(read.value, currency), start: index, end: index + all.trimEnd().length };
  }
  return found;
}
