/**
 * Handing over: what is read, kept, put on paper, taken back, and when the originals may go.
 */
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { call } from '@orpc/server';
import { xxhash128 } from 'hash-wasm';
import { describe, expect, test } from 'vitest';
import type { HandOver, Reading } from '../../../core/contract/handovers.ts';
import { markStages, stagesOf } from '../../../db/rounds.ts';
import { desk } from '../../../electron/api/desk.ts';
import { handovers } from '../../../electron/api/handovers.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { papers } from '../../../electron/api/papers.ts';
import { rounds } from '../../../electron/api/rounds.ts';
import { callProcedure } from '../../../electron/api/serve.ts';
import { pagesOfText } from '../../papers/read-text.ts';
import { temporaryFolder } from '../../store.ts';
import { refusal } from '../world.ts';
import { promised, type Promised } from './promised.ts';

const DELIVERED = '2027-01-06T16:00:00Z';
const FILES = { 'Highlights.mov': 'the film', 'Stills/1.png': 'a still', 'Stills/2.png': 'another still' };

function folderOf(files: Record<string, string> = FILES): string {
  const folder = temporaryFolder();
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
}

async function ready(more: Parameters<typeof promised>[0] = {}): Promise<Promised> {
  const p = await promised(more);
  p.at.at(DELIVERED);
  return p;
}
const of = ({ edit, at: { context } }: Promised) => call(handovers.of, { deliverableId: edit }, { context });
const LINK = { how: 'link', where: 'https://files.lakeline.example/seed', originals: 'kept until', originalsUntil: '2027-04-06' } as const;
const keep = (p: Promised, more: object = {}) =>
  call(handovers.keep, { deliverableId: p.edit, from: { paths: [folderOf()] }, ...LINK, ...more }, { context: p.at.context });
async function kept(p: Promised, more: object = {}): Promise<HandOver> {
  return (await keep(p, more)).handOver;
}
const done = ({ edit, at: { context } }: Promised) =>
  context.store.read((db) => stagesOf(db, edit).flatMap(({ kind, doneAt }) => (doneAt === null ? [] : [kind])));
const history = async ({ job, at: { context } }: Promised) =>
  (await call(jobs.history, { id: job.id }, { context })).entries.map(({ sentence }) => sentence);

/** Begin to read and wait until it has ended. */
async function read(p: Promised, paths: string[]): Promise<Reading> {
  const { context } = p.at;
  const begun = await call(handovers.begin, { deliverableId: p.edit, paths }, { context });
  expect(begun.reading).toMatchObject({ state: 'reading', deliverableId: p.edit });
  let { reading } = begun;
  while (reading.state === 'reading') {
    await new Promise((resolve) => setImmediate(resolve));
    ({ reading } = await call(handovers.progress, { run: reading.run }, { context }));
  }
  return reading;
}

