/**
 * Hours in a list, one a line: "7:30 AM lighting", "camera 08:00 (that would be you)". Of such a list only the lines that name the cameras, the crew or me are my hours.
 */
import { anyOf } from '../phrases.ts';
import type { Where } from './scene.ts';

const MINE = anyOf(
  `you | your | kit | camera | cameras | cam | cams | video | videographer | crew | all crew | filming | film crew | stream | streaming | photo | photographer | operator | operators | load-in | get-in | bump-in | rig | call | crew call | access | everybody | everyone | wrap`,
);
const ENDS = anyOf(
  `released | release | wrap | wraps | out | off | done | finish | finished | home | clear | de-rig | derig | strike | load-out | get-out | bump-out | pack down | packed`,
);
const FEWEST_ROWS = 3;
const LONGEST_ROW = 60;

/** For each hour of a list whether it is my call, my wrap or somebody else's; hours that stand in no list are left out. */
export function rowsOf<T extends Where>(text: string, times: readonly T[]): Map<T, 'call' | 'wrap' | 'show'> {
  const rows: { time: T; label: string; from: number; end: number }[] = [];
  let from = 0;
  let end = -1;
  for (const [index, time] of times.entries()) {
    // Times come in order: the line is moved along with them and each is sought once.
    while (end < time.end) {
      const to = text.indexOf('\n', end + 1);
      if (end >= 0 && end < time.start) from = end + 1;
      end = to < 0 ? text.length : to;
    }
    if (end - from > LONGEST_ROW || (times[index + 1]?.start ?? Infinity) < end || (times[index - 1]?.end ?? -1) > from) continue;
    const [before, after] = [text.slice(from, time.start), text.slice(time.end, end)];
    // The hour begins its line or ends it; a form's "Call: 7:00" has a mark and is read elsewhere.
    if (/[:=?.]/.test(before) || !(/^[\s\d).-]*$/.test(before) || /^\s*(?:\(.*\))?\s*$/.test(after))) continue;
    rows.push({ time, label: `${before} ${after}`, from, end });
  }
  const said = new Map<T, 'call' | 'wrap' | 'show'>();
  if (rows.length < FEWEST_ROWS) return said;
  const inList = rows.filter(({ from, end }, at) => rows[at - 1]?.end === from - 1 || rows[at + 1]?.from === end + 1);
  if (inList.length < FEWEST_ROWS || !inList.some(({ label }) => MINE.test(label) && !ENDS.test(label))) return said;
  for (const { time, label } of inList) said.set(time, !MINE.test(label) ? 'show' : ENDS.test(label) ? 'wrap' : 'call');
  return said;
}
