/**
 * Towns that say whose somebody is ("a Boston publisher", "a crowd from Galway"), and towns that the sender takes back.
 */

const WHO = String.raw`(?:publisher|compan(?:y|ie)|firm|agenc(?:y|ie)|outfit|crowd|crew|brewer(?:y|ie)?|distiller(?:y|ie)?|bakery|label|start-?up|charit(?:y|ie)|client|couple|bank|business(?:e)?|practice|produce|producer|promoter|planner|organi[sz]er|editor|director|photographer|videographer|cameraman|camera operator|shooter|freelancer|operator|lad|lass|fella|fellow|guy|bloke|chap|man|woman|lady|friend|mate|colleague|native|outfit|collective|maker|manufacturer|supplier|dealer|developer|builder|designer|consultanc(?:y|ie)|consultant|insurer|lawyer|brand|magazine|newspaper|band|quartet|trio|ensemble|troupe|retailer|co-?op|(?:wine|publishing|auction|fashion|production|design|port|sherry|trading|software) house)`;
const BEFORE_KIND = /(?<![\p{L}'])(?:an?|the|some|another|my|his|her|their|this|that|by|with|for|two|three)\s(?:\p{Ll}[\p{L}-]{0,15}\s)?$/u;
const KIND = new RegExp(String.raw`^(?:-based\b|\s(?:\p{Ll}[\p{L}&-]{0,15}\s){0,2}?${WHO}s?(?![\p{L}-]))`, 'u');
/** "a crowd from", "the firm out of" */
const WHO_FROM = new RegExp(String.raw`(?<!\p{L})${WHO}s?,? (?:is |are |come |comes |all )?(?:from|out of)\s$`, 'u');
/** True where a land or a region tells only whose somebody is: "our couple from Texas". */
export const isWhose = (lead: string): boolean => WHO_FROM.test(lead);
/** "mileage from Toronto, whatever it is", "from Zurich main station": where a way begins; "live from Tralee" is where it is. */
const FROM = /(?<!\p{L})from\s$/u;
const SENT_FROM =
  /\b(?:(?<!\b(?:i|we|you|they|who|parents|family) )live|stream\w*|webcast\w*|broadcast\w*|debate|session|coverage|relay\w*|call|inquiry|enquiry|request|lead|booking|leaving|departing|sailing|starting|over|work|job|report\w*)(?: \w+){0,2} from\s$/i;

/**
 * True where a town only tells whose somebody is or where a way begins.
 * @param lead what stands before the name
 * @param after what stands behind it
 * @param dated a date follows the name
 */
export function isOrigin(lead: string, after: string, dated: boolean): boolean {
  if (BEFORE_KIND.test(lead) && KIND.test(after)) return true;
  if (I_SIT.test(lead) && OFFICE.test(after)) return true;
  return WHO_FROM.test(lead) || (FROM.test(lead) && !dated && !SENT_FROM.test(lead));
}

/** "I'm in the Galway office" */
const I_SIT = /\b(?:i'm|i am|we're|we are|i work|we work|i sit|based) (?:in|at|from|with|for|out of) (?:the|our)\s$/i;
const OFFICE = /^\s(?:office|branch|team|hq|headquarters|store|shop|studio|department)\b/i;

/** "old brief, for comparison:" */
const OLD =
  /(?:^|[\n(]|[.!?]\s)[\s>*•-]{0,4}(?:the )?(?:old|was|before|previous(?:ly)?|original(?:ly)?|former(?:ly)?|superseded|cancelled|struck out|deleted)\b(?! (?:wondering|hoping|thinking|told|asked|given|sent|looking))[^\n.!?]{0,60}$/i;
/** "I put Hull and it's Selby", "Hull should read Selby" */
const PUT_RIGHT =
  /^(?:,? (?:and|but|when|where|y|pero|et|mais|und|aber|e|ma|maar|en)|[,;:–-]{1,2}|,? (?:which )?(?:was|is) (?:wrong|a typo|a slip|a mistake)[^\n]{0,20}?)?\s(?:(?:it|that)(?:'s| is| was)? (?:really |actually |meant to be |supposed to be |should (?:be |have been ))?|should (?:be|have (?:been|said|read)) |read |es |era |c'est |es ist |è |het is |het wordt )(?:in |at |en |à )?(?!(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day)\p{Lu}\p{Ll}/u;
/** "Knaresborough, isn't it? - No" */
const DENIED =
  /^(?:,? (?:isn't it|is it|right|no|again))?\?\s{0,3}(?:\n\[?[^\n\]:]{0,30}(?::\d\d)?\]?[^\n:]{0,30}:\s?)?(?:no|nope|nah|nein|non)(?=[.,!;\n]|$|\s(?:it|that|this|they|we|not|i)\b|\s(?:it|that)'?s\b)/i;
/** "doncaster thursday? client's pulled it", "Leeds -> Wakefield", "in Duluth (no camera)" */
const GIVEN_UP =
  /^(?: [^.?!,\n]{0,16})?[?,.]\s(?:(?:they|the client|client|it|that)(?:'s|'ve| has| have| is| was| got)? (?:been )?(?:pulled|cancelled|canceled|off|dropped|scrapped|binned|fallen through)\b)|^\s?(?:(?:->|=>|→)|[(–-]\s?(?:no (?:camera|filming|video|film|need)|not (?:you|filmed|needed|for you)|without you)\b)/i;
/** "(you needn't come)", "but you don't need to bother with that", "(pas besoin de vous)", "den brauchen wir nicht": what is there is not my job. */
const THAT = String.raw`(?: (?:it|that|this|them|those|there|for that|for those|for it))`;
const NOT_NEEDED = new RegExp(
  String.raw`^[^.?!\n(]{0,24}?(?:[(,;–-]| but| and| though) ?(?:so |which |where |that |those )?(?:` +
    [
      String.raw`(?:there's |that's )?no (?:need|call) (?:for|of) you|no need to (?:(?:film|shoot|cover|record)${THAT}|(?:come|attend|travel|be there))`,
      String.raw`you(?:'re| are|'ll be| won't be)? not (?:needed|wanted|required)|you (?:aren't|won't be) (?:needed|wanted|required)`,
      String.raw`you (?:needn't|(?:don't|do not|won't|needn't)(?: need to| have to)?) (?:ever )?(?:(?:come|see it|be there|attend|travel)(?! (?:before|until|till|earlier|at|for|by|alone|with))|(?:film|shoot|cover|record|bother with|worry about|do)${THAT})`,
      String.raw`(?:we )?(?:don't|won't|do not) (?:need|want)(?: you| it)?(?: (?:filmed|covered|there)|${THAT}(?: (?:filmed|covered))?(?= ?[.,;!)]))`,
      String.raw`not (?:filmed|to be filmed|covered|needed|your (?:job|problem))(?= ?[.,;!)])`,
      String.raw`(?:l[àa] )?(?:pas|aucun) besoin (?:de vous|que vous|d'y)|(?:den|die|das|dort|da) (?:brauchen wir|brauchst du|müssen sie|musst du) [^.,;!)\n]{0,16}?nicht|daar (?:hoef|hoeft) (?:je|u) niet|no hace falta (?:que vengas|ir)|non serve`,
    ].join('|') +
    ')',
  'iu',
);

/** True where a town is named only to be taken back, or as a place to which nobody has to go. */
export const isTakenBack = (lead: string, after: string): boolean =>
  OLD.test(lead) || PUT_RIGHT.test(after) || DENIED.test(after) || GIVEN_UP.test(after) || NOT_NEEDED.test(after);
