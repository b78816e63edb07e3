/**
 * kill -9 while bills are issued: no gap, no double, no number without its paper, and nothing lost that was acknowledged.
 */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openStore } from '../../db/open.ts';
import { allPapers } from '../../db/papers.ts';
import { checkPapers } from '../../electron/papers/keep.ts';
import { agreedJob } from '../api/invoices/agreed-job.ts';
import { clonedJobs } from '../api/invoices/cloned-jobs.ts';
import { world } from '../api/world.ts';
import { FAULTS_NOW } from './moment.ts';
import { LONG } from './pairs.ts';

const ROUNDS = LONG ? 60 : 3;
/** So many bills are written in about the longest time before a kill. */
const JOBS_A_ROUND = 12;
const LONGEST_MS = 900;

/** Issue until killed, so long after the first number was given. */
async function killIssuer(folder: string, afterMs: number): Promise<{ acked: string[]; errors: string }> {
  const script = join(import.meta.dirname, 'processes', 'issuer.ts');
  const child = spawn(process.execPath, [script, folder], { stdio: ['ignore', 'pipe', 'pipe'] });
  let [output, errors] = ['', ''];
  child.stdout.on('data', (piece: Buffer) => {
    if (!output.includes('ok ') && piece.includes('ok ')) setTimeout(() => child.kill('SIGKILL'), afterMs);
    output += piece.toString();
  });
  child.stderr.on('data', (piece: Buffer) => (errors += piece.toString()));
  await new Promise((resolve) => child.on('close', resolve));
  return { acked: output.split('\n').flatMap((line) => (line.startsWith('ok ') ? [line.slice(3)] : [])), errors };
}

test(
  `${ROUNDS} kills while bills are issued`,
  async () => {
    const at = await world('2026-11-01T15:00:00Z');
    const { job } = await agreedJob({ at });
    const { folder } = at.context.store;
    clonedJobs(at.context.store, job.id, JOBS_A_ROUND * ROUNDS);
    at.context.store.close();
    const acked: string[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      const killed = await killIssuer(folder, (LONGEST_MS * round) / ROUNDS);
      expect(killed.errors).toBe('');
      expect(killed.acked.length).toBeGreaterThan(0);
      acked.push(...killed.acked);
      const store = await openStore({ folder, now: () => FAULTS_NOW });
      const rows = store.read((db) =>
        db.$client
          .prepare<[], { number: string; sequence: number; hash: string }>(
            'select i.number, i.sequence, p.hash from invoices i join papers p on p.id = i.paper_id order by i.sequence',
          )
          .all(),
      );
      const papers = store.read(allPapers);
      const { lost } = checkPapers(store.papers, papers);
      store.close();
      expect(rows.map(({ sequence }) => sequence)).toEqual(rows.map((_, order) => order + 1));
      expect(acked.filter((number) => !rows.some((row) => row.number === number))).toEqual([]);
      // At most one a round was on the disk and could not be told any more.
      expect(rows.length - acked.length).toBeLessThanOrEqual(round + 1);
      expect(lost).toEqual([]);
      // No paper speaks of a number that the books do not have.
      expect(
        papers
          .filter(({ kind }) => kind === 'invoice')
          .map(({ hash }) => hash)
          .sort(),
      ).toEqual(rows.map(({ hash }) => hash).sort());
    }
  },
  30_000 + ROUNDS * 15_000,
);
