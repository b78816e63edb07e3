/**
 * The first call and the last wrap that rules found held against what the learned weights make of each hour: where they differ plainly, it is
 * asked.
 */
import { lineStart } from '../parts/sentences.ts';
import { MOST_MENTIONS, OF_ELSE } from '../settle/days-among.ts';
import { ownerOf } from '../settle/owner.ts';
import type { Calls } from '../settle/points.ts';
import type { DateMention, SaidTime } from '../settle/scene.ts';
import { atDawn } from '../settle/at-dawn.ts';
import { endsLate, LONGEST_DAY, LONGEST_SHIFT } from '../settle/ends-late.ts';
import { endsAtNight, isEvening } from '../settle/half-of-call.ts';
import { wallOf } from '../settle/walls.ts';
import { timeChances } from '../context/chances.ts';
import { isBrief, timeFeatures, type Page } from './features.ts';
import { halfFeatures, openEnds } from './halves.ts';
import { chancesIn, type Learned } from './models.ts';

type Told = 'firstCall' | 'lastWrap';
type Choices = Calls['callChoices'];
const CHOICES = { firstCall: 'callChoices', lastWrap: 'wrapChoices' } as const;

/** Another hour makes it a question where it is likelier, from the first chance on, and a wrap also beside a likely one, from the second on. */
const LIKELIER = 0.3;
const RIVAL = 0.5;
/** Below this an hour is hardly a call or a wrap: in a brief message, and in any other. */
const HARDLY = { brief: 0.25, long: 0.4 };
/** Of so many hours the call has to be likely: half of those that were stated below this when messages were read for the first time were none. */
const SEVERAL = 3;
const LIKELY = 0.5;
/** "Call: 07:30 (14th)", "call 10am", "16:30 cameras", and the cell of a table, of which the weights see nothing: there rules know better. */
const HEADED = /^\s*(?:crew )?(?:call|wrap)\b/i;
export const CALL = /\bcall(?:'s| time)?(?: on (?:set|site|location))?(?: is)?(?: at)?:?\s?$/i;
/** "be there 15h, leave 20h", "call 14:00, off 22:00" */
const END = /[\d.,;:hm] (?:you )?(?:leave|out|off|done|home|finish(?:ed)?|away|released)(?: (?:at|by))?:?\s?$/i;
/** "Start 9.30." */
const STARTS = /(?:^|[\n.;(!?])\s*start(?: time)?(?: at)?:?\s?$/i;
const MY_PART = /^\s(?:video|cameras?)[,.;\n]/i;
const BESIDE = 20;
/** "2p wrap", "3.15pm finish on the Friday", "photographer released", "contractor off site 1.00 pm", "release 1730": an end that is named right beside its hour. */
const ENDS_BEHIND = /^ (?:[\p{L}]+ )?(?:wrap|finish|released?)\b(?! (?:line|party|from|of)\b)/iu;
const ENDS_BEFORE = /\b(?:wrap|released?|off[- ]site|your (?:wrap|finish|end|out))(?: (?:at|by|is))?:? $/i;
/** From this chance on my own hours stand against another hour that is likely, but less so. */
const MY_OWN = 0.75;
/** From this chance on the other half of the day makes it a question; five and six o'clock are called in the morning and in the evening alike. */
const OTHER_HALF = 0.7;
const OTHER_HALF_AT_FIVE = 0.5;
const [FIVE, SEVEN] = [5 * 60, 7 * 60];

/** The calls as rules settled them, the first call and the last wrap asked about where the weights plainly speak against them. */
export function agreedCalls(calls: Calls, page: Page, learned: Learned): Calls {
  if (page.scene.times.length > MOST_MENTIONS) return calls;
  const answer = { ...calls };
  for (const told of ['firstCall', 'lastWrap'] as const) {
    const choices = otherHour(answer, told, page, learned) ?? otherHalf(answer, told, page, learned);
    if (!choices) continue;
    delete answer[told];
    answer[CHOICES[told]] = choices;
  }
  return answer;
}

const ownTime = (calls: Calls, told: Told, times: readonly SaidTime[]): SaidTime | undefined =>
  times.find(({ start }) => start === calls[told]?.where[0]?.start);
const dayOf = (wall: string): Temporal.PlainDate => Temporal.PlainDate.from(wall.slice(0, 10));

/** A first call stands before the last wrap, where that is told. */
const fits = (calls: Calls, told: Told, wall: string): boolean =>
  told === 'firstCall' ? wall < (calls.lastWrap?.wall ?? '~') : wall > (calls.firstCall?.wall ?? '');

/** In a table, of which the weights see nothing. */
const inCell = (text: string, { start }: SaidTime): boolean => text.slice(lineStart(text, start), start).includes('|');

const isNamedEnd = (text: string, { start, end }: SaidTime): boolean =>
  ENDS_BEFORE.test(text.slice(Math.max(0, start - BESIDE), start)) || ENDS_BEHIND.test(text.slice(end, end + 2 * BESIDE));

function isPlain(text: string, own: SaidTime, told: Told): boolean {
  const { start, end } = own;
  const before = text.slice(lineStart(text, start), start);
  if (told === 'lastWrap' && END.test(before.slice(-BESIDE))) return true;
  if (told === 'firstCall' && STARTS.test(text.slice(Math.max(0, start - BESIDE), start))) return true;
  return inCell(text, own) || HEADED.test(before) || CALL.test(before.slice(-BESIDE)) || MY_PART.test(text.slice(end, end + BESIDE));
}

/** Another hour that is likelier it, or this one alone where it hardly is. */
function otherHour(calls: Calls, told: Told, page: Page, learned: Learned): Choices {
  const { times, text } = page.scene;
  const own = ownTime(calls, told, times);
  const wall = calls[told]?.wall;
  if (!own || wall === undefined) return undefined;
  // Of a wrap the weights know better in a message of any length, unless it has a line of its own.
  const ruled = told === 'firstCall' || isBrief(page) || HEADED.test(text.slice(lineStart(text, own.start), own.start));
  // Of an hour that another takes the place of the weights see nothing.
  const instead = told === 'firstCall' && own.said === 'call' && times.some(({ said }) => said === 'past');
  const owned = instead || ownerOf(text, own) === 'mine';
  if (ruled ? owned || isPlain(text, own, told) : inCell(text, own)) return undefined;
  const chance = (time: SaidTime): number => {
    const { call = 0, wrap = 0, both = 0 } = chancesIn(learned.time, timeFeatures(page, time));
    return both + (told === 'firstCall' ? call : wrap);
  };
  const contextual = (time: SaidTime): number => {
    const { call = 0, both = 0 } = timeChances(page, time, learned);
    return call + both;
  };
  const end = (time: SaidTime): SaidTime['from'] => (told === 'lastWrap' && time.to) || time.from;
  // "reception until 21h ... and leave at 21h": the same hour, told again.
  const again = times.filter((time) => !OF_ELSE.has(time.said) && end(time).minutes === end(own).minutes);
  const mine = Math.max(chance(own), ...again.map(chance));
  // Rules that say of an hour that it is the call know what the weights do not; of any other the network is heard as well.
  const inContext = told === 'firstCall' && own.said !== 'call' ? Math.max(...[own, ...again].map(contextual)) : mine;
  const [rival] = times
    .filter(
      (time) =>
        time !== own &&
        !OF_ELSE.has(time.said) &&
        !(told === 'firstCall' && time.until) &&
        !ofAnotherDay(own, time) &&
        time.date?.said !== 'reply' &&
        ownerOf(text, time) !== 'theirs',
    )
    .map((time) => ({ time, chance: chance(time) }))
    .toSorted((a, b) => b.chance - a.chance);
  // "Your hours are 8 to 2 ... lab tours until noon"
  const settled = mine >= MY_OWN && (owned || own.said === 'call');
  const rivals = rival && (rival.chance > Math.max(mine, LIKELIER) || (told === 'lastWrap' && rival.chance > RIVAL && !settled));
  const likelier = rivals && end(rival.time).minutes !== end(own).minutes ? rival.time : undefined;
  const several = times.filter(({ said }) => !OF_ELSE.has(said)).length >= SEVERAL;
  // An hour that no rule says to be the call is one only by the weights; a wrap may be told by where it stands.
  const least = told === 'firstCall' && (several || own.said !== 'call') ? LIKELY : isBrief(page) ? HARDLY.brief : HARDLY.long;
  if (!likelier && (Math.min(mine, inContext) >= least || (told === 'lastWrap' && isNamedEnd(text, own)))) return undefined;
  const other = likelier && !end(likelier).open ? [wallOf(dayOf(wall), end(likelier).minutes)] : [];
  return { walls: [...other.filter((one) => fits(calls, told, one)), wall], where: own, why: 'day' };
}

/** "Fri 3p-11p, Sat 10a-11p": the hour of another day takes nothing from this one. */
const ofAnotherDay = ({ date }: SaidTime, other: SaidTime): boolean =>
  date !== undefined && other.date !== undefined && date.start !== other.date.start && onlyDay(date) !== onlyDay(other.date);
const onlyDay = ({ readings: [days, ...others] }: DateMention): string | undefined =>
  others.length === 0 && days?.length === 1 ? days[0] : undefined;

/** A call after noon. */
const nightly = (wall: string): boolean => wall.slice(11) >= '12:00';

/** The same hour in the other half of the day. */
function otherHalf(calls: Calls, told: Told, page: Page, learned: Learned): Choices {
  const wall = calls[told]?.wall;
  const own = ownTime(calls, told, page.scene.times);
  const open = openEnds(page.scene).find(({ time, end }) => time === own && (!time.to || end === (told === 'firstCall' ? 'from' : 'to')));
  if (wall === undefined || !open) return undefined;
  // "sunrise at 6:55 ... you're excused at 9"
  if (told === 'lastWrap' && atDawn(page.scene.text)) return undefined;
  const minutes = Number(wall.slice(11, 13)) * 60 + Number(wall.slice(14, 16));
  // "club night 10 til 4, come at 9"
  if (told === 'firstCall' && minutes >= 720 && endsAtNight(page.scene)) return undefined;
  if (minutes % 720 !== open.minutes % 720) return undefined;
  const { am = 0, pm = 0 } = chancesIn(learned.half, halfFeatures(page, open.time, open.end));
  const either = !isBrief(page) && minutes % 720 >= FIVE && minutes % 720 < SEVEN;
  if ((minutes < 720 ? pm : am) < (either ? OTHER_HALF_AT_FIVE : OTHER_HALF)) return undefined;
  if (told === 'firstCall' && minutes >= 720 && endsLate(minutes - 720, page.scene, isEvening(page.scene) ? LONGEST_DAY : LONGEST_SHIFT))
    return undefined;
  // "call 22h, out by 4": no day's work is that long.
  const call = calls.firstCall?.wall;
  if (told === 'lastWrap' && minutes < 720 && call !== undefined && dayOf(call).until(dayOf(wall)).days <= 1) {
    const stay = Temporal.PlainDateTime.from(call).until(Temporal.PlainDateTime.from(wall)).total('minutes');
    if (stay + 720 > LONGEST_SHIFT && nightly(call)) return undefined;
  }
  // Call and wrap may both be in the other half: neither is held against the other here.
  return { walls: [wall, wallOf(dayOf(wall), (minutes + 720) % 1440)].toSorted(), where: open.time, why: 'open', weighed: true };
}
