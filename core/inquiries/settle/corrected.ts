/**
 * Hours that take the place of the one told before them: "call 8am, no sorry, 7:30", "until 4pm. Correction: until 5pm", "not at 4 but at 3 pm".
 */
import type { Cue } from '../said/cues.ts';
import type { SaidTime } from './scene.ts';

/** What takes back the hour before it, at the end of which another one stands. */
const TAKES_BACK =
  /(?<!\p{L})(?:(?:no|wait|oops|whoops|ach|er|erm|hang on|hold on),? )?(?:(?:no|oh),? (?:wait|sorry)|wait,? no|sorry|sry|soz|apologies|pardon|scratch that|scrap that|strike that|cancel that|forget that|ignore that|i tell a lie|my mistake|correction|corrected|edit|i mean|i meant|i should say|or rather|rather|actually|make (?:it|that)|better (?:make|say)|s\/b|should (?:be|read)|(?:it's|it is|is|that's|that is|which is) now|now|instead(?! of)|but|nein|entschuldigung|korrektur|besser gesagt|ich meine|pardon|désolée?|plutôt|je veux dire|rectificatif|perdón|perdona|digo|mejor dicho|corrección|scusa|anzi|sorry|correctie|ik bedoel)(?!\p{L})/giu;
/** What may stand beside it: small words that lead to an hour, and words for one. */
const SMALL =
  /(?<!\p{L})(?:p\.? ?s|no|not|so|at|by|from|for|until|till|til|to|about|around|with|this|which|really|of course|that|that's|it|it's|is|be|let's|say|call|time|wrap|start|end|finish|come|the|a|please|pls|you|and|then|both|each|every|days?|mornings?|sharp|local|am|pm|better|ish|um|ab|bis|uhr|à|dès|las?|alle|om|doch)(?!\p{L})|[\s.,;:!?()*–-]/giu;
const UNTIL_THEN = /(?<!\p{L})(?:until|till|til|to|bis|jusqu'à|hasta|tot|fino)\s(?:\p{L}{2,6}\s)?$/iu;
/** "not at 4 but" */
const NOT_THE_FIRST = /(?:^|[\s,(])(?:not|isn't|never|nicht|pas|no|niet)(?: \p{L}{2,5})?\s$/iu;
const BUT = /^\s?,?\s?(?:but|sondern|mais|sino|maar|ma)(?!\p{L})/iu;
/** "was 8am, it's now" */
const WAS = /(?<!\p{L})(?:was|used to be|moved|changed|had|said|wrote)(?: \p{L}{2,5}){0,2}\s$/iu;
/** "[10:06] Dana:", "Dana:" */
const STAMP = /\n\s*(?:\[\d{1,2}:\d\d(?::\d\d)?\][^:\n]{0,30}|\p{Lu}\p{Ll}{1,14}):/gu;
/** "8am (was 9am)", "corrected from 9am", "instead of 9", "7 now, not 9": the second is the one that no longer holds. */
const FORMERLY =
  /^\W*(?:(?:and|which|it|that|now,?) )?(?:(?:has |have )?(?:been |is |are )?(?:corrected|changed|moved|up|brought forward|pushed back|put back|down|back|amended|altered) from|was|were|previously|formerly|originally|used to be|instead of|rather than|not|no longer|und nicht|nicht|statt|et non|et pas|pas|au lieu de|y no|no|en lugar de|e non|invece (?:di|delle)|niet|in plaats van)\s(?:(?:at|the|um|à|a|las|alle|om)\s){0,2}$/iu;
const NEEDN_T =
  /\b(?:needn't|no need to|(?:don't|do not|won't) (?:have|need) to|not|don't) (?:come|be (?:there|here|in)|arrive|turn up|show up|get (?:there|here|in)|start|report) (?:at|for|by) $/i;
const BUT_AT = /^[^.;!?\n\d]{0,60}\bbut (?:at|for|by|from|only at) $/i;
/** "half five will do" */
const WILL_DO =
  /^(?: [ap]\.?m\.?)? (?:will|would|should) (?:do|be (?:fine|enough|plenty|ok|okay|early enough))\b|^(?: [ap]\.?m\.?)? (?:is|'s) (?:fine|enough|plenty|ok|okay|early enough)\b/i;
const AT_ONCE =
  /^(?:,? (?:on|in) (?:the|our|my|your) \p{L}+)?\W*(?:oops,? |oh,? )?(?:no,? (?:wait|sorry)|sorry,? no|wait,? no|scratch that|strike that|forget that|ignore that|correction|i tell a lie|my mistake)(?!\p{L})[^\n]*$/iu;
/** "we had planned on you arriving at 8; it is 9 now", "the call was 8 but is 9 now" */
const WAS_THEN =
  /\b(?:had|have|originally|first|initially|previously|earlier) (?:planned|said|told|thought|hoped|put|written|wrote|wanted|asked)\b[^.;!?\n\d]{0,40}$|\b(?:was|were|used to be|i said|we said|i wrote|we wrote|i told)\b(?: [\p{L}']{1,12}){0,4} $/iu;
const IS_NOW =
  /^\s?[,;.–-]?\s?(?:(?:but|and|though) )?(?:(?:it|that|this|call|the call|now)(?: time)? ?)?(?:'s|is|be|should be|has to be)(?: now| actually)?(?: at| rather)? $/iu;
/** "old plan had you from 2, new plan has you from 3.30 to 7" */
const PLAN = '(?:plan|schedule|version|call ?sheet|timings?)';
const OLD_PLAN = new RegExp(String.raw`\b(?:old|previous|earlier) ${PLAN} (?:had|has|wanted) (?:you|u)\b[^.;!?\n\d]{0,16}$`, 'i');
const NEW_PLAN = new RegExp(
  String.raw`^[\s,;.–-]{0,3}(?:(?:but|and) )?(?:the |our )?new (?:${PLAN}|one) (?:has|wants) (?:you|u)\b[^.;!?\n\d]{0,16}$`,
  'i',
);
/** "but it has moved to", "we've since changed it to" */
const MOVED_TO =
  /^\s?[,;.–-]?\s?(?:(?:but|and|though) )?(?:it|that|this|they|we|the call|the start)(?:'s|'ve| has| have| is)?(?: since| now| been)* (?:moved|changed|shifted|slipped|gone|pushed|put|brought)(?: (?:it|that|this))?(?: (?:back|forward|up|on))? to $/iu;
const NOW = /^(?: ?[ap]\.?m\.?)? (?:now|instead|after all)\b/i;
/** "The call moves from 8 to 9", "your start has been pushed back from 8 am to 9 am": the second of what looks like hours from and to. */
const MOVES_FROM =
  /\b(?:(call|start|arrival|load-?in|get-?in|set-?up|access)|(wrap|finish|end|release))(?: time)?(?:'s|(?: (?:has|have|is|was|will|been|being|be|now|just|had|to))*) (?:moves?|moved|moving|shift(?:s|ed)?|change[sd]?|changing|(?:pushed|pulled|moved)(?: (?:forward|back|up|on|out))?|(?:brought|put|goes|gone) (?:forward|back|up|on|out))(?: (?:forward|back|up|on|out))?(?: (?:by )?(?:half an|an|one|two) hours?(?: (?:later|earlier))?| by \d+ min(?:ute)?s?)?,? from $/i;
const LONGEST_TAKING_BACK = 90;
const LONGEST = 48;
const LEAD = 24;

type Change = 'instead' | 'come' | 'end' | 'formerly' | undefined;

/** Whether a time takes the place of the one before it: of all of it, or only of its end. */
function changeOf(text: string, old: SaidTime, time: SaidTime): Change {
  const between = text.slice(old.end, time.start).replace(STAMP, '\n');
  // "at 9, no sorry, the gate isn't open till half past"
  const same = time.said === old.said || time.said === undefined;
  if (AT_ONCE.test(between) && MINE.has(old.said) && same && !old.to && !time.to && between.length <= LONGEST_TAKING_BACK) return 'instead';
  // "you needn't come at 12 as I'd told your voicemail but at 2"
  if (!old.to && !time.to && NEEDN_T.test(text.slice(Math.max(0, old.start - LONGEST), old.start))) {
    if (BUT_AT.test(between) || (/^[,;.:]? ?(?:but |and )?$/.test(between) && WILL_DO.test(text.slice(time.end, time.end + LEAD))))
      return 'come';
  }
  if (between.length > LONGEST || /\n\s*\n/.test(between)) return undefined;
  if (!old.to && OLD_PLAN.test(text.slice(Math.max(0, old.start - LONGEST), old.start)) && NEW_PLAN.test(between)) return 'instead';
  // "from 10am until 4pm. Correction: until 5pm"
  const end = old.to !== undefined && !time.to && UNTIL_THEN.test(between);
  if ((old.to !== undefined) !== (time.to !== undefined) && !end) return undefined;
  if (!time.to && FORMERLY.test(between)) return 'formerly';
  const said = text.slice(Math.max(0, old.start - LONGEST), old.start);
  if (
    !time.to &&
    WAS_THEN.test(said) &&
    (MOVED_TO.test(between) || (IS_NOW.test(between) && (/now|actually/i.test(between) || NOW.test(text.slice(time.end, time.end + LEAD)))))
  )
    return /\bcall\b/i.test(`${said}${between}`) ? 'come' : 'instead';
  const lead = text.slice(Math.max(0, old.start - LEAD), old.start);
  const rest = between.replace(TAKES_BACK, '');
  if (BUT.test(between) ? !NOT_THE_FIRST.test(lead) : rest === between) return undefined;
  if (/^\W*(?:now|is now|it's now|it is now)\W*$/i.test(between) && !WAS.test(lead)) return undefined;
  if (rest.replace(SMALL, '') !== '') return undefined;
  return end ? 'end' : 'instead';
}

const MINE = new Set<Cue | undefined>(['call', 'wrap']);
/** What the second may be said of by itself without being another hour: "call 8. Call is 7 now". */
const agrees = (old: SaidTime, time: SaidTime): boolean =>
  !MINE.has(time.said) || time.said === old.said || old.said === undefined || (old.to !== undefined && time.said === 'wrap');

/** The same hour, where one of them may leave the half of the day open. */
export const sameOnDial = (one: SaidTime['from'], other: SaidTime['from']): boolean =>
  one.minutes === other.minutes || ((one.open || other.open) && one.minutes % 720 === other.minutes % 720);

/** An hour of the dial nearest to the one whose place it takes. */
export function inItsHalf(old: SaidTime['from'], from: SaidTime['from']): SaidTime['from'] {
  if (old.open || !from.open) return from;
  const base = from.minutes % 720;
  const minutes = Math.abs(base - old.minutes) <= Math.abs(base + 720 - old.minutes) ? base : base + 720;
  return { ...from, minutes, open: false };
}

/** "moves from 8 to 9": only the hour to which it moves. */
function moved(text: string, time: SaidTime): SaidTime {
  const found = time.to && MOVES_FROM.exec(text.slice(Math.max(0, time.start - LONGEST_TAKING_BACK), time.start));
  if (!found || !time.to) return time;
  const { to, ...rest } = time;
  return { ...rest, from: inItsHalf(time.from, to), said: found[1] ? 'call' : 'wrap', until: false };
}

/** The times as they are after what the sender takes back; numbers that take an hour's place become hours. */
export function withCorrections(
  text: string,
  said: readonly SaidTime[],
  numbers: readonly SaidTime[],
): { times: SaidTime[]; numbers: SaidTime[] } {
  const left = new Set(numbers);
  const times: SaidTime[] = [];
  for (const one of [...said, ...numbers].toSorted((a, b) => a.start - b.start)) {
    const time = left.has(one) ? one : moved(text, one);
    const at = times.findLastIndex((one) => !left.has(one));
    const old = times[at];
    const change = old && old.end <= time.start && agrees(old, time) ? changeOf(text, old, time) : undefined;
    if (!old || !change) {
      times.push(time);
      continue;
    }
    if (change === 'formerly') {
      times.push(left.has(time) ? time : { ...time, said: 'past' });
      // It may have been told before: "you'd be in at 2pm ... scrap that, it's 1pm not 2".
      times.forEach((one, index) => {
        if (one.start >= old.start) return;
        if (one.to?.minutes === time.from.minutes) times[index] = { ...one, to: old.from };
        else if (!one.to && MINE.has(one.said) && old.said !== 'show' && sameOnDial(one.from, time.from)) {
          times[index] = { ...one, said: 'past' };
          if (!MINE.has(old.said) && !old.to)
            times[at] = { ...old, said: one.said, date: old.date ?? one.date, dayBefore: one.dayBefore, nthDay: old.nthDay ?? one.nthDay };
        }
      });
      continue;
    }
    left.delete(time);
    if (change === 'end') {
      const { to: _, ...begins } = old;
      times[at] = begins;
      times.push({ ...time, said: 'wrap', from: inItsHalf(old.to ?? old.from, time.from) });
    } else {
      times[at] = { ...old, said: 'past' };
      const { date, dayBefore, nthDay, until } = old;
      const cue = BUT.test(text.slice(old.end, time.start)) || !MINE.has(old.said) ? (time.said ?? old.said) : old.said;
      times.push({
        ...time,
        said: change === 'come' ? 'call' : old.said === 'past' ? time.said : cue,
        until: until || time.until,
        date: time.date ?? date,
        dayBefore: dayBefore || time.dayBefore,
        nthDay: time.nthDay ?? nthDay,
        from: time.to ? time.from : inItsHalf(old.from, time.from),
      });
    }
  }
  return { times: times.filter((time) => !left.has(time)), numbers: numbers.filter((time) => left.has(time)) };
}
