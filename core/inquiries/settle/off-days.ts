/**
 * A day that is told only to say that nothing happens on it: "Monday 11 everybody rests", "there is no function on 26th".
 */
import type { Where } from './scene.ts';

/** True where the words beside a day say so. */
export const isOff = (text: string, { start, end }: Where): boolean =>
  OFF_BEHIND.test(text.slice(end, end + OFF_REACH)) || OFF_BEFORE.test(text.slice(Math.max(0, start - OFF_REACH), start));
/** True where what stands before a day says that nothing is on it: "nothing on the Wednesday". */
export const nothingOn = (text: string, start: number): boolean => NOTHING_ON.test(text.slice(Math.max(0, start - OFF_REACH), start));
const NOTHING_ON = /\bnothing (?:is |happens )?on (?:the )?$/i;
const OFF_REACH = 40;
const OFF_BEHIND =
  /^,?\s(?:is|are|'s|we|you|they|everybody|everyone|all|the (?:crew|riders|teams|boats|players|guests))?\s?(?:\p{L}{2,8}\s){0,2}(?:rests?|resting|a rest|rest day|(?<!\b(?:kicks?|sets?|starts?|takes?|heads?|goes|go|went|rounds?|finish|blasts?|tees?|fires?|shows?|drops?) )off(?! (?:to|with|at|from|by|season)\b)|day off|free(?! (?:entry|of|for))|closed|dark|nothing|no (?:function|game|match|play|racing|show|programme|shooting|filming|work))\b/iu;
const OFF_BEFORE = /\b(?:nothing|nobody|no \p{L}{3,12}|rest(?: day)?|off|break)\s(?:is\s|happens\s)?on\s(?:the\s)?$/iu;
