/**
 * Closing dates of which nothing nearer tells what is due: whether an answer is wanted by then, or somebody else has something to do.
 */
import { clauseBefore, sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import type { Where } from './scene.ts';

/** What is wanted of me by a closing date: to say something, to name a price, to be settled. */
const ANSWERED = anyOf(
  `
  know | knowing | thoughts | send ... something/dates/options/slots/times/ideas/examples/portfolio | appreciate it | sms | submission | submissions | tu me dis | hear | heard | word | yes | no | ok | okay | yay or nay | yea or nay | y/n | y or n | nod | thumbs up | say | says | tell | told | shout | holler | ans | answer* | repl* | respon* | revert* | confirm* | acknowledg* | accept* | declin* | advise* | inform* | notif* | communicat* | feedback | decid* | decision* | commit* | interest* | availab* | apply | applications
  hmu | hit me/us | ring | call | phone | text | txt | msg | message* | mail | email | e-mail | whatsapp | wa | dm | ping | write | contact | drop me/us | drop a line | line | get back | come back | get in touch | reach | touch base | be in touch
  quote* | quotation* | price* | pricing | figure* | charge* | fee | fees | rate | rates | costs | costing* | estimate* | offer* | bid | bids | tender* | proposal* | terms | number | numbers | ballpark
  finalise* | finalize* | settle* | firm* up | tied/pinned/nailed down | sort | sorted | sorting | lock in | lock you/this/it/crew/the_crew in? | close this/it/that off/out/down? | wrap this up | crew confirmed | crew | team | name | names | melde* | meldung | bescheid | zusag* | angebot | dire | dites-moi/nous | dis-moi/nous | répon* | répond* | savoir | devis | contest* | contést* | dime | dinos | dice* | dici* | deci* | diga* | avísa* | respóndenos/respóndeme | respuesta | hoor | weten | offerte | sapere | risposta
  can wait | wait is | book you/crew/someone/somebody/this/it/a | booking | pencil* | hold* | wait | waiting | grab | snap | you/u want it/this | take it | hoping
`,
  {},
  'gi',
);
/** What the sender promises, or others have to do, by a day. */
const PROMISED = anyOf(
  `
  {they} ... {tell} ... | you're/you_are/u_r ... away/off/back/out/abroad/on_holiday ... | my/our/his/her/their sister/brother/mum/mom/mother/dad/father/wife/husband/partner/daughter/son ... decides/chooses/finds_out/knows | promised ... to? tell/let/give/answer/call/ring/confirm/send | they/he/she/it would/will/must/should/could have/get/need/receive ... | {they} know | and/but/will will? know/hear/learn | we'd/they'd know | i/we won't/don't/can't/cannot/shan't ... know/say/tell/confirm ... | you/u 'll/will/should/would have/get/hear/receive/know | you'll/you'd have/get/hear/receive/know | should/will/would be confirmed/known/ready/out/sent/announced
  tell/let/ring/call/email/inform/ask the? caterers/caterer/hotel/venue/council/airline/florist/band/landlord/printers ...
  caterers/caterer/hotel/venue/council/airline/florist/landlord/printers/printer/insurers/authority/police ... need/needs/want/wants/answer/answers/decide/decides/reply/replies/tell/tells/confirm/confirms
  hall/church/kitchen/venue/hotel/school_office/restaurant ... need/needs/want/wants to know ... |
  guests/delegates/speakers/members/players/teams/parents/exhibitors/runners/pupils/volunteers rsvp/reply/respond/register/confirm/sign/book |
  speakers/guests/delegates/exhibitors/attendees/members/players/teams/parents/sponsors/artists/bands/entrants/participants/runners/students/pupils/volunteers/traders/stallholders ... must/have/has/need/needs/should/will/are/is
`,
  {
    they: `we'll | i'll | they'll | he'll | she'll | we will | i will | they will | he will | she will | i'm going to | we're going to | we are going to | i am going to`,
    tell: `let you/u | tell you/u | send | share | give you/u | mail | email | text you/u | call you/u | ring you/u | get back | come back | confirm`,
  },
);
/** What is due by a day and is no answer. */
const THINGS = anyOf(
  `
  entries | registration | registrations | registering | tickets | ticket | deposit | deposits | payment* | payable | paid | pay | invoice* | insurance | certificate* | contract* | permit* | visa* | form | forms | paperwork | accreditation | risk assessment | method statement | running order | schedule | script | slides | call sheet | budget
  deliver* | edit | edits | edited | cut | film back | footage | files | upload* | publish* | photos | pictures
`,
  {},
  'gi',
);
/** Crews and names may be confirmed by the sender: that is when they are chosen. */
const OF_CREW = anyOf(`crew | crews | team | you in | who | someone | somebody | videographer | operator | booking | bookings | names`);
const PIECE = /[,;]|(?<!\p{L})(?:and|so|but|because|as|since|once)(?!\p{L})/iu;
/** A word for a closing date with no more than an hour, a part of a day or small words up to it. */
const CLOSES =
  /(?<!\p{L})(?:by|before|b4|until|till?|than|latest|due|deadline|bis|spätestens|avant|d'ici|antes|entro|uiterlijk|vor|voor)\b:?(?:[\s,]{1,2}(?:on|at|the|of|about|around|next|this|noon|midday|lunch(?:time)?|morning|afternoon|evening|night|end|close|play|day|business|cob|eod|latest|in|is|zum|dem|den|le|del?|el|il|\d{1,2}(?:[:.h]\d\d)?\s?(?:[ap]\.?m\.?|h|hrs|uhr)?)){0,6}\s?$/iu;

/** `answer` where a clause up to a closing date asks for one, `theirs` where it tells of something else that is due; nothing where it tells neither. */
export function dueBy(text: string, { start, end }: Where): 'answer' | 'theirs' | undefined {
  if (dueOfOthers(text, start)) return 'theirs';
  const sentence = sentenceAround(text, start, end);
  const lead = text.slice(sentence.start, start);
  if (!CLOSES.test(lead.slice(-60))) return undefined;
  const last = lead.split(PIECE).at(-1) ?? '';
  // "let me know, ideally by": the last piece of a sentence may tell nothing.
  const bare = last.replace(/[^\p{L}]/gu, '').length < FEWEST_LETTERS;
  // "the rest I share once you confirm, latest by": what is promised follows the answer.
  return due(last) ?? (bare ? (ONCE_YOU.test(lead) ? 'answer' : due(lead)) : undefined);
}

const ONCE_YOU =
  /(?<!\p{L})(?:once|when|after|as soon as) (?:you|u) (?:confirm|reply|answer|say|accept|agree|ok)\p{L}*(?: [^,.;]{0,12})?,/iu;
/** "Diwali offer: 20% off till" */
const OFF_PRICE =
  /(?:%|per ?cent) (?:off|discount|reduction)(?!\p{L})|(?<!\p{L})(?:early[- ]bird|introductory|special|sale) (?:price|rate|offer)s?(?!\p{L})/iu;
const FEWEST_LETTERS = 14;
const lastOf = (pattern: RegExp, clause: string): number => [...clause.matchAll(pattern)].at(-1)?.index ?? -1;

function due(clause: string): 'answer' | 'theirs' | undefined {
  if (OFF_PRICE.test(clause) || (PROMISED.test(clause) && !OF_CREW.test(clause))) return 'theirs';
  const [asked, thing] = [lastOf(ANSWERED, clause), lastOf(THINGS, clause)];
  if (asked < 0 && thing < 0) return undefined;
  return asked > thing ? 'answer' : 'theirs';
}

/** "Costumes must be ready by 1 December": what is due is of others. Those who take me on may well need to know. */
const DUE_OF_OTHERS =
  /^\s*(?:the |our |all |any )?(?!client|boss|board|committee|agency|producer|director|team|deadline|answer|reply|quote|decision|offer|deal|cut-?off|hold|pencil|option)(?:[a-z\u00c0-\u024f][a-z\u00c0-\u024f'-]* ){1,5}?(?:must|has to|have to|go|goes|runs?|can|is|are|was|will|ends?|expires?|lasts?)\b/i;
const OF_ANSWERS =
  /\b(?:my|deadline|i|we|me|us|you|u|your|yours|know|hear|answer|reply|yes|no|word|confirm\w*|decid\w+|quot\w+|name|sign\w*|book\w*)\b/i;

const CLAUSE_REACH = 80;
/** True where the clause before a date tells until when something of others is due, open or valid. */
export function dueOfOthers(text: string, start: number): boolean {
  const clause = clauseBefore(text, start, CLAUSE_REACH);
  return DUE_OF_OTHERS.test(clause) && !OF_ANSWERS.test(clause);
}
