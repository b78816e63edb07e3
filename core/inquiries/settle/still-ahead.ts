/**
 * A date to come beside words of what was: "we had in mind Thursday the 8th of June", "everything else as I said: Saturday 12 June", "what we said so I don't forget: Saturday July 24".
 * What was said, thought or put down is the plan, and where no other date is told it is the day.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { MOST_MENTIONS } from './days-among.ts';
import { isEvent } from './pointed.ts';
import type { DateMention, Scene } from './scene.ts';

/** The plan holds no more. */
const GONE =
  /\b(?:mov(?:e|ed|ing)|cancel\p{L}*|postpon\p{L}*|reschedul\p{L}*|instead|rather than|original\p{L}*|previous\p{L}*|former\p{L}*|earlier|first|old|was|were|been|used to|changed|no longer|any ?more|not|isn't|off|last|filmed|shot|recorded|held|met|spoke|did|saw|made|ran|on hold|had you)\b|n't\b/iu;
/** "so I don't forget" */
const FORGET = /\b(?:don't|do not|won't|can't|not) forget\b/gi;
const BEHIND = 40;
const FARTHEST = 270;

/** The only date with day and month that is ahead, where words of the past alone keep it from being the day; nothing where another is told. */
export function stillAhead({ text, dates, received }: Scene): DateMention | undefined {
  const today = received.toPlainDate().toString();
  const ahead = dates
    .slice(0, MOST_MENTIONS)
    .filter(
      ({ explicit, by, said, vague, readings }) =>
        explicit && !vague && !by && said !== 'reply' && readings.some(([day = '']) => day >= today),
    );
  const [only, ...more] = ahead;
  if (!only || more.some(({ readings }) => readings.join() !== only.readings.join()) || ahead.some((one) => isEvent(one))) return undefined;
  if (only.said !== 'past' || only.past || only.readings.length !== 1 || only.doubt !== undefined) return undefined;
  const [day, ...run] = only.readings[0] ?? [];
  // A date of last winter without its year reads as one of the next.
  if (day === undefined || run.length > 0 || received.toPlainDate().until(Temporal.PlainDate.from(day)).days > FARTHEST) return undefined;
  const at = dates.indexOf(only);
  const sentence = sentenceAround(text, only.start, only.end);
  const lead = text.slice(Math.max(sentence.start, dates[at - 1]?.end ?? 0), only.start);
  const tail = text.slice(only.end, Math.min(sentence.end, only.end + BEHIND));
  return GONE.test(lead.replace(FORGET, '')) || GONE.test(tail.split(/[,(]/)[0] ?? '') ? undefined : only;
}
