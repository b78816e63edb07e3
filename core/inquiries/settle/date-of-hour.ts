/**
 * Which date of a message an hour is of, by where both stand: the nearest in its sentence, the one with which its line begins, the one between the words
 * for a call and its hour.
 */
import { cuesIn } from '../said/cues.ts';
import type { TimeMention } from '../times/find.ts';
import { LONGEST_ACROSS } from './across.ts';
import { UNTIL } from './bare-times.ts';
import type { DateMention, Where } from './scene.ts';

/** A date between the words for a call and its hour belongs to them, whatever else stands there. */
export function dateBetween(from: number, time: TimeMention, dates: readonly DateMention[], after: boolean): DateMention | undefined {
  return after ? undefined : lastOf(dates.filter((date) => date.start >= from && date.end <= time.start));
}

/** Only the date that stands nearest counts. */
const lastOf = (dates: readonly DateMention[]): DateMention | undefined => {
  const last = dates.at(-1);
  return last && (last.said === 'call' || last.said === 'wrap' || last.weekdayOnly) ? last : undefined;
};

/** What may stand before the date of a row: "DAY 1 | ", "2. " */
const ROW_HEAD =
  /^[\s|:.#()-]*(?:(?:[\p{L}-]{3,14} )?(?:day|tag|jour|día|giorno|dag)\s?(?:\d|one|two|three|four|five)?|\d[.)])?[\s|:.()-]*$/iu;

/** A longer line is prose. */
const LONGEST_ROW = 400;

/** "Friday 22 Oct - shoot, 7am-7pm": a line that begins with its one date. */
export function dateOfLine(text: string, time: TimeMention, dates: readonly DateMention[], inTable = false): DateMention | undefined {
  const seen = Math.max(0, time.start - LONGEST_ROW);
  const from = text.slice(seen, time.start).lastIndexOf('\n') + seen + 1;
  if (from === seen) return undefined;
  const end = text.indexOf('\n', time.end);
  const inLine = dates.filter((date) => date.start >= from && date.end <= (end < 0 ? text.length : end));
  const only = inLine.length === 1 ? inLine[0] : undefined;
  return only &&
    only.explicit &&
    only.end <= time.start &&
    (inTable || time.start - only.end <= LONGEST_ACROSS || /[|\t]/.test(text.slice(only.end, time.start))) &&
    (inTable || ROW_HEAD.test(text.slice(from, only.start)))
    ? only
    : undefined;
}

const IN_BRACKET = /^ \([^()\d\n]+$/;

const BEGINS =
  /^\s(?!(?:morning|evening|afternoon|night)\b)\p{L}+(?: \p{L}+)? (?:is|are|ends?|closes?|finish\p{L}*|starts?|runs?|till|until)\b|^(?:'s)?\s(?:we|you|u|i|it|they|the|is|ends?|wraps?|finish\w*|starts?|runs?|call|until|till|from|by|at|morning's|night's|there's|pack\p{L}*|load|strike|de-?rig|get|bump|out|off|done|free|last|final|closing)\b|^'s\s/iu;

/** The date that stands next to a time, with only small words between them. */
export function dateBeside(text: string, time: TimeMention, dates: readonly DateMention[], sentence: Where): DateMention | undefined {
  let best: { date: DateMention; gap: number } | undefined;
  for (const date of dates) {
    if (date.end < sentence.start || date.start > sentence.end) continue;
    const between =
      date.end <= time.start ? text.slice(date.end, time.start) : date.start >= time.end ? text.slice(time.end, date.start) : '';
    if (between.length > 40) continue;
    const beforeIt = date.end <= time.start;
    const small = beforeIt
      ? /^[\s,:()@-]*(?:(?:at|from|by|around|about|the|in|starting|no later than|ab|um|gegen|à|a las|vers|dès|alle|om|kl|tot|bis|until|till|til|morning|afternoon|evening|arvo|night|before|call|load-in|call time|time|is|set-up|setup|arrive|wrap|actually|please|ideally|preferably|already|,|:|-)[\s,:]*){0,4}$/i.test(
          between,
        )
      : /^[\s,(-]*(?:(?:on|the|el|le|il|am|op|de|den|del|in|morning|evening|of|local|this|next|time|call|load-in|sharp|prompt|start|finish|end|wrap|release|out|done|,)[\s,]*){0,3}$/i.test(
          between,
        );
    // "Freitag Aufbau 14 Uhr, Samstag": the word for a call between them joins them.
    const joined =
      beforeIt &&
      between.length <= 30 &&
      !/[,.;\n]|(?<!\p{L})(?:and|y|et|und|e|en|then)(?!\p{L})/iu.test(between) &&
      cuesIn(between, 0, between.length, true).some(({ cue }) => cue === 'call' || cue === 'wrap');
    // "Wed 21 (talks day, 09:00 call)": what stands in the bracket right after a day is of that day.
    const bracketed = beforeIt && IN_BRACKET.test(between);
    if (!small && !joined && !bracketed) continue;
    // "Call 5:30, Friday we wrap by 7", "finished at 6\nSunday: rain date": a day that begins what follows.
    if (!beforeIt && (between.includes('\n') || (between.includes(',') && BEGINS.test(text.slice(date.end, date.end + 24))))) continue;
    // A comma parts more than a few words do: "Friday, noon call Saturday".
    const gap = between.length + (between.includes(',') ? 16 : 0) + (UNTIL.test(between) ? 6 : 0);
    if (!best || gap < best.gap) best = { date, gap };
  }
  return best?.date;
}
