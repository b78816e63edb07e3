/**
 * Whether a body that the running text names is the one that asks: it opens the message, stands alone on its line, or the writer speaks in its
 * sentence. "The Ashdown Trust pays for it", "lights are by Moor Lighting Ltd" name somebody else.
 */

import { OCCASION } from '../occasions.ts';

/** Words of greeting before the first sentence. */
const GREETS =
  /^\s*(?:dear|hi|hiya|hello|hallo|hey|greetings|g'day|good|morning|afternoon|evening|guten|bonjour|hola|kit|to|esteemed)(?!\p{L})[^.!?\n]{0,40}(?:[.!?,:;]|\s-)\s+/iu;
/** A title or a greeting above the first sentence is no longer. */
const LONGEST_HEAD = 80;
const MOST_HEADS = 3;
/** No first sentence reaches further. */
const FARTHEST_FIRST = 2000;

/** Whether nothing but a title and a greeting stands before it: the sentence that it is in is the first one. */
function isInFirstSentence(before: string): boolean {
  const lines = before.split('\n').map((line) => line.trim());
  const here = (lines.pop() ?? '').replace(GREETS, '');
  const above = lines.filter((line) => line !== '');
  return (
    !/[.!?]["')]?\s/.test(`${here} `) &&
    above.length <= MOST_HEADS &&
    above.every((line) => line.length <= LONGEST_HEAD && !/[.?!]\s+\S/.test(line))
  );
}

/** The writer, or what is asked for. */
const SPEAKS =
  /(?<!\p{L})(?:I|we|me|my|our|here|this is|it's (?:for|about)|(?:writ|send|call|email)ing|(?:quot|request|enquir|inquir|record|film|shoot|video|stream|livestream|cover)\p{L}*|asks?|message|outreach|operator|camera\p{L}*|photograph\p{L}*|issued|instructed)(?:'\p{L}+)?(?!\p{L})/iu;
const LEADS =
  /(?<!\p{L})(?:(?:for|of|from|at|with|our)|(?:requested|issued|instructed|commissioned|sent) by)(?: (?:the|our|its|their|its own))?\s*$/iu;
/** What comes from a body, or who is from it, is not the body's asking. */
const GIVES =
  /(?<!\p{L})(?:borrow|rent|hir(?:e|ed|ing)|gets?|got|buy|bought|len[dt]|loan|support|help|donat|prize|grant|money|guest|(?:my|our) (?:brother|sister|son|daughter|wife|husband|dad|mum|mom|father|mother|cousin|uncle|aunt|niece|nephew|mate)|speaker|visitor|people|children|pupils|someone|somebody|friend|members? (?:of|from)|colleague|know|met|saw|heard|next to|opposite|sponsor|compet|versus|against|thanks to|in partnership|together|along|about you|newsletter|(?:by|with|guest|speaker|meet|interview) (?:\p{L}+\.? )?\p{Lu}\p{Ll}+ \p{Lu}\p{L}+, \p{Ll}+ of the\s*$|are from|is from|comes? from|came from|proceeds|in aid|money|raise)/iu;
const MONEY = /[£$€]\s?\d|\d\s?(?:EUR|GBP|USD|euros?|pounds|quid)\b/i;
/** "Jim Pask from the Otley Camera Club recommended you" */
const TELLS =
  /^[^.!?\n]{0,30}?(?<!\p{L})(?:recommended|suggested|mentioned|told|said|says|gave|passed|pointed|put|sent|showed|swears?|raved?|speaks?)(?!\p{L})/iu;
/** "The Association of Lichenologists, tiny as we are, has one" */
const OF_ITS_OWN =
  /^(?:,[^.!?\n]{0,60}(?<!\p{L})(?:we|I|our)(?!\p{L})| \((?:that's |that is )?(?:us|we)(?!\p{L})| we (?:are|have|do|hold|run|like|would|want|need)(?!\p{L}))/u;
/** "the Highland Knitters' Guild conference is on 23 October" */
const ITS = /^'?s?(?: [\p{L}'-]{2,14}){1,4}(?= (?:is|are|takes|will)(?!\p{L}))/u;
const NEAR = 160;

/** Whether the body whose name stands from `start` to `end` asks. */
export function isOwnBody(body: string, start: number, end: number): boolean {
  const after = body.slice(end, end + NEAR);
  if (TELLS.test(after)) return false;
  const line = body.slice(body.lastIndexOf('\n', start - 1) + 1, start);
  if (/^\s*(?:the\s)?$/i.test(line) && /^[.,]?[^\S\n]*(?:\n|$)/.test(after)) return true;
  const lead =
    body
      .slice(Math.max(0, start - NEAR), start)
      .split(/(?<!(?<!\p{L})(?:Prof|Dr|Mrs?|Ms|St|Rev|Hon))[.!?](?=\s)|\n/u)
      .at(-1) ?? '';
  if (
    MONEY.test(lead) ||
    GIVES.test(lead) ||
    /(?<!\p{L})(?<!(?:requested|issued|instructed|commissioned|sent) )by(?: the)?\s*$/iu.test(lead)
  )
    return false;
  return (
    (start < FARTHEST_FIRST && isInFirstSentence(body.slice(0, start))) ||
    /who we are[.:-]\s*$/i.test(body.slice(Math.max(0, start - NEAR), start)) ||
    (LEADS.test(lead) && (SPEAKS.test(lead) || OCCASION.test(lead))) ||
    OF_ITS_OWN.test(after) ||
    OCCASION.test(ITS.exec(after)?.[0] ?? '')
  );
}

/** "a talk by Sir Ian Moat, " before "president of the Royal Bee Society" */
const GUEST =
  /(?<!\p{L})(?:by|with|guest|speaker|meet|interview(?:ing)?|honou?r(?:ing)?|featuring|opened by)(?: is|:)? (?:\p{Lu}\p{L}{1,8}\.? )?\p{Lu}[\p{L}'-]+ \p{Lu}[\p{L}'-]+, (?:the |our )?$/u;
const GUEST_REACH = 80;
/** Whether what follows at a place says what somebody else is, who is told of. */
export const isToldOf = (body: string, at: number): boolean => GUEST.test(body.slice(Math.max(0, at - GUEST_REACH), at));
