/**
 * What was handed over: when the originals may go, taken back, held against a copy, and told on the Desk.
 */
import { call } from '@orpc/server';
import { describe, expect, test } from 'vitest';
import type { HandOver } from '../../../core/contract/handovers.ts';
import { markStages } from '../../../db/rounds.ts';
import { desk } from '../../../electron/api/desk.ts';
import { handovers } from '../../../electron/api/handovers.ts';
import { refusal } from '../world.ts';
import { type Promised } from './promised.ts';
import { FILES, DELIVERED, folderOf, ready, of, kept, done, history } from './handed.ts';

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
