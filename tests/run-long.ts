/**
 * `npm run long`: the same tests with the full counts (10,000 cases a law, 100 kills), and the figures to be noted.
 * KITBOUND_LONG tells the tests; KITBOUND_SEED names another seed than the fixed one.
 */
import { readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { addUp, printTold } from './counts.ts';
import { runVitest } from './runners.ts';

process.env['KITBOUND_LONG'] = '1';
const began = performance.now();
const { counts, skips, failures } = runVitest();
printTold('skipped', skips);
printTold('FAILED', failures);
const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as { version: string };
const sum = addUp([counts]);
process.stdout.write(
  `${Temporal.Now.plainDateISO().toString()}, version ${version}, Node ${process.versions.node}, ${cpus().length} cores, ` +
    `seed ${process.env['KITBOUND_SEED'] ?? 'fixed'}, ${Math.round((performance.now() - began) / 1000)} s\n`,
);
process.stdout.write(`${sum.passed} passed, ${sum.failed} failed, ${sum.skipped} skipped\n`);
process.exitCode = sum.failed === 0 ? 0 : 1;
