/**
 * Beside the written yes: terms on paper from the frozen version, the signed copy, and what was agreed since.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import type { Job } from '../../../core/contract/jobs.ts';
import { readKept } from '../../../electron/papers/keep.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { papers } from '../../../electron/api/papers.ts';
import { quotes } from '../../../electron/api/quotes.ts';
import { rates } from '../../../electron/api/rates.ts';
import { setup } from '../../../electron/api/setup.ts';
import { pagesOfText } from '../../papers/read-text.ts';
import { FARGO, refusal, SETUP, world } from '../world.ts';

const NOW = '2026-12-01T15:00:00Z';

async function quoted(terms: object = {}) {
  const w = await world(NOW);
  const at = { context: w.context };
  const { fields } = await call(rates.defaults, { role: 'shoot', currency: 'USD', validFrom: '2026-01-01' }, at);
  await call(rates.save, { fields: { ...fields, dayRate: '1000.00', terms: { ...fields.terms, ...terms } } }, at);
  const days = [{ date: '2026-12-22', kind: 'shoot' as const, call: '2026-12-22T09:00', wrap: '2026-12-22T19:00' }];
  const { job } = await call(jobs.add, { facts: { title: 'League final', organisation: 'Fen Robotics', place: FARGO, days } }, at);
  const made = await call(quotes.make, { jobId: job.id, jobVersion: job.version, draftVersion: 0, pencil: false }, at);
  return { w, at, job: made.job };
}
const one = ({ id, version }: Job) => ({ id, version });
const ink = async (at: Awaited<ReturnType<typeof quoted>>['at'], job: Job): Promise<Job> =>
  (await call(jobs.ink, { ...one(job), who: 'Ada Byrd', how: 'mail' }, at)).job;

/** The words on a kept paper. */
async function wordsOf(at: Awaited<ReturnType<typeof quoted>>['at'], id: string): Promise<string> {
  const { base64 } = await call(papers.read, { id }, at);
  return (await pagesOfText(new Uint8Array(Buffer.from(base64, 'base64')))).join(' ');
}

test('terms on paper say the figures that were frozen, whatever the card and Setup say by then', async () => {
  const { at, job } = await quoted();
  const agreed = await ink(at, job);
  const [version] = (await call(quotes.versions, { jobId: job.id }, at)).versions;
  const { cards } = await call(rates.list, {}, at);
  const [card] = cards;
  if (!card || !version) throw new Error('no card');
  const { id, version: was, ...fields } = card;
  await call(rates.save, { id, version: was, fields: { ...fields, dayHours: '8', terms: { ...fields.terms, payDays: 60 } } }, at);

  const { job: after, paper } = await call(jobs.terms, one(agreed), at);
  expect(paper).toMatchObject({ kind: 'terms', name: 'Terms 1, League final.pdf' });
  expect(after.papers.map(({ kind }) => kind)).toEqual(['terms', 'quote']);
  const words = await wordsOf(at, paper.id);
  expect(words).toContain('Lakeline Pictures works for Fen Robotics: League final, Tue 22 December 2026, Fargo, North Dakota.');
  expect(words).toContain('A day has 10 h.');
  expect(words).toContain('Invoices are due within 14 days of their date.');
  expect(words).toContain('not legal advice');
});

test('my own text is what is printed; an old version of the job is refused, and a repeated key makes one paper', async () => {
  const { at, job } = await quoted();
  await call(setup.save, { version: 1, fields: { ...SETUP, termsText: 'Between us\n{me} and {client}, {total}.' } }, at);
  const key = crypto.randomUUID();
  const first = await call(jobs.terms, { ...one(job), key }, at);
  const again = await call(jobs.terms, { ...one(job), key }, at);
  expect(again.paper).toEqual(first.paper);
  expect(again.job.papers.filter(({ kind }) => kind === 'terms')).toHaveLength(1);
  expect(await wordsOf(at, first.paper.id)).toMatch(/Lakeline Pictures and Fen Robotics, USD [\d,]+\.\d\d\./);
  expect(await refusal(call(jobs.terms, { ...one(job), version: job.version + 1 }, at))).toMatchObject({ code: 'STALE' });
});

