/**
 * The two ends of a job over days: "Friday 24 Sept 14:00 to Saturday 25 Sept 14:00".
 */
import type { TimeMention } from '../times/find.ts';
import type { DateMention } from './scene.ts';

export const LONGEST_ACROSS = 44;
/** Words that a date is written with, and the small ones beside it. */
const DATE_WORDS =
  /(?<!\p{L})(?:\p{L}*day|mon|tues?|wed|thu|thurs?|fri|sat|sun|jan|feb|mar|apr|may|june?|july?|aug|sept?|oct|nov|dec|\p{L}*(?:uary|tember|ober|ember)|march|april|august|st|nd|rd|th|the|on|at|of|same|next)(?!\p{L})\.?/giu;

const NTH_WORDS = /(?<!\p{L})(?:first|second|third|last|final|opening|closing|and)(?!\p{L})/giu;
const DAY_NAMED =
  /(?<!\p{L})(?:(?:first|opening) day|(?:mon|tues|wednes|thurs|fri|satur|sun)day|mon|tue|wed|thu|fri|sat|sun|lundi|mardi|mercredi|jeudi|vendredi|samedi|dimanche|\p{Lu}\p{Ll}+(?:tag|woch))(?!\p{L})/iu;
const FROM = /\bfrom $/i;
const BE_THERE_TO =
  /^\s?\((?:then )?(?:please )?(?:you )?(?:be|come|arrive|we need you|you are|you're)\b[^()\d\n]{0,24}\) (?:to|until|till|til)(?: (?:about|approximately|around|roughly))?\s$/i;
const [LAST_MORNING, FIRST_EVENING] = [13 * 60, 15 * 60];

/** "Friday 24 Sept 14:00 to Saturday 25 Sept 14:00", "9am Sat to 5pm Sun": one time is the call, the other the wrap. */
export function timesAcross(text: string, times: readonly TimeMention[], dates: readonly DateMention[]): Map<TimeMention, 'call' | 'wrap'> {
  const ends = new Map<TimeMention, 'call' | 'wrap'>();
  for (const [index, time] of times.entries()) {
    const next = times[index + 1];
    if (!next || time.to || next.to || next.start - time.end > LONGEST_ACROSS) continue;
    const between = text.slice(time.end, next.start);
    const dated = dates.some((date) => date.start < next.start && date.end > time.end);
    const days = DAY_NAMED.test(between);
    const words = between
      .replace(DATE_WORDS, '')
      .replace(NTH_WORDS, '')
      .replace(/[\d\s,()@-]+/g, ' ')
      .trim();
    // "coverage from the fitting (10am) through to the first dance (8.30pm)"
    const bracketed =
      /\bfrom\b[^.;\n]{1,40}\($/i.test(text.slice(Math.max(0, time.start - 50), time.start)) &&
      /^\)[^.;\d\n]{0,12}\b(?:to|until|through|till)\b[^.;\d\n]{0,40}\($/i.test(between);
    // "from 19:00 (then please be there) to approximately 23:30"
    const beThere = FROM.test(text.slice(Math.max(0, time.start - 12), time.start)) && BE_THERE_TO.test(between);
    if (
      bracketed ||
      beThere ||
      ((dated || days) &&
        (/^(?:(?:right |all the way )?(?:through |thru )?(?:to|until|till|til|through|thru)|bis|au|al)$/i.test(words) ||
          (words === '' && dated && /\s-\s|->/.test(between)) ||
          // "8 AM first day, 5:30 PM last day", "Saturday 8:30, Sunday 18:00"
          (words === '' && days && !time.bare && !next.bare && time.from.minutes < LAST_MORNING && next.from.minutes >= FIRST_EVENING)))
    ) {
      ends.set(time, 'call');
      ends.set(next, 'wrap');
    }
  }
  return ends;
}
