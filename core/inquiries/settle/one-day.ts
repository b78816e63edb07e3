/**
 * Whether a job whose day is open is of one day all the same: nothing in the message speaks of more. An amount without a unit is then for the job.
 */
import { daysSaid } from './days.ts';
import type { EventDays, Scene } from './scene.ts';

/** Words of more days than one; "both" and "each" are said of other things too, and leave it open. */
const SEVERAL =
  /(?<![\p{L}\d])(?:days|nights|evenings|afternoons|mornings|dates|weekends?|weeks?(?= (?:of|long)\b)|sessions|shows|performances|matches|series|both|each|every|daily|weekly|nightly|(?:mon|tues|wednes|thurs|fri|satur|sun)days|tagen?|tagung|abende|nächte|wochenende|jours|soirs|soirées|días|noches|giorni|giornate|serate|dagen|avonden|nachten)(?!\p{L})/iu;
/** How much of a message is looked through. */
const LOOKED_THROUGH = 4000;

/**
 * True where one day is meant, whichever it is.
 * @param days how many days are stated
 */
export function isOneDay({ text, dates, amounts }: Scene, { doubt, choices }: EventDays, days: number | undefined): boolean {
  if ((days ?? 1) !== 1 || amounts.some(({ per }) => per !== undefined && per !== 'job')) return false;
  // Whichever of some days it will be, it is one.
  if (doubt !== 'several' && choices.length > 0) return choices.every((choice) => choice.length === 1);
  const long = dates.some(
    ({ past, said, vague, readings }) => !past && !vague && said !== 'reply' && readings.some(({ length }) => length > 1),
  );
  return !long && !SEVERAL.test(text.slice(0, LOOKED_THROUGH)) && daysSaid(text).every((said) => said.days === 1);
}
