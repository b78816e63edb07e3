/**
 * Calendars of other programs through their procedures: saved, read, counted in the check and on the road, and what is wrong with them.
 */
import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { call } from '@orpc/server';
import { describe, expect, test } from 'vitest';
import type { Calendar, CalendarFields } from '../../../core/contract/calendars.ts';
import { calendars } from '../../../electron/api/calendars.ts';
import { troubleOf } from '../../../electron/calendars/files.ts';
import { fit } from '../../../electron/api/fit.ts';
import { calendarOf, eventOf } from '../../calendar-text.ts';
import { temporaryFolder } from '../../store.ts';
import { DULUTH, refusal, world } from '../world.ts';

const NOW = '2026-12-01T15:00:00Z';
const fields = (path: string, more: Partial<CalendarFields> = {}): CalendarFields => ({
  name: 'Family',
  path,
  zone: 'America/Chicago',
  hardness: 'settle',
  isOn: true,
  ...more,
});
const choir = eventOf(
  'UID:choir',
  'SUMMARY:Choir',
  'DTSTART;TZID=America/Chicago:20261205T180000',
  'DURATION:PT2H',
  'RRULE:FREQ=WEEKLY;COUNT=4',
);

async function open(text: string, more: Partial<CalendarFields> = {}) {
  const folder = temporaryFolder();
  const path = join(folder, 'family.ics');
  writeFileSync(path, text);
  const { context, at } = await world(NOW);
  const save = async (changes: Partial<CalendarFields> = {}, before?: Calendar): Promise<Calendar> => {
    const input = { ...(before ? { id: before.id, version: before.version } : {}), fields: fields(path, { ...more, ...changes }) };
    return (await call(calendars.save, input, { context })).calendar;
  };
  const ask = async (date: string) => {
    const day = { date, kind: 'shoot' as const, call: `${date}T09:00`, wrap: `${date}T19:00` };
    const candidate = { title: 'Curling', place: DULUTH, days: [day] };
    const { result } = await call(fit.check, { candidate }, { context });
    return { answer: result.answer, told: result.findings.filter(({ kind }) => kind === 'imported time').map(({ sentence }) => sentence) };
  };
  return { context, at, folder, path, save, ask };
}

describe('a calendar', () => {
  test('is read when it is saved, counts in the check by its hardness, and is free again when it is taken off', async () => {
    const { context, save, ask } = await open(calendarOf(choir));
    const kept = await save();
    expect(kept).toMatchObject({ version: 1, readAt: NOW, busy: 4, leftOut: [], trouble: null });
    expect(await ask('2026-12-12')).toEqual({
      answer: 'free if',
      told: ['Choir stands in the calendar Family on Saturday 12 December 18:00 to 20:00; your days take 1 h of it.'],
    });
    expect((await ask('2026-12-13')).answer).toBe('free');
    const never = await save({ hardness: 'never' }, kept);
    expect((await ask('2026-12-12')).answer).toBe('not possible');
    const off = await save({ hardness: 'never', isOn: false }, never);
    expect((await ask('2026-12-12')).answer).toBe('free');
    await call(calendars.drop, { id: off.id, version: off.version }, { context });
    expect((await call(calendars.list, {}, { context })).calendars).toEqual([]);
  });

  test('without whole days, where that is asked', async () => {
    const birthday = eventOf('UID:b', 'SUMMARY:Birthday', 'DTSTART;VALUE=DATE:20261212');
    const { save, ask } = await open(calendarOf(birthday, choir));
    const kept = await save();
    expect((await ask('2026-12-12')).told).toHaveLength(2);
    await save({ hardness: 'ignore all-day' }, kept);
    expect((await ask('2026-12-12')).told).toEqual([expect.stringContaining('Choir')]);
  });

  test('says what it left out and why, and on which clock it read what nobody knows', async () => {
    const text = calendarOf(
      choir,
      eventOf('UID:1', 'SUMMARY:Free', 'TRANSP:TRANSPARENT', 'DTSTART:20261210T100000Z', 'DURATION:PT1H'),
      eventOf('UID:2', 'SUMMARY:Off', 'STATUS:CANCELLED', 'DTSTART:20261210T100000Z', 'DURATION:PT1H'),
      eventOf('UID:3@kitbound', 'SUMMARY:Own', 'DTSTART:20261210T100000Z', 'DURATION:PT1H'),
      eventOf('UID:4', 'SUMMARY:Old', 'DTSTART:20010101T100000Z', 'DURATION:PT1H'),
      eventOf('UID:5', 'SUMMARY:No date', 'DTSTART:20261332T100000Z', 'DURATION:PT1H'),
      eventOf('UID:6', 'SUMMARY:Elsewhere', 'DTSTART;TZID=Ferry Time:20261220T100000', 'DURATION:PT1H'),
      eventOf('UID:7', 'SUMMARY:Maybe', 'STATUS:TENTATIVE', 'DTSTART;TZID=Eastern Standard Time:20261221T100000', 'DURATION:PT1H'),
    );
    const { save, ask } = await open(text);
    const { busy, leftOut } = await save();
    expect(busy).toBe(6);
    expect(leftOut).toEqual([
      { why: 'outside', count: 1, example: 'Old' },
      { why: 'broken', count: 1, example: 'No date' },
      { why: 'own', count: 1, example: 'Own' },
      { why: 'free', count: 1, example: 'Free' },
      { why: 'cancelled', count: 1, example: 'Off' },
      { why: 'zone', count: 1, example: 'Ferry Time' },
    ]);
    expect((await ask('2026-12-20')).told[0]).toContain('10:00 to 11:00');
    expect(await ask('2026-12-21')).toEqual({ answer: 'free', told: [expect.stringContaining('09:00 to 10:00, not yet for certain')] });
  });

  test('of a folder is every calendar file in it, a change may stand in another than what it changes', async () => {
    const { folder, save, ask } = await open(calendarOf(choir));
    const moved = eventOf(
      'UID:choir',
      'SUMMARY:Choir moved',
      'RECURRENCE-ID;TZID=America/Chicago:20261212T180000',
      'DTSTART;TZID=America/Chicago:20261213T100000',
      'DURATION:PT1H',
    );
    writeFileSync(join(folder, 'moved.ics'), calendarOf(moved));
    writeFileSync(join(folder, 'notes.txt'), 'nothing');
    mkdirSync(join(folder, 'inner.ics'));
    writeFileSync(join(folder, 'picture.ics'), Buffer.from([0xff, 0xd8, 0xff, 0, 1, 2]));
    const kept = await save({ path: folder });
    expect(kept).toMatchObject({ busy: 4, trouble: null, leftOut: [{ why: 'broken', count: 1, example: 'picture.ics' }] });
    expect((await ask('2026-12-12')).told).toEqual([]);
    expect((await ask('2026-12-13')).told).toEqual([expect.stringContaining('Choir moved')]);
  });

  test('is read for another path or clock anew, and what stood there before is free', async () => {
    const { path, save, ask } = await open(calendarOf(eventOf('UID:1', 'SUMMARY:Floats', 'DTSTART:20261212T080000', 'DURATION:PT2H')));
    const kept = await save();
    expect((await ask('2026-12-12')).told[0]).toContain('08:00 to 10:00');
    const elsewhere = await save({ zone: 'America/New_York' }, kept);
    expect((await ask('2026-12-12')).answer).toBe('free');
    expect(await save({ path: `${path}.gone` }, elsewhere)).toMatchObject({
      busy: 0,
      readAt: null,
      trouble: { what: 'There is no file or folder at its path.' },
    });
  });
});

