/**
 * Whether a message asks for work at all, or is a newsletter, a reminder, a thank-you or a machine's answer.
 */
import { ABROAD } from './abroad.ts';
import { takesMeOn } from './agreeing.ts';
import { asksForWork } from './asking.ts';
import { answersByMachine, handsOnForm, sentByMachine } from './machines.ts';
import { OCCASION } from './occasions.ts';
import { anyOf } from './phrases.ts';
import { asksAnotherTrade, asksForNothing, firmlyNot, asksPlainly, offersOrDeclines, wantsOthers } from './refusing.ts';
import { sellsToMe } from './selling.ts';
import { standsAsItIs } from './standing.ts';
import { goesToMany } from './to-many.ts';
import { rolesIn } from './work/role.ts';

/** A machine or a mailing list wrote it, whatever else it says. */
const MACHINE_ENGLISH =
  /\b(?:auto(?:matic)?[- ]?reply|automated (?:message|response|email)|out[- ]of[- ](?:the[- ])?office|i am currently (?:out|away)|i'm currently (?:out|away)|limited access to (?:e-?mail|my inbox)|will respond (?:to your (?:e-?mail|message) )?(?:when|upon|as soon)|do not reply to this|no-?reply|this mailbox is not|delivery (?:status notification|has failed)|undeliverable|mailer-daemon|unsubscribe|thank you for registering|your (?:registration|booking|reservation) (?:is|has|for)|a reader wrote|in this column|will be rebooked|dear neighbou?r|reply stop|leave this list|opt out|manage (?:your )?(?:email )?preferences|view (?:this email )?in (?:your )?browser|your (?:order|parcel|package|delivery) (?:#|has|number|is|will)|out for delivery|order confirmation|has shipped|tracking number|verification code|security code|one-time (?:code|password)|password reset|reset your password|your (?:\w+ )?(?:subscription|trial|plan|membership) (?:renews|expires|has|will)|you(?:'re| are) receiving this)\b/i;
