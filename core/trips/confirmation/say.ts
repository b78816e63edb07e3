/**
 * What was read from a confirmation, in a sentence.
 */
import type { ReadLeg } from '../../contract/trips.ts';

/** "2 legs were read. One asks something." */
export function readInWords(legs: readonly ReadLeg[], cut: boolean): string {
  const asking = legs.filter(({ asks }) => asks.length > 0).length;
  const whole = legs.length - asking;
  const found =
    legs.length === 0
      ? 'No leg was found in these words. Paste the part with places, dates and times, or type the leg.'
      : `${legs.length === 1 ? 'One leg was' : `${legs.length} legs were`} read.${asking === 0 ? '' : whole === 0 ? ' Something is not clear and is asked.' : ` ${asking} of them ${asking === 1 ? 'asks' : 'ask'} something.`}`;
  return cut ? `${found} Only the beginning of the text was read.` : found;
}
