/**
 * What each date of a message is said of.
 */
import type { Resolved } from '../dates/resolve.ts';
import type { Sequence } from '../dates/sequences.ts';
import { CUE_REACH } from '../said/cues.ts';
import { sentenceAround } from '../parts/sentences.ts';
import { nearest, tailOf } from './nearest.ts';
import type { DateMention } from './scene.ts';

const BY =
  /\b(?:by|before|until|till|no later than|not later than|due|deadline|within|latest|bis(?: zum)?|spätestens|avant(?: le)?|d'ici(?: le| au)?|au plus tard(?: le)?|antes del?|entro(?: il)?|uiterlijk)\b[^,;]{0,28}$/i;
/** "moved from 4 to 11 September": the second date holds. */
const MOVED =
  /\b(?:moved|moving|postponed|rescheduled|changed|shifted|pushed(?: back)?|switched|put back|brought forward)(?: \w+){0,3} from\s*$/i;

/** Say of every date what it is a date of. */
export function sayDates(
  text: string,
  found: readonly { sequence: Sequence; resolved: Resolved; start: number; end: number }[],
): DateMention[] {
  let consumed = 0;
  return found.map((item, index) => {
    const sentence = sentenceAround(text, item.start, item.end);
    const previous = found[index - 1];
    const from = Math.max(sentence.start, item.start - CUE_REACH, consumed, previous?.end ?? 0);
    const before = text.slice(from, item.start);
    const next = found[index + 1];
    const tail = tailOf(text, item.end, Math.min(sentence.end, next?.start ?? text.length, item.end + 60));
    // A cue in brackets that leads on to another date is that one's: "11 December (backup 12 December)".
    const hit = nearest(text, { start: from, end: item.start }, { ...tail, shared: tail.end === next?.start }, true);
    if (hit.after) consumed = item.end + hit.end;
    if (item.sequence.items.length === 2 && MOVED.test(text.slice(Math.max(0, item.start - 50), item.start)))
      return {
        ...item.resolved,
        readings: item.resolved.readings.map((dates) => dates.slice(-1)),
        past: false,
        start: item.start,
        end: item.end,
        sequence: item.sequence,
        said: 'event',
        weak: false,
        by: false,
        before,
      };
    // "every Tuesday" is no one day.
    if (item.resolved.weekdayOnly && /\b(?:every|each)\s$/i.test(before))
      return {
        ...item.resolved,
        readings: [],
        vague: true,
        start: item.start,
        end: item.end,
        sequence: item.sequence,
        said: hit.cue,
        weak: false,
        by: false,
        before,
      };
    return {
      ...item.resolved,
      start: item.start,
      end: item.end,
      sequence: item.sequence,
      said: hit.cue,
      weak: hit.weak === true,
      by: BY.test(before),
      before,
    };
  });
}
