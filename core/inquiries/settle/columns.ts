/**
 * Hours in a table whose head names its columns: "Date | Town | Call | Wrap" over "2 Dec | Leeds | 15:00 | 19:30".
 */
import type { Where } from './scene.ts';

const CALL =
  /^\s*(?:crew |first |your |cam(?:era)? )?(?:call|start|in|on|arrive|arrival|on[- ]?site|load[- ]?in|report|from|get[- ]?in|beginn?|début|inicio)(?: time)?\s*$/i;
const WRAP =
  /^\s*(?:crew |last |est\.? |your )?(?:wrap|end|out|finish|release|off|to|until|done|strike|load[- ]?out|get[- ]?out|ende|fin|hasta)(?: time)?\s*$/i;
const PARTS = /[|\t]/;
const FEWEST_COLUMNS = 3;
const LONGEST_LINE = 300;
const MOST_LINES = 400;

/** The column in which an offset of a line lies. */
const columnOf = (line: string, at: number): number => line.slice(0, at).split(PARTS).length - 1;

/** A row of mine, where the rows are those of several people. */
const MY_ROW = /(?<!\bnot )\b(?:you|yours|kit)\b|\(open\)/i;

/** For each hour in a column under "Call" or "Wrap" which of them it is; in rows of others, where some rows are mine, neither. */
export function columnsOf<T extends Where>(text: string, times: readonly T[]): Map<T, 'call' | 'wrap' | 'show'> {
  const said = new Map<T, 'call' | 'wrap' | 'show'>();
  const theirs: T[] = [];
  let mine = false;
  let head: string[] | undefined;
  let next = 0;
  let from = 0;
  for (const line of text.split('\n', MOST_LINES)) {
    const cells = line.length <= LONGEST_LINE ? line.split(PARTS) : [];
    const to = from + line.length;
    while ((times[next]?.start ?? Infinity) < from) next++;
    if (cells.length < FEWEST_COLUMNS) head = undefined;
    else if (cells.some((cell) => CALL.test(cell)) && !/\d:\d\d/.test(line)) head = cells;
    else if (head)
      for (let at = next; (times[at]?.end ?? Infinity) <= to; at++) {
        const time = times[at] as T;
        const name = head[columnOf(line, time.start - from)] ?? '';
        if (CALL.test(name)) said.set(time, 'call');
        else if (WRAP.test(name)) said.set(time, 'wrap');
        if (!said.has(time)) continue;
        if (MY_ROW.test(line)) mine = true;
        else theirs.push(time);
      }
    from = to + 1;
  }
  if (mine) for (const time of theirs) said.set(time, 'show');
  return said;
}
