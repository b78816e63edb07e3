/**
 * A date that only bounds the day of the job, or is the one by which the film of it is wanted: "it has to be after 14 November", "14 November or later",
 * "the film should be ready on 28 November", "we need the video for the 28th". Where no other day is told, the days are asked about.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays } from './days-among.ts';
import type { EventDays, Scene, Where } from './scene.ts';

/** Right before the date. */
const BESIDE =
  /(?<!\p{L})(?:after|before|later than|earlier than|past|close to|ahead of|prior to|following|beyond|near(?:er)?(?: to)?|only once|once(?: we(?:'re| are))?(?: past)?|(?:as )?soon as)\s(?:on )?(?:the )?(?:\p{L}+day,? (?:the )?)?$/iu;
/** "the afternoon after 14 November", "a week before": how far away the day is; the finders of dates have seen it. */
const FAR =
  /\b(?:days?|nights?|evenings?|mornings?|afternoons?|weeks?|fortnight|months?|weekend|\p{L}+day|well|straight|looking|named|look) (?:after|before|past|following)\s/iu;
/** Right behind it. */
const OR_LATER =
  /^,? (?:or|and) (?:later|after(?:wards)?|any (?:time|day) after|earlier|before|soon after|thereafter)(?=\s?(?:[.,;:!?)\n]|$|if|as|but|please|in\b))|^ (?:is|are) (?:over|behind us|past|out of the way)\b|^ onwards?\b[^.;!?\n\d]{0,24}\b(?:any|day|date|when)\b|^ on, (?:the )?(?:day|date)\b/iu;
const FILM = String.raw`(?:film|video|movie|clip|edit|recording|footage|reel|trailer|highlights|result|finished (?:thing|piece|film|video)|final (?:cut|film|video|edit))`;
const ON = String.raw`(?:,? (?:only|here|with us|for us|at (?:the|our) latest|live|online|there|there is|in place|out|finished|ready))*(?:,? (?:on|for|by|before|at (?:the|our|a) (?:[\p{L}'-]+ ){1,3}on) (?:the )?)(?:\p{L}+day,? (?:the )?)?$`;
/** "The film should be ready on", "We need the video for", "Finished film:" */
const WANTED = [
  new RegExp(
    String.raw`\b(?:the|your|our|finished|final|whole|short|that|this) (?:[\p{L}-]+ )?${FILM} (?:should|must|has to|needs to|is to|would|will|shall|ought to|can|is|gets|'s|goes|go|would have to|is going to)\s?(?:be |then |have to be |need to be )*(?:ready|done|finished|with us|here|shown|screened|played|needed|wanted|due|online|out|live|up|published|launched|released|delivered|there|on (?:our|the) (?:site|website)|complete|completed|edited|available|required)${ON}`,
    'iu',
  ),
  new RegExp(
    String.raw`\b(?:need|needs|want|wants|like|require|show|screen|play|launch|publish|release|present|premiere|have|get|use|receive)(?: to (?:have|show|screen|launch|get|use|publish))? (?:the|your|our|this|that) (?:finished |final |short |whole |edited )?${FILM}${ON}`,
    'iu',
  ),
  new RegExp(String.raw`\b(?:finished|final|edited) ${FILM}:? (?:on |by |for )?(?:the )?$`, 'iu'),
  new RegExp(
    String.raw`\b(?:the|this|our) ${FILM} is (?:meant |intended |wanted )?for (?:our|the|a) [^.;!?\n]{3,40}\b(?:which|that) (?:\p{L}+ )?(?:launch\p{L}*|relaunch\p{L}*|open\p{L}*|goes live|comes? out|starts?|is (?:due|on|launched|published))${ON}`,
    'iu',
  ),
];
/** A film of what happens then, or one that is seen while it is made. */
const OF_THE_DAY = /\b(?:live|livestream\p{L}*|stream\p{L}*|shot|filmed|camera|videographer)\b/iu;
const REACH = 110;

/** The days, or as a question where their date bounds them or is that of the film. */
export function heldAgainstBounds({ text }: Scene, event: EventDays): EventDays {
  if (event.dates.length === 0 || event.where.length === 0 || event.counted) return event;
  const [bounds, due] = [event.where.every((where) => isBound(text, where)), event.where.every((where) => isDue(text, where))];
  return bounds || due ? askedDays(event.where, [event.dates], 'open') : event;
}

function isBound(text: string, { start, end }: Where): boolean {
  const sentence = sentenceAround(text, start, end);
  const lead = text.slice(Math.max(sentence.start, start - REACH), start);
  return (BESIDE.test(lead) && !FAR.test(lead)) || OR_LATER.test(text.slice(end, Math.min(sentence.end, end + REACH)));
}

function isDue(text: string, { start, end }: Where): boolean {
  const sentence = sentenceAround(text, start, end);
  const lead = text.slice(Math.max(sentence.start, start - REACH), start);
  return !OF_THE_DAY.test(lead) && WANTED.some((words) => words.test(lead));
}
