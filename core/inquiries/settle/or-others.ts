/**
 * Days beside which others are named right behind an "or" by words that are no date: "6 and 7 November or 13 and 14", "the 5th and 6th, or else a week
 * later". Which are meant is asked about.
 */
import { askedDays, inMonthOf } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const OR = String.raw`^,?\s(?:or|oder|ou)(?:,? (?:else|otherwise|possibly|maybe|perhaps|failing that|alternatively|instead|even),?)? `;
/** "or the 13th and 14th": nothing else follows that they could be numbers of. */
const NUMBERS = new RegExp(
  String.raw`${OR}(?:on )?(?:the )?(\d{1,2})(?:st|nd|rd|th)?(?: ?(?:and|&|\/|[-–]|to) ?(?:the )?(\d{1,2})(?:st|nd|rd|th)?)(?=\s?[,.;!?)\n]|\s(?:whichever|either|instead|depending|if|we)\b|$)`,
  'i',
);
/** "or a week later", "or the weekend before" */
const WEEKS = new RegExp(
  String.raw`${OR}(?:(a|one|1|two|2) weeks? (?:later|after|on(?! (?:the|a))|(earlier|before))|the (?:same (?:days|day|weekend) )?(?:weekend|week|(?:mon|tues|wednes|thurs|fri|satur|sun)days?) (?:after|later|(before|earlier)))`,
  'i',
);
const REACH = 70;

/** The days that were settled, or with those that are named behind them as a question. */
export function heldAgainstAlternatives({ text }: Scene, event: EventDays): EventDays {
  const last = event.where.toSorted((a, b) => a.end - b.end).at(-1);
  const [first] = event.dates;
  if (!last || first === undefined || event.dropped || event.counted) return event;
  const behind = text.slice(last.end, last.end + REACH);
  const numbers = NUMBERS.exec(behind);
  if (numbers) {
    const others = [numbers[1], numbers[2]].flatMap((day) => inMonthOf(first, Number(day)) ?? []);
    return others.length === 2 && !others.some((day) => event.dates.includes(day))
      ? askedDays(event.where, [event.dates, others], 'open')
      : event;
  }
  const weeks = WEEKS.exec(behind);
  if (!weeks) return event;
  const [, count = 'a', earlier, before] = weeks;
  const days = (/^t|2/i.test(count) ? 14 : 7) * (earlier || before ? -1 : 1);
  return askedDays(event.where, [event.dates, event.dates.map((day) => Temporal.PlainDate.from(day).add({ days }).toString())], 'open');
}
