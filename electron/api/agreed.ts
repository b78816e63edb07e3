/**
 * What stands beside the written yes: the paper of the terms, the copy that came back signed, and what was agreed since.
 */
import type { Amendment, Job, Paper } from '../../core/contract/jobs.ts';
import { namedBy } from '../../core/papers/file-type.ts';
import { filledTerms } from '../../core/papers/terms-text.ts';
import { agreedDraft } from '../../core/quotes/agreed.ts';
import { organisationOf } from '../../core/quotes/billed.ts';
import { workDates } from '../../core/quotes/facts.ts';
import { paperName } from '../../core/quotes/paper-name.ts';
import { epochOf, instantText, wallAt } from '../../core/time/read.ts';
import { wallInWords } from '../../core/words/dates.ts';
import { ended } from '../../core/words/ended.ts';
import { addAmendment, amendmentsOf } from '../../db/amendments.ts';
import { deedByKey } from '../../db/keeping.ts';
import { insertPaper } from '../../db/papers.ts';
import { clientById } from '../../db/people.ts';
import { inputsOf, versionsOf } from '../../db/quotes.ts';
import { cardById } from '../../db/rates.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import { keepPaper } from '../papers/keep.ts';
import { termsPaper } from '../papers/terms.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { givenFile } from './given-file.ts';
import { note, opened, whole } from './job-deed.ts';
import { badFacts, homeZone } from './job-facts.ts';
import { os } from './os.ts';
import { notFound, refused, stale } from './trouble.ts';
import { written } from './written.ts';

type OneJob = { id: string; version: number; key?: string | undefined };

const terms = os.jobs.terms.handler(async ({ input, context }) => makeTerms(context, input));

/** Like a quote's paper it is written before the books speak of it. */
async function makeTerms(context: Context, input: OneJob): Promise<{ job: Job; paper: Paper }> {
  const { store } = context;
  const { key } = input;
  if (key !== undefined && store.read((db) => deedByKey(db, key)))
    return deed(context, 'jobs.terms', input, () => {
      throw notFound('The result of this deed');
    });
  const now = context.now();
  const said = store.read((db) => termsOf(db, input, now));
  const kept = keepPaper(store.papers, await written(termsPaper(said.paper)));
  return deed(context, 'jobs.terms', input, (db) => {
    const again = termsOf(db, input, now);
    if (JSON.stringify(again.paper) !== JSON.stringify(said.paper)) throw stale('The terms', again.paper.text, said.paper.text);
    const { job } = again;
    const { number } = said.paper;
    const paper = insertPaper(db, {
      jobId: job.id,
      kind: 'terms',
      name: paperName(`Terms ${number}`, job.title),
      type: 'application/pdf',
      ...kept,
      madeAt: now,
    });
    note(db, job, 'jobs.terms', `The terms were put on paper, with version ${number} of the quote.`, now);
    return { job: whole(db, job.id, now), paper };
  });
}

type Said = { job: Job; paper: Parameters<typeof termsPaper>[0] };

/** The terms of the version agreed on, else of the newest. @throws REFUSED without a made version or my details */
function termsOf(db: ReadableDb, input: OneJob, now: number): Said {
  const job = opened(db, input, 'know', now);
  const made = versionsOf(db, job.id);
  const version = made.find(({ number }) => number === job.ink?.quoteVersion) ?? made[0];
  if (!version) throw refused(`${job.title} has no made quote.`, 'Make the quote first: its version fills the gaps of the terms.');
  const setup = setupRow(db)?.fields;
  if (!setup) throw refused('My details are not set up.', 'Fill in Setup first: a paper needs a sender.');
  const inputs = inputsOf(db, version.id);
  const client = (organisationOf(job, job.client ? clientById(db, job.client.id) : undefined) || job.contact.name).trim();
  const text = filledTerms(setup.termsText ?? '', {
    me: setup.name,
    home: setup.home,
    client,
    job,
    dates: workDates({ days: inputs?.days ? [...inputs.days] : job.days }),
    version: version.number,
    draft: agreedDraft(version.draft, job.ink?.offer ?? null),
    card: inputs?.card ?? cardById(db, version.draft.cardId) ?? null,
    lateInterestPercent: setup.lateInterestPercent ?? null,
  });
  const { number } = version;
  const date = wallAt(now, setup.home.zone).slice(0, 10);
  return { job, paper: { sender: setup, client, job: job.title, number, date, madeAt: instantText(now), text } };
}

const signed = os.jobs.signed.handler(({ input, context }) => {
  const { store } = context;
  const { bytes, kind } = givenFile(input.base64);
  // Nothing is written to the folder for a job that is not there, or was changed meanwhile.
  store.read((db) => opened(db, input, 'know', context.now()));
  const kept = keepPaper(store.papers, bytes, kind.type);
  return deed(context, 'jobs.signed', input, (db) => {
    const now = context.now();
    const job = opened(db, input, 'know', now);
    const before = job.papers.find(({ kind: of, hash }) => of === 'signed copy' && hash === kept.hash);
    if (before) throw refused(`${before.name} is kept already, the same to the last byte.`, 'Nothing more needs doing.');
    const paper = insertPaper(db, {
      jobId: job.id,
      kind: 'signed copy',
      name: namedBy(kind, input.name),
      type: kind.type,
      ...kept,
      madeAt: now,
    });
    note(db, job, 'jobs.signed', `The signed copy was kept: ${paper.name}.`, now);
    return { job: whole(db, job.id, now), paper };
  });
});

const amend = os.jobs.amend.handler(({ input, context }) =>
  deed(context, 'jobs.amend', input, (db): { job: Job; amendment: Amendment } => {
    const now = context.now();
    const job = opened(db, input, 'amend', now);
    const at = input.at ? epochOf(input.at) : now;
    refuseWrongMoment(job, at, now);
    const { what, who, how } = input;
    const amendment = addAmendment(db, { jobId: job.id, what, who, at, how, madeAt: now });
    const when = wallInWords(wallAt(at, homeZone(db, context)));
    note(db, job, 'jobs.amend', `Agreed since, with ${who}, ${how}, ${when}: ${ended(what)}`, now);
    return { job: whole(db, job.id, now), amendment };
  }),
);

function refuseWrongMoment(job: Job, at: number, now: number): void {
  const sentence =
    at > now
      ? 'The change is dated after now. Give the moment at which it was agreed.'
      : job.ink && at < epochOf(job.ink.at)
        ? 'The change is dated before the yes, which it would change. Give the moment at which it was agreed.'
        : null;
  if (sentence) throw badFacts([{ field: 'at', sentence }]);
}

const amendments = os.jobs.amendments.handler(({ input, context }) =>
  context.store.read((db) => {
    whole(db, input.id, context.now());
    return { amendments: amendmentsOf(db, input.id) };
  }),
);

export const agreed = { terms, signed, amend, amendments };
