/**
 * Hours and days of a journey are none of the work: "Flights: Monday 19th 1640 out, Wednesday 1930 home", "Return the 2nd".
 */
import type { Where } from './scene.ts';

/** A heading of journeys and what follows it to the end of its sentence. */
const HEADED = /(?<!\p{L})(?:flights?|trains?|ferr(?:y|ies)|travel)(?: times| details| booked)?\s?:[^.?!\n]*$/iu;
const MOST_BEFORE = 120;

/** True for an hour in a sentence that is headed as a journey. */
export const ofJourney = (text: string, { start }: Where): boolean => HEADED.test(text.slice(Math.max(0, start - MOST_BEFORE), start));

/** "Travel: Tuesday 5 October", "Return the 7th", "home Thu 7 October": what begins a sentence, a line or its part with a journey. */
const JOURNEY =
  /(?:^|[.;!?\n:,(]\s?)[\s*-]*(?:(?:then|you)\s)?(?:travel(?:ling)?(?: (?:day|out|in|up|down|back|home))?|returns?|returning|return (?:trip|journey|travel|flight|train)|(?:fly|drive|train|flight|ferry|journey|way|trip)(?: back)?(?: home)|(?:fly|drive|flight|train) back|back home|homeward|(?<home>home)|heimreise|rückreise|rückfahrt|anreise|abreise|hinfahrt|retour|aller|départ|viaje|vuelta|regreso|ritorno|viaggio|heenreis|terugreis)(?: (?:is|are|will be))? ?[:,–-]? (?:on |am |le )?(?:the )?$/i;
/** "We sail on the 5th, and return on the 7th" is a run. */
export function dayOfJourney(text: string, { start, end }: Where): boolean {
  const found = JOURNEY.exec(text.slice(Math.max(0, start - LEAD), start));
  if (!found || WORKS_THEN.test(text.slice(end, end + LEAD))) return false;
  // "Home Saturday, away Saturday week" are matches.
  return found.groups?.['home'] === undefined || TRAVELS.test(text);
}
const TRAVELS = /\b(?:travel\p{L}*|fl(?:y|ies|ight|ights)|drive|train|ferry|journey)\b/iu;
const LEAD = 60;
const WORKS_THEN =
  /^[^.;!?\n]{0,50}\b(?:call|on site|film\p{L}*|shoot|rehears\w*|setup|set-up|load-in|rig|camera|for (?:the|our|a) (?:\p{L}+ )?(?:show|concert|gig|match|game|gala|final)|you'll be needed)\b/iu;
