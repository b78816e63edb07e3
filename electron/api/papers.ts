/**
 * Papers: read back and held against the books.
 */
import type { Paper } from '../../core/contract/jobs.ts';
import { allPapers, paperById } from '../../db/papers.ts';
import type { Store } from '../../db/store.ts';
import { inStoreWords } from '../../db/trouble.ts';
import { checkPapers, readKept } from '../papers/keep.ts';
import { os } from './os.ts';
import { notFound, trouble } from './trouble.ts';

const read = os.papers.read.handler(({ input, context: { store } }) => {
  const { bytes, ...found } = paperBytes(store, input.id);
  return { ...found, base64: Buffer.from(bytes).toString('base64') };
});

/**
 * A kept paper with its bytes.
 * @throws NOT_FOUND where there is none, STORE_TROUBLE where its file is not what was kept
 */
export function paperBytes(store: Store, id: string): { paper: Paper; type: string; bytes: Uint8Array } {
  const found = store.read((db) => paperById(db, id));
  if (!found) throw notFound('This paper');
  const bytes = inStoreWords(() => readKept(store.papers, found.paper.hash, found.type));
  if (bytes === null)
    throw trouble('STORE_TROUBLE', {
      what: `The file of ${found.paper.name} is missing or changed.`,
      kept: 'What it says is kept on the books, with its version.',
      todo: 'Put the papers folder back from a copy of the data folder, or make the paper again as a new version.',
    });
  return { ...found, bytes };
}

const check = os.papers.check.handler(({ context: { store } }) => {
  const papers = store.read(allPapers);
  const { whole, lost, orphans } = inStoreWords(() => checkPapers(store.papers, papers));
  return { whole: whole.length, lost: lost.map(({ type: _type, ...paper }) => paper), orphans };
});

export const papers = { read, check };
