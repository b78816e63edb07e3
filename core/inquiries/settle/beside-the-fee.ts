/**
 * Money that is named beside a fee and is none: what is paid for my meals and my journey, what others would take or get, what cannot be paid, what comes in.
 */
import { anyOf } from '../phrases.ts';

/** What an allowance is for. */
const KEEP = String.raw`(?:lunch|dinner|supper|breakfast|meals?|food|drinks?|coffee|petrol|diesel|fuel|gas|parking|mileage|travel|travelling|train|bus|ferry|taxi|cab|flights?|fares?|hotel|room|b&b|bed|lodging|accommodation|incidentals|expenses|tolls?)`;
const KEEP_BEFORE = new RegExp(
  String.raw`(?:^|[\s,(])${KEEP}(?:,? (?:and|&|or) ${KEEP})?(?: (?:is|are|will be|costs?|comes?|paid|covered|refunded|allowance|money|voucher|per day|a day)){0,3}(?: (?:up to|of|at|to|worth|about|around))?:? $`,
  'i',
);
const KEEP_BEHIND = new RegExp(
  String.raw`^(?: (?:a|per) (?:head|meal|night|day|person|mile|km))?(?: (?:for|towards?) (?:your |the |a )?${KEEP}\b(?! and (?:the )?(?:day|work|film|shoot|fee))| (?:${KEEP} )?(?:allowance|vouchers?|per diem|subsistence)\b(?: for ${KEEP}| towards| a day)?)`,
  'i',
);
const ALLOWANCE_ALONE = /^ (?:allowance|subsistence)\b(?! for (?:lunch|dinner|meals?|food|travel|petrol|fuel|parking))/i;

/** Others who would do it, and what they ask. */
const OTHERS_ASK = anyOf(
  `{other} ... would/could/will/can/offered/offers/offering do/to_do/film/to_film it/this/the_lot? for/at | {other} ... asked/asks/wanted/wants/charged/charges/quoted/quotes/took/takes/said/offered us/me? for? | we/i were/was quoted ... by/from/elsewhere | were/was quoted`,
  {
    other: `somebody | someone | another/other/different firm/company/filmer/videographer/person/man/woman/crew/outfit | a/my/our friend/cousin/nephew/niece/uncle/brother/sister/neighbour/neighbor/student/colleague/mate/relative | the student/lad/girl/boy/guy/chap/firm/company/lot/people next_door/we_asked/round_the_corner/down_the_road/over_the_way/before | the other/last/first one/two/firm/company/crew/filmer`,
  },
  'gi',
);
/** What may stand between such words and an amount. */
const SMALL = /(?:\s(?:about|around|only|just|some|up to|a|the|another)){0,2}\s$/i;
/** "We can't pay", "we don't have": up to the amount itself; "can't pay more than" names one that can be paid. */
const CANNOT =
  /\b(?:can't|cannot|can not|can never|could never|couldn't|won't|wouldn't|never|unable to|don't|do not|haven't|have not|not able to)(?: (?:possibly|quite|really|ever|even|just|simply))?(?: (?:pay|afford|spend|have|find|raise|manage|got|stretch to|run to|go to|justify)){1,2}(?: (?:you|anyone|anybody))?(?: (?:the|a|your))? $/i;
