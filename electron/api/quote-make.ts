/**
 * Making a quote: the draft is priced and frozen, its paper written, and only then, in one transaction, numbered and put on the books.
 */
import type { Job } from '../../core/contract/jobs.ts';
import type { QuoteVersion } from '../../core/contract/quotes.ts';
import { refusalOf } from '../../core/jobs/state.ts';
import { otherPayer } from '../../core/quotes/billed.ts';
import { quotePaperName } from '../../core/quotes/paper-name.ts';
import { replyFor } from '../../core/quotes/reply.ts';
import { toneOf } from '../../core/quotes/tone.ts';
import { formatMoney } from '../../core/money/format.ts';
import { epochOf, instantText } from '../../core/time/read.ts';
import { wallInWords } from '../../core/words/dates.ts';
import { holdPencil, jobById, newestQuote, setStage } from '../../db/jobs.ts';
import { deedByKey, writeHistory } from '../../db/keeping.ts';
import { insertPaper } from '../../db/papers.ts';
import { insertVersion, versionById } from '../../db/quotes.ts';
import type { WritableDb } from '../../db/store.ts';
import { keepPaper, type Kept } from '../papers/keep.ts';
import { quotePaper } from '../papers/quote.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { quoteFacts, type QuoteFacts } from './quote-draft.ts';
import { notFound, refused, stale } from './trouble.ts';
import { written } from './written.ts';

export type MakeInput = { jobId: string; jobVersion: number; draftVersion: number; pencil: boolean; key?: string | undefined };
type Made = { version: QuoteVersion; job: Job };

/** The facts that a version is frozen from, checked against what was asked for. */
type Frozen = QuoteFacts & { number: number; now: number };

/**
 * Freeze the draft as the next version.
 * @throws STALE when job or draft moved since they were read, also while the paper was being written; REFUSED while facts are missing
 */
export async function makeQuote(context: Context, input: MakeInput): Promise<Made> {
  const { key } = input;
  if (key !== undefined && context.store.read((db) => deedByKey(db, key)))
    return deed(context, 'quotes.make', input, () => {
      throw notFound('The result of this deed');
    });

  const now = context.now();
  const frozen = context.store.read((db) => freeze(db, input, now));
  // Writing the paper takes a moment and nothing may wait inside a transaction: it lies in its folder, under its hash, before the books speak of it.
  const paper = keepPaper(context.store.papers, await paperOf(frozen));
  return deed(context, 'quotes.make', input, (db) => {
    const again = freeze(db, input, now);
    const moved = again.number !== frozen.number || again.client?.version !== frozen.client?.version;
    if (moved || JSON.stringify(again.draft) !== JSON.stringify(frozen.draft)) throw stale('The quote', again.draft, frozen.draft);
    return putOnBooks(db, frozen, paper, input.pencil);
  });
}

function freeze(db: Parameters<typeof quoteFacts>[0], input: MakeInput, now: number): Frozen {
  const facts = quoteFacts(db, input.jobId, now);
  const { job, draft, days } = facts;
  if (job.version !== input.jobVersion) throw stale(job.title, job, input);
  if (draft.draftVersion !== input.draftVersion) throw stale('The quote', draft, input);
  const refusal = refusalOf(input.pencil ? 'pencil' : 'change', job.state, job.title);
  if (refusal) throw refused(refusal.what, refusal.todo);
  if (draft.missing.length > 0) throw refused('The quote cannot be made yet.', 'Fill in what is missing, then make it.', draft.missing);
  if (input.pencil && (days.at(-1)?.wrapAt ?? 0) <= now)
    throw refused(`The dates of ${job.title} are over.`, 'Make the quote without a pencil, or change the days.');
  return { ...facts, number: (newestQuote(db, job.id)?.number ?? 0) + 1, now };
}

function paperOf({ setup, job, client, draft, number, now }: Frozen): Promise<Uint8Array> {
  return written(quotePaper({ setup, job, client, draft, number, madeAt: instantText(now) }));
}

function putOnBooks(db: WritableDb, { job, client, draft, setup, inputs, number, now }: Frozen, paper: Kept, pencil: boolean): Made {
  const live = job.pencil?.state === 'live' ? job.pencil : null;
  const until = pencil ? draft.pencilUntil : (live?.expires ?? null);
  const reply = replyFor({
    setup,
    job,
    draft,
    number,
    pencil: until,
    questions: job.questions,
    payer: otherPayer(job, client),
    tone: toneOf(job.message, job.contact.name),
  });
  const { id: paperId } = insertPaper(db, {
    jobId: job.id,
    kind: 'quote',
    name: quotePaperName(job.title, number),
    type: 'application/pdf',
    ...paper,
    madeAt: now,
  });
  const id = insertVersion(db, { jobId: job.id, number, madeAt: now, draft, reply, paperId, inputs });
  if (pencil && until) {
    // More time for a live pencil keeps its place in the order; one that ran out begins again, last.
    holdPencil(db, { jobId: job.id, pencilledAt: live ? epochOf(live.pencilledAt) : now, expires: until }, now);
    setStage(db, job.id, 'pencilled', now);
  } else if (job.state === 'inquiry') setStage(db, job.id, 'quoted', now);

  const held = pencil && until ? ` The dates are pencilled until ${wallInWords(until.wall)}.` : '';
  writeHistory(db, {
    at: now,
    subject: 'job',
    subjectId: job.id,
    deed: 'quotes.make',
    sentence: `Version ${number} of the quote was made: ${formatMoney(draft.totals.gross, { code: true })}.${held}`,
  });
  const version = versionById(db, id);
  const after = jobById(db, job.id, now);
  if (!version || !after) throw notFound('The version that was just made');
  return { version, job: after };
}
