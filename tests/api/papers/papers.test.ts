import { unlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { insertPaper } from '../../../db/papers.ts';
import { papers } from '../../../electron/api/papers.ts';
import { keepPaper } from '../../../electron/papers/keep.ts';
import { refusal, world } from '../world.ts';

const NOW = '2026-12-01T15:00:00Z';
const bytes = new TextEncoder().encode('%PDF-1.7 a paper');

async function withPaper() {
  const made = await world(NOW);
  const { store } = made.context;
  const kept = keepPaper(store.papers, bytes);
  const paper = store.write((db) =>
    insertPaper(db, { jobId: null, kind: 'quote', name: 'Quote 1 Fair.pdf', type: 'application/pdf', madeAt: made.context.now(), ...kept }),
  );
  return { ...made, paper, file: join(store.papers, `${paper.hash}.pdf`) };
}

test('a paper is read back with its bytes', async () => {
  const { context, paper } = await withPaper();
  expect(paper).toMatchObject({ kind: 'quote', name: 'Quote 1 Fair.pdf', bytes: 16, madeAt: NOW });
  expect(await call(papers.read, { id: paper.id }, { context })).toEqual({
    paper,
    type: 'application/pdf',
    base64: Buffer.from(bytes).toString('base64'),
  });
  expect(await call(papers.check, {}, { context })).toEqual({ whole: 1, lost: [], orphans: [] });
});

test('a paper that is not on the books', async () => {
  const { context } = await withPaper();
  const id = '01890000-0000-7000-8000-00000000abcd';
  expect(await refusal(call(papers.read, { id }, { context }))).toMatchObject({
    code: 'NOT_FOUND',
    what: 'This paper is not on the books.',
  });
});

test('a changed file is never handed out; what is lost and what is stray is told', async () => {
  const { context, paper, file } = await withPaper();
  writeFileSync(file, '%PDF-1.7 a forgery');
  const changed = await refusal(call(papers.read, { id: paper.id }, { context }));
  expect(changed).toMatchObject({ code: 'STORE_TROUBLE', what: 'The file of Quote 1 Fair.pdf is missing or changed.' });
  unlinkSync(file);
  expect(await refusal(call(papers.read, { id: paper.id }, { context }))).toMatchObject({ code: 'STORE_TROUBLE' });
  writeFileSync(join(context.store.papers, 'stray.pdf'), 'x');
  expect(await call(papers.check, {}, { context })).toEqual({ whole: 0, lost: [paper], orphans: ['stray.pdf'] });
});
