/**
 * An hour at which others come or something of the occasion begins, told of them from the beginning of its clause: "our crew is called for 7", "the
 * bride arrives at 2", "someone from our team will be there from 8", "the cake comes at 2", "Gates 9am", "talent call: 7", "load-in is at 8 for the
 * stage company only". It is none of my hours, however much its words are those of a call; what is told from it may be one.
 */
import { beginsWithOthers } from '../said/subject.ts';
import { COMES_THEN, othersCome, toldFromIt } from '../said/others-come.ts';
import { behindHour, CLAUSE_BEGINS, clauseBefore, sentenceAround } from '../parts/sentences.ts';
import type { Where } from './scene.ts';

const OTHERS = String.raw`(?:cast|staff|band|dj|choir|orchestra|family|families|guests|players|team|teams|company|committee|members|volunteers|dancers|actors|performers|musicians|singers|speakers|sponsors|exhibitors|traders|stallholders|staging|lighting|sound|audio|av|riggers|caterers?|catering|photographers?|florists?|bridal party|wedding party|bridesmaids|groomsmen|couple|press|media|vips|parents|kids|children|students|pupils|teachers|judges|officials|stewards|marshals|caretaker)`;
/** "just for the cast", "for the stage company only", "is internal", "(staging only)" */
const FOR_OTHERS_ALONE = new RegExp(
  String.raw`^,? (?:is |are )?for the (?:\p{L}+ )?(?:people|folk) (?:only|alone)\b|^,? \(?(?:(?:which|that|it|this)(?:'s| is| are)? )?(?:(?:just|only|purely|strictly|solely) (?:for|with) (?:the |our |my )?${OTHERS}(?=\s?(?:[.,;:!?)\n]|$|(?:and|but|so) )))|^,? \(?(?:(?:which|that|it|this)(?:'s| is| are)? )?(?:for|with) (?:the |our |my )?(?:(?!video|film|camera|crew)[\p{L}'-]+ )?${OTHERS} (?:only|alone)\b|^(?:,? which| and)? (?:is|are) (?:just |only |purely |strictly )?(?:internal|private|closed|in-house|staff only|for (?:staff|family|the cast|members)(?: only)?)\b`,
  'iu',
);
/** What is wanted then is mine, whoever is filmed. */
const FOR_FILM = /\b(?:you|u|film\p{L}*|cover\p{L}*|video\p{L}*|cameras?|camera\p{L}+|record\p{L}*|somebody|someone)\b/iu;
/** "no need for you to be there", "no need for you there", "you needn't be at that" */
const NO_NEED =
  /^[,;.]? (?:(?:but|and|so|though) )?(?:(?:(?:there(?:'s| is) )?no need (?:for you )?to|(?:you|u) (?:needn't|need not|(?:don't|dont|do not|won't) (?:need|have) to)) (?:be (?:there|here|at (?:it|that|this))|come(?: (?:to|for) (?:it|that|this))?|attend(?: (?:it|that|this))?|film (?:it|that|this)|cover (?:it|that|this))|(?:there(?:'s| is) )?no need (?:for|of) (?:you|video|filming|(?:a |the )?cameras?)(?: (?:there|here|then|yet|at (?:it|that|this)|for (?:it|that|this)))?|(?:you|u)(?: are|'re|r)? (?:not|aren't|won't be|will not be|wouldn't be) (?:needed|wanted|required)(?: (?:there|here|then|yet|at (?:it|that|this)|for (?:it|that|this)))?)(?: (?:either|though))?(?=\s?(?:[.,;:!)\n]|$|as\b|because\b|so\b))/i;
/** Of an hour that is told as one of several crews. */
const FOR_ANOTHER_CREW =
  /^ for (?:the )?(?:lighting|lights|staging|stage|sound|audio|av|riggers|rigging|catering|caterers|kitchen|band|talent|cast|guests|photos?|photographers?|stills|volunteers|staff|exhibitors|traders|speakers|decor|florists?|make-?up)\b(?! (?:and|&|\+) (?:video|you|cameras?|film)| (?:filming|coverage|video))/i;
/** Until when, and what ends: of that others tell. */
const ENDS = /\b(?:locks?(?: up)?|until|till?|til|ends?|leaves?|off|out|over|back|gone|finish\w*|done|wraps?|goes? home|closes?)\b/i;
/** What I am told right behind the hour goes before whose it is. */
const AND_ME =
  /^[^.;!?\n\d]{0,60}\b(?:you|u|yours|video)\b(?![^.;!?\n]{0,24}\d)(?! (?:don't|needn't|need not|can skip|are not|aren't|won't|need to know|know|see|can see|ask)\b)/i;
/** "come at 5.30 for sound" */
const COME_YOURSELF = /\b(?:come|arrive|be (?:there|here)|get (?:there|here)|start)\b[^,]{0,20}$/i;
/** "Could you make 3 pm for a quick phone call?" */
const TO_TALK = /^ for an? (?:(?:quick|short|brief|phone|telephone|video|zoom|intro|catch-up) ){1,2}(?:call|chat|talk|zoom)\b/i;
/** The part of a list that is mine: "bridal prep 9am (you start)". */
const HERE_I_START = /^ ?[(–-] ?(?:you|u|video|crew|cameras?|film\p{L}*)\b/iu;
/** "Crew van leaves the shop 5:45am": when it goes, with whoever is in it. */
const VAN_LEAVES = new RegExp(
  String.raw`${CLAUSE_BEGINS}(?:(?:the|our|a) )?(?:\p{L}+ )?(?:van|minibus|lorry|truck)(?:'ll| will)? (?:leaves?|departs?|sets? off|goes|go|pulls out|heads (?:off|out))(?: (?!you\b)[\p{L}'-]+){0,4} $`,
  'iu',
);
/** Who may be me as well, and a clause in which another hour or another subject stands. */
const ANYBODY =
  /^\s*(?:the |our |all |and )*(?:they|he|she|who|everyone|everybody|team|talent|gates?|doors?)\b|\d|\b(?:i|we|you|please|be there|be here|media team)\b/i;
const [LEAD, BEHIND] = [110, 90];

/** What an hour is where the words around it tell it of others alone: an hour of the occasion, or nothing that another is told from. */
export function ofOthersThen(text: string, { start, end, to }: Where & { to?: unknown }): 'show' | 'other' | undefined {
  const after = behindHour(text, end, BEHIND);
  const clause = clauseBefore(text, start, LEAD);
  const sentence = text.slice(Math.max(sentenceAround(text, start, start).start, start - LEAD), start);
  if (NO_NEED.test(after) || (FOR_OTHERS_ALONE.test(after) && !FOR_FILM.test(clause) && !COME_YOURSELF.test(clause))) return 'other';
  if (!to && FOR_ANOTHER_CREW.test(after) && !COME_YOURSELF.test(clause) && !FOR_FILM.test(sentence)) return 'other';
  if (TO_TALK.test(after)) return 'other';
  if (HERE_I_START.test(after)) return undefined;
  if (!to && toldFromIt(text, start)) return 'show';
  if (!to && VAN_LEAVES.test(text.slice(Math.max(0, start - LEAD), start)) && !AND_ME.test(after)) return 'other';
  if (ENDS.test(clause) || AND_ME.test(after)) return undefined;
  const told = othersCome(text, start) || (!to && !ANYBODY.test(clause) && beginsWithOthers(text, start) && COMES_THEN.test(clause));
  return told ? (to ? 'other' : 'show') : undefined;
}
