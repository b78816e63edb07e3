/**
 * Days and weekends that are named for what is kept on them and that only custom or a calendar tells: "over Labor Day weekend", "at Easter", "in Freshers' Week",
 * "Father's Day". A weekday beside one of them is not the next one of its name.
 */
import { monthWord, weekdayWord } from '../words.ts';
import { weekdayAt, type Atom, type Tokens } from './pieces.ts';
import { weekendWordAt } from './weeks.ts';

/** What leads to a time at which something is; of "our Family Weekend" it is not known. */
const LEADS = /^(?:over|at|on|for|during|in|across)$/;
const SEASONS =
  /^(?:easter|eastertide|whitsun|whitsuntide|whit|pentecost|christmas|xmas|thanksgiving|michaelmas|diwali|eid|hanukkah|passover|carnival|mardi|ostern|pfingsten|weihnachten|pâques|noël|pascua)$/;
/** With one of these before "Day" it is a day of the calendar, and no occasion of theirs. */
const OF_CALENDAR =
  /^(?:father|fathers|mother|mothers|forces|independence|labor|labour|memorial|presidents|president|victoria|columbus|heritage|republic|family|thanksgiving|veterans|citizenship|civic|armistice|remembrance)$/;
/** These may be an occasion of theirs as well, unless they are led to. */
const OR_THEIRS = /^(?:independence|memorial|heritage|republic|family|citizenship|civic|president)$/;
/** A greeting, or one that is over. */
const NOT_THEN = /^(?:happy|lovely|since|last|before|after|until|your)$/;
/** "this weekend", "the whole weekend", "a long weekend" name none. */
const PLAIN =
  /^(?:this|that|next|last|coming|following|whole|full|entire|long|same|first|second|third|fourth|each|every|any|one|two|both|other|another|the|a|an|our|my|your|their|his|her|of|final|opening|closing|previous|bank|holiday|week|after|before|wedding|winter|summer|spring|autumn)$/i;
/** So many words a name has at most: "Martin Luther King Day weekend" */
const LONGEST = 4;

/** The index behind a named day, weekend or week that begins at a token behind its lead. */
function nameEndsAt(tokens: Tokens, index: number): number | undefined {
  let capitals = true;
  for (let at = index; at < index + LONGEST * 2 && tokens[at]?.breaks !== undefined; at++) {
    const token = tokens[at];
    if (!token || (at > index && token.breaks > 0)) return undefined;
    const ends = at > index && capitals ? (weekendWordAt(tokens, at) ?? (token.text === 'Week' ? at + 1 : undefined)) : undefined;
    if (ends !== undefined) return ends;
    const calendar = token.lower === 'day' && OF_CALENDAR.test(lastWord(tokens, at));
    if (calendar && weekendWordAt(tokens, at + 1) === undefined) return at + 1;
    if (
      PLAIN.test(token.lower) ||
      monthWord(token.lower) !== undefined ||
      weekdayWord(token.lower) !== undefined ||
      token.num !== undefined
    )
      return undefined;
    if (/^\p{L}/u.test(token.text)) capitals &&= /^\p{Lu}/u.test(token.text) || token.lower === 's' || token.lower === 'day';
    else if (!/^['’-]$/.test(token.text)) return undefined;
  }
  return undefined;
}

/** "the Father's Day show": which day that is its name tells whatever leads to it. */
function calendarDayAt(tokens: Tokens, index: number): Atom | undefined {
  const day = [1, 2, 3].find((length) => tokens[index + length]?.text === 'Day');
  if (day === undefined || !/^\p{Lu}/u.test(tokens[index]?.text ?? '') || tokens[index + day]?.breaks !== 0) return undefined;
  const word = lastWord(tokens, index + day);
  const named = OF_CALENDAR.test(word) && !OR_THEIRS.test(word) && tokens[index]?.lower.startsWith(word.slice(0, 4));
  return named && weekendWordAt(tokens, index + day + 1) === undefined
    ? { first: index, next: index + day + 1, relative: { kind: 'unknown' } }
    : undefined;
}

/** The name before "Day", its genitive left out. */
function lastWord(tokens: Tokens, index: number): string {
  const before = tokens[index - 1]?.lower ?? '';
  if (before === 's') return tokens[index - 3]?.lower ?? '';
  return /^['’]$/.test(before) ? (tokens[index - 2]?.lower ?? '') : before.replace(/['’]s?$/, '');
}

/** "labour day monday": the index behind a weekday that has no date of its own. */
function weekdayAlone(tokens: Tokens, index: number): number | undefined {
  const weekday = tokens[index]?.breaks === 0 ? weekdayAt(tokens, index) : undefined;
  const behind = weekday && tokens[weekday.next];
  const dated = behind && behind.breaks === 0 && (behind.num !== undefined || behind.lower === 'the' || /^[,(]$/.test(behind.text));
  return !weekday || dated || monthWord(behind?.lower ?? '') !== undefined ? undefined : weekday.next;
}

/** A time that is named and that nothing here tells the date of; `index` is that of its name. */
export function namedTimeAt(tokens: Tokens, index: number): Atom | undefined {
  const article = tokens[index - 1]?.lower === 'the' ? 1 : 0;
  const lead = tokens[index - 1 - article]?.lower ?? '';
  const unknown = (next: number): Atom => ({ first: index, next, relative: { kind: 'unknown' } });
  const [side, feast] = [tokens[index + 1]?.lower ?? '', tokens[index + 2]?.lower ?? ''];
  if (tokens[index]?.lower === 'week' && /^(?:before|after|of)$/.test(side) && SEASONS.test(feast)) return unknown(index + 3);
  const monday = OF_CALENDAR.test(tokens[index]?.lower ?? '') && side === 'day' ? weekdayAlone(tokens, index + 2) : undefined;
  if (monday !== undefined) return unknown(monday);
  if (!LEADS.test(lead)) return NOT_THEN.test(lead) ? undefined : calendarDayAt(tokens, index);
  if (article === 0 && SEASONS.test(tokens[index]?.lower ?? '') && (lead === 'at' || lead === 'over' || lead === 'during'))
    return unknown(weekendWordAt(tokens, index + 1) ?? index + 1);
  const next = nameEndsAt(tokens, index);
  return next === undefined ? undefined : unknown(next);
}
