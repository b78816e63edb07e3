/**
 * Amounts of money as people write them: "$1,200", "900 a day", "1.2k", "3.500 €", "CHF 1'200", "£450 per day".
 */

import { spokenIn } from './spoken.ts';
import { folded, MARK, PER, perOf, WORD, type Amount } from './units.ts';

/** "til 6 400 a day" is an hour and an amount. */
const NO_HOUR = String.raw`(?<!\b(?:til|till|until|to|at|by|from)\s(?=\d{1,2} ))`;
/** "1,20,000" is how lakhs are written. */
const GROUPED = String.raw`${NO_HOUR}\d{1,2}(?:,\d{2}){1,2},\d{3}(?!\d)|${NO_HOUR}\d{1,3}(?:[,. '](?=\d{3}(?!\d))\d{3}){1,3}(?:[.,]\d{1,2}(?!\d))?`;
/** Up to seven digits; of a longer row none is taken, since a part of it is not what was written. */
const NUMBER = String.raw`(?:${GROUPED}|\d{1,7}(?:[.,]\d{1,2})?)(?!\d)`;
const TAX = String.raw`gst|vat|hst|tax|super|ust|ht|mwst|btw|iva|tva|moms|mva`;
const WITH_TAX = String.raw`(?:\.[-–—]|\/-)?(?:\s?(?:\+|plus|inc\.?|incl\.?|ex\.?|excl\.?|including|excluding)\s?(?:${TAX})(?!\p{L})|\s?(?:${TAX}) (?:compres[ao]|inclus[ao]?|incluid[ao]|inkl\w*|inbegrepen|included|esclus[ao]|excluid[ao]|exkl\w*|excluded)|(?:\s|(?<=\s))(?:ht|ttc|nett?o?|gross|brutt?o?)(?!\p{L}))?`;
const AMOUNT = new RegExp(
  String.raw`(?<![\p{L}\d.,:/])(?<pre>(?:${MARK})(?!\p{L}))?\s?(?<num>${NUMBER})\s?(?<k>k(?!\p{L})|grand\b|lakhs?\b|thousand\b|hundred\b|mil(?= (?:pesos|euros|d[oó]lares|reais|soles|libras|francos|coronas)\b))?(?:\s?(?:-|to|or|and)\s?(?<mark2>${MARK})?\s?(?<num2>${NUMBER})(?![.,]\d)\s?(?<k2>k\b)?(?=\s?(?:${MARK}|${WORD}|a |per |an |\/|all|flat|total|for |$|[.,;)\n]))|\s?(?:-|to|or)\s?(?<mark4>${MARK})\s?(?<num4>${NUMBER})(?![.,]\d)|(?<=\d)[-–](?<num3>\d{2,6}))?(?:\s?(?:\$\s?(?=(?:CAD|USD|AUD|NZD|SGD|HKD)(?!\p{L})))?(?<post>kr\.|(?:${WORD})\b|(?:${MARK}|US)(?!\p{L})))?(?:,(?:--?|[–—]) ?(?<late>€|EUR|Euro)?)?${WITH_TAX}(?:\s?(?:,\s?)?(?:ish\s)?-?\s?(?:\()?(?<per>${PER}))?`,
  'giu',
);

