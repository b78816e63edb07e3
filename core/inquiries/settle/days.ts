/**
 * How many event days: counted from the dates, or as said. Two that differ are a question.
 */
import { numberWord } from '../words.ts';
import type { EventDays, Where } from './scene.ts';

export type DaysSaid = { days: number; start: number; end: number };

const SAID =
  /(?<![\p{L}\p{N}/.,:-])(?:(?:a|the|all|over|for|full)\s)?(\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|twelve|fourteen)(?:[\s-](?:full|whole|shoot|shooting|event|interview|training|consecutive|filming|camera|working|straight))?[\s-]days?\b(?:[\s-](?:long\s)?(?:event|conference|shoot|festival|summit|workshop|congress|tournament|meeting|gig|job|show|expo|fair|training|retreat))?/giu;
const SINGLE =
  /\b(?:one|single|1)[- ]day (?:event|conference|shoot|job|gig|workshop|meeting|summit|seminar)\b|\bjust the one day\b|\bone full day\b|\bfor (?:one|a) day\b|\ba (?:one-day|single day)\b/giu;
const PART_OF = /\b(two|three|four|five|six|\d) (?:out )?of (?:the|those|these|our|my) $/i;
/** Counts of days that are about something else. */
const NOT_THE_SHOOT =
  /\b(?:(?:within|net|terms?|payment|notice|turn ?around|deliver\w*|edit(?:ed|ing)?|valid|pay|paid|ready|reply|respond|hours? (?:a|per)|prep|travel|setup|set-up|rest|off)\s(?:\w+\s)?|(?:in|after|through|later|ago|next|last|other|every|per|of|past|business|working|another|plus|total of|(?:could|may|might)(?: well)? (?:take|last|need|be|run (?:to|for|over)))\s|(?:terms?|payment|net|notice|turn ?around):\s?)$/i;
const AFTER =
  /^\s?(?:'|later|after|before|ago|notice|turn ?around|from (?:now|today|receipt|(?:the )?(?:date|invoice|delivery|end))|to (?:edit|deliver|respond|reply|pay)|of (?:it|them|footage|rushes|tapes?|material|video|recordings?|editing|travel|prep|post|edit|rest|notice|setup|set-up|grading)|edit|off|prep|travel|net|old|prior|in advance|following|pass|for (?:editing|the edit|post))/i;

/** "two or", "one, maybe", "3-": a number beside another, of which nobody knows yet which it is. */
export const EITHER_COUNT = String.raw`(?:one|two|three|four|five|six|seven|a day|[1-9])(?:,? (?:or|to|maybe|perhaps|possibly|even)(?: maybe| perhaps| even)? |\s?[-–/]\s?)`;
const ONE_OF_TWO = new RegExp(String.raw`\b${EITHER_COUNT}$`, 'i');

/** "last year (March 2025, three days": how long it was then. */
const LAST_TIME =
  /\b(?:last|previous) (?:year|time|spring|summer|autumn|fall|winter|edition|one)(?:'s)?\b(?![^.;!?\n]*\b(?:this|now|we(?:'d| would| need| want))\b)[^.;!?\n]{0,60}$/i;
const LONGEST_LEAD = 90;

/** True for what is told of an earlier time: "last year you only did the Saturday". */
export const ofLastTime = (text: string, start: number): boolean => LAST_TIME.test(text.slice(Math.max(0, start - LONGEST_LEAD), start));

