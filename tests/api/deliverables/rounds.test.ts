/**
 * Rounds of notes: a cut that is sent, notes in time and late, dates that move and are put back, and what must be refused.
 */
import { call } from '@orpc/server';
import { describe, expect, test } from 'vitest';
import type { Round } from '../../../core/contract/rounds.ts';
import { editById, moveDates, stagesOf } from '../../../db/rounds.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { rounds } from '../../../electron/api/rounds.ts';
import { refusal } from '../world.ts';
import { promised, type Promised } from './promised.ts';

const TUESDAY = '2026-12-15T16:00:00Z';
const of = ({ edit, at: { context } }: Promised) => call(rounds.of, { deliverableId: edit }, { context });
const dates = ({ edit, at: { context } }: Promised) =>
  context.store.read((db) => {
    const row = editById(db, edit);
    return [row?.agreedDueDate, row?.internalDate, row?.dueDate];
  });
const done = ({ edit, at: { context } }: Promised) =>
  context.store.read((db) => stagesOf(db, edit).flatMap(({ kind, doneAt }) => (doneAt === null ? [] : [kind])));
const history = async ({ job, at: { context } }: Promised) =>
  (await call(jobs.history, { id: job.id }, { context })).entries.map(({ sentence }) => sentence);

async function sent(p: Promised, more: object = {}): Promise<Round> {
  const input = { deliverableId: p.edit, what: 'rough cut', closes: p.stage('rough cut'), ...more };
  return (await call(rounds.send, input, { context: p.at.context })).round;
}
const came = (p: Promised, { id, version }: Round, text: string, more: object = {}) =>
  call(rounds.notesIn, { id, version, text, ...more }, { context: p.at.context });

async function waiting(more: Parameters<typeof promised>[0] = {}): Promise<{ p: Promised; round: Round }> {
  const p = await promised(more);
  p.at.at(TUESDAY);
  return { p, round: await sent(p) };
}

describe('a cut that is sent', () => {
  test('ends its stage and those before it, and the window runs in business days', async () => {
    const { p, round } = await waiting();
    expect(round).toMatchObject({
      number: 1,
      what: 'rough cut',
      dueBack: '2026-12-18',
      included: true,
      stageId: p.stage('round'),
      sentence: 'Rough cut: notes are due by Fri 18 December 2026.',
    });
    expect(round.message.text).toContain('With notes by then, Highlights is delivered by Wed 6 January 2027');
    expect(done(p)).toEqual(['ingest', 'selects', 'rough cut']);
    expect((await history(p))[0]).toBe('Highlights: The rough cut was sent; notes are due by Fri 18 December 2026.');
    expect(await of(p)).toMatchObject({ next: null, sentence: '2 rounds of notes are included.' });
  });
  test('what the next one would be is offered before', async () => {
    const p = await promised();
    p.at.at(TUESDAY);
    const { next, rate, cautions, dates: words } = await of(p);
    expect(next).toMatchObject({ included: true, windowDays: 3, dueBack: '2026-12-18', price: null });
    expect(next?.cuts.map(({ what }) => what)).toEqual(['rough cut', 'second cut', 'fine cut', 'third cut', 'locked picture']);
    expect([rate, cautions, words]).toEqual(['29.97 drop', [], null]);
  });
  test('holidays of the client and of both countries are no days of the window', async () => {
    const closed = [{ from: '2026-12-17', to: '2026-12-17', name: 'Baking day' }];
    const { round } = await waiting({ client: { closed } });
    expect(round.dueBack).toBe('2026-12-21');
    const p = await promised({ client: { country: 'CA' } });
    // Christmas is a holiday at home; Boxing Day in Canada falls on a Saturday.
    p.at.at('2026-12-23T16:00:00Z');
    expect((await sent(p)).dueBack).toBe('2026-12-29');
  });
  test('is taken back as if it had not been', async () => {
    const { p, round } = await waiting();
    await call(rounds.unsend, { id: round.id, version: round.version }, { context: p.at.context });
    expect(done(p)).toEqual([]);
    expect((await of(p)).rounds).toEqual([]);
  });
  test('waits: no other goes out before its notes', async () => {
    const { p } = await waiting();
    expect(await refusal(sent(p, { what: 'fine cut' }))).toMatchObject({
      code: 'REFUSED',
      what: 'The rough cut still waits for its notes.',
    });
  });
  test.each([
    [{ at: '2026-12-16T16:00:00Z' }, 'BAD_INPUT', 'The cut is dated after now. Give the moment at which it was sent.'],
    [{ closes: '0190b3c0-0000-7000-8000-000000000001' }, 'NOT_FOUND', 'The stage that this cut closes is not on the books.'],
    [{ deliverableId: '0190b3c0-0000-7000-8000-000000000001' }, 'NOT_FOUND', 'This deliverable is not on the books.'],
    [{ windowDays: 121 }, 'BAD_REQUEST', undefined],
  ])('%j is refused', async (more, code, what) => {
    const p = await promised();
    p.at.at(TUESDAY);
    const trouble = await refusal(sent(p, more));
    expect(trouble.code).toBe(code);
    if (what) expect(trouble.what).toBe(what);
    expect((await of(p)).rounds).toEqual([]);
  });
  test('of what was taken off, none goes out', async () => {
    const p = await promised({ edit: { offAt: 5 } });
    expect(await refusal(sent(p))).toMatchObject({ code: 'REFUSED', what: 'Highlights was taken off.' });
  });
});