/** A number as written, in any country's separators. Undefined where "1.250" could be either. */
function numberOf(written: string): number | undefined {
  const text = written.replace(/[' ]/g, '');
  if (/^\d{1,2}(?:,\d{2})+,\d{3}$/.test(text)) return Number(text.replaceAll(',', ''));
  const groups = /^(\d{1,3})((?:[.,]\d{3})+)([.,]\d{1,2})?$/.exec(text);
  if (groups) {
    const whole = `${groups[1]}${(groups[2] ?? '').replace(/[.,]/g, '')}`;
    return Number(`${whole}${(groups[3] ?? '').replace(',', '.')}`);
  }
  const plain = Number(text.replace(',', '.'));
  return Number.isFinite(plain) ? plain : undefined;
}

/** "$700 US" and "$850 CAD" say which dollars; "pay $700 us" does not. */
function markOf({ pre, post, late }: Record<string, string | undefined>): string | undefined {
  const after = post === 'us' || post === 'Us' ? undefined : post;
  return folded(pre === '$' ? (after ?? pre) : (pre ?? after ?? late));
}

/** Nobody offers from one amount to so many times that. */
const UNLIKE = 8;
/** "£5m", "€2 million": nobody pays so much for a film; where a little money is counted in millions it is offered. */
const MILLIONS = /^\s?(?:(?:m|mn|bn)(?![\p{L}\d])|(?:million|billion)s?\b)/iu;
const DEAR = /^(?:[£€$]|GBP|EUR|USD|POUNDS?|EUROS?|DOLLARS?)/i;
const WEEKDAY = /day$/i;
/** "1.2k", "12 hundred", "2 lakhs" */
const timesOf = (size = ''): number => (/^l/i.test(size) ? 100_000 : /^h/i.test(size) ? 100 : 1000);
const FROM = /\bfrom (?:about |around )?$/i;
const MOVED = /\b(?:bump|rais|went|gone|go(?:es)? up|mov|increas|lift|up(?:ped)?|put|push|cut|dropp?|reduc|chang)\w*\b/i;

/** Every number that could be an amount: with a currency, a "k", or a "per" beside it, or standing alone with at least three digits. */
export function amountsIn(text: string): Amount[] {
  const found: Amount[] = [];
  for (const match of text.matchAll(AMOUNT)) {
    const groups = match.groups ?? {};
    const first = numberOf(groups['num'] ?? '');
    if (first === undefined) continue;
    const other = groups['num2'] ?? groups['num3'] ?? groups['num4'];
    const second = other === undefined ? undefined : numberOf(other);
    // "9 to 4 and $550" is an hour and an amount.
    const late = groups['pre'] === undefined ? (groups['mark2'] ?? groups['mark4']) : undefined;
    // "£350 and £25 for parking" are two.
    if (groups['pre'] !== undefined && groups['mark2'] !== undefined && second !== undefined && second < first && !groups['k2']) {
      const at = match.index + match[0].lastIndexOf(groups['mark2']);
      const per = perOf(groups);
      const [mark, other] = [folded(groups['pre']) ?? '', folded(groups['mark2']) ?? ''];
      const until = match.index + match[0].slice(0, at - match.index).replace(/\s?(?:-|to|or|and)\s?$/, '').length;
      found.push({
        start: match.index + (/^\s/.exec(match[0])?.[0].length ?? 0),
        end: until,
        amount: groups['k'] ? first * timesOf(groups['k']) : first,
        mark,
      });
      found.push({ start: at, end: match.index + match[0].trimEnd().length, amount: second, mark: other, ...(per ? { per } : {}) });
      continue;
    }
    if (late !== undefined && second !== undefined && first * UNLIKE < second) {
      const start = match.index + match[0].indexOf(late, groups['num']?.length);
      const per = perOf(groups);
      found.push({
        start,
        end: match.index + match[0].trimEnd().length,
        amount: groups['k2'] ? second * 1000 : second,
        mark: folded(late) ?? late,
        ...(per ? { per } : {}),
      });
      continue;
    }
    const thousand = groups['k'] !== undefined || (groups['k2'] !== undefined && first < 100);
    const times = timesOf(groups['k']);
    const amount = thousand ? Math.round(first * times) : first;
    const upTo =
      second === undefined ? undefined : groups['k2'] !== undefined || (thousand && second < 100) ? Math.round(second * 1000) : second;
    const mark = markOf(groups);
    const per = perOf(groups);
    if (mark !== undefined && DEAR.test(mark) && MILLIONS.test(text.slice(match.index + match[0].trimEnd().length))) continue;
    // "14 May 2028, a Sunday"
    if (mark === undefined && per === 'night' && WEEKDAY.test(groups['unit'] ?? '')) continue;
    // "0600 daily" is an hour.
    if (mark === undefined && groups['num']?.startsWith('0')) continue;
    if (mark === undefined && !thousand && amount < (per === undefined ? 100 : per === 'hour' ? 15 : 50)) continue;
    const lead = /^\s/.exec(match[0])?.[0].length ?? 0;
    // "cut from $1,500 to $1,100", "bumped from 700 to 800": the second holds.
    const moved =
      upTo !== undefined &&
      FROM.test(text.slice(Math.max(0, match.index - 40), match.index + lead)) &&
      (upTo < amount || MOVED.test(text.slice(Math.max(0, match.index - 40), match.index)));
    found.push({
      start: match.index + lead,
      end: match.index + match[0].trimEnd().length,
      amount: moved ? upTo : amount,
      ...(upTo === undefined || moved ? {} : { upTo }),
      ...(mark === undefined ? {} : { mark }),
      ...(per === undefined ? {} : { per }),
    });
  }
  return [...found, ...spokenIn(text)].toSorted((a, b) => a.start - b.start);
}
