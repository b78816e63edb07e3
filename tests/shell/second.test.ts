import { join } from 'node:path';
import { expect, test, vi } from 'vitest';
import { openStore } from '../../db/open.ts';
import { openInnerSocket } from '../../electron/doors/inner-socket.ts';
import { setUpStore } from '../../electron/shell/set-up-store.ts';
import { NOW, temporaryFolder } from '../store.ts';
import { app, asked, askedFor } from './stand-in.ts';

vi.mock('electron', () => import('./stand-in.ts'));

test('a second window on a folder ends before it touches anything', async () => {
  app.isFirst = false;
  process.argv.push('--data', join(temporaryFolder(), 'data'));
  await import('../../electron/shell/main.ts');
  expect(askedFor('app.quit').length).toBe(1);
  expect(askedFor('app.whenReady')).toEqual([]);
});

test('a window beside a program in the browser says where that is, and ends', async () => {
  asked.length = 0;
  const folder = temporaryFolder();
  const store = await openStore({ folder, now: () => NOW });
  const inner = await openInnerSocket(folder, async () => 'http://127.0.0.1:1/');
  store.announce(inner.announcement);
  expect(await setUpStore(folder)).toBeNull();
  expect(askedFor('dialog.showErrorBox')[0]?.with).toEqual(['Kitbound is open already.', expect.stringContaining('http://127.0.0.1:1/')]);
  expect(askedFor('app.exit')[0]?.with).toEqual([1]);
  await inner.close();
  store.close();
});

test('a store that cannot be opened is said in sentences', async () => {
  asked.length = 0;
  expect(await setUpStore(join(temporaryFolder(), 'no', 'such'))).toBeNull();
  expect(askedFor('dialog.showErrorBox')[0]?.with[0]).toContain('The data folder is not there');
});
