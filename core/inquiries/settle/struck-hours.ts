/**
 * Hours that are struck out further on: "report at 8 o'clock ... PS disregard eight o'clock, the park isn't unlocked before nine. Nine it is."
 */
import type { Cue } from '../said/cues.ts';
import { inItsHalf, sameOnDial } from './corrected.ts';
import type { SaidTime } from './scene.ts';

const STRIKES =
  /(?<!(?:n['’]?t|\bnot|\bnever|\bif you) )\b(?:ignore|disregard|forget|scrap|scratch)(?: about)?(?: (?:the|my|that|your|call|start|at|of)){0,3} $/i;
/** What leads on to the hour that takes its place, or stands behind it. */
const LEADS =
  /\b(?:it's|it is|make (?:it|that)|come (?:at|for)|be there (?:at|for|by)|start (?:is|at)|call is|now|(?:say|let's say))(?: now)? $/i;
const BEHIND = /^(?: ?[ap]\.?m\.?)? (?:it is|it'll be|is (?:enough|fine|plenty|early enough)|will do|instead|now)\b/i;
const [LEAD, REACH] = [40, 110];
const MINE = new Set<Cue | undefined>(['call', 'wrap']);

/** "the 8am on the poster" */
const ELSEWHERE = /^ (?:on|in) (?:the|our|your|my) (?:poster|flyer|website|programme|program|tickets?|invit\w+|sheet)\b/i;

type Hours = { times: SaidTime[]; numbers: SaidTime[] };

/** The hours, where those that are struck out no longer hold; one that takes the place of one is said of the same. */
export function withoutStruck(text: string, hours: Hours): Hours {
  const { times, numbers } = hours;
  const struck = times.find(
    ({ start, end, to }) =>
      !to && !ELSEWHERE.test(text.slice(end, end + LEAD)) && STRIKES.test(text.slice(Math.max(0, start - LEAD), start)),
  );
  if (!struck) return hours;
  const old = times.find(({ start, to, said, from }) => start < struck.start && !to && MINE.has(said) && sameOnDial(from, struck.from));
  if (!old) return hours;
  const next = [...times, ...numbers]
    .toSorted((a, b) => a.start - b.start)
    .find(
      ({ start, end, to, said }) =>
        (!MINE.has(said) || said === old.said) &&
        start > struck.end &&
        start - struck.end <= REACH &&
        !to &&
        (LEADS.test(text.slice(Math.max(struck.end, start - LEAD), start)) || BEHIND.test(text.slice(end, end + LEAD))),
    );
  const { said, date, dayBefore, nthDay } = old;
  const kept = times
    .map((time) => (time === old || time === struck ? { ...time, said: 'past' as const } : time))
    .filter((time) => time !== next);
  if (!next) return { times: kept, numbers };
  const told = { ...next, said, date, dayBefore, nthDay, from: inItsHalf(old.from, next.from) };
  return { times: [...kept, told].toSorted((a, b) => a.start - b.start), numbers: numbers.filter((time) => time !== next) };
}
