/**
 * `npm run dev`: the screens from their sources, reloaded on save, in front of the real loopback door. For developing alone:
 * the page has no content policy here. The door keeps every check; only the origin of our own development server is translated.
 */
import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { createServer } from 'vite';
import { openLoopback } from '../doors/loopback.ts';
import { pageFiles } from '../doors/page-files.ts';
import { begin } from './begin.ts';
import { openBrowser } from './browser.ts';
import { endWith } from './ending.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const say = (sentence: string): void => void process.stdout.write(`${sentence}\n`);

const { values } = parseArgs({ options: { data: { type: 'string' }, 'no-open': { type: 'boolean', default: false } } });
// Never a person's own data by accident.
const folder = values.data ?? `${ROOT}build/dev-data`;
if (values.data === undefined) mkdirSync(folder, { recursive: true, mode: 0o700 });

const { store, context, log } = await begin(folder, say);
const door = await openLoopback({ context, log, pages: pageFiles(`${ROOT}build/none`), port: 0 });
const server = await createServer({
  configFile: `${ROOT}vite.config.ts`,
  server: {
    host: '127.0.0.1',
    fs: { allow: [ROOT] },
    proxy: {
      '/rpc': {
        target: door.address,
        changeOrigin: true,
        configure: (proxy) => {
          proxy.on('proxyReq', (sent, received) => {
            if (received.headers.origin === `http://${received.headers.host ?? ''}`) sent.setHeader('origin', door.address);
          });
        },
      },
    },
  },
});
await server.listen();
endWith(log, async () => {
  await Promise.all([server.close(), door.close()]);
  store.close();
});
const address = `${server.resolvedUrls?.local[0] ?? ''}#key=${door.key}`;
say(`Kitbound for developing is at ${address}`);
say('Saving a screen reloads it. A change of core, db or electron starts the program again, with a new address.');
if (!values['no-open']) openBrowser(address);
