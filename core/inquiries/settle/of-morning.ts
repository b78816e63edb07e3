/**
 * An hour beside others that are told to be in the morning: "doors at 8 am so be there 7:15, done by 10", "we begin at 6.30 in the morning, but we'd
 * need you at quarter past five", "he's paid till 11am, so at 11 you can go".
 */
import { OF_ELSE } from './days-among.ts';
import { isEvening } from './half-of-call.ts';
import type { SaidTime, Scene } from './scene.ts';

const NOON = 720;
/** So long before what it is for a crew comes. */
const LONGEST_SET_UP = 3 * 60;
/** What is told of a morning begins after this. */
const EARLIEST = 5 * 60;
/** What stands between two writings of one hour. */
const AGAIN = 48;
const SO_AT = /\bso (?:at |by |from )?$/i;

const ofDay = ({ said, date, nthDay }: SaidTime): boolean => !OF_ELSE.has(said) && date === undefined && nthDay === undefined;

/** `sure` where an hour can only be meant before noon by the hours beside it, `likely` where it may well be; `minutes` are those of the dial. */
export function ofMorning(time: SaidTime, minutes: number, scene: Scene): 'sure' | 'likely' | undefined {
  const dial = minutes % NOON;
  const again = scene.times.find(
    ({ start, end, from, to }) =>
      end <= time.start && start >= time.start - AGAIN && !(to ?? from).open && (to ?? from).minutes % NOON === dial,
  );
  if (again && SO_AT.test(scene.text.slice(Math.max(0, time.start - AGAIN), time.start)))
    return (again.to ?? again.from).minutes < NOON ? 'sure' : undefined;
  if (time.said === 'call') return before(time, dial, scene) ? 'sure' : undefined;
  return time.said === 'wrap' && dial >= EARLIEST && after(time, dial, scene) ? 'likely' : undefined;
}

/** A call a little before what begins in the morning, and before nothing of the evening. */
function before(time: SaidTime, dial: number, { times }: Scene): boolean {
  const others = times.filter((one) => one !== time && ofDay(one) && (one.said === 'show' || one.said === undefined) && !one.from.open);
  const comesTo = (minutes: number): boolean =>
    others.some(({ from }) => from.minutes > minutes && from.minutes - minutes <= LONGEST_SET_UP);
  return comesTo(dial) && !comesTo(dial + NOON);
}

/** An end after hours of one morning, of which no other may be of the afternoon. */
function after(time: SaidTime, dial: number, scene: Scene): boolean {
  const others = scene.times.filter((one) => one !== time && ofDay(one));
  if (others.length === 0 || !others.every(({ from, to }) => !to && from.minutes < dial && from.minutes >= EARLIEST)) return false;
  return others.some(({ from }) => !from.open) || !isEvening(scene);
}
