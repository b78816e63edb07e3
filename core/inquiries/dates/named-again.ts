/**
 * A day that is told by its number alone where a date before it has that number is that day once more: "11 to 13 February ... mehndi on the 11th".
 */
import type { Resolved } from './from-today.ts';
import type { Sequence } from './sequences.ts';

type Found = { sequence: Sequence; resolved: Resolved; start: number; end: number };

/** What is on one day of a longer run is its own matter. */
const LONGEST_RUN = 7;
const LEAD = 64;
/** "an answer by the 12th", "let me know on the 12th" is the next one. */
const CLOSES =
  /\b(?:by|before|until|till?|bis|avant|antes del?|voor|no later than|latest|deadline|closing|due|repl(?:y|ies)|answers?|respon\w+|confirm\w*|know|hear|decid\w+|decision|yes|ring|call me|phone|invoice|pay\w*|deposit|deliver\w*|edits?|cut|draft)\b[^.;!?\n]{0,40}$/iu;

/** The dates of a message, each number alone read as the one date before it that has that number. */
export function namedAgain<T extends Found>(text: string, found: readonly T[]): T[] {
  const named: string[] = [];
  return found.map((one) => {
    const { sequence, resolved, start } = one;
    const [item, ...more] = sequence.items;
    const { day, month, weekday, monthsAhead, relative } = item?.atom ?? {};
    const alone = day !== undefined && more.length === 0 && month === undefined && monthsAhead === undefined && relative === undefined;
    if (!alone) {
      const [days = [], ...others] = resolved.readings;
      if (resolved.explicit && !resolved.past && others.length === 0 && days.length <= LONGEST_RUN) named.push(...days);
      return one;
    }
    if (CLOSES.test(text.slice(Math.max(0, start - LEAD), start))) return one;
    const same = [...new Set(named)].filter(
      (date) => Number(date.slice(8)) === day && (weekday === undefined || Temporal.PlainDate.from(date).dayOfWeek === weekday),
    );
    if (same.length !== 1) return one;
    const { doubt: _, ...known } = resolved;
    return { ...one, resolved: { ...known, readings: [same], past: false, vague: false } };
  });
}
