import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { listProcedures } from '../../../electron/doors/described.ts';
import { type Answer, knock, pageHeaders } from '../../knock.ts';
import { openDoor, type OpenDoor } from '../open-door.ts';

let open: OpenDoor;
beforeAll(async () => {
  open = await openDoor();
});
afterAll(() => open.close());

/** The directives of a Content-Security-Policy. */
function policyOf(answer: Answer): Record<string, string> {
  const text = String(answer.headers['content-security-policy']);
  return Object.fromEntries(text.split('; ').map((directive) => [directive.split(' ')[0] ?? '', directive.split(' ').slice(1).join(' ')]));
}

function expectSafe(answer: Answer): void {
  expect(policyOf(answer)).toEqual({
    'default-src': "'none'",
    'script-src': "'self'",
    'style-src': "'self'",
    'font-src': "'self'",
    'img-src': "'self' data: blob:",
    'connect-src': "'self'",
    'frame-src': 'blob:',
    'object-src': "'none'",
    'base-uri': "'none'",
    'form-action': "'none'",
    'frame-ancestors': "'none'",
  });
  expect(answer.headers).toMatchObject({
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'cross-origin-opener-policy': 'same-origin',
    'cross-origin-resource-policy': 'same-origin',
    'cache-control': 'no-store',
  });
  expect(answer.headers['content-type']).toMatch(/; charset=utf-8$/);
  expect(Object.keys(answer.headers).filter((name) => name.startsWith('access-control'))).toEqual([]);
  expect(answer.headers['set-cookie']).toBeUndefined();
}

describe('headers', () => {
  test('are on every procedure, done or refused', async () => {
    const { address, key } = open.door;
    for (const { name } of listProcedures()) {
      const path = `/rpc/${name.replace('.', '/')}`;
      const headers = pageHeaders(address, key);
      expectSafe(await knock({ address, path, method: 'POST', headers, body: '{"json":{"unknown":1}}' }));
      expectSafe(await knock({ address, path, method: 'POST', headers: { ...headers, origin: 'http://evil.example' }, body: '{}' }));
    }
  });

  test('are on the page, on what does not exist, and on every refusal', async () => {
    const { address, key } = open.door;
    const answers = await Promise.all([
      knock({ address, path: '/' }),
      knock({ address, path: '/', method: 'HEAD' }),
      knock({ address, path: '/nothing.js' }),
      knock({ address, path: '/rpc/no/thing', method: 'POST', headers: pageHeaders(address, key), body: '{}' }),
      knock({ address, path: '/', headers: { host: 'evil.example' } }),
      knock({ address, path: '/', method: 'OPTIONS' }),
    ]);
    answers.forEach(expectSafe);
    expect(answers.map((answer) => answer.status)).toEqual([200, 200, 404, 400, 421, 405]);
    for (const answer of answers.slice(2)) expect(answer.headers['content-type']).toBe('application/json; charset=utf-8');
  });
});
