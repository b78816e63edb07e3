/**
 * The program ends while it reads files to hand over: by a kill and by being asked to. Nothing of it is on the books or in the folders.
 */
import { closeSync, ftruncateSync, mkdtempSync, openSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import type { Deliverable } from '../../core/contract/deliverables.ts';
import type { Reading } from '../../core/contract/handovers.ts';
import type { Job } from '../../core/contract/jobs.ts';
import { DULUTH, SETUP } from '../api/world.ts';
import { startHost, type TestHost } from '../host.ts';

/** A program on a folder with one edit promised that reads a film of 400 GB, which takes minutes. */
async function readingFilm(folder: string): Promise<{ host: TestHost; deliverable: Deliverable; reading: Reading }> {
  const host = await startHost({ data: join(folder, 'data'), page: false });
  await host.call('setup.save', { fields: SETUP });
  const { fields } = (await host.call('rates.defaults', { role: 'shoot', currency: 'USD', validFrom: '2026-01-01' })) as { fields: object };
  await host.call('rates.save', { fields: { ...fields, dayRate: '1000.00' } });
  const days = [{ date: '2031-12-12', kind: 'shoot', call: '2031-12-12T08:00', wrap: '2031-12-12T18:00' }];
  const facts = { title: 'Tasting', role: 'shoot', place: DULUTH, days, deliverables: ['Highlights'] };
  const { job } = (await host.call('jobs.add', { facts })) as { job: Job };
  const made = (await host.call('quotes.make', { jobId: job.id, jobVersion: job.version, draftVersion: 0, pencil: false })) as { job: Job };
  await host.call('jobs.ink', { id: job.id, version: made.job.version, who: 'Ilse Marrow', how: 'mail' });
  const { deliverables } = (await host.call('deliverables.of', { jobId: job.id })) as { deliverables: Deliverable[] };
  const deliverable = deliverables[0]!;
  // A hole in a file takes no room.
  const film = join(folder, 'film.mov');
  const file = openSync(film, 'w');
  ftruncateSync(file, 400_000_000_000);
  closeSync(file);
  let { reading } = (await host.call('handovers.begin', { deliverableId: deliverable.id, paths: [film] })) as { reading: Reading };
  while (reading.bytes === 0) ({ reading } = (await host.call('handovers.progress', { run: reading.run })) as { reading: Reading });
  expect(reading).toMatchObject({ state: 'reading', of: 400_000_000_000 });
  return { host, deliverable, reading };
}

test.each([
  ['is killed', (host: TestHost) => void process.kill(host.pid, 'SIGKILL'), null],
  ['is asked to end', () => undefined, 0],
])(
  'the program %s',
  async (_, end, status) => {
    const folder = mkdtempSync(join(tmpdir(), 'kitbound-'));
    onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
    const { host, deliverable, reading } = await readingFilm(folder);
    const papers = readdirSync(join(host.data, 'papers'));
    end(host);
    expect(await host.close()).toBe(status);

    const again = await startHost({ data: host.data, page: false });
    onTestFinished(() => void again.close());
    const { handOvers, reading: left } = (await again.call('handovers.of', { deliverableId: deliverable.id })) as {
      handOvers: unknown[];
      reading: Reading | null;
    };
    expect([handOvers, left]).toEqual([[], null]);
    await expect(again.call('handovers.progress', { run: reading.run })).rejects.toThrow('Read the files again.');
    const { deliverables } = (await again.call('deliverables.of', { jobId: deliverable.jobId })) as { deliverables: Deliverable[] };
    expect(deliverables[0]?.state).toBe('open');
    expect(readdirSync(join(again.data, 'papers'))).toEqual(papers);
    expect(await again.call('papers.check')).toMatchObject({ lost: [], orphans: [] });
  },
  120_000,
);
