/**
 * Whether a first call that was settled is to be asked about after all: weights and network together read the words around every hour, and where
 * they take another for the call as well, it is not stated; nor is an hour at which by the rules the show begins, however sure they are: one in twelve
 * of those was none; nor one that they take for something else, where no rule calls it mine: one in five of those was none.
 */
import { timeChances } from './context/chances.ts';
import { isBrief, type Page } from './learned/features.ts';
import type { Learned } from './learned/models.ts';
import { MOST_MENTIONS, OF_ELSE } from './settle/days-among.ts';
import { ownerOf } from './settle/owner.ts';
import type { Calls } from './settle/points.ts';
import type { SaidTime } from './settle/scene.ts';
import { wallOf } from './settle/walls.ts';

/**
 * From which chance on another hour of a job of one day is a rival, and from which on one that is likelier: in the sets that taught neither weights
 * nor network every third call beside one was wrong. Each day of a longer job has an hour of its own. And below which chance an hour that no rule
 * calls mine is hardly the call, in a message that is not brief.
 */
const LIKELY = { rival: 0.5, likelier: 0.3, least: 0.5 };
/** "Coverage: start 9.30", "Hours: 9-5": a beginning that names nothing else that begins is mine. */
const LABEL = /(?:^|[\n.:;,(!?])\s*(?:start(?:s|ing)?(?: time)?|hours|times?)(?: at| from)?:?\s?$/i;
/** "video from 2 pm": the hour is named mine. */
const MINE = /\b(?:video|cameras?)(?: from| at)?:? ?$/i;
/** "The venue opens at 8 am for set-up", "at 2 pm for suppliers": it begins for those who work there. */
const FOR_WORK = /^ for (?:set(?:ting)?[- ]?up|load-?in|suppliers|vendors|crews?|contractors)\b/i;
const BESIDE = 24;

/**
 * The calls; a first call that is doubtful is a question, with its rival and itself as the choices.
 * @param days those of the job
 * @param page the message as rules read it, before anything learned said what an hour is
 */
export function undoubtedCall(calls: Calls, days: readonly string[], page: Page, learned: Learned): Calls {
  const { times, text } = page.scene;
  const { firstCall, ...rest } = calls;
  const own = times.find(({ start }) => start === firstCall?.where[0]?.start);
  if (!firstCall || !own || times.length > MOST_MENTIONS) return calls;
  const before = text.slice(Math.max(0, own.start - BESIDE), own.start);
  if (MINE.test(before)) return calls;
  const chance = (time: SaidTime): number => {
    const { call = 0, both = 0 } = timeChances(page, time, learned);
    return call + both;
  };
  const mine = chance(own);
  const [rival] = (days.length > 1 ? [] : times)
    .filter(
      (time) =>
        time.from.minutes !== own.from.minutes &&
        (!time.date || !own.date || time.date.start === own.date.start) &&
        time.said !== 'show' &&
        !OF_ELSE.has(time.said) &&
        ownerOf(text, time) !== 'theirs',
    )
    .map((time) => ({ time, chance: chance(time) }))
    .filter((other) => other.chance >= LIKELY.rival || (other.chance > mine && other.chance >= LIKELY.likelier))
    .toSorted((a, b) => b.chance - a.chance);
  const ofShow = own.said === 'show' && !LABEL.test(before) && !FOR_WORK.test(text.slice(own.end, own.end + BESIDE));
  // Of an hour that another takes the place of the weights see nothing.
  const ruled = isBrief(page) || ownerOf(text, own) === 'mine' || times.some(({ said }) => said === 'past');
  const unlikely = !ruled && mine < LIKELY.least;
  if (!rival && !ofShow && !unlikely) return calls;
  const day = Temporal.PlainDate.from(firstCall.wall.slice(0, 10));
  const other = rival && !rival.time.from.open ? [wallOf(day, rival.time.from.minutes)] : [];
  return { ...rest, callChoices: { walls: [...other, firstCall.wall].toSorted(), where: own, why: 'day' } };
}
