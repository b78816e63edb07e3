/**
 * Whether the only price of a message is told as an offer where no word for pay stands by it: it is a piece of its own ("9 to 5, £300."), somebody
 * has, saved or thought of it, or it is asked whether it will do. A price that is told of something is that thing's: "The roof will cost £80,000".
 */
import type { Amount } from '../money/units.ts';
import { sentenceAround } from '../parts/sentences.ts';

/** Words that lead up to a sum which is a piece of its own. */
const LEADS =
  /^[\s"“'(>*•|.-]*(?:(?:still|only|just|all|so|and|plus|but|with|for|about|around|roughly|say|maybe|yes|yep|yeah|ok|okay|right|is|it's|its|it is|a|have a|i've a|that's|thats|there's|theres|there is|there are|one|how's|hows|how|what|about|the|at|usual|same|day|buyout|lump ?sum|or|i|he|she|they|said|says|nothing|paid|payment|approx|circa|ca|à|pour|für|por|para|voor|except|it will be|video|camera|cam|op|crew|shooter|wrap|lunch|price|number|figure|limit|frame|ceiling|reward|gage|cachet|arvodet|tari\p{L}*|looking|thinking|thinkin|altogether|total|together|all told|in all|does|would|will|hourly|daily|whichever|both|each|per|stunden\p{L}+|two|three|show|shoot|are|days|evenings|nights|är|es|est|de|la|le|of|tarif\p{L}*|tages\p{L}+|dag\p{L}+|diaria|journalier|honorar\p{L}*|pauschal|max|today|tonight|my|our|your|you|it)[\s,:.]+){0,6}$/iu;
/** Where a piece begins. */
const PIECES = /[,:;(|/•*+=\n]|\.\s|\s[–—-]{1,2}\s|…| (?:and|plus|&) /;
/** A clause that tells of something before the sum behind its comma. */
const TELLS =
  /\b(?:is|was|are|were|will|costs?|signed|won|paid|sold|raised|spent|charges?|on the (?:gate|door)|deal|price|prizes?|fees?|tickets?)\b[^,]{0,60},\s$/i;

/** Who may have money for it. */
const WHO = String.raw`(?:we|i|he|she|they|you|who|u|name\p{L}*|${[
  'mum|mom|dad|mam|gran|nan|grandad|grandpa|grandma|mother|father|brothers?|sisters?|me|husband|wife|partner|uncle|aunt|cousin|son|daughter|in-law|parents|family|couple|friends?|colleagues|families',
  'client|boss|board|committee|council|trustees|wardens|bursar|chamber|trust|choir|parish(?:ioner)?|school|head|principal|donor|captain|chair(?:man)?|treasurer|club|guild|circle|association|office|commune|business|company|union|society|ptf?a|producer|promoter|agency|subs|band|lads|girls|team|student council',
].join('|')})`;
const HAS = String.raw`(?:(?:have|has|had)(?: got| put| given| written| said)?|gave|gives?|giving|put|puts|(?:can|could|would|'d|’d|will|'ll)(?: \p{L}{2,10}){1,2}|collected|say|scraped|agreed(?: on)?|saved(?: up)?|scraped together|chipped in(?: so)?|clubbed together|thought|think|thinking|thinkin'|figured?|imagine|reckon(?:s|ed)?|propose[sd]?|suggests?|approved?|okayed|allow(?:s|ed)?|sa(?:id|ys)|told me|told(?: that)?|talking|looking at|hop(?:e|ing) for|got|count(?:ing)? (?:on|with)|working with|dispose of|aiming for|fundraised|to stretch (?:to|past)|stretch (?:to|past)|getting|get)`;
const SHORT = String.raw`(?:'ve|’ve|'m|’m|'re|’re|'s|’s|'d|’d)`;
const SOFT = String.raw`(?: (?:about|around|roughly|some|something|like|only|just|between|maybe|up|to|a|an|the|of|on|got|left|another|aside|with|for|in|that|us|you|lump|sum|total|max|limit))*`;
const SOMEBODY_HAS = new RegExp(
  String.raw`(?<!\p{L})${WHO}(?:${SHORT})?(?: \p{L}{2,12}){0,2}? ${HAS}${SOFT}[,:]?\s["“]?$|(?<!\p{L})(?:we|i|they|he|she|you|who)${SHORT}${SOFT}\s["“]?$|(?<!\p{L})(?:there(?:'s| is| are)|(?:and|but|only) (?:have|has|had|got)|(?<=\)) gives?|(?:do|have|pay|spend|go|find|give|afford|manage) (?:any )?more than|(?:can|could|cannae|not|can't|won't) stretch past|passed a hat[^.?!]{0,20} to|makes|going|are at|works out at)${SOFT}\s$`,
  'iu',
);
/** What may stand behind a sum that somebody has for it. */
const BEHIND =
  /^["”]?(?:\s*(?:[.,;!?)…\n+]|$|[–—-])|\s(?:towards it|for (?:it|this|that|you|u|the (?:video\w*|film\w*|day|job|camera\w*|whole thing|lot|two|three|pair|work)|your|everything|all|both|filming|precisely|exactly)|to (?:give|spend|pay|offer|film)|in (?:mind|(?:the|our) (?:kitty|pot|budget|envelope|tin|hat|bank|jar|pocket|purse|till))|(?:put |set )?(?:aside|left|got|saved|put by|together|collected|spare|cash|ready|max|tops|only|total|either|if|and|but|plus|including|inclusive|which|that|so|too|though|however|because|as|or|lol|ish|from (?:the|our|my|his|her|student) (?:parents|pta|council|kitty|committee|club|school|grandparents|families|union)|from \d+ \p{L}+|from (?:the |our )?\p{L}{3,12} (?:and|for)|uit|suff\p{L}+|is|would|are|does|do|at most|at the most|a day|without|with|ex|excl\w*|incl\w*|net|gross|buyout)\b))/iu;
/** "Could you do it for £550?", "and for £500 you'd leave" */
const ASKED = /\b(?:could|can|would|will|do|if|whether|asks?|still|though|then)\b[^.;!]{0,60}\b(?:you|u|it|that|this)?\b[^.;!]{0,60}$/i;
const QUESTION = /^[^.!;\n]{0,60}\?/;
/** "is the most we can do", "is fair", "aside for the job" */
const JUDGED =
  /^,? (?:suffi|(?:is|are|would be|will be|seems|sounds|'s|would|will) (?:cover|suffice|do\b|the (?:most|best|limit)|fair|fine|ok|okay|all|right|correct|in order|enough|what|good|daft|per|a day|our|my|for (?:you|the (?:day|job|work))|(?:all )?(?:we|i)|set|reasonable|yours?|given|earmarked)\b)/i;
/** Words of other languages that give, have and think of money. */
const ABROAD =
  /(?<!\p{L})(?:budget\p{L}{1,4}|tari\p{L}+|zahl\p{L}+|biet\p{L}+|g[ie]b\p{L}+|gibt|hat|hab\p{L}+|hätten|dacht\p{L}*|gedacht|kasse|gage|honorar|pauschal\p{L}*|ofre\p{L}+|tenemos|tengo|podemos|disponemos|pens\p{L}+|propon\p{L}+|pag\p{L}+|avons|disposons|dispos\p{L}+|propos\p{L}+|pa(?:ie|yons|yer)|donn\p{L}+|offr\p{L}+|suffi\p{L}+|betal\p{L}+|bied\p{L}+|hebben|tænkt|tænker|erbjud\p{L}+|tilby\p{L}+|arvod\p{L}+|honorer\p{L}+|dar|da(?:mos|re|iamo)|abbiamo|possiamo|diamo|tra[ei]\p{L}*|consig\p{L}+|con|partida|cachet|tarif\p{L}*|tages\p{L}+|dag\p{L}+|mehr als|beisammen|contente?a?)(?!\p{L})[^.?!]{0,50}$/iu;

/** The sentence speaks of the work, of me or of an order for it. */
const OF_THE_WORK =
  /(?<!\p{L})(?:you|u|yours?|yourself|film(?:s|ing|ed)?|video\w*|camera\w*|shooters?|shooting|footage|coverage|edit(?:ing)?|po|purchase order|honorarium|hourly|hope|ideally)(?!\p{L})/iu;

/** Whether the words around the only price of a message tell it as an offer. */
export function isLoneOffer(text: string, { start, end }: Amount): boolean {
  const sentence = sentenceAround(text, start, end);
  const before = text.slice(sentence.start, start);
  const after = text.slice(end, Math.min(sentence.end + 1, end + 80));
  const piece = before.split(PIECES).at(-1) ?? '';
  if (LEADS.test(piece) && !TELLS.test(before)) return true;
  if (JUDGED.test(after) || (QUESTION.test(after) && ASKED.test(before))) return true;
  if (OF_THE_WORK.test(before) || OF_THE_WORK.test(after)) return true;
  if (ABROAD.test(before)) return true;
  return SOMEBODY_HAS.test(before) && BEHIND.test(after);
}
