/**
 * While the program runs: one’s own dates follow every deed, in a file that is never somebody else’s.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { call } from '@orpc/server';
import { sync } from 'node-ical';
import { describe, expect, test } from 'vitest';
import { calendars } from '../../../electron/api/calendars.ts';
import { deliverables } from '../../../electron/api/deliverables.ts';
import { desk } from '../../../electron/api/desk.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { writeOut } from '../../../electron/calendars/write-out.ts';
import { temporaryFolder } from '../../store.ts';
import { begun, inked, PROMISED } from '../deliverables/job.ts';
import { DULUTH, refusal } from '../world.ts';
import { soon, running } from './running.ts';

describe('my own dates', () => {
  const day = (date: string) => ({ date, kind: 'shoot' as const, call: `${date}T09:00`, wrap: `${date}T19:00` });
  const read = (folder: string) =>
    Object.values(sync.parseICS(readFileSync(join(folder, 'kitbound.ics'), 'utf8')))
      .flatMap((part) => (part?.type === 'VEVENT' ? [part] : []))
      .map(({ summary, status, sequence, start, datetype }) => [
        typeof summary === 'string' ? summary : summary.val,
        status,
        Number(sequence),
        datetype === 'date' ? start.toDateString() : start.toISOString(),
      ]);

  test('follow every deed: pencil, move, letting go, renewing; the sequence rises, the names stay', async () => {
    const { context } = await running();
    const folder = temporaryFolder();
    await call(calendars.saveOut, { version: 0, folder, isOn: true }, { context });
    expect(read(folder)).toEqual([]);
    const facts = {
      title: 'Curling',
      place: DULUTH,
      days: [day('2026-12-10')],
      deliverables: ['Recap film'],
      edits: [{ what: 'Recap film', due: '2026-12-18', hours: '6' }],
    };
    let { job } = await call(jobs.add, { facts }, { context });
    ({ job } = await call(jobs.pencil, { id: job.id, version: job.version }, { context }));
    const film = ['Pencil: Due: Recap film', 'TENTATIVE', 0, 'Fri Dec 18 2026'];
    await soon(() => expect(read(folder)).toEqual([['Pencil: Curling', 'TENTATIVE', 0, '2026-12-10T15:00:00.000Z'], film]));
    ({ job } = await call(jobs.change, { id: job.id, version: job.version, changes: { days: [day('2026-12-11')] } }, { context }));
    await soon(() => expect(read(folder)[0]).toEqual(['Pencil: Curling', 'TENTATIVE', 1, '2026-12-11T15:00:00.000Z']));
    ({ job } = await call(jobs.letGo, { id: job.id, version: job.version }, { context }));
    await soon(() =>
      expect(read(folder)).toEqual([
        ['Pencil: Curling', 'CANCELLED', 2, '2026-12-11T15:00:00.000Z'],
        ['Pencil: Due: Recap film', 'CANCELLED', 1, 'Fri Dec 18 2026'],
      ]),
    );
    expect(readdirSync(folder)).toEqual(['kitbound.ics']);
  });

  test('what ink promised stands on its due date, one whole day that takes no time; taken off, it is cancelled', async () => {
    const { at } = await begun();
    const { id: jobId } = await inked(at, 'Bakers congress', ['2026-12-07', '2026-12-08'], PROMISED);
    const folder = temporaryFolder();
    await call(calendars.saveOut, { version: 0, folder, isOn: true }, at);
    expect(read(folder)).toEqual(
      expect.arrayContaining([
        ['Bakers congress', 'CONFIRMED', 0, expect.stringContaining('2026-12-07')],
        ['Bakers congress', 'CONFIRMED', 0, expect.stringContaining('2026-12-08')],
        ['Due: Highlight', 'CONFIRMED', 0, 'Thu Jan 07 2027'],
        ['Due: Talks', 'CONFIRMED', 0, 'Fri Dec 18 2026'],
      ]),
    );
    expect(read(folder)).toHaveLength(4);
    expect(readFileSync(join(folder, 'kitbound.ics'), 'utf8').match(/TRANSP:TRANSPARENT/g)).toHaveLength(2);
    const [first] = (await call(deliverables.of, { jobId }, at)).deliverables;
    await call(deliverables.takeOff, { id: first?.id ?? '', version: first?.version ?? 0 }, at);
    writeOut(at.context);
    expect(read(folder).filter(([, status]) => status === 'CANCELLED')).toEqual([['Due: Highlight', 'CANCELLED', 1, 'Thu Jan 07 2027']]);
  });

  test('a pencil that runs out is cancelled without any deed', async () => {
    const { context, at } = await running(300);
    const folder = temporaryFolder();
    await call(calendars.saveOut, { version: 0, folder, isOn: true }, { context });
    const { job } = await call(jobs.add, { facts: { title: 'Curling', place: DULUTH, days: [day('2026-12-10')] } }, { context });
    await call(jobs.pencil, { id: job.id, version: job.version, expires: '2026-12-03T15:00:00Z' }, { context });
    await soon(() => expect(read(folder)[0]?.[1]).toBe('TENTATIVE'));
    at('2026-12-03T15:00:00Z');
    await soon(() => expect(read(folder)[0]).toEqual(['Pencil: Curling', 'CANCELLED', 1, '2026-12-10T15:00:00.000Z']));
  });

  test('a file that was taken away is written again; one that is not ours is never written over', async () => {
    const { context, list } = await running(300);
    const folder = temporaryFolder();
    await call(calendars.saveOut, { version: 0, folder, isOn: true }, { context });
    rmSync(join(folder, 'kitbound.ics'));
    await soon(() => expect(existsSync(join(folder, 'kitbound.ics'))).toBe(true));
    const other = temporaryFolder();
    writeFileSync(join(other, 'kitbound.ics'), 'BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Somebody//Else//EN\r\nEND:VCALENDAR\r\n');
    await call(calendars.saveOut, { version: 1, folder: other, isOn: true }, { context });
    expect((await list()).out.trouble?.what).toContain('that Kitbound did not write');
    expect(readFileSync(join(other, 'kitbound.ics'), 'utf8')).toContain('Somebody');
    expect((await call(desk.see, {}, { context })).lines[0]?.sentence).toBe('Your dates for other programs cannot be written.');
  });

  test('a folder that vanishes is told, and written to again when it is back', async () => {
    const { context, list } = await running(300);
    const folder = join(temporaryFolder(), 'out');
    mkdirSync(folder);
    await call(calendars.saveOut, { version: 0, folder, isOn: true }, { context });
    rmSync(folder, { recursive: true });
    await soon(async () => expect((await list()).out.trouble?.what).toBe('The folder to write to is not there.'));
    mkdirSync(folder);
    await soon(async () => expect((await list()).out.trouble).toBeNull());
    expect(existsSync(join(folder, 'kitbound.ics'))).toBe(true);
  });

  test('a folder that is none, half a path and an old version are refused', async () => {
    const { context } = await running();
    const saveOut = (version: number, folder: string) => refusal(call(calendars.saveOut, { version, folder, isOn: true }, { context }));
    expect(await saveOut(0, join(temporaryFolder(), 'nowhere'))).toMatchObject({
      code: 'BAD_INPUT',
      what: expect.stringContaining('is not a folder'),
    });
    expect(await saveOut(0, 'out')).toMatchObject({ code: 'BAD_INPUT' });
    expect(await saveOut(3, temporaryFolder())).toMatchObject({ code: 'STALE' });
  });
});
