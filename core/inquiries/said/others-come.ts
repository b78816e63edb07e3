/**
 * Who comes, is called or is set up at an hour, told from the beginning of its clause, where it is not me: "our crew is called for", "someone from our
 * team will be there from", "the cake comes at", "the coach wants the team there by", "talent call:".
 */
import { CLAUSE_BEGINS } from '../parts/sentences.ts';

const THE = String.raw`(?:the |our |my |an? |his |her |their |some |all |all of |both |most )`;
/** Who films or photographs beside me: whoever is called so alone may be me. */
const ANOTHER = String.raw`(?:(?:(?:(?:the|an?|our|my) (?:second|other|usual|in-?house|house)|another|(?:the |an? )?(?:drone|stills?|photo))|our|my|our own|my own) (?:(?:own|usual|second|other|main|lead|drone|in-?house) )?(?:photographer|videographer|shooter|camera(?:man|woman| ?person| operator| op)?|operator|pilot|cinematographer|photo team|drone|filmmaker)s?|(?:the|an?) (?:main|lead|wedding) photographers?)`;
/** Who is no videographer, in a message that asks for one. */
const STILLS = String.raw`(?:the |an? )?(?:photographers?|photo ?booth|drone)`;
/** People of whoever asks. */
const THEIR_PEOPLE = String.raw`(?:(?:our|my|their|event|hotel|venue|house|kitchen|bar|hall|company|all|all our|all the|the) (?:own )?(?:staff|people|lads|guys|volunteers|helpers|stewards|committee|colleagues?|employees)|(?:our|my|their) (?:own )?(?:team|crew(?! calls?\b)|lot|gang)|all hands)`;
const OFFICERS = String.raw`(?:(?:our|my) (?:[\p{L}-]+ )?(?:co-?ordinator|planner|organi[sz]er|manager|producer|host|mc|assistant|director|secretary|treasurer|chair\p{L}*|president|pastor|principal|husband|wife|brother|sister|son|daughter|mother|father|mum|mom|dad)s?(?: \p{Lu}\p{L}+)?|(?:the |our )?(?:hall|house|venue|church|theatre|theater|hotel|club|school|building)(?:'s)? (?:own )?(?:technicians?|techs?|tech team|sound (?:guy|man|engineer|person)|engineer|electrician|manager)|(?:the |our )tech team)`;
const FROM_THERE = String.raw`(?:the |a |some )?(?:crews?|people|team|lads|guys|folks?|someone|somebody|staff) (?:from|of|at) (?:the |our |my )[\p{L}' -]{3,30}?`;
/** What is brought or comes by itself. */
const THINGS = String.raw`${THE}?(?:flowers|cakes?|tables?(?: and chairs)?|chairs|tents?(?: people)?|marquees?(?: people)?|food|drinks|buffet|bouncy castle|generator|portaloos|toilets|stage|sound system|sound desk|pa|furniture|deliver(?:y|ies)|delivery van|kit hire|balloons|decorations|rings|horse|carriage|sun|moon|tide|rain|light)`;
const SUBJECT = String.raw`(?:${ANOTHER}|${THEIR_PEOPLE}|${OFFICERS}|${FROM_THERE}|${THINGS})`;
const WILL = String.raw`(?:(?:'s|'ll|'re|'d| is| are| was| will| would| should| must| can| could| has| have| need| needs| to| be| been| being| told| asked| expected| due| all| already| also| only| usually| going| get| gets){0,6})`;
const COMES = String.raw`(?:comes?(?: up| in| over| along)?|coming|arriv(?:e|es|ing)|call(?:ed)?(?: time)?|in|there|here|on[- ]site|on deck|on duty|at|on|with us|booked|hired|delivered|brought|turn(?:s|ed)? up|turn(?:s|ed)? on|show(?:s)? up|reports?|reporting|meets?|meeting|assembl(?:e|es|ing)|sets?(?:ting)? up|loads?(?:ing)? in|start(?:s|ing)?|begin(?:s|ning)?|joins? us|goes? up|gathers?|gathering|lin(?:es?|ing) up|forms? up|check(?:s|ing)? in|sign(?:s|ing)? (?:in|on)|warm(?:s|ing)? up|rehears(?:es?|ing)|walks? the course|takes? (?:their|his|her) seats?|get(?:s|ting)? (?:in|there|here|access|going|to work|ready|dressed|changed))`;
const REST = String.raw`(?: (?!you\b|u\b|your\b|yours\b|until\b|till?\b|to\b|by then\b|and\b|so\b|but\b)[\p{L}'-]+){0,5}?`;
const AT = String.raw`(?:,? (?:is|are|at|from|for|by|around|about|until after|no later than))* `;
const OTHERS_COME = new RegExp(`${CLAUSE_BEGINS}${SUBJECT}${WILL} ${COMES}${REST}${AT}$`, 'iu');
const PHOTOGRAPHER_COMES = new RegExp(`${CLAUSE_BEGINS}${STILLS}(?:${WILL} ${COMES}${REST}${AT}|:? )$`, 'iu');
/** "the coach wants the team there by", "we've told everyone to be there for" */
const TOLD_OTHERS = new RegExp(
  String.raw`\b(?:(?:(?:told|asked|asking|tell|telling|invited) (?:all )?(?:the |our |my )?(?:everyone|everybody|teams?)|coach (?:wants|needs|expects) the team)|(?:told|asked|asking|tell|telling|invited|want|wants|need|needs|expects?|has|have|get|gets|had) (?:all )?(?:the |our |my )?(?:guests?|people|parents|players|pupils|students|kids|children|family|families|speakers|delegates|attendees|members|staff|volunteers|cast|choir|dancers|bridesmaids|groomsmen|ushers|exhibitors|runners))(?: to (?:be|come|arrive|turn up|meet|gather|assemble|get|show up))?(?: (?:there|here|in|up|seated|ready|on site|at the [\p{L}-]+|on the [\p{L}-]+|in the [\p{L}-]+))* (?:for|by|at|from|around|about) $`,
  'iu',
);
/** "... to set up the cameras", "crew included" */
const FILM_BEHIND = /^[^.;!?\n]{0,50}\b(?:you|crews?|cameras?|video\w*|film\w*|set(?:ting)?[- ]?up)\b/i;
/** "we have a photographer from" */
const THEY_HAVE =
  /\b(?:have|has|got|booked|hired|having) (?:an?|our|the|my) (?:[\p{L}-]+ )?(?:photographers?|photo ?booth|dj|band|caterers?|magician|harpist|string quartet|quartet|choir|drone|drone pilot|face painter)(?: (?:booked|coming|there|here|in|with us|playing|on))*(?: (?:from|at|for|between))? $/iu;
