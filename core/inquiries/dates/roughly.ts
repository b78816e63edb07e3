/**
 * "around 10 March", "circa the 10th": a day that is known only roughly.
 */
import { dayAt, weekdayAt, type Tokens } from './pieces.ts';

/** Whether a word says so of the date behind it; not "are you around 10 March?" */
export function isRoughly(tokens: Tokens, index: number): boolean {
  if (!/^(?:around|circa|roughly|approximately|approx)$/.test(tokens[index]?.lower ?? '')) return false;
  if (
    /^(?:you|u|be|is|are|anyone|anybody|still|i'm|we're|you're|re|was|were|all|town|shop|turn|get|way)$/.test(
      tokens[index - 1]?.lower ?? 'you',
    )
  )
    return false;
  const at = tokens[index + 1]?.lower === 'the' ? index + 2 : index + 1;
  return dayAt(tokens, weekdayAt(tokens, at)?.next ?? at) !== undefined && (tokens[at]?.breaks ?? 1) === 0;
}
