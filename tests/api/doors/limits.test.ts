import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { LARGEST_BODY } from '../../../electron/doors/body.ts';
import { knock, knockRaw, pageHeaders } from '../../knock.ts';
import { openDoor, type OpenDoor } from '../open-door.ts';

let open: OpenDoor;
beforeAll(async () => {
  open = await openDoor({ headersMs: 600, requestMs: 1200 });
});
afterAll(() => open.close());

const send = (body: string, more: Record<string, string> = {}) => {
  const { address, key } = open.door;
  return knock({ address, path: '/rpc/store/state', method: 'POST', headers: { ...pageHeaders(address, key), ...more }, body });
};

const raw = (bytes: string) => knockRaw(open.door.address, bytes);

describe('limits of the loopback door', () => {
  test('10 MB are refused with a sentence, and memory stays flat', async () => {
    const body = JSON.stringify({ json: { text: 'x'.repeat(10_000_000) } });
    const before = process.memoryUsage().arrayBuffers;
    for (let round = 0; round < 5; round += 1) {
      const answer = await send(body);
      expect(answer.status).toBe(413);
      expect(JSON.parse(answer.body)).toMatchObject({ json: { data: { what: 'The request is larger than 2 MB.' } } });
    }
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(60_000_000);
  });

  test('a body of unknown length is held to the same limit', async () => {
    expect((await send('y'.repeat(LARGEST_BODY + 1), { 'transfer-encoding': 'chunked' })).status).toBe(413);
  });

  test('what cannot be read says so', async () => {
    for (const body of ['', '{', 'null', '[]', '"text"', '{"json":', '{"json":{},"meta":5}', '{"json":{},"meta":[[99,"a"]]}']) {
      const answer = await send(body);
      expect([body, answer.status < 500]).toEqual([body, true]);
      expect(answer.headers['content-type']).toBe('application/json; charset=utf-8');
    }
  });

  test('a client that never ends its headers, or its body, is cut', async () => {
    const { address, key } = open.door;
    const { host } = new URL(address);
    expect(await raw(`GET / HTTP/1.1\r\nHost: ${host}\r\nX-Slow: `)).toContain('408 Request Timeout');
    const head = Object.entries(pageHeaders(address, key)).map(([name, value]) => `${name}: ${String(value)}`);
    const heard = await raw(`POST /rpc/store/state HTTP/1.1\r\nHost: ${host}\r\n${head.join('\r\n')}\r\nContent-Length: 100\r\n\r\n{`);
    expect(heard === '' || heard.includes('408')).toBe(true);
  });

  test('what is not HTTP is answered with our headers', async () => {
    expect(await raw('hello\r\n\r\n')).toMatch(/^HTTP\/1\.1 400 [\s\S]*content-security-policy: default-src 'none'/);
  });

  test('a request with an expectation is not waved through', async () => {
    const { host } = new URL(open.door.address);
    const heard = await raw(
      `POST /rpc/store/state HTTP/1.1\r\nHost: evil.example\r\nExpect: 100-continue\r\nContent-Length: 2\r\nConnection: close\r\n\r\n`,
    );
    expect(heard).toContain('421');
    expect(heard).not.toContain('100 Continue');
    expect(await raw(`GET / HTTP/1.1\r\nHost: ${host}\r\nExpect: something\r\nConnection: close\r\n\r\n`)).toContain('200 OK');
  });
});