const OUT_OF_REACH =
  /^ (?:is|was|would be|'s|are|sounds?|seems?) (?:far |way |a bit |well |rather |simply |just |quite )?(?:beyond|too (?:much|high|dear|steep|expensive)|more than (?:we|i)|out of (?:our |my )?(?:reach|league)|above (?:us|our)|over our|impossible|not possible|unthinkable)/i;
/** "fee for the music licence is", "the hire of the lights comes to" */
const FEE_FOR =
  /\b(?:fees?|charges?|hire|rent|rental|price|cost|tariff) (?:for|of) (?!(?:the |our |a )?(?:video|film|camera|cameras|day|days|job|gig|work|shoot|shooting|evening|night|afternoon|event|filming|you|your|recording|stream|coverage|both|all|one|two|this|it)\b)(?:[\p{L}'-]+ ){1,5}(?:is|are|was|will be|comes? to|came to)(?: about| around| only)? $/iu;
/** What others are paid. */
const OTHERS_GET =
  /\b(?:singers?|speakers?|players|musicians|actors|dancers|stewards|volunteers|helpers|extras|models|judges|soloists?|performers?|bands?|djs?|choirs?|caterers?|magicians?|photographers?|florists?|organists?|pianists?|drivers?|winners?|runners?-up|teachers?|bar staff|waiters|security)(?: (?:all|each|here|also|we had))? (?:gets?|got|are paid|is paid|were paid|was paid|earns?|receives?|takes?|has|asks?|asked|charges?|costs?)(?: (?:about|around|only|just|home))? $/i;
/** What comes in. */
const COMES_IN = anyOf(
  `
  gives/give/gave/giving us | puts/put/putting/pays/paid in | bar/raffle/auction/stall/sale/collection/tombola/cafe/café/tickets has/have/had/is/are? to? make/makes/made/bring/brings/brought/take/takes/took/raise/raises/raised | raise/raising/collecting | sponsors/sponsored us with | lottery/arts_council/council/heritage/community grant of/is | sell/sold/sells/selling it/them/copies/the_film/each? for/at
`,
  {},
  'gi',
);
/** What each of many pays, whatever for. */
const EACH_PAYS = anyOf(
  `
  every/each family/parent/member/guest/child/couple/household/pupil/player pays/gives/puts_in/chips_in/contributes
`,
  {},
  'gi',
);
/** "for the film", "for you" */
const FOR_ME =
  /^ (?:for|towards?) (?:the |our |a |this |your )?(?:video|film|camera|shoot|day|job|you\b|work|recording|stream|it\b|this\b)/i;
/** What a sponsor pays for. */
const SPONSORED =
  /\b(?:sponsor|donor|brewery|bank|council|company|firm|shop)s? (?:pays?|gives?|covers?|adds?|puts up)(?: us)?(?: about| another)? $/i;
const FOR_OTHERS = /^ (?:for|towards?) (?!(?:the |our )?(?:video|film|camera|shoot|day|job|you\b|work|recording|stream))\p{L}+/iu;
/** "the budget of the gala is", "the whole event has a budget of", "to spend on the whole wedding": what all of it costs. */
const OF_ALL =
  /\bbudget of (?:the|our|this) (?!video|film|shoot|recording|stream|day|job)(?:[\p{L}'-]+ ){0,2}(?:gala|ball|dinner|event|festival|fair|show|party|wedding|congress|conference|concert|club|department|tournament|evening|council|church|charity|school|fête|fete|carnival|parade|season|year) (?:is|was|comes to)(?: about| around| only| just)? $|\b(?:whole|entire|complete) \p{L}+ has (?:a|the) (?:total )?budget of (?:about |around )?$|\b(?:department|faculty|club|council|company|school|society|charity|association|library|museum|theatre|festival|church|parish)'s (?:\p{L}+ )?budget(?: for (?:the|this) (?:year|season))? (?:is|was)(?: about| around| only| just)? $/iu;
const SPENT_ON_ALL =
  /^ (?:to spend|to go|that goes) (?:on|for) (?:the|our) (?:whole|entire) (?!day|job|thing|night|evening|weekend|shoot|lot|film|video)\p{L}+/iu;
const SAID_BY_OTHERS = /^ (?:from|by) (?:another|a different|some other|a rival|the other) \p{L}+/iu;
const GOT = /\b(?:we|they|i) (?:\p{L}+ )?(?:got|received|had|were given) (?:about |around )?$/iu;
const FROM_A_BODY =
  /^ from (?:the |our |a )?(?:\p{L}+ )?(?:council|lottery|sponsors?|grants?|government|ministry|foundation|appeal|raffle|bank)\b(?! for (?:it|this|the (?:video|film)))/iu;
/** "Load in is a half day at" before what a day of the show is paid. */
const SET_UP =
  /\b(?:load[- ]?in|set[- ]?up|rig(?:ging)?|travel|rehearsals?)(?: days?)? (?:is|are) (?:an? )?half(?:[- ]a)?[- ]days? (?:at|for) $/i;
/** "it's time and a half at" */
const EXTRA_HOURS = /\b(?:time and a half|double time)\b[^.?!;]{0,20}$/i;
/** "a £75 fee for the drone permit" */
const FEE_BEHIND =
  /^ (?:fee|charge|surcharge) (?:for|on|to|if) [^.?!;]{0,30}\b(?:permit|licen[cs]e|pass|parking|late|entry|key|locker|insurance|cleaning|damage|cancel\w*)\b/i;
/** "The budget doesn't run to the" */
const TOO_FAR = /\b(?:doesn't|does not|won't|will not|can't|cannot|couldn't) (?:run|stretch|go|extend) to (?:the|that|those|your) $/i;
/** "the whole budget for the evening is" */
const WHOLE =
  /\b(?:whole|entire|total|overall|full) budget (?:for|of) (?:the|our|this) (?!video|film|shoot|recording|stream)(?:[\p{L}'-]+ ){1,3}(?:is|was|comes to)(?: about| around| only| just)? $/iu;

const LEAD = 90;
/** Whether a phrase of a list stands at the end of what comes before an amount, with small words between them. */
function endsWith(list: RegExp, small: RegExp, before: string): boolean {
  const lead = before.slice(-LEAD).replace(small, '').trimEnd();
  return [...lead.matchAll(list)].some(({ index, 0: words }) => index + words.length === lead.length);
}

/** True where an amount is no fee by what stands before and behind it in its sentence. */
export function besideTheFee(before: string, after: string): boolean {
  return (
    KEEP_BEFORE.test(before) ||
    (KEEP_BEHIND.test(after) && !ALLOWANCE_ALONE.test(after)) ||
    CANNOT.test(before) ||
    OUT_OF_REACH.test(after) ||
    FEE_FOR.test(before) ||
    OTHERS_GET.test(before) ||
    WHOLE.test(before) ||
    OF_ALL.test(before) ||
    SPENT_ON_ALL.test(after) ||
    SAID_BY_OTHERS.test(after) ||
    SET_UP.test(before) ||
    EXTRA_HOURS.test(before) ||
    FEE_BEHIND.test(after) ||
    (GOT.test(before) && FROM_A_BODY.test(after)) ||
    TOO_FAR.test(before) ||
    (SPONSORED.test(before) && FOR_OTHERS.test(after)) ||
    endsWith(OTHERS_ASK, SMALL, before) ||
    (endsWith(COMES_IN, SMALL, before) && !FOR_ME.test(after)) ||
    endsWith(EACH_PAYS, SMALL, before)
  );
}
