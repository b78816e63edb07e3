/**
 * A day on which rehearsals begin, alone in a message beside a weekday on which it is shown: "they rehearse all week from Mon 19 July and show it on the
 * Friday". Which of them is meant is asked about.
 */
import { clauseBefore } from '../parts/sentences.ts';
import { nextWeekday } from '../dates/from-today.ts';
import { askedDays, MOST_MENTIONS, OF_ELSE, settledDay } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const REHEARSE = /\b(?:rehears(?:e|es|ing|als?)|practi[sc](?:e|es|ing)|train(?:s|ing)?|prepar(?:e|es|ing)|workshops?)\b[^.;!?\n\d]{0,30}$/i;
const SHOWN = /\b(?:shows?|showing|shown|perform\w*|concert|show it|put it on|present\w*|premi[eè]re|final|display)\b/i;
const REACH = 110;

/** The day that was settled, or with the one of the show as a question. */
export function heldAgainstRehearsals({ text, dates }: Scene, event: EventDays): EventDays {
  const day = settledDay(event);
  const told = event.where[0];
  if (day === undefined || !told) return event;
  if (!REHEARSE.test(clauseBefore(text, told.start, REACH))) return event;
  const shown = dates
    .slice(0, MOST_MENTIONS)
    .find(
      ({ start, weekdayOnly, past, by, said }) =>
        weekdayOnly &&
        !past &&
        !by &&
        !OF_ELSE.has(said) &&
        start > told.end &&
        start - told.end <= REACH &&
        SHOWN.test(text.slice(told.end, start)),
    );
  const weekday = shown?.sequence.items[0]?.atom.weekday;
  if (weekday === undefined) return event;
  const other = nextWeekday(Temporal.PlainDate.from(day).add({ days: 1 }), weekday).toString();
  return askedDays(event.where, [[other], [day]], 'open');
}
