/**
 * Several starts on one data folder: one wins, the others are told so, and a killed one leaves nothing stuck.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openStore } from '../../db/open.ts';
import { NOW, temporaryFolder } from '../store.ts';
import { LONG } from './pairs.ts';

const script = (name: string) => join(import.meta.dirname, 'processes', name);
const ended = (child: ChildProcess) => new Promise((resolve) => child.on('close', resolve));

/** Start a process on the folder; answers when it has the store or was refused it. */
async function start(folder: string): Promise<{ child: ChildProcess; word: string }> {
  const child = spawn(process.execPath, [script('opener.ts'), folder], { stdio: ['pipe', 'pipe', 'inherit'] });
  const word = await new Promise<string>((resolve) => {
    let output = '';
    child.stdout.on('data', (piece: Buffer) => {
      output += piece.toString();
      const last = /^(open|refused .+)$/m.exec(output)?.[1];
      if (last) resolve(last);
    });
    child.on('close', () => resolve(`ended after: ${output}`));
  });
  return { child, word };
}

test('three starts at once on a new folder, and again on the same one: exactly one has it each time', async () => {
  const folder = temporaryFolder();
  for (let round = 0; round < (LONG ? 20 : 3); round += 1) {
    const starts = await Promise.all(Array.from({ length: 3 }, () => start(folder)));
    expect(starts.map(({ word }) => word).toSorted()).toEqual(['open', 'refused busy', 'refused busy']);
    const holder = starts.find(({ word }) => word === 'open')?.child;
    if (!holder) throw new Error('Nobody has it.');
    // One round ends as a crash does, the next as a person would end it.
    if (round % 2 === 0) holder.kill('SIGKILL');
    else holder.stdin?.end();
    await ended(holder);
  }
  const store = await openStore({ folder, now: () => NOW });
  store.close();
}, 120_000);

test('two processes race for the same slots: each slot has one winner', async () => {
  const folder = temporaryFolder();
  const slots = LONG ? 1000 : 60;
  const racers = await Promise.all(
    [0, 1].map(async () => {
      const child = spawn(process.execPath, [script('racer.ts'), folder, String(slots)], { stdio: ['ignore', 'pipe', 'inherit'] });
      let output = '';
      child.stdout.on('data', (piece: Buffer) => (output += piece.toString()));
      expect(await ended(child)).toBe(0);
      return output.split('\n').filter(Boolean);
    }),
  );
  const won = racers.flatMap((lines) => lines.filter((line) => line.startsWith('won ')));
  expect(won.toSorted()).toEqual(Array.from({ length: slots }, (_, slot) => `won ${slot}`).toSorted());
  const store = await openStore({ folder, now: () => NOW });
  expect(store.read((db) => db.$client.prepare("select count(*) from history where subject = 'slot'").pluck().get())).toBe(slots);
  store.close();
}, 300_000);
