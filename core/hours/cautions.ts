/**
 * What long days ask for. Plain cautions, never a permission.
 */
import { lengthInWords } from '../words/amounts.ts';
import { dateInWords } from '../words/dates.ts';
import { finished, type WorkedHours } from './worked.ts';

const MINUTE = 60_000;
/** Common practice: over this, from call to wrap, nobody should be driving. */
const LONGEST_DAY = 14 * 60;

/** Every person's days over 14 h from call to wrap. @param nameOf the name of a hand, "" for me */
export function longDayCautions(worked: readonly WorkedHours[], nameOf: (handId: string | null) => string): string[] {
  return finished(worked).flatMap((day) => {
    const minutes = Math.round((day.wrapAt - day.callAt) / MINUTE);
    if (minutes <= LONGEST_DAY) return [];
    const name = nameOf(day.handId);
    return `${dateInWords(day.date)}${name === '' ? '' : `, ${name}`}: ${lengthInWords(minutes)} from call to wrap. Over 14 h, nobody should be driving; sleep first.`;
  });
}
