/**
 * `npm test`: types, lint, walls, unused code, format, then every test found by folder. Each of the first counts as one.
 * The very last line is `N passed, N failed, N skipped`.
 */
import { ensureTools } from './tools.ts';
import { addUp, type Counts, printTold, type Told } from './counts.ts';
import { runPlaywright, runVitest } from './runners.ts';
import { checks, runCheck } from './checks.ts';

const began = performance.now();
ensureTools();
const counts: Counts[] = [];
const skips: Told[] = [];
const failures: Told[] = [];

for (const check of checks) {
  const passed = runCheck(check);
  process.stdout.write(`${passed ? 'passed' : 'FAILED'}  ${check.name}\n`);
  if (!passed) failures.push({ name: check.name, reason: 'its own words stand above' });
  counts.push({ passed: passed ? 1 : 0, failed: passed ? 0 : 1, skipped: 0 });
}
for (const run of [runVitest, runPlaywright]) {
  const result = run();
  counts.push(result.counts);
  skips.push(...result.skips);
  failures.push(...result.failures);
}

printTold('skipped', skips);
printTold('FAILED', failures);
const sum = addUp(counts);
process.stdout.write(`${Math.round((performance.now() - began) / 1000)} s\n`);
process.stdout.write(`${sum.passed} passed, ${sum.failed} failed, ${sum.skipped} skipped\n`);
process.exitCode = sum.failed === 0 ? 0 : 1;