/** "Our guests come by coach. They arrive at" */
const THEY_COME = new RegExp(
  String.raw`(?:^|[.!?\n]\s*)(?:(?:the|our|all|most|some|my) )*(?:[\p{L}-]+ )?(?:guests|delegates|children|kids|pupils|students|players|runners|families|parents|visitors|speakers|singers|dancers|members|volunteers|exhibitors|bands|teams|athletes|riders|actors|performers|judges)\b(?![^.!?]*\b(?:film|video|camera|you)\w*)[^.!?\n]{0,100}[.!?] +they${WILL} ${COMES}${REST}${AT}$`,
  'iu',
);
/** "we let people in from", "the public are let in at" */
const LET_IN =
  /\b(?:let|lets|letting|allow|allowing|admit|admitting) (?:the |our |all )?(?:people|guests?|public|audience|visitors|everyone|everybody|punters|crowds?|families|delegates|ticket[- ]holders) (?:in|inside|into [\p{L} ]{3,20})(?: (?:at|from|by|around|about))* $/iu;
/** Calls of others, and calls that are none. */
const THEIR_CALL =
  /(?<!\b(?:video|camera|film|filming|media|crew|your) )\b(?:half[- ]hour|quarter[- ]hour|five[- ]minute|beginners'?|places|talent|cast|band|orchestra|actors?'?|dancers?'?|players?'?|speakers?'?|team|staff|volunteers?'?|stewards?'?|caterers?'?|catering|staging|lighting|sound|audio|press|media|photo|photographers?'?|bar|last|roll|bugle|planning|production|conference|pre-?(?:event|production|show)) calls?(?: time)?(?:'s| is| are| will be|:)?(?: at| from| for)? ?$/i;
