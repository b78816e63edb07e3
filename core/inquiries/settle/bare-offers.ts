/**
 * Offers that bear no sign of money, as people write them in a chat: "350 ok?", "its 200 and a board", "he's got 500 for it".
 */
import type { Amount } from '../money/units.ts';
import type { Where } from './scene.ts';

/** What asks whether a sum will do. */
const WILL_DO = String.raw`(?:ok(?:ay|ey)?|all ?right|alright|fine|cool|good|enough|fair|works?|do(?: it)?|possible|sounds? (?:ok|okay|good|fair|right|fine)|in (?:it|there) for you|cash|max|tops)`;
/** "550 works", "the 750 is grand" */
const SUITS = String.raw`(?:works|suits?|(?:is|'s|would be|will be|sounds) (?:ok|okay|grand|fine|good|cool|all ?right|alright|fair|great|perfect|doable|possible|enough))`;
/** What a sum is for, where it is for the work. */
const FOR_IT = String.raw`for (?:it|that|this|you|u|the (?:\p{L}+ )?(?:day|job|lot|gig|night|evening|afternoon|morning|film|video|shoot|thing))`;
/** Where a sum lies that is kept for it. */
const KEPT = String.raw`in (?:the|our) (?:tin|pot|kitty|jar|hat|purse|budget|bank|fund|account|cash ?box|till)`;
/** What comes with a sum. */
const WITH_IT = String.raw`(?:and|plus|\+|&|n) (?:(?:a|an|some|free|all|your|the) (?!(?:bit|half|few|lot|couple|quarter)\b))?\p{L}{3,12}`;
/** A small word that leads up to a sum which is a sentence by itself. */
const LEAD =
  /^\s*(?:["'(–-]\s?)?(?:(?:so|and|but|yes|ok|maybe|say|the|(?:let me know|lmk|tell me|shout|see|say) if|i'd say|is|would|does|how about|what about|about|around|like|only|just)[ ,]+){0,3}$/i;
const ALONE_AFTER = new RegExp(
  String.raw`^(?:,? (?:${WILL_DO}|${FOR_IT})){0,2}(?:,? (?:${WILL_DO}))?(?: (?:with|for|by) (?:you|u))?\s*(?:[.?!;)]|$)`,
  'iu',
);
const JUDGED_AFTER = new RegExp(String.raw`^,? (?:${WILL_DO}|${FOR_IT}|${SUITS}|koha)\b`, 'iu');
/** "its", "he's got", "pays": somebody who has or gives a sum. */
const GIVES =
  /(?:^|[\s,(])(?:it'?s|that'?s|it is|that is|it pays|pays|(?:(?:he|she|they|we|i|client|boss|band|couple)(?:'s|'ve|'d| has| have|ve)?(?: got)?))\s(?:only |just |about |around |like )?$/iu;
/** "Sie zahlt 400 bar": in cash, in another language. */
const PAYS_ABROAD =
  /(?<!\p{L})(?:zahl(?:t|en|e)|g[äe]b(?:t|en|e)|paie(?:nt)?|payons|donne|pag(?:o|a|an|amos|hiamo)|betaal(?:t)?|betalen)\s$/iu;
const IN_CASH = /^ (?:bar|cash|auf die (?:hand|kralle)|en (?:efectivo|mano|liquide|espèces)|in (?:contanti|mano)|contant|cont)(?!\p{L})/iu;
const GIVEN_AFTER = new RegExp(String.raw`^(?:,? (?:${FOR_IT}|${WITH_IT}|${KEPT})|\s(?:cash|max|tops)\b)`, 'iu');
const IT_IS = /(?:^|[\s,(])(?:it'?s|that'?s|it pays|pays)\s(?:only |just |about )?$/i;
const ENDS = /^\s*(?:[.?!;)]|$)/;
/** "I've 400.", "hes got 250": a sentence of its own that says what somebody has, where no words before it count anything. */
const HAS_ALONE =
  /^\s*(?:(?:and|but|so|ok|well) )?(?:i|we|he|she|they)(?:'ve|ve|'s|s| have| has)(?: got)? (?:only |just |about |around |like )?$/i;
const COUNTS =
  /\b(?:how many|guests?|people|capacity|seats?|heads?|holds?|fits?|sits|pupils|students|kids|children|members|delegates|expect\w*|attend\w*|tickets?|chairs|runners|players|entries|crowd|audience|pages|photos|copies|km|miles|metres|meters)\b[^\n]*$/i;

/** So many blanks are looked at before a number for the beginning of its line. */
const LINE_LEAD = 3;
/** Nobody offers less for a job, or more without saying of what. */
const [LEAST, MOST] = [100, 5000];
/** Written with a "k" or a sign between its thousands it is money of a country where much is counted. */
const [PLAIN_DIGITS, MOST_GROUPED] = [5, 100_000];
/** So far before a sum what is counted may be named. */
const COUNTED = 90;
/** What people offer is a round sum; a number that is none is counted, not paid. */
const ROUND = 5;

/** Whether a number without a sign of money is told as what somebody will pay. */
export function isBareOffer(text: string, { start, end, amount, mark, per }: Amount, sentence: Where): boolean {
  if (
    mark !== undefined ||
    per !== undefined ||
    amount < LEAST ||
    amount > (text.slice(start, end).length > PLAIN_DIGITS || /k$/i.test(text.slice(start, end)) ? MOST_GROUPED : MOST) ||
    amount % ROUND !== 0
  )
    return false;
  const before = text.slice(sentence.start, start);
  const after = text.slice(end, Math.min(sentence.end + 1, end + 80));
  if (LEAD.test(before)) {
    // A number that is a line by itself may be anything: a room, a row of a table.
    const line =
      /(?:^|\n)[ \t]*$/.test(text.slice(Math.max(0, start - LINE_LEAD), start)) && /^[ \t.]*(?:\n|$)/.test(text.slice(end, end + 4));
    return (!line && ALONE_AFTER.test(after)) || JUDGED_AFTER.test(after);
  }
  if (PAYS_ABROAD.test(before) && IN_CASH.test(after)) return true;
  if (HAS_ALONE.test(before) && ENDS.test(after)) return !COUNTS.test(text.slice(Math.max(0, sentence.start - COUNTED), sentence.start));
  return (GIVES.test(before) && GIVEN_AFTER.test(after)) || (IT_IS.test(before) && ENDS.test(after));
}
