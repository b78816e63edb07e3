/**
 * `npm run --silent reference`: what the program is held against outside itself. One line for each source, with the number of
 * its checks. A file of tests/reference names its sources in a comment: `@source Publisher, Document, Section, Year`.
 */
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { vitestReport } from './runners.ts';

const report = vitestReport(['tests/reference'], true);
const bySource = new Map<string, { checks: number; failed: number }>();
for (const test of report?.tests ?? []) {
  const sources = [...readFileSync(test.file, 'utf8').matchAll(/@source (.+?)\s*(?:\*\/)?$/gm)].map((match) => match[1] ?? '');
  const source = sources.join('; ') || `${basename(test.file)} names no source`;
  const counts = bySource.get(source) ?? { checks: 0, failed: 0 };
  const wrong = test.state === 'failed' || sources.length === 0;
  bySource.set(source, { checks: counts.checks + 1, failed: counts.failed + (wrong ? 1 : 0) });
}
let checks = 0;
let failed = report ? report.loose.length : 1;
for (const [source, counts] of [...bySource].sort(([a], [b]) => (a < b ? -1 : 1))) {
  process.stdout.write(`${counts.checks}  ${source}${counts.failed ? `  (${counts.failed} FAILED)` : ''}\n`);
  checks += counts.checks;
  failed += counts.failed;
}
process.stdout.write(`${checks} checks against ${bySource.size} sources, ${failed} failed\n`);
process.exitCode = failed === 0 ? 0 : 1;
