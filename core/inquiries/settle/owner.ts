/**
 * Whose hour it is where several are told: "sound guy 0600, yours 0730", "it ends at eleven but you can go at half ten".
 */
import { anyOf } from '../phrases.ts';
import { beginsWithOthers, OTHER_CREW } from '../said/subject.ts';
import { builtAbroad } from './built-abroad.ts';
import { comesOrGoes } from './comes-and-goes.ts';
import { filmedThen } from './filmed-then.ts';
import { goesAbroad } from './goes-abroad.ts';
import type { Where } from './scene.ts';
import { isMineThen } from './there-then.ts';
import { inRowOfDays } from './hours-of-days.ts';
import { toldThen } from './told-then.ts';

const MINE = anyOf(`
  you | u | your | yours | you'd | you're | you'll | youd | ur | only camera | a camera is | camera is | cameras | cam 3 | videographer | for video | vous | tu | te | toi | sie | dich | du | ihnen | usted | tú | jij | je | jou
`);
/** "please come", "be there", "møt oss": what I am told to do. */
const TOLD =
  /^\s*(?:(?:please|pls|plz|kindly|just|do)\s)?(?:come|arrive|be (?:there|here|with|at|on|[\p{L}]+-?side)|get (?:there|here)|report|turn up|show up|reach|meet (?:us|me)|m[øö][td] (?:oss?|opp?|upp))\b/iu;
/** "video out", "cameras" */
const MY_PART =
  /^\s*(?:the )?(?:video|filming|(?:film|camera) crew|cameras?(?! (?:\d|one|two|[a-d]\b)))\b(?! (?:is|runs|of|about|should|will|by|due|to be))/i;
