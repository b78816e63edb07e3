/**
 * A list of days by what each of them is for: "Rehearsal: Thursday 10 June / Wedding day: Saturday 12 June / Brunch: Sunday 13 June". Whether more is
 * meant than the day that is named as the one of the occasion is asked about.
 */
import { lineStart } from '../parts/sentences.ts';
import { askedDays, MOST_MENTIONS } from './days-among.ts';
import { daysSaid } from './days.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

/** The day of the occasion itself. */
const MAIN =
  /^(?:the )?(?:main (?:event|day|show)|(?:actual |main )?(?:wedding|shoot|shooting|filming|race|event|show|match|game|conference|concert|performance|gala|big|festival|competition|ceremony|open)(?: day| date)?|date of (?:the )?\p{L}+|on the day)$/iu;
/** What stands around it. */
const AROUND =
  /\b(?:rehears\w*|dress|tech\w*|registration|packet|pick-?up|collection|brunch|breakfast|farewell|welcome|set-?up|load(?:-| )?in|get-?in|bump-?in|prep|build|rig|travel|arriv\w*|depart\w*|recce|fitting|tasting|contingency|weather|rain|spare|reserve|back-?up|pre-?light|strike|get-?out|load(?:-| )?out|clean-?up|check-?in|briefing|meeting|pick-?ups|press|drinks|auditions?)\b/i;
/** "Alternative date: 27.03.": one or the other. */
const ALTERNATIVE =
  /^(?:alternative|alternate|second choice|2nd choice|fall-?back|back-?up|reserve|other possible|second preferred|plan b|option (?:2|b)|choice (?:2|b)|ausweich\p{L}*|alternativ\p{L}*)(?: (?:date|day|choice|option))?s?$/iu;
const LABEL = /^[\s*+•–-]*(\p{L}[\p{L}'’ -]{2,30}?)\s?(?:[:=]|\s[–-])\s*$/u;
/** Beside an alternative these words leave the choice to me. */
const EITHER =
  /\b(?:either|any) (?:day|date|one|of (?:them|these|those|the two))\b|\bwhichever\b|\bboth (?:days|dates)? ?(?:are|would be|work|fine|possible)\b/i;
const labelled = (text: string, start: number): string => LABEL.exec(text.slice(lineStart(text, start), start))?.[1]?.trim() ?? '';
const isAlternative = (text: string, { start, explicit, readings }: DateMention): boolean =>
  explicit && readings.length === 1 && ALTERNATIVE.test(labelled(text, start));
const ALL = /\b(?:both|all (?:of )?(?:the |these |those |them|two|three|four|five|\d))\b|\b(?:each|every) (?:day|one)\b/i;

/** The days, or that of the occasion alone as a question beside them. */
export function heldAgainstLabels({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  const instead = EITHER.test(text) ? mentions.slice(0, MOST_MENTIONS).find((mention) => isAlternative(text, mention)) : undefined;
  if (instead && event.dates.length > 0 && !event.dates.includes(instead.readings[0]?.[0] ?? ''))
    return askedDays([...event.where, instead], [event.dates, instead.readings[0] ?? []], 'open');
  if (event.dates.length < 2 || event.dropped || ALL.test(text) || daysSaid(text).some(({ days }) => days > 1)) return event;
  const rows = mentions.slice(0, MOST_MENTIONS).flatMap(({ start, readings, explicit }) => {
    const label = LABEL.exec(text.slice(lineStart(text, start), start))?.[1];
    const days = readings.length === 1 ? (readings[0] ?? []) : [];
    return label !== undefined && explicit && days.every((day) => event.dates.includes(day)) ? [{ label: label.trim(), days }] : [];
  });
  const others = rows.filter(({ label }) => ALTERNATIVE.test(label)).flatMap(({ days }) => days);
  const wished = event.dates.filter((day) => !others.includes(day));
  if (others.length > 0 && wished.length > 0) return askedDays(event.where, [wished, others]);
  const main = rows.filter(({ label }) => MAIN.test(label)).flatMap(({ days }) => days);
  const around = rows.filter(({ label, days }) => AROUND.test(label) && !MAIN.test(label) && days.every((day) => !main.includes(day)));
  return main.length > 0 && around.length > 0 ? askedDays(event.where, [[...new Set(main)].toSorted(), event.dates], 'open') : event;
}
