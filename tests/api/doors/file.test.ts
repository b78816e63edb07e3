/**
 * A procedure that takes a file: 8 MB go through every door, more is refused without being held.
 */
import { closeSync, ftruncateSync, openSync } from 'node:fs';
import { request } from 'node:http';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';

import { commandLine } from '../../../electron/doors/command-line.ts';
import { knock, pageHeaders } from '../../knock.ts';
import { temporaryFolder } from '../../store.ts';
import { openDoor, type OpenDoor } from '../open-door.ts';

let open: OpenDoor;
beforeAll(async () => {
  open = await openDoor();
});
afterAll(() => open.close());

const ID = '0190a000-0000-7000-8000-000000000000';
const attach = (base64: string) => JSON.stringify({ json: { id: ID, version: 1, name: 'dock.pdf', base64 } });

function send(body: string, path = '/rpc/expenses/attach') {
  const { address, key } = open.door;
  return knock({ address, path, method: 'POST', headers: pageHeaders(address, key), body });
}

test('8 MB in base64 are listened to where a file is taken, and nowhere else', async () => {
  const body = attach(Buffer.concat([Buffer.from('%PDF-1.7'), Buffer.alloc(7_999_992)]).toString('base64'));
  // It got as far as looking for the expense.
  expect(JSON.parse((await send(body)).body)).toMatchObject({
    json: { code: 'NOT_FOUND', data: { what: 'This expense is not on the books.' } },
  });
  expect(JSON.parse((await send(body, '/rpc/expenses/save')).body)).toMatchObject({
    json: { data: { what: 'The request is larger than 2 MB.' } },
  });
});

test('200 MB are refused with a sentence that says what to do, and are never held', async () => {
  const { address, key } = open.door;
  const { hostname, port } = new URL(address);
  const before = process.memoryUsage().arrayBuffers;
  let most = 0;
  const answer = await new Promise<{ status: number; body: string }>((resolve, reject) => {
    const sent = request(
      { hostname, port, path: '/rpc/expenses/attach', method: 'POST', headers: pageHeaders(address, key), agent: false },
      (response) => {
        const chunks: Buffer[] = [];
        response.on('data', (chunk: Buffer) => chunks.push(chunk));
        response.on('end', () => resolve({ status: response.statusCode ?? 0, body: Buffer.concat(chunks).toString('utf8') }));
      },
    );
    sent.on('error', reject);
    const chunk = Buffer.alloc(1_000_000, 'A');
    let left = 200;
    const more = (): void => {
      while (left > 0) {
        left -= 1;
        most = Math.max(most, process.memoryUsage().arrayBuffers);
        if (!sent.write(chunk)) return void sent.once('drain', more);
      }
      sent.end();
    };
    more();
  });
  expect(answer.status).toBe(413);
  expect(JSON.parse(answer.body)).toMatchObject({
    json: {
      code: 'BAD_INPUT',
      data: { what: 'The request is larger than 12 MB.', todo: expect.stringContaining('Make the picture smaller') },
    },
  });
  expect(most - before).toBeLessThan(150_000_000);
});

test('the command line reads no file that is larger than any procedure takes', async () => {
  const file = join(temporaryFolder(), 'long.json');
  const handle = openSync(file, 'w');
  ftruncateSync(handle, 200_000_000);
  closeSync(handle);
  const written: string[] = [];
  const output = vi.spyOn(process.stdout, 'write').mockImplementation((text: string | Uint8Array, done?: unknown) => {
    written.push(String(text));
    if (typeof done === 'function') done();
    return true;
  });
  try {
    expect(await commandLine(['expenses.attach', file])).toBe(2);
  } finally {
    output.mockRestore();
  }
  expect(JSON.parse(written.join(''))).toMatchObject({ code: 'BAD_INPUT', what: 'file is larger than 12 MB.' });
});
