/**
 * From ink to "originals may go" by the command line alone: each call is a program of its own, so that whatever is found was kept.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { xxhash128 } from 'hash-wasm';
import { expect, test } from 'vitest';
import type { Deliverable } from '../../../core/contract/deliverables.ts';
import type { Clock } from '../../../core/contract/desk.ts';
import type { HandOver } from '../../../core/contract/handovers.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import type { QuoteDraft, QuoteVersion } from '../../../core/contract/quotes.ts';
import type { Round } from '../../../core/contract/rounds.ts';
import { builtProgram } from '../../built.ts';
import { pagesOfText } from '../../papers/read-text.ts';
import { temporaryFolder } from '../../store.ts';
import { FARGO, SETUP } from '../world.ts';

const daysAgo = (days: number) => Temporal.Now.plainDateISO(SETUP.home.zone).subtract({ days });
const noonOf = (date: Temporal.PlainDate) => date.toZonedDateTime({ timeZone: SETUP.home.zone, plainTime: '12:00' }).toInstant().toString();

test('ink, edits made, a cut and its notes, handed over, approved, originals may go and are gone', async () => {
  const folder = join(temporaryFolder(), 'data');
  const ran = (name: string, input: unknown) =>
    spawnSync(process.execPath, [builtProgram('command-line.mjs'), name, '-', '--data', folder], {
      input: JSON.stringify(input),
      encoding: 'utf8',
    });
  const call = (name: string, input: unknown = {}) => {
    const { status, stdout, stderr } = ran(name, input);
    expect([status, stderr.replace(/The data folder was not there.*\n/, '')]).toEqual([0, '']);
    return JSON.parse(stdout);
  };
  const deliverable = (jobId: string): Deliverable => call('deliverables.of', { jobId }).deliverables[0];
  const stage = (of: Deliverable, kind: string) => {
    const { id, version } = of.stages.find((each) => each.kind === kind)!;
    return { id, version };
  };

  call('setup.save', { fields: SETUP });
  const { fields } = call('rates.defaults', { role: 'shoot', currency: 'USD', validFrom: daysAgo(400).toString() });
  call('rates.save', { fields: { ...fields, dayRate: '1000.00', editHour: '60.00' } });
  const date = daysAgo(150).toString();
  const facts = {
    title: 'Seed growers’ congress',
    organisation: 'Marrow Seed Co-op',
    contact: { name: 'Ilse Marrow', email: 'ilse@seedcoop.example', phone: '' },
    role: 'shoot',
    place: FARGO,
    days: [{ date, kind: 'shoot', call: `${date}T08:00`, wrap: `${date}T18:00` }],
    replyBy: null,
    budget: null,
    notes: '',
    deliverables: ['Highlights'],
    edits: [{ what: 'Highlights', due: daysAgo(120).toString(), hours: '8' }],
  };
  let { job }: { job: Job } = call('jobs.add', { facts });
  const { draft }: { draft: QuoteDraft } = call('quotes.draft', { jobId: job.id });
  expect(draft.missing).toEqual([]);
  const made: { version: QuoteVersion; job: Job } = call('quotes.make', {
    jobId: job.id,
    jobVersion: job.version,
    draftVersion: draft.draftVersion,
    pencil: false,
  });
  ({ job } = call('jobs.ink', { id: job.id, version: made.job.version, who: 'Ilse Marrow', how: 'mail' }));

  // The ink made what was promised.
  let edit = deliverable(job.id);
  expect(edit).toMatchObject({ name: 'Highlights', due: daysAgo(120).toString(), state: 'open', off: false });
  const planned = call('deliverables.plan').plan.edits.find((each: { deliverableId: string }) => each.deliverableId === edit.id);
  expect(planned.hoursLeft).toBeGreaterThan(0);

  const { round }: { round: Round } = call('rounds.send', {
    deliverableId: edit.id,
    what: 'rough cut',
    closes: stage(edit, 'rough cut').id,
    at: noonOf(daysAgo(135)),
  });
  call('rounds.notesIn', {
    id: round.id,
    version: round.version,
    text: '00:12 the name is Marrow\n01:02 shorter',
    rate: '25',
    at: noonOf(daysAgo(134)),
  });

  const final = join(temporaryFolder(), 'final');
  mkdirSync(join(final, 'Stills'), { recursive: true });
  writeFileSync(join(final, 'Highlights.mov'), 'the film');
  writeFileSync(join(final, 'Stills', '1.png'), 'a still');
  const keep = {
    deliverableId: edit.id,
    how: 'link',
    where: 'https://files.lakeline.example/seed',
    at: noonOf(daysAgo(100)),
    originals: 'kept until',
    originalsUntil: daysAgo(1).toString(),
  };
  const refused = ran('handovers.keep', { ...keep, from: { paths: [join(final, 'none')] } });
  expect([refused.status, JSON.parse(refused.stdout).code]).toEqual([2, 'BAD_INPUT']);
  let { handOver }: { handOver: HandOver } = call('handovers.keep', { ...keep, from: { paths: [final] } });
  expect(handOver.files).toEqual([
    { name: 'Highlights.mov', bytes: 8, hash: await xxhash128('the film') },
    { name: 'Stills/1.png', bytes: 7, hash: await xxhash128('a still') },
  ]);
  const { base64 } = call('papers.read', { id: handOver.paper?.id });
  const paper = (await pagesOfText(Buffer.from(base64, 'base64'))).join(' ');
  for (const { name, hash } of handOver.files) expect(paper).toContain(`${name} ${hash}`);

  edit = deliverable(job.id);
  expect(edit.state).toBe('delivered');
  const clocks = (): string[] => call('desk.see').clocks.map(({ kind, sentence }: Clock) => `${kind}: ${sentence}`);
  expect(clocks()).toEqual(
    expect.arrayContaining(['approval: Highlights: handed over, not approved', 'originals: Highlights: originals may go now']),
  );

  call('deliverables.stageDone', stage(edit, 'approved'));
  expect(deliverable(job.id).state).toBe('approved');
  expect(clocks()).not.toContain('approval: Highlights: handed over, not approved');
  expect(call('deliverables.plan').plan.edits).toEqual([]);

  [handOver] = call('handovers.of', { deliverableId: edit.id }).handOvers;
  expect(handOver.originals).toMatchObject({ mayGo: true, goneAt: null });
  ({ handOver } = call('handovers.originalsGone', { id: handOver.id, version: handOver.version }));
  expect(handOver.originals.mayGo).toBe(false);
  expect(clocks().filter((clock) => clock.startsWith('originals'))).toEqual([]);
  expect(call('find.search', { text: 'delivery note' }).found.map(({ title }: { title: string }) => title)).toContainEqual(
    expect.stringContaining('Delivery note'),
  );
  expect(call('papers.check')).toMatchObject({ lost: [], orphans: [] });
}, 240_000);
