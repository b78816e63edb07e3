/**
 * An hour that a word for a call tells, of which nobody says that I come then: "the hall is ours from 2", "we're in from 8", "we start setting up at 8",
 * "the building opens at 7", "it's from 10 to 4". It may be my call and as often is not: it is asked about.
 */
import { behindHour, CLAUSE_BEGINS } from '../parts/sentences.ts';
import { filmedThen } from './filmed-then.ts';
import { ownerOf } from './owner.ts';
import type { Where } from './scene.ts';
import { toldThen } from './told-then.ts';

const PLACE = String.raw`(?:hall|village hall|venue|room|ball ?room|function room|place|space|building|church|chapel|studio|theat(?:re|er)|gym|barn|club ?house|club|school|museum|library|auditorium|marquee|(?:loading )?dock|loading bay|car park|parking|site|grounds?|gates?|premises|stage door|centre|center|pavilion|hotel|pub|restaurant|office)`;
/** What is hired for a whole occasion; a room or a dock is had to work in. */
const HIRED = String.raw`(?!(?:[\p{L}-]+ )?(?:room|dock|bay|studio|stage))${PLACE}`;
const AT = String.raw`(?: (?:at|from|between|by|around|about))* `;
const WE = String.raw`(?:we|i|they)(?:'re|'ll|'d|'ve|'m| am| are| will| can| shall| would)?`;
const PATTERNS = [
  // "the hall is ours from", "we have the hall from"
  String.raw`(?:the |our |that )?${HIRED}(?:'s| is| will be|'ll be) (?:all )?ours(?: to use)?`,
  String.raw`${WE}(?: also| only)? (?:have|get|got|hired|booked|rented|taken|reserved|be having)(?: got)? (?:the |a |this |our )?(?:\p{L}+ )?${HIRED}(?: (?:booked|hired|to ourselves|reserved))?`,
  // "the building opens at"
  String.raw`(?:the |our )?(?:\p{L}+ )?${PLACE}(?:'s|s| itself)?(?: (?:is|are|will be|doors?))?(?: only)? (?:opens?|opening|open|unlocked|unlocks)(?: up)?`,
  // "we're in from", "we'll be in the building from", "we start setting up at"
  String.raw`${WE}(?: be| all| get)? (?:in|there|here|on[- ]site)(?: (?:the|at the|in the) ${PLACE})?`,
  String.raw`${WE}(?: be)? (?:in|at) the ${PLACE}`,
  String.raw`${WE}(?: be)?(?: start| begin)? (?:setting up|set up|decorating|preparing|getting (?:the (?:${PLACE}) )?ready)`,
  // "I arrive at", "we gather from", "we land at"
  String.raw`${WE}(?: be| all)? (?:arriv(?:e|ing)|get(?:ting)? (?:there|in|to (?:the|our) ${PLACE})|gather(?:ing)?|assembl(?:e|ing)|muster(?:ing)?|rehears(?:e|ing)|practi[sc](?:e|ing)|warm(?:ing)? up|line up|form up|land(?:ing)?|fly(?:ing)? in)(?: (?:in|on|there|here|by \p{L}+))?`,
  // "the venue manager opens up at"
  String.raw`(?:the |our )?(?:[\p{L}-]+ )?(?:caretaker|janitor|verger|sexton|custodian|steward|warden|manager|landlord|porter)(?:'ll| will)? (?:opens?|unlocks?)(?: (?:up|(?:the )?${PLACE}))?`,
  // "our set is from"
  String.raw`(?:our|my|his|her|their) (?:slot|set|heat|race|talk|turn|performance|dance)(?:'s| is| runs| starts| lasts)?`,
  // "it's from", of the occasion
  String.raw`(?:it|this|that|everything|the (?:event|day|party|whole thing))(?:'s| is| runs| goes| lasts| will run|'ll run| will be)(?: on)? (?:from|between)`,
];
const OURS_FROM = new RegExp(`${CLAUSE_BEGINS}(?:${PATTERNS.join('|')})${AT}$`, 'iu');
/** "it's 7 pm for a 7.30 start": when guests come. */
const IT_IS = /(?:^|[.;:!?\n]\s*|, )(?:it's|it is|that's|guests|the invitation says) $/i;
const FOR_THEN = /^ for (?:an? )?\d/i;
/** The rehearsal of a wedding on the day before, of which nobody says that it is filmed or that I come; that of a congress is the crew's as well. */
const REHEARSED = /\brehears(?:al|ing|e)s?\b/i;
const WEDDING = /\b(?:wedding|bride|groom|getting married|marry|ceremony)\b/i;
const [LEAD, BEHIND] = [90, 110];
/** Who is told to come then after all: "so you could load in then", "for you to set up", "(crew)", "so come any time after", "and we'd want the whole of it". */
const FOR_ME =
  /^[^.;!?\n]{0,90}(?:(?:,|\b(?:so|please|pls|just|then)) (?:come|join|be there|be here|turn up)|\b(?:want|need|like|love) (?:it all|all of it|the lot|the whole))\b|^[^.;!?\n]{0,90}\b(?:you|u|yours?|crew|cameras?|gear|equipment|for (?:set(?:ting)?[- ]?up|rigging|load[- ]?in)|video\w*|suppliers?|vendors?|contractors?|(?:for|to) us)\b(?![^.;,!?\n]{0,30}\d)/i;

/** True for an hour that may as well be somebody else's as my call; `dayBefore` for one on the day before the job. */
export function maybeTheirs(text: string, hour: Where, dayBefore: boolean): boolean {
  const lead = text.slice(Math.max(0, hour.start - LEAD), hour.start);
  const after = behindHour(text, hour.end, BEHIND);
  if (toldThen(text, hour)?.cue === 'call' || filmedThen(text, hour)) return false;
  if (
    dayBefore &&
    WEDDING.test(text) &&
    REHEARSED.test(lead.split(/[.;!?\n]/).at(-1) ?? '') &&
    ownerOf(text, hour) !== 'mine' &&
    !FOR_ME.test(after)
  )
    return true;
  if (FOR_THEN.test(after) && IT_IS.test(lead)) return true;
  return OURS_FROM.test(lead) && !FOR_ME.test(after);
}
