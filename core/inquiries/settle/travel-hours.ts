/**
 * Hours at which a train or a flight goes: nobody's call, and no end but where I may go then.
 */
import type { TimeMention } from '../times/find.ts';

/** Hours of trains and flights are nobody's call. */
const TRAVELS =
  /(?<!\b(?:meet|board|catch|join) (?:the |our )?)\b(?:train|flight|plane|bus|coach|ferry)\b(?! (?:terminal|station|stop|port|dock|pier|landing|park|depot|crew|company|quay|slip|museum|hall|shed|yard)\b)(?: \w+){1,3}\s$/i;
/** "the last train goes at 22.47, so everybody is out at 22.15": another hour is said of what follows. */
const HOUR_AHEAD = /^[^.!?\n]*\d/;
const REACH_AHEAD = 90;
const AND_DONE = /^,? and (?:then )?(?:finished|done|free|home)\b/i;
const REACH = 20;
const HALF_HOUR = 30;

/** True where an hour is only that of a train or a flight; `ends` where what is said behind it lets me go then. */
export function hourOfTravel(text: string, time: TimeMention, before: string, ends: boolean): boolean {
  // "the 6:05 from YVR" is a train or a flight.
  const named = /\bthe\s$/i.test(before) && !time.to;
  if (named && (time.from.minutes % HALF_HOUR !== 0 || /o ?'?clock$/i.test(text.slice(time.start, time.end)))) return true;
  if (!TRAVELS.test(before) || AND_DONE.test(text.slice(time.end, time.end + REACH))) return false;
  return !ends || HOUR_AHEAD.test(text.slice(time.end, time.end + REACH_AHEAD));
}