describe('kept', () => {
  test('from a reading: its list, the mark and the paper stand together', async () => {
    const p = await ready();
    const reading = await read(p, [folderOf()]);
    expect(reading).toMatchObject({ state: 'done', files: 3, ofFiles: 3, bytes: 28, of: 28, sentence: 'Read: 3 files, 28 bytes.' });
    const handOver = await kept(p, { from: { run: reading.run }, note: 'Music is cleared for the web.' });
    // A list that is on the books is not handed over again by mistake.
    expect((await of(p)).reading).toBeNull();
    expect((await refusal(keep(p, { from: { run: reading.run } }))).todo).toBe('Read the files again.');
    expect(handOver.files).toEqual([
      { name: 'Highlights.mov', bytes: 8, hash: await xxhash128('the film') },
      { name: 'Stills/1.png', bytes: 7, hash: await xxhash128('a still') },
      { name: 'Stills/2.png', bytes: 13, hash: await xxhash128('another still') },
    ]);
    expect(handOver).toMatchObject({
      how: 'link',
      at: DELIVERED,
      bytes: 28,
      hashKind: 'xxh128',
      takenBack: null,
      originals: { kind: 'kept until', until: '2027-04-06', goneAt: null, mayGo: false },
      sentence: 'By link on Wed 6 January 2027: 3 files, 28 bytes.',
    });
    expect(done(p)).toEqual(['ingest', 'selects', 'rough cut', 'round', 'fine cut', 'round', 'picture lock', 'delivered']);
    expect((await history(p))[0]).toBe('Highlights was handed over by link: 3 files.');
    const paper = handOver.paper!;
    expect(paper).toMatchObject({ kind: 'delivery note', name: 'Delivery note 2027-01-06, Highlights.pdf' });
    const { base64 } = await call(papers.read, { id: paper.id }, { context: p.at.context });
    const text = (await pagesOfText(Buffer.from(base64, 'base64'))).join(' ');
    for (const { name, hash } of handOver.files) expect(text).toContain(`${name} ${hash}`);
    expect(text).toContain('kept until 6 April 2027');
    expect(text).toContain('Music is cleared for the web.');
    expect(text).toContain('frame rate 29.97 drop, ProRes 422');
    expect(handOver.message.text).toContain('https://files.lakeline.example/seed');
    expect((await call(jobs.get, { id: p.job.id }, { context: p.at.context })).job.papers.map(({ kind }) => kind)).toContain(
      'delivery note',
    );
  });

  test('from paths in one call, as the command line does', async () => {
    const p = await ready();
    expect(await kept(p, { how: 'disk', where: 'Seed 1 of 1' })).toMatchObject({ how: 'disk', where: 'Seed 1 of 1', files: { length: 3 } });
  });

  test('twice with one key is once', async () => {
    const p = await ready();
    const input = { key: crypto.randomUUID(), from: { paths: [folderOf()] } };
    const first = await kept(p, input);
    expect(await kept(p, input)).toEqual(first);
    expect((await of(p)).handOvers).toHaveLength(1);
    expect((await refusal(keep(p, { ...input, where: 'https://elsewhere.example' }))).what).toContain('used for something else');
  });

  test('the date that late notes moved stands on the paper', async () => {
    const p = await promised();
    const { context } = p.at;
    p.at.at('2026-12-15T16:00:00Z');
    const { round } = await call(rounds.send, { deliverableId: p.edit, what: 'rough cut' }, { context });
    p.at.at('2026-12-22T16:00:00Z');
    await call(rounds.notesIn, { id: round.id, version: round.version, text: '00:10 shorter' }, { context });
    p.at.at(DELIVERED);
    const [moved] = (await of(p)).moved;
    expect(moved).toMatch(/^Notes on the rough cut were due on Fri 18 December 2026 and came on Tue 22 December 2026/);
    const { base64 } = await call(papers.read, { id: (await kept(p)).paper!.id }, { context });
    expect((await pagesOfText(Buffer.from(base64, 'base64'))).join(' ')).toContain(moved);
  });

  test('what the terms say of originals is proposed', async () =>
    expect((await of(await ready())).proposed).toEqual({
      originals: 'kept until',
      until: '2027-04-06',
      sentence: 'The terms say: Camera files are kept for 90 days after delivery, then deleted unless we agree otherwise.',
    }));
});

