/**
 * One durable save, through the door and without it, against the least that a disk must do: 4 KiB written and synced in the
 * same folder. A virtual disk may acknowledge early; that helps both sides.
 */
import { closeSync, fdatasyncSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs';
import { Agent, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore } from '../../db/open.ts';
import { contextOn } from '../context.ts';
import { callProcedure } from '../../electron/api/serve.ts';
import { startHost } from '../host.ts';
import { pageHeaders } from '../knock.ts';
import { pair, report } from './harness.ts';

const PAGE = Buffer.alloc(4096, 7);
const ROUNDS = 150;

/** Appends one page to a file of a folder and syncs it. */
function rawWriter(folder: string): { write: () => void; close: () => void } {
  const file = openSync(join(folder, 'raw.bin'), 'w');
  let position = 0;
  return {
    write() {
      writeSync(file, PAGE, 0, PAGE.length, position);
      fdatasyncSync(file);
      position += PAGE.length;
    },
    close: () => closeSync(file),
  };
}

let made = 0;
const nextJob = () => ({ facts: { title: `Bakers congress ${(made += 1)}` } });

const host = await startHost({ page: false });
const agent = new Agent({ keepAlive: true });
const headers = pageHeaders(host.address, host.key);
const raw = rawWriter(host.data);
const throughDoor = await pair({
  name: 'save a job through the door',
  against: 'a raw 4 KiB write with fdatasync in the same folder, which checks, keys and answers nothing',
  aim: 3,
  rounds: ROUNDS,
  ours: () => post(`${host.address}/rpc/jobs/add`, JSON.stringify({ json: nextJob() })),
  theirs: raw.write,
  async prove() {
    await post(`${host.address}/rpc/jobs/add`, JSON.stringify({ json: nextJob() }));
    const { jobs } = (await host.call('jobs.list')) as { jobs: unknown[] };
    if (jobs.length !== made) throw new Error('a job was not saved');
  },
});
raw.close();
agent.destroy();
await host.close();

const folder = mkdtempSync(join(tmpdir(), 'kitbound-bench-'));
const now = (): number => Date.now();
const store = await openStore({ folder, now });
const context = contextOn(store, now, 'UTC');
const beside = rawWriter(folder);
const storeOnly = await pair({
  name: 'save a job, without HTTP',
  against: 'the same raw write',
  aim: 1.5,
  rounds: ROUNDS,
  ours: () => callProcedure(context, 'jobs.add', nextJob()),
  theirs: beside.write,
});
beside.close();
store.close();
rmSync(folder, { recursive: true, force: true });

report(throughDoor, storeOnly);

function post(url: string, body: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const sent = request(url, { method: 'POST', agent, headers: { ...headers, 'content-length': Buffer.byteLength(body) } }, (response) => {
      response.resume();
      response.on('end', () => (response.statusCode === 200 ? resolve() : reject(new Error(`refused with ${response.statusCode}`))));
    });
    sent.on('error', reject);
    sent.end(body);
  });
}
