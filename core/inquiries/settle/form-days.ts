/**
 * The lines of a form that ask for the first and the last day: "From: 2027-11-08" and on the next line "To: 2027-11-09", "Start date:" and "End date:",
 * "Von:" and "Bis:". Each function takes what stands before a date in its line.
 */

const LINE = String.raw`^[\s*•-]*(?:(?:event|job|shoot|booking|dates?) )?`;
const OF_DAY = String.raw`(?: (?:of (?:the )?)?(?:event|job|shoot|booking|hire))?(?: dates?| days?)?(?: \([^()\n]{1,20}\))?\s?[:=]\s*$`;
const FIRST = new RegExp(
  String.raw`${LINE}(?:from|starts?|starting|begins?|beginning|first day|von|ab|beginn|du|début|van|begin|desde|inicio)${OF_DAY}`,
  'iu',
);
const LAST = new RegExp(
  String.raw`${LINE}(?:to|until|till|through|ends?|ending|finish(?:es)?|last day|bis|ende|au|fin|tot|einde|hasta)${OF_DAY}`,
  'iu',
);
/** What is elsewhere a word for a call or a wrap. */
const STARTS_OR_ENDS = /^[\s*•-]*(?:(?:event|job|shoot|booking) )?(?:starts?|ends?|begins?|finish(?:es)?)(?: date| day)?\s?[:=]\s*$/iu;

/** "every Tuesday", "any day in the window", "days needed: 1", "only those two days": not all that is between the two lines. */
const NOT_ALL =
  /(?<!\p{L})(?:every (?:mon|tue|wed|thu|fri|sat|sun|week)|weekly|each week|(?:one|1|any|single) days?(?!\p{L})|days? (?:needed|required|wanted)\s?:|only (?:those|these|the) (?:two|2) days|(?:nothing|not|none) (?:in )?between|window|(?:mon|tues|wednes|thurs|fri|satur|sun|week)days? only|weekends? only|(?:one|two|three|four|[1-4]) days? (?:in|of|within) (?:that|the|this) (?:week|time|period))/iu;

export const firstOfForm = (lead: string): boolean => FIRST.test(lead);
export const lastOfForm = (lead: string): boolean => LAST.test(lead);
/** "Event start: 8 Nov 2027", "End: 12 Nov": a whole day there is no call and no wrap. */
export const startsOrEnds = (lead: string): boolean => STARTS_OR_ENDS.test(lead);
/** Whether a text says of the days between the two that not all of them are meant. */
export const onlySome = (text: string): boolean => NOT_ALL.test(text);
