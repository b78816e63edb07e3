/**
 * The nets that hold the walls are held themselves: each is shown what it must catch.
 */
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from '../checks.ts';
import { temporaryFolder } from '../store.ts';

type Cruised = { summary: { totalCruised: number; violations: { rule: { name: string } }[] } };
const tool = (name: string) => join(root, 'node_modules', '.bin', name);

function cruise(folder: string, rooms: readonly string[]): Cruised['summary'] {
  const args = [tool('depcruise'), '--config', join(root, '.dependency-cruiser.cjs'), '--output-type', 'json', ...rooms];
  const done = spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8', maxBuffer: 64_000_000 });
  return (JSON.parse(done.stdout) as Cruised).summary;
}

/** A small house of its own with the given files. */
function house(files: Record<string, string>): string {
  const folder = temporaryFolder();
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(folder, dirname(name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
  copyFileSync(join(root, 'package.json'), join(folder, 'package.json'));
  return folder;
}

describe('the walls', () => {
  test('are looked at: the linter sees every room', () => {
    for (const room of ['core', 'db', 'electron', 'renderer', 'tests']) expect(cruise(root, [room]).totalCruised).toBeGreaterThan(10);
  });

  test.each([
    ['core-reaches-out', { 'core/a.ts': "import '../db/b.ts';", 'db/b.ts': '' }],
    ['db-reaches-out', { 'db/a.ts': "import '../electron/b.ts';", 'electron/b.ts': '' }],
    ['electron-reaches-out', { 'electron/a.ts': "import '../renderer/b.ts';", 'renderer/b.ts': '' }],
    [
      'renderer-reaches-out',
      { 'renderer/a.ts': "import type { B } from '../db/b.ts'; export type A = B;", 'db/b.ts': 'export type B = 1;' },
    ],
    ['core-needs-node', { 'core/a.ts': "import 'node:fs';" }],
    ['renderer-needs-node', { 'renderer/a.ts': "import 'node:fs';" }],
    ['no-circles', { 'core/a.ts': "import './b.ts';", 'core/b.ts': "import './a.ts';" }],
    ['cannot-be-found', { 'core/a.ts': "import './nothing.ts';" }],
    ['core-takes-a-package-of-another-list', { 'core/a.ts': "import 'react';" }],
    ['renderer-takes-a-package-of-another-list', { 'renderer/a.ts': "import '@orpc/server';" }],
    ['program-takes-a-package-of-building', { 'db/a.ts': "import 'fast-check';" }],
    ['store-is-opened-in-one-room', { 'electron/a.ts': "import 'better-sqlite3';" }],
    ['package-is-in-no-list', { 'tests/a.ts': "import 'semver';" }],
  ])('%s is caught', (rule, files) => {
    const rooms = ['core', 'db', 'electron', 'renderer', 'tests'].filter((room) =>
      Object.keys(files).some((name) => name.startsWith(`${room}/`)),
    );
    expect(cruise(house(files), rooms).violations.map((violation) => violation.rule.name)).toContain(rule);
  });

  test.each([
    ['the page', 'export const a = window.location;'],
    ['Node', "export const a = Buffer.from('a');"],
    ['the process', 'export const a = process.env;'],
  ])('core does not compile with %s in it', (_, text) => {
    const folder = house({ 'core/a.ts': text });
    writeFileSync(join(folder, 'core', 'tsconfig.json'), JSON.stringify({ extends: join(root, 'core', 'tsconfig.json'), include: ['.'] }));
    const done = spawnSync(process.execPath, [tool('tsc'), '-p', 'core'], { cwd: folder, encoding: 'utf8' });
    expect([done.status === 0, done.stdout]).toEqual([false, expect.stringContaining('core/a.ts(1,')]);
  });

  test.each(['new Date()', 'Math.random()', 'Temporal.Now.instant()', 'performance.now()'])(
    'core does not pass the linter with %s',
    (clock) => {
      const folder = house({ 'core/a.ts': `export const a = ${clock};\n` });
      copyFileSync(join(root, '.oxlintrc.json'), join(folder, '.oxlintrc.json'));
      const done = spawnSync(process.execPath, [tool('oxlint'), 'core'], { cwd: folder, encoding: 'utf8' });
      expect([done.status, done.stdout]).toEqual([1, expect.stringContaining('no-restricted')]);
    },
  );
});
