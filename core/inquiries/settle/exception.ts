/**
 * The end of one day that is another than on the rest: "back on the dock 4pm (3pm on the last day)", "wrap 6pm, but 4pm on Sunday".
 */
import type { Where } from './scene.ts';

const EXCEPT =
  /^(?: (?:daily|each|every|both|all)(?: (?:days?|nights?|evening|afternoon))?)?,? ?(?:[(–-]|but|or rather|except) ?(?:only )?(?:at |by |around |about )?$/i;
const THE_DAY =
  /^ ?(?:h|uhr)? ?on (?:the (?:last|final|second|third|fourth|fifth|sunday|saturday|\d{1,2}(?:st|nd|rd|th)) ?(?:day|evening|night|one)?|(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?)\s?(?:[).,;!\n]|$)/i;
const REACH = 30;

/** True for an hour right behind another that is told of one day instead of it. */
export const isException = (text: string, told: Where, { start, end }: Where): boolean =>
  EXCEPT.test(text.slice(told.end, start)) && THE_DAY.test(text.slice(end, end + REACH));
