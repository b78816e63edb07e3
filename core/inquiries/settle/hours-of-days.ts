/**
 * Hours from and to in a row of days that each have theirs: "Fri 3p-10p, Sat 8a-4p", "6/14 Mon 8a-8p" over "6/15 Tue 7a-7p". Who writes down the
 * hours of every day writes down mine.
 */
import type { Where } from './scene.ts';

const WEEKDAY = String.raw`(?:mon|tue(?:s)?|wed(?:nes)?|thu(?:r|rs)?|fri|sat(?:ur)?|sun)(?:day)?|lundi|mardi|mercredi|jeudi|vendredi|samedi|dimanche|montag|dienstag|mittwoch|donnerstag|freitag|samstag|sonntag`;
const MONTH = String.raw`(?:jan|feb|mar|apr|may|june?|july?|aug|sept?|oct|nov|dec)[a-z]*`;
const DATE = String.raw`(?:(?:the )?\d{1,2}(?:st|nd|rd|th)?(?:[./]\d{1,2}(?:[./](?:20)?\d\d)?)?\.?|(?:\d{1,2}(?:st|nd|rd|th)? )?${MONTH}\.?(?: \d{1,2}(?:st|nd|rd|th)?)?)`;
const DAY = String.raw`(?:(?:${WEEKDAY})\.?(?:,? (?:the )?${DATE})?|${DATE}(?:,? (?:${WEEKDAY})\.?)?)`;
const HOUR = String.raw`(?:\d{1,2}(?:[:.h]\d\d)?\s?(?:[ap]\.?m?\.?)?|noon|midnight|midday)`;
const RANGE = String.raw`(?:from )?${HOUR}\s?(?:-|–|to|till?|until|bis|à)\s?${HOUR}`;
const BETWEEN = String.raw`(?:\s?[-–:,(]\s?|\s)`;
const BEFORE = new RegExp(String.raw`(?:^|[\n,;:.?!]\s?|\band |[-*•·] |\s)${DAY}${BETWEEN}{1,2}(?:from )?$`, 'i');
const NEXT = new RegExp(String.raw`^(?:[,;.]|\)|\n|\s| and){1,3}[-*•·]?\s?${DAY}${BETWEEN}{1,2}${RANGE}`, 'i');
const LAST = new RegExp(
  String.raw`${DAY}${BETWEEN}{1,2}${RANGE}(?:[,;.]|\)|\n|\s| and){1,3}[-*•·]?\s?${DAY}${BETWEEN}{1,2}(?:from )?$`,
  'i',
);
const IS_RANGE = new RegExp(`^${RANGE}`, 'i');
/** "Shows: Thursday 7.30 to 9.45pm; Sunday 7 to 9.30pm" */
const OF_OCCASION =
  /\b(?:shows?|performances?|concerts?|doors|open|opening|sessions?|talks|matches|games|programme|services|screenings?|exhibition|expo|festival|fair|market|visitors?|guests?)(?: times| hours)?(?: (?:is|are)(?: open)?)?\s?[:–-]\s[^:]*$/i;
const REACH = 70;

/** True for the hours of one day in a row of such days. */
export function inRowOfDays(text: string, { start, end }: Where): boolean {
  if (!IS_RANGE.test(text.slice(start, end))) return false;
  const before = text.slice(Math.max(0, start - REACH), start);
  if (OF_OCCASION.test(before)) return false;
  return (BEFORE.test(before) && NEXT.test(text.slice(end, end + REACH))) || LAST.test(before);
}
