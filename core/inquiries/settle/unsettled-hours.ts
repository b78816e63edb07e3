/**
 * A call or a wrap whose hour is told as not settled yet: "call TBC, likely 8am", "8 am, to be confirmed", "8 am if we get the hall early, otherwise 10".
 * It is asked about, with itself as the choice; so is a call that may be somebody else's.
 */
import { ofLaterDay } from './of-later-day.ts';
import { maybeTheirs } from './ours-from.ts';
import type { Calls, Moment } from './points.ts';
import type { Scene } from './scene.ts';

/** In the clause before the hour; what is "probably" or "perhaps" then is told softly, and still told. */
const OPEN = String.raw`(?:tb[cad]|to be (?:confirmed|announced|decided|agreed|determined)|not (?:yet )?(?:fixed|confirmed|decided|settled)|unconfirmed|provisional(?:ly)?|tentative(?:ly)?)`;
const BEFORE = new RegExp(
  String.raw`\b${OPEN}\b[,:;)]{0,2} ?(?:\()?(?:(?!(?:but|so|and|which|because|film\p{L}*|cover\p{L}*|record\p{L}*|we|you|i)\b)[\p{L}']{1,12} ){0,4}$`,
  'iu',
);
/** Right behind it. */
const BEHIND = new RegExp(
  String.raw`^ ?(?:ish)?,? ?[(–-]? ?(?:but )?(?:(?:that's |that is |which is |this is |it's |is )?(?:still |not yet |as yet )?${OPEN}\b|(?:i|we)(?:'ll| will| still| have to| need to| must){1,3} (?:check|confirm)\b(?=\s?(?:[.,;:!?)\n]|$|it\b|that\b|the (?:time|hour|call|start)\b)))`,
  'iu',
);
/** "if we get the hall early, otherwise 10 am" */
const IF_OTHERWISE =
  /^[^.;!?\d\n]{0,12}\bif\b[^.;!?\d\n]{3,60}\b(?:otherwise|if not|or else|else)\b,? (?:(?:it's|it is|at|from|make it|more like|rather|then|around|about) ){0,3}(?:\d|noon|half|quarter|seven|eight|nine|ten|eleven|one|two|three|four|five|six)/i;
const REACH = 90;

/** The calls; of an hour that is told as not settled a question. */
export function settledOnly(scene: Scene, calls: Calls, days: readonly string[]): Calls {
  const { text } = scene;
  const [first] = days;
  const open = ({ where: [hour] }: Moment): boolean => {
    if (hour === undefined) return false;
    const [before, after] = [text.slice(Math.max(0, hour.start - REACH), hour.start), text.slice(hour.end, hour.end + REACH)];
    const clause = before.split(/[.;!?\n]|,\s(?=but|and|so)/).at(-1) ?? '';
    return BEFORE.test(clause) || BEHIND.test(after) || IF_OTHERWISE.test(after);
  };
  const { firstCall, lastWrap, ...rest } = calls;
  const asked = (moment: Moment) => ({ walls: [moment.wall], where: moment.where[0] ?? { start: 0, end: 0 }, why: 'day' as const });
  const answer: Calls = { ...rest };
  const theirs = ({ wall, where: [hour] }: Moment): boolean =>
    hour !== undefined &&
    first !== undefined &&
    (maybeTheirs(text, hour, wall.slice(0, first.length) < first) || ofLaterDay(scene, hour, days));
  if (firstCall && (open(firstCall) || theirs(firstCall))) answer.callChoices = asked(firstCall);
  else if (firstCall) answer.firstCall = firstCall;
  if (lastWrap && open(lastWrap)) answer.wrapChoices = asked(lastWrap);
  else if (lastWrap) answer.lastWrap = lastWrap;
  return answer;
}
