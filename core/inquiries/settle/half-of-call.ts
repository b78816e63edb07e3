/**
 * In which half of the day a call is that was said without morning or evening: by what else begins and ends on that day, and by what the job is.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { settledPair } from '../times/find.ts';
import { endsLate, LONGEST_DAY, LONGEST_SHIFT, SMALL_CALL } from './ends-late.ts';
import type { SaidTime, Scene, Where } from './scene.ts';

const EVENING_EVENT =
  /\b(?:evening|tonight|night|screening|premi[eè]re|hogmanay|fireworks|bonfire|sangeet|karaoke|cabaret|lock-in|dinner|gala|party|concert|gig|club|ball|awards|reception|quiz|disco|prom|ceilidh|banquet|supper|carols?|pub|pints|new year'?s eve|nye|countdown to midnight|band (?:is |goes |comes )?on(?! (?:the|a|offer|stage|all)\b)|burlesque|comedy|open mic|candlelit|torchlight|late)\b/i;
/** "Are you free tonight?" */
const TONIGHT =
  /\b(?:free|available|around|about|help(?: us| me)?(?: out)?|film\w*|shoot\w*|cover|record\w*|videographer|operator|cameraman|need\w*(?: you| someone| somebody)?) tonight\b/i;
/** Evenings by which an answer is wanted, and days that are over. */
const DEADLINE_EVENING =
  /\b(?:by|before|until|tomorrow|this|last) (?:the )?(?:evening|night|tonight)\b|\b(?:by|before) (?:\p{L}+day|tomorrow) (?:evening|night)\b|\b(?:by )?tonight\b|\blate(?:r|st|ly)\b/giu;
/** What begins before the day does; Dawn is also a name. */
const DAWN = /\b(?:[Ss]unrise|dawn|[Dd]aybreak|[Ff]irst light|Dawn [Ss]ervice)\b/;
/** "Crew starts at sunup, be here at 5:30": in the sentence of the hour, whatever the evening brings. */
const FROM_DAWN =
  /\b(?:[Ss]tarts?|[Ss]tarting|[Bb]egins?|[Bb]eginning|[Gg]oing|[Ww]ork(?:ing)?|[Tt]here|[Ff]rom)(?: (?:at|from))? (?:sun-?up|sunrise|dawn|daybreak|first light)\b(?![^.!?\n]*\b(?:but|until|next|tomorrow|evening|supper|dinner|dance|concert)\b)/;
/** What goes on past midnight. */
const LATE_NIGHT = /\b(?:club|disco|rave|nightclub|night|dj|after-?party|hogmanay|karaoke|lock-in)\b/i;
/** True for a job of an evening or a night, as far as its words tell. */
export const isEvening = ({ text }: Scene): boolean => EVENING_EVENT.test(text.replace(DEADLINE_EVENING, '')) || TONIGHT.test(text);

/** What goes on into the night, or from the morning into it: parties and weddings, as far as words tell. */
const INTO_THE_NIGHT =
  /\b(?:part(?:y|ies)|dances?|dancing|weddings?|bride|groom|married|marry|marries|dinner|gala|ball|banquet|reception|ceilidh|prom|disco|djs?|club night|nights?|overnight|midnight|after-?party|rave|karaoke|concerts?|bands?|festivals?|late|hochzeit|party|feier|mariage|boda|matrimonio|bruiloft|fiesta|shaadi|sangeet|cabaret|hogmanay|lock-in|marathon|24 ?h(?:ours?)?)\b/i;
export const goesLate = ({ text }: Scene): boolean => INTO_THE_NIGHT.test(text.replace(DEADLINE_EVENING, ''));

/** True for a job of this evening. */
export const isTonight = ({ text }: Scene): boolean => TONIGHT.test(text) && !MORNING.test(text);

