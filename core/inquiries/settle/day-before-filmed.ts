/**
 * What is to be filmed on the day before or after the one that is named: "the show opens on 14 January. Could you film the preview the evening before?",
 * "Could you film our rehearsal dinner? It's the evening before the wedding, which is on Saturday". Which of the days is asked about.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { numberWord } from '../words.ts';
import { askedDays, settledDay } from './days-among.ts';
import { FILM } from './day-of-run.ts';
import type { EventDays, Scene } from './scene.ts';

const PART = String.raw`(?:day|night|evening|afternoon|morning)`;
const BESIDE = new RegExp(
  String.raw`\b(?:(?:on )?the ${PART} (before|after)(?! (?:tomorrow|yesterday)\b)|on the (eve) of|(one|an?|two|three|four|five|six|seven|eight|nine|ten|\d{1,2}) (?:days?|nights?|evenings?|(weeks?|fortnight)) (before|after|earlier|later|beforehand)\b)`,
  'giu',
);
/** "film the preview", "a film of", "you'd be filming the" */
const FILM_IT = new RegExp(
  String.raw`\b(?:${FILM}(?: (?:of|the|our|my|his|her|their|a|an|just|only))+ |(?:need|want|like) (?:the|our|my) [^.;!?\n]{3,30} ${FILM}\b)[^.;!?\n]*$`,
  'iu',
);
const FILMED = new RegExp(
  String.raw`^[^.;!?\n]{0,36}\b(?:filmed|recorded|covered|captured|streamed|on film|on video|on camera|to film|to record|to cover)\b`,
  'iu',
);
/** "It's the evening before the wedding" */
const IT_IS = /^\s*(?:(?:it|that|this)(?:['’]s| is| will be|['’]ll be| takes place| happens)|which is)\s*(?:held )?$/iu;
const ASKED = new RegExp(String.raw`\b${FILM} (?:of )?(?:our|the|my|a|an|his|her|their)\b[^.;!?\n]*[.;!?]?\s*$`, 'iu');
/** "and the dinner the evening before" */
const THING = /\b(?:the|our|a|an) ([\p{L}'’-]{4,20})(?: is| takes place| will be| happens)?,?(?: on)? $/iu;
/** "with interviews the day before" */
const SHOTS =
  /\b(?:with|plus|and) (?:some |a few |the |short )*(?:interviews?|b-?roll|vox ?pops|portraits|pick-?ups|drone shots|filming|a shoot)(?: with [^.;!?\n]{2,30})?,? $/iu;
/** What is told then is of something else, or no longer open. */
const NOT_MINE =
  /\b(?:no|not|never|nothing|nobody|without|let (?:me|us) know|reply|answer|confirm\w*|call|ring|send|deliver\w*|edit\w*|upload\w*|photographer|rain|weather|last year|filmed by|both days|all)\b|n['’]t\b/i;
const REACH = 150;
const LOOKED_THROUGH = 6000;
const MOST_FOUND = 5;

/** The one day, or with the day beside it as a question where that is the one for the film. */
export function heldAgainstDayBeforeFilmed({ text }: Scene, event: EventDays): EventDays {
  const day = settledDay(event);
  if (day === undefined) return event;
  for (const found of [...text.slice(0, LOOKED_THROUGH).matchAll(BESIDE)].slice(0, MOST_FOUND)) {
    const [words, side, eve, count, weeks, far] = found;
    const { start, end } = sentenceAround(text, found.index, found.index + words.length);
    const told = event.where.findLast((one) => one.end <= found.index && one.end > start)?.end ?? start;
    const [lead, rest] = [text.slice(told, found.index), text.slice(found.index + words.length, end)];
    if (NOT_MINE.test(text.slice(start, end))) continue;
    const before = text.slice(Math.max(0, start - REACH), start);
    const thing = THING.exec(lead)?.[1];
    const mine =
      FILM_IT.test(lead) ||
      SHOTS.test(lead) ||
      (FILMED.test(rest) && !event.where.some((one) => one.start >= found.index && one.end <= end)) ||
      (IT_IS.test(lead) && ASKED.test(before)) ||
      (thing !== undefined && filmsIt(before, thing));
    if (!mine) continue;
    const days = count === undefined ? 1 : (numberWord(count.toLowerCase()) ?? Number(count)) * unitOf(weeks);
    const back = eve !== undefined || /^(?:before|earlier|beforehand)$/i.test(side ?? far ?? '');
    const other = Temporal.PlainDate.from(day)
      .add({ days: back ? -days : days })
      .toString();
    return askedDays(event.where, [[other], [day], [other, day].toSorted()], 'open');
  }
  return event;
}

const unitOf = (weeks: string | undefined): number => (weeks === undefined ? 1 : /^week/i.test(weeks) ? A_WEEK : 2 * A_WEEK);
const A_WEEK = 7;

/** "Could you film the welcome dinner?" before the sentence that tells its day. */
const filmsIt = (before: string, thing: string): boolean =>
  new RegExp(String.raw`\b${FILM}\b[^.;!?\n]{0,30}(?<!\p{L})${thing}(?!\p{L})`, 'iu').test(before);
