/**
 * Ways to want an answer by a time that the older list does not have: who must settle it, what must be said, what must be sent.
 */
import { phrases } from '../phrases.ts';

const by = String.raw`(?:[^.;?!]|\.(?=\w)){0,40}?\b(?:on or before|by|before|until|till|no later than|not later than|latest|at the latest)`;
const onOrBy = String.raw`(?:[^.;?!]|\.(?=\w)){0,24}?\b(?:on or before|by|before|until|till|no later than|on|at|latest)`;

const settled = phrases(`{who} {must} {settle}`, {
  who: `i | we | i've | we've | client | the client | my client | my boss | committee | board | team | they | producer | director`,
  must: `need/needs/have/has/got/want/wants/must/like/hope/hoping/aim/plan/'d/would/'ll/will ... to? | must | need | needs | to`,
  settle: `book | sign | settle | settled | sort | sorted | confirm | finalise | finalize | fill | close | get back | pick | choose | hire | appoint | name | names | know | tell | decide | lock | have somebody | have someone | find someone | find somebody | sign off | a name | an answer | a decision | a yes`,
});
const deciding = phrases(`
  we'll/we_will/i'll be comparing/reviewing/looking_at/opening ... |
  i'm/we're/we_are/i_am/client_is/board_is/committee_is deciding/comparing/reviewing/choosing/confirming/booking/finalising/finalizing/locking/picking/signing/crewing ...
  we'll/i'll/we_will/i_will/they'll/we/i decide/choose/pick/book/confirm/finalise/finalize/crew
`);
const sent = phrases(`
  a word | in or out | sign on | sign up to it | holla | kindly tell | something in writing | a name | a figure | a number | someone confirmed | crew confirmed | somebody confirmed | have this settled | this settled | tell ... office/desk/mayor/committee/board/client/boss | ja oder nein | oui ou non | sí o no | deadline to say yes/no/reply/answer
  indicate/express/register/signal/state/confirm/note your? interest | expressions of interest | your thoughts | thumbs up | nod | the nod | green light | your verdict | final answer | firm answer | get/hear anything/word/back | put me out of my misery
  willingness/acceptance/consent/availability/quotation/quotations/rate/rates/price/reply may/should/must/to/can/shall kindly? be conveyed/sent/submitted/communicated/given/intimated/confirmed/forwarded
  write to me/us | write/drop/shoot/send/fire/ping me/us a? note/line/text/mail/email/message/word/whatsapp/dm/reply/answer/yes/number | fill in/out the? form | send/return/submit/give ... yours/quote/price/rate/rates/number/figure/offer/proposal/estimate/cost/fee/terms
  your? quote/price/rate/number/figure/offer/proposal/estimate/cost/fee/terms/reply/answer/response/decision/ok/yes back? in? with us/me | need/want/have ... quote/price/rate/number/figure/offer/proposal/estimate/reply/answer/yes/no/response/decision/name/names/confirmation/commitment
`);
const latest = phrases(`
  my/our/the deadline/cut-off for/on crew/crewing/booking/bookings/this/it/answers/replies/quotes/yes/no | closing/close/cut-off/due date/day/time for/of quotations/quotation/quotes/quote/bids/bid/tenders/tender/proposals/offers/submissions/replies/answers/responses | quotation/quote/bid/tender/proposal/offer cut-off | latest/last/final reply/answer/response | last/final/latest date/day/moment/call for/to reply/replies/answer/answers/respond/responses/quote/quotes/quotation/quotations/offers/tenders/confirm/confirmation/proposals/bids | reply/response/answer window closes
`);

/** Labels of a form: "Closing: ", "Reply wanted: ", "When do I need to know: ". */
const labels = String.raw`(?:^|[\n.] ?)\s*(?:clos(?:ing|es|ed)|close date|(?:(?:return|send|latest|final|last|your|our) (?:of )?)?(?:reply|response|answer|decision|deadline|rsvp|quotes?(?! (?:request|requested|inquiry|enquiry|for)\b)|bids?|cut-?off)\b[\w /]{0,24}|(?:hold|option|pencil|offer)s? (?:expires?|ends?|lapses?|closes?|runs? out)|(?:when|how soon) (?:do |must |would )?(?:i|we|you) (?:need|have|want) (?:to know|an answer|to hear|to decide|it|a reply)(?: by)?)\s?[:=-]`;

/** "Cutoff is Friday noon." */
const cutOff = String.raw`(?:^|[\n.!?] ?)\s*(?:(?:the|my|our) )?cut-?off(?: date| time)? (?:is|will be|for this is)(?: on| at| by)?\b`;

/** "Let me know before our AGM, Thursday 21 January" */
const beforeWhat = String.raw`\b(?:let (?:me|us) know|repl(?:y|ies)|respond|answer|confirm|hear|know|decide|word)\b[^.;?!]{0,30}\bbefore (?:the|our|my|their|her|his) [a-z' ]{2,30}(?:,|,? which is|,? on|,? that's|,? this)(?=\s)`;

/** "The client needs a name by 19 May, so get back to me on the 18th" */
const soOn = String.raw`\bso (?:please )?(?:let (?:me|us) know|tell (?:me|us)|reply|respond|answer|(?:get|come) back to (?:me|us))(?: \w+){0,2} on(?= )`;

export const replyWanted = [
  soOn,
  beforeWhat,
  cutOff,
  labels,
  `(?:${settled}|${sent})${by}`,
  `${deciding}${onOrBy}`,
  String.raw`${latest}(?:\s(?:for|to)\s\p{L}{3,12})?(?:\s(?:is|by|on|at))?`,
].join('|');
