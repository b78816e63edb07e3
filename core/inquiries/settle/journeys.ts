/**
 * Hours of a journey are no hours of the work: "Flights: Monday 19th 1640 out, Wednesday 1930 home".
 */
import type { Where } from './scene.ts';

/** A heading of journeys and what follows it to the end of its sentence. */
const HEADED = /(?<!\p{L})(?:flights?|trains?|ferr(?:y|ies)|travel)(?: times| details| booked)?\s?:[^.?!\n]*$/iu;
const MOST_BEFORE = 120;

/** True for an hour in a sentence that is headed as a journey. */
export const ofJourney = (text: string, { start }: Where): boolean => HEADED.test(text.slice(Math.max(0, start - MOST_BEFORE), start));
