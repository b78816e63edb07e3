/**
 * The feed serves one file to whoever knows its address, and nothing else.
 */
import { readFileSync } from 'node:fs';
import { request } from 'node:http';
import { createServer, Socket, type AddressInfo } from 'node:net';
import { join } from 'node:path';
import { call } from '@orpc/server';
import { describe, expect, onTestFinished, test } from 'vitest';
import { calendars } from '../../../electron/api/calendars.ts';
import { temporaryFolder } from '../../store.ts';
import { refusal } from '../world.ts';
import { soon, running } from './running.ts';

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
