/**
 * Handing over: what is read, kept and put on paper, and what is refused.
 */
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { call } from '@orpc/server';
import { xxhash128 } from 'hash-wasm';
import { describe, expect, test } from 'vitest';
import { handovers } from '../../../electron/api/handovers.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { papers } from '../../../electron/api/papers.ts';
import { rounds } from '../../../electron/api/rounds.ts';
import { callProcedure } from '../../../electron/api/serve.ts';
import { pagesOfText } from '../../papers/read-text.ts';
import { temporaryFolder } from '../../store.ts';
import { refusal } from '../world.ts';
import { promised } from './promised.ts';
import { FILES, LINK, DELIVERED, folderOf, ready, of, keep, kept, done, history, read } from './handed.ts';

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