const NOTES = '00:01:00;02 logo too late\n- louder music\n00:02:00;10 to 00:02:04;00 cut this';

describe('notes that come', () => {
  test('in time: a list to tick off, and no date moves', async () => {
    const { p, round } = await waiting();
    p.at.at('2026-12-18T20:00:00Z');
    const { round: after, troubles } = await came(p, round, NOTES);
    expect(troubles).toEqual([]);
    expect(after.items.map(({ timecode, text, doneAt }) => [timecode, text, doneAt])).toEqual([
      ['00:01:00;02', 'logo too late', null],
      ['', 'louder music', null],
      ['00:02:00;10 to 00:02:04;00', 'cut this', null],
    ]);
    expect(after).toMatchObject({ lost: 0, moved: null, price: null, notes: NOTES });
    expect(dates(p)).toEqual(['2027-01-06', '2027-01-05', '2027-01-06']);
    const first = after.items[0]?.id ?? '';
    const ticked = await call(rounds.tick, { note: first, done: true }, { context: p.at.context });
    expect(ticked.round.sentence).toBe('Rough cut: 3 notes came on Fri 18 December 2026; 1 of 3 done.');
    const open = await call(rounds.tick, { note: first, done: false }, { context: p.at.context });
    expect(open.round.items[0]?.doneAt).toBeNull();
    expect((await history(p)).slice(0, 2)).toEqual([
      'Highlights: Note 1 on the rough cut is open again.',
      'Highlights: Note 1 on the rough cut is done.',
    ]);
  });
  test('late: due date and internal date move by the business days lost, the history and the words say so', async () => {
    const { p, round } = await waiting();
    p.at.at('2026-12-22T18:00:00Z');
    expect((await of(p)).rounds[0]?.sentence).toBe('Rough cut: notes were due on Fri 18 December 2026, 2 business days ago.');
    p.at.at('2026-12-23T18:00:00Z');
    const { round: after } = await came(p, round, NOTES);
    expect(after).toMatchObject({ lost: 3, moved: { lost: 3, from: '2027-01-06', to: '2027-01-11', internalTo: '2027-01-08' } });
    expect(dates(p)).toEqual(['2027-01-06', '2027-01-08', '2027-01-11']);
    const sentence =
      'Notes on the rough cut were due on Fri 18 December 2026 and came on Wed 23 December 2026, 3 business days later. Delivery moves by as many, from Wed 6 January 2027 to Mon 11 January 2027.';
    expect((await history(p))[0]).toBe(`Highlights: 3 notes on the rough cut came. ${sentence}`);
    expect((await of(p)).dates).toEqual({
      subject: 'Bakers congress: new date for Highlights',
      text: `Highlights was promised for Wed 6 January 2027.\n${sentence}\nPlease plan with Mon 11 January 2027.`,
    });
  });
  test('late, but the date is kept as a courtesy', async () => {
    const { p, round } = await waiting();
    p.at.at('2026-12-23T18:00:00Z');
    expect((await came(p, round, NOTES, { keepDate: true })).round).toMatchObject({ lost: 3, moved: null });
    expect(dates(p)).toEqual(['2027-01-06', '2027-01-05', '2027-01-06']);
  });
  test('none: a yes that uses up no round; the work planned for one is there for the next cut', async () => {
    const { p, round } = await waiting();
    p.at.at('2026-12-16T18:00:00Z');
    const { round: yes } = await came(p, round, ' \n');
    expect(yes.sentence).toBe('Rough cut: approved without notes on Wed 16 December 2026.');
    expect(yes.stageId).toBeNull();
    expect(await of(p)).toMatchObject({ sentence: '2 rounds of notes are included.', next: { included: true } });
    expect(await refusal(came(p, yes, 'after all'))).toMatchObject({ what: 'The rough cut was approved without notes.' });
    const back = await call(rounds.notesBack, { id: yes.id, version: yes.version }, { context: p.at.context });
    expect(back.round).toMatchObject({ notesAt: null, stageId: p.stage('round') });
  });
  test('a second time: added to the list, the date does not move again', async () => {
    const { p, round } = await waiting();
    p.at.at('2026-12-18T18:00:00Z');
    const first = await came(p, round, 'one');
    p.at.at('2026-12-28T18:00:00Z');
    const second = await came(p, first.round, '00:00:01;00 two');
    expect(second.round.items.map(({ text }) => text)).toEqual(['one', 'two']);
    expect(second.round).toMatchObject({ notes: 'one\n00:00:01;00 two', lost: 0, moved: null });
    expect(await refusal(came(p, second.round, '  '))).toMatchObject({
      code: 'BAD_INPUT',
      what: 'There is no note in it. Paste what came.',
    });
  });
  test('taken back, they put the dates back that they moved; a date set since stays', async () => {
    const { p, round } = await waiting();
    p.at.at('2026-12-23T18:00:00Z');
    const { round: late } = await came(p, round, NOTES);
    const { round: back } = await call(rounds.notesBack, { id: late.id, version: late.version }, { context: p.at.context });
    expect(back).toMatchObject({ notesAt: null, items: [], moved: null });
    expect(dates(p)).toEqual(['2027-01-06', '2027-01-05', '2027-01-06']);
    expect((await history(p))[0]).toBe('Highlights: The notes on the rough cut were taken back. It is due on Wed 6 January 2027 again.');
  });
  test('taken back after the dates were set by hand: a promised date stays, an own date never lies after it', async () => {
    const { p, round } = await waiting();
    p.at.at('2026-12-23T18:00:00Z');
    const late = (await came(p, round, NOTES)).round;
    const set = (dueDate: string, internalDate: string): void =>
      p.at.context.store.write((db) => {
        const row = editById(db, p.edit);
        if (row) moveDates(db, row, { dueDate, internalDate }, p.at.context.now());
      });
    set('2027-01-11', '2027-01-10');
    const { round: back } = await call(rounds.notesBack, { id: late.id, version: late.version }, { context: p.at.context });
    expect(dates(p)).toEqual(['2027-01-06', '2027-01-06', '2027-01-06']);
    const again = (await came(p, back, NOTES)).round;
    set('2027-02-01', '2027-01-10');
    await call(rounds.notesBack, { id: again.id, version: again.version }, { context: p.at.context });
    expect(dates(p)).toEqual(['2027-01-06', '2027-01-10', '2027-02-01']);
    expect((await history(p))[0]).toBe('Highlights: The notes on the rough cut were taken back. Its date was changed since and stays.');
  });
  test('with time codes that cannot be: said by line, and the note is kept', async () => {
    const { p, round } = await waiting();
    const { round: after, troubles } = await came(p, round, 'fine\n00:01:00;00 fade', { at: TUESDAY });
    expect(troubles).toEqual([
      { line: 2, sentence: 'Line 2: 00:01:00;00 does not exist: 29.97 drop leaves that label out. The note is kept without a time.' },
    ]);
    expect(after.items.map(({ frame, text }) => [frame, text])).toEqual([
      [null, 'fine'],
      [null, '00:01:00;00 fade'],
    ]);
  });
  test('time codes without a rate are asked about, words alone are not', async () => {
    const { p, round } = await waiting({
      edit: { format: { width: null, height: null, rate: '', codec: '', loudness: '', captions: '', other: '' } },
    });
    expect(await refusal(came(p, round, NOTES))).toMatchObject({ code: 'BAD_INPUT', fields: [{ field: 'rate' }] });
    expect(await refusal(came(p, round, 'louder', { rate: '33' }))).toMatchObject({ code: 'BAD_INPUT', fields: [{ field: 'rate' }] });
    const { round: after } = await came(p, round, '00:00:01:00 louder', { rate: '25' });
    expect(after.items[0]).toMatchObject({ timecode: '00:00:01:00', frame: 25 });
  });
  test.each([
    ['2026-12-23T18:00:00Z', 'The notes are dated after now. Give the moment at which they came.'],
    ['2026-12-15T15:00:00Z', 'The notes are dated before the rough cut was sent. Give the moment at which they came.'],
  ])('dated %s they are refused, and nothing is half written', async (at, what) => {
    const { p, round } = await waiting();
    p.at.at('2026-12-16T18:00:00Z');
    expect(await refusal(came(p, round, NOTES, { at }))).toMatchObject({ code: 'BAD_INPUT', what });
    expect((await of(p)).rounds[0]).toMatchObject({ version: 1, items: [] });
  });
  test('against an old version they are refused with both states; the same deed twice is done once', async () => {
    const { p, round } = await waiting();
    const key = '0190b3c0-0000-7000-8000-00000000000a';
    const once = await came(p, round, 'one', { key });
    expect(await came(p, round, 'one', { key })).toEqual(once);
    expect(await refusal(came(p, round, 'two'))).toMatchObject({ code: 'STALE', current: { version: 2 }, mine: { text: 'two' } });
  });
});
