/**
 * `--sample` at the start of the program, and what a kill in the middle of it leaves.
 */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { holdsNothing } from '../../../db/whole-store.ts';
import { builtProgram } from '../../built.ts';
import { temporaryFolder, temporaryStore } from '../../store.ts';

const args = (folder: string) => [builtProgram('host.mjs'), '--no-open', '--sample', '--data', folder];

/** Start with the sample and end it as a power cut would, once it has said a word. */
async function killAtWord(folder: string, word: RegExp): Promise<void> {
  const child = spawn(process.execPath, args(folder), { stdio: ['ignore', 'pipe', 'inherit'] });
  let said = '';
  child.stdout.on('data', (piece: Buffer) => {
    said += piece.toString();
    if (word.test(said)) child.kill('SIGKILL');
  });
  await new Promise((resolve) => child.on('close', resolve));
  expect(said).toMatch(word);
}

test('killed in the middle it leaves an empty store and clears up at the next opening', async () => {
  const folder = temporaryFolder();
  await killAtWord(folder, /\d+ of \d+ steps\./);
  expect(existsSync(join(folder, 'in-the-making'))).toBe(true);
  const store = await temporaryStore(undefined, folder);
  expect(store.read(holdsNothing)).toBe(true);
  expect(existsSync(join(folder, 'in-the-making'))).toBe(false);
  expect(readdirSync(store.papers)).toEqual([]);
});

test('a folder that has something is refused in a sentence, and nothing is started', async () => {
  const folder = temporaryFolder();
  const store = await temporaryStore(undefined, folder);
  store.write((db) =>
    db.$client.exec("insert into history (id, at, subject, subject_id, deed, sentence) values ('a', 1, 'job', 'a', 'note', 'One.')"),
  );
  store.close();
  const started = spawnSync(process.execPath, args(folder), { encoding: 'utf8' });
  expect(started.status).toBe(1);
  expect(started.stderr).toBe(
    'The sample year goes into an empty store only, and this one holds something already. Nothing was changed. Give it a data folder of its own: npm start -- --sample --data DIR.\n',
  );
});
