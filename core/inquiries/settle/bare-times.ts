/**
 * Which bare numbers are hours: "call at 8", "9.30 til 4.30", but not "two evening panels".
 */
import { cuesIn, type Cue } from '../said/cues.ts';
import { settledPair, type TimeMention } from '../times/find.ts';
import { TO_NUMBER } from './nearest.ts';
import type { DateMention, Where } from './scene.ts';

export const UNTIL =
  /(?<!\p{L})(?:until|till|til|thru|through|bis|jusqu'à|jusqu'au|hasta|tot|fino (?:alle|a))\s(?:about |around |ca\.? |circa |etwa |gegen |um |las? |alle |ongeveer |vers )*$/iu;

/** True where a bare number is an hour by what stands around it; `hit` is what it would be said of. */
export function bareTime(
  text: string,
  time: TimeMention,
  piece: Where,
  hit: { cue: Cue | undefined; after: boolean },
  date: DateMention | undefined,
  built: Cue | undefined,
): boolean {
  const written = text.slice(time.start, time.end);
  const follows = text.slice(time.end, time.end + FOLLOWS_REACH);
  if (
    !/\d/.test(written) &&
    !time.to &&
    (COUNTS_NEXT.test(follows) || (/^one$/i.test(written) && ONE_OF.test(text.slice(Math.max(0, time.start - 24), time.start))))
  )
    return false;
  // "out by 1700 on day two"
  if (
    !time.to &&
    /^(?:one|two|three|four|five|six|seven|[1-7])$/i.test(written) &&
    /\bday $/i.test(text.slice(Math.max(0, time.start - 5), time.start))
  )
    return false;
  // "In 2025 we had a nephew"
  if (
    /^(?:19[5-9]|20[0-4])\d$/.test(written) &&
    /\b(?:in|since|of|for|the|year|from)\s$/i.test(text.slice(Math.max(0, time.start - 8), time.start))
  )
    return false;
  if (built === 'call' || built === 'wrap') return time.from.minutes >= 60;
  // "Reply by 15 Jan 1200"
  if (
    (time.from.military || /^\d{1,2}\.\d\d$/.test(written)) &&
    (date?.said === 'reply' || date?.said === 'call' || date?.said === 'wrap') &&
    /^[\s,]{0,2}(?:(?:at|from|by|um|ab|à|om) )?$/.test(text.slice(date.end, time.start))
  )
    return true;
  if (!time.to && date?.said === 'reply' && AFTER_DAY.test(text.slice(date.end, time.start)) && HOUR_ENDS.test(follows))
    return time.from.minutes >= 60;
  if (time.to) {
    const lead = text.slice(Math.max(0, time.start - 24), time.start);
    if (
      /(?:^|[.,;:?!\n(])\s*$/.test(lead) &&
      /^\s*(?:[.,;)\n]|$)/.test(text.slice(time.end, time.end + 3)) &&
      settledPair(time.from, time.to) &&
      time.from.minutes >= 6 * 60
    )
      return true;
    // "9.30 til 4.30"
    if (
      (/\b(?:til|till|until)\b/i.test(text.slice(time.start, time.end)) ||
        (/\bto\b/i.test(text.slice(time.start, time.end)) && time.from.minutes % 60 !== 0)) &&
      settledPair(time.from, time.to)
    )
      return true;
    const tail = text.slice(time.end, time.end + 24);
    // "for you it'd be nine until two", "you're on 8 to 6"
    if (settledPair(time.from, time.to) && OF_ME.test(lead)) return true;
    return (
      /\b(?:from|hours?|times?|between|btwn?)\s?:?\s$/i.test(lead) ||
      /^\s?(?:each|every|both|all|daily|on (?:the|both)|per day|\(?local)/i.test(tail) ||
      hit.cue === 'call' ||
      hit.cue === 'show' ||
      (date !== undefined && /^[\s,:(@-]*$/.test(text.slice(date.end, time.start)) && date.end <= time.start)
    );
  }
  // "I'd suggest 5.30 for you."
  if (/^ for (?:you|the crew)\b(?! to\b)/i.test(follows) && /^\d{1,2}[.:][0-5][05]$/.test(written)) return true;
  // "two one eight five": a telephone number that is spoken.
  if (SPOKEN_DIGITS.test(text.slice(time.end, time.end + 14))) return false;
  const before = text.slice(piece.start, piece.end);
  // "9a both days til 6"
  if (
    UNTIL.test(before) &&
    time.from.minutes >= 60 &&
    /^\s?(?:$|[,.;)\n$£€]|\d{3}|(?:ish|or so|or thereabouts|please|pls|if|so)\b)/.test(text.slice(time.end, time.end + 18))
  )
    return true;
  // "from 14.00", "done 10.45"
  if (
    /^\d{1,2}\.[0-5][05]$/.test(written) &&
    (/\b(?:at|from|by|till|til|until)\s$/i.test(before) || (hit.cue === 'wrap' && /\b\p{L}+\s$/u.test(before))) &&
    !/^ ?(?:[%€$£]|each|per|an?\b|for\b|or\b|\d)/i.test(follows)
  )
    return true;
  const last = cuesIn(text, piece.start, piece.end, true)[0];
  if (hit.after && /\d/.test(text[time.start] ?? '') && (hit.cue === 'call' || hit.cue === 'wrap' || hit.cue === 'show'))
    return time.from.minutes % 60 === 0 || time.from.minutes >= 60;
  if (!last || !(last.cue === 'call' || last.cue === 'wrap' || last.cue === 'show' || last.cue === 'reply')) return false;
  const gap = before.slice(last.end);
  const reply = last.cue === 'reply' || last.cue === 'show';
  if ((last.cue === 'call' || last.cue === 'wrap') && /^[\s\w'-]{0,30}\b(?:by|at)\s*$/.test(gap)) return true;
  if (last.cue === 'call' && /^[\s\w'-]{0,30}\b(?:for|from|around|about)\s*$/.test(gap) && HOUR_ENDS.test(follows)) return true;
  return TO_NUMBER.test(gap) && (!reply || /\b(?:at|by|before)\s*$/i.test(before));
}

const FOLLOWS_REACH = 24;
/** "by Friday at 3", "tomorrow arvo, 3 at the latest", "tonight before 9", "entro mercoledì alle 18" */
const AFTER_DAY =
  /^(?: (?:morning|afternoon|arvo|evening|night|lunchtime))?(?:,? (?:at|by|before|latest|around|alle|à|om|um|kl\.?|a las?|before|vor|avant)|,)?\s$/i;
const HOUR_ENDS =
  /^(?:\s?(?:$|[.,;:!?)\n–](?!\d))|,? (?:o ?'?clock|sharp|latest|at (?:the )?latest|please|pls|if|or|and|so|because|cos|as|when|else|your time|my time|uhr|uur|uhr)\b)/i;
/** "two evening panels": a number before a word that may be counted. */
const COUNTS_NEXT =
  /^ (?!(?:and|or|but|so|on|at|in|until|till|til|to|for|sharp|please|pls|if|when|with|then|local|today|tomorrow|tonight|this|that|next|each|every|both|all|as|because|before|after|is|was|the|you|we|i|she|he|they|it|no|latest|prompt|ish|mon|tue|wed|thu|fri|sat|sun|first|start|finish|end|call|load|out|done|off|from|by|the|of|if|since|or|though|thirty|fifteen|forty|o|am|pm|bst|gmt|depending|max|wrap|rig|set|doors|at|home|clean|clear|exactly|precisely|mark|uhr|uur|und|et|y|en|e|do|is|da|bis|pour|para|per|zijn|hemos|\p{L}+day)(?!\p{L}))\p{Ll}{3,}/u;
/** "the Sunday one", "a big one", "this one" */
const ONE_OF = /\b(?:the|a|an|this|that|which|each|every|another|no|last|other|only|first|second) (?:\p{L}+ )?$/iu;
const SPOKEN_DIGITS = /^ (?:one|two|three|four|five|six|seven|eight|nine|oh|zero)\b/i;

/** "you'd work ", "for you it'd be ", "u wud b needed " */
const OF_ME = /(?<!\b(?:see|call|ring|thank|with|pay|give|send) )\b(?:you|u|ya|yous|you'd|you're|you'll|your)\b[\p{L}' ]{0,18}[\s:]$/iu;
