/**
 * What they can pay: the amount that is offered, not the price of a ticket, a hotel or last year's film.
 */
import type { z } from 'zod';
import type { Budget as BudgetSchema } from '../../contract/inquiries.ts';
import { currenciesFor, currenciesSaid, dollarsSaid } from '../money/currency.ts';
import type { Amount } from '../money/find.ts';
import { sentenceAround } from '../parts/sentences.ts';
import { phrases } from '../phrases.ts';
import { standings } from './other-prices.ts';
import { paidPer, TIMES_DAYS } from './paid-per.ts';
import type { Where } from './scene.ts';

type Budget = z.infer<typeof BudgetSchema>;
export type BudgetRead = { budget?: Budget; where: Where[]; choices: Budget[]; ask?: 'amount' | 'currency' | 'per' };

const OFFERED =
  /\b(?:budget(?:ed)?|rate|day rate|pay(?:ing|s)?|fee|offer(?:ing)?|can (?:do|go|stretch|offer|afford)|could (?:do|go|stretch)|up to|max(?:imum)?|cap(?:ped)?|we have|i have|we've got|got|around|about|roughly|approx|quote|cost|charge|price|happy with|allocated|set aside|spend|total|flat|all[- ]in|money|honorarium|work for you|ok with|okay with|is that ok)\b/gi;
/** Words that are said of any amount; "flights, around $400" is no offer for them. */
const LOOSE = /^(?:around|about|roughly|approx|got|up to|max(?:imum)?|cap(?:ped)?|flat|total|all[- ]in|is that ok|money)$/i;
/** The words before an amount that make it an offer: a word for pay, somebody who can give so much, a purse that holds it. */
const STRONG = new RegExp(
  `${phrases(
    `
    there's | there_is | budget | budgeted | day-rate | our/the rate | rate is/of/: | pay/pays/paying | fee | honorarium | offer/offers/offering | allocated | set aside | would
    {able} be? only? do/go/offer/afford/pay/give/manage/stretch/run/spend/find/spare
    {purse} ... has/have/had/covers/cover/allows/allow/approved/agreed/gives/give/gave/giving/put/stretches/runs/goes/is/got/voted/released | {purse} :
    promised | pledged | voted | granted | reserved | earmarked | authorised | authorized | scrape together | have/has left is | purchase order up_to/of/for
    stay/staying/keep/keeping/be/come/remain it? below/under/within | no more than | not over | not above | not more than
    this year/time it's/it_is/is/we_have/we_can/we've | same ... as last year/time
  `,
    {
      able: `can | could | able to | willing to | happy to | prepared to | allowed to | authorised to | authorized to`,
      purse: `grant | fund | funds | funding | kitty | pot | purse | committee | board | trustees | council | client | treasurer | executive | governors | congregation | directors | association | department | union | club | raffle | society | sponsor | sponsors | parish | family | parents | school`,
    },
  )}|\\brate:`,
  'i',
);
const STRONG_AFTER =
  /^[\s,]{0,2}(?:budget|is (?:our|the|my) (?:budget|max\w*|limit|rate)|day rate|(?:in )?cash\b|(?:auf|gegen) rechnung\b|on (?:an )?invoice\b|sur facture\b|op factuur\b|con factura\b|do\b|cover (?:it|that|this)|work\b)/i;
const ELSE =
  /\b(?:tickets?|admission|entry|registration|parking|hotel|rooms?|(?<!(?:have|has|'ve) )raised?|raising|prize(?: money| fund| pot)?|donat\w*(?! of)|(?:normal|usual|list|full|retail|regular|street|shop|asking|ticket|market) price|\w{0,20}(?:miete|gebühr|eintritt|preisgeld|spende)|fundrais\w*|revenue|turnover|turn(?:ed|s) over|worth|valued|insurance|liability|cover of|deposit|invoice(?! (?:us|me)\b)|per diem|overtime|ot|(?:anything|everything|time|more|hours?) (?:over|after|beyond|past|above) (?:\d{1,2}|eight|ten|twelve) ?h(?:(?:ou)?rs?)?(?= (?:at|is|are|@))|cover charge|inn|b&b|airbnb|lodging|accommodation|motel|stay(?:ing)?(?! (?:under|below|within|at|around)\b)|budget for (?:the |our )?(?:whole |entire )?(?:flowers|food|catering|music|band|dj|venue|hall|decor\w*|drinks|cake|marketing|advertising|print\w*|event|festival|party|wedding|entertainment)|travel|mileage|flights?|meals?|buy|bought|sell|sells|sold|selling|catering|venue hire|venue|dinner|lunch|seats?|plates?|members?|equipment|rental|hire of|sponsor(?:ed|ing|ship)|grant (?:of|for)|capacity|attend\w*|(?<!(?:video|camera|crew|tech|media) )people|guests|delegates|runners|square|sq|model|serial|(?<!purchase )order|zip|postcode|box|suite|street|road|avenue|drive|highway|channel|fps|iso|resolution|px|kbps|mbps|watts?|volts?|(?:other|another) (?:guy|person|firm|videographer|photographer|company)|someone else|competitor|extra|additional|on top|plus expenses of|kit fee|expenses?|photographer (?:is|at|was)|fine|(?:event|festival|wedding|party|production|annual|yearly|overall|marketing)(?:'s)? budget)\b/gi;
const ELSE_AFTER =
  /^(?:[\s,-]{0,3}(?:(?:for|in|of|per|a|an|the|each|worth)\s){1,2}|[\s-]{0,2})(?:tickets?|people|guests|deposit|entry|prize|attend\w*|delegates|parking|hotel|travel|mileage|expenses|per diem|seats|insurance|liability|members|students|runners|(?:first |top |cash |grand )?prizes?|(?:at|on) the door|(?:gift )?vouchers?|gift cards?|book tokens?|discount|refund|tips?\b|bar tab|return\b|one[- ]way|round[- ]?trip|(?:kit|gear|camera) (?:fee|hire|rental|allowance)|kit(?=[.,;]|$)|gear(?=[.,;]|$)|(?:a|per) (?:pint|glass|cup|slice|bottle|piece|bag|copy|car|kid|child|adult|couple|family|pop|dozen|pitch|table)|sq|fps|px|w\b|watts|gb|tb|mb|miles|km|kg|lbs?|feet|ft|metres|meters|hours|minutes|years?|for (?:the )?(?:travel|hotel|flights|parking|mileage|expenses|kit|gear))/i;

const PAST_PRICE =
  /\b(?:last (?:year|time|month)(?!'s (?:rate|fee|level|price|money))|previous\w*|used to|(?:im )?letzte[ns] jahr|l'an(?:née)? (?:dernier|dernière|passée?)|el año pasado|l'anno scorso|vorig jaar|(?:price|rate|quote|fee) of the (?:guy|man|woman|firm|company|one|person|people|chap|lad|fellow|bloke)|costs? us|charged|charges us|(?:he|she|they) charges?|paid(?=[^,]*$)|spent|(?<!as )quoted|(?:had|got|have|received|gave|one|other|another|first) (?:\w+ ){0,2}quotes? (?:\w+ ){0,3}?(?:of|at|for|is|was))\b/gi;
const STILL_OFFERED =
  /\b(?:now|again|can (?:do|go|offer|pay)|(?:but|so|now|this (?:year|time)),? (?:\w+ ){0,2}(?:we|i|they|it|this|there|you)(?:'\w+)?)\b/i;
const STILL_OFFERED_AFTER =
  /^[^.?!;\d]{0,16}\b(?:now|this (?:year|time))\b(?![^.?!;]{0,50}\d{2})|^[^.?!;]{0,30}[.!;,]\s(?:and |so )?(?:the |it's )?same (?:again|for you|this|money|now)\b/i;
/** "Last vendor took 18,000, we can pay the same" */
const SAME_FOR_ME =
  /^[^?!;]{0,40}\b(?:we|i)(?:'d| can| could| will|'ll| would|'m| am|'re| are)(?: \w+){0,2}? (?:(?:be )?(?:happy|glad|willing|able|authori[sz]ed|allowed) to )?(?:pay|do|offer|give|match|go|manage|repeat|have(?: got)?|'ve got) (?:you )?(?:the )?(?:same|that|it)(?: again| too| as well)?\b/i;
/** "a motel on top of": what comes before the offer comes with it. */
const BESIDE_OFFER =
  /\b(?:expenses (?:and|plus|&)|on top of|in addition to|as well as|over and above|besides|alongside) (?:the |our |a |your |that |a fee of )?\s?$/i;
const NOT_WANTED_AFTER =
  /^(?:[^.?!;]{0,20}\b(?:too (?:much|high|dear|steep|rich|expensive)|elsewhere)|\sbetween (?:you (?:and|two|both)|the (?:two|three|four|pair|both) of you)\b|,?\s(?:after (?:that|the first|\d)|thereafter)\b|[.,;)]?\s(?:that|which|it) was\b|\s(?:last (?:year|time|month)|in 20\d\d)\b)/i;
/** "The cake is £300", "the DJ wants", "booths are": what has a price of its own. */
const HAS_PRICE =
  /(?:\b(?:the|our|their|an?|my|each|every)\s((?:[\p{L}'-]{1,20}\s){1,3})|(?:^\s*|[.!?;:\n]\s?|,\s|\band\s)(\p{L}{3,20}s\s)|(?:^\s*|[.!?;:\n]\s?)((?:[\p{L}'-]{1,20}\s){1,3}))(?:costs?|is|was|are|were|is getting|comes? to|sells? for|goes for|wants?|asks?(?: for)?|takes?|took|gets?|wins?|won|earns?|receives?|pockets|eat for|starts? at)(?: (?:us|about|around|only|just|nearly|over|from))?\s$/iu;
/** "The band's $900", "the cheque's for $20,000" */
const HAS_PRICE_SHORT = /\b(?:the|our|their|a|my) ((?:[\p{L}-]{1,20} )?[\p{L}-]{2,20})'s (?:for )?(?:about |around |only |just )?$/iu;
const PRICE_OF_WORK =
  /\b(?:\w*(?:tarief|gage|honorar|tarif|cachet|vergoeding|pauschale|satz)|presupuesto|compenso|tarifa|sum|ceiling|amount|tariff|budget|fee|rate|pay|offer|price|figure|envelope|allocation|allowance|line|amount|total|max\w*|limit|gigs?|jobs?|shifts?|days?|nights?|evenings?|afternoons?|mornings?|weekends?|money|honorarium|payment|cap|ceiling|wage|compensation|work|deal|shoot|filming|going|grant|funds?|kitty|pot|purse|tariff|offering|best|\w+day|we|i|you|ours|mine|max|what|all|everything|both|there|which|and|so|but|client|board|committee|now)\b|^(?:this|that|it|er|hay|yours|pays|hours|days|thats|its|theirs)\s$/i;
/** "We pay our stewards £15", "the fellow took £900" */
const PAYS_OTHERS =
  /\b(?:he|she|they|fellow|guy|chap|lad|man|person|firm|crowd|company) (?:charge[sd]?|took|wants?|wanted|asks?|asked|did it)(?: for)?(?: about| around)?\s$|\b(?:photographers?|stills|band|dj|florist|caterers?|celebrant|pianist|quartet|singer|stylist|baker|planner|marquee|organist|vicar|harpist|piper|speaker|sound ?(?:man|guy|engineer))(?:'s| is| are)? (?:getting|gets?|charging|charges?|asking|asks?|wants?|on|costing|costs?)(?: us| me)?(?: about| around)?\s$|\bpay(?:s|ing)?\s(?:our|the|each|every|their)\s(?!(?:\w+ )?(?:camera\w*|cam|ops?|operators?|videographers?|photographers?|crew|shooters?|rate|same|going|usual|right|full|person)\b)(?:[\p{L}-]{1,20}\s){1,2}$/iu;

/** "550 plus ferry", "€240 and breakfast", "450 and a bunk at the marae": what comes with a fee. */
const WITH_IT =
  /^,? ?(?:\+|plus|and|&|mit|und|et|con|y) (?:\d{1,3} (?:for|für|pour|voor|toward\w*) )?(?:(?:a|an|your|the|all|some|one|any|deine?|ihre?|votre|tu) )?(?:\p{L}+ )?(?:petrol|fuel|gas|ferry|breakfasts?|lunch|dinner|supper|tea|food|meals?|catering|beers?|drinks?|train|travel|mileage|expenses|anfahrt|fahrtkosten|spesen|hotel|bed|bunk|bus|parking|flights?|costs?|vat|gst|tax|pizza|chili|cake|pass)(?!\p{L})/iu;
/** "500 ex VAT": only money is taxed. */
const TAXED = /(?:vat|ust|gst|hst|tax|mwst|\bht|\bttc|netto|brutto)$/i;
/** An amount alone at the beginning of its sentence or line. */
const ALONE = /(?:^|[.!?;:\n] ?|\s[-–—] )$/;
/** What is for me: "spend €300 on you", "£275 which is yours", "£300 for the video". */
const MINE =
  /\b(?:you(?:'d|'ll| would| will| can)? (?:get|have|earn|receive|take|keep|pocket)|(?:pay|offer|give|get|spend on) you)(?: \w+){0,2}\s$/i;
const MINE_AFTER =
  /^[^.?!;,]{0,24}?\b(?:(?:for|on) (?:you|yourself|the (?:video\w*|film|filming|camera\w*|stream\w*)|video\w*|filming|(?:live[- ]?)?streaming|(?:the )?(?:webcast|mixing|sound))|(?:which|that|it) (?:is|are) (?:all )?yours|is yours)\b/i;

/** "Is it true you charge $900?" */
const ASKED_OF_ME = /\byou (?:still |usually |normally |now )?(?:charge|cost|ask)\b[^.?!;]{0,20}$/i;

/** What may follow a number that bears no sign of money: no noun that it would count. */
const ENDS =
  /^\s*(?:[.,;:!?)(-]|$|(?:for|in|all|total|flat|plus|inc\w*|but|cash|to|and|if|on|auf|gegen|sur|op|con|per|max|tops|do|cover|work|ok|okay|is|thanks|at|each|or|max\w*|[a-z]+ rate)\b|ish\b)/i;
const SMALLEST_OFFER = 40;
/** More amounts than this are a price list. */
const MOST_AMOUNTS = 2000;
/** An amount that takes another's place stands no further from it. */
const NEAR = 70;
/** How far behind an amount is said in which money it is. */
const MONEY_REACH = 110;
/** What an amount gains that follows from others or stands in my row. */
const MEANT = 3;

/** Where the last match of a pattern ends; -1 where there is none. */
function lastIndex(pattern: RegExp, text: string, but?: RegExp): number {
  let last = -1;
  for (const match of text.matchAll(pattern)) if (!but?.test(match[0])) last = match.index + match[0].length;
  return last;
}

/** What extra hours are paid by says nothing of the rest. */
const OVERTIME =
  /\b(?:overtime|ot|over(?:run|s)?|extra hours?|after (?:ten|eight|twelve|\d{1,2})(?: hours| h)?|überstunden?|(?:heures? )?sup(?:plémentaires?)?)\b/i;

/** "£850 inclusive of travel": what follows comes with it. */
const INCLUSIVE = /inclusive$/i;

/** How surely an amount is what they offer; under 0 it is the price of something else. */
function weigh(text: string, amount: Amount, previous: number): number {
  if (amount.per === 'other') return -1;
  const sentence = sentenceAround(text, amount.start, amount.end);
  // What an earlier price is of stands before this one: "$75 per diem and".
  const since = text.slice(Math.max(sentence.start, amount.start - 110, previous), amount.start);
  const before = previous > 0 && previous >= sentence.start ? since.slice(ELSE_AFTER.exec(since)?.[0].length ?? 0) : since;
  const after = text.slice(amount.end, Math.min(sentence.end, amount.end + 80));
  const past = lastIndex(PAST_PRICE, before);
  const told = past >= 0 ? before.slice(0, past) : '';
  const still =
    STILL_OFFERED.test(before.slice(Math.max(past, 0))) ||
    STILL_OFFERED_AFTER.test(after) ||
    /\b(?:now|again|same[^,.;]{0,30}|this year)$/i.test(told);
  if (SAME_FOR_ME.test(after)) return 2;
  if (past >= 0 && !still) return -1;
  if (BESIDE_OFFER.test(before) && amount.mark !== undefined) return 2;
  if (
    (ELSE_AFTER.test(after) && !INCLUSIVE.test(text.slice(amount.start, amount.end))) ||
    NOT_WANTED_AFTER.test(after) ||
    PAYS_OTHERS.test(before)
  )
    return -1;
  const [, named, many, subject] = HAS_PRICE.exec(before) ?? HAS_PRICE_SHORT.exec(before) ?? [];
  const priced = named ?? many ?? subject;
  if (priced !== undefined && !PRICE_OF_WORK.test(priced)) return -1;
  const daily = amount.per !== undefined && amount.per !== 'job';
  // A price after a comma is told by its own part of the sentence: "hot lunch, $675/day".
  const part = before.split(amount.per === 'night' ? /\n/ : daily ? /,\s|\s(?:and|plus)\s/i : /,\s/).at(-1) ?? '';
  const offered = lastIndex(OFFERED, part);
  const otherwise = lastIndex(ELSE, part);
  // "kit fee" ends with a word for an offer and is none.
  if (ASKED_OF_ME.test(before) && text[sentence.end] === '?') return -1;
  const mine = MINE.test(part) || MINE_AFTER.test(after);
  if (otherwise >= 0 && otherwise >= lastIndex(OFFERED, part, LOOSE) && !mine && !STRONG.test(part.slice(otherwise))) return -1;
  const fee = WITH_IT.test(after) && (amount.mark !== undefined || ALONE.test(text.slice(Math.max(0, amount.start - 3), amount.start)));
  const strong =
    mine ||
    fee ||
    TAXED.test(text.slice(amount.start, amount.end)) ||
    STRONG.test(before) ||
    STRONG_AFTER.test(after) ||
    TIMES_DAYS.test(before);
  if (amount.mark === undefined && amount.per === undefined && (!strong || !(fee || ENDS.test(after)))) return -1;
  // Nobody works for the price of a ticket.
  if (!daily && amount.amount < SMALLEST_OFFER && !strong) return -1;
  let score = 0;
  if (daily) score += 2;
  if (amount.per === 'job') score += 1.5;
  if (amount.mark !== undefined) score += 0.5;
  if (offered >= 0) score += 1;
  if (strong) score += 1.5;
  return score;
}

/**
 * Decide on the offer. Two amounts, two currencies or no unit of time are asked; for a job of one day an amount without a unit is for the job.
 * @param days how many days the job has, where its days are known; without them an amount without a unit is only asked about
 */
export function budgetOf(
  text: string,
  amounts: readonly Amount[],
  taken: (where: Where) => boolean,
  { days, ...currencies }: { days: number | undefined; home: string | undefined; place: string | undefined },
): BudgetRead {
  if (amounts.length > MOST_AMOUNTS) return { where: [], choices: [] };
  let previous = 0;
  const paid = amounts.filter((amount) => !taken(amount) || amount.mark !== undefined || amount.per !== undefined);
  const standing = standings(text, paid);
  let rejected = false;
  const weighed = paid.map((written, index) => {
    // "65 an hour was last year's, it's 75 now": the unit stays.
    const replaced = paid[index - 1];
    const kept =
      replaced !== undefined &&
      (standing[index - 1] === 'aside' ||
        (rejected && !OVERTIME.test(text.slice(Math.max(0, replaced.start - NEAR), replaced.end + NEAR)))) &&
      written.start - replaced.end < NEAR
        ? replaced.per
        : undefined;
    const per = written.per ?? (standing[index] === 'sum' ? 'job' : kept === 'day' || kept === 'hour' ? kept : undefined);
    const amount = per === undefined ? written : { ...written, per };
    const score = weigh(text, amount, previous);
    rejected = score < 0;
    previous = amount.end;
    return { amount, score: standing[index] === 'aside' ? -1 : standing[index] === undefined ? score : Math.max(score, 0) + MEANT };
  });
  // The only price in a message is the offer, unless its words say otherwise; beside prices of other things it must be no small one.
  const prices = weighed.filter(({ amount }) => amount.mark !== undefined);
  const open = prices.filter(({ amount, score }) => score >= 0 && (prices.length === 1 || amount.amount >= 100));
  const offers = weighed.filter(
    (one) => one.score >= 1.5 || (one.score >= 0.5 && open[0] === one && open.every(({ amount }) => amount.amount === one.amount.amount)),
  );
  const best = offers.toSorted((a, b) => b.score - a.score)[0];
  if (!best) return { where: [], choices: [] };
  const { amount } = best;
  const where = [{ start: amount.start, end: amount.end }];
  // "Four hundred for the day (call it 400)"
  const again = paid.find((other) => other.amount === amount.amount && other.per !== undefined);
  const per = paidPer(text, again && amount.per === undefined ? again : amount, days);
  const said = amount.mark === '$' || amount.mark?.startsWith('DOLLAR') ? dollarsSaid(text) : undefined;
  const left = currenciesSaid(
    text.slice(Math.max(0, amount.start - MONEY_REACH), amount.start),
    text.slice(amount.end, amount.end + MONEY_REACH),
    amount.mark,
  );
  const found = left ?? (said === undefined ? currenciesFor(amount.mark, currencies.home, currencies.place) : [said]);
  const shaped = (value: number, currency: string | undefined): Budget => ({
    amount: value,
    ...(currency ? { currency } : {}),
    ...(per ? { per } : {}),
  });
  const single = found.length === 1 ? found[0] : undefined;
  const joined = (other: Amount): boolean => {
    const [one, two] = amount.start < other.start ? [amount, other] : [other, amount];
    const between = text.slice(one.end, Math.min(two.start, one.end + NEAR));
    // "either $2,000 for everything or $600 a day"
    const either = /\beither\b[^.?!;]*$/i.test(text.slice(Math.max(0, one.start - NEAR), one.start));
    return (either ? /^[^.?!;]*\sor\s(?:maybe )?$/i : /^,?\s?or\s(?:maybe )?$/i).test(between);
  };
  const rivals = [
    ...offers.filter(
      (other) => other.amount.amount !== amount.amount && other.score >= best.score - 0.5 && !sums(amount, other.amount, days),
    ),
    ...amounts
      .filter(
        (other) =>
          other !== amount &&
          other.mark !== undefined &&
          joined(other) &&
          !offers.some((offer) => offer.amount === other && offer.score >= best.score - 0.5),
      )
      .map((other) => ({ amount: other, score: 0 })),
  ];
  if (amount.upTo !== undefined && amount.upTo > amount.amount)
    return { where, choices: [shaped(amount.amount, single), shaped(amount.upTo, single)], ask: 'amount' };
  if (rivals.length > 0)
    return {
      where,
      choices: [amount, ...rivals.map((rival) => rival.amount)].slice(0, 4).map((one) => ({
        ...shaped(one.amount, currenciesFor(one.mark, currencies.home, currencies.place)[0]),
        ...perPart(text, one, days),
      })),
      ask: 'amount',
    };
  const budget = shaped(amount.amount, single);
  if (found.length > 1 || left)
    return { budget, where, choices: found.map((currency) => shaped(amount.amount, currency)), ask: 'currency' };
  if (!per) {
    const choices = (['day', 'job'] as const).map((unit) => ({ ...budget, per: unit }));
    return { ...(days === undefined ? {} : { budget }), where, choices, ask: 'per' };
  }
  return { budget, where, choices: [] };
}

/** "450 a day, 900 in all": two amounts that say the same. */
const sums = (one: Amount, other: Amount, days: number | undefined): boolean =>
  one.per === 'day' && days !== undefined && days > 1 && other.amount === one.amount * days;

/** The unit of time of one of several amounts, where it has one. */
function perPart(text: string, amount: Amount, days: number | undefined): Pick<Budget, 'per'> {
  const per = paidPer(text, amount, days);
  return per ? { per } : {};
}
