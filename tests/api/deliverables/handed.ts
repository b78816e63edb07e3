/**
 * A deliverable that is ready to be handed over, and how it is read and kept.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { call } from '@orpc/server';
import { expect } from 'vitest';
import type { HandOver, Reading } from '../../../core/contract/handovers.ts';
import { stagesOf } from '../../../db/rounds.ts';
import { handovers } from '../../../electron/api/handovers.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { temporaryFolder } from '../../store.ts';
import { promised, type Promised } from './promised.ts';

export const DELIVERED = '2027-01-06T16:00:00Z';
export const FILES = { 'Highlights.mov': 'the film', 'Stills/1.png': 'a still', 'Stills/2.png': 'another still' };

export function folderOf(files: Record<string, string> = FILES): string {
  const folder = temporaryFolder();
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
}

export async function ready(more: Parameters<typeof promised>[0] = {}): Promise<Promised> {
  const p = await promised(more);
  p.at.at(DELIVERED);
  return p;
}
export const of = ({ edit, at: { context } }: Promised) => call(handovers.of, { deliverableId: edit }, { context });
export const LINK = {
  how: 'link',
  where: 'https://files.lakeline.example/seed',
  originals: 'kept until',
  originalsUntil: '2027-04-06',
} as const;
export const keep = (p: Promised, more: object = {}) =>
  call(handovers.keep, { deliverableId: p.edit, from: { paths: [folderOf()] }, ...LINK, ...more }, { context: p.at.context });
export async function kept(p: Promised, more: object = {}): Promise<HandOver> {
  return (await keep(p, more)).handOver;
}
export const done = ({ edit, at: { context } }: Promised) =>
  context.store.read((db) => stagesOf(db, edit).flatMap(({ kind, doneAt }) => (doneAt === null ? [] : [kind])));
export const history = async ({ job, at: { context } }: Promised) =>
  (await call(jobs.history, { id: job.id }, { context })).entries.map(({ sentence }) => sentence);

/** Begin to read and wait until it has ended. */
export async function read(p: Promised, paths: string[]): Promise<Reading> {
  const { context } = p.at;
  const begun = await call(handovers.begin, { deliverableId: p.edit, paths }, { context });
  expect(begun.reading).toMatchObject({ state: 'reading', deliverableId: p.edit });
  let { reading } = begun;
  while (reading.state === 'reading') {
    await new Promise((resolve) => setImmediate(resolve));
    ({ reading } = await call(handovers.progress, { run: reading.run }, { context }));
  }
  return reading;
}
