/**
 * A day of a longer run that is named again for what is to be filmed: "our festival runs from 3 to 13 March. Please film the gala on the 6th", "our set is on the
 * 5th. Can you film our set?" Whether it is that day alone is asked about.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays, MOST_MENTIONS, namedAmong, OF_ELSE, union } from './days-among.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

const LEAST_RUN = 2;
const LEAD = 70;
/** What is done with a camera. */
export const FILM = String.raw`(?:film|record|cover|captur|shoot|stream|livestream|live-stream|video)(?:e?d|e|ing|s)?`;
/** "film the gala on", "filming would be on" */
const FILM_ON = new RegExp(
  String.raw`\b${FILM}\b(?! (?:starts?|begins?|ends?|finish\w*|days?|crew|team|kit|gear|from|until|till)\b)[^.;!?\n]*\b(?:on|for|of|is|be|are)\s(?:the\s)?$`,
  'iu',
);
/** "film the Sunday" */
const FILM_THE = new RegExp(String.raw`\b${FILM} (?:please )?(?:only |just )?the $`, 'iu');
/** "the private view on the 3rd filmed" */
const ON_FILMED = /^(?:[^.;!?\n,]{0,24})?\b(?:filmed|recorded|covered|captured|streamed|videoed|on film|on video|on camera)\b/i;
const NAMED_ON = /\b(?:our|my|the|their|his|her) ([\p{L}'’-]{3,20}) (?:is|are|takes place|happens|will be)(?: on)? (?:the )?$/iu;
/** What says that the whole is meant, or that the day is only where it begins or ends. */
const WHOLE =
  /\b(?:all|each|every|both|whole|entire|throughout|also|as well|too|especially|including|particularly|except|apart|not|no|from|until|till|start\w*|begin\w*|first|arriv\w*|travel\w*|rehears\w*|set[- ]?up|plus|daily|any)\b|n['’]t\b/i;

/** The run, or the days of it that are named for the film beside the whole as a question. */
export function heldAgainstDayOfRun({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  if (event.dates.length < LEAST_RUN || event.dropped || event.counted) return event;
  const named = mentions
    .slice(0, MOST_MENTIONS)
    .flatMap((mention) => (isOfFilm(text, mention, event) ? namedAmong(mention, event.dates) : []));
  const days = union(named);
  return days.length === 0 || days.length > event.dates.length / 2 ? event : askedDays(event.where, [days, event.dates], 'open');
}

function isOfFilm(text: string, mention: DateMention, { where }: EventDays): boolean {
  const { start, end, past, by, said, sequence } = mention;
  if (past || by || OF_ELSE.has(said) || said === 'call' || said === 'wrap' || sequence.items.length > 1) return false;
  const sentence = sentenceAround(text, start, end);
  // The run stands in the words between what is filmed and its day.
  const from = Math.max(sentence.start, start - LEAD, ...where.filter((one) => one.end <= start).map((one) => one.end));
  if (where.some((one) => one.start <= start && one.end >= end)) return false;
  const [lead, rest] = [text.slice(from, start), text.slice(end, sentence.end)];
  if (WHOLE.test(lead) || WHOLE.test(rest.slice(0, LEAD))) return false;
  if (FILM_ON.test(lead) || FILM_THE.test(lead) || ON_FILMED.test(rest)) return true;
  const thing = NAMED_ON.exec(lead)?.[1];
  return thing !== undefined && filmsIt(text, thing, sentence.end);
}

/** "Can you film our set?" right behind the sentence that tells its day. */
const filmsIt = (text: string, thing: string, from: number): boolean =>
  new RegExp(
    String.raw`\b${FILM}\b(?: (?:only|just))? (?:(?:our|my|the|their|his|her|that|this) ${thing}|it|that|this)(?!\p{L})|\b(?:need|want|like) (?:it|that|this) ${FILM}\b`,
    'iu',
  ).test(text.slice(from, from + 2 * LEAD));
