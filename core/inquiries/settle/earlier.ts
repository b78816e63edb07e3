/**
 * A call that is told from another hour: "an hour before doors at 7", "the press come at 11, we want you half an hour before".
 */
import { sentenceAround } from '../parts/sentences.ts';
import type { SaidTime, Scene, Where } from './scene.ts';

const AHEAD =
  /\b(a quarter of an|three quarters of an|an?|one|two|three|four|half an|an? (?:good |full )?half|one and a half|an hour and a half|ninety|sixty|forty-?five|thirty|twenty|fifteen|\d{1,3}) ?(?:full |good )?(hours?|hrs?|h|mins?|minutes?)?,? (?:before(?:hand)?|earlier|prior|early|ahead|in advance|(?:to|for) (?:set(?:ting)?[- ]?up|rig(?:ging)?))\b/gi;
/** Said of the crew, not of the guests. */
const OF_ME =
  /\b(?:you|u|crew|cameras?|operators?|arrive|arrival|be there|be here|be in|get there|get here|with us|call|load(?:ed)?[- ]?in|on[- ]?site|on (?:the )?premises|set(?:ting)?[- ]?up|set|rig(?:ging)?|ready|access|come|turn up|show up|get in|get-in)\b/i;
/** Whose coming it is, from the beginning of the clause; "we open the doors" tells of guests as well. */
const OF_OTHERS =
  /^\s*(?:and |but |so |then )?(?:we(?:'ll| will)? open )?(?:(?:the|our|my|all|most|some) )*(?:\p{L}+ )?(?:guests?|delegates|attendees|audience|parents|press|media|bride|groom|players|teams?|runners|speakers?|people|folks?|everyone|everybody|visitors|families|kids|children|band|dj|choir|cast|caterers?|florist|photographer|staff|volunteers|stewards|doors|bar|house|registration opens)\b/iu;
/** Where I am named as well, or told what to do, it is not of others alone. */
const ME_TOO = /\b(?:you|u|crews?|cameras?|video\w*|come and|please|film\w*)\b/i;
const AND_ME =
  /\b(?:and|including|incl\.?|plus|like|so (?:should|must|do|will|would|can)|as (?:should|must|do|will|would)) (?:you|u|the crew|crew|video)\b(?![^.;!?\n]{0,24}(?:\d|hour|minute|half|quarter))|\b(?:you|crew) (?:too|included|as well)\b/i;
const CLAUSE = /[.;:!?(\n]|,\s/;
const SUBJECT_BEGINS = /\b(?:and|but|while)\s(?=(?:the|our|my|all)\s)/i;
/** "coverage from two hours before the ceremony", "filming starts an hour before" */
const OF_FILMING =
  /\b(?:coverage|filming|recording|shooting)(?: (?:to|will|would|should|can))?(?: (?:starts?|starting|begins?|beginning|needed|wanted|required))*(?: (?:from|at|about|around))* $/i;
const counts = new Map([
  ['a', 1],
  ['an', 1],
  ['one', 1],
  ['two', 2],
  ['three', 3],
  ['four', 4],
  ['half an', 0.5],
  ['a quarter of an', 0.25],
  ['three quarters of an', 0.75],
  ['one and a half', 1.5],
  ['an hour and a half', 1.5],
  ['fifteen', 15],
  ['twenty', 20],
  ['thirty', 30],
  ['forty-five', 45],
  ['fortyfive', 45],
  ['sixty', 60],
  ['ninety', 90],
]);
/** "Nepal is fifteen minutes ahead of you", "3:30 Newfoundland time, so half an hour earlier" */
const OF_CLOCKS = /\b(?:ahead|behind|earlier) (?:of|than) (?:you|us|here|there|yours?|ours?)\b|\btime zones?\b|\p{Lu}\p{L}+ time\b/u;
/** More before is another day's work, not an hour told from this one. */
const LONGEST_AHEAD = 5 * 60;

/** `open` where the hour is another one than stands beside it, or that one, and nobody can tell. */
export type Earlier = { where: Where; minutes: number; base: SaidTime | undefined; open?: true };

/** How many minutes before which hour the crew is wanted; the hour is missing where more than one could be meant. Nothing where no such words are said. */
export function earlierCall(scene: Scene): Earlier | undefined {
  let theirs: number | undefined;
  for (const match of scene.text.matchAll(AHEAD)) {
    const where = { start: match.index, end: match.index + match[0].length };
    const sentence = sentenceAround(scene.text, where.start, where.end);
    const lead = scene.text.slice(sentence.start, where.start);
    const clause = lead.split(CLAUSE).at(-1) ?? '';
    if (
      OF_OTHERS.test(clause.split(SUBJECT_BEGINS).at(-1) ?? '') &&
      !ME_TOO.test(clause) &&
      !AND_ME.test(scene.text.slice(where.end, sentence.end))
    ) {
      theirs = sentence.start;
      continue;
    }
    if (!OF_ME.test(scene.text.slice(sentence.start, sentence.end)) && !OF_FILMING.test(lead)) continue;
    const count = counts.get((match[1] ?? '').toLowerCase()) ?? Number(match[1]);
    if (OF_CLOCKS.test(scene.text.slice(sentence.start, Math.min(sentence.end, where.end + 16)))) continue;
    // "it's an early one" tells no hour.
    if (match[2] === undefined && !/hal[fv]/i.test(match[1] ?? '')) continue;
    const unit = (match[2] ?? 'h').toLowerCase();
    const minutes = unit.startsWith('m') ? count : count * 60;
    if (!(minutes > 0) || minutes > LONGEST_AHEAD) continue;
    const hour = hourMeant(scene, where, sentence);
    // "two hours before doors (7pm)": of the doors or the call itself.
    const base = hour && hour.start >= where.end && scene.text[hour.start - 1] === '(' ? undefined : hour;
    // "doors an hour before, and you an hour before doors": told from what is itself told from an hour.
    if (theirs === sentence.start) return { where, minutes, base: undefined, open: true };
    // "an hour before the start, which is 10 am": of the start or the call itself.
    if (base && base.start >= where.end && WHICH_IS.test(scene.text.slice(where.end, base.start)))
      return { where, minutes, base: undefined, open: true };
    // "half an hour before the final, so 12:30": the hour is the call itself.
    const itself = base !== undefined && base.start >= where.end && SO.test(scene.text.slice(where.end, base.start));
    return { where, minutes: itself ? 0 : minutes, base };
  }
  return undefined;
}

/** Of a thing that is named right before it. */
const WHICH_IS = /\b(?:the|our|my) (?:\p{L}+ )?\p{L}+,? which (?:is|begins|starts)(?: about| around)? $/iu;
const SO = /(?:\b(?:so|i\.?e\.?|that is(?! at\b)|that's(?! at\b)|meaning|which is(?! at\b)|which makes it)\b[^.;]{0,12}|, at |= ?)$/i;
const AFTER_REACH = 48;

/** The hour right after the words, else the only hour of the sentence, else the only hour of the occasion. */
function hourMeant(scene: Scene, where: Where, sentence: Where): SaidTime | undefined {
  const free = scene.times.filter(
    (time) =>
      time.said !== 'reply' &&
      time.said !== 'delivery' &&
      time.said !== 'other' &&
      time.said !== 'past' &&
      time.said !== 'wrap' &&
      !time.until,
  );
  // "before we go live at 10"
  const following = scene.times.find((time) => time.start >= where.end);
  const next = [...free, ...scene.times.filter(({ said, date }) => said === 'delivery' && !date)].find(
    (time) => time === following && time.start - where.end <= AFTER_REACH && time.end <= sentence.end + 1,
  );
  if (next) return next;
  const same = free.filter((time) => time.start >= sentence.start && time.end <= where.start);
  if (same.length === 1) return same[0];
  return same.length === 0 && free.length === 1 ? free[0] : undefined;
}
