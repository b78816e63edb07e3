/**
 * "around 10 March", "circa the 10th": a day that is known only roughly.
 */
import { dayAt, weekdayAt, type Tokens } from './pieces.ts';

const MAY_BE = /^(?:will|would|might|could|should|'ll|it'll|that'll|to|likely|probably)$/;
const SOMEBODY = /^(?:you|u|ya|ye|i|we|they|he|she|anyone|anybody|someone|somebody|not)$/;
/** "it will be around 10 March", and not "will you be around", "we would be around". */
const isBe = (tokens: Tokens, index: number): boolean =>
  tokens[index]?.lower === 'be' && MAY_BE.test(tokens[index - 1]?.lower ?? '') && !SOMEBODY.test(tokens[index - 2]?.lower ?? 'you');

/** Whether a word says so of the date behind it; not "are you around 10 March?" */
export function isRoughly(tokens: Tokens, index: number): boolean {
  if (!/^(?:around|circa|roughly|approximately|approx)$/.test(tokens[index]?.lower ?? '')) return false;
  if (
    !isBe(tokens, index - 1) &&
    /^(?:you|u|be|is|are|anyone|anybody|still|i'm|we're|you're|re|was|were|all|town|shop|turn|get|way)$/.test(
      tokens[index - 1]?.lower ?? 'you',
    )
  )
    return false;
  const at = tokens[index + 1]?.lower === 'the' ? index + 2 : index + 1;
  return dayAt(tokens, weekdayAt(tokens, at)?.next ?? at) !== undefined && (tokens[at]?.breaks ?? 1) === 0;
}
