/**
 * Whether a first call that was settled is to be asked about after all: weights and network together read the words around every hour, and where
 * they take another for the call as well, it is not stated.
 */
import type { Page } from '../learned/features.ts';
import type { Learned } from '../learned/models.ts';
import { MOST_MENTIONS, OF_ELSE } from '../settle/days-among.ts';
import { ownerOf } from '../settle/owner.ts';
import type { Calls } from '../settle/points.ts';
import type { SaidTime } from '../settle/scene.ts';
import { wallOf } from '../settle/walls.ts';
import { timeChances } from './chances.ts';

/**
 * The least chance of a call at which by the rules the show begins; from which chance on another hour of its day is a rival; and from which on one
 * that is likelier. Of 1,570 calls that were stated in the sets from 18 to 96 that had taught neither weights nor network, 10 were wrong: these bounds
 * ask about three of them and about one in a hundred of the others.
 */
const LIKELY = { show: 0.98, rival: 0.5, likelier: 0.3 };

/**
 * The calls; a first call that is doubtful is a question, with its rival and itself as the choices.
 * @param page the message as rules read it, before anything learned said what an hour is
 */
export function undoubtedCall(calls: Calls, page: Page, learned: Learned): Calls {
  const { times, text } = page.scene;
  const { firstCall, ...rest } = calls;
  const own = times.find(({ start }) => start === firstCall?.where[0]?.start);
  if (!firstCall || !own || times.length > MOST_MENTIONS) return calls;
  const chance = (time: SaidTime): number => {
    const { call = 0, both = 0 } = timeChances(page, time, learned);
    return call + both;
  };
  const mine = chance(own);
  const [rival] = times
    .filter(
      (time) =>
        time.from.minutes !== own.from.minutes &&
        !OF_ELSE.has(time.said) &&
        (!time.date || !own.date || time.date === own.date) &&
        ownerOf(text, time) !== 'theirs',
    )
    .map((time) => ({ time, chance: chance(time) }))
    .filter((other) => other.chance >= LIKELY.rival || (other.chance > mine && other.chance >= LIKELY.likelier))
    .toSorted((a, b) => b.chance - a.chance);
  if (!rival && (own.said !== 'show' || mine >= LIKELY.show)) return calls;
  const day = Temporal.PlainDate.from(firstCall.wall.slice(0, 10));
  const other = rival && !rival.time.from.open ? [wallOf(day, rival.time.from.minutes)] : [];
  return { ...rest, callChoices: { walls: [...other, firstCall.wall].toSorted(), where: own, why: 'day' } };
}
