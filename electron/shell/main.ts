/**
 * The desktop window's main process: a short list of what is set up, the window last.
 */
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { app } from 'electron';
import { keepCalendars } from '../calendars/keep.ts';
import { answererOf } from '../doors/answer-inside.ts';
import { openInnerSocket } from '../doors/inner-socket.ts';
import { dataFolder } from '../starting/data-folder.ts';
import { endWith } from '../starting/ending.ts';
import { setUpMenu } from './set-up-menu.ts';
import { setUpNavigation, setUpPermissions } from './set-up-borders.ts';
import { setUpPages, setUpScheme } from './set-up-pages.ts';
import { setUpStore } from './set-up-store.ts';
import { setUpWindow, showWindow } from './set-up-window.ts';

const BUILD = fileURLToPath(new URL('../../build', import.meta.url));

const { values } = parseArgs({ options: { data: { type: 'string' }, sample: { type: 'boolean' } }, strict: false });
const folder = dataFolder(typeof values.data === 'string' ? values.data : undefined);
// The browser engine keeps its own files inside the data folder, so that one folder is one program.
app.setPath('userData', join(folder, 'window'));

setUpScheme();
if (app.requestSingleInstanceLock()) await start();
else app.quit();

async function start(): Promise<void> {
  await app.whenReady();
  const begun = await setUpStore(folder, values.sample === true);
  if (!begun) return;
  const { store, context, log, reader } = begun;
  setUpPermissions();
  setUpNavigation();
  setUpMenu(process.platform);
  setUpPages(join(BUILD, 'renderer'));
  const window = await setUpWindow(context, log, join(BUILD, 'program', 'preload.cjs'));
  const show = (): string => {
    showWindow(window);
    return 'its window';
  };
  const inner = await openInnerSocket(folder, answererOf(context, log, show));
  store.announce(inner.announcement);
  const calendars = keepCalendars(context, log);
  reader.makeReady();
  app.on('second-instance', show);
  app.on('window-all-closed', () => app.quit());
  app.on('will-quit', () => {
    void inner.close();
    void calendars.close();
    void reader.close();
    store.close();
  });
  endWith(log, async () => app.quit());
}