/** "Staff briefing 8:30", "riders' meeting at" */
const THEIR_MEETING =
  /(?<!\b(?:video|camera|film|filming|media|crew|your) )\b(?:staff|team|marshals?'?|stewards?'?|volunteers?'?|riders?'?|drivers?'?|players?'?|cast|pilots?'?|captains?'?|skippers?'?|coaches'?|judges'?|speakers?'?|committee|board|runners?'?|teachers?'?|ushers?'?|choir|band|pre-?race|pre-?match) (?:briefing|meeting|muster|sign-?(?:in|on)|check-?in|line-?up|warm-?up|rehearsal|breakfast|lunch|photo)(?:'s| is| are| will be| starts?| begins?|:)?(?: at| from)? ?$/i;
/** Of things with hours of their own that begin as a call might: "Attendees can register from", "Parking opens at", "keep the phone on from". */
const BEGINS_ELSE = new RegExp(
  String.raw`(?:${CLAUSE_BEGINS}${THE}?(?:car )?(?:parking|car park|registration|check-?in|box office|ticket office|tickets|gates|bar|food stalls?|stalls|bag drop|(?:race|event) village|(?:number|packet|bib|kit) (?:pick-?up|collection)|road closures?|cloakroom|power|wi-?fi)(?: (?:will|can|is|are|be|opens?|opened|starts?|begins?|available|free|goes|turned|switched|on|sale)){1,4}|${CLAUSE_BEGINS}(?:the )?(?:bag drop|(?:number|packet|bib|kit) (?:pick-?up|collection))|\b(?:can|may|could|should|must|will) (?:register|sign up|check in|collect (?:their|the) \p{L}+|park|vote|enter their)|\b(?:keep|leave|have) (?:your|the|a) (?:phone|mobile|cell|radio)(?: (?:on|with you|switched on|nearby|charged))+|\b(?:ring|phone|call|text|telephone) (?:me|us|him|her|the [\p{L}-]+|my [\p{L}-]+|on))${AT}$`,
  'iu',
);
/** Parts of the day that stand beside their hour in a list: "Gates: 9am", "Arrival time of guests: 6 pm". */
const PART = String.raw`(?:(?:band|dj|choir) sound ?check|p[oō]whiri|karakia|(?:the )?caretaker|decorations?|decorators?|gates|registration|check-?in|first (?:race|act|match|heat|talk|speaker|game|bout|fight|look)|guest arrivals?|guests? arriv(?:e|es|al)|arrivals?(?: time)? of (?:the )?guests|hair (?:and|&) make-?up|bridal prep|coffee|breakfast|(?:stage|staging|set|stand|marquee) build|staging|(?:staging|stage|lighting|sound|audio|av|band|dj|talent|cast|caterers?|catering|florist)(?: crew| team)?(?: load-? ?in| in| arriv(?:e|es|al)| set-?up| rig| focus| call| access| get-in)?)`;
const PART_BEFORE = new RegExp(
  String.raw`(?:^|[.,;:!?\n•|]\s*|\n[-*] )(?:the )?(?!(?:[\p{L}]+ )?(?:sound|rehears|tech|run))${PART}(?: (?:open|opens|starts?|time|at|from|is|are))*:? $`,
  'iu',
);
const PART_BEHIND = new RegExp(
  String.raw`^\d{1,2}(?:[:.h]?\d\d)? ?(?:[ap]\.?m\.?|h|uhr)?(?: ?(?:-|–|to) ?\d{1,2}(?:[:.h]?\d\d)? ?(?:[ap]\.?m\.?)?)? ?(?:[-–:|] ?)?(?:build|${PART})(?: (?:opens?|starts?|begins?|only))?\s*(?=[,;.\n]|$)`,
  'iu',
);
const BEGINS_ITEM = /(?:^|[.,;:!?\n|•]\s*|\n[-*]\s)$/;
/** "half an hour before the 7 pm start": an hour from which another is told. */
const BEFORE_IT =
  /\b(?:hours?|minutes?|mins?|quarter of an hour) (?:before|prior to|ahead of) (?:the|our|it|we|they|doors|curtain|kick-?off)\b(?:(?! (?:so|which|and|that)\b) [\p{L}'-]+){0,4}(?: (?:at|from|is|are))? $/iu;
/** When the occasion begins: "we begin at", "it starts at". */
const IT_BEGINS = new RegExp(
  String.raw`${CLAUSE_BEGINS}(?:we(?:'ll| will| usually| always)?|(?:it|things|everything|proceedings|that|this|(?:the|our) (?:event|day|fair|conference|show|concert|party|ceremony|service|match|game|race|meeting|dinner|gala|festival|market|wedding|reception|class|talks?|lecture|seminar))${WILL}) (?:begins?|starts?|kicks? off|opens?|gets? going|gets? under ?way|commences?)${AT}$`,
  'iu',
);
/** "18:00 Doors", in a list. */
const BEGINS_BEHIND =
  /^\d{1,2}(?:[:.h]?\d\d)? ?(?:[ap]\.?m\.?|h|uhr)? ?(?:[-–:|] ?)?(?:doors|show|curtain(?: up)?|kick-?off|ceremony|dinner|lunch|speeches|awards|concert|first \p{L}+|keynote|welcome|opening|talks|drinks|cocktails|reception|dancing)(?: (?:opens?|starts?|begins?|time))?\s*(?=[,;.\n]|$)/iu;
/** "Coverage: bridal prep 9am through first dance 9pm": parts of the day that are filmed. */
const COVERED = /\b(?:coverage|filming|shooting)\b[^.;!?\n]{0,60}$/i;
/** A word for coming and what leads on to the hour, at the end of a clause. */
export const COMES_THEN = new RegExp(`(?:^|[ '])${COMES}${REST}${AT}$`, 'iu');
/** Where another camera is sought, it is me. */
const SEEKS_ANOTHER =
  /\b(?:need|want|look\w* for|after|seek\w*|be|as|hire|book) (?:you (?:as|to be) )?(?:the |an? |our )?(?:another|second|other|extra|additional|main|lead)\b/i;
/** In a message that asks for film whoever is called a photographer is another. */
const SEEKS_FILM = /\b(?:film|video|record|stream|camera)/i;
const [LEAD, BEHIND] = [160, 70];

/** True where another hour is told from this one. */
export const toldFromIt = (text: string, at: number): boolean => BEFORE_IT.test(text.slice(Math.max(0, at - LEAD), at));

/** True where the occasion begins at an hour. */
export const occasionBegins = (text: string, at: number): boolean => {
  const lead = text.slice(Math.max(0, at - LEAD), at);
  return IT_BEGINS.test(lead) || (BEGINS_ITEM.test(lead) && BEGINS_BEHIND.test(text.slice(at, at + BEHIND)));
};

/** True where what stands before an hour says that others come then. */
export function othersCome(text: string, at: number): boolean {
  const lead = text.slice(Math.max(0, at - LEAD), at);
  const behind = text.slice(at, at + BEHIND);
  return (
    (OTHERS_COME.test(lead) && !SEEKS_ANOTHER.test(text)) ||
    [THEIR_CALL, THEIR_MEETING, THEY_HAVE, THEY_COME, LET_IN, BEGINS_ELSE, BEFORE_IT].some((pattern) => pattern.test(lead)) ||
    (TOLD_OTHERS.test(lead) && !FILM_BEHIND.test(behind)) ||
    ((PART_BEFORE.test(lead) || (BEGINS_ITEM.test(lead) && PART_BEHIND.test(behind))) && !COVERED.test(lead)) ||
    (PHOTOGRAPHER_COMES.test(lead) && SEEKS_FILM.test(text))
  );
}
