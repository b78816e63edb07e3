import type { OutgoingHttpHeaders } from 'node:http';
import { networkInterfaces } from 'node:os';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contract } from '../../../core/contract/index.ts';
import { dump } from '../../dump.ts';
import { knock, knockRaw, pageHeaders } from '../../knock.ts';
import { openDoor, type OpenDoor } from '../open-door.ts';

let open: OpenDoor;
let address: string;
let host: string;
let ours: OutgoingHttpHeaders;
const BODY = JSON.stringify({ json: {} });

beforeAll(async () => {
  open = await openDoor();
  address = open.door.address;
  host = new URL(address).host;
  ours = pageHeaders(address, open.door.key);
});
afterAll(() => open.close());

const post = (headers: OutgoingHttpHeaders, path = '/rpc/store/state') => knock({ address, path, method: 'POST', headers, body: BODY });

describe('who may come in', () => {
  test('our own page', async () => {
    const answer = await post(ours);
    expect(answer.status).toBe(200);
    expect(JSON.parse(answer.body)).toMatchObject({ json: { version: '0.0.0' } });
  });

  test('only on the loopback address', async () => {
    const port = new URL(address).port;
    const others = Object.values(networkInterfaces())
      .flatMap((list) => list ?? [])
      .filter((each) => each.family === 'IPv4' && !each.internal);
    for (const other of others)
      await expect(knock({ address: `http://${other.address}:${port}`, path: '/' })).rejects.toThrow(/ECONNREFUSED/);
  });

  test.each([
    ['a foreign name', (port: string) => `evil.example:${port}`],
    ['another port', (port: string) => `127.0.0.1:${Number(port) + 1}`],
    ['no port', () => '127.0.0.1'],
    ['upper case', (port: string) => `LOCALHOST:${port}`],
    ['a trailing dot', (port: string) => `localhost.:${port}`],
    ['the other loopback', (port: string) => `[::1]:${port}`],
    ['a number for the address', (port: string) => `2130706433:${port}`],
    ['user information', (port: string) => `a@127.0.0.1:${port}`],
  ])('not under %s, on any path or method', async (_, forged) => {
    const name = forged(new URL(address).port);
    for (const method of ['GET', 'HEAD', 'POST', 'OPTIONS', 'PUT']) {
      for (const path of ['/', '/index.html', '/rpc/store/state', '/nothing']) {
        const answer = await knock({ address, path, method, headers: { ...ours, host: name }, body: method === 'POST' ? BODY : '' });
        expect([method, path, answer.status]).toEqual([method, path, 421]);
      }
    }
  });

  test.each([
    ['no Host header', () => ''],
    ['an empty one', () => 'Host:\r\n'],
    ['two', () => `Host: ${host}\r\nHost: evil.example\r\n`],
    ['two of ours', () => `Host: ${host}\r\nHost: ${host}\r\n`],
  ])('not with %s', async (_, lines) => {
    expect(await knockRaw(address, `GET / HTTP/1.1\r\n${lines()}Connection: close\r\n\r\n`)).toMatch(/^HTTP\/1\.1 4(21|00) /);
  });

  test('localhost is ours as well', async () => {
    const local = host.replace('127.0.0.1', 'localhost');
    expect((await post({ ...ours, host: local, origin: `http://${local}` })).status).toBe(200);
  });

  test.each([
    ['another origin', { origin: 'http://evil.example' }],
    ['no origin', { origin: undefined }],
    ['an opaque origin', { origin: 'null' }],
    ['our origin over TLS', { origin: 'https://127.0.0.1' }],
    ['our other name as origin', { origin: 'http://localhost' }],
    ['another site', { 'sec-fetch-site': 'cross-site' }],
    ['the same site but another origin', { 'sec-fetch-site': 'same-site' }],
  ])('not from %s', async (_, change) => {
    expect((await post(without({ ...ours, ...change }))).status).toBe(403);
  });

  test.each([undefined, 'none', 'same-origin'])('Sec-Fetch-Site %s is no hindrance', async (site) => {
    expect((await post(without({ ...ours, 'sec-fetch-site': site }))).status).toBe(200);
  });

  test('not without the key, with a part of it, with another, or with the key in the address', async () => {
    const { key } = open.door;
    const other = (key.startsWith('0') ? '1' : '0') + key.slice(1);
    for (const wrong of [undefined, '', key.slice(1), `${key}0`, other, key.toUpperCase()]) {
      if (wrong === key) continue;
      expect((await post(without({ ...ours, 'x-kitbound-key': wrong }))).status).toBe(401);
    }
    expect((await post(without({ ...ours, 'x-kitbound-key': undefined }), `/rpc/store/state?key=${key}`)).status).toBe(401);
    expect(JSON.stringify(open.logged)).not.toContain(key);
  });

  test.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data', 'application/json; charset=latin1', undefined])(
    'not as %s',
    async (type) => expect((await post(without({ ...ours, 'content-type': type }))).status).toBe(415),
  );

  test('no method but those that are served', async () => {
    for (const method of ['OPTIONS', 'PUT', 'PATCH', 'DELETE', 'TRACE']) {
      const answer = await knock({
        address,
        path: '/rpc/store/state',
        method,
        headers: { ...ours, 'access-control-request-method': 'POST' },
      });
      expect([method, answer.status]).toEqual([method, 405]);
      expect(answer.headers['allow']).toBe('GET, HEAD, POST');
    }
    expect((await post(ours, '/')).status).toBe(405);
  });

  test('a GET on any procedure changes nothing', async () => {
    const before = stored();
    for (const [subject, procedures] of Object.entries(contract)) {
      for (const procedure of Object.keys(procedures)) {
        const path = `/rpc/${subject}/${procedure}?data=${encodeURIComponent(BODY)}`;
        for (const method of ['GET', 'HEAD']) expect((await knock({ address, path, method, headers: ours })).status).toBe(405);
      }
    }
    expect(stored()).toEqual(before);
  });

  test.each(['//evil.example/', '/..%2f..%2fpackage.json', '/../package.json', '/%00', '/index.html/..', 'http://evil.example/', '/.'])(
    'no file but those of the page: %s',
    async (path) => expect([400, 404]).toContain((await knock({ address, path })).status),
  );
});

/** Headers without those that are undefined. */
function without(headers: OutgoingHttpHeaders): OutgoingHttpHeaders {
  return Object.fromEntries(Object.entries(headers).filter(([, value]) => value !== undefined));
}

const stored = () => open.store.read((db) => dump(db.$client));
