import type { z } from 'zod';
import type { DraftChange, QuoteDraft, QuoteVersion } from '../../core/contract/quotes.ts';
import { differencesOf } from '../../core/quotes/differences.ts';
import { fixedLines, unknownLines } from '../../core/quotes/known.ts';
import { epochOf } from '../../core/time/read.ts';
import { noteSent, saveChanges, versionById, versionsOf, type KeptChanges } from '../../db/quotes.ts';
import { jobById } from '../../db/jobs.ts';
import { writeHistory } from '../../db/keeping.ts';
import { handById } from '../../db/people.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { owedBy } from './cancellation.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { whole } from './job-deed.ts';
import { os } from './os.ts';
import { quoteFacts } from './quote-draft.ts';
import { makeQuote } from './quote-make.ts';
import { badInput, notFound, refused, stale } from './trouble.ts';

const draft = os.quotes.draft.handler(({ input, context }) =>
  context.store.read((db) => ({ draft: quoteFacts(db, input.jobId, context.now()).draft })),
);

const change = os.quotes.change.handler(({ input, context }) =>
  redrafted(context, 'quotes.change', input, ({ batches }, before, db) => {
    if (input.changes.some((change) => change.op === 'hand' && !handById(db, change.handId))) throw notFound('This hand');
    const wrong = [
      ...unknownLines(input.changes, before).map((id) => `names ${id}, which is not a line of this quote`),
      ...fixedLines(input.changes).map((id) => `moves ${id}; only lines that were added by hand can be moved`),
    ];
    if (wrong.length > 0) throw badInput(wrong.map((sentence) => ({ field: 'changes', sentence })));
    return { batches: [...batches, input.changes], sentence: 'The draft quote was changed by hand.' };
  }),
);

const undo = os.quotes.undo.handler(({ input, context }) =>
  redrafted(context, 'quotes.undo', input, ({ batches }) => {
    if (batches.length === 0) throw refused('Nothing was changed by hand on this quote.', 'There is nothing to take back.');
    return { batches: batches.slice(0, -1), sentence: 'The last change of the draft quote was taken back.' };
  }),
);

type DraftInput = { jobId: string; draftVersion: number; changes?: z.infer<typeof DraftChange>[] };
type Redraft = (kept: KeptChanges, before: QuoteDraft, db: ReadableDb) => { batches: KeptChanges['batches']; sentence: string };

/** Change what is kept of a draft, against the version that was read; the answer is the draft as it is priced then. */
function redrafted(context: Context, name: string, input: DraftInput, act: Redraft): { draft: QuoteDraft } {
  return deed(context, name, {}, (db) => {
    const now = context.now();
    const before = quoteFacts(db, input.jobId, now);
    if (before.kept.draftVersion !== input.draftVersion) throw stale('The quote', before.draft, input);
    const { batches, sentence } = act(before.kept, before.draft, db);
    saveChanges(db, input.jobId, { batches, draftVersion: input.draftVersion + 1 }, now);
    writeHistory(db, { at: now, subject: 'quote draft', subjectId: input.jobId, deed: name, sentence, before: before.kept.batches });
    return { draft: quoteFacts(db, input.jobId, now).draft };
  });
}

const make = os.quotes.make.handler(({ input, context }) => makeQuote(context, input));

const versions = os.quotes.versions.handler(({ input, context }) =>
  context.store.read((db) => {
    if (!jobById(db, input.jobId, context.now())) throw notFound('This job');
    return { versions: versionsOf(db, input.jobId) };
  }),
);

const sent = os.quotes.sent.handler(({ input, context }) =>
  deed(context, 'quotes.sent', {}, (db) => ({ version: markSent(db, input.id, context.now()) })),
);

function markSent(db: WritableDb, id: string, now: number): QuoteVersion {
  const before = versionById(db, id);
  if (!before) throw notFound('This version of the quote');
  if (before.sentAt) return before;
  noteSent(db, id, now);
  writeHistory(db, {
    at: now,
    subject: 'job',
    subjectId: before.jobId,
    deed: 'quotes.sent',
    sentence: `Version ${before.number} of the quote was sent.`,
  });
  return versionById(db, id) ?? before;
}

const differences = os.quotes.differences.handler(({ input, context }) =>
  context.store.read((db) => {
    const { draft: current } = quoteFacts(db, input.jobId, context.now());
    const made = versionsOf(db, input.jobId);
    const numbered = (number: number): QuoteDraft => {
      const found = made.find((version) => version.number === number);
      if (!found) throw notFound(`Version ${number} of this quote`);
      return found.draft;
    };
    return { sentences: differencesOf(numbered(input.from), input.to === null ? current : numbered(input.to)) };
  }),
);

const cancellation = os.quotes.cancellation.handler(({ input, context }) =>
  context.store.read((db) => {
    const now = context.now();
    const at = input.at ? epochOf(input.at) : now;
    return owedBy(db, whole(db, input.jobId, now), { ...input, at, agreedAt: input.postponed ? now : null });
  }),
);

export const quotes = { draft, change, undo, make, versions, differences, cancellation, sent };