describe('a reading', () => {
  test('tells what is left out, and what could not be read; such a list is not kept', async () => {
    const p = await ready();
    const folder = folderOf({ ...FILES, '.DS_Store': 'x' });
    const whole = await read(p, [folder]);
    expect(whole.leftOut).toEqual([{ name: '.DS_Store', sentence: 'is kept there by a system for itself' }]);
    const deep = join(folder, ...Array.from({ length: 40 }, () => 'd'));
    mkdirSync(deep, { recursive: true });
    const reading = await read(p, [folder]);
    expect(reading.state).toBe('incomplete');
    expect(reading.sentence).toBe('1 file of 4 could not be read. Put that right and read them again.');
    const { code, findings } = await refusal(keep(p, { from: { run: reading.run } }));
    expect([code, findings?.[0]]).toEqual(['REFUSED', expect.stringMatching(/lies more than 32 folders deep\.$/)]);
    expect((await of(p)).handOvers).toEqual([]);
  });

  test('is stopped: nothing is kept, nothing written, and the next one runs', async () => {
    const p = await ready();
    const { context } = p.at;
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'long.mov'), Buffer.alloc(30_000_000));
    const written = readdirSync(context.store.papers);
    const { reading } = await call(handovers.begin, { deliverableId: p.edit, paths: [folder] }, { context });
    const again = await refusal(call(handovers.begin, { deliverableId: p.edit, paths: [folder] }, { context }));
    expect([again.code, again.what]).toEqual(['REFUSED', 'Other files are being read already.']);
    expect((await refusal(keep(p, { from: { run: reading.run } }))).what).toBe('The files are still being read.');
    const { reading: stopped } = await call(handovers.stop, { run: reading.run }, { context });
    expect(stopped.state).toBe('stopped');
    expect(stopped.sentence).toMatch(/Nothing was kept\.$/);
    expect((await refusal(keep(p, { from: { run: reading.run } }))).what).toBe('Reading was stopped, so that the list is not whole.');
    expect((await of(p)).reading?.state).toBe('stopped');
    expect(readdirSync(context.store.papers)).toEqual(written);
    expect((await read(p, [folderOf()])).state).toBe('done');
    expect((await call(handovers.stop, { run: reading.run }, { context })).reading.state).toBe('stopped');
  });

  test('of another deliverable is not kept, and one from before a start is not known', async () => {
    const p = await ready();
    const unknown = '01890000-0000-7000-8000-000000000001';
    expect((await refusal(keep(p, { from: { run: unknown } }))).todo).toBe('Read the files again.');
    expect((await refusal(call(handovers.progress, { run: unknown }, { context: p.at.context }))).code).toBe('REFUSED');
    expect((await refusal(call(handovers.of, { deliverableId: unknown }, { context: p.at.context }))).code).toBe('NOT_FOUND');
  });
});

describe('what cannot be meant', () => {
  test('paths, each by its number', async () => {
    const p = await ready();
    const { code, fields } = await refusal(keep(p, { from: { paths: [folderOf(), 'films/a.mov'] } }));
    expect([code, fields]).toEqual(['BAD_INPUT', [{ field: 'paths[1]', sentence: expect.stringContaining('is no whole path') }]]);
    const none = await refusal(keep(p, { from: { paths: [join(temporaryFolder(), 'none')] } }));
    expect([none.code, none.what]).toEqual([
      'BAD_INPUT',
      'paths[0] leads to nothing; check whether the disk is connected and the name is right.',
    ]);
    const reading = await read(p, [temporaryFolder()]);
    expect([reading.state, reading.sentence]).toEqual(['refused', 'What was given gave no file to hand over.']);
    expect((await refusal(keep(p, { from: { run: reading.run } }))).what).toBe('paths gave no file to hand over.');
  });

  test.each([
    [{ at: '2027-01-06T16:00:01Z' }, /dated after now/],
    [{ originalsUntil: '2027-01-05' }, /before they are handed over/],
    [{ originals: 'never kept' }, /only for originals that are kept/],
  ])('%j', async (more, what) => {
    const p = await ready();
    const refused = await refusal(keep(p, more));
    expect([refused.code, refused.what]).toEqual(['BAD_INPUT', expect.stringMatching(what)]);
    expect((await of(p)).handOvers).toEqual([]);
    expect(done(p)).toEqual([]);
  });

  test('a link that is empty or holds what cannot be seen, and a taking back without a reason', async () => {
    const p = await ready();
    const { context } = p.at;
    const said = async (name: string, input: object) => (await refusal(callProcedure(context, name, input))).what;
    const from = { paths: [folderOf()] };
    expect(await said('handovers.keep', { deliverableId: p.edit, from, ...LINK, where: '  ' })).toMatch(/^where is empty; give the link/);
    expect(await said('handovers.keep', { deliverableId: p.edit, from, ...LINK, where: 'https://a.example/\u202egpj' })).toMatch(
      /^where holds characters that cannot be seen/,
    );
    const { id, version } = await kept(p);
    expect(await said('handovers.takeBack', { id, version, why: ' ' })).toBe('why is empty; say why it is taken back.');
  });

  test('a deliverable that was taken off', async () => {
    const p = await ready({ edit: { offAt: 1 } });
    expect(await refusal(keep(p))).toMatchObject({ code: 'REFUSED', what: 'Highlights was taken off.' });
  });
});

