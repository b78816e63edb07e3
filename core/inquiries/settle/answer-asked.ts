/**
 * Dates by which an answer is wanted where no word for a closing date leads to them: "your answer I need until Friday", "lmk wed", "Friday latest", "so until the 20th please".
 *
 * Between what is asked for and its date stand none but small words; a date of which something else is told is left alone.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import { dueBy } from './answer-by.ts';
import { MOST_MENTIONS } from './days-among.ts';
import type { DateMention } from './scene.ts';

/** What is asked of me: an answer by its name, or to give one. */
const ANSWER = anyOf(
  `
  answer/reply/response/word/yes/decision/acceptance/verdict/thoughts/replies/estimate/quote/quotation | your/written consent | acknowledge* | a sign | ok | okay | nod | yes or no | yes/no | first refusal/dibs | job/gig/slot/date/place/it is/'s yours
  antworten | antwoorden | rückmeldung | antwort | rückruf | bescheid | zusage | angebot | réponse | devis | respuesta | presupuesto | risposta | preventivo | offerta | antwoord | reactie | offerte | offerten | conformidad | visto bueno | un oui | un sì | accord | consenso | akkoord | einverständnis
`,
  {},
  'gi',
);
const TO_GIVE = anyOf(
  `
  must/have/has/need/needs/got to? tell/answer/report_to them/her/him/the_client/the_board/the_boss/my_boss/the_committee | who i/we/i'm/we're/i've/we've hire/hired/hiring/book/booked/booking/pick/picked/choose/chose/chosen/take/taking/got
  let me/us/her/him/them know | lmk | lemme know | tell me/us/her/him something? | answer me/us | say yes/no/something | say something to me/us | say me/us | yell/sing/shout out | please/pls phone/ring/call/mail/email | no news | not/haven't heard | wants/want/needs/need it/this/that locked/settled/sorted/confirmed/fixed/decided/done_and_dusted/nailed_down/finalised/finalized in? | hear from? you? | i/we hear it? gladly? | need/needs/want/wants/like/have/has/must to? know it? for? sure? | need/needs/want it/this/that? black on white | thank/thanks you? to/for answer/answering/reply/confirm | give me/us a? bell/shout/ring/buzz/call/text/answer
  text/txt/msg/message/ring/call/phone/write/mail/email/ping/get/come/dm/buzz me/us/her/him? back to? me/us? | wants/want a call/ring/text back? | close me this | melde dich | meld dich | melden sie sich | sag mir/uns/mal? bescheid | sag mal | bittet um rückruf
  dime/dinos algo? | nos/me contestas/respondes/confirmas/dices | contestarme/contestarnos/responderme/respondernos/confirmarme/confirmarnos | contésta/contéstame/contéstanos | avísame/avísanos | me dices algo | dis-moi | dites-moi | réponds/répondez | réponds/répondez-moi | me/nous dire | me/nous répondre | fammi/fateci sapere | ci/mi fa sapere qualcosa? | mi dica | scrivimi | mi dia una risposta
  laat het? me/ons even? weten | laat je/u/het het? me/ons? | laat me | hoor het? graag | ik hoor het? graag
`,
  {},
  'gi',
);
/** Small words that may stand between what is asked for and its date. */
const SMALL = new Set(
  "a an and are as asap at b4 ya oh uh um er well maybe nlt je u ons mij even las los del que muy tarde como principe our office shop back be been before by can could due end even f for from gladly have hear i ideally if in is it its latest later least like may maybe me must need needed no not of off on or please pls plz possible preferably received required requested reply sent should soon sometime start thanks than the then there this till til to until up us want wanted we will wish with within would yes you your yours el still 's you'd i'd sms let's say close shut text phone mail whatsapp graag uiterlijk voor vóór op tegen van de het even bis spätestens zum am vor bitte ja entro il al la dal al'el antes del de hasta aquí avant le d'ici au pour svp possibile se morning afternoon evening noon midday lunchtime lunch early end hand week next".split(
    ' ',
  ),
);
/** Words that close a time; without one of them a date may be what the answer is about. */
const CLOSING =
  /(?<!\p{L})(?:by|before|b4|until|till?|latest|later|nlt|within|up to|bis|spätestens|vor|avant|d'ici|antes|hasta|al|entro|uiterlijk|voor|vóór|tegen)(?!\p{L})/iu;
/** What calls back and is told its day bare: "lmk wed", "ring back Thurs latest". */
const TOLD_BARE =
  /^(?:lmk|(?:text|txt|msg|message|ring|call|phone|write|mail|email|ping|get|come|dm|buzz) (?:me |us )?back|let (?:me|us) know|wants? a (?:call|ring|text)|(?:must|have|has|need|needs|got) (?:to )?(?:tell|answer|report)|(?:need|needs|have|has|want|wants|must) (?:to )?know|(?:pls |please )?say something|txt|no news|not heard|haven't heard|(?:wants?|needs?) (?:it|this|that)|sag mal|melde? dich)/i;
/** "We need to know it on 25 January.": a day without a word that closes it must end what is said. */
const MUST = /^(?:must|have|has|need|needs|got|want|wants)(?!\p{L})/iu;
const MOST_SMALL = 9;
const REACH = 110;

/** A piece of a sentence that is no more than a closing date: "By the 15th if you would.", "so until the 20th please." */
const BARE_BY =
  /(?:^|[.!?\n;:,(–-]\s{0,2})(?:(?:so|then|and|or|but|well|say|better|anyway|ideally|preferably|even better|sorry|no|actually|i mean|rather|in any (?:event|case)|at any rate),? ){0,2}(?:by|before|until|till?|no later than|not later than|bis|avant|antes del?|entro|voor)\s(?:(?:the|le|el|il|dem|zum|de)\s)?$/i;
const BARE = /(?:^|[.!?\n]\s{0,2})(?:(?:say|preferably|ideally|on|this|next) ){0,2}$/i;
const HOUR = String.raw`(?:(?:at |by )?(?:\d{1,2}(?:[.:h]\d{2})?\s?(?:[ap]\.?m\.?|h|hrs|uhr)?|noon|midday|lunchtime|teatime|morning|evening|afternoon|eod|cob|close of play)\b)?`;
const WISHED = String.raw`(?:please|pls|plz|thanks|thx|ta|bitte|svp|por favor|graag|latest|at (?:the )?(?:very )?latest|if (?:you|u|that's|possible)[^.?!\n]{0,20}|would be (?:\p{L}+ )?(?:good|great|fine|ideal|lovely|perfect|super|best|helpful|nice|brilliant)|(?:is|be) (?:fine|ok|okay|good|great|ideal|perfect))`;
const WISHED_AFTER = new RegExp(String.raw`^[\s,(]{0,2}${HOUR}[\s,)]{0,2}${WISHED}\b[^.?!\n]{0,30}(?:[.?!\n)]|$)`, 'iu');
const ENDS_AFTER = new RegExp(
  String.raw`^[\s,(]{0,2}${HOUR}[\s,)]{0,2}(?:then)?\s{0,2}(?:x{1,3}(?!\p{L})|\p{Extended_Pictographic}|[.?!\n)]|$)`,
  'iu',
);
/** What is due by a day and is no answer. */
const DUE_ELSE =
  /\b(?:edit\w*|cut|film back|footage|files?|deliver\w*|finished|ready|upload\w*|clips?|reels?|invoice\w*|register\w*|registration|entries|forms?|deposit|pay|paid|payment|tickets?|drafts?|version|(?:an?|the|our|one|minute|short|second|\d) (?:\p{L}+ )?(?:film|video|movie)|stills)\b/iu;
const ASKED_BEFORE = 170;
/** "A response for Wednesday would be super", not "thanks for your reply of Monday". */
const WISHES =
  /^(?![^.?!]*\b(?:thank\w*(?! (?:you )?(?:to|for (?:answering|replying|confirming)|in advance)\b)|was|were|had|yesterday|got your|(?<!\b(?:may|can|could|to|should|would|must|please) (?:i |we )?)have your)\b)[^]*\b(?:would|could|can|may|thank|please|pls|needs?|want|wish|like|expect|await|hope|appreciate|obliged|ask|must|suit|requested|required|due|wanted|souhait\w*|souhaitée?)\b/i;

const lastOf = (pattern: RegExp, text: string): RegExpMatchArray | undefined => [...text.matchAll(pattern)].at(-1);

/** "Quotations received after 17:00 on": what comes later is too late. */
const RECEIVED_AFTER =
  /\b(?:quotations?|quotes?|bids?|tenders?|offers?|proposals?|replies|submissions?|applications?|answers?)(?: that are)? (?:received|submitted|sent|arriving|coming)(?: in)? (?:after|later than)\b[^.;?!]{0,24}$/i;
/** "Deadline on our end is", "Avail check only, closes" */
const CLOSES_ON =
  /(?:^|[.!?\n]\s{0,2})(?:(?:my|our|the|your) )?(?:deadline|cut-?off|closing date)(?: (?:on|at|from) (?:our|my) (?:end|side))?(?: (?:is|for us is|will be))?:? (?:on )?(?:the )?$|\b(?:avail\w*|check|request|casting|enquiry|inquiry|call|search|crew list|hold|offer)\b[^.;?!\d]{0,20}\b(?:closes?|closing|shuts|ends|expires)(?: on| at)? $/i;

/** The last sentence of a piece but for the one in which the piece ends. */
const sentenceBefore = (piece: string): string =>
  piece
    .split(/[.!?\n]\s/)
    .filter((one) => one.trim() !== '')
    .slice(-2)
    .join(' ');

/** "He said he'd let me know by Friday": somebody else answers. */
const THEY_WILL =
  /\b(?:he|she|they|who|chap|man|lady|client|committee|council|board|venue|club|team|boss)(?:'ll|'d| will| should| can| would| was going to| were going to| promised to| has to| have to)\s$/i;

/** "up to 12 noon Nepal time, Friday" */
const OF_ZONE = /(?<!\p{L})(?:\p{Lu}\p{L}{1,15} |our |your )?time(?!\p{L})/u;
/** "¿Nos contestas el 20 de mayo como muy tarde?" */
const LATEST_AFTER =
  /^,? (?:at (?:the )?(?:very )?latest|the latest|latest|como muy tarde|a más tardar|au plus tard|al più tardi|uiterlijk|spätestens)(?!\p{L})/iu;
/** "You have until the end of the month to think" */
const TIME_LEFT =
  /(?<!\p{L})(?:you(?:'ve| have|'ll have| can have| would have)?(?: got)?|(?:give|gives|giving) you|take|i can wait|we can wait)(?: your)?(?: time)? (?:until|till?|up to) (?:the )?$/iu;
const TO_DECIDE =
  /^[^.;?!\n]{0,16} to (?:think|decide|answer|reply|respond|say|let (?:me|us) know|make up your mind|tell (?:me|us)|come back|get back|confirm|accept)(?!\p{L})/iu;

/** Whether words ask for an answer with no more than small words behind them. */
function askedRightBefore(lead: string): { bare: boolean; closing: boolean; named: boolean; must: boolean } | undefined {
  const [name, verb] = [lastOf(ANSWER, lead), lastOf(TO_GIVE, lead)];
  const hit = (name?.index ?? -1) > (verb?.index ?? -1) ? name : verb;
  if (!hit) return undefined;
  if (THEY_WILL.test(lead.slice(0, hit.index))) return undefined;
  const between = lead.slice((hit.index ?? 0) + hit[0].length).replace(OF_ZONE, ' ');
  if (/[;?!]|\d{3}|\.\s/.test(between)) return undefined;
  const words = between.toLowerCase().match(/[\p{L}'’]+/gu) ?? [];
  if (words.length > MOST_SMALL || words.some((word) => !SMALL.has(word))) return undefined;
  if (words.some((word) => word === 'if' || word === 'and') && !/\bif possible\b/.test(between)) return undefined;
  return { bare: TOLD_BARE.test(hit[0]), closing: CLOSING.test(between), named: hit === name, must: MUST.test(hit[0]) };
}

/** The last day on which work may begin, as far as dates tell: an answer is wanted before it. */
function lastOfWork(dates: readonly DateMention[]): string {
  return dates.reduce((last, { past, said, readings }) => {
    const work = said === undefined || said === 'event' || said === 'show' || said === 'call' || said === 'wrap';
    const first = past || !work ? '' : (readings.map((days) => days[0] ?? '').toSorted()[0] ?? '');
    return first > last ? first : last;
  }, '');
}

/** "Yes the 2nd works for us": it is answered, and not asked. */
const SUITS =
  /^,? (?:still )?(?:works|suits|fits|would (?:work|suit|be)|does work|is (?:fine|good|great|perfect|ok|okay|free|on|it)|it is)(?!\p{L})/iu;

/** Say `reply` of the dates by which words around them ask for an answer. */
export function answersAsked(text: string, dates: readonly DateMention[]): DateMention[] {
  if (dates.length > MOST_MENTIONS) return [...dates];
  const work = lastOfWork(dates);
  return dates.map((mention, index) => {
    const { said, past, start, end, readings } = mention;
    if (past || said === 'reply' || said === 'call' || said === 'past' || readings.some(({ length }) => length > 1)) return mention;
    if (SUITS.test(text.slice(end, end + REACH))) return mention;
    const sentence = sentenceAround(text, start, end);
    const before = dates[index - 1];
    const lead = text.slice(Math.max(sentence.start, start - REACH, before?.end ?? 0), start);
    const asked = askedRightBefore(lead);
    const closing = asked?.closing || (asked !== undefined && LATEST_AFTER.test(text.slice(end, end + REACH)));
    const on = readings[0]?.at(-1);
    const early = on !== undefined && on < work;
    // "until noon on Thursday" may be when I am released.
    if (said === 'wrap' && !early) return mention;
    if (closing && dueBy(text, mention) !== 'theirs') return { ...mention, said: 'reply', by: true };
    if (
      asked &&
      early &&
      ((asked.bare && (!asked.must || text[end - 1] === '.' || ENDS_AFTER.test(text.slice(end, end + REACH)))) ||
        (asked.named && WISHES.test(text.slice(sentence.start, sentence.end))))
    )
      return { ...mention, said: 'reply', by: asked.closing };
    if (TIME_LEFT.test(lead) && TO_DECIDE.test(text.slice(end, end + REACH))) return { ...mention, said: 'reply', by: true };
    if (!early) return mention;
    const piece = text.slice(Math.max(0, start - ASKED_BEFORE), start);
    const after = text.slice(end, end + REACH);
    if ((RECEIVED_AFTER.test(lead) || CLOSES_ON.test(piece)) && !DUE_ELSE.test(lead)) return { ...mention, said: 'reply', by: true };
    if (DUE_ELSE.test(sentenceBefore(piece))) return mention;
    const answer = lastOf(ANSWER, piece) ?? lastOf(TO_GIVE, piece) ?? (piece.includes('?') ? true : undefined);
    const by = BARE_BY.test(piece);
    const wished = WISHED_AFTER.test(after);
    if (
      (by && (wished || (answer !== undefined && ENDS_AFTER.test(after)))) ||
      (BARE.test(piece) && wished && answer !== undefined && answer !== true)
    )
      return { ...mention, said: 'reply', by };
    return mention;
  });
}
