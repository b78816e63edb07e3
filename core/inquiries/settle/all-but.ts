/**
 * Days of a run of which one is left out by its place: "all but the last day", "every day except the first"; and a run of which the weekend alone is wanted:
 * "you'd only be needed for the weekend".
 */
import { daysInPlace } from './in-place.ts';

const ALL_BUT =
  /(?:,\s|\(|\b(?:need|want|film|cover|record|shoot|like|have|with us|be there|there|come|needed|wanted|booked)\w*(?: you)?(?: (?:on|for|to film|to cover))? )(?:all(?: of (?:it|them|the (?:days|nights)))?|every(?: (?:day|night|evening|one)| single day)?|each (?:day|night|evening)|the (?:whole|entire) (?:thing|run|lot|event|festival|week|of it)),? (?:but|except(?: for)?|apart from|bar|save(?: for)?|other than|minus)(?: on| for)? the (first|second|third|last|final|opening|closing|middle)(?: (?:day|night|evening|one|show|performance))?(?=\s?(?:[.,;:!?)\n]|$|to be\b|filmed|recorded|covered|needs?\b|please|would\b|is\b|are\b))/i;
const WEEKEND =
  /(?<!\bnot )\b(?:only|just)\b(?! (?:for|on|to) (?:the|a) (?:call|chat|week)\b)(?: (?:be|being|needed|need|needs|want|wanted|wants|film|filming|filmed|you|to|would|like|cover|record|come|there|with us|have|it|required|after|interested in|on|at|for|over)){0,6} (?:on|at|for|over|film|cover|record|need|want) the weekend\b(?! of\b| after\b| before\b|,? (?:and|plus|to|or|until)\b|'s\b)|\bthe weekend (?:only|alone)\b(?! (?:from|at|if|when)\b)/i;
const OF_OTHERS =
  /\b(?:tickets?|open to|parking|shop|cafe|cash|cheaper|busy|closed|stay|hotel|camping|music|visitors?|public|trains?|buses)\b/i;

/** The days that are left, where one of them is left out by its place or the weekend alone is wanted. */
export function leftOfThem(text: string, dates: readonly string[]): string[] | undefined {
  const out = daysInPlace(ALL_BUT.exec(text)?.[1] ?? '', dates);
  if (out.length > 0) return dates.filter((day) => !out.includes(day));
  const weekend = WEEKEND.exec(text);
  if (!weekend || OF_OTHERS.test(weekend[0])) return undefined;
  const days = dates.filter((day) => Temporal.PlainDate.from(day).dayOfWeek > FRIDAY);
  return days.length === 2 ? days : undefined;
}
const FRIDAY = 5;
