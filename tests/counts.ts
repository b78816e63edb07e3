/**
 * Adding up what several test runners report.
 */
export type Counts = { passed: number; failed: number; skipped: number };
/** A test that was skipped or that failed, and why. */
export type Told = { name: string; reason: string };

export const addUp = (all: readonly Counts[]): Counts =>
  all.reduce((sum, each) => ({ passed: sum.passed + each.passed, failed: sum.failed + each.failed, skipped: sum.skipped + each.skipped }), {
    passed: 0,
    failed: 0,
    skipped: 0,
  });

/** Each skip with its reason and, last, each failure with its own: nothing is left out in silence, and the end of a long run says what is wrong. */
export function printTold(state: 'skipped' | 'FAILED', all: readonly Told[]): void {
  for (const { name, reason } of all) process.stdout.write(`${state}  ${name}: ${plain(reason)}\n`);
}

const LONGEST = 400;
/** Without the colours of a terminal, on one line. */
// oxlint-disable-next-line no-control-regex
const plain = (text: string): string =>
  text
    .replaceAll(/\u001b\[[0-9;]*m/g, '')
    .replaceAll(/\s+/g, ' ')
    .slice(0, LONGEST);