describe('what cannot be read', () => {
  test('keeps what was read before, and says so', async () => {
    const { context, path, save, ask } = await open(calendarOf(choir));
    const { id } = await save();
    const readAgain = async () => (await call(calendars.readAgain, { id }, { context })).calendar;
    renameSync(path, `${path}.away`);
    expect(await readAgain()).toMatchObject({
      busy: 4,
      readAt: NOW,
      trouble: { what: 'There is no file or folder at its path.', kept: expect.stringContaining('still counts') },
    });
    expect((await ask('2026-12-12')).answer).toBe('free if');
    writeFileSync(path, 'Dear diary');
    expect(await readAgain()).toMatchObject({ busy: 4, trouble: { what: 'It is no calendar file.' } });
    rmSync(path);
    mkdirSync(path);
    expect(await readAgain()).toMatchObject({ busy: 4, trouble: { what: 'The folder holds no calendar file (.ics).' } });
    rmSync(path, { recursive: true });
    renameSync(`${path}.away`, path);
    expect(await readAgain()).toMatchObject({ busy: 4, trouble: null });
  });

  test.each([
    ['EACCES', 'It may not be read by this user.'],
    ['EIO', 'The system refused to read it (EIO).'],
    ['ENOTDIR', 'There is no file or folder at its path.'],
  ])('what the system refuses with %s says so', (code, what) => {
    expect(troubleOf(Object.assign(new Error('as the system throws it'), { code })).what).toBe(what);
  });
});

describe('what cannot be meant', () => {
  test.each([
    ['an address of the net', 'https://calendar.example/family.ics', 'Nothing is fetched from the net'],
    ['an address of a calendar', 'webcal://calendar.example/family.ics', 'Nothing is fetched from the net'],
    ['a file address', 'file:///home/me/family.ics', 'Nothing is fetched from the net'],
    ['half a path', 'family.ics', 'is half a path'],
    ['a path that climbs', '../family.ics', 'is half a path'],
  ])('%s is bad input, and nothing is kept', async (_, path, sentence) => {
    const { context, save } = await open(calendarOf(choir));
    expect(await refusal(save({ path }))).toMatchObject({ code: 'BAD_INPUT', what: expect.stringContaining(sentence) });
    expect((await call(calendars.list, {}, { context })).calendars).toEqual([]);
  });

  test('an old version is stale, an unknown one is not found, one that is off is not read', async () => {
    const { context, save } = await open(calendarOf(choir));
    const kept = await save();
    const off = await save({ isOn: false }, kept);
    expect((await refusal(save({ name: 'Club' }, kept))).code).toBe('STALE');
    expect((await refusal(call(calendars.drop, { id: kept.id, version: 1 }, { context }))).code).toBe('STALE');
    expect((await refusal(call(calendars.readAgain, { id: off.id }, { context }))).code).toBe('REFUSED');
    const nobody = '01890000-0000-7000-8000-000000000000';
    expect((await refusal(call(calendars.readAgain, { id: nobody }, { context }))).code).toBe('NOT_FOUND');
    expect((await refusal(call(calendars.drop, { id: nobody, version: 1 }, { context }))).code).toBe('NOT_FOUND');
  });
});
