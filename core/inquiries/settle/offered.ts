/**
 * Whether an amount is what they offer or the price of something else: by the words of its sentence.
 */
import type { Amount } from '../money/units.ts';
import { sentenceAround } from '../parts/sentences.ts';
import { phrases } from '../phrases.ts';
import { isBareOffer } from './bare-offers.ts';
import { besideTheFee } from './beside-the-fee.ts';
import { isNoOffer } from './no-offer.ts';
import { TIMES_DAYS } from './paid-per.ts';

const OFFERED =
  /\b(?:budget(?:ed)?|rate|day rate|pay(?:ing|s)?|fee|offer(?:ing)?|can (?:do|go|stretch|offer|afford)|could (?:do|go|stretch)|up to|max(?:imum)?|cap(?:ped)?|(?:we|i) have(?! (?:an?|the|no|some|\d+|two|three|four|five|six|ten) (?!(?:[$£€]|budget|total|max\w*|fixed|small|limit\w*|purse|kitty|pot|grand|hundred|thousand|bit|little|offer|fee|rate|sum|lump|cap|flat|tight|rough|figure|ceiling|price|target|spend|modest|tiny|set|fund|po|purchase)))|we've got|got|around|about|roughly|approx|quote|cost|charge|price|happy with|allocated|set aside|spend|total|flat|all[- ]in|money|honorarium|work for you|ok with|okay with|is that ok|(?:what|how) about)\b/gi;
/** Words that stand by any price, whoever pays it. */
const NEUTRAL = /^(?:around|about|roughly|approx|cost|charge|price|quote)$/i;
/** Words that are said of any amount; "flights, around $400" is no offer for them. */
const LOOSE = /^(?:around|about|roughly|approx|got|up to|max(?:imum)?|cap(?:ped)?|flat|total|all[- ]in|is that ok|money)$/i;
/** The words before an amount that make it an offer: a word for pay, somebody who can give so much, a purse that holds it. */
const STRONG = new RegExp(
  `${phrases(
    `
    there's | there_is | budget | budgeted | day-rate | our/the rate | rate is/of/: | pay/pays/paying | fee | honorarium | stipend | remuneration | compensation | koha | offer/offers/offering | allocated | set aside | would/'d/wud be/pay/do/give/offer/cover/have/work/go/come_to/get/suffice/bring/earn/run_to/make
    will/'ll/wud/gonna give | gift/gratuity of | for your time/work/trouble/efforts/services | po up_to/for/of
    {able} be? only? do/go/offer/afford/pay/give/manage/stretch/run/spend/find/spare
    {purse} ... has/have/had/covers/cover/allows/allow/approved/agreed/gives/give/gave/giving/put/stretches/runs/goes/is/got/voted/released | {purse} :
    promised | pledged | voted | granted | reserved | earmarked | authorised | authorized | scrape together | have/has left is | purchase order up_to/of/for
    won't/can't/cannot/not go/pay/stretch/spend above/over/beyond/past
    stay/staying/keep/keeping/be/come/remain it? below/under/within | no more than | not over | not above | not more than
    this year/time it's/it_is/is/we_have/we_can/we've | same ... as last year/time
  `,
    {
      able: `can | could | able to | willing to | happy to | prepared to | allowed to | authorised to | authorized to`,
      purse: `grant | fund | funds | funding | kitty | pot | purse | committee | board | trustees | council | client | treasurer | executive | governors | congregation | directors | association | department | union | club | raffle | society | sponsor | sponsors | parish | family | parents | school | ministry | chapel | church | temple | mosque | lodge | guild | troop`,
    },
  )}|\\brate:`,
  'i',
);
const STRONG_AFTER =
  /^[\s,]{0,2}(?:budget|is (?:our|the|my) (?:budget|max\w*|limit|rate)|is (?:what|all|as (?:much|far|high|good)) |day rate|(?:in )?cash\b|koha\b|is (?:voted|minuted|approved|agreed|granted|set aside|put aside|there for you|yours|available|on the table)\b|(?:would )?covers? (?:you|your (?:work|time|fee|services))\b|(?:is )?in (?:it|there|the (?:budget|pot|kitty|account)) for (?:you|your|this|it|that|the (?:film|video)\w*)\b|(?:for )?each (?:of|day|night|evening)\b|(?:auf|gegen) rechnung\b|on (?:an )?invoice\b|sur facture\b|op factuur\b|con factura\b|do\b|cover (?:it|that|this)|work\b)/i;
const ELSE =
  /\b(?:tickets?|admission|entry|registration|parking|hotel|rooms?|(?<!(?:have|has|'ve|been|was|is|were|get|gets|got|are) )raised?(?! (?:a |an |the )?(?:po|purchase|order|invoice)\b)|raising|prize(?: money| fund| pot)?|donat\w*(?! of)|(?:normal|usual|list|full|retail|regular|street|shop|asking|ticket|market) price|\w{0,20}(?:miete|gebühr|eintritt|preisgeld|spende)|(?<!(?:have|has|'ve|been|we) )fundrais\w*|revenue|turnover|turn(?:ed|s) over|worth|värt|wert|valeur|por valor de|valore|waarde van|valued|insurance|liability|cover of|deposit|invoice(?! (?:us|me)\b)|per diem|overtime|ot|minimum spend|fetch(?:es)?|(?:if|should) (?:you|we|it)(?:'re| are| is)?(?: \w+)? (?:stay|run|runs|go|goes|kept|over)(?: \w+)? (?:past|later|over|longer|beyond|after)|(?:anything|everything|time|more|hours?) (?:over|after|beyond|past|above) (?:\d{1,2}|eight|ten|twelve) ?h(?:(?:ou)?rs?)?(?= (?:at|is|are|@))|cover charge|inn|b&b|airbnb|lodging|accommodation|motel|(?<!\b(?:you|to|can|could|please) )stay(?:ing)?(?! (?:under|below|within|at|around)\b)|budget für (?:die|das|den) (?:ganzen?|gesamten?) (?:feier|fest|veranstaltung|hochzeit|abend)|(?:event|festival|wedding|party|conference)(?:'s)? (?:spend|costs?|expenditure)|budget for (?:the |our )?(?:whole |entire )?(?:flowers|food|catering|music|band|dj|venue|hall|decor\w*|drinks|cake|marketing|advertising|print\w*|event|festival|party|wedding|entertainment)|travel|trains?|ferry|taxis?|fares?|mileage|flights?|meals?|buy|bought|sell|sells|sold|selling|catering|venue hire|venue|dinner|lunch|seats?|plates?|members?|equipment|rental|hire of|sponsor(?:ed|ing|ship)|grant (?:of|for)|capacity|attend\w*|(?<!(?:video|camera|crew|tech|media) )people|guests|delegates|runners|square|sq|model|serial|(?<!purchase )order|zip|postcode|box|suite|street|road|avenue|drive|highway|channel|fps|iso|resolution|px|kbps|mbps|watts?|volts?|(?:other|another) (?:guy|person|firm|videographer|photographer|company)|someone else|competitor|extra|additional|on top|plus expenses of|kit fee|expenses?|photographer (?:is|at|was)|fine|(?:event|festival|wedding|party|production|annual|yearly|overall|marketing)(?:'s)? budget)\b/gi;
const ELSE_AFTER =
  /^(?!,\s(?:the|your)\s[a-z]+\s(?:we|i|pay|is|are|on|extra|paid|covered|comes?|goes|will|would)\b)(?:[\s,-]{0,3}(?:(?:for|in|of|per|a|an|the|each|worth|towards?|your)\s){1,2}|[\s-]{0,2})(?:tickets?|people|guests|deposit|entry|prize|attend\w*|delegates|parking|hotel|travel|mileage|expenses|per diem|seats|rooms?|insurance|liability|members|students|runners|(?:first |top |cash |grand )?prizes?|(?:at|on) the door|(?:gift )?vouchers?|gift cards?|book tokens?|discount|refund|tips?\b|wedding|event|party|building|refurb\w*|campaign|appeal|project|scheme|extension|makeover|bonus|bar tab|return\b|one[- ]way|round[- ]?trip|(?:kit|gear|camera) (?:fee|hire|rental|allowance)|(?:kit|gear|petrol|fuel|gas)(?=[.,;]|$)|(?:a|per) (?:pint|glass|cup|slice|bottle|piece|bag|copy|car|kid|child|adult|couple|family|pop|dozen|pitch|table)|sq|fps|px|w\b(?! [a-z])|watts|gb|tb|mb|miles|km|kg|lbs?|feet|ft|metres|meters|hours|(?<!the )minutes|years?|for (?:the )?(?:travel|hotel|flights|parking|mileage|expenses|kit|gear))/i;

const PAST_PRICE =
  /\b(?:last (?:year|time|month)(?!'s (?:rate|fee|level|price|money))|previous\w*|used to|(?:im )?letzte[ns] jahr|l'an(?:née)? (?:dernier|dernière|passée?)|el año pasado|l'anno scorso|vorig jaar|(?:price|rate|quote|fee) of the (?:guy|man|woman|firm|company|one|person|people|chap|lad|fellow|bloke)|costs? us|charged|charges us|(?:he|she|they) charges?|(?<!\b(?:is|are|be|being|gets?|getting|you're|'s) )paid(?!:)(?=[^,]*$)|spent|(?<!as )quoted|(?:had|got|have|received|gave|one|other|another|first) (?:\w+ ){0,2}quotes? (?:\w+ ){0,3}?(?:of|at|for|is|was))\b/gi;
const STILL_OFFERED =
  /\b(?:now|again|can (?:do|go|offer|pay)|(?:but|so|now|this (?:year|time)),? (?:\w+ ){0,2}(?:we|i|they|it|this|there|you)(?:'\w+)?)\b/i;
/** "The same as last year", "unchanged from last time" */
const STILL_THEN = /\b(?:now|again|same[^,.;]{0,30}|this year|(?:as|like|unchanged (?:from|since)) last (?:year|time|month))$/i;
const STILL_OFFERED_AFTER =
  /^[^.?!;\d]{0,16}\b(?:now|this (?:year|time))\b(?![^.?!;]{0,50}\d{2})|^[^.?!;]{0,30}[.!;,]\s(?:and |so )?(?:the |it's )?same (?:again|for you|this|money|now)\b/i;
/** "Last vendor took 18,000, we can pay the same" */
const SAME_FOR_ME =
  /^[^?!;]{0,40}\b(?:we|i)(?:'d| can| could| will|'ll| would|'m| am|'re| are)(?: \w+){0,2}? (?:(?:be )?(?:happy|glad|willing|able|authori[sz]ed|allowed) to )?(?:pay|do|offer|give|match|go|manage|repeat|have(?: got)?|'ve got) (?:you )?(?:the )?(?:same|that|it)(?: again| too| as well)?\b/i;
/** "We raised $260. Is that enough?": asked of me, so it is offered. */
const ENOUGH_ASKED =
  /^[^.?!\d]{0,50}[.?!,]?\s(?:and |so |but )?(?:is|would|will|does) (?:that|this|it) (?:be )?(?:enough|ok|okay|do|work|all ?right|fine|cover (?:it|you)|sufficient|acceptable|fair|suit)\b/i;
/** "a motel on top of": what comes before the offer comes with it. */
const BESIDE_OFFER =
  /\b(?:expenses (?:and|plus|&)|on top of|in addition to|as well as|over and above|besides|alongside) (?:the |our |a |your |that |a fee of )?\s?$/i;
const NOT_WANTED_AFTER =
  /^(?:[^.?!;]{0,20}\b(?:too (?:much|high|dear|steep|rich|expensive)|elsewhere)|\sbetween (?:you (?:and|two|both)|the (?:two|three|four|pair|both) of you)\b|,?\s(?:after (?:that|the first|\d)|thereafter)\b|[.,;)]?\s(?:that|which|it) was\b|\s(?:last (?:year|time|month)|in 20\d\d)\b)/i;
/** "The cake is £300", "the DJ wants", "booths are": what has a price of its own. */
const HAS_PRICE =
  /(?:\b(?:the|our|their|an?|my|each|every)\s((?:[\p{L}'-]{1,20}\s){1,3})|(?:^\s*|[.!?;:\n]\s?|,\s|\band\s)(\p{L}{3,20}s\s)|(?:^\s*|^(?:hi|hello|hey|dear)(?: \p{L}+){1,3},\s|[.!?;:\n]\s?)((?:[\p{L}'-]{1,20}\s){1,3}))(?:costs?|is|was|are|were|is getting|comes? to|sells? for|goes for|wants?|asks?(?: for)?|asked(?: for)?|charges?|charged|quoted|bills?|takes?|took|gets?|wins?|won|earns?|receives?|pockets|eat for|starts? at|(?:is|are) (?:on|charging|asking))(?: (?:us|about|around|only|just|nearly|over|from))?\s$/iu;
/** "The band's $900", "the cheque's for $20,000" */
const HAS_PRICE_SHORT = /\b(?:the|our|their|a|my) ((?:[\p{L}-]{1,20} )?[\p{L}-]{2,20})'s (?:for )?(?:about |around |only |just )?$/iu;
const PRICE_OF_WORK =
  /\b(?:(?:show|shoot(?:ing)?|event|full|working) days?|thinking|idea|thought|proposal|suggestion|guess|expectation|target|plan|frame(?:work)?|mandate|wages?|salary|numbers?|\w*(?:tarief|gage|honorar|tarif|cachet|vergoeding|pauschale|satz)|presupuesto|compenso|tarifa|sum|ceiling|(?:full|whole|complete|total|video|film|your) package|amount|tariff|budget|fee|rate|pay|offer|price|figure|envelope|allocation|allowance|line|amount|total|max\w*|limit|stipend|remuneration|compensation|koha|reward|gigs?|jobs?|shifts?|days?|nights?|evenings?|afternoons?|mornings?|weekends?|money|honorarium|payment|cap|ceiling|wage|compensation|work|deal|shoot|filming|going|kitty|pot|purse|tariff|offering|best|\w+day|we|i|you|ours|mine|max|what|all|everything|both|there|which|and|so|but|client|board|committee|now)\b|\b(?:year|time) it\s$|^(?:this|that|it|er|hay|yours|pays|hours|days|thats|its|theirs)\s$/i;
/** "The budget for" the video is */
const PAY_FOR = /\b(?:budget|fee|offer|pay|rate|money|price|amount|sum|honorarium|payment)(?: \p{L}+){0,3} (?:for|of|on|from|at|by)\s$/iu;
/** "We pay our stewards £15", "the fellow took £900" */
const PAYS_OTHERS =
  /\b(?!(?:you|u|can|could|would|will|to|i|we|may|please|normally|usually|also|just|and|or|always|still)\b)\p{L}{2,20} (?:charges?|(?:is|are) charging)(?: us| me)?(?: about| around)?\s$|\b(?:trains?|bus|ferry|hotels?|flights?|taxis?|petrol|parking|travel|rooms?|meals?|fares?) (?:we|i) (?:pay|cover|refund|settle)[^.?!;]{0,30}$|\b(?:he|she|they|fellow|guy|chap|lad|man|person|firm|crowd|company|people) (?:charge[sd]?|took|wants?|wanted|asks?|asked|did it)(?: for)?(?: about| around)?\s$|\b(?:photographers?|stills|band|dj|florist|caterers?|celebrant|pianist|quartet|singer|stylist|baker|planner|marquee|organist|vicar|harpist|piper|speaker|sound ?(?:man|guy|engineer))(?:'s| is| are)? (?:getting|gets?|charging|charges?|asking|asks?|wants?|on|costing|costs?)(?: us| me)?(?: about| around)?\s$|\bpay(?:s|ing)?\s(?:our|the|each|every|their)\s(?!(?:\w+ )?(?:camera\w*|cam|ops?|operators?|videographers?|photographers?|crew|shooters?|rate|same|going|usual|right|full|person)\b)(?:[\p{L}-]{1,20}\s){1,2}$/iu;

/** "550 plus ferry", "€240 and breakfast", "450 and a bunk at the marae": what comes with a fee. */
const WITH_IT =
  /^,? ?(?:\+|plus|and|&|mit|und|et|con|y) (?:\d{1,3} (?:for|für|pour|voor|toward\w*) )?(?:(?:a|an|your|the|all|some|one|any|deine?|ihre?|votre|tu) )?(?:\p{L}+ )?(?:petrol|fuel|gas|ferry|lift|breakfasts?|guest ?list|couch|sofa|lunch|dinner|supper|tea|food|meals?|catering|beers?|drinks?|train|travel|mileage|expenses|anfahrt|fahrtkosten|spesen|hotel|bed|bunk|bus|parking|flights?|costs?|vat|gst|tax|pizza|chili|cake|pass)(?!\p{L})/iu;
/** "500 ex VAT", "800.-": only money is taxed and written so. */
const TAXED = /(?:vat|ust|gst|hst|tax|mwst|btw|iva|tva|moms|mva|\bht|\bttc|netto|brutto|[./]-)$/i;
/** An amount alone at the beginning of its sentence or line. */
const ALONE = /(?:^|[.!?;:\n] ?|\s[-–—] )$/;
/** What is for me: "spend €300 on you", "£275 which is yours", "£300 for the video". */
const MINE =
  /\b(?:(?:you|u)(?:'d|'ll| would| will| can)? (?:get|have|earn|receive|take|keep|pocket)|(?:pay|offer|give|get|spend on) (?:you|u))(?: \w+){0,2}\s$/i;
const MINE_AFTER =
  /^[^.?!;,]{0,24}?\b(?:(?:for|on) (?:you|u|yourself|the (?:video\w*|film|filming|camera\w*|stream\w*)|video\w*|filming|(?:live[- ]?)?streaming|(?:the )?(?:webcast|mixing|sound))|(?:which|that|it) (?:is|are) (?:all )?yours|is yours)\b/i;

/** "Is it true you charge $900?" */
const ASKED_OF_ME = /\byou (?:still |usually |normally |now )?(?:charge|cost|ask)\b[^.?!;]{0,20}$/i;

/** "Our budget for the photographer is": mine, where nobody speaks of film. */
const PHOTOGRAPHER = /\b(?:budget|fee|rate|pay) for (?:the|a|our) photographer(?: is|:)(?: about| around)?\s$/i;
/** What others are paid, where somebody speaks of film. */
const PAYS_PHOTOGRAPHER = /\bpay(?:s|ing)? (?:the|our|a|their|his|her) (?:photographers?|stills \p{L}+)(?: about| around)? $/iu;
const FILMS = /\b(?:film|video)/i;

/** What may follow a number that bears no sign of money: no noun that it would count. */
const ENDS =
  /^\s*(?:[.,;:!?)(-]|$|(?:for|in|all|total|flat|plus|inc\w*|but|cash|to|and|if|on|auf|gegen|sur|op|con|per|max|tops|do|cover|work|ok|okay|is|thanks|at|each|or|only|max\w*|[a-z]+ rate)\b|ish\b)/i;
const SMALLEST_OFFER = 50;

/** Where the last match of a pattern ends; -1 where there is none. */
function lastIndex(pattern: RegExp, text: string, but?: RegExp): number {
  let last = -1;
  for (const match of text.matchAll(pattern)) if (!but?.test(match[0])) last = match.index + match[0].length;
  return last;
}

/** "£850 inclusive of travel": what follows comes with it. */
const INCLUSIVE = /inclusive$/i;

/** "$2,750 flat for the event" */
const OCCASION_AFTER = /^,? for (?:the|your) (?:event|wedding|party|project)\b/i;

/** How surely an amount is what they offer; under 0 it is the price of something else. */
export function weighedOffer(text: string, amount: Amount, previous: number): number {
  if (amount.per === 'other') return -1;
  const sentence = sentenceAround(text, amount.start, amount.end);
  // What an earlier price is of stands before this one: "$75 per diem and".
  const since = text.slice(Math.max(sentence.start, amount.start - 110, previous), amount.start);
  const before = previous > 0 && previous >= sentence.start ? since.slice(ELSE_AFTER.exec(since)?.[0].length ?? 0) : since;
  const after = text.slice(amount.end, Math.min(sentence.end, amount.end + 80));
  const others = /[$€£]\s?\d|\d{3}/.test(text.slice(sentence.start, amount.start) + after);
  const past = lastIndex(PAST_PRICE, before);
  const told = past >= 0 ? before.slice(0, past) : '';
  const still = STILL_OFFERED.test(before.slice(Math.max(past, 0))) || STILL_OFFERED_AFTER.test(after) || STILL_THEN.test(told);
  if (SAME_FOR_ME.test(after) || ENOUGH_ASKED.test(text.slice(amount.end, amount.end + 90))) return 2;
  if ((past >= 0 && !still) || isNoOffer(before, after, others) || besideTheFee(before, after)) return -1;
  if (BESIDE_OFFER.test(before) && amount.mark !== undefined) return 2;
  if (
    (ELSE_AFTER.test(after) &&
      !INCLUSIVE.test(text.slice(amount.start, amount.end)) &&
      !(amount.per === 'job' && OCCASION_AFTER.test(after))) ||
    NOT_WANTED_AFTER.test(after) ||
    PAYS_OTHERS.test(before)
  )
    return -1;
  if (PAYS_PHOTOGRAPHER.test(before) && FILMS.test(text)) return -1;
  const has = HAS_PRICE.exec(before) ?? HAS_PRICE_SHORT.exec(before);
  const priced = has?.[1] ?? has?.[2] ?? has?.[3];
  if (priced !== undefined && !PRICE_OF_WORK.test(priced) && !PAY_FOR.test(before.slice(0, has?.index))) return -1;
  const daily = amount.per !== undefined && amount.per !== 'job';
  // A price after a comma is told by its own part of the sentence: "hot lunch, $675/day".
  const part = before.split(amount.per === 'night' ? /\n/ : daily ? /,\s|\s(?:and|plus)\s/i : /,\s/).at(-1) ?? '';
  const otherwise = lastIndex(ELSE, part);
  // "kit fee" ends with a word for an offer and is none.
  if (ASKED_OF_ME.test(before) && text[sentence.end] === '?') return -1;
  const mine = MINE.test(part) || MINE_AFTER.test(after);
  const photos = PHOTOGRAPHER.test(before) && !FILMS.test(text);
  if (otherwise >= 0 && !photos && otherwise >= lastIndex(OFFERED, part, LOOSE) && !mine && !STRONG.test(part.slice(otherwise))) return -1;
  const taxed = TAXED.test(text.slice(amount.start, amount.end));
  const withIt = WITH_IT.test(after);
  const fee = withIt && (amount.mark !== undefined || ALONE.test(text.slice(Math.max(0, amount.start - 3), amount.start)));
  const bare = isBareOffer(text, amount, sentence);
  const strong =
    bare || mine || fee || amount.paid === true || taxed || STRONG.test(before) || STRONG_AFTER.test(after) || TIMES_DAYS.test(before);
  // "We expect 300 a concert"
  if (
    amount.mark === undefined &&
    (amount.per === undefined || amount.per === 'event') &&
    (!strong || !(bare || withIt || taxed || ENDS.test(after)))
  )
    return -1;
  // Nobody works for the price of a ticket.
  if (amount.per !== 'hour' && amount.amount < SMALLEST_OFFER && !mine && !/\bhour/i.test(before)) return -1;
  let score = 0;
  if (daily) score += 2;
  if (amount.per === 'job') score += 1.5;
  if (amount.mark !== undefined) score += 0.5;
  if (lastIndex(OFFERED, part, NEUTRAL) >= 0) score += 1;
  if (strong) score += 1.5;
  return score;
}
