/**
 * A day before those of the job on which the sender or somebody else has something to do that goes before it: "the programme goes to print on 16 April",
 * "the Session next meets on the 17th", "bids after noon on 19 February are not opened", "I'm telling the host on 8 January who I've got". It is no day of
 * the job where others are told.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import type { DateMention } from './scene.ts';

const HAND_IN = anyOf(
  `
  {goes} to the? print/printer/printers/press/publisher/publishers | send/sending/sends ... to the? print/printer/printers/press/publisher/publishers | {goes} in/off to_the_client/to_the_board
  {list} ... goes/go/is/are in/off/out/submitted/sent | send/sending/submit/submitting/file/filing/hand_in/handing_in/turn_in/turning_in the/our/my {list} | {list} to the? client/board/venue/publisher/council/sponsor ... goes/go in/out/off
  close/closing/lock/locking/finalise/finalising/finalize/finalizing the/our/my crew/list/roster/budget/team | tell/telling the/our/my client/clients/host/hosts/board/venue/caterer/caterers/committee/sponsor/sponsors/producer/publisher | report/reporting back
`,
  {
    goes: `go | goes | going | gone | has to go | have to go`,
    list: `crew list | crew names | names | brochure | programme | program | proposal | application | budget | paperwork | list | call sheet | bid | tender`,
  },
);
const MEET = anyOf(
  `
  {body} next/again? meets/meet/sits/sit next/again? | {body} 's? next/monthly/spring/summer/autumn/winter? meeting is/falls | next meeting is/falls | we next meet | we meet next/again? | have our next? meeting | {body} has/have its/their/a next? meeting | agm is
`,
  {
    body: `board | committee | council | session | panel | trustees | trust | heads | three heads | governors | directors | partners | vestry | chapter | senate | synod | jury`,
  },
);
const BIDS = anyOf(`bids/tenders/responses/quotes/quotations/submissions/proposals/offers ... after/close/closes/closing`);
const ANSWER = anyOf(`
  answer/answers/reply/price/prices/quote/know/word/yes/message/decision/figure/figures/hear/revert/beforehand | before/by then | the ... before
`);
const FILMED = /(?<!\p{L})(?:film|record|cover|stream|livestream|shoot|captur|video|camera)\p{L}*(?!\p{L})/iu;
/** Only what leads to the date itself: "on", "is", an hour. */
const LEADS_ON = /^[^.;!?\n]{0,44}$/;
const [LEAD, BEHIND] = [100, 110];

/** What is told of the date right before it, up to which no more than an object and small words stand. */
const leads = (pattern: RegExp, lead: string): boolean => {
  const hit = pattern.exec(lead);
  return hit !== null && LEADS_ON.test(lead.slice(hit.index + hit[0].length));
};

function isTheirs(text: string, { start, end }: DateMention): boolean {
  const sentence = sentenceAround(text, start, end);
  const lead = text.slice(Math.max(sentence.start, start - LEAD), start);
  const behind = text.slice(end, end + BEHIND);
  if (FILMED.test(lead) || FILMED.test(text.slice(end, sentence.end).slice(0, BEHIND))) return false;
  return leads(HAND_IN, lead) || leads(BIDS, lead) || (leads(MEET, lead) && ANSWER.test(`${lead} ${behind}`) && !FILMED.test(behind));
}

/** The dates without those that go before the job, where others with day and month are left that come later. */
export function withoutTheirs(text: string, mentions: readonly DateMention[]): DateMention[] {
  const theirs = mentions.filter((mention) => mention.said !== 'event' && isTheirs(text, mention));
  const left = mentions.filter((mention) => !theirs.includes(mention));
  const days = left
    .filter(({ explicit, past, readings }) => explicit && !past && readings.length > 0)
    .flatMap(({ readings }) => readings.flat());
  const first = days.toSorted()[0];
  return first === undefined
    ? [...mentions]
    : mentions.filter((one) => !theirs.includes(one) || !one.readings.every((dates) => (dates.at(-1) ?? '') < first));
}
