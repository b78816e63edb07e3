/**
 * A day of which its own sentence says that nothing is filmed, with the occasion told for the day beside it: "The service is on 30 January and obviously isn't
 * filmed. The party's the next day". Which of them is meant is asked about.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays, settledDay } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const NOT_FILMED =
  /\b(?:isn't|is not|aren't|are not|won't be|will not be|can't be|cannot be|not to be) (?:being |to be )?(?:filmed|recorded|videoed|covered)\b|\b(?:no|without) (?:filming|video|cameras?|recording)\b|\bnot for (?:filming|the camera|video)\b/i;
const BESIDE =
  /\b(?:party|reception|celebrations?|do|dinner|supper|lunch|concert|show|event|ball|disco|feast|bash)(?:'s| is| will be|'ll be| takes place| follows) (?:on )?(?:the )?(?:(?:next|following) (?:day|evening|night|morning|afternoon)|(?:day|evening|night|morning) after)\b/i;
const REACH = 160;

/** The day that was settled, or with the next one as a question. */
export function heldAgainstNotFilmed({ text }: Scene, event: EventDays): EventDays {
  const day = settledDay(event);
  const told = event.where[0];
  if (day === undefined || !told) return event;
  const sentence = sentenceAround(text, told.start, told.end);
  if (!NOT_FILMED.test(text.slice(sentence.start, sentence.end)) || !BESIDE.test(text.slice(told.end, told.end + REACH))) return event;
  return askedDays(event.where, [[Temporal.PlainDate.from(day).add({ days: 1 }).toString()], [day]], 'open');
}
