import { execFileSync, spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Job } from '../../core/contract/jobs.ts';
import type { QuoteDraft, QuoteVersion } from '../../core/contract/quotes.ts';
import { builtProgram } from '../built.ts';
import { temporaryFolder } from '../store.ts';
import { DULUTH, SETUP } from './world.ts';

const MESSAGE =
  'Hi there,\n\ncan you run cameras for our sales meeting in Fargo 12-13 December 2031, call 8am Friday, wrap 6pm both days? ' +
  'Please reply by Thursday noon. We have 900 USD a day.\n\nThanks,\nIlse Marrow\nilse@seedcoop.example\n';

test('the main job by the command line alone: set up, paste, answer, quote, pencil, ink', () => {
  const folder = join(temporaryFolder(), 'data');
  // Each call is a program of its own on the same folder: whatever is found was kept.
  const call = (name: string, input: unknown = {}) => {
    const ran = spawnSync(process.execPath, [builtProgram('command-line.mjs'), name, '-', '--data', folder], {
      input: JSON.stringify(input),
      encoding: 'utf8',
    });
    expect([ran.status, ran.stderr.replace(/The data folder was not there.*\n/, '')]).toEqual([0, '']);
    return JSON.parse(ran.stdout);
  };
  call('setup.save', { fields: SETUP });
  const { fields }: { fields: object } = call('rates.defaults', { role: 'shoot', currency: 'USD', validFrom: '2026-01-01' });
  call('rates.save', { fields: { ...fields, dayRate: '1000.00' } });

  const { jobId }: { jobId: string } = call('inquiries.take', { text: MESSAGE });
  let { job }: { job: Job } = call('jobs.get', { id: jobId });
  expect(job).toMatchObject({
    state: 'inquiry',
    place: { name: 'Fargo', country: 'US' },
    role: 'shoot',
    budget: { amount: 900, currency: 'USD', per: 'day' },
  });
  expect(job.days.map((day) => [day.date, day.call, day.wrap])).toEqual([
    ['2031-12-12', '2031-12-12T08:00', '2031-12-12T18:00'],
    ['2031-12-13', '2031-12-13T08:00', '2031-12-13T18:00'],
  ]);

  const { way }: { way: { minutes: number } } = call('trips.setWay', {
    fields: { from: DULUTH, to: job.place, mode: 'drive', minutes: 245, distance: '253', note: '' },
  });
  expect(way.minutes).toBe(245);
  expect(call('fit.check', { jobId }).result.answer).toBe('free');

  const { draft }: { draft: QuoteDraft } = call('quotes.draft', { jobId });
  expect(draft.missing).toEqual([]);
  const shooting = draft.lines.find((line) => line.section === 'days');
  expect(shooting).toMatchObject({ quantity: '2', amount: { minor: 200_000, currency: 'USD' } });
  expect(draft.totals.net.minor).toBe(draft.lines.reduce((sum, line) => sum + line.amount.minor, 0));
  const changed: { draft: QuoteDraft } = call('quotes.change', {
    jobId,
    draftVersion: draft.draftVersion,
    changes: [{ op: 'set', id: shooting?.id, unitPrice: '1100.00' }],
  });
  expect(changed.draft.totals.gross.minor).toBe(draft.totals.gross.minor + 20_000);

  const made: { version: QuoteVersion; job: Job } = call('quotes.make', {
    jobId,
    jobVersion: job.version,
    draftVersion: changed.draft.draftVersion,
    pencil: true,
  });
  expect(made.job).toMatchObject({ state: 'pencilled', pencil: { state: 'live' }, total: changed.draft.totals.gross });
  expect(made.version.reply.text).toContain('Ilse');
  const { base64 }: { base64: string } = call('papers.read', { id: made.version.paper.id });
  const paper = join(temporaryFolder(), 'quote.pdf');
  writeFileSync(paper, Buffer.from(base64, 'base64'));
  const text = execFileSync('pdftotext', ['-layout', paper, '-'], { encoding: 'utf8' });
  expect(text).toContain(SETUP.name);
  expect(text).toMatch(/Shooting\s+2 days\s+1,100\.00\s+2,200\.00/);

  const { clocks }: { clocks: { kind: string; jobId: string }[] } = call('desk.see');
  expect(clocks).toContainEqual(expect.objectContaining({ kind: 'pencil', jobId }));
  ({ job } = call('jobs.ink', { id: jobId, version: made.job.version, who: 'Ilse Marrow', how: 'mail' }));
  expect(job).toMatchObject({ state: 'inked', ink: { who: 'Ilse Marrow', how: 'mail', quoteVersion: 1 } });
  const { stringline }: { stringline: { jobs: { firmness: string; title: string }[] } } = call('road.see', {
    from: '2031-12-01',
    days: 28,
  });
  expect(stringline.jobs).toMatchObject([{ firmness: 'ink' }]);
}, 60_000);
