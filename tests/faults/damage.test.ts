/**
 * A byte of the file changes while the store is closed: it is noticed, and what still opens says what it said.
 */
import { copyFileSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { writeHistory } from '../../db/keeping.ts';
import { openStore } from '../../db/open.ts';
import { StoreError } from '../../db/trouble.ts';
import { dump } from '../dump.ts';
import { NOW, temporaryFolder } from '../store.ts';
import { LONG } from './pairs.ts';

const FLIPS = LONG ? 5000 : 150;

/** Numbers that look random and are the same in every run (a linear congruential generator with the constants of Numerical Recipes). */
function* numbers(seed: number): Generator<number, never> {
  for (let state = seed; ;) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    yield state;
  }
}

async function filled(): Promise<string> {
  const folder = temporaryFolder();
  const store = await openStore({ folder, now: () => NOW });
  store.write((db) => {
    for (let row = 0; row < 400; row += 1)
      writeHistory(db, { subject: 'job', subjectId: String(row % 7), deed: 'note', sentence: `Row ${row}. `.repeat(20), at: NOW });
  });
  store.close();
  return folder;
}

type Outcome = 'refused' | 'noted' | 'as before' | 'unnoticed';

/** Flip one bit pattern at an offset and open: what a person would learn of it. */
async function open(folder: string, before: string): Promise<Outcome> {
  let noted = false;
  try {
    const store = await openStore({ folder, now: () => NOW, onNote: () => (noted = true) });
    const after = JSON.stringify(store.read((db) => dump(db.$client)));
    store.close();
    if (noted) return 'noted';
    return after === before ? 'as before' : 'unnoticed';
  } catch (error) {
    if (error instanceof StoreError) return 'refused';
    throw error;
  }
}

/** Offsets in the header and in the heads of pages, where most damage does most harm, and anywhere. */
function offsetsIn(bytes: number): number[] {
  const random = numbers(20261201);
  return Array.from({ length: FLIPS }, (_, index) => {
    const any = random.next().value;
    if (index % 3 === 0) return any % 100;
    if (index % 3 === 1) return Math.floor((any % bytes) / 4096) * 4096 + (any % 12);
    return any % bytes;
  });
}

test(
  `${FLIPS} flipped bytes: every one is noticed`,
  async () => {
    const origin = await filled();
    const file = readFileSync(join(origin, 'kitbound.sqlite'));
    const seal = readFileSync(join(origin, 'kitbound.sealed'));
    const store = await openStore({ folder: origin, now: () => NOW });
    const before = JSON.stringify(store.read((db) => dump(db.$client)));
    const [snapshot] = store.snapshots();
    store.close();
    const outcomes: Record<Outcome, number> = { refused: 0, noted: 0, 'as before': 0, unnoticed: 0 };
    for (const offset of offsetsIn(file.length)) {
      const folder = temporaryFolder();
      const damaged = Buffer.from(file);
      damaged[offset] = (damaged[offset] ?? 0) ^ (1 + (offset % 255));
      writeFileSync(join(folder, 'kitbound.sqlite'), damaged);
      writeFileSync(join(folder, 'kitbound.sealed'), seal);
      mkdirSync(join(folder, 'snapshots'));
      copyFileSync(join(origin, 'snapshots', snapshot?.name ?? ''), join(folder, 'snapshots', snapshot?.name ?? ''));
      outcomes[await open(folder, before)] += 1;
      rmSync(folder, { recursive: true });
    }
    expect(outcomes).toMatchObject({ 'as before': 0, unnoticed: 0 });
    expect(outcomes.refused).toBeGreaterThan(FLIPS / 4);
  },
  LONG ? 900_000 : 60_000,
);
