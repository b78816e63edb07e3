/**
 * What is settled and told once more, or still open with nothing asked of me: the day stands as it is, and no work is asked for.
 */
import { anyOf } from './phrases.ts';

/** There is nothing for me to do. */
const NOTHING_TO_DO = anyOf(`
  nothing to do/action/sign for/from/on? | nothing needed/required/more_needed/for_you_to_do/you_need_to_do | nothing has/'s changed | nothing changes | nothing's changed | nothing new | no change/changes from/to/on/since/there/here | no changes | no news yet | just so/for you've/you_have/you got_it/have_it/have_got_it/it_all/everything/all_of_it/know | so you've/you_have got? it/everything all? in one place | for your records/files/information_only | for info only | purely for info/information | all as booked/agreed/before/planned/discussed/arranged
`);
/** It was settled before. */
const BEFORE = anyOf(`
  as we/you/i? booked/agreed/arranged/discussed/planned/settled/confirmed | as per your/our/the quote/contract/agreement/booking/mail/email/call | like/as we/you/i said/agreed/planned/discussed/arranged | already/all booked/confirmed/agreed/arranged/settled | same as before | looking forward to it/saturday/sunday/friday/seeing/working | see you/u then/there/at/on
`);
/** Whether I still come, asked of a day that is settled. */
const STILL_ON = anyOf(
  `
  still/all good/on/ok/okay/fine/set/right/coming for/on/to? {day} | all set for | we still on | y'all/you/u/ya still on | see you/u on? {day}
`,
  { day: `mon* | tue* | wed* | thu* | fri* | sat* | sun* | today | tomorrow | tonight | tmrw | the weekend | next week | the \\d{1,2}*` },
);
/** I am to keep no day free. */
const HOLDS_NOTHING =
  /(?<!\p{L})(?:don't|do not|dont|no need to|needn't|you need not|please don't) (?:hold|keep|block|reserve|pencil|book)(?: (?:in|out|off))? (?:anything|any (?:dates?|days?)|the (?:dates?|days?)|that|those|these|this|it|them|your (?:diary|calendar)|open|free)(?!\p{L})/iu;
/** What is to be done otherwise than it was settled. */
const CHANGED = anyOf(`
  change/changes/changed/update/updated to/in/of/on/for/: | one/small/slight/quick/a/another/only change | except/only/but that? the/it/call/we/now | instead of | rather than | moved/pushed/brought/shifted/put ... forward/back/up/earlier/later/to/by | is/are/starts/begins/need/needs now | now need/start/starts/begin/begins/at/from/is/ends/runs | earlier/later than | an hour/half_an_hour/minutes earlier/later | new time/call/date/place/venue/hours/address/plan | instead | forget the | was # | not #
`);

/** True for what only tells again what is booked, asks whether it stands, or leaves it open with nothing to be done. */
export function standsAsItIs(body: string): boolean {
  const asks = body.includes('?');
  if (HOLDS_NOTHING.test(body) && !asks) return true;
  if (CHANGED.test(body)) return false;
  return BEFORE.test(body) && (STILL_ON.test(body) || (NOTHING_TO_DO.test(body) && !asks));
}
