/**
 * The first and the last day as a form asks for them, each on its line: "From: 2027-11-08" and below it "To: 2027-11-09", "Start date:" and "End date:".
 */
import { lineStart } from '../parts/sentences.ts';
import type { Resolved } from './from-today.ts';
import type { Sequence } from './sequences.ts';

type Found = { sequence: Sequence; resolved: Resolved; start: number; end: number };

const OF_DAY = String.raw`(?: (?:of )?(?:the )?(?:event|job|shoot|booking|hire|filming))?(?: dates?| days?)?(?: \([^()\n]{1,20}\))?`;
const FIRST = new RegExp(
  String.raw`^[\s*•-]*(?:(?:event |job |shoot |booking )?(?:dates? )?(?:from|start(?:s|ing)?|begins?|beginning|first day|von|ab|beginn|du|début|van|begin|desde|inicio)${OF_DAY})\s?[:=]\s*$`,
  'iu',
);
const LAST = new RegExp(
  String.raw`^[^\S\n]*\n[\s*•-]*(?:(?:event |job |shoot |booking )?(?:dates? )?(?:to|until|till|through|end(?:s|ing)?|finish(?:es)?|last day|bis|ende|au|fin|tot|einde|hasta)${OF_DAY})\s?[:=]\s*$`,
  'iu',
);
/** What is longer is rather a course, a series or a window. */
const LONGEST_RUN = 14;
/** "every Tuesday", "any day in the window", "days needed: 1", "only those two days". */
const NOT_ALL =
  /(?<!\p{L})(?:every (?:mon|tue|wed|thu|fri|sat|sun|week)|weekly|each week|(?:one|1|any|single) days?(?!\p{L})|days? (?:needed|required|wanted)\s?:|only (?:those|these|the) (?:two|2) days|(?:nothing|not|none) (?:in )?between|window)/iu;

const onlyDay = ({ readings: [days, ...others], explicit, past, vague }: Resolved): string | undefined =>
  explicit && !past && !vague && others.length === 0 && days?.length === 1 ? days[0] : undefined;

const isRightAbove = (text: string, above: Found | undefined, { start }: Found): boolean =>
  above !== undefined && /^[^\n]*\n[^\n]*$/.test(text.slice(above.end, start));

/** The dates of a message, each first and last day of a form made one run. */
export function formRuns<T extends Found>(text: string, found: readonly T[]): T[] {
  if (NOT_ALL.test(text)) return [...found];
  const runs: T[] = [];
  for (const one of found) {
    const before = runs.at(-1);
    const [first, last] = [before && onlyDay(before.resolved), onlyDay(one.resolved)];
    if (
      !before ||
      first === undefined ||
      last === undefined ||
      last < first ||
      // "Arrival date:" right above is a day of its own, and next to the run.
      isRightAbove(text, runs.at(-2), before) ||
      !FIRST.test(text.slice(lineStart(text, before.start), before.start)) ||
      !LAST.test(text.slice(before.end, one.start))
    ) {
      runs.push(one);
      continue;
    }
    const length = Temporal.PlainDate.from(first).until(last).days + 1;
    if (length > LONGEST_RUN) {
      runs.push(one);
      continue;
    }
    const days = Array.from({ length }, (_, at) => Temporal.PlainDate.from(first).add({ days: at }).toString());
    runs[runs.length - 1] = {
      ...before,
      sequence: { ...before.sequence, items: [...before.sequence.items, ...one.sequence.items], next: one.sequence.next },
      resolved: { ...before.resolved, readings: [days] },
      end: one.end,
    };
  }
  return runs;
}
