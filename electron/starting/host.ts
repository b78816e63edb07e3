/**
 * The loopback host: the program in this computer's browser, where there is no window.
 */
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { ORPCError } from '@orpc/server';
import type { Trouble } from '../../core/contract/base.ts';
import { beginAnew, useSnapshot } from '../../db/recover.ts';
import { StoreError } from '../../db/trouble.ts';
import { keepCalendars } from '../calendars/keep.ts';
import { answererOf } from '../doors/answer-inside.ts';
import { askRunning, openInnerSocket } from '../doors/inner-socket.ts';
import { openLoopback } from '../doors/loopback.ts';
import { pageFiles } from '../doors/page-files.ts';
import { beginPatiently } from './begin.ts';
import { openBrowser } from './browser.ts';
import { dataFolder } from './data-folder.ts';
import { endWith } from './ending.ts';
import { beginWithSample } from './sample.ts';

const PAGE = fileURLToPath(new URL('../../build/renderer', import.meta.url));
const say = (sentence: string): void => void process.stdout.write(`${sentence}\n`);

const options = readOptions();
try {
  if (options) {
    const folder = dataFolder(options.data);
    recover(options, folder);
    await start(options, folder);
  }
} catch (error) {
  process.stderr.write(`${sentencesOf(error)}\n`);
  process.exitCode = 1;
}

type Options = { data: string | undefined; port: number; open: boolean; snapshot: string | undefined; anew: boolean; sample: boolean };

/** The ways back after damage, taken only when they are asked for by name. */
function recover({ snapshot, anew }: Options, folder: string): void {
  if (snapshot !== undefined) useSnapshot({ folder, name: snapshot, now: Date.now() });
  else if (anew) beginAnew({ folder, now: Date.now() });
  else return;
  say(`${anew ? 'An empty store' : `The snapshot ${snapshot ?? ''}`} is in its place; what was there is set aside in the data folder.`);
}

async function start({ port, open, sample }: Options, folder: string): Promise<void> {
  const begun = await beginPatiently(folder, say, () => askRunning(folder, { ask: 'show' }));
  if ('answer' in begun)
    return say(`Kitbound is open already: ${String(begun.answer)}${sample ? '\nThe sample year was not loaded: close it first.' : ''}`);
  const { store, context, log, reader } = begun;
  try {
    if (sample) await beginWithSample(context, say);
    const host = await openLoopback({ context, log, pages: pageFiles(PAGE), port });
    const address = `${host.address}/#key=${host.key}`;
    const show = (): string => {
      if (open) openBrowser(address);
      return address;
    };
    const inner = await openInnerSocket(folder, answererOf(context, log, show));
    store.announce(inner.announcement);
    const calendars = keepCalendars(context, log);
    reader.makeReady();
    log({ event: 'started' });
    endWith(log, async () => {
      await Promise.all([inner.close(), host.close(), calendars.close(), reader.close()]);
      log({ event: 'stopped' });
      store.close();
    });
    say(`Kitbound is open at ${show()}`);
    say('Nothing leaves this computer. Ctrl+C closes it.');
  } catch (error) {
    store.close();
    throw error;
  }
}

/** The options, or null when they cannot be meant: then it is said, and nothing is started. */
function readOptions(): Options | null {
  try {
    const { values } = parseArgs({
      options: {
        data: { type: 'string' },
        port: { type: 'string', default: '0' },
        'no-open': { type: 'boolean', default: false },
        'use-snapshot': { type: 'string' },
        'begin-anew': { type: 'boolean', default: false },
        sample: { type: 'boolean', default: false },
      },
    });
    const port = Number(values.port);
    if (/^\d{1,5}$/.test(values.port) && (port === 0 || (port >= 1024 && port <= 65_535))) {
      const { data, 'use-snapshot': snapshot, 'begin-anew': anew, sample } = values;
      if (snapshot === undefined || !anew) return { data, port, open: !values['no-open'], snapshot, anew, sample };
      process.stderr.write('Go on with a snapshot or begin anew, not both. Nothing was started.\n');
      process.exitCode = 2;
      return null;
    }
    process.stderr.write('The port must be a whole number from 1024 to 65535. Nothing was started.\n');
  } catch {
    process.stderr.write(
      'These options are not understood. Nothing was started. There are: --data DIR, --port N, --no-open, --sample, --use-snapshot NAME, --begin-anew.\n',
    );
  }
  process.exitCode = 2;
  return null;
}

/** How the way back that a trouble names is taken. */
function wayBack({ kind, snapshot }: StoreError): string[] {
  if (snapshot) return [`To do so: npm start -- --use-snapshot ${snapshot.name}`];
  return kind === 'damaged' || kind === 'file missing' ? ['To begin anew: npm start -- --begin-anew'] : [];
}

function sentencesOf(error: unknown): string {
  if (error instanceof StoreError) return [error.what, error.kept, error.todo, ...wayBack(error)].join(' ');
  if (error instanceof ORPCError) {
    const { what, kept, todo } = error.data as Trouble;
    return `${what} ${kept} ${todo}`;
  }
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code === 'EADDRINUSE') return 'This port is taken by another program. Nothing was started. Choose another, or leave --port out.';
  if (code !== '') return `The system refused (${code}). Nothing was started.`;
  throw error;
}
