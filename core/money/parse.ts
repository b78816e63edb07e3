/**
 * Numbers as people type them. What can be read in two ways is not guessed: the sentence says how to write it.
 */
import { decimalText, exact } from './exact.ts';

/** A typed number as an exact decimal, or the sentence that says why it was not read. */
export type Read<T> = { ok: true; value: T } | { ok: false; sentence: string };

const refuse = (sentence: string): { ok: false; sentence: string } => ({ ok: false, sentence });
const DIGITS = String.raw`\d{1,12}`;
const PLAIN = new RegExp(`^${DIGITS}(\\.\\d{1,9})?$`);
const SPACES = /[\s\u00a0\u202f\u2009]+/g;

/**
 * The separators of a typed number settled: a plain decimal with a point.
 * Thousands may be parted by commas, points, spaces or apostrophes; a comma before one or two last digits is a decimal comma.
 */
function plainDecimal(typed: string, places: number): Read<string> {
  const text = typed.replace(/(?<=\d)['\u2019](?=\d{3})/g, '').replace(/(?<=\d)[\s\u00a0\u202f\u2009](?=\d{3}(\D|$))/g, '');
  const unclear = refuse(`"${typed}" can be read in two ways; write it without separators, as 1250.50.`);
  const commas = text.split(',').length - 1;
  const points = text.split('.').length - 1;
  const thousandsBy = (mark: string): boolean =>
    new RegExp(`^\\d{1,3}(\\${mark}\\d{3})+$`).test(text.split(mark === ',' ? '.' : ',')[0] ?? '');

  let plain: string;
  if (commas > 0 && points > 0) {
    const decimalMark = text.lastIndexOf('.') > text.lastIndexOf(',') ? '.' : ',';
    const groupMark = decimalMark === '.' ? ',' : '.';
    if (text.split(decimalMark).length !== 2 || !thousandsBy(groupMark)) return unclear;
    plain = text.replaceAll(groupMark, '').replace(decimalMark, '.');
  } else if (commas > 0) {
    if (thousandsBy(',')) plain = text.replaceAll(',', '');
    else if (/^\d+,\d{1,2}$/.test(text)) plain = text.replace(',', '.');
    else return unclear;
  } else if (points > 1) {
    if (!thousandsBy('.')) return unclear;
    plain = text.replaceAll('.', '');
  } else {
    // "1.250" of a currency with two places is neither an amount nor surely a thousand.
    if (/^[1-9]\d{0,2}\.\d{3}$/.test(text) && places < 3) return unclear;
    plain = text.startsWith('.') ? `0${text}` : text;
  }
  return PLAIN.test(plain) ? { ok: true, value: plain } : refuse(`"${typed}" is not a number; write it as 1250.50.`);
}

/**
 * A typed amount or price in major units: "1.2k", "1,250.50", "1 250,50", "$900", "900 USD", "-25".
 * @param places decimals of what is typed: the currency's exponent for amounts, 9 for rates and quantities
 */
export function parseAmount(typed: string, places = 2): Read<string> {
  const text = typed.trim().replace(/\u2212/g, '-');
  if (text === '') return refuse('Nothing is typed; write it as 1250.50.');
  const bare = text
    .replace(/^(-?)\s*([A-Za-z]{3}|[$\u20ac\u00a3\u00a5])\s*/, '$1')
    .replace(/\s*([A-Z]{3}|[$\u20ac\u00a3\u00a5])$/, '')
    .trim();
  const sign = bare.startsWith('-') ? '-' : '';
  const thousand = /\s*k$/i.test(bare);
  const digits = bare.replace(/^-\s*/, '').replace(/\s*k$/i, '');
  if (!/\d/.test(digits)) return refuse(`"${typed}" is not a number; write it as 1250.50.`);
  const read = plainDecimal(digits, thousand ? 9 : places);
  if (!read.ok) return read;
  return { ok: true, value: decimalText(exact(`${sign}${read.value}`).mul(thousand ? 1000 : 1)) };
}

/** A typed rate, per cent or quantity: "7.25", "7,25 %", "1.250". */
export function parseNumber(typed: string): Read<string> {
  return parseAmount(typed.replace(/%\s*$/, ''), 9);
}

/**
 * A typed quantity of a unit: a number, which may carry the unit ("2 days" of days), or a length where hours are counted ("6h30" is 6.5 hours).
 * A length in another unit is not converted: how many hours make a day is not known here.
 */
export function parseQuantity(typed: string, unit: string): Read<string> {
  const one = unit.trim().toLowerCase().replace(/s$/, '');
  const text = typed.trim();
  const lower = text.toLowerCase();
  const ending = one === '' ? undefined : [`${one}s`, one].find((word) => lower.endsWith(word));
  if (ending) return parseNumber(text.slice(0, -ending.length));
  const read = parseNumber(text);
  if (read.ok || one !== 'hour') return read;
  const length = parseLength(text);
  if (!length.ok) return length;
  return 'minutes' in length.value
    ? { ok: true, value: decimalText(exact(length.value.minutes).div(60n)) }
    : refuse(`"${typed}" is in days where hours are counted; write it as 6h30.`);
}

/** A typed length of work: so many minutes, or so many days where days were written. */
export type Length = { minutes: number } | { days: string };

/**
 * A typed length: "6h30", "6 h 30 min", "6:30", "6.5h", "90 min", "2 days", "half a day"; a bare number is in hours.
 * Minutes are whole; a fraction of a minute is refused.
 */
export function parseLength(typed: string): Read<Length> {
  const text = typed.trim().toLowerCase().replace(SPACES, ' ');
  if (text === '') return refuse('Nothing is typed; write it as 6h30 or 2 days.');
  if (/^half (a )?day$/.test(text)) return { ok: true, value: { days: '0.5' } };

  const days = /^(.+?) ?(d|days?)$/.exec(text);
  if (days?.[1] !== undefined) {
    const read = plainDecimal(days[1].trim(), 9);
    return read.ok ? { ok: true, value: { days: decimalText(read.value) } } : read;
  }
  const clock = /^(\d{1,4}) ?(?::|h|hrs?|hours?) ?(?:([0-5]?\d) ?(?:m|min|mins|minutes?)?)?$/.exec(text);
  if (clock?.[1] !== undefined && (clock[2] !== undefined || !text.endsWith(':')))
    return { ok: true, value: { minutes: Number(clock[1]) * 60 + Number(clock[2] ?? 0) } };
  const minutes = /^(\d{1,6}) ?(?:m|min|mins|minutes?)$/.exec(text);
  if (minutes?.[1] !== undefined) return { ok: true, value: { minutes: Number(minutes[1]) } };

  const hours = plainDecimal(text.replace(/ ?(h|hrs?|hours?)$/, ''), 9);
  if (!hours.ok) return refuse(`"${typed}" is not a length of time; write it as 6h30, 90 min or 2 days.`);
  const inMinutes = exact(hours.value).mul(60);
  if (inMinutes.d !== 1n) return refuse(`"${typed}" is not a whole number of minutes; write it as 6h30.`);
  return { ok: true, value: { minutes: Number(inMinutes.n) } };
}
