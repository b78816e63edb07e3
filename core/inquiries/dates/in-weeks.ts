/**
 * Weekdays of a week that is named by its date: "Monday to Wednesday, week commencing 8 March", "the week of 7 June. We only need you Tuesday to Thursday".
 */
import { sentenceAround } from '../parts/sentences.ts';
import { DAYS_IN_WEEK, type Tokens } from './pieces.ts';
import type { Resolved } from './from-today.ts';
import type { Sequence } from './sequences.ts';

type Found = { sequence: Sequence; resolved: Resolved; start: number; end: number };

/** Till when somebody answers is told from today. */
const OF_AN_ANSWER =
  /\b(?:by|until|till|before|latest|deadline|repl(?:y|ies)|answer|let (?:me|us) know|confirm|decide|decision|invoice|hear|call me|ring|meet(?:ing)? with|edit|deliver\w*)\b/i;
const AWAY = /\b(?:away|closed|holidays?|off|busy|abroad|unavailable|booked|half term)\b/i;

/** The same dates, where plain weekdays of the sentence of such a week, or of the next, are days of it. */
export function inNamedWeeks(
  text: string,
  tokens: Tokens,
  found: readonly Found[],
  received: Temporal.PlainDate,
  resolveFrom: (sequence: Sequence, today: Temporal.PlainDate) => Resolved,
): Found[] {
  const weeks = found.filter(
    ({ sequence: { around, items } }) => around === 'week' && items.length === 1 && items[0]?.atom.day !== undefined,
  );
  const [week, ...more] = weeks;
  const before = week && more.length === 0 ? dayBefore(tokens, week, (sequence) => resolveFrom(sequence, received)) : undefined;
  if (!week || before === undefined) return [...found];
  const sentence = sentenceAround(text, week.start, week.end);
  const next = sentenceAround(text, sentence.end + 1, sentence.end + 1);
  const away = AWAY.test(text.slice(sentence.start, sentence.end));
  return found.map((one) => {
    const { sequence, resolved, start } = one;
    const plain = resolved.weekdayOnly && sequence.items.every(({ atom }) => atom.relative === undefined);
    const near = start >= sentence.start && start < next.end;
    const said = start < sentence.end ? '' : text.slice(next.start, next.end);
    const lead = text.slice(Math.max(sentence.start, start - LEAD), start);
    if (one === week || !plain || !near || away || OF_AN_ANSWER.test(said) || OF_AN_ANSWER.test(lead)) return one;
    return { ...one, resolved: { ...resolveFrom(sequence, before), explicit: true, weekdayOnly: false } };
  });
}
const LEAD = 40;

/** The day before the week begins: before its Monday where a day of it is told. */
function dayBefore(tokens: Tokens, { sequence }: Found, resolved: (sequence: Sequence) => Resolved): Temporal.PlainDate | undefined {
  const { around: _, ...day } = sequence;
  const { readings, doubt } = resolved(day);
  const [[date, ...days] = [], ...others] = readings;
  if (date === undefined || days.length > 0 || others.length > 0 || doubt !== undefined) return undefined;
  const told = Temporal.PlainDate.from(date);
  const word = tokens.slice(sequence.first, sequence.next).map(({ lower }) => lower);
  if (word.includes('ending') || word.includes('e')) return told.subtract({ days: DAYS_IN_WEEK });
  return word.includes('of') && told.dayOfWeek < DAYS_IN_WEEK ? told.subtract({ days: told.dayOfWeek }) : told.subtract({ days: 1 });
}
