/**
 * Jobs: each procedure joins the store with the rules of `core/jobs`. Whatever changes a job names the version it was read at.
 */
import type { JobRow } from '../../core/contract/jobs.ts';
import { againstInk } from '../../core/jobs/agreed.ts';
import { factsOf, factWords, newFacts, withChanges } from '../../core/jobs/facts.ts';
import { listed } from '../../core/jobs/listed.ts';
import { changedFacts, stillOpen } from '../../core/jobs/questions.ts';
import { holdsDates, openStage } from '../../core/jobs/state.ts';
import { declineFor } from '../../core/quotes/reply.ts';
import { toneOf } from '../../core/quotes/tone.ts';
import { epochOf, instantText } from '../../core/time/read.ts';
import { datesInWords, wallInWords } from '../../core/words/dates.ts';
import { daysOf } from '../../db/job-days.ts';
import { listedJobs } from '../../db/job-list.ts';
import { insertJob, momentAt, newestQuote, saveJobFacts, setInk, setStage } from '../../db/jobs.ts';
import { historyOf, writeHistory } from '../../db/keeping.ts';
import { endPencil, holdPencil } from '../../db/pencils.ts';
import { setupRow } from '../../db/setup.ts';
import { chooseDays, openDays } from './choose-days.ts';
import { deed } from './deed.ts';
import { makeDeliverables } from './deliverables-make.ts';
import { saveKnows, setClient } from './job-client.ts';
import { done, note, opened, whole } from './job-deed.ts';
import { agreed } from './agreed.ts';
import { agreedOn, tickAgreed } from './agreed-on.ts';
import { refuseDoubleInk } from './double-ink.ts';
import { agreeing, badFacts, homeZone, placedDays } from './job-facts.ts';
import { askedExpiry, usualExpiry } from './job-pencil.ts';
import { forget, learn, readToLearn } from './memory.ts';
import { os } from './os.ts';
import { refused } from './trouble.ts';

const list = os.jobs.list.handler(({ input, context }): { jobs: JobRow[] } => {
  const now = context.now();
  return { jobs: listed(context.store.read(listedJobs), { text: input.text ?? '', states: input.states, now }) };
});

const get = os.jobs.get.handler(({ input, context }) => ({ job: context.store.read((db) => whole(db, input.id, context.now())) }));

const add = os.jobs.add.handler(({ input, context }) =>
  deed(context, 'jobs.add', input, (db) => {
    const now = context.now();
    const facts = newFacts(input.facts);
    const home = homeZone(db, context);
    const receivedAt = input.received ? epochOf(input.received) : now;
    if (facts.replyBy) agreeing('facts.replyBy', facts.replyBy);
    const placed = placedDays(facts.days, facts.place, home);
    const id = insertJob(db, { facts, placed, message: null, questions: [], spans: [], receivedAt, receivedZone: home, now });
    writeHistory(db, { at: now, subject: 'job', subjectId: id, deed: 'jobs.add', sentence: 'Put on the books by hand.' });
    return { job: whole(db, id, now) };
  }),
);

const change = os.jobs.change.handler(async ({ input, context }) => {
  const reading = await readToLearn(context, input.id);
  return done(context, 'jobs.change', 'change', input, (db, job, now) => {
    const before = factsOf(job);
    const facts = withChanges(before, input.changes);
    const changed = changedFacts(before, input.changes);
    if (facts.replyBy) agreeing('changes.replyBy', facts.replyBy);
    if (job.state === 'inked') {
      const findings = againstInk(before, changed, facts);
      if (findings.length > 0)
        throw refused(`${job.title} is in ink.`, 'Leave what was agreed, or end it by its terms and make a new job.', findings);
    }
    if (holdsDates(job.state) && (facts.days.length === 0 || !facts.place))
      throw refused(`${job.title} holds dates at a place.`, 'Let the pencil go before taking them out.');
    const placed = placedDays(facts.days, facts.place, homeZone(db, context));
    if (job.state === 'inked') refuseDoubleInk(db, job, placed.days);
    saveJobFacts(db, job.id, facts, placed, stillOpen(job.questions, changed, input.settled), now);
    const said = changed.length > 0 ? `Changed: ${changed.map((name) => factWords[name]).join(', ')}.` : 'Questions were answered.';
    return [said, ...learn(db, job, reading, facts, now)].join(' ');
  });
});

