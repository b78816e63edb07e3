/**
 * The day of an hour that only points back to it: "rig check that evening from 8pm", "Tuesday evening is skippers' meeting, 19h, and there you have to be".
 */
import { CUE_REACH } from '../said/cues.ts';
import type { TimeMention } from '../times/find.ts';
import { builtAbroad } from './built-abroad.ts';
import type { DateMention, Where } from './scene.ts';

/** "You fly up on the 1st, rig check that evening from 8pm": the day that was named last. */
export function thatDay(text: string, before: string, time: TimeMention, dates: readonly DateMention[]): DateMention | undefined {
  if (
    !THAT_DAY.test(before) &&
    !/^,? (?:on )?that (?:same )?(?:evening|night|afternoon|day|morning)\b/i.test(text.slice(time.end, time.end + 24))
  )
    return undefined;
  const last = dates.findLast(
    ({ end, past, readings, said, weekdayOnly }) =>
      end <= time.start &&
      !past &&
      said !== 'past' &&
      !weekdayOnly &&
      readings.length === 1 &&
      !/[.!?\n]/.test(text.slice(end, time.start)),
  );
  return last && time.start - last.end <= CUE_REACH ? { ...last, said: undefined } : undefined;
}

/** "We'd fly you out Monday afternoon, 8am call at the venue on the day": behind an hour of the day itself, whatever stands before it. */
export const isOnTheDay = (behind: string): boolean => ON_THE_DAY.test(behind);
const ON_THE_DAY = /^[^.;!?\n\d]{0,32}\bon the day\b(?! (?:before|after|prior|of|that|we|you|you're)\b)/i;

const THAT_DAY = /\bthat (?:same )?(?:evening|night|afternoon)\b/i;

/** "Tuesday evening is skippers' meeting, 19h, and there you have to be": the weekday that opens the sentence of an hour to be there for. */
export function dayOfMeeting(
  text: string,
  time: TimeMention,
  dates: readonly DateMention[],
  previous: TimeMention | undefined,
  sentence: Where,
): DateMention | undefined {
  const last = dates.findLast(({ start, end }) => start >= sentence.start && end <= time.start);
  return last?.weekdayOnly &&
    !(previous && previous.start >= last.end) &&
    builtAbroad(text.slice(time.end, time.end + CUE_REACH)) === 'call'
    ? last
    : undefined;
}