const isMachine = (whole: string): boolean => (MACHINE_ENGLISH.test(whole) || sentByMachine(whole)) && !handsOnForm(whole);
/** Money that is owed, in either direction. */
const MONEY_LETTER =
  /\b(?:(?:friendly |gentle |payment |second |final )reminder|past due|overdue|outstanding (?:balance|invoice|amount)|invoice (?:#|no\.?|number|attached|\d)|please (?:find|see) (?:attached|enclosed) (?:the |our |my |your )?(?:invoice|receipt|statement)|remittance|payment (?:received|has been|was|is due|confirmation|sent)|(?:got|received) your invoice|(?:check|cheque|payment) (?:went out|is in the|was mailed|has gone)|we have (?:paid|processed|received your (?:payment|invoice))|receipt for|your (?:invoice|statement|payslip) (?:is|for|#|was))\b/i;
const THANKS =
  /\b(?:thanks? (?:you )?(?:so much |again |very much )?for (?:(?:all |the |your )?(?:great |amazing |wonderful |fantastic |brilliant |lovely |hard |beautiful |quick )?(?:work|job|video|film|filming|photos|edit|footage|help|reply|quote|response|everything|coming|yesterday|last|today|saturday|sunday|friday|files|link|highlights?)|coming|covering|filming|shooting|sending|your patience|being)|(?:we|everyone|the team|they) (?:all )?(?:loved|love) (?:it|the (?:video|film|edit|photos|footage|highlight))|looks? (?:\w+ )?(?:great|amazing|fantastic|wonderful|brilliant|lovely|superb|perfect|beautiful|terrific|awesome|stunning)|thanks (?:so|very) much\b(?! for (?:your|the) (?:reply|quick))|great job|well done|it was (?:a pleasure|great|lovely|wonderful)|(?:the|your|our) (?:film|video|dvd|footage|usb|disc|highlights) (?:came|arrived) (?:this (?:morning|afternoon|week)|today|yesterday)|(?:popped|put|sent|dropped) (?:the|a|your) cheque in the post)\b/i;
const DECLINED =
  /\b(?:we(?:'ve| have) (?:decided to go|gone) with(?! (?:an?other |a |a different )?(?:venue|date|hall|theme|place))|(?:has|had) (?:gone|decided to go) with|no longer need|don't need (?:anyone|a|you)|decided not to|have (?:already )?(?:found|booked) (?:someone|another|a)|position (?:has been|is) filled|been cancelled|is cancelled|(?:have|need|had) to cancel|must cancel|cancelling (?:the|our|this)|has been called off|won't be (?:needing|going ahead)|decided (?:to do without|against)|(?:will )?keep you in mind|appreciate your time)\b/i;
const SELLING =
  /\b(?:webinar|% off|discount code|limited[- ]time|special offer|sale ends|shop now|buy now|free shipping|sign up (?:now|today|here)|register (?:now|today|here|for)|join us (?:for|on|at)|save the date|early[- ]bird|book your (?:seat|ticket|place|stand)|tickets (?:are )?(?:on sale|available)|new arrivals|this week's deals|grow your business|seo|rank (?:higher|on)|boost your|increase your (?:traffic|sales|leads)|our services include|we offer (?:a range|professional|video editing|outsourc)|lead generation|rsvp to our|you(?:'re| are) invited|newsletter|in this issue|read more|click here|learn more)\b/gi;
/** Talk about talking, or about a thing that was made already. */
const CHATS =
  /\b(?:reschedule (?:our|the) (?:call|chat|meeting)|to chat\b|hop on|catch up|critique|resend|raw footage from|(?<!(?:hours?|hrs|minutes|gb|tb|lots|loads|bit) of (?:\w+ )?)footage from|copy (?:of|for)|rent (?:out )?(?:gear|your)|do you rent|preserve|lunch with|for (?:lunch|coffee|a beer|drinks)|internships?|learn (?:videography|to film|how to|filming)|mentor\w*|apprentice\w*|my (?:cv|resume|showreel)|no reply (?:is )?needed|no need to reply|no action (?:needed|required))\b/i;
/** Seeing each other, without work in it. */
const SOCIAL =
  /\b(?:grab (?:a|some|lunch|coffee|dinner)|(?:have|get) a (?:beer|coffee|drink|pint|bite)|for a (?:beer|coffee|drink|pint|bite)|lunch is on me|my treat)\b/i;
/** Somebody who sells to me, or writes of what is over or arranged. */
const NOT_FOR_HIRE =
  /\b(?:i'll pay (?:the|you|it)|if you need (?:gear|equipment|a (?:room|space|studio))|we(?:'re| are| will be) clos(?:ing|ed)|got the (?:drive|files?|footage|clips|link|usb)|big thanks to|thanks to (?:our|everyone|all)|are you hiring|years'? (?:of )?experience|(?:i'm|i am|we're) selling|for sale\b|i(?:'m| am) a (?:\w+ )?(?:colorist|editor|videographer|photographer|filmmaker|freelancer|sound designer|animator|web|developer|designer)\b(?=[^?]{0,120}\b(?:my rates?|work with you|work for you|portfolio|available for)\b)|my (?:day )?rates? (?:is|are|starts?)|offering (?:\w+ ){0,3}services|outsourc\w*|are you still looking for (?:an?|someone|help)\b|meeting invitation|invites you to(?! (?:quote|tender|bid|price|film|submit|offer))|(?:we are|we're|office is) closed|(?:received|thank you for) your (?:application|inquiry|enquiry)|application for|due back|resend|never arrived|has the (?:edit|video|film)\b|when (?:i can|can i|do i|may i) expect|equipment to (?:borrow|rent)|\bfyi all\b|timesheets?|payroll|keep me in mind|if you(?:'re| are)? ever (?:in )?need|on your (?:books|roster)|still have (?:the |our |any )?(?:\w+ )?(?:files?|footage|rushes|photos|recordings?)\b|to borrow|followers?|viewed your|check[- ]in online|when will [^?]{0,60}\b(?:be ready|be done|be finished|arrive)|send (?:me |us |over )?(?:the|an?|your) (?:invoice|receipt|files?|footage|link|photos|final files)\b)/i;
/** A paper that is sent to many: a notice, a bulletin, a receipt. It asks nobody to film. */
const NOTICE =
  /^\s*(?:public )?notice\b|\bdear (?:members?|exhibitors?|customers?|residents?|parents|friends?|stallholders?|colleagues|all)\b|\bhello friends?\b|thank you for your order|\b(?:bulletin(?! board)|digest|all welcome|union dues|members' area|new posts|terms cash|how often you get)\b/i;
/** What is sold at the door. */
const TICKETS = /\btickets? (?:for|go|are)\b|\bgo on sale\b/i;
/** Shops, fines and offices: they write of wares, orders and dues. */
const RETAIL =
  /\b(?:refund(?:ed)?|infringement|penalty (?:notice|charge|of)|fine of|\d{1,2}\s?% off|from [$£€]\d|order (?:no\.? |number |#)?\d{3}|(?:offer|parking|licen[cs]e|domain|pass|subscription|membership|policy|voucher)(?: at [\w ]{1,30}| \w+)? (?:expire[sd]?|renews?)|(?:subscription|membership|policy|licen[cs]e|annual|domain) renewal|your (?:\w+ )?(?:domain|repair|rental|appointment|premium|insurance)|firmware|download (?:now|here|it|the)|due back|pick(?:ed)? ?up by|entry fee|call for entries|deadline for entries|fyi|check-?in (?:now|online|opens|is|by)|summoned|factura|facture|rechnung|bestelling|bestellung|commande|invoice \d{3,}|your mot\b|we have slots|trade stands|(?:seats|places|spaces) (?:are )?(?:left|limited)|appointment (?:is|has|to|at|on|for))\b/i;
/** Somebody asks this reader, and not all readers, to work. */
const ASKS_ME =
  /\b(?:can|could|would|will) (?:you|u)\b|\bare you (?:free|available)\b|\bkit\s?[,:?-]|\b(?:hi|hey|hello|dear) kit\b|\bquot(?:e|ation)\b|\bmy (?:price|rate)\b|\bwe(?:(?:'d| would) (?:like|love)(?! to thank)| are looking|'re looking| need)\b/i;
const ASKS =
  /\b(?:are you (?:\w+ ){0,2}(?:free|available|around|open|booked|able|interested|up for|doing anything|in town)|(?:you|u) (?:\w+ )?(?:free|available|around|about(?= (?:on|for|this|next|in|\d))|up for)\b|will you be (?:about|here)|your availability|availability (?:for|on)|(?:can|could|would|will) (?:you|u) (?:\w+ ){0,4}(?:film|shoot|record|cover|run|switch|mix|work|tape|do|help|come|operate|mix|stream|livestream|edit|capture|photograph|quote|join|make it|take|fill in|step in|jump in|be (?:able|available|free|interested|there|up for|our)|send (?:me|us|over) (?:a|your)|give (?:me|us) (?:a|your)|let (?:me|us) know (?:if|whether|your))|can we (?:add|book|hire|get|have|move|extend)|could we (?:add|book|hire|get|have)|any (?:chance|availability|possibility|interest)|(?:we|i|they) (?:\w+ ){0,2}(?:need|want|require|are looking|'re looking|am looking)|(?:we're|i'm|am|are) (?:\w+ )?(?:looking|searching|hunting|after)\b|looking (?:for|to (?:hire|book|get|have))|(?:is|are) (?:being )?(?:sought|required|wanted|requested)\b|which (?:one )?(?:works|is better|suits|would suit|day suits|do you prefer)|(?:works?|suits?) (?:for )?(?:you|u)\b|how mu?ch\b|need (?:a )?(?:#|number|price)|in need of|(?:we|i)'d (?:like|love)|needs?\b(?! to\b)|needed\b|would (?:like|love)|love (?:to have )?you|searching for|seeking (?:a|an)|do you (?:\w+ )?(?:have (?:any )?(?:availability|time|space)|do (?:this|these|events?|corporate|conferences?|weddings?)|cover|film|shoot|offer|travel|record|stream)|what (?:would|do|are|is|'s) (?:you|your|it|the cost)(?: \w+){0,2} (?:charge|rates?|cost|fees?|price|day rate)|how much (?:would|do|for|is)|(?:quote|estimate|price|rate) (?:for|on|to)|(?:like|love|want|wanting|hoping) to (?:hire|book|have you|get you|have someone|work with you|bring you|get a quote|film|get)|interested in (?:hiring|booking|having|your|working|getting)|book you|hire you|free (?:on|for|to|that|those|from)\b.{0,40}\?|videographer (?:needed|wanted|required)|(?:camera|cam|video|sound|audio|photo)\w*(?: \w+)? (?:needed|wanted|required)|fancy (?:a|shooting|filming|it|doing|another)|up for (?:a|it|this|filming|shooting)|enquir(?:y|e|ing)|inquir(?:y|e|ing))\b/i;

/** The labels of a form or a crew note; three of them are a request. */
const FORM_LABEL =
  /^[ \t]*(?:when|where|what|dates?|location|venue|hours|times?|call(?: time)?|wrap|rate|fee|pay|budget|role|position|job|gig|shoot|event|client|kit|gear|load[- ]?in|service|occasion)\s?[:=]/gim;
const FORM_LABELS = 3;
/** What is settled already is not asked. */
const SETTLED =
  /\b(?:see you|looking forward to (?:seeing|having|working)|(?:is|are) (?:confirmed|booked)|all set|reminder|don't forget|was|were)\b/i;
/** "We would like our gala filmed": wished now, whatever was good before. */
const WISHED_FILMED =
  /\b(?:we|i|they)(?:'d| would)(?: (?:really|very much|dearly|all|so))? (?:like|love)(?: to (?:have|get|see))? (?:our|the|this|it)\b(?:(?!\bnot\b|n't)[^.!?\n]){0,60}\b(?:filmed|videoed|videotaped|livestreamed)\b(?![^.!?\n]{0,40}\bby (?:the|our|an?|my|one)\b)/i;
/** What was arranged before, told once more. */
const AGREED =
  /\b(?:as (?:agreed|discussed|arranged)|now confirmed|is confirmed|nothing further|no further action|as in (?:the|your) contract|you signed)\b/i;
/** What makes a dated note a request where no role is named: a word that hires, money, or a question. */
const WORKING_HARD =
  /\?|\b(?:inquiry|enquiry|gig|wanted|voicemail|client|budget|quotation|quote|day rate|load-?in|bump-?in|get-?in|crew call|call time|wrap|pays?|paying|flat|all in|interested|keen|lmk|coverage|hiring)\b|[$£€]\s?\d|\d\s?(?:€|\$|usd|cad|eur|gbp)/i;
/** Words that hire without naming the work: enough beside a date. */
const HIRES =
  /\b(?:(?:need|could use) (?:you|u)(?! to (?:sign|pay|send|fill|return|confirm|check))|free|available|availability|quote|rates?|hold|open|book|pay|budget|paying|pays|fee|(?:need|want|after|looking for|seeking) (?:someone|somebody|a person|one person|another pair of hands)|(?:can|could) (?:you|u) (?:still |also |maybe )?(?:do|make|work))\b/i;
const WANTS_ME = /\b(?:need|want|could use) (?:you|u)\b(?! to (?:sign|pay|send|fill|return|confirm|check))/i;
/** "Video the service and the potluck.": told as one tells somebody who is taken on already. */
const BIDS =
  /(?:^|[.!?\n])[ \t]*(?:please |pls )?(?:film|record|video|videotape|tape|livestream|photograph)[ \t](?:the|our|my|all|both|everything)\b/i;
/** "Could you do a talk at our camera club?" */
const SPEAKS = /\b(?:do|give|hold|run|lead) (?:us )?an? (?:\w+ )?(?:talk|lecture|workshop|class|lesson|demo)\b/i;
/** "Do you do weddings? Sometime in August": a day is wanted that is not fixed. */
const SOME_DAY =
  /\b(?:some ?time|some day|at some point|a (?:day|weekend|saturday|sunday|weekday)|date (?:is |still )?(?:open|to be fixed|tbc|not fixed)) (?:in|during|around|early in|late in|towards|over) (?:(?:early|mid|late|the|end of) )*(?:jan|feb|march|april|may|june|july|aug|sept|oct|nov|dec|spring|summer|autumn|fall|winter|next)\w*\b/i;
/** Words of a booking in a note that asks nothing: who keeps it writes them down, who announces an evening does not. */
const TRADE = anyOf(`
  inquiry | enquiry | gig | voicemail | caller | called re/about | client/client's | quote | quotation | day-rate | call-time | crew | chasing | hiring | lmk | flat | all in | pencil | b-cam | op | ops | operator | videographer | requested
`);
/** An amount of money. */
const MONEY =
  /[$£€]\s?\d|\d\s?(?:€|\$|usd|cad|eur|gbp|k\b|bucks|quid|pounds?\b|dollars?\b|euros?\b)|[.,!]\s\d{3,4}[.!]?\s*$|\b(?:pays?|budget|spend|offer|fee|rate)\b\D{0,12}\d{3}/i;
const count = (text: string, pattern: RegExp): number => [...text.matchAll(pattern)].length;

/**
 * What the finders saw before it is known whether the message asks for work.
 * @property dated a date still to come is named for the work; false also when every date is of something else
 * @property elsewhere dates are named and all of them are of something else
 * @property timed an hour is named
 * @property details how many of these are said: an hour of call or wrap, an offer for a day, an hour or the job, a time to answer by
 */
export type Seen = { dated: boolean; elsewhere: boolean; timed: boolean; details: number };

/** So many details of a job beside its date make crew shorthand a request, whatever its words. */
const ENOUGH_DETAILS = 2;

/** In a note of no more letters than this a role, a day and an amount are a request, whatever its words. */
const LONGEST_NOTE = 400;
/** What anybody may come to, win or buy. */
const OPEN_TO_ALL = /\b(?:tickets?|workshops?|courses?|class(?:es)?|lessons?|training|sale|donations?|entry)\b/i;

/** "Need a vision mixer for every evening from 5 to 8 May": so few words that ask plainly can ask for nothing else. */
const SHORTEST_PLAIN = 160;
/** "We wish to engage you", "we request your quotation": words of hiring, however formal the rest. */
const ENGAGES =
  /\b(?:wish|propose|like|want|love|hoping|intend) to (?:engage|hire|book|commission|retain) (?:you|your services)\b|\b(?:request|invite|seek|solicit|would appreciate|would welcome) your (?:kind |best |competitive )?(?:quotation|quote|proposal|tender|bid|estimate)\b|\b(?:send|give|let) (?:me|us) (?:have |know )?your (?:day )?(?:rates?|prices?) for (?:an?|the|our|one|two|filming|recording|streaming)\b|\binvites? you to (?:quote|tender|bid)\b|\bchecking your (?:diary|calendar|availability)\b|\b(?:would|should) (?:appreciate|welcome|like|be glad of) (?:an?|your) (?:offer|quote|quotation|estimate) for\b/i;

/** A sheet that tells the reader what he does on the day: "Your role: roaming cam". */
const MY_PART = /\byour (?:role|position|post|camera|job) ?[:=–-]|\byou(?:'re| are) on (?:cam|camera|sound|vision|switcher|desk)\b/i;

/** What the rules say of a message: it asks in plain words on a date of the work; it reads as a request, in a few words or in more; it asks for none; it is of a machine or for another trade, whatever its words; it sells to me or goes to many, whatever the weights say. */
export type Ruled = 'certain' | 'plain' | 'note' | 'request' | 'none' | 'refused' | 'never';

/** What the rules say of a message, and how plainly. */
export function ruledBy(body: string, whole: string, seen: Seen): Ruled {
  const plain = asksPlainly(body);
  if (sellsToMe(body, plain || seen.details >= ENOUGH_DETAILS) || goesToMany(body, plain)) return 'never';
  if (!plain && (answersByMachine(body) || standsAsItIs(body))) return 'never';
  if ((seen.dated || seen.elsewhere) && !isMachine(whole) && !firmlyNot(body) && takesMeOn(body, seen.timed)) return 'certain';
  if (!isInquiry(body, whole, seen))
    return isMachine(whole) || firmlyNot(body) || (rolesIn(body).length === 0 && (wantsOthers(body) || asksAnotherTrade(body)))
      ? 'refused'
      : 'none';
  const { time, work, film, prompted } = asksForWork(body);
  const few = body.trim().length <= SHORTEST_PLAIN;
  const short = few && (asksPlainly(body) || prompted);
  if (seen.dated && (short || ((time || work || film) && ENGAGES.test(body)))) return 'certain';
  return seen.dated &&
    (time || work || film || BIDS.test(body) || ABROAD.test(body) || plain || (seen.details >= ENOUGH_DETAILS && MY_PART.test(body)))
    ? 'plain'
    : few
      ? 'note'
      : 'request';
}

/**
 * True when somebody asks for work on dates.
 * @param body what the sender wrote, without quotes and signature
 * @param whole the message with its head and foot, where machines sign
 */
function isInquiry(body: string, whole: string, { dated, elsewhere, details }: Seen): boolean {
  const said = details + (WANTS_ME.test(body) ? 1 : 0) + (count(body, FORM_LABEL) >= FORM_LABELS ? ENOUGH_DETAILS : 0);
  const detailed = dated && said >= ENOUGH_DETAILS;
  // Words of wanting that name neither a trade nor a deed of it are no request until an hour, an offer or a time to answer stands beside them.
  const asked = asksForWork(body);
  const paid = MONEY.test(body);
  // What is told of a film that exists or a day that is settled only names a thing to film.
  const settled = THANKS.test(body) || SETTLED.test(body) || AGREED.test(body);
  const asks =
    asked.time ||
    asked.work ||
    (asked.film && (!settled || (dated && !AGREED.test(body) && WISHED_FILMED.test(body)))) ||
    (paid && BIDS.test(body)) ||
    ABROAD.test(body) ||
    (ASKS.test(body) && (said > 0 || paid));
  const roles = rolesIn(body);
  const work =
    detailed ||
    roles.length > 0 ||
    OCCASION.test(body) ||
    (dated && (HIRES.test(body) || asked.work || asked.film || asked.prompted || (asked.time && (said > 0 || paid))));
  if (!work) return false;
  if (offersOrDeclines(body) && !(details >= ENOUGH_DETAILS && !/\bmy (?:day )?rate\b/i.test(body))) return false;
  // A plain request on a date stands against a word of bills, tickets or thanks beside it.
  const plainly = dated && (asksPlainly(body) || (asks && said > 0 && roles.length > 0));
  if (
    isMachine(whole) ||
    (NOTICE.test(body) && !ASKS_ME.test(body) && !(detailed && asks)) ||
    (TICKETS.test(body) && !ASKS_ME.test(body) && !plainly)
  )
    return false;
  if (details < ENOUGH_DETAILS && asksForNothing(body)) return false;
  if (firmlyNot(body)) return false;
  if (roles.length === 0 && (wantsOthers(body) || asksAnotherTrade(body))) return false;
  if (RETAIL.test(body) && !asksPlainly(body) && details < ENOUGH_DETAILS) return false;
  if (
    (AGREED.test(body) || THANKS.test(body)) &&
    !/\?|\b(?:please|pls|kindly) confirm\b/i.test(body) &&
    !asksPlainly(body) &&
    details < ENOUGH_DETAILS
  )
    return false;
  const selling = count(whole, SELLING);
  if (selling >= 2) return false;
  if (
    DECLINED.test(body) &&
    !(details >= ENOUGH_DETAILS && asks) &&
    !/\b(?:instead|replacement|pulled out|dropped out|looking for|(?<!no longer |not |don't )need (?:a|someone))\b/i.test(body)
  )
    return false;
  if (CHATS.test(body) && !dated && !(asked.work && roles.some(({ role }) => role === 'edit only'))) return false;
  if (SOCIAL.test(body) && details === 0 && !plainly) return false;
  if (NOT_FOR_HIRE.test(body) && details < ENOUGH_DETAILS && !plainly) return false;
  if (/\bno (?:reply|response|action|answer) (?:is )?(?:needed|required|necessary)\b|\bno need to (?:reply|respond)\b/i.test(body))
    return false;
  if (MONEY_LETTER.test(body) && !(asks && dated)) return false;
  if (elsewhere && !dated) return asks && roles.length > 0 && !CHATS.test(body);
  if (asks)
    return (
      dated ||
      (asked.work && !settled && !CHATS.test(body) && selling === 0 && OCCASION.test(body) && SOME_DAY.test(body) && !SPEAKS.test(body)) ||
      (roles.length > 0 && !THANKS.test(body) && (!CHATS.test(body) || (asked.work && roles.some(({ role }) => role === 'edit only'))))
    );
  if (THANKS.test(body) || selling > 0) return false;
  if (SETTLED.test(body) && !detailed && !body.includes('?')) return false;
  return (
    detailed ||
    (dated &&
      (said > 0 ||
        TRADE.test(body) ||
        (paid && (body.includes('?') || (roles.length > 0 && body.trim().length <= LONGEST_NOTE && !OPEN_TO_ALL.test(body))))) &&
      (roles.length > 0 || WORKING_HARD.test(body)))
  );
}
