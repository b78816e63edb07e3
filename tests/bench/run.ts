/**
 * `npm run bench [-- --json]`: every tests/bench/*.bench.ts in a process of its own, and the table of ratios.
 * It measures; it never passes or fails a test.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Row } from './harness.ts';

const folder = fileURLToPath(new URL('.', import.meta.url));
const asJson = process.argv.includes('--json');
const rows: Row[] = [];
for (const file of readdirSync(folder)
  .filter((name) => name.endsWith('.bench.ts'))
  .sort()) {
  const done = spawnSync(process.execPath, [folder + file], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
    env: { ...process.env, NODE_ENV: 'production' },
  });
  const measured = done.status === 0 ? (JSON.parse(done.stdout.trim().split('\n').at(-1) ?? '[]') as Row[]) : [];
  if (done.status !== 0) process.stderr.write(`${file} did not finish; it has no row.\n`);
  if (!asJson) for (const row of measured) process.stdout.write(`${sentence(row)}\n`);
  rows.push(...measured);
}
if (asJson) process.stdout.write(`${JSON.stringify({ rows })}\n`);

function sentence({ name, ours, theirs, unit, ratio, spread, aim, against }: Row): string {
  return `${ratio.toFixed(2).padStart(7)} (${spread.map((each) => each.toFixed(2)).join(' to ')}; aim ${aim})  ${name}: ${ours} ${unit} against ${theirs} ${unit}, ${against}`;
}
