/**
 * kill -9 at any moment: nothing half, nothing lost that was acknowledged, nothing stuck.
 */
import { spawn } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER } from '../../db/migrate.ts';
import { openStore } from '../../db/open.ts';
import { dump } from '../dump.ts';
import { NOW, temporaryFolder } from '../store.ts';
import { LONG, expectPairs, killWriter } from './pairs.ts';

const ROUNDS = LONG ? 100 : 8;
/** Spread evenly, so that the moments are the same in every run. */
const moments = (longestMs: number) => Array.from({ length: ROUNDS }, (_, round) => (longestMs * round) / ROUNDS);
const LIMIT_MS = 10_000 + ROUNDS * 3000;

test(
  `${ROUNDS} kills during saves`,
  async () => {
    const folder = temporaryFolder();
    let before: number[] = [];
    for (const afterMs of moments(120)) {
      const { acked, kinds, errors } = await killWriter(folder, afterMs);
      expect([kinds, errors]).toEqual([[], '']);
      expect(acked.length).toBeGreaterThan(0);
      before = expectPairs(folder, [...before, ...acked]);
    }
  },
  LIMIT_MS,
);

/** Run a child until it says the word, then kill it after a while. */
async function killAfterWord(script: string, args: string[], word: string, afterMs: number): Promise<void> {
  const child = spawn(process.execPath, [join(import.meta.dirname, 'processes', script), ...args], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  child.stdout.on('data', (piece: Buffer) => {
    if (piece.includes(word)) setTimeout(() => child.kill('SIGKILL'), afterMs);
  });
  await new Promise((resolve) => child.on('close', resolve));
}

async function filledStore(): Promise<string> {
  const folder = temporaryFolder();
  const store = await openStore({ folder, now: () => NOW });
  store.write((db) => {
    const add = db.$client.prepare(
      "insert into history (id, at, subject, subject_id, deed, sentence) values (?, 1, 'job', 'a', 'note', ?)",
    );
    for (let row = 0; row < 3000; row += 1) add.run(String(row), 'x'.repeat(500));
  });
  store.close();
  return folder;
}
function dumpOf(file: string) {
  const client = new Database(file);
  try {
    expect(client.pragma('integrity_check', { simple: true })).toBe('ok');
    return dump(client);
  } finally {
    client.close();
  }
}

test(
  `${ROUNDS} kills during a migration`,
  async () => {
    const migrations = temporaryFolder();
    cpSync(MIGRATIONS_FOLDER, migrations, { recursive: true });
    const next = readdirSync(migrations).filter((file) => file.endsWith('.sql')).length;
    writeFileSync(
      join(migrations, `${String(next).padStart(4, '0')}_slow.sql`),
      `CREATE TABLE slow (id integer primary key, text text) STRICT;
       INSERT INTO slow WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 60000) SELECT i, hex(randomblob(100)) FROM n;
       UPDATE slow SET text = text || id;`,
    );
    for (const afterMs of moments(400)) {
      const folder = await filledStore();
      const file = join(folder, 'kitbound.sqlite');
      const before = dumpOf(file);
      await killAfterWord('opener.ts', [folder, migrations], 'opening', afterMs);
      const after = dumpOf(file);
      if (!('slow' in after)) expect(after).toEqual(before);
      else expect(after['slow']).toHaveLength(60_000);
      const again = await openStore({ folder, now: () => NOW, migrationsFolder: migrations });
      expect(again.read((db) => db.$client.prepare('select count(*) from slow').pluck().get())).toBe(60_000);
      again.close();
    }
  },
  LIMIT_MS * 2,
);

test(
  `${ROUNDS} kills during a snapshot`,
  async () => {
    const folder = await filledStore();
    const snapshots = join(folder, 'snapshots');
    mkdirSync(snapshots, { recursive: true });
    for (const afterMs of moments(60)) {
      await killAfterWord('snapshotter.ts', [folder], 'taking', afterMs);
      for (const name of readdirSync(snapshots).filter((each) => each.endsWith('.sqlite')))
        expect(dumpOf(join(snapshots, name))['history']).toHaveLength(3000);
      const again = await openStore({ folder, now: () => NOW });
      expect(readdirSync(snapshots).filter((name) => name.includes('partial'))).toEqual([]);
      again.close();
    }
  },
  LIMIT_MS * 2,
);
