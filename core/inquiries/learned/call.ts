/**
 * The first call that rules found held against what the learned weights make of each hour: where they differ plainly, it is asked.
 */
import { MOST_MENTIONS, OF_ELSE } from '../settle/days-among.ts';
import { ownerOf } from '../settle/owner.ts';
import { wallOf } from '../settle/walls.ts';
import type { Calls } from '../settle/points.ts';
import type { SaidTime } from '../settle/scene.ts';
import { settledPair } from '../times/find.ts';
import { timeFeatures, type Page } from './features.ts';
import { halfFeatures, openEnds } from './halves.ts';
import { chancesIn, type Learned } from './models.ts';

/** Another hour that is likelier the call, from this chance on, makes the call a question. */
const RIVAL = 0.5;
/** Below this an hour is hardly a call; below that it is none where no rule speaks for it. */
const HARDLY = 0.1;
const UNSAID = 0.4;

/** The calls as rules settled them, the first one asked about where the weights plainly speak against it. */
export function agreedCall(calls: Calls, page: Page, learned: Learned): Calls {
  const { times } = page.scene;
  const called = calls.firstCall;
  const own = times.find(({ start }) => start === called?.where[0]?.start);
  if (!called || !own || times.length > MOST_MENTIONS) return calls;
  const chance = (time: SaidTime): number => {
    const { call = 0, both = 0 } = chancesIn(learned.time, timeFeatures(page, time));
    return call + both;
  };
  const mine = chance(own);
  // "call 8, 9am to 6pm": who is called before the hours of the occasion sets up.
  const setsUp = (time: SaidTime): boolean =>
    own.said === 'call' && time.said !== 'call' && time.to !== undefined && (settledPair(time.from, time.to)?.from ?? 0) > own.from.minutes;
  const rivals = times.filter(
    (time) => time !== own && !OF_ELSE.has(time.said) && !time.until && !setsUp(time) && ownerOf(page.scene.text, time) !== 'theirs',
  );
  const rival = rivals.map((time) => ({ time, chance: chance(time) })).toSorted((a, b) => b.chance - a.chance)[0];
  const likelier = rival && rival.chance > RIVAL && mine < UNSAID && rival.time.from.minutes !== own.from.minutes ? rival.time : undefined;
  if (!likelier && mine >= (own.said === 'call' ? HARDLY : UNSAID)) return calls;
  const { firstCall: _, ...rest } = calls;
  const on = Temporal.PlainDate.from(called.wall.slice(0, 10));
  const walls = [...(likelier && !likelier.from.open ? [wallOf(on, likelier.from.minutes)] : []), called.wall];
  return { ...rest, callChoices: { walls, where: own, why: 'day' } };
}

/** From this chance on the other half of the day makes a call or a wrap a question. */
const OTHER_HALF = 0.6;

/** The calls, those asked about of which the weights say that they are in the other half of the day. */
export function agreedHalves(calls: Calls, page: Page, learned: Learned): Calls {
  const ends = openEnds(page.scene);
  const other = (point: Calls['firstCall'], end: 'from' | 'to'): string | undefined => {
    const open = point && ends.find((one) => one.time.start === point.where[0]?.start && (one.end === end || !one.time.to));
    if (!open) return undefined;
    const minutes = Number(point.wall.slice(11, 13)) * 60 + Number(point.wall.slice(14, 16));
    if (minutes % 720 !== open.minutes % 720) return undefined;
    const { am = 0, pm = 0 } = chancesIn(learned.half, halfFeatures(page, open.time, open.end));
    if ((minutes < 720 ? pm : am) < OTHER_HALF) return undefined;
    return wallOf(Temporal.PlainDate.from(point.wall.slice(0, 10)), (minutes + 720) % 1440);
  };
  const answer = { ...calls };
  const asked = (point: Calls['firstCall'], half: string | undefined): Calls['callChoices'] =>
    point && half !== undefined ? { walls: [point.wall, half].toSorted(), where: point.where[0] as SaidTime, why: 'open' } : undefined;
  const call = asked(calls.firstCall, other(calls.firstCall, 'from'));
  const wrap = asked(calls.lastWrap, other(calls.lastWrap, 'to'));
  if (call) {
    delete answer.firstCall;
    answer.callChoices = call;
  }
  if (wrap) {
    delete answer.lastWrap;
    answer.wrapChoices = wrap;
  }
  return answer;
}
