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
export const isMyHabit = ({ text }: Word, clause: string): boolean =>
  HABIT.test(clause) || (/(?:ed|shot)$/i.test(text) && DID.test(clause));

/** "The photographer does only photo", "it's been audio only": another's, or how it was until now. */
const OTHERS_ONLY =
  /(?<!\p{L})(?:(?:he|she|they|it|photographer|videographer|company|firm|team|agency|guy|man|friend|colleague|cousin|brother|sister)(?: (?:does|do|did|makes?|takes?|shoots?|offers?|provides?|covers?) (?:only|just)|(?:'s|'re| is| are) (?:now )?(?:only|just) (?:doing|taking|offering|making|covering|shooting))|i only(?= $)|(?:i|we) (?:only|just) (?:do|shoot|take|cover|make)|(?:only|just) (?:does|did|makes|takes|shoots|offers|covers)|(?:has|have|had|it's|they've|we've|that's) (?:always |only |just |so far )?been|(?:was|were)(?: (?:only|just|always))?)(?: \p{L}+){0,1} $/iu;
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

/** Whether the word names another's work, mine to hire, or a thing of the programme. */
export function isOnlyTold({ role, text }: Word, clause: string, after: string): boolean {
  return (
    NAMED_ME.test(clause) ||
    (role === 'audio' && SUPPLIED.test(after)) ||
    (role === 'second camera' && (YOU_BRING.test(clause) || (I_BRING.test(clause) && IN_MY_PRICE.test(after)))) ||
    (role === 'photo' && /^(?:foto|photo)$/i.test(text) && OF_EVERYBODY.test(after)) ||
    (/ op$/i.test(text) && WHERE_IT_STANDS.test(after))
  );
}

/** "should be streamed, every round" */
const MUST_BE = /(?<!\p{L})(?:should|must|shall|ought to|needs? to|has to|have to|(?:is|are) to) be(?: \p{L}+ly)? $/iu;
export const isToBeDone = ({ text }: Word, clause: string): boolean => /(?:ed|shot)$/i.test(text) && MUST_BE.test(clause);
