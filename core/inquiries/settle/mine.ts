/**
 * Of several hours mine: the first call and the last wrap where others come and go at hours of their own.
 */
import { OF_ELSE } from './days-among.ts';
import { endsAround, endsWork } from './ends-around.ts';
import { filmedThen } from './filmed-then.ts';
import { ownerOf } from './owner.ts';
import { compare, type Calls, type Point } from './points.ts';
import type { Scene, Where } from './scene.ts';
import { wallOf } from './walls.ts';

/** Whose an hour is; "you can go after the cake, say half past": what only leads to the hour tells nothing. */
const ownerIn =
  ({ text }: Scene) =>
  ({ where: [hour] }: Point): 'mine' | 'theirs' | undefined => {
    if (!hour) return undefined;
    const say = SAY.exec(text.slice(Math.max(0, hour.start - LONGEST_SAY), hour.start))?.[0].length ?? 0;
    return ownerOf(text, { ...hour, start: hour.start - say });
  };
const SAY = /,? ?(?:so|say|let's say|call it|perhaps|maybe)(?: (?:about|around|at|by))? $/i;
const LONGEST_SAY = 24;

/** The earliest hour; where others are told to come then and I later, mine; asked where an earlier one is nobody's in particular. */
export function firstOfMine(scene: Scene, ordered: readonly Point[], answer: Calls): Point | undefined {
  const [earliest] = ordered;
  if (!earliest) return undefined;
  const owner = ownerIn(scene);
  // "The caretaker opens up at 8 ... be there at 3"
  const later = opensUp(scene, earliest) ? ordered.find((point) => point.date.equals(earliest.date) && !opensUp(scene, point)) : undefined;
  if (later && isCall(later)) return firstOfMine(scene, ordered.slice(ordered.indexOf(later)), answer);
  if (later) {
    answer.callChoices ??= {
      walls: [earliest, later].map((point) => wallOf(point.date, point.minutes)),
      where: earliest.where[0] as Where,
      why: 'day',
    };
    return earliest;
  }
  // "Load-in at 7, filming starts at 8": when filming begins takes nothing from an earlier hour.
  const begins = ({ where: [hour] }: Point): boolean => hour !== undefined && filmedThen(scene.text, hour);
  // An hour before it of which nothing is known may be the call.
  const [before] = begins(earliest)
    ? scene.times.filter(
        ({ said, from, start, end }) =>
          said === undefined &&
          !from.open &&
          from.minutes < earliest.minutes &&
          earliest.minutes - from.minutes <= LONGEST_SET_UP &&
          ownerOf(scene.text, { start, end }) !== 'theirs',
      )
    : [];
  if (before)
    answer.callChoices ??= {
      walls: [before.from.minutes, earliest.minutes].map((minutes) => wallOf(earliest.date, minutes)),
      where: before,
      why: 'day',
    };
  const mine = ordered.find((point) => point.date.equals(earliest.date) && owner(point) === 'mine' && !begins(point));
  if (owner(earliest) === 'theirs' && mine) return mine;
  if (owner(earliest) === 'theirs') {
    answer.callChoices ??= { walls: [wallOf(earliest.date, earliest.minutes)], where: earliest.where[0] as Where, why: 'day' };
    return earliest;
  }
  if (!mine || mine.minutes === earliest.minutes || owner(earliest) === 'mine') return earliest;
  // "you work 9-18h, first day please 8:30"
  if (ofDay(earliest) && !ofDay(mine)) return earliest;
  const lead = leadOf(scene, mine);
  if (NEED_NOT.test(lead) || ONLY_THEN.test(lead) || OPEN.test(leadOf(scene, earliest))) return mine;
  if (READY.test(lead)) return earliest;
  // "Set-up from 10, your call is 13:00"
  if (YOUR_CALL.test(lead)) return mine;
  answer.callChoices ??= {
    walls: [earliest, mine].map((point) => wallOf(point.date, point.minutes)),
    where: mine.where[0] as Where,
    why: 'day',
  };
  return earliest;
}

const LONGEST_SET_UP = 5 * 60;

/** Hours from which I could come in, said of those who open. */
const OPENS_UP =
  /\b(?:(?:we|they|i)(?:'ll|'ve)? (?:will )?(?:get|have|collect|pick up|are getting) the keys?|(?:caretaker|janitor|verger|custodian|porter|sexton|steward|warden|landlord) (?:(?:unlocks|opens)(?: up)?|is there)|(?:hall|room|venue|church|barn|studio|theat(?:re|er)|marquee|place|space)(?:'s| is) (?:booked|hired|ours|rented|reserved|open|free|available|unlocked))\b(?! (?:for|to) (?:you|us|the crew|crew|rig|set|load))[^.;!?\d\n]{0,24}$/i;
const opensUp = ({ text }: Scene, { where: [hour] }: Point): boolean =>
  hour !== undefined && OPENS_UP.test(text.slice(Math.max(0, hour.start - OPENS_REACH), hour.start));
const OPENS_REACH = 64;
const isCall = ({ where: [hour] }: Point): boolean => hour !== undefined && 'said' in hour && hour.said === 'call';

/** An hour of one day alone. */
const ofDay = ({ where: [hour] }: Point): boolean => hour !== undefined && 'nthDay' in hour && hour.nthDay !== undefined;
const leadOf = ({ text }: Scene, { where }: Point): string =>
  text
    .slice(Math.max(0, (where[0]?.start ?? 0) - LEAD), where[0]?.start ?? 0)
    .split(/[.;!?\n]/)
    .at(-1) ?? '';
const LEAD = 50;
/** "we can be in from 1 but you wouldn't need to come before 3" */
const NEED_NOT =
  /\b(?:not|\p{L}+n't) (?:need|have|be needed|required?)\b[^,]{0,24}\b(?:before|until|till|til) $|\b(?:needn't|no need)\b[^,]{0,24}\b(?:before|until|till|til) $/iu;
/** "I need you at the hall only, call 12:30" */
const ONLY_THEN = /\b(?:need|want|like|have) you\b[^.;\d]{0,40}\bonly\b/i;
/** "The church is open from 9 and you'd want to be there by 10" */
const OPEN =
  /\b(?:church|hall|building|room|venue|school|gym|theat(?:re|er)|chapel|barn|marquee|doors?|gates?|aula|halle|saal|kirche|tür(?:en)?|house|club|centre|center)(?:'s| is| are| ist| sind| will be)? (?:open|unlocked|ab|opens?)\b[^,]{0,12}$/i;
/** "your call is" */
const YOUR_CALL =
  /\b(?:your (?:own )?(?:call|start|arrival)(?: time)?|(?:call|start) for you|you(?:'re| are|'d be) (?:called|due))(?: is|'s| will be|:)?(?: at| for| from)? $/i;
/** "ready to roll at 9, so arriving at 8 would make sense" */
const READY = /\b(?:ready|rolling|roll|record(?:ing)?|film(?:ing)?|shoot(?:ing)?|live)\b[^,]{0,16}$/i;

/** The latest hour; where I may go before it, mine. */
export function lastOfMine(scene: Scene, wraps: readonly Point[]): Point | undefined {
  const [latest, ...others] = ofLastDay(wraps).toSorted((a, b) => compare(b, a));
  if (!latest) return undefined;
  const owner = ownerIn(scene);
  if (owner(latest) === 'mine') return latest;
  // "we'd like you to stream the briefing, 9 to 1 ... all out by 2": hours of the occasion do not end mine before an end that is told.
  const told = ({ where: [hour] }: Point): boolean =>
    hour !== undefined && 'said' in hour && (hour.said === 'wrap' || hour.said === 'call');
  const [hour] = latest.where;
  // "call is 4pm and wrap 11pm ... carriages at half past twelve"
  const around = hour !== undefined && endsAround(scene.text, hour);
  const ofWork = ({ where: [one] }: Point): boolean => one !== undefined && endsWork(scene.text, one);
  return (
    others.find((point) => point.date.equals(latest.date) && owner(point) === 'mine' && (told(point) || !told(latest))) ??
    (around ? others.find((point) => ofWork(point)) : undefined) ??
    (owner(latest) === 'theirs' ? undefined : latest)
  );
}

/** "done by 6 both days, on Thursday you'd finish at 2": an end that names its day goes before those told earlier that name none. */
function ofLastDay(wraps: readonly Point[]): readonly Point[] {
  const named = wraps.find(({ where: [hour] }) => hour !== undefined && namesDay(hour));
  const from = named?.where[0]?.start ?? 0;
  return named === undefined
    ? wraps
    : wraps.filter(({ where: [hour] }) => hour === undefined || !('date' in hour) || namesDay(hour) || hour.start > from);
}

const namesDay = (hour: Where): boolean => ('date' in hour && hour.date !== undefined) || ('nthDay' in hour && hour.nthDay !== undefined);

/** "there for 7 or for 8", "set-up at 8 if you can, otherwise at 10", "come between 8 and 9": another hour that is left open. */
export function orElse({ text, times, numbers }: Scene, { where: [hour], minutes, date }: Point, ends: boolean): Calls['callChoices'] {
  const own = times.find(({ start }) => start === hour?.start);
  if (!own) return undefined;
  const window =
    own.to &&
    ARRIVES_BETWEEN.test(text.slice(Math.max(0, own.start - LEAD), own.start)) &&
    (own.to.minutes - own.from.minutes + 720) % 720 <= WINDOW;
  const other = window
    ? own
    : [...times, ...numbers].find(
        (one) =>
          one !== own &&
          Math.max(one.start - own.end, own.start - one.end) <= OR_REACH &&
          !OF_ELSE.has(one.said) &&
          one.said !== (ends ? 'call' : 'wrap') &&
          // "9 to 4 or 5": of the end.
          (ends || (own.to !== undefined) === (one.to !== undefined)) &&
          [OR_ELSE, OTHERS_SAY, ...(IF_AFTER.test(text.slice(Math.max(own.end, one.end)).slice(0, OR_REACH)) ? [IF_THIS] : [])].some((or) =>
            or.test(text.slice(Math.min(own.end, one.end), Math.max(own.start, one.start)).replace(BRACKET, '')),
          ),
      );
  if (!other)
    // "if you can come to the rehearsal it is perfect, but if not then at 18:30"
    return !ends && IF_NOT.test(text.slice(Math.max(0, own.start - OR_REACH), own.start))
      ? { walls: [wallOf(date, minutes)], where: own, why: 'day' }
      : undefined;
  const { minutes: told, open } = ((ends || window) && other.to) || other.from;
  const otherwise = open && told < 720 && minutes >= 720 ? told + 720 : told;
  return { walls: [...new Set([minutes, otherwise])].map((one) => wallOf(date, one)), where: other, why: 'day' };
}
const OR_REACH = 64;
const IF_NOT = /\b(?:if not|otherwise|failing that|if that's (?:too early|not possible)|if you can't)\b[^.;!?\n\d]{0,28}$/i;
const OR_ELSE =
  /^[^.;!\n\d]*?(?:^|[\s,(])(?:or|otherwise|else|oder|sonst|ou(?: bien)?|sinon|o|si no|anders|oppure|altrimenti)[\s,]+(?:(?:(?:else|maybe|perhaps|even|if not|first|erst|only|for|at|by|from|around|about|as late as|um|ab|à|dès|a|las|alle|om|vanaf)\s){0,4}|(?:[^\s.,;:!?\d]{1,14}\s){1,4}(?:at|from|um|ab|à|dès|a las|alle|dalle|om|vanaf)\s)$/iu;
/** "it is 7h00 if they give us the hall, 9h00 if it is the small room" */
const IF_THIS =
  /^,? (?:if|in case|should|provided) (?!(?:you|u) (?:could|can|would|might)\b)[^.;!?\n\d]{2,60}[,;]? ?(?:(?:and|but|or|else) )?(?:(?:it's|it is|at|for|from|by|make it|then) ){0,2}$/i;
const IF_AFTER = /^,? (?:if|in case|should|otherwise|provided)\b(?! (?:you|u) (?:could|can|would|might)\b)/i;
/** "(€500)": what a choice costs. */
const BRACKET = /\([^()\n]{0,30}\)/g;
/** "my husband says ten, I say eleven" */
const OTHERS_SAY =
  /^,? (?:but |and |while |whereas )?(?:i|we|he|she|they|(?:my|our|the|his|her) \p{L}+)(?:'d| would|'m| am)? (?:says?|thinks?|reckons?|prefers?|votes?|saying|thinking)(?: (?:it's|its|at|for|until|till|more|like|rather|about|around)){0,2} $/iu;
/** An arrival in a window of time. */
const ARRIVES_BETWEEN =
  /\b(?:arriv\w+|come|turn up|show up|get (?:there|here|in)|be (?:there|here|in|with us)|access|load[- ]?in|set(?:ting)?[- ]?up|check in|report|meet|call|start|any ?time|some(?:time|where)|done|finish\w*|wrap|out|leave|free|home)\b[^.;,\n]{0,12}\bbetween $/i;
const WINDOW = 2 * 60;
