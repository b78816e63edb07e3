/**
 * The hour of an answer that is told loosely behind its day: "Friday arvo, 3ish at the latest", "Weds teatime (5ish)", "tomorrow teatime... 5 o'clock say", "Friday lunchtime, like by twelve".
 */
import { numberWord } from '../words.ts';

const PART = String.raw`(?:(?:in the )?(?<part>morning|afternoon|arvo|evening|night|lunch(?:time)?|tea(?:time)?|dinner(?:[- ]?time)?|midday|abend|nachmittag|avond|middag)\b)`;
const SMALL = String.raw`(?:(?:like|say|so|around|about|by|at|that's|thats|that is|which is|i\.e\.|ie|hours?|before|um|kl\.?|alle|ore|à|a las)[\s,]{1,2}){0,3}`;
const HOUR = String.raw`(?<hour>noon|midday|twelve|\d{1,2}(?:[:.]\d{2})?|one|two|three|four|five|six|seven|eight|nine|ten|eleven)`;
const LOOSE = new RegExp(
  String.raw`^[\s,]{0,2}(?:this week|next week)?[\s,]{0,2}${PART}?(?:\s?\.{2,3}|\s?…|\s?[,(–-]{1,2})?\s?${SMALL}${HOUR}(?<ish>\s?-?ish)?(?: ?o'?clock)?(?=\s?(?:[).,;:!?\n]|$|say\b|at (?:the )?latest|latest|please|pls|thanks|if\b|or\b|e\b|et\b|y\b|und\b|en\b|and\b|to you\b))`,
  'iu',
);
const AFTERNOON = /^(?:afternoon|arvo|evening|night|tea|dinner|abend|nachmittag|avond|middag)/i;
const REACH = 60;

/**
 * Minutes of the day of the hour that stands behind a day; `undefined` where none does, or where it may be in either half of the day.
 * @param end where the day ends in the text
 */
export function softHour(text: string, end: number): number | undefined {
  const { part, hour = '', ish } = LOOSE.exec(text.slice(end, end + REACH))?.groups ?? {};
  if (hour === '') return undefined;
  const tail = text.slice(end, end + REACH);
  // "Friday, 14 or 15": what stands alone behind a comma is a day as well as an hour.
  const told =
    part !== undefined ||
    ish !== undefined ||
    /o'?clock|\bsay\b|\bhours?\b|\b(?:like|by|at|ore|alle|um|uur|kl\.?|à|a las)\s/i.test(
      tail.slice(0, tail.indexOf(hour) + hour.length + 10),
    );
  if (!told) return undefined;
  if (/^(?:noon|midday|twelve|12)$/i.test(hour)) return 12 * 60;
  const [whole = '', rest = '0'] = hour.split(/[:.]/);
  const hours = numberWord(whole.toLowerCase()) ?? Number(whole);
  const minutes = Number(rest);
  if (!Number.isFinite(hours) || hours > 23 || minutes > 59) return undefined;
  if (hours >= 12) return hours * 60 + minutes;
  if (part !== undefined && AFTERNOON.test(part)) return (hours + 12) * 60 + minutes;
  // Nobody wants an answer before seven in the morning.
  if (hours < EARLIEST) return (hours + 12) * 60 + minutes;
  return /^morning$/i.test(part ?? '') ? hours * 60 + minutes : undefined;
}
const EARLIEST = 7;
