/**
 * An occasion whose day is told by its number alone, beside another day of the month that is named: "we open on 1 November for the season, and the gala is on the
 * 13th". Which of the two days is meant, or both, is asked about.
 */
import { clauseBefore } from '../parts/sentences.ts';
import { OCCASION } from '../occasions.ts';
import { askedDays, inMonthOf, MOST_MENTIONS, OF_ELSE, settledDay } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

/** "and the gala is on the": the whole of a clause. */
const THE_OCCASION =
  /^\s*(?:and |but |with |while )*(?:the|our|my|his|her|their) (?:[\p{L}'’-]+ ){0,2}?([\p{L}'’-]{3,20})(?: itself)?(?: (?:is|follows|takes place|comes|happens|being|will be))?(?: then)? (?:on )?(?:the )?$/iu;
const REACH = 60;

/** The one day, or with that of the occasion as a question. */
export function heldAgainstOccasionByNumber({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  const day = settledDay(event);
  const [told] = event.where;
  if (day === undefined || !told) return event;
  for (const { start, explicit, past, by, said, sequence } of mentions.slice(0, MOST_MENTIONS)) {
    const number = sequence.items.length === 1 ? sequence.items[0]?.atom.day : undefined;
    if (number === undefined || explicit || past || by || OF_ELSE.has(said) || start < told.end) continue;
    const other: string | undefined = inMonthOf(day, number);
    if (other === undefined || other <= day) continue;
    const thing = THE_OCCASION.exec(clauseBefore(text, start, REACH))?.[1];
    if (thing !== undefined && OCCASION.test(thing)) return askedDays(event.where, [[other], [day], [day, other]], 'open');
  }
  return event;
}
