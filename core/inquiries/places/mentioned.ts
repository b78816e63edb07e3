/**
 * Towns that a sentence only mentions, so that they are no place of the job even where no other is told: of last year, where somebody or something comes
 * from, where letters and films go, on the way, other things that bear a town's name, and towns that were turned down.
 */

/** From the beginning of the sentence to the name. */
const WITHIN = String.raw`[^.!?;:\n]`;
const IN = '(?:in|at|near|outside)';
const SOMEBODY = String.raw`(?:videographer|photographer|camera(?:man| operator| op)|editor|florist|baker|caterer|dressmaker|jeweller|tailor|printer|lawyer|solicitor|accountant|bookkeeper|translator|designer|colleague|friend|mate|neighbour|neighbor|cousin|brother|sister|daughter|son|nephew|niece|uncle|aunt|husband|wife|partner|boss|teacher|supplier|dj|drone (?:man|chap|guy|pilot|operator))`;

/** "Last year we did it in": what this year or a repeat says is of the job again. */
const EARLIER = new RegExp(
  String.raw`\b(?:last (?:year|time|month|week|summer|spring|autumn|fall|winter|season)|(?:the )?(?:year|time|one) before(?: that| last)?|(?:years?|months?|weeks?) ago)\b(?:'s)?(?<since>${WITHIN}{0,60}?(?<![\p{L}'’])(?:was|were|did|had|held|went|used|made|played|ran|filmed|shot|happened|took place|met|celebrated)(?![\p{L}'’])${WITHIN}{0,30}?\s)$`,
  'iu',
);
const AGAIN = /(?<![\p{L}])(?:this|again|now|next|same|will|would|could|can|'ll|as usual|always|but|so)(?![\p{L}])/iu;

const LEADS = [
  // "grew up in", "she studied film in", "was born in", "the dress was made in"
  String.raw`\b(?:grew up|(?<!\bcase )studied|studies|studying|graduated|emigrated|trained|qualified|went to (?:school|uni\w*|college)|at (?:school|uni\w*) together)(?: [\w'-]+){0,3} ${IN} `,
  String.raw`\b(?:is|are|was|were|been) (?:\w+ly )?(?:born|raised|educated|baked|brewed|sewn|woven|knitted|printed|diagnosed|founded)(?: \w+)? ${IN} `,
  String.raw`\b(?:was|were) (?:\w+ly )?(?:made|bought|built|shot|filmed|recorded|written|invented)(?: \w+)? ${IN} `,
  String.raw`(?<!\bif )\b(?:he|she|they|cousin|friend|brother|sister|colleague|we|i) (?:did|filmed|shot|held|had) (?:it|one|ours|theirs|hers|his)(?: once| before)? ${IN} `,
  String.raw`\b(?:footage|film|video)s? (?:from (?:19|20)\d\d )?(?:shot|made) ${IN} `,
  // "our usual videographer has moved to"
  String.raw`\b(?:${SOMEBODY}s?|kids?|children|parents|mum|mom|dad|family|man|guy|bloke|chap|lad|woman|he|she|who)(?:'s|'ve| has| have| had)?(?: since| now| just| recently)? (?:moved|relocated|emigrated|retired)(?: back| over| away| up| down| out)? to `,
  // "through a friend in", "our lawyer in", "the DJ lives in"
  String.raw`\b(?:through|via|by|to|with|know|knows|thanks to) (?:an?|my|our|the|some|his|her|their|your) (?:[\w-]+ )?${SOMEBODY}s? ${IN} `,
  String.raw`\b(?:an?|my|our|the|his|her|their|your) (?:[\w-]+ )?(?:lawyer|solicitor|accountant|bookkeeper|translator|printer|florist|baker|dressmaker|jeweller|tailor|editor|supplier|dj) (?:in|near) `,
  String.raw`\b(?:an?|my|our|the|his|her|their|your) (?:[\w-]+ )?${SOMEBODY}s?(?:'s| is| are) (?:based |over |up |down |now )?(?:in|near) `,
  String.raw`\b(?:the|our|my|his|her|their) (?:[\w-]+ ){1,2}lives? (?:in|near) `,
  String.raw`\b(?:he|she|who|${SOMEBODY}) works (?:for|at|with|in)\b${WITHIN}{0,40} `,
  String.raw`\b(?:colleague|boss|manager|director)s? (?:in|at|from) (?:the|our) `,
  // "the cake is from a bakery in", "rent lights from a firm in", "the kit hire place in"
  String.raw`\b(?:comes?|came|(?<!\b(?:i|we|this) )(?:is|are|was|were)|bought|buy|rent\w*|hire\w*|hiring|order\w*|borrow\w*|get|got|getting)(?: (?!from)[\w'-]+){0,3} from (?:an?|the|our|my|this|some)(?: [\w'-]+){1,4} ${IN} `,
  String.raw`\b(?:kit|gear|equipment|camera|lens|van|car) (?:hire|rental)(?: \w+)? ${IN} `,
  String.raw`\bas far (?:away )?as `,
  // "the money goes to a hospital in"
  String.raw`(?:^|[.!?\n]\s?)(?:we (?:collect|raise|are collecting|are raising)|(?:the|all|any) (?:money|proceeds|profits?|appeal|funds|collection))\b${WITHIN}{0,40}\b(?:for|to)\b${WITHIN}{0,40} ${IN} `,
  // "the crew hotel is in"
  String.raw`\b(?:(?:crew|your|guests?'?) (?:hotel|digs|accommodation|lodgings|rooms?)|(?:hotel|digs|rooms?|beds?|accommodation)(?: is| are)? for (?:the |all |our )?(?:you|crew|guests|team|cast)|put you up)\b${WITHIN}{0,20} ${IN} `,
  // "the nearest station is", "the coach leaves", "follow signs for"
  String.raw`\b(?:nearest|closest) (?:[\w-]+ )?(?:stations?|airports?|stops?)(?: [\w-]+)?(?:'s| is| are| would be|,)? (?:in |at )?`,
  String.raw`\b(?:coach|bus|minibus|train|ferry)(?:es|s)? (?:leaves?|departs?|goes|runs?|sets? off|heads?)(?: back| home)?(?: from| to| for)? `,
  String.raw`\b(?:signs? (?:for|to)|towards|via|sends? you (?:to|via)|turn (?:off|left|right) (?:at|for))(?: the)? `,
  // "the best man is called": a village may be called so
  String.raw`(?<!\b(?:village|town|place|hamlet|city|spot|island|suburb|townland|area|bay|somewhere) )\b(?:called|named|nicknamed|titled|entitled) `,
  String.raw`\b(?:theme|motto|dress code|password)(?: this year)?(?:'s| is| will be) `,
  String.raw`\b(?:table|room|team|house) names? (?:is|are) `,
  // "the Bishop of", "the MP for", "HMS"
  String.raw`\b(?:(?:arch)?bishop|dean|vicar|rector|duke|duchess|earl|countess|lord|sheriff|mayor|mayoress|lord lieutenant|mp|ambassador|consul|battle|treaty) (?:of|for) `,
  String.raw`\b(?:HMS|RMS|USS) `,
  // "they beat", "we're up against"
  String.raw`\b(?:beat|up against|lost to|won by|beaten by|playing against|drawn against) `,
  // "we're doing the honeymoon in", "first prize is a trip to"
  String.raw`\b(?:honeymoon|prizes? (?:is|are|includes?|will be)|lots? includes?|auction includes)\b${WITHIN}{0,30} (?:in|to|at) `,
  String.raw`\b(?:hen|stag)(?: do| night| party| weekend)? was ${IN} `,
  String.raw`\b(?:our|my|the|their) other (?:[\w-]+ ){1,2}${IN} `,
  String.raw`\bsister (?:club|school|company|church|society|branch|site|hotel) ${IN} `,
  String.raw`\bha(?:ve|s) (?:\w+ )?(?:offices|branches|stores|shops|plants|teams|members|chapters|campuses)(?: \w+)? in `,
  // "her children in Norway can't fly in"
  String.raw`(?<!\b(?:film|filming|video|visit to|record|of|with|for|all) )\b(?:her|his|their|my|whose) (?:children|kids|grandchildren|family|relatives|relations|cousins|parents|grandparents|folks|in-laws) (?:back |over |up |down )?${IN} `,
  // "typed in a café in", "your film of the wedding in", "I know you're in"
  String.raw`\b(?:typed|typing) (?:[\w'é]+ ){0,5}(?:in|from|at) `,
  String.raw`\byour (?:film|video|work|trailer|clip|reel|showreel|footage|stream)s?(?: of| from| at| for)\b${WITHIN}{0,40} (?:in |at |from )?(?:the )?`,
  String.raw`\b(?:know|see|gather|saw|guess|assume|since|as|though) (?:that )?(?:you're|you are) (?:based |over |up |down )?(?:in|near) `,
  // "we decided against"
  String.raw`\b(?:decided|voted|chose|advised) against `,
  // "the film will be shown in", "for our stand at a fair in"
  String.raw`\b(?:film|video|clip|trailer|footage|cut|reel)s?\b${WITHIN}{0,14}\b(?:shown|screened|premiered|seen|used|played|for our stand)\b${WITHIN}{0,40} (?:in|at) `,
  String.raw`\b(?:show|screen|use|present) (?:it|this|the (?:finished )?(?:film|video|clip|trailer|footage))\b${WITHIN}{0,40} (?:in|at) `,
  String.raw`\bwatching (?:it |us |live |along )*(?:from|in) `,
  // "post the stick to Grandma in"
  String.raw`\b(?:post|deliver|ship|mail|courier|invoices?|receipts?|send (?:it|them|the (?:finished )?(?:film|video|files?|footage|usb|stick|drive|cards?|disk|dvds?)))\b(?:(?!\b(?:talk|speech|lecture|someone|somebody|crew)\b)${WITHIN}){0,50}?\bto (?:our|my|the|his|her|their|(?:gran|nan|mum|mom|dad|auntie|aunt|uncle)\w*)(?: [\w'-]+){0,3} (?:in|at) `,
].map((words) => new RegExp(`${words}$`, 'iu'));

/** "Invoice address: Tarn Valley Housing, 12 High Street,": lines of an address that is no venue's. */
const LETTERS =
  /\b(?:(?:invoice|invoicing|billing|registered|postal|mailing|delivery|return|home|correspondence) (?:address|office)|registered (?:in|at)|(?:bill|invoice) to:)(?:(?!\n\s*\n|\b(?:venue|location|where|place|site)\s?:)[^]){0,110}$/i;

const AFTERS = [
  // "a Bakewell tart", "the Chelsea buns", "in the Windsor suite"
  /^ (?:buns?|cakes?|tarts?|puddings?|pies?|pasties|cheeses?|sausages?|ham|beef|lamb|mustard|gin|whisky|biscuits?|boots?|suite|room|number|accent|style|stone|marble|crystal|sauce|spaniels?|terriers?|dialect)\b/,
  // "Bristol was too expensive", "we looked at Leeds but it was all booked"
  /^(?:'s| is| was| were| are| looked| proved| turned out)(?: just| simply| way| far| all| already| fully| sadly)* (?:too (?:expensive|dear|far|small|big|busy|pricey)|(?:fully )?booked(?: up| out| solid)?\b(?! for (?:us|the|our|this))|out of (?:the question|budget|reach))/,
  /^,? but (?:it|they|that|everything|everywhere|the \w+|nothing|all)\b[^.!?\n]{0,24}\b(?:booked|full|expensive|closed|taken|too (?:far|dear|small|big|busy))\b/,
  // "Rotherham are the reigning champions"
  /^ (?:are|were) (?:the |our )?(?:reigning|current|defending|champions|holders|favourites|favorites)\b/,
  // "is private", "but that one is covered", "but they have someone"
  /^[^.!?\n]{0,40}?(?:(?:is|are)(?:n't| not) part of (?:this|it|the job)|,? (?:but|and) (?:that|this|they|we)(?:'s| is|'ve| have)?(?: one)?(?: is|'s)?(?: already| got)* (?:covered|sorted|someone|somebody)\b|,? (?:but )?(?:it's |that's )?(?:not|isn't) for (?:filming|you)\b|,? (?:is|are) private\b|,? (?:but )?without (?:film|video|cameras?)\b|,? no need to follow\b)/,
  // "Brooklyn, our eldest,", "my sister's wedding in Crete was filmed on a phone"
  /^, (?:our|my|his|her|their) (?:\w+ )?(?:eldest|youngest|daughter|son|brother|sister|cousin|niece|nephew|best man|bridesmaid|dog|cat|horse|colleague|assistant|manager|secretary|boss|planner|(?:co-)?organi[sz]er)\b/,
  /^ (?:was|were|got|had been) (?:filmed|shot|recorded|done|captured|covered)\b/,
  // "Our Glasgow branch had you last spring"
  /^ (?:office|branch|team|lot|crowd)(?: \w+)? (?:had|used|hired|booked|recommended|told|suggested|passed|gave) /,
  /^ (?:will|can|could|should|are going to|want to|get to)(?: \w+)? (?:watch|dial in|tune in)\b/,
];
/** "I'm in Lisbon this week" */
const I_AM_IN = /(?:^|[.!?;,\n]\s?|\b(?:and|as|but) )(?:i'm|i am|i'll be|i will be) (?:\w+ ){0,2}(?:in|at) $/i;
const FOR_NOW = /^ (?:this (?:week|month|morning|afternoon)|at the moment|right now|until|till|today|for a (?:few|couple)|all week)\b/;
/** "a Dublin one", "a Cheddar board": no occasion. */
const ONE_OF = /(?<![\p{L}'’])an? $/iu;
const THING = /^ (?:one|board|girl|boy|man|woman|lad|lass|thing|number|accent|joke|song|tune|recipe|cheese|platter)(?![\p{L}-])/u;
/** "Rome, Athens and " before the last of a list. */
const LISTED = /(?:\p{Lu}[\p{L}'’-]+(?: \p{Lu}[\p{L}'’-]+)?(?:,|,? and|,? or| &) )+$/u;

/**
 * True where a sentence only mentions a town.
 * @param clause what stands before the name
 * @param after what stands behind it
 */
export function isOnlyMentioned(clause: string, after: string): boolean {
  if (LETTERS.test(clause) || AFTERS.some((words) => words.test(after))) return true;
  if ((I_AM_IN.test(clause) && FOR_NOW.test(after)) || (ONE_OF.test(clause) && THING.test(after))) return true;
  const lead = clause.replace(LISTED, '');
  const since = EARLIER.exec(lead)?.groups?.['since'];
  return (since !== undefined && !AGAIN.test(since)) || LEADS.some((words) => words.test(lead));
}

/** How far around a name its sentence is looked at. */
const AROUND = 120;
/** The same for a stretch of a text. */
export const isMentionedAt = (text: string, start: number, end: number): boolean =>
  isOnlyMentioned(text.slice(Math.max(0, start - AROUND), start), text.slice(end, end + AROUND));
