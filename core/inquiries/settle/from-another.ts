/**
 * Weekdays that are told from the date named before them: "it goes online on Monday 15 May, so by the Friday before", "the wedding is on the 12th, the film by the Friday after".
 */
import { nextWeekday } from '../dates/from-today.ts';
import type { DateMention } from './scene.ts';

const SIDE =
  /^ (?:(before|beforehand|prior|earlier)|after|afterwards|following)(?=\s*(?:[.,;:!?)\n]|$)| (?:at|by|in|please|if|so|and|would|is)\b)/i;
const THE = /\bthe\s*$/i;
/** A date further back than this is another story. */
const REACH = 200;

/** The dates, with such a weekday beside the date that it is told from. */
export const fromAnother = (text: string, said: readonly DateMention[]): DateMention[] =>
  said.map((mention, index) => {
    const { weekdayOnly, sequence, start, end } = mention;
    const [item, ...more] = sequence.items;
    const weekday = item?.atom.weekday;
    const side = weekdayOnly && weekday !== undefined && more.length === 0 ? SIDE.exec(text.slice(end, end + 20)) : null;
    if (!side || weekday === undefined || !(THE.test(text.slice(Math.max(0, start - 5), start)) || /^the\b/i.test(text.slice(start, end))))
      return mention;
    const from = said.slice(0, index).findLast(({ explicit, readings }) => explicit && readings.length === 1);
    const day = from && start - from.end <= REACH ? from.readings[0]?.at(side[1] === undefined ? -1 : 0) : undefined;
    if (day === undefined) return mention;
    const date = Temporal.PlainDate.from(day);
    const told = side[1] === undefined ? nextWeekday(date.add({ days: 1 }), weekday) : nextWeekday(date.subtract({ days: 7 }), weekday);
    const { doubt: _, ...rest } = mention;
    return { ...rest, readings: [[told.toString()]] };
  });
