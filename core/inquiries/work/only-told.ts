/**
 * Words of work that ask for none of it: what I do in general or did once, what another does, and what is only a line of the programme.
 */
import type { Word } from './role-words.ts';

/** "I'm told you do be filming things", "saw on your site that you do also": what I do for anybody. */
const HABIT =
  /(?<!\p{L})(?:told|hears?|heard|saw|sees?|seen|says?|said|knows?|knew|understand|believe|gather|gathered|found|read|noticed?|mentioned|reckons?|reckoned)(?: (?:me|us|from \p{L}+|on your (?:site|page|website)|somewhere|around))?(?: that)? (?:you|ye|u)(?:'re| do be| do| are| be| make| also| mostly| usually| mainly| already| still| both| sometimes| often| always| as an?){0,4} $/iu;
/** "You streamed my defence", not "if you filmed it". */
const DID =
  /(?<!(?<!\p{L})(?:if|wish|rather|like|love|hope|prefer|once|that) )(?<!\p{L})(?:you|ye)(?:'ve| have| had| once| already| kindly| so kindly| recently)? $/iu;

/** Whether the word tells what I do in general or did before. */
export const isMyHabit = ({ text }: Word, clause: string): boolean => HABIT.test(clause) || (PARTICIPLE.test(text) && DID.test(clause));

/** "The photographer does only photo", "it's been audio only": another's, or how it was until now. */
const OTHERS_ONLY =
  /(?<!\p{L})(?:(?:he|she|they|it|photographer|videographer|company|firm|team|agency|guy|man|friend|colleague|cousin|brother|sister)(?: (?:does|do|did|makes?|takes?|shoots?|offers?|provides?|covers?) (?:only|just)|(?:'s|'re| is| are) (?:now )?(?:only|just) (?:doing|taking|offering|making|covering|shooting))|i only(?= $)|(?:i|we) (?:only|just) (?:do|shoot|take|cover|make)|(?:only|just) (?:does|did|makes|takes|shoots|offers|covers)|(?:has|have|had|it's|they've|we've|that's) (?:always |only |just |so far )?been|(?:was|were)(?: (?:only|just|always))?|(?:we|they|i)(?:'ve| have| had)?(?: \p{L}+)? (?:hired|booked|rented|bought)(?: an?| the| our| some)?)(?: \p{L}+){0,1} $/iu;
export const isOnlyOthers = (clause: string): boolean => OTHERS_ONLY.test(clause);

/** "den Ton besorgt der Rundfunk", "het geluid mag van onze mengtafel komen": from where it comes. */
const SUPPLIED =
  /^ (?:mag|kan|komt|kommt|besorgt|macht|übernimmt|liefert|stellt|doet|regelt|verzorgt|wordt|vient|sera assuré|est assuré|viene|arriva|lo pone|lo hace|lo mette|(?:can |will |may )?(?:comes?|be taken|is taken|gets? fed) (?:from|off|through))(?!\p{L})/iu;
/** "a second operator in your quote": whom I am to bring. */
const I_BRING =
  /(?<!\p{L})(?:includ(?:e|ing)|bring(?:ing)?|supply|provide|quot(?:e|ing) for|factor in|add)(?: (?:along|us|me|in|please|a|an|your|own|your own))* $/iu;
const IN_MY_PRICE =
  /^(?: if you(?:'ve| have| own| can)|[^.;!?\n]{0,20}(?<!\p{L})(?:in|with|into|on) your (?:quote|price|rate|team|crew|offer|estimate))(?!\p{L})/iu;
const YOU_BRING = /(?<!\p{L})(?:you|u)(?:'d|'ll| can| could| would| will)? bring(?: along)?(?: (?:a|an|your|your own))? $/iu;
/** "y una foto de familia": it is taken of everybody at the end. */
const OF_EVERYBODY = /^ (?:de (?:familia|famille|grupo|groupe|equipo|équipe)|di (?:gruppo|famiglia|squadra))(?!\p{L})/iu;
/** "Eén camera op de finish": where it stands. */
const WHERE_IT_STANDS = /^ (?:de|het|een|mijn|onze|ons)(?!\p{L})/iu;

/** "I got your details from a soundie we both know": who named me. */
const NAMED_ME =
  /(?<!\p{L})(?:(?:your|ur) (?:details|name|number|contacts?|e-?mail|address|card)(?: \p{L}+)? (?:from|via|through|by|off)|(?:recommended|suggested|referred)(?: to (?:me|us))? by)(?: (?:a|an|the|my|our|another|one of our))?(?: \p{L}+)? $/iu;

/** "Your livestream of the regatta was a joy": what I made before. */
const YOUR = /(?<!\p{L})your(?: \p{L}+)? $/iu;
const WAS_GOOD =
  /^(?: (?:of|from|for|at|on|with|in) [^.;!?\n,]{1,50}?)? (?:was|were|made|looked|came|got|had|caught|blew|showed|captured|impressed|convinced|(?:is|are|looks?)(?: so| very| really| just| quite| all| simply| absolutely)? (?:wonderful|lovely|great|good|beautiful|amazing|gorgeous|stunning|superb|fantastic|brilliant|excellent|nice|terrific|ace|what (?:made|brought|convinced|sold|got)|why|how|the (?:best|nicest|reason)|a (?:joy|treat|delight)))(?!\p{L})/iu;
/** "I'll send you photos of the stage": what I am to get. */
const SENT_TO_ME =
  /(?<!\p{L})(?<!you )(?:send|sends|sent|sending|show|shows|showed|mail|mailed|email|emailed|e-mail|forward|forwarded|whatsapp|share|shared|sharing) you(?: \p{L}+){0,3} $/iu;
/** "Robin used to work as a vision mixer", "as a photographer I know": what somebody is. */
const TRADE_OF =
  /(?<!\p{L})(?:(?:used to (?:work as|be)|(?:(?<!(?:who|that|someone|somebody) )(?:works|worked|trained)|(?:i|we)(?: \p{L}+)? work|(?:is|are|am|was|'m|'s) (?:\p{L}+ )?working) as)(?: an?| the| our)?(?: \p{L}+)? )$/iu;
const AS_ONE = /^\s*(?:and |but )?as (?:an? )?(?:fellow |former |retired |keen |amateur )?$/iu;
const I_KNOW =
  /^(?: myself| too)?,? i(?: (?:do|also|fully|well|always))? (?:know|knew|understand|appreciate|reali[sz]e|see|get|feel|promise|tend|won't|will not)(?!\p{L})/iu;
/** "Someone suggested a photographer instead", "one firm offered us a livestream for another £300", "a second camera would be £200 more". */
const PROPOSED =
  /(?<!\p{L})(?<!(?:i|we|you|i've|we've|you've) )(?:suggest(?:ed|s)?|offer(?:ed|s)?|proposed|quoted)(?: me| us| him| her| them)?(?: an?| the| another)?(?: \p{L}+)? $/iu;
const NOT_TAKEN = /^(?: instead|,? but (?:no(?!\p{L})|we|i)| (?:for|at) (?:another |an extra |a further )?\p{Sc}\d)/iu;
const COSTS_MORE =
  /^ (?:would|will|was|is)(?: be| have been| cost| come to| add)?(?: an extra| another)? \p{Sc}?\d[\d,.]{0,8}(?: (?:pounds|quid|dollars|bucks|euros))? (?:more|extra|on top|dearer)(?!\p{L})/iu;
/** "We gave up on the live stream", "you may run into another camera crew" */
const LEFT_OR_MET =
  /(?<!\p{L})(?:(?:gave|given|give|giving) up on|grew out of|got rid of|did away with|(?:run|running|bump|walk) into|came across|come across|(?:we|they|i)(?:'ve| have)? (?:dropped|scrapped|ditched|skipped|abandoned))(?: the| our| any| that| an?| all)?(?: \p{L}+)? $/iu;
/** "The university's media team will put it out live": hands that are not mine. */
const OTHER_HANDS =
  /(?<!\p{L})(?:(?:media|press|tech|it|comms|av|marketing|technical|streaming|house|in-house|\p{L}+'s(?: own)?) (?:\p{L}+ )?(?:team|office|crew|department|dept|people|staff|guys|lads|volunteers|technicians?|students)|(?:college|university|church|parish|venue|hall|station|broadcaster|supplier|cathedral|council|hotel))(?:'ll| will| do| does| always| usually| normally)(?! (?:need|want|like|love|require|have|look|appreciate))(?: \p{L}+){0,2} $/iu;
/** "Livestreamed by the church as always", "photographed by our archivist"; "filmed by the lake" and "by the end of June" are of a place and a day. */
const BY_OTHERS =
  /^(?: live)? (?:as (?:always|usual) )?by (?:us|ourselves|him|her|them|others?|another|one of (?:our|my|the|their)|an? (?:friend|guest|volunteer|student|pupil|parent|neighbour|colleague|local|member)|(?:the|our|my|his|her|their) (?!(?:\p{L}+ )?(?:lake|lakeside|river\p{L}*|sea\p{L}*|water\p{L}*|shore|beach|pool|canal|fountain|fire\p{L}*|door|window|gate|entrance|altar|stage|bar|bridge|trees?|tent|end|time|(?:mid|year)\p{L}*|summer|spring|autumn|winter)(?!\p{L}))\p{L}+)(?!\p{L})/iu;
/** "The stream was lost halfway": what went wrong once. */
const WENT_WRONG =
  /^(?: \p{L}+)? (?:(?:was|were|got) (?:lost|awful|terrible|poor|shaky|patchy)|broke (?:off|down|up)|failed|dropped(?: out)?|crashed|froze|stuttered|kept (?:dropping|freezing|buffering|stopping|cutting))(?!\p{L})/iu;
const PARTICIPLE = /(?:ed|shot)$/i;
/** "You get a runner from us": who is to help me. */
const GIVEN =
  /(?<!(?<!\p{L})(?:can|could|do|would|will|did|if) )(?<!\p{L})you(?:'ll|'d| will| would)? (?:get|have|be given|receive) (?:an?|the|our|one|two)(?: \p{L}+)? $/iu;
const TO_HELP = /^s? (?:from (?:us|our|the)|to (?:help|carry|assist)|at your|with you)(?!\p{L})/iu;
/** "The other firm wanted to stream everything", "we prefer a film to a stream", "the book is about a war photographer" */
const SAID_OF_OTHERS =
  /(?<!\p{L})(?:(?:other|another|last|previous|old|first|second) (?:firm|company|lot|people|crew|guys?|supplier|quote|videographer|photographer)(?: we (?:asked|had|tried))? (?:wanted|offered|tried|insisted|planned|proposed|suggested|would have|kept|talked)(?: \p{L}+){0,3}|prefer(?:red|s)? (?:an? |the |our )?\p{L}+ (?:to|over)(?: an?| the| any)?|(?:book|film|talk|lecture|play|keynote|novel|documentary|piece|exhibition|musical|opera|story|workshop)(?: \p{L}+){0,3} (?:is|was) (?:all )?about(?: an?| the)?(?: \p{L}+)?) $/iu;
/** "The truck does the switching" */
const DOES_IT = /^(?:does|handles|runs|mixes) /i;
const WHO_DOES = /(?<!\p{L})(?:the|our|an?|his|her|their|its|another)(?! (?:person|one|someone|somebody))(?: \p{L}+){1,2} $/iu;
const IS_AWAY = /^[^.;!?\n]{0,40}(?<!\p{L})(?:but|ill|sick|away|out|off|left|gone|cannot|can't)(?!\p{L})/iu;
/** "The stage crew brings a mixer": a desk. */
const BRINGS = /(?<!\p{L})(?:brings|supplies|provides|owns|comes with)(?: along)? $/iu;

/** What somebody has made, is or proposed, and what comes to me: none of it is asked of me. */
const isBeside = (text: string, clause: string, after: string): boolean =>
  (YOUR.test(clause) && WAS_GOOD.test(after) && (!/ing$/i.test(text) || /^[^.;!?\n]{0,55}? (?:was|were)(?!\p{L})/iu.test(after))) ||
  SENT_TO_ME.test(clause) ||
  TRADE_OF.test(clause) ||
  (AS_ONE.test(clause) && I_KNOW.test(after)) ||
  (PROPOSED.test(clause) && NOT_TAKEN.test(after)) ||
  COSTS_MORE.test(after) ||
  LEFT_OR_MET.test(clause) ||
  OTHER_HANDS.test(clause) ||
  SAID_OF_OTHERS.test(clause) ||
  (GIVEN.test(clause) && TO_HELP.test(after)) ||
  (DOES_IT.test(text) && WHO_DOES.test(clause) && !/(?<!\p{L})(?:who|that) $/iu.test(clause) && !IS_AWAY.test(after)) ||
  (PARTICIPLE.test(text) && BY_OTHERS.test(after));

/** Whether the word names another's work, mine to hire, or a thing of the programme. */
export function isOnlyTold({ role, text }: Word, clause: string, after: string): boolean {
  return (
    NAMED_ME.test(clause) ||
    isBeside(text, clause, after) ||
    (role === 'livestream' && /(?:stream|webcast|broadcast)s?$/i.test(text) && WENT_WRONG.test(after)) ||
    (role === 'vision mixing' && /mixer$/i.test(text) && BRINGS.test(clause)) ||
    (role === 'audio' && SUPPLIED.test(after)) ||
    (role === 'second camera' && (YOU_BRING.test(clause) || (I_BRING.test(clause) && IN_MY_PRICE.test(after)))) ||
    (role === 'photo' && /^(?:foto|photo)$/i.test(text) && OF_EVERYBODY.test(after)) ||
    (/ op$/i.test(text) && WHERE_IT_STANDS.test(after))
  );
}

/** "should be streamed, every round" */
const MUST_BE = /(?<!\p{L})(?:should|must|shall|ought to|needs? to|has to|have to|(?:is|are) to) be(?: \p{L}+ly)? $/iu;
export const isToBeDone = ({ text }: Word, clause: string): boolean => PARTICIPLE.test(text) && MUST_BE.test(clause);