describe('originals', () => {
  const gone = (p: Promised, { id, version }: HandOver, more: object = {}) =>
    call(handovers.originalsGone, { id, version, ...more }, { context: p.at.context }).then(({ handOver }) => handOver);

  test('are kept to the end of their date, and may go the day after at home', async () => {
    const p = await ready();
    const handOver = await kept(p);
    // 23:30 at home on the last date.
    p.at.at('2027-04-07T04:30:00Z');
    expect((await of(p)).handOvers[0]?.originals.mayGo).toBe(false);
    const early = await refusal(gone(p, handOver));
    expect([early.code, early.what, early.todo]).toEqual([
      'REFUSED',
      'The originals are kept until Tue 6 April 2027.',
      'Keep them, or say why they went before.',
    ]);
    p.at.at('2027-04-07T05:00:00Z');
    expect((await of(p)).handOvers[0]?.originals).toMatchObject({ mayGo: true, sentence: expect.stringMatching(/and may go\.$/) });
    const after = await gone(p, handOver);
    expect(after.originals).toMatchObject({
      mayGo: false,
      goneAt: '2027-04-07T05:00:00Z',
      sentence: 'Originals deleted on Wed 7 April 2027.',
    });
    expect((await history(p))[0]).toBe('The originals of Highlights were deleted.');
    expect((await refusal(gone(p, after))).what).toBe('It is noted already that the originals were deleted.');
  });

  test('go before with a reason, and are there again when that was a mistake', async () => {
    const p = await ready();
    const early = await gone(p, await kept(p), { why: 'The client has them on two disks.' });
    expect(early.originals).toMatchObject({ goneWhy: 'The client has them on two disks.', mayGo: false });
    const { context } = p.at;
    const { handOver } = await call(handovers.originalsThere, { id: early.id, version: early.version }, { context });
    expect(handOver.originals).toMatchObject({ goneAt: null, goneWhy: '' });
    expect((await refusal(call(handovers.originalsThere, { id: handOver.id, version: handOver.version }, { context }))).code).toBe(
      'REFUSED',
    );
  });

  test('without a date ask for it; the paper keeps what it said', async () => {
    const p = await ready();
    const handOver = await kept(p, { originalsUntil: null });
    expect(handOver.originals.sentence).toContain('must still be agreed on');
    expect((await refusal(gone(p, handOver))).what).toBe('Until when the originals are kept is not agreed on.');
    const { id, version, paper } = handOver;
    const set = (originals: string, originalsUntil: string | null) =>
      call(handovers.setOriginals, { id, version, originals: originals as 'kept until', originalsUntil }, { context: p.at.context });
    expect((await refusal(set('kept until', '2026-12-01'))).code).toBe('BAD_INPUT');
    const { handOver: agreed } = await set('kept until', '2027-02-01');
    expect(agreed).toMatchObject({ originals: { until: '2027-02-01' }, paper });
    expect((await refusal(set('never kept', null))).code).toBe('STALE');
  });

  test('that are not kept cannot go', async () => {
    const p = await ready();
    const handOver = await kept(p, { originals: 'handed over', originalsUntil: null });
    expect((await refusal(gone(p, handOver))).what).toBe('The originals were handed over: there are none to delete.');
  });
});

