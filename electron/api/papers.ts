/**
 * Papers: read back and held against the books.
 */
import { allPapers, paperById } from '../../db/papers.ts';
import { inStoreWords } from '../../db/trouble.ts';
import { checkPapers, readKept } from '../papers/keep.ts';
import { os } from './os.ts';
import { notFound, trouble } from './trouble.ts';

const read = os.papers.read.handler(({ input, context: { store } }) => {
  const found = store.read((db) => paperById(db, input.id));
  if (!found) throw notFound('This paper');
  const bytes = inStoreWords(() => readKept(store.papers, found.paper.hash));
  if (bytes === null)
    throw trouble('STORE_TROUBLE', {
      what: `The file of ${found.paper.name} is missing or changed.`,
      kept: 'What it says is kept on the books, with its version.',
      todo: 'Put the papers folder back from a copy of the data folder, or make the paper again as a new version.',
    });
  return { ...found, base64: Buffer.from(bytes).toString('base64') };
});

const check = os.papers.check.handler(({ context: { store } }) => {
  const papers = store.read(allPapers);
  const { whole, lost, orphans } = inStoreWords(() => checkPapers(store.papers, papers));
  return { whole: whole.length, lost, orphans };
});

export const papers = { read, check };
