/**
 * While the program runs: files that change are read again, what cannot be read is told on the Desk, one's own dates follow every deed,
 * and the feed serves one file to whoever knows its address.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { createServer, Socket, type AddressInfo } from 'node:net';
import { join } from 'node:path';
import { call } from '@orpc/server';
import { sync } from 'node-ical';
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import type { CalendarFields } from '../../../core/contract/calendars.ts';
import { calendars } from '../../../electron/api/calendars.ts';
import { deliverables } from '../../../electron/api/deliverables.ts';
import { desk } from '../../../electron/api/desk.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { noLog } from '../../../electron/api/log.ts';
import { keepCalendars } from '../../../electron/calendars/keep.ts';
import { writeOut } from '../../../electron/calendars/write-out.ts';
import { calendarOf, eventOf } from '../../calendar-text.ts';
import { temporaryFolder } from '../../store.ts';
import { begun, inked, PROMISED } from '../deliverables/job.ts';
import { DULUTH, refusal, world } from '../world.ts';

const NOW = '2026-12-01T15:00:00Z';
const event = (uid: string, date: string) => eventOf(`UID:${uid}`, `SUMMARY:${uid}`, `DTSTART:${date}T180000Z`, 'DURATION:PT1H');
const soon = <T>(look: () => T | Promise<T>) => vi.waitFor(look, { timeout: 15_000, interval: 100 });

async function running(every = 60_000) {
  const { context, at } = await world(NOW);
  const kept = keepCalendars(context, noLog, every);
  onTestFinished(() => kept.close());
  const list = () => call(calendars.list, {}, { context });
  const add = (path: string, more: Partial<CalendarFields> = {}) =>
    call(
      calendars.save,
      { fields: { name: 'Family', path, zone: 'America/Chicago', hardness: 'settle', isOn: true, ...more } },
      { context },
    );
  const busy = async () => (await list()).calendars.map((calendar) => calendar.busy);
  return { context, at, list, add, busy };
}

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

describe('the feed', () => {
  type Asked = { method?: string; path?: string; headers?: Record<string, string> };
  const ask = (
    address: string,
    { method = 'GET', path, headers = {} }: Asked = {},
  ): Promise<{ status: number; body: string; type: string }> =>
    new Promise((resolve, reject) => {
      const { hostname, port, pathname } = new URL(address);
      const sent = request(
        { hostname, port, path: path ?? pathname, method, headers, setHost: !('host' in headers), agent: false },
        (response) => {
          let body = '';
          response.setEncoding('utf8').on('data', (chunk: string) => (body += chunk));
          response.on('end', () => resolve({ status: response.statusCode ?? 0, body, type: response.headers['content-type'] ?? '' }));
        },
      );
      sent.on('error', reject).end();
    });

  async function served() {
    const { context, list } = await running(300);
    const folder = temporaryFolder();
    expect((await refusal(call(calendars.openFeed, { version: 0 }, { context }))).code).toBe('REFUSED');
    await call(calendars.saveOut, { version: 0, folder, isOn: true }, { context });
    const { out } = await call(calendars.openFeed, { version: 1 }, { context });
    const address = out.feed?.address ?? '';
    await soon(async () => expect((await ask(address)).status).toBe(200));
    return { context, list, folder, address };
  }

  test('is off until it is asked for, then serves the written file and nothing else', async () => {
    const { address, folder } = await served();
    const { body, type } = await ask(address);
    expect(type).toBe('text/calendar; charset=utf-8');
    expect(body).toBe(readFileSync(join(folder, 'kitbound.ics'), 'utf8'));
    const { pathname, port } = new URL(address);
    expect(pathname).toMatch(/^\/[A-Za-z0-9_-]{32}\/kitbound\.ics$/);
    const refused: [string, number, Asked][] = [
      ['a foreign name', 421, { headers: { host: 'calendar.example' } }],
      ['a foreign name with our port', 421, { headers: { host: `calendar.example:${port}` } }],
      ['our address with another port', 421, { headers: { host: '127.0.0.1:80' } }],
      ['a foreign name on a wrong path', 421, { headers: { host: 'calendar.example' }, path: '/' }],
      ['a foreign name and another method', 421, { headers: { host: 'calendar.example' }, method: 'POST' }],
      ['POST', 405, { method: 'POST' }],
      ['PUT', 405, { method: 'PUT' }],
      ['DELETE', 405, { method: 'DELETE' }],
      ['OPTIONS', 405, { method: 'OPTIONS' }],
      ['HEAD', 405, { method: 'HEAD' }],
      ['the root', 404, { path: '/' }],
      ['the file without the key', 404, { path: '/kitbound.ics' }],
      ['another key of the same length', 404, { path: `/${'A'.repeat(32)}/kitbound.ics` }],
      ['the key alone', 404, { path: pathname.replace('kitbound.ics', '') }],
      ['a query', 404, { path: `${pathname}?x=1` }],
      ['another file', 404, { path: pathname.replace('kitbound.ics', 'store.db') }],
      ['a path that climbs', 404, { path: pathname.replace('kitbound.ics', '../kitbound.ics') }],
      ['a procedure', 404, { path: '/rpc/jobs/list' }],
      ['a whole address', 404, { path: address }],
    ];
    for (const [name, status, asked] of refused) {
      const answer = await ask(address, asked);
      expect(`${name}: ${answer.status} ${answer.body}`).toBe(`${name}: ${status} `);
    }
    expect((await ask(address, { headers: { host: `localhost:${port}` } })).status).toBe(200);
  });

  test('two Host headers are one too many, and none is one too few', async () => {
    const { address } = await served();
    const { port, pathname } = new URL(address);
    for (const hosts of [[`127.0.0.1:${port}`, `127.0.0.1:${port}`], []]) {
      const status = await new Promise<string>((resolve, reject) => {
        const socket = new Socket();
        socket.once('error', reject).once('data', (bytes) => resolve(bytes.toString('latin1').slice(9, 12)));
        socket.connect(Number(port), '127.0.0.1', () =>
          socket.write([`GET ${pathname} HTTP/1.1`, ...hosts.map((host) => `Host: ${host}`), '', ''].join('\r\n')),
        );
      });
      expect(['400', '421']).toContain(status);
    }
  });

  test('closed, its address is worth nothing; opened again it has another on the same port', async () => {
    const { context, address } = await served();
    await call(calendars.closeFeed, { version: 2 }, { context });
    await soon(() => expect(ask(address)).rejects.toThrow('ECONNREFUSED'));
    const { out } = await call(calendars.openFeed, { version: 3 }, { context });
    const anew = out.feed?.address ?? '';
    expect(new URL(anew).port).toBe(new URL(address).port);
    await soon(async () => expect((await ask(anew)).status).toBe(200));
    expect((await ask(address)).status).toBe(404);
    expect((await refusal(call(calendars.openFeed, { version: 3 }, { context }))).code).toBe('STALE');
  });

  test('a port that another program took is told, and another is found when it is opened anew', async () => {
    const { context, list, address } = await served();
    const port = Number(new URL(address).port);
    await call(calendars.closeFeed, { version: 2 }, { context });
    await soon(() => expect(ask(address)).rejects.toThrow('ECONNREFUSED'));
    const other = createServer();
    await new Promise<void>((resolve) => void other.listen({ port, host: '127.0.0.1' }, resolve));
    onTestFinished(() => void other.close());
    await call(calendars.openFeed, { version: 3 }, { context });
    await soon(async () => expect((await list()).out.feed?.trouble?.what).toBe(`Port ${port} is taken by another program.`));
    const { out } = await call(calendars.openFeed, { version: 4 }, { context });
    expect(out.feed?.port).not.toBe((other.address() as AddressInfo).port);
    await soon(async () => expect((await ask(out.feed?.address ?? '')).status).toBe(200));
  });

  test('the history keeps that it was opened, never where', async () => {
    const { context, address } = await served();
    const key = new URL(address).pathname.split('/')[1] ?? '';
    const kept = context.store.read((db) => db.$client.prepare("select sentence || coalesce(before, '') from history").pluck().all());
    expect(kept.join()).toContain('The feed of my own dates was opened');
    expect(kept.join()).not.toContain(key);
  });
});