describe('taken back', () => {
  const takeBack = (p: Promised, { id, version }: HandOver, why: string) =>
    call(handovers.takeBack, { id, version, why }, { context: p.at.context }).then(({ handOver }) => handOver);

  test('stays on the books with its reason and its paper; the mark is open again, and can stand again', async () => {
    const p = await ready();
    const { context } = p.at;
    const handOver = await kept(p);
    const back = await takeBack(p, handOver, 'The wrong cut.');
    expect(back).toMatchObject({ takenBack: { at: DELIVERED, why: 'The wrong cut.' }, paper: handOver.paper });
    expect(done(p)).not.toContain('delivered');
    expect(done(p)).toContain('picture lock');
    expect((await history(p))[0]).toBe('The hand-over of Highlights was taken back: The wrong cut.');
    expect((await refusal(takeBack(p, back, 'again'))).what).toBe('This hand-over was taken back.');
    const { handOver: again } = await call(handovers.standAgain, { id: back.id, version: back.version }, { context });
    expect(again.takenBack).toBeNull();
    expect(done(p)).toContain('delivered');
  });

  test('while another stands it stays delivered', async () => {
    const p = await ready();
    const first = await kept(p);
    await kept(p, { how: 'disk', where: 'Seed 1' });
    await takeBack(p, first, 'The link ran out.');
    expect(done(p)).toContain('delivered');
    expect((await of(p)).handOvers.map(({ how, takenBack }) => [how, takenBack !== null])).toEqual([
      ['disk', false],
      ['link', true],
    ]);
  });
});

describe('a copy', () => {
  test('is held against the list, by the same reading', async () => {
    const p = await ready();
    const { context } = p.at;
    const { id } = await kept(p);
    const against = (files: Record<string, string>) => call(handovers.compare, { id, from: { paths: [folderOf(files)] } }, { context });
    expect(await against({ ...FILES, 'notes.txt': 'mine' })).toMatchObject({ whole: true, equal: 3, extra: ['notes.txt'] });
    const broken = await against({ 'Highlights.mov': 'the filn', 'Still 1.png': 'a still' });
    expect(broken).toMatchObject({ whole: false, changed: ['Highlights.mov'], missing: ['Stills/2.png'] });
    expect(broken.moved).toEqual([{ from: 'Stills/1.png', to: 'Still 1.png' }]);
    expect(broken.sentence).toBe('The copy is not whole: 1 file equal under another name, 1 changed and 1 missing.');
    expect((await of(p)).reading).toBeNull();
  });

  test('that is being read is no delivery', async () => {
    const p = await ready();
    const { context } = p.at;
    const { id } = await kept(p);
    const { reading } = await call(handovers.begin, { deliverableId: p.edit, paths: [folderOf()], compares: id }, { context });
    expect(reading.compares).toBe(id);
    const unknown = '01890000-0000-7000-8000-000000000001';
    expect((await refusal(call(handovers.compare, { id: unknown, from: { run: reading.run } }, { context }))).code).toBe('NOT_FOUND');
  });
});

describe('on the Desk', () => {
  const clocks = async ({ at: { context } }: Promised, kind: string) =>
    (await call(desk.see, {}, { context })).clocks.filter((clock) => clock.kind === kind).map(({ sentence }) => sentence);

  test('what was handed over waits for a yes, once for all its hand-overs, until it is approved or taken back', async () => {
    const p = await ready();
    expect(await clocks(p, 'approval')).toEqual([]);
    const first = await kept(p);
    await kept(p, { how: 'disk', where: 'Seed 1' });
    expect(await clocks(p, 'approval')).toEqual(['Highlights: handed over, not approved']);
    p.at.context.store.write((db) => markStages(db, [p.stage('approved')], 1));
    expect(await clocks(p, 'approval')).toEqual([]);
    expect(first.takenBack).toBeNull();
  });

  test('originals are told two weeks ahead, until they are deleted or the hand-over is taken back', async () => {
    const p = await ready();
    const { context } = p.at;
    const { id, version } = await kept(p);
    expect(await clocks(p, 'originals')).toEqual([]);
    p.at.at('2027-03-23T16:00:00Z');
    expect(await clocks(p, 'originals')).toEqual(['Highlights: originals may go on Wed 7 April 2027']);
    p.at.at('2027-06-01T16:00:00Z');
    expect(await clocks(p, 'originals')).toEqual(['Highlights: originals may go now']);
    const { handOver } = await call(handovers.takeBack, { id, version, why: 'The wrong cut.' }, { context });
    expect(await clocks(p, 'originals')).toEqual([]);
    const { handOver: again } = await call(handovers.standAgain, { id, version: handOver.version }, { context });
    await call(handovers.originalsGone, { id, version: again.version }, { context });
    expect(await clocks(p, 'originals')).toEqual([]);
  });
});
