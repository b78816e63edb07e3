/**
 * Hours from and to of the occasion that are all that is told of it, beside a call of mine: "the ceremony is 2 o'clock to 3.45, you can get in from 1",
 * "racing 7.30am to 4.30pm daily". My work ends with them.
 */
import { tellsOfAside } from '../said/tells-of.ts';
import { OF_ELSE } from './days-among.ts';
import type { SaidTime, Scene, Where } from './scene.ts';

/** "dinner from 7 to 9, then dancing" */
const THEN_MORE =
  /^,? ?(?:(?:and|with) )?(?:then|followed by|before (?:the|a|an|we)|after which|afterwards|after that)\b(?!,? (?:(?:you|u|we|everyone|everybody|it|that|all)\b|nothing|home|free|done|wrap|out|strike|pack|de-?rig|load))/i;
const BESIDE = 40;

/** True where something follows the hours: they are not the end of the day. */
export const goesOnBehind = (text: string, { end }: Where): boolean => THEN_MORE.test(text.slice(end, end + BESIDE));

/** What only leads to the occasion or is a part of it, and what is open by hours of its own. */
const PART =
  /(?<!\p{L})(?:registration|rehears\w*|sound ?checks?|line ?check|set-?up|setting up|rig(?:s|ging)?|build\w*|breaks?|interval|doors|check-?in|warm-?ups?|cocktail hour|happy hour|parking|access|load\w*|bar|shop|office|café|kitchen|hair|make-?up|prep(?:s|aration)?|install\w*|arrivals?|window|slot|somewhere|some ?time|any ?time|photos?|portraits?|show)\s(?:(?:is|are|runs?|goes|be|will be|from|between|on|open|opens?|at|:)\s){0,3}$/iu;
/** Whose hours they are where these are named with them. */
const OTHERS_HOURS =
  /(?<!\p{L})(?:photographers?|photo ?booth|magicians?|painters?|hairdressers?|mayor|minister|guests?|parents|kids|children|visitors|traders?|exhibitors?|volunteers?|staff|security|caterers?|caretaker)(?!\p{L})[^.;,!?\n]*$/iu;
/** So long behind the end something else of the day may begin. */
const GOES_ON = 4 * 60;

/** True for hours of an occasion after which nothing more is told: "the ceremony is 2 o'clock to 3.45", "racing 8 till about 1pm". */
export function isWhole({ text, times, numbers }: Scene, hours: SaidTime, end: number): boolean {
  if (
    tellsOfAside(text, hours.start) ||
    [PART, OTHERS_HOURS].some((one) => one.test(text.slice(Math.max(0, hours.start - BESIDE), hours.start)))
  )
    return false;
  const minutes = ({ from }: SaidTime): number => (from.open ? (from.minutes - end + 1440) % 720 : (from.minutes - end + 1440) % 1440);
  return ![
    ...times.filter(({ said }) => !OF_ELSE.has(said) && said !== 'call'),
    ...numbers.filter(({ from }) => from.minutes % 15 === 0),
  ].some((time) => time !== hours && !isDeadline(time) && minutes(time) > 0 && minutes(time) <= GOES_ON);
}
const isDeadline = ({ date }: SaidTime): boolean => date !== undefined && OF_ELSE.has(date.said);

/** "Racing 7.30am to 4.30pm daily", "elke avond van 18.00 tot 23.30 uur" */
const EACH_DAY =
  /(?<!\p{L})(?:daily|each|every|both|all (?:days|two|three|four|\d)|jeden|täglich|chaque|tous les|toutes les|cada|todos los|ogni|elke)(?!\p{L})/iu;
export const ofEachDay = (text: string, { start, end }: SaidTime): boolean =>
  EACH_DAY.test(
    text
      .slice(Math.max(0, start - EACH_REACH), start)
      .split(/[.;!?\n]/)
      .at(-1) ?? '',
  ) || EACH_DAY.test(text.slice(end, end + EACH_REACH).split(/[.;,!?\n]/)[0] ?? '');
const EACH_REACH = 32;
