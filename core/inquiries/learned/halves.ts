/**
 * What the model of halves sees of an hour that is said without morning or evening: the hour, what it is said of, the hours beside it and the words
 * of the message.
 */
import { OF_ELSE } from '../settle/days-among.ts';
import type { SaidTime, Scene } from '../settle/scene.ts';
import type { Page } from './features.ts';
import { wordAt } from './words.ts';

/** One end of a time: where it begins, or where it ends. */
export type End = 'from' | 'to';

export const DIAL = 720;
const BEFORE = 5;
const AFTER = 4;
/** Words of a message from here on tell nothing of its hours. */
const MOST_WORDS = 300;
const HOURS_BESIDE = 4;

/** Before three o'clock it may be past midnight as well: rules tell that from the call. */
const EARLIEST = 180;

/** The ends of times whose half of the day is open. */
export function openEnds({ times }: Scene): { time: SaidTime; end: End; minutes: number }[] {
  return times
    .filter(({ said }) => !OF_ELSE.has(said))
    .flatMap((time) =>
      (['from', 'to'] as const).flatMap((end) => {
        const own = time[end];
        return own?.open && own.minutes % DIAL >= EARLIEST ? [{ time, end, minutes: own.minutes }] : [];
      }),
    );
}

/** A stretch of minutes in coarse steps, as a name. */
function stretch(minutes: number): string {
  const steps = [-720, -360, -120, -1, 0, 45, 105, 180, 300, 480, 660, 900];
  return String(steps.findLastIndex((step) => minutes >= step));
}

/** Of one end of a time whose half of the day is open. */
export function halfFeatures({ scene, words }: Page, time: SaidTime, end: End): Set<string> {
  const own = end === 'from' ? time.from : (time.to ?? time.from);
  const dial = own.minutes % DIAL;
  const as = `${time.said ?? 'none'}:${time.to ? end : time.until ? 'until' : 'at'}`;
  const at = wordAt(words, time.start);
  const next = wordAt(words, time.end);
  const features = new Set<string>([
    `h:${Math.floor(dial / 60)}`,
    `h:${Math.floor(dial / 30)}:${as}`,
    as,
    ...(time.evening ? ['evening'] : []),
    ...(time.dayBefore ? ['before'] : []),
    ...words
      .slice(Math.max(0, at - BEFORE), at)
      .toReversed()
      .flatMap(({ word }, far) => [`b:${word}`, ...(far < 2 ? [`b${far}:${word}`] : [])]),
    ...words.slice(next, next + AFTER).flatMap(({ word }, far) => [`a:${word}`, ...(far < 2 ? [`a${far}:${word}`] : [])]),
    ...words.slice(0, MOST_WORDS).map(({ word }) => `w:${word}`),
  ]);
  if (time.to) {
    const other = end === 'from' ? time.to : time.from;
    features.add(`p:${other.open ? 'open' : 'shut'}:${stretch(end === 'from' ? other.minutes - dial : dial - other.minutes)}`);
    features.add(
      `P:${end}:${Math.floor(dial / 60)}:${other.open ? Math.floor((other.minutes % DIAL) / 60) : `=${Math.floor(other.minutes / 120)}`}`,
    );
  }
  const mine = scene.times.indexOf(time);
  scene.times.forEach((other, index) => {
    if (other === time || OF_ELSE.has(other.said) || Math.abs(index - mine) > HOURS_BESIDE) return;
    const side = index < mine ? 'B' : 'A';
    for (const point of [other.from, ...(other.to ? [other.to] : [])]) {
      const role = other.said ?? 'none';
      if (point.open) features.add(`${side}:${role}:${stretch((point.minutes % DIAL) - dial)}`);
      else features.add(`${side}=${role}:${stretch(point.minutes - dial)}`);
      if (point.open) features.add(`${side}:${Math.floor(dial / 60)}:${Math.floor((point.minutes % DIAL) / 60)}`);
      else features.add(`${side}=${Math.floor(dial / 60)}:${Math.floor(point.minutes / 120)}`);
    }
  });
  return features;
}
