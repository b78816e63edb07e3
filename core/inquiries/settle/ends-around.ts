/**
 * Ends of what goes on around the work: the bar, the disco and the band, the hall that is ours until one, the carriages. I am gone before
 * them as often as not: beside an end of the work that is told they end nothing, and alone some of them are only asked about.
 */
import { clauseBefore } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import type { Where } from './scene.ts';

const WORDS = {
  dance: `disco/discos/ceilidh/dancing/music/band/bands/dj/djs/party/partying/after-party/afterparty/karaoke/dance_floor/dancefloor/entertainment/networking/drinks/mingling/socialising/bar`,
  place: `hall/venue/room/church/barn/marquee/space/place/building/ballroom/function_room/theatre/club/house/site/premises`,
  lasts: `goes_on/go_on/going_on/carries_on/carry_on/runs/run/lasts/last/continues/continue/keeps_going/stays_open/plays/play/playing/is_on/are_on/is_open/goes/go`,
};
/** Open ends: whoever likes stays. */
const LINGERS = anyOf(
  `
  {dance} ... {lasts} on? until/till/til/to | {dance} until/till/til | {dance} is/are until/till/til
  {place} is/are ours/yours/booked/hired/rented/reserved/free/available/licensed until/till/til | we/we've/we'd have/got/booked/hired/rented ... {place} until/till/til | we/i have/booked/hired ... {place} ... to/until/till/til
  licence/license/bar_extension/extension ... until/till/til
`,
  WORDS,
);
/** What ends the evening for those who came to it. */
const GUESTS_LEAVE = anyOf(
  `
  caretaker/janitor/porter/warden/verger ... locks/lock/shuts/closes up? | carriages | last orders | curfew | locks up | lock up | coaches/buses/taxis/minibuses/shuttles leave/leaves/depart/go/are_booked ... | {dance} ... off/stops/stop/ends/end/finishes/finish/over/done/closes/close/shuts
`,
  WORDS,
);
/** The end of what makes ready for the occasion, or of somebody who works beside me. */
const READY =
  /^\s*(?:(?:the|our|all|full|dress) ){0,2}(?:rehearsals?|sound ?checks?|rigging|load-?in|get-?in|set-?up|setting up|build|install\w*|registration|warm-?up|photographers?|photography|caterers?|hair and make-?up|make-?up|interval|first (?:half|act|set|session|sitting))(?: [\p{L}'-]+){0,4}?\s(?:ends?|finish\w*|done|over|complete[d]?|stops?|concludes?|closes?)(?: (?:by|at|around|about|before|no later than)){0,2} $/iu;
/** The end of a part of the occasion. */
const PART =
  /^\s*(?:(?:the|our|your|all|first|main|sit-down|formal|church|civil|wedding) ){0,2}(ceremony|service|mass|dinner|lunch|meal|breakfast|supper|tea|speech|toast|auction|raffle|judging|drinks|reception|keynote|parade|procession|portrait)(?:e?s)?(?: [\p{L}'-]+){0,4}?\s(?:ends?|finish\w*|done|over|stops?|concludes?|closes?)(?: (?:by|at|around|about|before|no later than)){0,2} $/iu;
/** Who comes and goes by hours of their own, and what is shut by its own: "the children leave at 3", "my colleague stays till 6", "the bar shuts at 11". */
const OF_OTHERS = new RegExp(
  String.raw`^\s*(?:(?:the|our|my|your|his|her|all|most|some of|other|second) ){0,3}(?:(?:children|kids|pupils|students|toddlers|photographers?|stills guy|colleagues?|helpers?|volunteers?|stewards|caterers?|florists?|speakers?|minister|mayor|mayoress|bishop|priest|registrar|judges?|press|media|choirs?|orchestra|musicians?|players?|teams?|other camera(?:s|man)?|camera (?:two|2|b)|second camera|sound (?:man|guy|engineer|crew)|lighting (?:man|guy|crew)|babysitter|grandparents|mother|father|mum|dad|mom|sister|brother|wife|husband)(?: (?!will|would|can|could|has|have|is|are|must|leave|go|stay)\p{L}+)?(?:'ll|'s| will| would| can| could| has to| have to| is| are| must)? (?:leaves?|leaving|goes|go|going|be gone|be off|off|stays?|staying|stops?|here|there|works?)(?: (?:home|off|on|there|here|with us|to bed))?|(?:bar|kitchen|caf[eé]|restaurant|shop|box office|cloakroom|car park|creche|crèche|bouncy castle)(?: [\p{L}-]+)? (?:closes?|shuts?|is open|stops?(?: serving)?)|(?:lunch|tea|supper|breakfast|food|coffee)(?: is| is served| goes on| runs)(?= (?:until|till|til|to) ))(?: (?:at|by|until|till|til|to|around|about)){1,2} $`,
  'iu',
);
/** Words for the end of the work right before its hour. */
const WORK_ENDS =
  /\b(?:wrap(?:s|ped|ping)?(?: up)?|released?|de-?rig\w*|get-?out|load-?out|off[- ]?site|stood down|stand down|knock(?:ing)? off|hometime|(?:crew|you|camera\w*|video\w*|your)\b[^.;,\d]{0,24}\b(?:out|off|done|finish\w*|free|go|leave|stop|home|away|end))\b[^.;,\d]{0,16}$/i;
const REACH = 80;

const clauseOf = (text: string, { start }: Where): string => clauseBefore(text, start, REACH);

/** True for an end of the work itself: "wrap 11pm". */
export const endsWork = (text: string, hour: Where): boolean => WORK_ENDS.test(clauseOf(text, hour));

/** True for an end that is none of the work where one of the work is told. */
export function endsAround(text: string, hour: Where): boolean {
  const clause = clauseOf(text, hour);
  return LINGERS.test(clause) || GUESTS_LEAVE.test(clause);
}

/** True for an end that tells nothing of mine by itself: of an open end, of what makes ready, of a part that is named nowhere else. */
export function endsNothing(text: string, hour: Where): boolean {
  const clause = clauseOf(text, hour);
  const part = PART.exec(clause)?.[1];
  return LINGERS.test(clause) || READY.test(clause) || OF_OTHERS.test(clause) || (part !== undefined && namedOnce(text, part));
}

/** "Could you film our dinner? ... Dinner ends at 9": the occasion itself is named again. */
const namedOnce = (text: string, part: string): boolean => text.toLowerCase().split(part.toLowerCase()).length <= 2;
