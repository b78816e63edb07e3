/**
 * Days of a run that are told by their numbers: "on day 2 and day 3 only", "we need you on days two to four", "you'd be needed for days 1, 2 and 4".
 */
import { OF_AN_HOUR } from './mark-words.ts';
import { numberOf } from './marks.ts';

const NUMBER = String.raw`(?:[1-6]|one|two|three|four|five|six)`;
const TO = String.raw`(?:,? (?:to|till|until|through) |\s?[-–]\s?)`;
const LIST = String.raw`days? (${NUMBER}(?:(?:,? (?:and|&|\+) |, ?|\s?[&+]\s?|${TO})(?:on |for )?(?:days? )?${NUMBER}\b(?![.:]\d))*)`;
/** Behind an "only" an hour may follow: "day two only at 9" is no word on the other days. */
const ONLY = new RegExp(
  String.raw`\b${LIST},? (?:only|alone)\b(?! (?:(?:at|from|by|until|till|about) )?(?:\d{1,2}[.:h]?\d{0,2}\b(?! (?:of|days?|nights?|people)\b)|half\b|noon\b))|\b(?:only|just) (?:on |for |need (?:you |it |filming )?(?:on |for )?|want (?:you |it |filming )?(?:on |for )?|be needed (?:on |for )|be filming (?:on )?|film (?:on )?|filmed (?:on )?|come (?:on |for )?)?${LIST}\b`,
  'i',
);
/** "please come on day five", where no other day is told by its number */
const COME_ON = new RegExp(
  String.raw`\b(?:come(?: in)?|you(?:'d| would|'ll| will| could| can)? (?:only )?join(?: us)?|(?:need|want|like|book|have) (?:you|someone|somebody|a camera|a videographer)(?: there| here)?|film(?:ing)?|you(?:'d| would|'ll| will)(?: only)? be (?:needed|wanted|required|there|with us)) (?:in )?(?:only )?(?:on|for) ${LIST}\b`,
  'i',
);
const REFUSED = /(?:\bnot|n['’]t|\bnever|\bnobody|\bno)\b[^.;!?\n,]{0,30}$/i;
const REACH = 40;

/** The numbers of the days that are wanted; none where words tell no day so. */
export function dayNumbers(text: string): number[] {
  const only = ONLY.exec(text);
  if (only && OF_AN_HOUR.test(text.slice(Math.max(0, only.index - REACH), only.index))) return [];
  const found = only ?? ([...text.matchAll(new RegExp(String.raw`\b${LIST}\b`, 'gi'))].length === 1 ? COME_ON.exec(text) : null);
  const list = found?.slice(1).find((words) => words !== undefined);
  if (!found || list === undefined || REFUSED.test(text.slice(Math.max(0, found.index - REACH), found.index))) return [];
  return numbersIn(list);
}

function numbersIn(list: string): number[] {
  const numbers: number[] = [];
  let last: { number: number; end: number } | undefined;
  for (const { index, 0: word } of list.matchAll(new RegExp(String.raw`\b${NUMBER}\b`, 'gi'))) {
    const number = numberOf(word);
    const from = last && new RegExp(TO, 'i').test(list.slice(last.end, index)) ? last.number + 1 : number;
    for (let day = from; day <= number; day++) numbers.push(day);
    last = { number, end: index + word.length };
  }
  return numbers;
}