test('without a made version there is nothing to fill the gaps with', async () => {
  const { context } = await world(NOW);
  const { job } = await call(jobs.add, { facts: { title: 'Bare' } }, { context });
  expect(await refusal(call(jobs.terms, one(job), { context }))).toMatchObject({ code: 'REFUSED', what: 'Bare has no made quote.' });
});

const PNG = Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==', 'base64');

test('the signed copy is kept by what its bytes say, once, and read back whole', async () => {
  const { w, at, job } = await quoted();
  const base64 = PNG.toString('base64');
  const { paper, job: after } = await call(jobs.signed, { ...one(job), name: 'Signed by Ada.pdf', base64 }, at);
  expect(paper).toMatchObject({ kind: 'signed copy', name: 'Signed by Ada.png', bytes: PNG.length });
  expect(Buffer.from(readKept(w.context.store.papers, paper.hash, 'image/png') ?? [])).toEqual(PNG);
  expect((await call(papers.read, { id: paper.id }, at)).base64).toBe(base64);
  expect(await refusal(call(jobs.signed, { ...one(after), name: 'Again.png', base64 }, at))).toMatchObject({
    code: 'REFUSED',
    what: expect.stringContaining('Signed by Ada.png is kept already'),
  });
});

test.each([
  ['a text', Buffer.from('Yes, agreed.').toString('base64'), 'is no PDF and no JPEG'],
  ['no base64', '%%%%', 'is not base64'],
])('%s is refused as a signed copy, and no paper is on the books', async (_, base64, sentence) => {
  const { at, job } = await quoted();
  const refused = await refusal(call(jobs.signed, { ...one(job), name: 'Yes.pdf', base64 }, at));
  expect(refused).toMatchObject({ code: 'BAD_INPUT', fields: [{ field: 'base64', sentence: expect.stringContaining(sentence) }] });
  expect((await call(jobs.get, { id: job.id }, at)).job.papers.map(({ kind }) => kind)).toEqual(['quote']);
});

test('what was agreed since stands in its order with who, when and how, and in the history', async () => {
  const { w, at, job } = await quoted();
  const agreed = await ink(at, job);
  w.at('2026-12-03T15:00:00Z');
  const first = { what: 'A second camera on the balcony, 400.00', who: 'Ada Byrd', how: 'phone', at: '2026-12-03T14:00:00Z' };
  await call(jobs.amend, { ...one(agreed), ...first }, at);
  await call(jobs.amend, { ...one(agreed), what: 'Call at 08:30.', who: 'Ivo Lund', how: 'mail', at: '2026-12-02T09:00:00Z' }, at);
  const { amendments } = await call(jobs.amendments, { id: job.id }, at);
  expect(amendments.map(({ what }) => what)).toEqual(['Call at 08:30.', first.what]);
  expect(amendments[1]).toMatchObject({ ...first, madeAt: '2026-12-03T15:00:00Z' });
  const [, before] = (await call(jobs.history, { id: job.id }, at)).entries;
  expect(before?.sentence).toBe('Agreed since, with Ada Byrd, phone, Thu 3 December 2026, 08:00: A second camera on the balcony, 400.00.');
});

test('nothing is amended before the yes, before its moment or after now', async () => {
  const { w, at, job } = await quoted();
  const asked = { what: 'Half a day more', who: 'Ada Byrd', how: 'mail' };
  expect(await refusal(call(jobs.amend, { ...one(job), ...asked }, at))).toMatchObject({
    code: 'REFUSED',
    todo: expect.stringContaining('change the quote'),
  });
  const agreed = await ink(at, job);
  w.at('2026-12-03T15:00:00Z');
  for (const [when, word] of [
    ['2026-12-01T14:59:59Z', 'before the yes'],
    ['2026-12-03T15:00:01Z', 'after now'],
  ] as const)
    expect(await refusal(call(jobs.amend, { ...one(agreed), ...asked, at: when }, at))).toMatchObject({
      code: 'BAD_INPUT',
      fields: [{ field: 'at', sentence: expect.stringContaining(word) }],
    });
  expect((await call(jobs.amendments, { id: job.id }, at)).amendments).toEqual([]);
});
