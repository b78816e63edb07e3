/**
 * Adding up what several test runners report.
 */
export type Counts = { passed: number; failed: number; skipped: number };
export type Skip = { name: string; reason: string };

export const addUp = (all: readonly Counts[]): Counts =>
  all.reduce((sum, each) => ({ passed: sum.passed + each.passed, failed: sum.failed + each.failed, skipped: sum.skipped + each.skipped }), {
    passed: 0,
    failed: 0,
    skipped: 0,
  });

/** Each skip with its reason: nothing is left out in silence. */
export function printSkips(skips: readonly Skip[]): void {
  for (const { name, reason } of skips) process.stdout.write(`skipped  ${name}: ${reason}\n`);
}
