/**
 * One list of calls through every door: the loopback door, the window's port, the command line's socket and the call inside.
 */
import { createORPCClient, ORPCError } from '@orpc/client';
import { RPCLink } from '@orpc/client/message-port';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { noLog } from '../../electron/api/log.ts';
import { portHandler } from '../../electron/api/serve.ts';
import { answererOf, type Outcome, outcomeOf } from '../../electron/doors/answer-inside.ts';
import { askRunning, type InnerSocket, openInnerSocket } from '../../electron/doors/inner-socket.ts';
import { knock, pageHeaders } from '../knock.ts';
import { openDoor, type OpenDoor } from './open-door.ts';

type Door = (name: string, input: unknown) => Promise<Outcome>;
let open: OpenDoor;
let inner: InnerSocket;
const { port1, port2 } = new MessageChannel();

beforeAll(async () => {
  open = await openDoor();
  inner = await openInnerSocket(
    open.store.folder,
    answererOf(open.context, noLog, () => null),
  );
  open.store.announce(inner.announcement);
  portHandler(noLog).upgrade(port1, { context: open.context });
  port1.start();
  port2.start();
});
afterAll(async () => {
  port1.close();
  await inner.close();
  await open.close();
});

const overLoopback: Door = async (name, input) => {
  const { address, key } = open.door;
  const path = `/rpc/${name.replace('.', '/')}`;
  const { status, body } = await knock({
    address,
    path,
    method: 'POST',
    headers: pageHeaders(address, key),
    body: JSON.stringify({ json: input }),
  });
  const { json } = JSON.parse(body) as { json: { code: never; data: never } };
  return status === 200 ? { done: true, output: json } : { done: false, trouble: { code: json.code, ...(json.data as object) } as never };
};
const overPort: Door = async (name, input) => {
  const [subject = '', procedure = ''] = name.split('.');
  const client = createORPCClient<Record<string, Record<string, (input: unknown) => Promise<unknown>>>>(new RPCLink({ port: port2 }));
  try {
    return { done: true, output: await client[subject]?.[procedure]?.(input) };
  } catch (error) {
    if (!(error instanceof ORPCError)) throw error;
    return { done: false, trouble: { code: error.code, ...error.data } };
  }
};
const overSocket: Door = async (name, input) => {
  const answered = await askRunning(open.store.folder, { ask: 'call', name, input });
  return answered?.answer as Outcome;
};

test.each([
  ['setup.get', {}],
  ['jobs.list', {}],
  ['jobs.list', { text: 5 }],
  ['jobs.list', { unknown: true }],
  ['jobs.get', { id: '0190a000-0000-7000-8000-000000000000' }],
  ['rates.defaults', { role: 'shoot', currency: 'USD', validFrom: '2026-01-01' }],
  ['rates.defaults', { role: 'shoot', currency: 'ZZZ', validFrom: '2026-02-30' }],
  ['places.search', { text: 'Duluth' }],
  ['store.state', {}],
])('%s with %o has one outcome through every door', async (name, input) => {
  const inside = await outcomeOf(open.context, name, input, noLog);
  for (const door of [overLoopback, overPort, overSocket]) expect(await door(name, input)).toEqual(inside);
});

test('the inner socket answers nobody without its token', async () => {
  open.store.announce({ ...inner.announcement, token: 'f'.repeat(64) });
  expect(await askRunning(open.store.folder, { ask: 'call', name: 'setup.get', input: {} })).toBeNull();
});
