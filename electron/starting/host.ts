/**
 * The loopback host: the program in this computer's browser, where there is no window.
 */
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { StoreError } from '../../db/trouble.ts';
import { answererOf } from '../doors/answer-inside.ts';
import { askRunning, openInnerSocket } from '../doors/inner-socket.ts';
import { openLoopback } from '../doors/loopback.ts';
import { pageFiles } from '../doors/page-files.ts';
import { beginPatiently } from './begin.ts';
import { openBrowser } from './browser.ts';
import { dataFolder } from './data-folder.ts';
import { endWith } from './ending.ts';

const PAGE = fileURLToPath(new URL('../../build/renderer', import.meta.url));
const say = (sentence: string): void => void process.stdout.write(`${sentence}\n`);

const options = readOptions();
try {
  await start(dataFolder(options.data));
} catch (error) {
  if (!(error instanceof StoreError) && !(error instanceof Error && 'code' in error)) throw error;
  process.stderr.write(
    error instanceof StoreError ? `${error.what} ${error.kept} ${error.todo}\n` : `${systemSentence(String(error.code))}\n`,
  );
  process.exitCode = 1;
}

async function start(folder: string): Promise<void> {
  const begun = await beginPatiently(folder, say, () => askRunning(folder, { ask: 'show' }));
  if ('answer' in begun) return say(`Kitbound is open already: ${String(begun.answer)}`);
  const { store, context, log } = begun;
  const host = await openLoopback({ context, log, pages: pageFiles(PAGE), port: options.port });
  const address = `${host.address}/#key=${host.key}`;
  const inner = await openInnerSocket(
    folder,
    answererOf(context, log, () => show(address)),
  );
  store.announce(inner.announcement);
  log({ event: 'started' });
  endWith(log, async () => {
    await Promise.all([inner.close(), host.close()]);
    log({ event: 'stopped' });
    store.close();
  });
  say(`Kitbound is open at ${address}`);
  say('Nothing leaves this computer. Ctrl+C closes it.');
  if (options.open) openBrowser(address);
}

/** A second start was made: the first comes up again. */
function show(address: string): string {
  if (options.open) openBrowser(address);
  return address;
}

function readOptions(): { data: string | undefined; port: number; open: boolean } {
  const { values } = parseArgs({
    options: { data: { type: 'string' }, port: { type: 'string', default: '0' }, 'no-open': { type: 'boolean', default: false } },
  });
  const port = Number(values.port);
  if (!/^\d{1,5}$/.test(values.port) || port > 65_535 || (port !== 0 && port < 1024)) {
    process.stderr.write('The port must be a whole number from 1024 to 65535. Nothing was started.\n');
    process.exit(2);
  }
  return { data: values.data, port, open: !values['no-open'] };
}

function systemSentence(code: string): string {
  if (code === 'EADDRINUSE')
    return `Port ${options.port} is taken by another program. Nothing was started. Choose another, or leave --port out.`;
  return `The system refused (${code}). Nothing was started.`;
}