/** A department at the beginning of its clause. */
const OTHERS =
  /^\s*(?:(?:our|my|their|his|her) (?:usual|regular|own|other|last|previous) \p{L}+|(?:our|the|their) (?!(?:film|video|camera|filming) )(?:\p{L}+ )?(?:staff|company|people|lads|suppliers?|contractors|technicians?)|(?:the |our |my |l'|le |la |les |die |das |der |el |los |il |de |het )?(?:équipe|(?:sound|av|pa|dj|band|speakers?|players?|client|volunteers?|choir|guests?)(?! (?:(?:\p{L}+ )?(?:nights?|part(?:y|ies)|dinners?|lunch|concerts?|shows?|events?|awards?|evenings?|gala|ball|competition|contest|final|finals|session|sets?|recital|tournament|drinks|reception|conference))\b)|son|licht|ton|a\/v|catering|kitchen|security|audio|stills|photos|(?:photo|stills) coverage|photography|lighting|stage(?! (?:doors?|entrance|gate))|director|talent|cam(?:era)?s? (?:\d|one|two|three)|cameras? (?:\d|one|two) and|florist|caterers?|exhibitors|equipo|técnicos(?! (?:pueden|podrán|tienen))|techniciens|techniek))(?!\p{L})/iu;
/** "Your assistant can join at six", "my mum will be at the hall from 8" */
const BESIDE_ME =
  /^\s*(?:your|ur) (?:assistant|helper|colleague|second(?: (?:shooter|videographer|camera ?(?:man|woman|person|op\p{L}*)))?)(?!\p{L})/iu;
/** "you and your assistant" */
const WITH_ME = /\b(?:you|u|yourself) (?:and|&|or|plus) (?:your|ur)\b/i;
const NEAR_SENDER =
  /^\s*(?:my|our) (?:mum|mam|mom|mother|dad|father|parents|brother|sister|husband|wife|partner|fianc\p{L}+|son|daughter|uncle|aunt|cousin|boss|colleague|assistant|secretary|friend|neighbour|neighbor)s?(?: and \p{L}+| (?!(?:and|who|says?|said|asks?|wants?|would|needs?|thinks?)\b)\p{L}+)?(?:'s|'ll| is| are| will| can| could| has| have| starts?| gets?| arrives?| comes?| stays?| leaves?| goes| works?)(?!\p{L})/iu;
/** "Our videographer will be there" */
const OUR_OWN =
  /^\s*(?:our|my) (?:own |main |lead |in-house |staff )?(?:videographer|photographer|cameraman|camerawoman|dop|filmmaker|producer)\b/i;
/** "My call's at 3", "her call is 8": the sender's, or another's; "stays till 4": of whom the clause before it tells. */
const SENDERS =
  /^\s*(?:my (?:own )?(?:call|shift|set-?up)(?:'s)?|(?:his|her) (?:own )?(?:call|shift)(?: time)?(?:'s| is| was)? |i(?:'ll|'d| will| would| shall|'m| am| won't| can't| cannot| can)(?= (?:not |myself |only |also )?(?:be |get )?(?:there|here|in|on|at)\b)|(?:stays|leaves|works|comes)(?= )|(?:she|he)(?:'ll| will)? (?=leaves?|goes?|stays?))/i;
/** "her call time is 7am for everyone", "at 9am with you" */
const MINE_TOO = /^[^.;!?\n]{0,24}\b(?:everyone|everybody|(?:and|with|incl\.?|including|you ride) (?:with )?(?:you|u|her|him)|you too)\b/i;
/** "25 Sept: I shoot from", "I'll be filming from": when the sender begins. */
const SENDER_FILMS = /(?:^|:)\s*(?:and )?i(?:'ll| will|'m| am)?(?: be)? (?:shoot|film|cover|record|start)(?:ing)? (?:from|at) $/i;
/** "Mona's in at 1" */
const NAMED =
  /^\s*(?!(?:Call|Crew|Camera|Load|Loading|Day|Doors?|Set|Set-?[Uu]p|Rig|Rigging|Rehearsals?|Build|Access|Arrival|Install\p{L}*|Filming|Shooting|Recording|Everything|Shift|Work|You|We|It|That|This|There|Here|Hall|Venue|What|When|Access|Everyone|Start|Time)\b)\p{Lu}\p{Ll}+(?:'s| is|'ll be| will be| arrives| comes| gets) (?:in|there|here|on)\b/u;
/** "Load-in for sound and lights is noon" */
const FOR_OTHERS =
  /\b(?:load-?in|set-?up|get-?in|rig(?:ging)?|build|access|call|bump-?in) (?:time )?(?:for|of) (?:the |our )?(?:sound|lights?|lighting|av|staging|stage|band|caterers?|catering|florists?|exhibitors?|traders|stallholders|decor|marquee|dj|audio|riggers|volunteers|performers|speakers)\b[^,;.\d]*$/i;
/** "AV wants the camera person there at 9:15" */
const WANTS_ME =
  /\b(?:wants?|needs?|likes?|expects?|asks for)(?: (?:the|our|whoever is))? (?:camera ?(?:person|man|woman|operator|op)|videographer|filmer|film-?maker|video (?:person|crew|guy)|filming (?:person|crew))\b/i;
/** "The vendor shall be present no later than": who is hired is called so in a tender. */
const HIRED =
  /\b(?:supplier|contractor|vendor|operator|videographer|filmmaker|provider|freelancer)s? (?:shall|must|is to|are to|has to|have to|should|will need to) (?:be (?:present|on site|there|set up)|report|attend|arrive)\b/i;
/** "Load-in is Thursday 12/3 at", "Rigging: the Wednesday, from": the work of the crew, and the day on which it begins. */
const CREW_BEGINS =
  /^[\s*•-]*(?:the |our |crew )?(?:load-?in|get-?in|set-?up|rig(?:ging)?|bump-?in|move-?in|install(?:ation)?|crew call|crew access)(?: (?:is|are|will be|starts?|begins?))?\s?[:–-]?(?: on)?(?: the)? ?(?:(?:mon|tue|wed|thu|fri|sat|sun|jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\b|\d{1,2}(?:st|nd|rd|th|[./]\d|\s))/i;
const CREW_FIRST = new RegExp(`^\\s*(?:the\\s)?${OTHER_CREW.source}`, 'i');
/** "They should be there for 9", "the team should report at 8": as often as not me. */
const ANYBODY = /^\s*(?:the |our |all )?(?:they|he|she|who|everyone|everybody|team|person|people|staff|family|talent)\b/i;
/** "arrive at 8. Sorry, make that", "call at 8, or rather": whose the hour was whose place this one takes. */
const IN_PLACE_OF =
  /\d(?: ?[ap]\.?m\.?)?[\s.,;:!?–-]{1,4}(?:(?:no|oops|oh|sorry|apologies|wait|actually|correction|scratch that|strike that|make (?:that|it)|or rather|rather|i mean|i meant|it should be|that should be|should be|better)[,:.;!–-]{0,2} ?){1,3}(?:at |say )?$/i;
/** "The call has been moved from" */
const CALL_MOVES =
  /\b(?:call|start|arrival|load-?in|get-?in)(?: time)?\b[^.;!?\n\d]{0,24}\b(?:moves?|moved|shift(?:s|ed)?|change[sd]?|brought|put|pushed|pulled)\b(?: (?:forward|back|up))? from $/i;
/** "Stewards need to be on site by", "the cast are called for" */
const THEY_MUST =
  /\b(?:need|needs|must|have|has|should|are|is|will|would|ought|got|asked|required|expected|told|due)\b[^.;,\d]{0,16}\b(?:be(?! (?:\p{L}+ )?(?:gone|out|off|away|done|finished|clear(?:ed)?|over))|called|there|here|arrive|report|assemble|meet|come|on[- ]?site|in place)\b/iu;
const BEGINS = /(?:[.!?]\s|\n\s?)$/;
const CLAUSE = /[.;!?\n]|,\s|\s-+\s|(?<!\p{L})(?:and|but|so|then|while|und|aber|et|mais|y|pero|en|maar)(?!\p{L})/iu;
/** "I need you at the hall only, call 12:30": whose call it is stands in the clause before. */
const CALL_ALONE = /^\s*(?:crew )?call(?: time)?(?: is)?(?: at)?:?\s*$/i;
const [REACH, AFTER_REACH] = [70, 110];
/** "6 AM, that's the riggers" */
const THEIRS_AFTER =
  /^["'\s]*,?\s?(?:that's|that is|which is) (?:for )?(?:the |our )?(?!you|u\b|your|when|my|what|fine|ok|right|correct|a\b|an\b|the (?:call|time|start))\p{L}+s\b/iu;
/** "09:30 videographer", "15:00 photographer finishes": the row of a list. */
const MY_ROW = /^[ \t]{0,3}(?:[-–:|][ \t])?(?:the |our )?(?:videographer|video|camera|kit|you)\b/i;
const CREW_ROW = new RegExp(`^[ \\t]{0,3}(?:[-–:|][ \\t])?(?:the |our )?${OTHER_CREW.source}`, 'i');
const AFTER =
  /^[^.;?!\d\n]{0,24}?(?:you|u|ya|ye)(?:'d|'ll| would| should| must| will)?(?: want| need| have| like)?(?: to be| be| there| here| in place| up| down| come| arrive){1,3} for (?:that|it|this)\b|^\s?(?:(?:(?:h|uhr|uur|o'clock) )?(?:is|will be|would be|as) (?:also )?your (?:call|start|arrival|end|finish|wrap|release|exit|out)\b|for (?:you|kit)\b|(?:kannst du|können sie|you can|you're|you are|tu peux|vous pouvez|(?:mag|kun|kan|mogen|kunnen) (?:je|jij|u)) |\((?:you|kit)\b|\((?:that's|(?:that|this) (?:would be|is)) you|,? ?(?:(?:so |and )?that's|which is|,? same for) (?:you|yours|your|when (?:you|we|i))\b)/i;

/** `mine` where the clause of an hour names me, `theirs` where it names others; nothing where it names nobody. */
export function ownerOf(text: string, { start, end, to }: Where & { to?: unknown }): 'mine' | 'theirs' | undefined {
  const [before, after] = [text.slice(Math.max(0, start - 3), start), text.slice(end, end + AFTER_REACH)];
  const row = /(?:^|\n)[ \t]*$/.test(before);
  if (AFTER.test(after) || isMineThen(after) || builtAbroad(after) || (row && MY_ROW.test(after))) return 'mine';
  if (THEIRS_AFTER.test(after) || (row && CREW_ROW.test(after))) return 'theirs';
  // "you on the quay for 9", "speeches at 9, then you're off duty"
  const sentence =
    text
      .slice(Math.max(0, start - REACH), start)
      .split(/[.;!?\n]/)
      .at(-1) ?? '';
  if (to === undefined && CALL_MOVES.test(sentence)) return 'mine';
  const replaced = IN_PLACE_OF.exec(text.slice(Math.max(0, start - REACH), start));
  if (replaced) {
    const at = start - replaced[0].length;
    if (ownerOf(text, { start: at, end: at + 1 }) === 'mine') return 'mine';
  }
  if (comesOrGoes(sentence, after)?.named || goesAbroad(sentence, after)) return 'mine';
  // "soundcheck's at 4, come for that"
  const then = toldThen(text, { start, end });
  if (then && then.cue !== 'other') return 'mine';
  if (FOR_OTHERS.test(sentence)) return 'theirs';
  if (filmedThen(text, { start, end, to })) return 'mine';
  const clauses = text.slice(Math.max(0, start - REACH), start).split(CLAUSE);
  // "you can leave after the waltz, 9:30": where nothing stands right before the hour, the clause before it tells.
  const told = clauses.filter((one) => one.trim() !== '');
  const [near = '', beforeIt = near] = told.toReversed();
  // "I'm on A. Call 08:00": the sentence before tells nothing of it.
  const earlier = sentence.includes(beforeIt) ? beforeIt : near;
  // "The caterers arrive at 9am, call 10am": that clause has its own hour.
  const clause = CALL_ALONE.test(near) && !/\d/.test(earlier) ? earlier : near;
  if (OUR_OWN.test(clause) || (BESIDE_ME.test(clause) && !WITH_ME.test(sentence))) return 'theirs';
  if (
    MINE.test(clause) ||
    TOLD.test(clause) ||
    MY_PART.test(clause) ||
    WANTS_ME.test(clause) ||
    HIRED.test(clause) ||
    CREW_BEGINS.test(clause)
  )
    return 'mine';
  if (inRowOfDays(text, { start, end })) return 'mine';
  if (!OTHERS.test(clause) && /\bkit\b/i.test(clause)) return 'mine';
  // "Our usual bloke doesn't fly. 6.30am at the dock": an hour that begins its sentence is not theirs of whom the one before tells.
  if (BEGINS.test(before)) return undefined;
  return OTHERS.test(clause) ||
    NEAR_SENDER.test(clause) ||
    (SENDERS.test(clause) && !MINE_TOO.test(after)) ||
    SENDER_FILMS.test(clause) ||
    NAMED.test(clause) ||
    CREW_FIRST.test(clause) ||
    (THEY_MUST.test(clause) && !ANYBODY.test(clause) && beginsWithOthers(text, start))
    ? 'theirs'
    : undefined;
}
