/**
 * A day beside those of the job of which the words say that it may be one of them: "the 12th and possibly also the 13th", "12 November (and the 13th?)",
 * "until the 14th, perhaps the 15th", "with the option of the 13th". It is asked whether it is.
 */
import { askedDays, inMonthOf, MOST_MENTIONS, namedAmong, OF_ELSE, union } from './days-among.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

const MAYBE = String.raw`(?:possibly|perhaps|perhap|maybe|mebbe|poss|prob|potentially|optionally|conceivably|probably|likely|if (?:needed|need be|necessary|required|all goes well)|(?:we )?(?:may|might) (?:well )?(?:add|need|want)|it (?:may|might) be)`;
const SMALL = String.raw`(?:,? (?:also|even|again|too|as well|extend(?:ed|ing)? (?:it )?(?:to|into)|until|till|to|into|on|even on|the whole of))*(?: the)?`;
/** Right before the day; at the beginning of what is said of days it is of all of them. */
const LEADS = new RegExp(
  String.raw`\b(?:${MAYBE},?${SMALL}|(?:with|and|plus) (?:an? |the )?(?:option|possibility|chance) (?:of|on|to (?:add|extend to|go on to))(?: also)?(?: on)?(?: the)?|(?:thinking|talking) of (?:also )?(?:adding|including|extending (?:it )?to)(?: the)?)[),]? $`,
  'iu',
);
/** "(and the 13th?)", "the 13th too, perhaps", "the 13th, if the money allows" */
const BEHIND =
  /^(?: too| as well| also)?(?:\s?\?\s?\)|,? \(?(?:possibly|perhaps|maybe|optional(?:ly)?|as an option|if (?:possible|needed|need be|necessary|required|there(?:'s| is)|the (?:budget|money|weather|forecast)|we (?:need|can|have|run)))\b)/i;
/** A run with an end that may be another: "from the 12th to perhaps the 14th". */
const INSIDE = new RegExp(String.raw`\b${MAYBE}\b|\?\s?\)?$`, 'iu');
/** "12 and (optionally) 13 November": the number before the day is one of its month. */
const NUMBER_BEFORE = new RegExp(String.raw`(?<![\d:.])(\d{1,2})(?:st|nd|rd|th)?,? (?:and|&|\+|plus) \(?${MAYBE}\)?${SMALL} $`, 'iu');
const LEAD = 60;
const AFTER = 40;
const NO_DOUBT = /\b(?:most likely|more than likely|probably not|not)\b[^.;!?\n]{0,12}$/i;

/** The days, or those without the day that may be another beside all of them as a question. */
export function heldAgainstMaybe({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  const [first] = event.dates;
  if (first === undefined || event.dropped || event.counted) return event;
  const told = mentions
    .slice(0, MOST_MENTIONS)
    .filter(
      ({ past, by, said, readings, vague, weekdayOnly }) =>
        !past && !by && !vague && !weekdayOnly && !OF_ELSE.has(said) && readings.length < 2,
    );
  for (const [at, mention] of told.entries()) {
    const { start, end } = mention;
    const before = told[at - 1];
    const lead = text.slice(Math.max(before?.end ?? 0, start - LEAD), start);
    const number = NUMBER_BEFORE.exec(lead)?.[1];
    const day = number === undefined ? undefined : inMonthOf(first, Number(number));
    if (day !== undefined && !event.dates.includes(day)) return askedDays(event.where, [[day], union([day], event.dates)], 'open');
    const inside = mention.sequence.items.length > 1 && INSIDE.test(text.slice(start, end));
    const leads = LEADS.test(lead) && !NO_DOUBT.test(lead);
    if (!inside && (!before || !(leads || BEHIND.test(text.slice(end, end + AFTER))))) continue;
    const days = inside ? event.dates.slice(1) : daysOf(mention, event.dates, first);
    const rest = event.dates.filter((day) => !days.includes(day));
    const sure = rest.length > 0 ? rest : (before?.readings[0] ?? []);
    const all = union(sure, days);
    if (days.length > 0 && sure.length > 0 && all.length > sure.length) return askedDays(event.where, [sure, all], 'open');
  }
  return event;
}

/** The days of a mention: those of the job that it names, or the ones that it adds to them. */
function daysOf(mention: DateMention, known: readonly string[], first: string): string[] {
  const named = namedAmong(mention, known);
  if (named.length > 0 || mention.explicit) return named.length > 0 ? named : (mention.readings[0] ?? []);
  const [item, ...more] = mention.sequence.items;
  const near = item?.atom.day === undefined || more.length > 0 ? undefined : inMonthOf(first, item.atom.day);
  return near !== undefined && near > first ? [near] : [];
}
