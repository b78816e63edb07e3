/**
 * Rows of a list of which some say that they are settled, somebody else's or for later: "1) Fair, 13 November - confirmed, thank you. 2) Parade, 4 December - could
 * you film this as well?" Whether the others are meant alone is asked about.
 */
import { lineAround } from '../parts/sentences.ts';
import { askedDays, MOST_MENTIONS, namedAmong } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const ROW = /^\s*(?:[-*•–+]|\(?\d{1,2}[.):]|\(?[a-e][.)])\s/i;
const SETTLED =
  /\b(?:(?<!\b(?:venue|hall|room|guests?|numbers|booking|band|speakers?|caterers?|catering|tickets?|times?|licen[cs]e|permit)(?: is| are| all| now| has been| have been)* )(?:confirmed|all set|settled|sorted)|(?:done|filmed|covered|taken) by (?!you\b)|already (?:booked|agreed|covered|done|filmed)|nothing to do|nothing for you|not for you|no need|(?:ask|tell|let) you (?:know )?(?:later|nearer|another time)|nearer the time|another time|separate (?:mail|message)|as agreed)\b/i;

/** The days, or those of the rows that are still open as a question beside all of them. */
export function heldAgainstSettledRows({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  if (event.dates.length < 2 || event.dropped) return event;
  const settled = mentions.slice(0, MOST_MENTIONS).flatMap((mention) => {
    const line = lineAround(text, mention);
    const row = text.slice(line.start, line.end);
    return ROW.test(row) && SETTLED.test(row) ? namedAmong(mention, event.dates) : [];
  });
  const left = event.dates.filter((day) => !settled.includes(day));
  return left.length > 0 && left.length < event.dates.length ? askedDays(event.where, [left, event.dates], 'open') : event;
}
