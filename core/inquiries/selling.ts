/**
 * Who sells to the reader of a message: an offer of wares, rooms, seats, courses or help for which the reader would pay.
 * It has dates, prices and questions as an inquiry has; but the writer would do the booking, and the reader pays by the month, the night or the piece.
 */
import { anyOf } from './phrases.ts';

const BOOKS = `book/reserve/save/order/set_it_up/set_this_up/go_ahead/proceed/put_one/keep_one/keep_it/send_you`;
/** The writer would book, hold or send something for the reader. */
const WOULD_BOOK = anyOf(`
  would/do you like/want me/us to ${BOOKS}/hold/pencil_you_in/put_your_name_on | want us to ${BOOKS}/hold/put_your_name_on | shall i/we ${BOOKS}
  can/could/may i/we book/sell/show/save/reserve you a/an/some/our | can/may i/we send you a/some/three/our ... ideas/sample/samples/brochure/audit/proposal | we can do you a/an | we/i can give you a quote | i/we give you a quote
`);
/** What a buyer would have to do. */
const TO_BUY = anyOf(`
  if you'd/you_would like to book_a/book_it/book_one/order/buy | to go ahead/proceed/book/order just/please/simply? reply/ring/call/click/pay/sign | reply yes to book/go_ahead/order | ring/call/email us to book | would you like to book/order/exhibit | deposit secures/holds/reserves it/your | confirm if you'd like to book | let me/us know if you'd like the/a/one/to_book/to_order
  spot's/space_is/stand_is/place_is yours | we've/we_have/have/got ... spaces/places/seats/stands/pitches/desks left | would you ... like one/a_place/a_sample/a_trial/a_free/a_demo/to_come_for_a_tour | free trial/sample/demo/audit/consultation | our/my studio has/have/still ... slots/spaces/dates | sign up by/now/today/before | per post/sqm/seat/user | two/three/few/'ve spaces/places left
`);
/** What is paid for as long as it is used, or by the piece. */
const BY_THE_PIECE =
  /[$£€]\s?\d[\d,.]{0,8}\s?(?:\+ ?vat |plus vat )?(?:per|a|an|each|\/)\s?(?:month|mo|night|set|user|seat|stand|post|word|album|page|film|reel|copy|licen[cs]e|sq ?m|m2)\b/i;
/** A short talk that a stranger would like to have. */
const PITCH_TALK =
  /\b(?:\d\d|ten|fifteen|twenty|thirty)[- ]?min(?:ute)?s? (?:\w+ )?(?:call|chat|demo|walk-?through|zoom|intro)\b|\b(?:quick|short|free) (?:demo|walk-?through|audit|consultation)\b/i;
/** People like the reader, whom somebody says he serves. */
const FOR_PEOPLE_LIKE_ME = anyOf(
  `i/we/we've help/helped/sell/print/manufacture/build/produce/write/supply/advance/represent/insure/edit/design ... {peers} | for {peers} | most of our {peers}`,
  {
    peers: `videographers | filmmakers | photographers | freelancers | creatives | studios | video/production/film companies | production houses | event videographers/filmmakers | wedding videographers/suppliers/vendors`,
  },
);
/** Somebody parts with kit of their own, asks the reader to come as a customer, or wants to be taken along. */
const NEVER = anyOf(`
  looking/searching for a/an? videographer/videography/camera/camera-operator/filming/film/editing/editor/photography/runner job/internship/placement/apprenticeship | i'm/i_am selling my/our ... camera/body/lens/lenses/tripod/drone/kit/gear/gimbal/lights | i/we/i've/we've sold my/mine/ours/our | service/boiler due | tried to deliver | you have been shortlisted | take me on a/your shoot/job
  can/could/may i/we book you a/in_for_a ... call/demo/chat/walkthrough | clear/clearing out my storage/cupboard/garage/studio/loft/shed/cellar/kit/gear | give/giving it/them away for | let/letting it/them go for | new it/they was/were/cost/costs | cost me ... new
  bring/send/refer/recommend us a/any/one/your couple/couples/client/clients/customer/customers
`);
/** Somebody who looks for work, a post or a place to learn with the reader. */
const SEEKS_WORK = anyOf(
  `
  i'm/i_am looking/searching/hunting for? ... {work} as/in/with/on/at/near | i/and look/search/seek for? ... {work} as/in/with/on/at/near | i'm/i_am searching/seeking an/a {work} | my day-rate/rate as an/a assistant/trainee/runner/student/junior | love/like/happy/glad to assist/shadow you | assist you on/at/with your? shoots/shoot/jobs/sets
  offer/offering you? my services | begin/start/work with you on/from/as | have/had/got/be anything/work/something/a_place/a_job/a_use/room for me | can/could/may i send you my/a reel/showreel/cv/resume/portfolio | my cv/resume/reel/showreel/portfolio is attached/enclosed/below | finished/completed/left/attended ... film school | graduated/graduating in/on/this/last/from
  invitation for/to a/an talk/interview/chat | work experience with/at | unpaid/paid internship/placement/traineeship | praktikum* bei ihnen/euch/dir
`,
  {
    work: `work | a job | job | jobs | entry | a position | position | an internship | internship | a placement | placement | an apprenticeship | apprenticeship | a traineeship | traineeship | work experience | employment | an entry`,
  },
);
/** Who looks for work says what they are. */
const LEARNER = anyOf(`
  i'm/i_am/i've/as a/an ... student/graduate/trainee/newcomer/beginner/school-leaver/assistant | final/first/second/third year ... student | film school | showreel | my reel | my cv | my resume | driving licence | as camera-assistant/assistant/runner/trainee | as a/an camera-assistant/assistant/runner/trainee | my works | i'm/i_am # | my own tripod/kit/camera/gear
`);

/**
 * True for what is offered to the reader for money, or asked of the reader as a customer, a guest or a friend.
 * @param asked whether the message asks in plain words for filming, or tells several details of a job
 */
export function sellsToMe(body: string, asked: boolean): boolean {
  if (NEVER.test(body) || (SEEKS_WORK.test(body) && LEARNER.test(body))) return true;
  if (asked) return false;
  const signs = [WOULD_BOOK, TO_BUY, BY_THE_PIECE, PITCH_TALK, FOR_PEOPLE_LIKE_ME].filter((sign) => sign.test(body)).length;
  return signs >= 2 || WOULD_BOOK.test(body) || TO_BUY.test(body);
}
