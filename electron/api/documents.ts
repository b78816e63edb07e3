/**
 * Documents with their dates. Their numbers are sensitive: no sentence and no row of history holds one.
 */
import type { Document, DocumentFields } from '../../core/contract/documents.ts';
import { titleOf } from '../../core/documents/words.ts';
import { namedBy } from '../../core/papers/file-type.ts';
import { dateInWords } from '../../core/words/dates.ts';
import { allDocuments, documentById, dropDocument, keepDocument, setScan } from '../../db/documents.ts';
import { writeHistory } from '../../db/keeping.ts';
import { insertPaper, paperById } from '../../db/papers.ts';
import { handById } from '../../db/people.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { keepPaper } from '../papers/keep.ts';
import { certificate } from './certificate.ts';
import { customs, makeCustoms } from './customs.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { givenFile } from './given-file.ts';
import { badFacts } from './job-facts.ts';
import { os } from './os.ts';
import { paperBytes } from './papers.ts';
import { notFound, stale } from './trouble.ts';

const list = os.documents.list.handler(({ context }) => ({ documents: context.store.read(allDocuments) }));

/** What a deed answers is kept with its key, so it names the document and leaves its number where it is. */
function answered(
  context: Context,
  name: string,
  input: { key?: string | undefined },
  act: (db: WritableDb) => string,
): { document: Document } {
  const { id } = deed(context, name, input, (db) => ({ id: act(db) }));
  return { document: context.store.read((db) => known(db, id)) };
}

const save = os.documents.save.handler(({ input, context }) =>
  answered(context, 'documents.save', input, (db) => {
    const { id, version, fields } = input;
    refuseWrong(db, fields);
    const before = id === undefined ? undefined : documentById(db, id);
    if (id !== undefined && !before) throw notFound('This document');
    if (before && before.version !== version) throw stale(titleOf(before), before, fields);
    const now = context.now();
    const document = known(db, keepDocument(db, before, fields, now));
    note(db, document, 'documents.save', `${inWords(document)}.${before ? ` Before: ${inWords(before)}.` : ''}`, before, now);
    return document.id;
  }),
);

const drop = os.documents.drop.handler(({ input, context }) =>
  deed(context, 'documents.drop', input, (db) => {
    const before = one(db, input);
    dropDocument(db, before.id);
    note(db, before, 'documents.drop', `${inWords(before)} was taken off.`, before, context.now());
    return {};
  }),
);

const attach = os.documents.attach.handler(({ input, context }) => {
  const { store } = context;
  const { bytes, kind } = givenFile(input.base64);
  // Nothing is written to the folder for a document that is not there, or was changed meanwhile.
  store.read((db) => one(db, input));
  const kept = keepPaper(store.papers, bytes, kind.type);
  return answered(context, 'documents.attach', input, (db) => {
    const now = context.now();
    const before = one(db, input);
    const name = namedBy(kind, input.name);
    const paper = insertPaper(db, { jobId: null, kind: 'scan', name, type: kind.type, ...kept, madeAt: now });
    return withScan(db, before, paper.id, now);
  });
});

const putScan = os.documents.putScan.handler(({ input, context }) => {
  const { scanId } = input;
  // A file that is lost or changed is not put with anything.
  if (scanId !== null) paperBytes(context.store, scanId);
  return answered(context, 'documents.putScan', input, (db) => {
    if (scanId !== null && paperById(db, scanId)?.paper.kind !== 'scan') throw notFound('This scan');
    return withScan(db, one(db, input), scanId, context.now());
  });
});

function refuseWrong(db: ReadableDb, { from, until, handId, kind, countries, worldwide }: DocumentFields): void {
  if (from !== null && until !== null && until < from)
    throw badFacts([{ field: 'fields.until', sentence: 'The last day is before the first.' }]);
  if (handId !== null && !handById(db, handId)) throw notFound('This hand');
  if ((kind === 'right to work' || kind === 'carnet') && countries.length === 0 && !worldwide)
    throw badFacts([{ field: 'fields.countries', sentence: `Say which country the ${kind} is for.` }]);
}

function known(db: ReadableDb, id: string): Document {
  const document = documentById(db, id);
  if (!document) throw notFound('This document');
  return document;
}

function one(db: ReadableDb, { id, version }: { id: string; version: number }): Document {
  const document = known(db, id);
  if (document.version !== version) throw stale(titleOf(document), document, null);
  return document;
}

function withScan(db: WritableDb, before: Document, scanId: string | null, now: number): string {
  setScan(db, before, scanId, now);
  const after = known(db, before.id);
  const said = after.scan ? `A scan is with ${titleOf(after)}.` : `${titleOf(after)} has no scan any more.`;
  note(db, before, 'documents.scan', said, before, now);
  return after.id;
}

/** "Passport, valid to Sat 12 December 2026". */
function inWords(document: Document): string {
  return `${titleOf(document)}, ${document.until === null ? 'last day not noted' : `valid to ${dateInWords(document.until)}`}`;
}

function note(db: WritableDb, { id }: Document, name: string, sentence: string, before: Document | undefined, at: number): void {
  writeHistory(db, { at, subject: 'document', subjectId: id, deed: name, sentence, before: before ? { ...before, number: '' } : null });
}

export const documents = { list, save, drop, attach, putScan, customs, makeCustoms, certificate };
