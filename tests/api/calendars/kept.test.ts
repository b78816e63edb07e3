/**
 * While the program runs: files that change are read again, and what cannot be read is told on the Desk.
 */
import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { call } from '@orpc/server';
import { describe, expect, test } from 'vitest';
import { desk } from '../../../electron/api/desk.ts';
import { calendarOf, eventOf } from '../../calendar-text.ts';
import { temporaryFolder } from '../../store.ts';
import { NOW, event, soon, running } from './running.ts';

describe('a file', () => {
  test.each([
    ['that is written over', (path: string, text: string) => writeFileSync(path, text)],
    [
      'that another takes the place of',
      (path: string, text: string) => {
        writeFileSync(`${path}.new`, text);
        renameSync(`${path}.new`, path);
      },
    ],
  ])('%s is read again by itself', async (_, change) => {
    const { add, busy } = await running();
    const path = join(temporaryFolder(), 'family.ics');
    writeFileSync(path, calendarOf(event('a', '20261210')));
    await add(path);
    expect(await busy()).toEqual([1]);
    change(path, calendarOf(event('a', '20261210'), event('b', '20261211')));
    await soon(async () => expect(await busy()).toEqual([2]));
  });

  test('that comes into a folder is read, where the system tells nothing too', async () => {
    const { add, busy } = await running(300);
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'a.ics'), calendarOf(event('a', '20261210')));
    await add(folder);
    writeFileSync(join(folder, 'b.ics'), calendarOf(event('b', '20261210')));
    await soon(async () => expect(await busy()).toEqual([2]));
  });

  test('is read again as days go by, so that three years ahead stay known', async () => {
    const { add, at, list } = await running(300);
    const path = join(temporaryFolder(), 'daily.ics');
    writeFileSync(path, calendarOf(eventOf('UID:d', 'SUMMARY:Daily', 'DTSTART:20200101T120000Z', 'DURATION:PT1H', 'RRULE:FREQ=DAILY')));
    await add(path);
    expect((await list()).calendars[0]).toMatchObject({ readAt: NOW, busy: 4 * 366 });
    at('2026-12-03T15:00:00Z');
    await soon(async () => expect((await list()).calendars[0]?.readAt).toBe('2026-12-03T15:00:00Z'));
  });
});

test('a folder that vanishes keeps what was read and is told on the Desk, until it is put away or is back', async () => {
  const { context, add, list } = await running(300);
  const folder = join(temporaryFolder(), 'calendars');
  mkdirSync(folder);
  writeFileSync(join(folder, 'a.ics'), calendarOf(event('a', '20261210')));
  await add(folder);
  const lines = async () => (await call(desk.see, {}, { context })).lines;
  expect(await lines()).toEqual([]);
  renameSync(folder, `${folder}.away`);
  await soon(async () => expect(await lines()).toHaveLength(1));
  const [line] = await lines();
  expect(line).toMatchObject({
    sentence: 'The calendar Family cannot be read.',
    second: expect.stringContaining('What was read of it before still counts.'),
  });
  expect((await list()).calendars[0]?.busy).toBe(1);
  await call(desk.putAway, { line: line?.id ?? '' }, { context });
  expect(await lines()).toEqual([]);
  await call(desk.bringBack, { line: line?.id ?? '' }, { context });
  expect(await lines()).toHaveLength(1);
  renameSync(`${folder}.away`, folder);
  await soon(async () => expect(await lines()).toEqual([]));
});
