import type { z } from 'zod';
import type { DraftChange, QuoteDraft, QuoteVersion } from '../../core/contract/quotes.ts';
import { amountOf } from '../../core/money/money.ts';
import { cancellationOf, type CancelInput } from '../../core/quotes/cancellation.ts';
import { differencesOf } from '../../core/quotes/differences.ts';
import { fixedLines, unknownLines } from '../../core/quotes/known.ts';
import { epochOf, wallAt } from '../../core/time/read.ts';
import { daysOf } from '../../db/job-days.ts';
import { noteSent, saveChanges, versionById, versionsOf, type KeptChanges } from '../../db/quotes.ts';
import { jobById } from '../../db/jobs.ts';
import { writeHistory } from '../../db/keeping.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { holidayDates } from './holidays.ts';
import { os } from './os.ts';
import { quoteFacts } from './quote-draft.ts';
import { makeQuote } from './quote-make.ts';
import { badInput, notFound, refused, stale } from './trouble.ts';

const draft = os.quotes.draft.handler(({ input, context }) =>
  context.store.read((db) => ({ draft: quoteFacts(db, input.jobId, context.now()).draft })),
);

const change = os.quotes.change.handler(({ input, context }) =>
  redrafted(context, 'quotes.change', input, ({ batches }, before) => {
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
type Redraft = (kept: KeptChanges, before: QuoteDraft) => { batches: KeptChanges['batches']; sentence: string };

/** Change what is kept of a draft, against the version that was read; the answer is the draft as it is priced then. */
function redrafted(context: Context, name: string, input: DraftInput, act: Redraft): { draft: QuoteDraft } {
  return deed(context, name, {}, (db) => {
    const now = context.now();
    const before = quoteFacts(db, input.jobId, now);
    if (before.kept.draftVersion !== input.draftVersion) throw stale('The quote', before.draft, input);
    const { batches, sentence } = act(before.kept, before.draft);
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
    const job = jobById(db, input.jobId, now);
    if (!job) throw notFound('This job');
    const made = versionsOf(db, input.jobId);
    const agreed = made.find((version) => version.number === job.ink?.quoteVersion) ?? made[0];
    const firstCallAt = daysOf(db, input.jobId)[0]?.callAt;
    if (!agreed || firstCallAt === undefined)
      throw refused(
        `${job.title} has no made quote.`,
        'A cancellation owes what the frozen quote says; without one, nothing is owed by its terms.',
      );
    const { currency } = agreed.draft;
    const at = input.at ? epochOf(input.at) : now;
    return {
      version: agreed.number,
      cancellation: cancellationOf({
        draft: agreed.draft,
        firstCallAt,
        at,
        home: homeCalendar(db, agreed.draft, [at, firstCallAt]),
        postponed: input.postponed ?? false,
        bound: amountOf(input.bound ?? '0', currency),
        depositPaid: amountOf(input.depositPaid ?? '0', currency),
      }),
    };
  }),
);

/** My home's clock, and its holidays where the terms count business days. */
function homeCalendar(db: ReadableDb, { terms }: QuoteDraft, between: readonly [number, number]): CancelInput['home'] {
  const home = setupRow(db)?.fields.home;
  if (!home) throw refused('My details are not set up.', 'Fill in Setup first: business days are counted at home.');
  const [from, to] = between.map((instant) => wallAt(instant, home.zone)) as [string, string];
  return { zone: home.zone, holidays: terms.cancelBy === 'business days' ? holidayDates(home, from, to) : new Set() };
}

export const quotes = { draft, change, undo, make, versions, differences, cancellation, sent };
