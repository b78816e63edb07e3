/**
 * The day before or after the days that were settled, where it is told for me and for nothing that only prepares them: both are asked.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { daysSaid } from './days.ts';
import { askedDays, consecutive, MOST_MENTIONS, OF_ELSE, union } from './days-among.ts';
import { numberOf } from './marks.ts';
import type { DateMention, EventDays, Scene, Where } from './scene.ts';

/** "the wedding of the 12th, and now also the civil ceremony on the day before, Friday" */
const DAY_BEFORE = /\b(?:day|night|nite|evening|afternoon|morning) before,?\s\(?(?:the |on |a )*$/i;
/** "You would be needed from six on Friday 11 September" */
const NEEDED =
  /\b(?:you(?:'d|'ll|'re| would| will| are)? (?:be )?(?:needed|wanted|required|filming|film|on camera|with us)|(?:need|want|like) you)\b[^.;!?\n]*$/i;
/** Who comes the day before to set up, to rehearse or to sleep there works on no more days. */
const PREPARES =
  /\b(?:set(?:ting)?[- ]?up|load(?:ing)?[- ]?in|rig(?:s|ging)?|build|install\w*|prep\w*|rehears\w*\b(?! (?:dinner|supper|drinks|meal))|run-?through|dress|get-?in|fit-?up|bump-?in|pack-?in|pre-?light\w*|recce|walk-?through|sound ?check|tech|test\w*|checks?|line-?up|travel\w*|fly|flight|flights|drive|train|ferry|arriv\w*|check(?:ing)? in|hotel|bed|stay|sleep|night's|briefing|collect|deliver\w*|mount|cables?|gear)\b|\b(?:aufbau\p{L}*|anreise|montage|montaje|allestimento|opbouw|installation)(?!\p{L})/iu;

/** "the dinner on Friday evening should be filmed as well", "a brunch the next morning that we'd also want filmed" */
const FILMED_TOO =
  /\b(?:also|as well|too|both)\b[^.;!?\n]*\b(?:film\p{L}*|record\p{L}*|cover\p{L}*|shoot|shot|stream\p{L}*|video\p{L}*|camera|you|do)\b|\b(?:film\p{L}*|record\p{L}*|cover\p{L}*|shoot|shot|stream\p{L}*|video\p{L}*|camera|you|do)\b[^.;!?\n]*\b(?:also|as well|too|both)\b/iu;
/** "rehearsal is the evening before, and this you should film as well" */
const FILMED_AS_WELL =
  /\b(?:also|as well|too)\b[^.;!?\n]{0,40}\b(?:film|record|cover|shoot|capture)(?:ed|ing)?\b|\b(?:film|record|cover|shoot|capture)(?:ed|ing)?\b[^.;!?\n]{0,24}\b(?:also|as well|too)\b/i;
const EITHER = /\b(?:either|or|depends|depending)\b/i;
const BOTH = /\b(?:both|the two|these two) (?:days|dates|nights|evenings)\b/i;
const BESIDE = /\b(?:next|following) (?:day|morning|afternoon|evening)\b|\b(?:day|morning|afternoon|evening|night) (before|after)\b/i;
const NOT = /\b(?:no|not|without|n't|nothing|nobody)\b|n't\b/i;
const LOOKED_THROUGH = 6000;

/** The days, or with the day before or after them as a question. */
export function heldAgainstDaysBeside({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  const [first, last] = [event.dates[0], event.dates.at(-1)];
  if (first === undefined || last === undefined || event.dropped) return event;
  const counted = withDaysOfCall(text, mentions, event);
  if (counted) return counted;
  const eve = Temporal.PlainDate.from(first).subtract({ days: 1 });
  const next = Temporal.PlainDate.from(last).add({ days: 1 });
  const withEve = askedDays(event.where, [event.dates, [eve.toString(), ...event.dates]]);
  const withNext = askedDays(event.where, [event.dates, [...event.dates, next.toString()]]);
  for (const mention of mentions.slice(0, MOST_MENTIONS)) {
    const { past, by, said, explicit, readings, weekdayOnly, sequence, start, end } = mention;
    const weekday = sequence.items[0]?.atom.weekday;
    if (past || by || OF_ELSE.has(said) || sequence.items.length > 1) continue;
    const sentence = saidAround(text, { start, end });
    if (PREPARES.test(sentence)) continue;
    const lead = text.slice(Math.max(0, start - LEAD), start);
    const needed = explicit && said === 'call' && readings.length === 1 && readings[0]?.join() === eve.toString() && NEEDED.test(lead);
    const too = weekdayOnly && FILMED_TOO.test(sentence) && !NOT.test(sentence);
    const eveToo = explicit && readings.length === 1 && readings[0]?.join() === eve.toString() && DAY_BEFORE.test(lead);
    if (needed || eveToo || (weekdayOnly && weekday === eve.dayOfWeek && (too || DAY_BEFORE.test(lead)))) return withEve;
    if (too && weekday === next.dayOfWeek) return withNext;
  }
  const other = beside(text, event);
  if (other) return other;
  const found = BESIDE.exec(text.slice(0, LOOKED_THROUGH));
  if (!found) return event;
  const sentence = saidAround(text, { start: found.index, end: found.index + found[0].length });
  const prepares = PREPARES.test(sentence) && !FILMED_AS_WELL.test(sentence);
  // "a brunch the day after ... just the two days": the count tells that it is mine as well.
  // "The sangeet is on the 24th, the wedding on the 25th. Both days, and the next day it goes on till two": the next day is that of the wedding.
  const eveNamed = mentions.some(({ past, readings }) => !past && readings.length === 1 && readings[0]?.join() === eve.toString());
  const counts = new Set([...daysSaid(text).map(({ days }) => days), ...(BOTH.test(text) && !EITHER.test(sentence) ? [2] : [])]);
  if (counts.size === 1 && counts.has(event.dates.length + 1) && !NOT.test(sentence) && !prepares)
    return {
      ...event,
      dates: found[1] === 'before' || eveNamed ? [eve.toString(), ...event.dates] : [...event.dates, next.toString()],
      counted: true,
    };
  if (!FILMED_TOO.test(sentence) || NOT.test(sentence) || prepares) return event;
  return found[1] === 'before' ? withEve : withNext;
}
const LEAD = 60;

/** "23 August load-in from 14:00, 24 August show, 25 August show ... all three dates": the count tells that the day of setting up is mine as well. */
function withDaysOfCall(text: string, mentions: readonly DateMention[], event: EventDays): EventDays | undefined {
  const count = numberOf(ALL_OF_THEM.exec(text.slice(0, LOOKED_THROUGH))?.[1] ?? '');
  if (count <= event.dates.length) return undefined;
  const called = mentions.filter(
    ({ said, explicit, past, by, readings, doubt }) => said === 'call' && explicit && !past && !by && !doubt && readings.length === 1,
  );
  const all = union(event.dates, ...called.flatMap(({ readings }) => readings));
  return all.length === count && consecutive(all)
    ? { ...event, dates: all, where: [...event.where, ...called.map(({ start, end }) => ({ start, end }))], counted: true }
    : undefined;
}
const ALL_OF_THEM =
  /\ball (?:of )?(?:the |these |those )?(two|three|four|five|six|[2-6]) (?:of (?:the |these |those )?)?(?:days|dates|evenings|nights)\b/i;

/** "My husband turns 70 on Friday 1 December and there's a supper the evening after": the day that is kept, or the one beside it on which it is kept. */
function beside(text: string, event: EventDays): EventDays | undefined {
  const [day] = event.dates;
  const [where] = event.where;
  if (event.dates.length !== 1 || day === undefined || !where || !TURNS.test(text.slice(Math.max(0, where.start - LEAD), where.start)))
    return undefined;
  const found = KEPT_BESIDE.exec(text.slice(where.end, sentenceAround(text, where.start, where.end).end).slice(0, NEAR));
  if (!found) return undefined;
  const other = Temporal.PlainDate.from(day).add({ days: found[1]?.toLowerCase() === 'before' ? -1 : 1 });
  return askedDays(event.where, [[other.toString()], [day]]);
}
const TURNS = /\b(?:turns?|turning|birthday|anniversary|retires?|graduates?)\b[^.;!?\n]{0,24}$/i;
const KEPT_BESIDE =
  /\b(?:party|dinner|supper|lunch|surprise|celebrat\w+|do|meal|bash|gathering|concert)\b[^.;!?\n]{0,24}\bthe (?:day|evening|night|afternoon|morning) (after|before)\b/i;

/** The sentence of a date, as far as it is near. */
function saidAround(text: string, where: Where): string {
  const { start, end } = sentenceAround(text, where.start, where.end);
  return text.slice(Math.max(start, where.start - NEAR), Math.min(end, where.end + NEAR));
}
const NEAR = 160;
