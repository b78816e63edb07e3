import { spawnSync } from 'node:child_process';
import { existsSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { conventionalFolder } from '../../../electron/starting/data-folder.ts';
import { hasDisplay } from '../../../electron/starting/browser.ts';
import { builtProgram } from '../../built.ts';
import { startHost } from '../../host.ts';
import { temporaryFolder } from '../../store.ts';

const second = (...args: string[]) => spawnSync(process.execPath, [builtProgram('host.mjs'), '--no-open', ...args], { encoding: 'utf8' });

describe('starting the host', () => {
  test('a second start brings up the first and changes nothing', async () => {
    const host = await startHost({ page: false });
    try {
      const again = second('--data', host.data);
      expect([again.status, again.stderr]).toEqual([0, '']);
      expect(again.stdout).toBe(`Kitbound is open already: ${host.page}\n`);
    } finally {
      await host.close();
    }
  });

  test.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)('%s closes cleanly', async (signal) => {
    const data = temporaryFolder();
    const host = await startHost({ data, page: false });
    expect(existsSync(join(data, 'kitbound.sqlite-wal'))).toBe(true);
    process.kill(host.pid, signal);
    expect(await host.close()).toBe(0);
    for (const left of ['kitbound.sqlite-wal', 'kitbound.sqlite-shm', 'running.json', 'running.sock'])
      expect([left, existsSync(join(data, left))]).toEqual([left, false]);
  });

  test('after kill -9 the next start works', async () => {
    const data = temporaryFolder();
    const host = await startHost({ data, page: false });
    process.kill(host.pid, 'SIGKILL');
    await host.close();
    const next = await startHost({ data, page: false });
    expect(next.key).not.toBe(host.key);
    expect(await next.close()).toBe(0);
  });

  test('what it writes is for this user alone', async () => {
    const host = await startHost({ page: false });
    for (const name of ['running.json', 'running.sock', 'kitbound.sqlite', 'kitbound.log'])
      expect([name, statSync(join(host.data, name)).mode & 0o077]).toEqual([name, 0]);
    await host.close();
  });

  test('what cannot be started is said in a sentence', async () => {
    const nowhere = second('--data', join(temporaryFolder(), 'no', 'such'));
    expect([nowhere.status, nowhere.stdout]).toEqual([1, '']);
    expect(nowhere.stderr).toContain('The data folder is not there');
    for (const args of [['--port', '80'], ['--port', 'x'], ['--unknown'], ['word']]) {
      const refused = second(...args);
      expect([refused.status, refused.stderr]).toEqual([2, expect.stringContaining('Nothing was started.')]);
    }
    const host = await startHost({ page: false });
    const data = temporaryFolder();
    const taken = second('--data', data, '--port', new URL(host.address).port);
    await host.close();
    expect(existsSync(join(data, 'kitbound.sqlite-wal'))).toBe(false);
    expect([taken.status, taken.stderr]).toEqual([1, expect.stringContaining('is taken by another program')]);
  });
});

describe('a damaged store', () => {
  test('is refused with the way back, which is taken only when it is named', async () => {
    const data = temporaryFolder();
    const host = await startHost({ data, page: false });
    await host.call('jobs.add', { facts: { title: 'Harvest supper' } });
    const { snapshot } = (await host.call('store.snapshot')) as { snapshot: { name: string } };
    await host.close();
    writeFileSync(join(data, 'kitbound.sqlite'), 'x'.repeat(8192));
    const refused = second('--data', data);
    expect([refused.status, refused.stderr]).toEqual([1, expect.stringContaining(`npm start -- --use-snapshot ${snapshot.name}`)]);
    expect(second('--data', data, '--use-snapshot', 'no-such').status).toBe(1);
    expect(second('--data', data, '--use-snapshot', snapshot.name, '--begin-anew').status).toBe(2);
    const back = await startHost({ data, page: false, args: ['--use-snapshot', snapshot.name] });
    expect(await back.call('jobs.list')).toMatchObject({ jobs: [{ title: 'Harvest supper' }] });
    await back.close();
  });
});

describe('the data folder', () => {
  test.each([
    ['linux', {}, '/home/ada/.local/share/kitbound'],
    ['linux', { XDG_DATA_HOME: '/data/ada' }, '/data/ada/kitbound'],
    ['linux', { XDG_DATA_HOME: 'relative' }, '/home/ada/.local/share/kitbound'],
    ['darwin', {}, '/home/ada/Library/Application Support/Kitbound'],
  ] as const)('on %s with %o', (platform, env, folder) => expect(conventionalFolder({ platform, env, home: '/home/ada' })).toBe(folder));
});

test('a browser is opened only where there is a display', () => {
  expect(hasDisplay('linux', {})).toBe(false);
  expect(hasDisplay('linux', { WAYLAND_DISPLAY: 'wayland-0' })).toBe(true);
  expect(hasDisplay('darwin', {})).toBe(true);
});
