/**
 * The hour that the learned weights are sure is the call or the end, where rules that look at one sentence at a time state none: it is settled
 * again as one that is told in so many words.
 */
import { callsOf } from '../settle/calls.ts';
import { MOST_MENTIONS, OF_ELSE } from '../settle/days-among.ts';
import { earlierCall } from '../settle/earlier.ts';
import { ownerOf } from '../settle/owner.ts';
import type { Calls } from '../settle/points.ts';
import type { EventDays, SaidTime, Scene } from '../settle/scene.ts';
import { timeFeatures, type Page } from './features.ts';
import { isNoEnd } from './hours.ts';
import { chancesIn, type Learned } from './models.ts';

type Told = 'firstCall' | 'lastWrap';
const CUE = { firstCall: 'call', lastWrap: 'wrap' } as const;
const CHOICES = { firstCall: 'callChoices', lastWrap: 'wrapChoices' } as const;
/** From this chance on an hour is told, where every other of the message stays below the second. */
const SURE = 0.9;
const OTHER = 0.3;

/** The calls, each one that is missing stated where one hour is surely it and nothing else keeps it open. */
export function withSurestHours(calls: Calls, page: Page, event: EventDays, learned: Learned): Calls {
  const { times } = page.scene;
  if (event.dates.length === 0 || times.length === 0 || times.length > MOST_MENTIONS) return calls;
  const answer = { ...calls };
  for (const told of ['firstCall', 'lastWrap'] as const) {
    // That an hour is the call does not say in which half of the day it is.
    if (answer[told] || answer[CHOICES[told]]?.weighed) continue;
    const hour = surest(told, page, learned);
    const again = hour && callsOf(saidSo(page.scene, hour, told), event)[told];
    if (!again || !again.where.some(({ start }) => start === hour.start)) continue;
    if (told === 'firstCall' ? again.wall >= (answer.lastWrap?.wall ?? '~') : again.wall <= (answer.firstCall?.wall ?? '')) continue;
    answer[told] = again;
    delete answer[CHOICES[told]];
  }
  return answer;
}

function surest(told: Told, page: Page, learned: Learned): SaidTime | undefined {
  const weighed = page.scene.times
    .map((time) => {
      const chances = chancesIn(learned.time, timeFeatures(page, time));
      return { time, chance: (chances['both'] ?? 0) + (chances[CUE[told]] ?? 0) };
    })
    .toSorted((a, b) => b.chance - a.chance);
  const [best] = weighed;
  if (!best || best.chance < SURE || OF_ELSE.has(best.time.said) || best.time.to || best.time.said === 'show') return undefined;
  if (told === 'lastWrap' && isNoEnd(page.scene.text, best.time)) return undefined;
  if (ownerOf(page.scene.text, best.time) === 'theirs' || earlierCall(page.scene)) return undefined;
  const { minutes, open } = best.time.from;
  // "7" and "19:00" may be one hour, 07:00 and 19:00 are two.
  const isSame = (end: SaidTime['from']): boolean => (open || end.open ? end.minutes % 720 === minutes % 720 : end.minutes === minutes);
  return weighed.every(({ time, chance }) => chance < OTHER || isSame((told === 'lastWrap' && time.to) || time.from))
    ? best.time
    : undefined;
}

/** The scene in which this hour is told as the call or the end, and no other. */
const saidSo = (scene: Scene, hour: SaidTime, told: Told): Scene => ({
  ...scene,
  times: scene.times.map((time) =>
    time === hour ? { ...time, said: CUE[told] } : time.said === CUE[told] ? { ...time, said: 'show' } : time,
  ),
});
