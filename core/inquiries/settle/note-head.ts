/**
 * When a message came, as the head of its note tells it: "Missed call 7:52 PM (719) 555-0122", "Voice message from 218-555-0159, 4:41 PM:". It is no
 * hour of the job.
 */
import { lineStart } from '../parts/sentences.ts';
import type { Where } from './scene.ts';

/** What the note is of, how it came and from whom, up to the hour. */
const HEAD =
  /^[\s[(*]{0,3}(?:new |transcribed |one )?(?:voice ?mail|voice message|voice note|vm|missed call|phone (?:message|note|call)|answer(?:ing )?(?:phone|machine)|text message|sms|message)(?:,? ?(?:transcript(?:ion)?|message|received|left|recorded|taken|from|by|at|on|today|yesterday|unknown|\p{Lu}\p{L}{1,14}|\p{L}{3,6}day|\+?\(?\d[\d() -]{5,18}\d))*,? ?\(?$/iu;
/** What stands behind it: the note itself, its length, who rang. */
const BEHIND = /^\)?\s*(?:$|[\n:;\])(–—-]|\+?\(?\d{3}|, \d|from\b|by\b)/i;
const LONGEST = 100;

/** True for an hour in the first line of a message that only says when it came. */
export function whenItCame(text: string, { start, end, to }: Where & { to?: unknown }): boolean {
  const from = lineStart(text, start);
  if (to || start - from > LONGEST || text.slice(0, from).trim() !== '') return false;
  return HEAD.test(text.slice(from, start)) && BEHIND.test(text.slice(end, end + 8));
}
