import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { builtProgram } from '../built.ts';
import { startHost } from '../host.ts';
import { temporaryFolder } from '../store.ts';

type Ran = { status: number | null; out: unknown; err: string };

function call(args: readonly string[], stdin = ''): Promise<Ran> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [builtProgram('command-line.mjs'), ...args]);
    const out: string[] = [];
    const err: string[] = [];
    child.stdout.on('data', (chunk: Buffer) => out.push(chunk.toString()));
    child.stderr.on('data', (chunk: Buffer) => err.push(chunk.toString()));
    child.on('close', (status) => resolve({ status, out: JSON.parse(out.join('')), err: err.join('') }));
    child.stdin.end(stdin);
  });
}

describe('the command line', () => {
  test('lists and describes without a store', async () => {
    const list = await call(['list']);
    expect(list.status).toBe(0);
    expect(list.out).toContainEqual({ name: 'jobs.list', kind: 'read', about: expect.any(String) });
    const described = await call(['describe', 'jobs.letGo']);
    expect(described).toMatchObject({ status: 0, out: { name: 'jobs.letGo', kind: 'write', input: { required: ['id', 'version'] } } });
  });

  test('reads its input from a file, from standard input, or takes none', async () => {
    const folder = temporaryFolder();
    const file = join(folder, 'input.json');
    writeFileSync(file, '\uFEFF{"text":"bakers"}');
    const data = ['--data', join(folder, 'data')];
    expect(await call(['jobs.list', ...data])).toMatchObject({ status: 0, out: { jobs: [] } });
    expect(await call(['jobs.list', file, ...data])).toMatchObject({ status: 0, out: { jobs: [] } });
    expect(await call([...data, 'jobs.list', '-'], '{"text":"bakers"}')).toMatchObject({ status: 0, out: { jobs: [] } });
  });

  test('ends with 2 for bad input, and says so as JSON and as a sentence', async () => {
    const data = ['--data', join(temporaryFolder(), 'data')];
    const cases: [string[], string, string][] = [
      [[], '', 'procedure'],
      [['jobs.nothing'], '', 'procedure'],
      [['describe', 'nothing'], '', 'procedure'],
      [['jobs.list', '/does/not/exist.json'], '', 'file'],
      [['jobs.list', '-'], '{broken', 'input'],
      [['jobs.list', '-'], '{"text":5}', 'text'],
      [['jobs.list', '--unknown'], '', 'arguments'],
      [['jobs.list', 'a', 'b'], '', 'arguments'],
    ];
    for (const [args, stdin, field] of cases) {
      const ran = await call([...args, ...data], stdin);
      expect([args, ran.status]).toEqual([args, 2]);
      expect(ran.out).toMatchObject({
        code: 'BAD_INPUT',
        what: expect.any(String),
        kept: 'Nothing was changed.',
        todo: expect.any(String),
        fields: [{ field }],
      });
      expect(ran.err).toMatch(/[.!?] Nothing was changed\. /);
    }
  });

  test('ends with 1 for what is not there, and for a folder that cannot be', async () => {
    const folder = temporaryFolder();
    const missing = await call(['jobs.get', '-', '--data', join(folder, 'data')], '{"id":"0190a000-0000-7000-8000-000000000000"}');
    expect(missing).toMatchObject({ status: 1, out: { code: 'NOT_FOUND' } });
    expect(await call(['jobs.list', '--data', join(folder, 'no', 'such')])).toMatchObject({
      status: 1,
      out: { code: 'STORE_TROUBLE', what: expect.stringContaining('not there') },
    });
  });

  test('calls at once wait for each other', async () => {
    const data = ['--data', join(temporaryFolder(), 'data')];
    const ran = await Promise.all([call(['store.state', ...data]), call(['store.state', ...data]), call(['store.state', ...data])]);
    expect(ran.map(({ status }) => status)).toEqual([0, 0, 0]);
  });
});

describe('while the program is open', () => {
  test('the call is handed to it, with the same answers and errors', async () => {
    const data = temporaryFolder();
    const host = await startHost({ data, page: false });
    try {
      expect(existsSync(join(data, 'running.json'))).toBe(true);
      const facts = JSON.stringify({ facts: { title: 'Bakers congress' } });
      expect(await call(['jobs.add', '-', '--data', data], facts)).toMatchObject({ status: 0 });
      expect(await host.call('jobs.list')).toMatchObject({ jobs: [{ title: 'Bakers congress' }] });
      expect(await call(['jobs.list', '-', '--data', data], '{"text":5}')).toMatchObject({
        status: 2,
        out: { fields: [{ field: 'text', sentence: 'must be text' }] },
      });
    } finally {
      expect(await host.close()).toBe(0);
    }
    expect(existsSync(join(data, 'running.json'))).toBe(false);
    expect(await call(['jobs.list', '--data', data])).toMatchObject({ status: 0, out: { jobs: [{ title: 'Bakers congress' }] } });
  });

  test('a folder with a path too long for a socket works as well', async () => {
    const data = join(temporaryFolder(), 'd'.repeat(120));
    mkdirSync(data);
    const host = await startHost({ data, page: false });
    try {
      expect(await call(['store.state', '--data', data])).toMatchObject({ status: 0 });
    } finally {
      await host.close();
    }
  });
});
