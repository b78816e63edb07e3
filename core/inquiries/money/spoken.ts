/**
 * Amounts in words: "nine hundred a day", "a grand and a half", "hundred and eighty pound", "two-fifty for the night".
 */
import { numberWord } from '../words.ts';
import { folded, PER, perOf, WORD, type Amount } from './units.ts';

const ONE = '(?:one|two|three|four|five|six|seven|eight|nine)';
const TEEN = '(?:ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen)';
const TENS = String.raw`(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[- ]${ONE}(?! hundred))?`;
/** The currency and the unit behind an amount. It is long, so it stands in one pattern of its own that is built once. */
const BESIDE = new RegExp(String.raw`(?:\s?(?<post>${WORD})\b)?(?:\s?(?<per>${PER}))?`, 'iuy');
const FROM_HERE = String.raw`(?<![\p{L}\d-]|\b(?:couple of|few|several|some)\s)`;
/** Where "hundred and eighty" stands for one hundred. */
const ALONE = String.raw`(?<=(?:^|[.!?:;,("“\n])\s?|\b(?:about|around|roughly|is|it's|pay|pays|offer|got|for|of|say)\s)`;
/** "a hundred and twenty", "half a grand", "two and a half thousand", "twelve hundred", "hundred and eighty". */
const SIZED = new RegExp(
  String.raw`${FROM_HERE}(?:(?<half>half)(?: an?)?\s|(?<count>an?|${TENS.replace('(?! hundred)', '')}|${ONE}|${TEEN})(?<halves> and a half)?[\s-]|${ALONE}(?=hundred |thousand ))(?<size>hundred|thousand|grand)\b(?<later> and a half)?(?:\s(?:and\s)?(?<more>${ONE})\shundred)?(?:\s?(?:and\s)?(?<tens>${TEEN}|${TENS}|(?<=and )${ONE})\b)?`,
  'giu',
);
/** "four fifty", "two-seventy-five": an hour, unless a unit, a currency or the words around it make it money. */
const SHORT = new RegExp(String.raw`${FROM_HERE}(?<count>${ONE}|${TEEN})[\s-](?<tens>${TENS})\b`, 'giu');
/** "eighty pounds" */
const SMALL = new RegExp(String.raw`${FROM_HERE}(?<tens>${TENS}|${TEEN})(?=\s)`, 'giu');
const sizes: Record<string, number> = { hundred: 100, thousand: 1000, grand: 1000 };

const PAID_FOR = /^\sfor (?:it|you|this|that|the (?:film|video|filming))\b/i;
const PAID =
  /\b(?:fee|rate|budget|pays?|paying|offer|offering|wage|money|stipend|honorarium|can do(?: you)?)(?:'s| is| are| of| you| me)?(?: about| around| only)?\s$/i;
const AGED =
  /(?:\b(?:turn(?:s|ed|ing)?|be(?:comes?|coming)|aged|old)|(?<!(?:fee|rate|budget|pay|offer|that|it|this|all|max|price|amount|money|most|figure|total)) (?:is|are|was|were))\s$/i;
const LEAD = 30;
const BEHIND = 20;

/** "seventy-five" */
const valueOf = (words: string | undefined): number =>
  (words ?? '')
    .toLowerCase()
    .split(/[- ]/)
    .reduce((sum, one) => sum + (numberWord(one) ?? 0), 0);

/** An amount in words with what stands behind it. */
type Spoken = { index: number; end: number; groups: Record<string, string | undefined> };

function spoken(text: string, pattern: RegExp): Spoken[] {
  return [...text.matchAll(pattern)].map(({ index, 0: words, groups }) => {
    BESIDE.lastIndex = index + words.length;
    const beside = BESIDE.exec(text);
    const whole = `${words}${beside?.[0] ?? ''}`.trimEnd();
    return { index, end: index + whole.length, groups: { ...groups, ...beside?.groups } };
  });
}

/** "for hundred and eighty", "pay hundred quid", but not "for hundred reasons". */
const isBareHundred = ({ groups: { half, count, size = '', tens = '', post } }: Spoken): boolean =>
  half === undefined && count === undefined && /^hundred$/i.test(size) && post === undefined && (tens === '' || ONE_ALONE.test(tens));
const ONE_ALONE = new RegExp(`^${ONE}$`, 'i');

function amountOf(match: Spoken, amount: number, paid = false): Amount {
  const per = perOf(match.groups);
  const mark = folded(match.groups['post']);
  const { end } = match;
  return {
    start: match.index,
    end,
    amount,
    ...(mark ? { mark } : {}),
    ...(per ? { per } : {}),
    ...(paid ? { paid } : {}),
  };
}

/** "The club is a hundred", "gran turns a hundred": years, where neither money nor a unit is named and what is so old is nothing that pays. */
function isAge(text: string, { index, groups }: Spoken): boolean {
  if (groups['post'] !== undefined || groups['per'] !== undefined || !/^hundred$/i.test(groups['size'] ?? '')) return false;
  const before = text.slice(Math.max(0, index - LEAD), index);
  return AGED.test(before) && !PAID.test(before);
}

/** Amounts that are written in words, in the order of the text. */
export function spokenIn(text: string): Amount[] {
  const sized = spoken(text, SIZED)
    .filter((match) => !isBareHundred(match) && !isAge(text, match))
    .map((match) => {
      const { half, count, halves, size = '', later, more, tens } = match.groups;
      const times = half !== undefined ? 0.5 : (count === undefined ? 1 : valueOf(count)) + ((halves ?? later) ? 0.5 : 0);
      return amountOf(match, times * (sizes[size.toLowerCase()] ?? 0) + valueOf(more) * 100 + valueOf(tens), /^grand$/i.test(size));
    });
  const apart = (one: Spoken): boolean => !sized.some(({ start, end }) => one.index >= start && one.index < end);
  const short = spoken(text, SHORT)
    .filter(apart)
    .flatMap((match): Amount[] => {
      const { count, tens, post, per } = match.groups;
      const paid =
        PAID_FOR.test(text.slice(match.end, match.end + BEHIND)) || PAID.test(text.slice(Math.max(0, match.index - LEAD), match.index));
      if (post === undefined && per === undefined && !paid) return [];
      return [amountOf(match, valueOf(count) * 100 + valueOf(tens), paid)];
    });
  const larger = [...sized, ...short];
  const small = spoken(text, SMALL)
    .filter(({ index, groups }) => groups['post'] !== undefined && !larger.some(({ start, end }) => index >= start && index < end))
    .map((match) => amountOf(match, valueOf(match.groups['tens'])));
  return [...larger, ...small].toSorted((a, b) => a.start - b.start);
}
