/**
 * Of several days one that was picked, called off or is a reserve, told by its place: "of the two dates the first has been chosen", "we took the later one", "you'd
 * film the third", "the second being a reserve"; and days apart on which I said that I am free. Which of them are meant is asked about.
 */
import { lineStart } from '../parts/sentences.ts';
import { askedDays, consecutive } from './days-among.ts';
import { FILM } from './day-of-run.ts';
import { daysInPlace } from './in-place.ts';
import { numberOf } from './marks.ts';
import type { EventDays, Scene } from './scene.ts';

const PLACE =
  '(first|earlier|former|second|later|latter|third|fourth|fifth|middle|last|(?:opening|final|closing)(?= (?:one|day|date|night|evening)\\b))';
const A_DAY = String.raw`(?: (?:one|date|day|night|evening|of (?:them|these|those|the (?:two|three))))`;
const ONE = `${A_DAY}{0,2}`;
const ENDS = String.raw`(?=\s?(?:[.;!?)\n]|$|,? but\b|as\b|,? because\b|for (?:you|us|it)\b|instead\b|in the end\b))`;
/** The day that it is. */
const PICKED = [
  new RegExp(
    String.raw`\b(?:the|their|our) ${PLACE}${ONE} (?:has been|was|is|got|gets) (?:chosen|picked|selected|agreed|voted for|preferred|confirmed)\b|\bthe ${PLACE}${A_DAY} (?:won|it is|it was|was the winner|wins)\b`,
    'iu',
  ),
  new RegExp(
    String.raw`\b(?:(?:chose|chosen|choose|picked|pick|went for|gone for|opted for|settled on|decided on|agreed on|landed on|voted for|plumped for) the ${PLACE}${ONE}|(?:took|take|taken|go for|going for|got) the ${PLACE}${A_DAY})${ENDS}`,
    'iu',
  ),
  new RegExp(
    String.raw`\bthe ${PLACE}(?: one)?(?: of (?:which|them|these|those))? (?:should|is to|must|needs to|has to)(?: be)? ${FILM}|\bit(?:['’]s| is) the ${PLACE}(?: one)? that (?:matters|counts|(?:we|i)(?:['’]d)? (?:want|need|like|care))`,
    'iu',
  ),
  new RegExp(
    String.raw`\byou(?:['’]d| would|['’]ll| will)(?: only| just)?(?: be)? (?:${FILM}|do|doing|come to|be at|come for) the ${PLACE}${ONE}${ENDS}`,
    'iu',
  ),
];
/** "we'd take the first two" */
const SOME_PICKED = new RegExp(
  String.raw`\b(?:take|taking|took|do|book|have|film|like|want|need)(?: you)?(?: for| on)? the (first|last|final) (two|three|four)(?: of (?:them|these|those)| dates| days)?${ENDS}`,
  'iu',
);
/** The day that it is not, or only where another falls through; "the first was cancelled" may be that of another year. */
const OUT = new RegExp(
  String.raw`\bthe ${PLACE}(?: (?:one|day|date))? (?:has (?:now |since )?been|is|being|is now)(?: only| just| now)? (?:(?:an? |our |the |your |as a )?(?:reserve|back-?up|spare|rain date|snow date|fall-?back|contingency|stand-?by)(?: (?:one|day|date))?${ENDS}|(?:called off|cancell?ed|dropped|scrapped|struck)\b)`,
  'iu',
);
/** "the first of them without cameras", "the first is more or less a rehearsal" */
const UNFILMED = new RegExp(
  String.raw`\bthe ${PLACE}(?: (?:one|day|date))?(?: of (?:which|them|these|those))?,? (?:(?:is |being )?without (?:a |any )?(?:cameras?|filming|video)|is(?: more or less| really| only| just| mostly)* (?:a|the|our) (?:dress )?(?:rehearsal|run-?through)${ENDS})`,
  'iu',
);
/** Right behind the days: a camera or a card may be a spare one, too. */
const ONE_IS_SPARE =
  /^,? (?:and |with |but )?(?:one|either) of (?:them|these|those|the two|which) (?:is|being|as|will be|would be)(?: only| just)? (?:a |the |our |an? )?(?:reserve|back-?up|spare|rain (?:date|day)|fall-?back|contingency|stand-?by)\b/i;
/** Right behind a day: "is held in case of rain" */
const IF_IT_RAINS =
  /^,? (?:is|are|being|will be)(?: only| just)? (?:held|kept|booked|there|reserved|free|set aside)? ?(?:back )?(?:in case|if|should)\b[^.;!?\n]{0,30}\b(?:rain|rains|wet|weather|snow|snows|storm|wind|pours)\b/i;
const YOU_SAID =
  /\b(?:you|your (?:mail|reply|note|message))(?: have|['’]ve)? (?:said|told (?:us|me)|mentioned|wrote|wrote to (?:us|me)|indicated)(?: that)? you(?:['’]re| were| are|['’]d be| would be|['’]ve) (?:still )?(?:free|available|around|open)(?: (?:on|for|both|between))*(?: the)? $/i;
const LOOKED_THROUGH = 6000;
const BEHIND = 70;

/** The days, or those that are told by their place as a question. */
export function heldAgainstPicked({ text }: Scene, event: EventDays): EventDays {
  const { dates, where } = event;
  if (where.length > 0 && !consecutive(dates) && where.every(({ start }) => YOU_SAID.test(text.slice(lineStart(text, start), start))))
    return askedDays(where, [dates], 'open');
  if (dates.length < 2 || event.dropped || event.counted) return event;
  const front = text.slice(0, LOOKED_THROUGH);
  const asked = (days: readonly string[]): EventDays =>
    askedDays(where, days.length > 0 && days.length < dates.length ? [[...days], dates] : dates.map((day) => [day]), 'open');
  const picked = wordOf(PICKED.map((words) => words.exec(front)).find((found) => found !== null));
  if (picked !== undefined) return asked(daysAt(picked, dates));
  const [, end, count] = SOME_PICKED.exec(front) ?? [];
  if (end !== undefined && count !== undefined && numberOf(count) < dates.length)
    return asked(end.toLowerCase() === 'first' ? dates.slice(0, numberOf(count)) : dates.slice(-numberOf(count)));
  const out = wordOf(OUT.exec(front) ?? UNFILMED.exec(front));
  if (out !== undefined) return asked(dates.filter((day) => !daysAt(out, dates).includes(day)));
  if (ONE_IS_SPARE.test(text.slice(where.at(-1)?.end ?? text.length))) return asked([]);
  return where.some((one) => IF_IT_RAINS.test(text.slice(one.end, one.end + BEHIND))) ? asked(dates.slice(0, 1)) : event;
}

const wordOf = (found: RegExpExecArray | null | undefined): string | undefined => found?.slice(1).find((word) => word !== undefined);

function daysAt(word: string, dates: readonly string[]): string[] {
  const place = word.toLowerCase();
  if (place === 'later' || place === 'latter') return dates.slice(-1);
  return place === 'earlier' || place === 'former' ? dates.slice(0, 1) : daysInPlace(place, dates);
}
