/**
 * "Between 10 and 20 February, two days", "a waiting period from 20 to 29 August": the dates are those among which the days of the work will lie,
 * which are not known yet.
 */
import { daysSaid } from './days.ts';
import { askedDays } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const BETWEEN = /\bbetween (?:the )?(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day,? (?:the )?)?$/i;
/** Whoever is between two days has not chosen. */
const UNDECIDED = /\b(?:hesitat\p{L}*|undecided|in two minds|(?:we|i|they)(?:'re| are|'m| am)(?: still)?)\b[^.;!?\n]{0,16}$/iu;
const WINDOW = /\b(?:window(?! (?:display|seat|shop|clean|dress)\p{L}*)|(?:waiting|holding) period)\b[^.;!?\n]{0,24}$/iu;
/** "Could you hold the window?", "we'll call two days of it" */
const HELD =
  /\bhold (?:the|that|this) (?:window|whole period)\b|\b(?:call|pick|choose|use) (?:only )?(?:one|two|three|one or two) (?:days? (?:of|in|within|from) (?:it|them|those|these)|of (?:the|those|these) days)\b/i;
const LEAD = 40;
/** Between two days that are further apart lies the day, or the days; nearer ones are its first and last. */
const LONGEST = 5;

/** The days that were settled, or as a question where fewer are counted than the window has. */
export function heldAgainstWindow({ text }: Scene, event: EventDays): EventDays {
  const [told] = event.where;
  if (!told || event.dates.length < 2) return event;
  const lead = text.slice(Math.max(0, told.start - LEAD), told.start);
  return isWindow(text, lead, event.dates.length) ? askedDays(event.where, [event.dates], 'open') : event;
}

function isWindow(text: string, lead: string, length: number): boolean {
  const counts = daysSaid(text).map(({ days }) => days);
  // "The window is 12 to 14 November, three days guaranteed."
  if (counts.includes(length)) return false;
  if (WINDOW.test(lead) || HELD.test(text)) return true;
  const between = BETWEEN.exec(lead);
  return between !== null && (length > LONGEST || counts.some((days) => days < length) || UNDECIDED.test(lead.slice(0, between.index)));
}
