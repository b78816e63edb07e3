/**
 * A first day of which nobody knows yet how many follow: "how many days we don't know", "the number of days depends on the cedar", "could be three, could be six".
 * Then only the first day is told.
 */
import { anyOf } from '../phrases.ts';

const UNKNOWN = anyOf(
  `
  how_many/how_much {days} {be}? not known/clear/fixed/decided/settled/sure/certain/unknown/open | how_many {days} depends/depend/remains/will_depend | how_many {days} we/i/they/nobody can't/cannot/can/don't/do_not/does_not/doesn't know*/say/tell/yet
  not sure/certain/clear/decided/known ... how_many {days} | don't/do_not/can't/cannot/doesn't yet? know/say/tell how_many {days}
  number of {days} depends/depend/is_open/is_still/is_not/isn't/to_be/tbc/tbd/will_depend/unknown/varies | {days} open-ended | open-ended | for as_many {days} as it/we/you
`,
  {
    days: `days | nights | evenings | shoot days | filming days | of these days`,
    be: `is | are | it is | it'll be | it will be | that is`,
  },
);
/** An edit and an answer take as long as they take. */
const OF_AN_EDIT = /\b(?:edit\w*|deliver\w*|turn ?around|cut|post|reply|answer|notice|payment|refund|retention)\b/i;
const LOOKED_THROUGH = 6000;
const LEAD = 50;

/** True where how many days it takes is told to be open. */
export function lengthIsOpen(text: string): boolean {
  const front = text.slice(0, LOOKED_THROUGH);
  const found = UNKNOWN.exec(front);
  return found !== null && !OF_AN_EDIT.test(front.slice(Math.max(0, found.index - LEAD), found.index + found[0].length + LEAD));
}