/** "from 5 May for four nights": as many days, right behind their first. */
const NIGHTS =
  /(?<=(?:\d(?:st|nd|rd|th)?|\b(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\p{L}{0,6}|day),?\s)(?:for|over) (two|three|four|five|six|[2-6]) (?:nights|evenings|mornings|afternoons)(?!\p{L})(?! (?:of )?(?:hotel|accommodation|lodging|b&b))/giu;

/** "a run of three nights starting", "three nights in a row" */
const NIGHTS_RUN =
  /(?:\b(?:run|series|stretch|string) of (two|three|four|five|six|[2-6]) (?:consecutive |successive )?(?:nights|evenings|mornings|afternoons))(?!\p{L})|\b(two|three|four|five|six|[2-6]) (?:(?:consecutive|successive) (?:nights|evenings|mornings|afternoons)|(?:nights|evenings|mornings|afternoons) (?:running|in a row|in succession))(?!\p{L})/giu;
/** More days than these are those of a bill or of an answer. */
const LONGEST = 14;

/** Every count of event days that is said. */
export function daysSaid(text: string): DaysSaid[] {
  const found: DaysSaid[] = [];
  for (const match of text.matchAll(SAID)) {
    // "three of those five days"
    const word = PART_OF.exec(text.slice(Math.max(0, match.index - 24), match.index))?.[1] ?? match[1] ?? '';
    const days = numberWord(word.toLowerCase()) ?? Number(word);
    const lead = text.slice(Math.max(0, match.index - 30), match.index);
    if (
      !days ||
      days > LONGEST ||
      // "coverage of all three days"
      (NOT_THE_SHOOT.test(`${lead.split(/[.;!?\n]/).at(-1)}`) && !(/^all\b/i.test(match[0]) && /\bof\s$/i.test(lead))) ||
      ofLastTime(text, match.index) ||
      ONE_OF_TWO.test(lead) ||
      AFTER.test(text.slice(match.index + match[0].length, match.index + match[0].length + 30))
    )
      continue;
    if (days === 1 && !new RegExp(SINGLE.source, 'iu').test(text.slice(Math.max(0, match.index - 6), match.index + match[0].length + 12)))
      continue;
    found.push({ days, start: match.index, end: match.index + match[0].length });
  }
  for (const { index, 0: words, 1: word = '' } of text.matchAll(NIGHTS))
    found.push({ days: numberWord(word.toLowerCase()) ?? Number(word), start: index, end: index + words.length });
  for (const { index, 0: words, 1: run = '', 2: row = '' } of text.matchAll(NIGHTS_RUN))
    if (!ofLastTime(text, index))
      found.push({ days: numberWord((run || row).toLowerCase()) ?? Number(run || row), start: index, end: index + words.length });
  return found;
}

/** Why days are open of which one is as long as the other. */
const ONE_OF_THEM: ReadonlySet<NonNullable<EventDays['doubt']>> = new Set(['choice', 'weekday', 'order', 'open']);

export type DaysRead = { days?: number; where: Where[]; choices: number[] };

/** Decide on the count; a length said without dates stands by itself. */
export function daysOf(text: string, { dates, where: dateWhere, dropped, count, choices: sets, doubt }: EventDays): DaysRead {
  // "A three day retreat, we want you on the last": the count is the occasion's.
  if (dropped) return dates.length > 0 ? { days: dates.length, where: [...dateWhere], choices: [] } : { where: [], choices: [] };
  if (dates.length === 0 && count !== undefined) return { days: count, where: [...dateWhere], choices: [] };
  // "12 or 19 November", "Friday, October 9" that is a Saturday, "06/05": whichever it is, it is one day.
  const lengths = new Set(sets.map((set) => set.length));
  const said = daysSaid(text);
  if (
    doubt !== undefined &&
    ONE_OF_THEM.has(doubt) &&
    sets.length > 1 &&
    lengths.size === 1 &&
    said.length === 0 &&
    (sets[0] ?? []).length > 0
  )
    return { days: (sets[0] ?? []).length, where: [...dateWhere], choices: [] };
  const numbers = [...new Set(said.map(({ days }) => days))];
  const first = said[0];
  if (dates.length === 0)
    return numbers.length === 1 && first && !(ofOccasion(text, first) && sets.some(({ length }) => length !== first.days))
      ? { days: first.days, where: [first], choices: [] }
      : { where: [], choices: [] };
  if (first === undefined || numbers.includes(dates.length))
    return {
      days: dates.length,
      where: first ? said.filter(({ days }) => days === dates.length).slice(0, 1) : [...dateWhere],
      choices: [],
    };
  return { where: [first], choices: [dates.length, ...numbers] };
}

/** "a three-day conference": of which only some may be mine; a three-day job is all mine. */
export const ofOccasion = (text: string, { start, end }: Where): boolean =>
  /^(?:the |an? |full )?[\p{L}\d]+[\s-]day\s(?!job|shoot|gig|booking|hire|edit|rate|week)\p{L}/iu.test(text.slice(start, end + 16));

/** True where so many days, and no other number of them, are said to be those of the work. */
export function countedSo(text: string, days: number): boolean {
  // "350 for one day" is what is paid.
  const said = daysSaid(text).filter((one) => one.days > 1 || days === 1);
  return said.length > 0 && said.every((one) => one.days === days && !ofOccasion(text, one));
}