/** What ends after midnight, unless it is held by day. */
const OVER_MIDNIGHT = /\b(?:new year'?s eve|nye|hogmanay|countdown to midnight)\b/i;
const BY_DAY = /\b(?:dip|swim|run|race|walk|lunch|matin[eé]e|rehearsal)\b/i;
export const goesOverMidnight = ({ text }: Scene): boolean => OVER_MIDNIGHT.test(text) && !LONG_DAYS.test(text) && !BY_DAY.test(text);
/** What is only held at night. */
const OF_NIGHT =
  /\b(?:club night|night-?club|disco|rave|djs?|after-?party|hogmanay|lock-in|warehouse party|(?<!by )new year's eve (?:party|do|bash|gig|ball))\b/i;
const TILL = /\b(?:til|till|until)\s$/i;
const NIGHT_ENDS = 5 * 60;
/** "club night 10 til 4, come at 9", "band on at 9, dj til 1, u can come 8" */
export const endsAtNight = ({ text, times }: Scene): boolean =>
  OF_NIGHT.test(text) &&
  times.some(({ said, from, to, until, start }) => {
    const end = to ?? (said === 'wrap' || until || TILL.test(text.slice(Math.max(0, start - 12), start)) ? from : undefined);
    return end?.open === true && end.minutes >= 60 && end.minutes <= NIGHT_ENDS && (!to || (from.open && from.minutes >= 8 * 60));
  });

/** "10 till 3" of a club night may be either half of the day. */
const lateNight = (time: SaidTime, scene: Scene): boolean => (time.to?.open === true && endsAtNight(scene)) || mayBeNight(time, scene);
const mayBeNight = ({ from, to }: SaidTime, { text }: Scene): boolean =>
  from.open &&
  to?.open === true &&
  from.minutes >= 8 * 60 &&
  from.minutes < 720 &&
  to.minutes < SMALL_CALL &&
  LATE_NIGHT.test(text.replace(DEADLINE_EVENING, ''));

/** Minutes of a call that was said without morning or evening; undefined where it could be either. Of several days an end that names none is of the last. */
export function openCall(time: SaidTime, scene: Scene, days: number): number | undefined {
  const minutes = time.from.minutes;
  if (!time.from.open) return ofSomeShow(time, scene) && !isEvening(scene) ? undefined : minutes % 1440;
  const beside = besideCall(time, scene);
  if (beside !== undefined) return beside;
  if (time.evening || time.dayBefore)
    return /\bmorning\b/i.test(clauseOf(scene.text, time)) ? minutes : minutes < 720 ? minutes + 720 : minutes;
  if (minutes >= 720) return minutes;
  const named = EVENING_NAMED.test(scene.text.slice(Math.max(0, time.start - NAMED_REACH), time.start));
  if (named && minutes >= 4 * 60 && minutes < MORNING_CALL && !MORNING.test(scene.text))
    return minutes < 7 * 60 ? minutes + 720 : undefined;
  if (minutes >= 3 * 60 && minutes < MORNING_CALL && FROM_DAWN.test(sentenceOf(scene.text, time))) return minutes;
  if (isTonight(scene) || (minutes >= 6 * 60 && endsAtNight(scene) && !MORNING.test(scene.text))) return minutes + 720;
  const evening = isEvening(scene);
  if (!evening && ofSomeShow(time, scene)) return undefined;
  if (!evening && minutes >= 3 * 60 && DAWN.test(scene.text)) return minutes;
  // "we need you from 5, it's a breakfast briefing"
  if (!evening && minutes >= 4 * 60 && minutes < 5 * 60 + 30 && BREAKFAST.test(scene.text)) return minutes;
  // "doors at 5 AM so be there 4:15"
  if (minutes >= 3 * 60 && beforeShow(minutes, scene) && !beforeShow(minutes + 720, scene)) return minutes;
  if (minutes >= 60 && (minutes < (evening ? 6 * 60 : 5 * 60 + 30) || beforeShow(minutes + 720, scene))) return minutes + 720;
  if (!evening && shortEvening(minutes, scene, time)) return minutes + 720;
  if (minutes >= 6 * 60 && minutes <= 11 * 60 + 59) {
    if (/\bmorning\b/i.test(clauseOf(scene.text, time)) || (!evening && BREAKFAST.test(scene.text))) return minutes;
    // "keynote at 9.30, you come at 8.30", "curtain 7.15, be in by 6"
    const half = halfOfShow(minutes, scene);
    const sameDay = days === 1 || !time.date?.sequence.items.some(({ atom }) => atom.day !== undefined);
    if (sameDay && endsLate(minutes, scene, evening && half === undefined ? LONGEST_DAY : LONGEST_SHIFT)) return minutes + 720;
    // "a party, be there for half seven, he comes at half eight, leave at eleven": no party begins with a day's work.
    if (
      sameDay &&
      evening &&
      half === 0 &&
      !LONG_DAYS.test(scene.text) &&
      !OF_A_DAY.test(scene.text) &&
      endsLate(minutes, scene, LONGEST_DAY)
    )
      return minutes + 720;
    if (evening && half === 0 && goesOverMidnight(scene)) return undefined;
    if (evening && half !== undefined) return minutes + half;
    // "get there 10ish, out by 1am": fifteen hours are a wedding's.
    if (sameDay && !evening && !LONG_DAYS.test(scene.text) && endsLate(minutes, scene, LONGEST_DAY)) return undefined;
    // "talks, all at 7.30 p.m. ... you could set up from 6"
    if (!evening && minutes < MORNING_CALL && eveningBeside(minutes, scene)) return undefined;
    // "come at 6, the show's at 8"
    if (!evening && minutes < 7 * 60 && beforeEvening(minutes, scene) && !MORNING.test(scene.text)) return undefined;
    // "the children sing at 10am, we need you from 9"
    return evening && !beforeShow(minutes, scene) && !beforeWrap(time, scene, evening) ? undefined : minutes;
  }
  return undefined;
}

/** "doors are at 6": what opens then opens for an evening. */
const EVENING_NAMED =
  /\b(?:doors|curtain|guests|dinner|drinks|gala|concert|gig|reception|ceilidh|disco|quiz|screening|party)(?:'s)?(?: (?:up|open|opens|is|are|arrive|arriving|begins?|starts?|at|from|for|served|around|about)){0,4}:? $/i;
const NAMED_REACH = 40;
/** "an hour before the show at 8": of an evening or, seldom, of a morning. */
const BEFORE_SHOW =
  /\b(?:before|prior to|ahead of) (?:the |our )?(?:show|performance|curtain(?: up)?)(?: (?:starts|begins|is|goes up))? at $/i;
const LATEST_SHOW = 10 * 60;
const ofSomeShow = ({ from, start, end }: SaidTime, { text }: Scene): boolean =>
  from.minutes < LATEST_SHOW &&
  /^[1-9](?:[:.]\d\d)?$/.test(text.slice(start, end)) &&
  BEFORE_SHOW.test(text.slice(Math.max(0, start - NAMED_REACH), start)) &&
  !MORNING.test(text);

/** "on the bandstand for 6, done at half eight": an evening, where the morning would be a day without an end. */
function shortEvening(minutes: number, scene: Scene, { date, nthDay }: SaidTime): boolean {
  if (minutes < 5 * 60 || minutes >= 8 * 60 || date || nthDay !== undefined || LONG_DAYS.test(scene.text)) return false;
  if (beforeShow(minutes, scene) || MORNING.test(scene.text)) return false;
  return scene.times.some(
    ({ said, from, date: on }) =>
      said === 'wrap' &&
      !on &&
      !from.open &&
      from.minutes - minutes - 720 >= SHORTEST_EVENING &&
      from.minutes - minutes > LONGEST_DAY &&
      from.minutes < 1440,
  );
}
const MORNING = /\b(?:morning|breakfast|sunrise|dawn|all[- ]day)\b|\d ?a\.?m\b/i;
const SHORTEST_EVENING = 60;

/** "set by 5, so get there 3.30am": an hour of the dial a little after another call. */
function besideCall({ from, date, start }: SaidTime, { times }: Scene): number | undefined {
  const calls = times.filter((one) => one.said === 'call' && !one.from.open && one.start !== start && one.date === date);
  const halves = [from.minutes % 720, (from.minutes % 720) + 720].filter((minutes) =>
    calls.some((one) => minutes > one.from.minutes && minutes - one.from.minutes <= LONGEST_SET_UP),
  );
  return halves.length === 1 ? halves[0] : undefined;
}

/** An hour of the evening before the doors of the same evening. */
const beforeShow = (minutes: number, { times }: Scene): boolean =>
  times.some(({ said, from, to }) => {
    if (said !== 'show' && said !== 'event' && said !== undefined) return false;
    const opens = to ? settledPair(from, to)?.from : from.open ? undefined : from.minutes;
    return opens !== undefined && opens >= minutes && opens - minutes <= LONGEST_SET_UP;
  });

/** An hour of the evening a little later that rules do not take for that of the show. */
const eveningBeside = (minutes: number, { times }: Scene): boolean =>
  times.some(
    ({ said, from }) => said === 'other' && !from.open && from.minutes >= minutes + 720 && from.minutes - minutes - 720 <= LONGEST_SET_UP,
  );
const MORNING_CALL = 8 * 60;

/** An hour a little before one that is told of doors, a show or a dinner, in whichever half of the day. */
const beforeEvening = (minutes: number, { text, times }: Scene): boolean =>
  times.some(
    ({ from, to, start }) =>
      !to &&
      from.open &&
      from.minutes > minutes &&
      from.minutes < MORNING_SHOW &&
      from.minutes - minutes <= LONGEST_SET_UP &&
      [EVENING_NAMED, SHOW].some((named) => named.test(text.slice(Math.max(0, start - NAMED_REACH), start))),
  );
const SHOW = /\bshow(?:'s|time)?(?: (?:is|starts?|begins?|at|from)){0,2}:? $/i;

/** Which half of the day a show without one is in, by when shows begin: from half past eight in the morning, until then in the evening. */
function halfOfShow(minutes: number, { text, times }: Scene): 0 | 720 | undefined {
  const shows = times.flatMap(({ said, from }) =>
    (said === 'show' || said === undefined) && from.open && from.minutes > minutes && from.minutes - minutes <= LONGEST_SET_UP
      ? [from.minutes]
      : [],
  );
  const halves = new Set<0 | 720>(shows.map((begins) => (begins >= MORNING_SHOW ? 0 : 720)));
  // "get in at 7, doors at 8, show at 9": the doors of an evening tell of the show as well.
  if (halves.size === 2 && Math.min(...shows) < MORNING_SHOW && /\bdoors\b/i.test(text)) return 720;
  return halves.size === 1 ? [...halves][0] : undefined;
}
/** Of what goes on from the morning into the night. */
const LONG_DAYS =
  /\b(?:wedding|bride|bridal|groom|marry|married|prep|getting ready|morning|breakfast|all day|festival|shaadi|hochzeit|trauung|boda|mariage|matrimonio|bruiloft|trouw\w*)\b/i;
/** A breakfast that is itself the occasion. */
const BREAKFAST =
  /(?<!wedding )\bbreakfast (?:briefing|meeting|talk|seminar|event|launch|session|debate|forum|panel|lecture|round ?table|conference|networking|club|gathering)\b/i;
/** What opens in the morning, whatever ends it. */
const OF_A_DAY = /\b(?:conference|congress|sessions?|opening|keynote|tournament|fair|expo|rehearsal)\b/i;
const MORNING_SHOW = 8 * 60 + 30;
const LONGEST_SET_UP = 5 * 60;

/** "nine o'clock start, home by six": a morning hour where its evening would come after the end of the day. */
const beforeWrap = ({ from: { minutes }, date }: SaidTime, { times }: Scene, evening: boolean): boolean =>
  times.some((end) => {
    if ((end.said !== 'wrap' && !end.until) || (end.date !== undefined && end.date !== date)) return false;
    const [base, { open }] = [end.from.minutes, end.from];
    // "come for seven, free to go at half twelve": of a ceilidh that is past midnight.
    const out = open ? (base < 4 * 60 || (base >= 720 && evening) ? undefined : (base % 720) + 720) : base;
    return out !== undefined && out > minutes && out <= minutes + 720;
  });

const sentenceOf = (text: string, where: Where): string => {
  const { start, end } = sentenceAround(text, where.start, where.end);
  return text.slice(start, end);
};
const clauseOf = (text: string, where: Where): string => text.slice(Math.max(0, where.start - 40), where.end + 30);

/** "half six till ten" at a dinner. */
function eveningPair({ from, to }: SaidTime, scene: Scene): { from: number; to: number } | undefined {
  if (!from.open || !to?.open || from.minutes < EVENING_FROM || from.minutes > EVENING_TO || to.minutes <= from.minutes) return undefined;
  if (to.minutes < LATE || /\b(?:morning|breakfast|sunrise|dawn|am)\b/i.test(scene.text)) return undefined;
  return isEvening(scene) ? { from: from.minutes + 720, to: to.minutes + 720 } : undefined;
}
const [EVENING_FROM, EVENING_TO, LATE] = [5 * 60, 8 * 60, 9 * 60];

/** Both ends of hours from and to; nothing where either half of the day may be meant. */
export const pairOf = (time: SaidTime, scene: Scene): { from: number; to: number } | undefined =>
  !time.to || lateNight(time, scene) ? undefined : (settledPair(time.from, time.to) ?? eveningPair(time, scene));
