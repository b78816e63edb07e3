/**
 * Sentences in which an amount is no offer, whatever other words stand there: it is a part of a name, a difference, an earlier price, my own quote,
 * what others pay, or a part of a sum.
 */
import { phrases } from '../phrases.ts';

/** "a $400 train ride": what has its price before it. Only a word for pay, or one that names nothing, makes it an offer. */
const PRICED = /(?:^|[\s(])(?:an?|this|that|another|their|his|her)\s$/i;
/** "Avevamo pensato a 900 euro", "wir dachten an": no article either. */
const LEADS_TO =
  /(?<!\p{L})(?:pens\p{L}+|gedacht|dacht\p{L}*|denk\p{L}*|arriv\p{L}+|lleg\p{L}+|fino|hasta|jusqu'|circa|intorno|disposti|(?:hab\p{L}*|hatten|hätten)(?:\s\p{L}+){0,2})\s(?:a|an)\s$/iu;
/** French has, and has no article: "on a 380 euros". */
const HAS_IN_FRENCH = /(?:^|\s)(?:on|il|elle|y|qui|(?:la|le|notre|l')\s?\p{L}+)\sa\s$/iu;
const NAMES_NOTHING = new RegExp(
  String.raw`^(?:\s?(?:\+|plus|[-–])|[-\s]?ish\b|[-\s](?:${phrases(
    `
    budget* | fee | rate | honorar* | stipend | koha | donation | flat | total | max* | buy-out | gig | job | all | limit | ceiling | cap | payment | grant |
    lump | package | contribution | allowance | thank-you | token | remuneration | kitty | pot | purse | offer | contract | booking | day/daily/hourly/video/film/crew/shooting
    ang_bao | angpow | line | envelope | bursary | award_for | hand_out | maximum | figure | price | quote | deal | arrangement | spend | buyout | minimum
    for | in | on | at | to | from | by | is | was | are | and | or | if | per | a | an | each | every | we | you | i | they | plus | that | which | who | would | will | can | could | with
    including | inclusive | incl* | excl* | ex | net | gross | before | after | tops | cash | left | available | set | paid | all-in | but | so | as | of | do | work | should | max
  `,
  )}))|^[.,;:!?)\]/]|^\s*$`,
  'i',
);
/** "$400 cheaper", "£50 off": how far two prices lie apart. */
const DIFFERENCE =
  /^(?: (?:a lot|far|even))? (?:cheaper|dearer|less|more|short|off(?! (?:us|me|them|him|her))|apart|higher|lower|billiger|teurer|günstiger|weniger|mehr|de moins|de plus|moins cher|plus cher|más (?:caro|barato)|de más|goedkoper|duurder|minder|meer)\b(?! or less| als wir| we can't)/i;
/** "I give you $250 more" */
const GIVEN_ME = /\b(?:give|pay|offer|get) (?:you|u)\s$/i;
/** "saved $400 on", "won", "fined him": money that goes another way. */
const ANOTHER_WAY =
  /\b(?:won|wins|owed?s?|owing|fin(?:ed|es|ing)|refund\w*|lost|los(?:e|es|ing)|borrow\w*|stole|reimburse\w*|deduct\w*|insured|penalt\w*|gives? away|giving away|gave away|raffl\w*|auction\w*|don't (?:go|spend) (?:over|above|more than)|cheque (?:they|we|he|she) (?:present|hand)\w*|check (?:they|we|he|she) (?:present|hand)\w*)\b[^.?!;,\d]{0,40}$/i;
const SAVED = /\bsav(?:ed?|es|ing)(?: us| me| you)?(?: about| around| over| nearly)?\s$/i;
const SAVED_ON = /^(?: \w+){0,2} (?:on|by|with|in|per|compared|against)\b/i;

/** "entry fee", "the hall's hire charge": a fee that is not for the work. */
const OTHER_FEE =
  /\b(?:(?:photographer|dj|band|florist|caterer|speaker|singer|designer|planner|author|artist|performer|conductor|soloist|judge|referee|chef|poet|writer|actor|magician|comedian|host|celebrant|priest|vicar|organist|piper|teacher|trainer|coach|musician|choir|orchestra|printer|agent|lawyer)(?='s)|entry|entrance|admission|hotel|motel|inn|train|bus|ferry|exchange|group|press|mileage|course|class|late|members?(?:hip)?|bookings?|registration|licen[cs]e|permit|parking|venue|hall|room|hire|rental|speakers?|conference|congress|seminar|workshop|delegates?|attendance|participation|application|service|cleaning|cancellation|kill|delivery|shipping|platform|tickets?|school|tuition|green|race|competition|exhibitors?|stall|table|pitch|sponsorship|legal|bank|transfer|transaction|handling|agency|agent's|finder'?s|referral|management|landing|mooring|camping?|court|joining|annual|audition|enrolment|enrollment|player|team|guest)(?:'s?)? (?:fees?|charges?|dues|subs|rates?|costs?|prices?)(?: (?:is|are|of|for \w+ (?:is|are)|per \w+(?: is)?|will be|would be|went up to|:))?:? \(?(?:only |just |about )?$/i;
/** "Members pay a", "each guest is charged". */
const OTHERS_PAY =
  /\b(?:members|guests|students|pupils|parents|grandparents|relatives|aunties|players|famil(?:y|ies)|visitors|attendees|delegates|teams?|participants|exhibitors|customers|stallholders|vendors|kids|children|adults|people|everyone|everybody|runners|riders|entrants|residents|locals|non-members|fans|viewers|subscribers|each (?:person|couple|team|family|guest|one))\s(?:(?:all|each|usually|normally|just|only|also)\s)?(?:pays?|paying|(?:are|is) (?:charged|paying)|gives?|chips? in|contributes?)(?:\s\w+){0,2}\s$/i;
/** "I'm charging them $1,200" */
const CHARGED_ON = /\b(?:i|we)(?:'m|'re| am| are)? (?:charg|bill|invoic)(?:e|ing) (?:them|him|her|the \p{L}+)\s(?:about )?$/iu;
/** "Parents would pay $25 each" */
const MIGHT_PAY = /\b(?:would|will|can|could|must|should|might|have to) (?:each )?(?:pay|give|chip in|contribute) (?:about |around )?$/i;
const FOR_THE_FILM = /^[^.?!;]{0,20}\b(?:for|to|towards?)\s(?:\w+ ){0,2}(?:video\w*|film\w*|camera\w*|you|stream\w*|crew)\b/i;

/** "anything over £400", "if it's under £1,000": where a rule begins to hold. */
const FROM_THERE_ON =
  /\b(?:anything|everything|purchases?|orders?|sums?|amounts|invoices?|if (?:it|that|this|you|they)\S{0,5}|unless (?:it|you)\S{0,5}|as long as (?:it|you)\S{0,5}|provided (?:it|you)\S{0,5})(?: (?:costs?|comes? in|stays?|is|are|keep it))? (?:at )?(?:over|above|under|below|beyond|more than|less than|exceed(?:s|ing)?) (?:about )?$/i;
/** "Your site says", "you start at": what I ask of anybody. */
const MY_PRICES =
  /\b(?:your (?:\w+ )?(?:web ?site|site|page|listing|ad|advert|profile|price list|rate card|prices|packages?|starting price)|you (?:start|begin|go) (?:at|from))\b[^.?!;]{0,30}$/i;
/** "A friend thought", "I've heard": nobody who pays. */
const HEARSAY =
  /\b(?:(?:a|my|one) (?:friend|colleague|neighbou?r|mate)|someone|somebody|some people|google|the internet|another videographer|others?) (?:(?:at|in|on) \w+(?: \w+)? )?(?:has |have )?(?:thought|thinks?|says?|said|reckons?|told (?:me|us)|suggest(?:s|ed)|mentioned)\b[^.?!;]{0,30}$|\bi(?:'ve| have)? (?:heard|read|seen|googled)\b[^.?!;]{0,40}$/i;
/** "Die Band kostet", "le traiteur coûte" */
const COSTS =
  /(?<!\p{L})(?:die|der|das|le|la|les|el|los|las|il|lo|gli|i|de|het|unsere?|notre|nuestr[oa]) (?:\p{L}+ ){0,2}(?:kostet|kosten|coûte|coûtent|cuesta|cuestan|costa|costano|kost)(?: (?:ungefähr|etwa|environ|unos|circa|ongeveer))?\s$/iu;

/** "your quote of": a price of mine. */
const MY_QUOTE =
  /(?:\byour (?:\w+ ){0,2}(?:quote|quotation|estimate|invoice|proposal|bill)|\b(?:dein|ihr|euer)e?[mns]? (?:angebot|kostenvoranschlag|rechnung)|\b(?:votre|ton) (?:devis|facture)|\b(?:su|tu|vuestro) (?:presupuesto|factura)|\b(?:il )?(?:suo|tuo) preventivo|\b(?:je|jouw|uw|jullie) offerte)(?: [\p{L}\d]+){0,4}? ?(?:of|for|at|was|is|says|said|over|über|von|de|por|di|van|para)?:? (?:about |around )?$/iu;
const ACCEPTED =
  /^[^.?!;\d]{0,50}?\b(?:fine|ok|okay|good|great|accept\w*|approv\w*|agree[ds]?|confirm\w*|perfect|acceptable|in order|doable|all ?right|suits?|signed off|passt|angenommen|einverstanden|convient|accepté|aceptad\w*|akkoord|within (?:our )?budget)\b(?! (?:only|just|less))/i;
const ACCEPTING =
  /(?<!\p{L})(?:(?:accept\w*|approv\w*|agreed?|agrees|confirm\w*|happy|fine|go with|going with|go ahead|pleased|take|match|meet|honou?r|pay) (?:\w+ ){0,4}?your|(?:valid|accept|approuv|nehm|annehm|akzeptier|bestätig|acept|aprob|aprueb|confirm|aanvaard|accett|approv)\p{L}* (?:\p{L}+ ){0,3}?(?:ton|votre|dein|ihr|euer|tu|su|je|uw|jullie|il tuo|il suo)\p{L}{0,2})(?!\p{L})/iu;
const REFUSED = /\b(?:not|n't|never|nicht|kein\w*|pas|no|niet)\b/i;

/** "a budget of $40,000 in all but most goes to flowers" */
const GOES_ELSEWHERE =
  /^[^.?!]{0,30}\b(?:most(?:ly)?|much|half|nearly all|almost all|the bulk)(?: of (?:it|that|this|which))? (?:goes|is|went|will go|has gone|for|gets)\b(?! (?:for |to )?(?:you|yours|the (?:video|film|camera))\b)/i;
/** "the relay's whole budget", "the budget of the whole fair": what all of it costs. */
const WHOLE_BUDGET =
  /\b(?:\p{L}+'s (?:whole|entire|overall|full) budget|budget (?:of|for) the (?:whole|entire|full) \p{L}+)(?: is| of|:)?(?: about| around| only| just)?\s$/iu;
/** "a bequest of $2,200, and part of it": more than what is mine. */
const OF_WHICH = /^[^.?!]{0,40}\b(?:part|some|a bit|a slice) of (?:it|that|which|this)\b/i;

/** When something else was paid: "two years ago", "back then", "the last one". */
const EARLIER = new RegExp(
  phrases(
    `
    years/year/months ago | back then | at the time | in those days | the last/previous one/time/film/video/crew/guy/lot | last one | the one before | the year before
    vor ... jahr/jahren | damals | letztes/voriges mal | beim letzten mal | im letzten jahr
    il y a ... an/ans | la dernière fois | l'année dernière | hace ... año/años | la última vez | la vez pasada | l'ultima volta | anni fa | jaar geleden | de vorige keer
  `,
  ),
  'i',
);
const NOW_AGAIN =
  /\b(?:now|this (?:year|time)|today|again|same|match|still|noch|encore|todavía|ancora|nog|diesmal|jetzt|heuer|heute|cette (?:fois|année)|esta vez|este año|ahora|stavolta|quest'anno|adesso|dit (?:keer|jaar)|nu|nun|we can|we could|i can|can you|could you|would you)\b/i;
/** "… gekostet", "… bezahlt": a verb of the past behind an amount. */
const PAID_THEN =
  /^[^.?!;,\d]{0,24}?\b(?:gekostet|bezahlt|gezahlt|betaald|gekost|(?:two|three|four|five|some|a few|\d{1,2}|several|many) (?:years|months) ago|back then|at the time|(?<!(?:like|as|than|match|from)(?: the)? )last (?:year|time)|is what (?:we|i|they|he|she) (?:paid|spent|charged|gave|asked))\b(?!.{0,60}\b(?:same|again|this time|still (?:stands|holds|applies|goes)|(?:that|it) (?:stands|holds))\b)/i;

/** "ordered the transfer of", "has just wired": what is on its way for work that is done. */
const SENT =
  /(?<!\p{L})(?:(?:have|has|had|'ve|i|we|they|accounts|finance|treasurer|hemos|hic\p{L}+|hecho|han|he|ha|avons|ai|haben|habe|hat|wurde|abbiamo|ho|hebben|heb|sent|made|ordered|released)(?: \p{L}+){0,3} (?:transfer|payment|remittance|wire|virement|paiement|überweisung|zahlung|transferencia|pago|bonifico|pagamento|overboeking|betaling) (?:of|for|de|di|por|über|von|van)|(?:have|has|had|'ve|just|already|i|we|they|accounts|finance|treasurer) (?:just |already |now )?(?:transferred|wired|remitted|e-?transferred|reimbursed)(?: (?:you|over|across))*)(?: the| your| los| las| die| les| i)? $/iu;
const SENT_AFTER =
  /^[^.?!;,\d]{0,30}(?<!\p{L})(?:überwiesen|overgemaakt|bonificat[oi]|virée?s?|transferid[oa]s?|(?:has|have(?<!\b(?:we|i) have)|was|were) (?:been )?(?:raised|collected|paid|transferred|wired|sent|settled|received)|(?:has |have )?(?:landed|cleared|gone out|went out|arrived|gone through|come through|came through))(?!\p{L})/iu;

/** "your room, which we also pay, about", "a nap at the hotel, we pay for that (": what they pay for me beside it. */
const KEEP_PAID =
  /\b(?:hotel|motel|room|bed|b&b|inn|lodging|accommodation|flights?|trains?|ferry|bus|taxi|tickets?|meals?|dinner|lunch|breakfast|parking|petrol|gas)\b[^.?!;\d]{0,50}?\b(?:(?:which|that) (?:we|i)(?:'ll| will| also| do){0,2} (?:pay|cover|book|refund|settle)(?: for)?|(?:we|i)(?:'ll| will| also| do){0,2} (?:(?:pay|book) for|cover|book|refund|settle) (?:that|it|this|them|for you))(?: too| also| as well)?[,:]? ?\(?(?:it's |that's |is )?(?:about |around |at |up to )?$/i;

/** "deposit $150", "half up front": a part of a sum. */
const PART_BEFORE =
  /\b(?:deposit|down payment|retainer|balance|remainder|the rest|first (?:half|instal?lment)|second (?:half|instal?lment)|anzahlung|acompte|depósito|acconto|aanbetaling)(?: (?:of|is|being))?:? (?:the (?:other|remaining) )?(?:about )?$/i;
const PART_AFTER =
  /^,? (?:(?:is|as|paid|payable) )?(?:a |the )?(?:now(?= and\b)|up ?front|in advance|down(?= and\b)|deposit|down payment|retainer|on (?:delivery|completion|receipt)|afterwards?|after(?=[.,;!?]|$)|later|as (?:a )?deposit|anzahlung|d'acompte|on signing|on booking)\b/i;

/**
 * Whether the words around an amount make it no offer.
 * @param before what stands before it in its sentence
 * @param after what stands behind it there
 * @param others whether the sentence names another figure
 */
export function isNoOffer(before: string, after: string, others: boolean): boolean {
  if (PRICED.test(before) && !HAS_IN_FRENCH.test(before) && !LEADS_TO.test(before) && !NAMES_NOTHING.test(after)) return true;
  if ((DIFFERENCE.test(after) && !GIVEN_ME.test(before)) || ANOTHER_WAY.test(before) || (SAVED.test(before) && SAVED_ON.test(after)))
    return true;
  if (KEEP_PAID.test(before)) return true;
  if (OTHER_FEE.test(before) || CHARGED_ON.test(before) || (OTHERS_PAY.test(before) && !FOR_THE_FILM.test(after))) return true;
  if (FROM_THERE_ON.test(before) || MY_PRICES.test(before) || HEARSAY.test(before) || COSTS.test(before)) return true;
  if (MIGHT_PAY.test(before) && /^ each\b/.test(after)) return true;
  if (MY_QUOTE.test(before)) {
    const accepted = ACCEPTED.exec(after)?.[0];
    return !((accepted !== undefined && !REFUSED.test(accepted)) || ACCEPTING.test(before));
  }
  if (PART_BEFORE.test(before) || (PART_AFTER.test(after) && others)) return true;
  if (
    OF_WHICH.test(after) ||
    GOES_ELSEWHERE.test(after) ||
    (WHOLE_BUDGET.test(before) && others) ||
    SENT.test(before) ||
    SENT_AFTER.test(after)
  )
    return true;
  const earlier = EARLIER.exec(before);
  if (earlier && !NOW_AGAIN.test(before.slice(earlier.index + earlier[0].length)) && !NOW_AGAIN.test(after)) return true;
  return PAID_THEN.test(after);
}