const pencil = os.jobs.pencil.handler(({ input, context }) =>
  done(context, 'jobs.pencil', 'pencil', input, (db, job, now) => {
    const days = daysOf(db, job.id);
    const lastWrap = days.at(-1)?.wrapAt;
    if (lastWrap === undefined || !job.place)
      throw refused(`${job.title} has no ${job.place ? 'dates' : 'place'} to hold.`, `Give its ${job.place ? 'days' : 'place'} first.`);
    if (lastWrap <= now) throw refused(`The dates of ${job.title} are over.`, 'Change its days, or let it go.');
    const zone = homeZone(db, context);
    const expiry = input.expires ? askedExpiry(input.expires, days, now) : usualExpiry(db, job, days, zone, now);
    const extended = job.state === 'pencilled' && job.pencil?.state === 'live';
    // More time for a live pencil keeps its place in the order; one that ran out begins again, last.
    const pencilledAt = extended && job.pencil ? epochOf(job.pencil.pencilledAt) : now;
    const expires = momentAt(expiry.at, zone);
    holdPencil(db, { jobId: job.id, pencilledAt, expires }, now);
    setStage(db, job.id, 'pencilled', now);
    const held = `${extended ? 'Pencil extended' : job.state === 'ran out' ? 'Pencil renewed, last in order' : 'Pencilled'} until ${wallInWords(expires.wall)}.`;
    return expiry.caution ? `${held} ${expiry.caution}` : held;
  }),
);

const letGo = os.jobs.letGo.handler(({ input, context }) =>
  done(context, 'jobs.letGo', 'let go', input, (db, job, now) => {
    endPencil(db, job.id, 'let go', now);
    setStage(db, job.id, 'let go', now);
    return `Let go; ${datesInWords(job.days.map((day) => day.date))} free again.`;
  }),
);

const ink = os.jobs.ink.handler(({ input, context }) =>
  done(context, 'jobs.ink', 'ink', input, (db, job, now) => {
    const { quote, offer } = agreedOn(db, job, input);
    const at = input.at ? epochOf(input.at) : now;
    if (at > now) throw badFacts([{ field: 'at', sentence: `The yes is dated ${input.at}, after now. Give the moment it was said.` }]);
    refuseDoubleInk(db, job, daysOf(db, job.id));
    endPencil(db, job.id, 'inked', now);
    setInk(db, job.id, { who: input.who, how: input.how, at, quote: quote.number, offer: offer?.number ?? null }, now);
    if (offer) tickAgreed(db, job.id, offer, now);
    const named = offer ? `, offer ${offer.number} "${offer.name}"` : '';
    const promised = makeDeliverables(db, context, whole(db, job.id, now), now).sentence;
    return [`In ink: ${input.who} said yes to version ${quote.number} of the quote${named}, ${input.how}.`, promised].join(' ').trim();
  }),
);

const decline = os.jobs.decline.handler(({ input, context }) =>
  deed(context, 'jobs.decline', input, (db) => {
    const now = context.now();
    const job = opened(db, input, 'decline', now);
    endPencil(db, job.id, 'let go', now);
    setStage(db, job.id, 'declined', now);
    note(db, job, 'jobs.decline', 'Declined.', now);
    const { name = '', phone = '', email = '' } = setupRow(db)?.fields ?? {};
    const reply = declineFor({ setup: { name, phone, email }, job, tone: toneOf(job.message, job.contact.name) });
    return { job: whole(db, job.id, now), reply };
  }),
);

const reopen = os.jobs.reopen.handler(({ input, context }) =>
  done(context, 'jobs.reopen', 'reopen', input, (db, job, now) => {
    const stage = openStage(newestQuote(db, job.id) !== undefined);
    setStage(db, job.id, stage, now);
    return stage === 'quoted' ? 'Reopened; its quote stands, no dates are held.' : 'Reopened as an inquiry; no dates are held.';
  }),
);

const history = os.jobs.history.handler(({ input, context }) =>
  context.store.read((db) => {
    whole(db, input.id, context.now());
    return {
      entries: historyOf(db, 'job', input.id).map(({ id, at, deed: name, sentence }) => ({
        id,
        at: instantText(at),
        deed: name,
        sentence,
      })),
    };
  }),
);

export const jobs = {
  list,
  get,
  add,
  change,
  chooseDays,
  openDays,
  pencil,
  letGo,
  ink,
  ...agreed,
  decline,
  setClient,
  saveKnows,
  forget,
  reopen,
  history,
};
