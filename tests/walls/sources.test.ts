import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const FOLDER = fileURLToPath(new URL('../reference', import.meta.url));

test('every check against the outside names its source with a year or the standard that it follows', () => {
  const files = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.test.ts'));
  expect(files.length).toBeGreaterThan(10);
  const unnamed = files.filter((name) => !/@source \S.{15,}/.test(readFileSync(join(FOLDER, name), 'utf8')));
  expect(unnamed).toEqual([]);
});
