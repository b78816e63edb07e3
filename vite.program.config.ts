import { relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin, type UserConfig } from 'vite';

const root = fileURLToPath(new URL('.', import.meta.url));
const built = fileURLToPath(new URL('build/program', import.meta.url));

/** A bundled module finds the files beside its source, not beside the bundle. */
const whereTheSourceLies: Plugin = {
  name: 'where-the-source-lies',
  transform(code, id) {
    if (!id.startsWith(root) || id.includes('node_modules') || !code.includes('import.meta.url')) return null;
    const source = relative(built, id).split(sep).join('/');
    return { code: code.replaceAll('import.meta.url', `new URL(${JSON.stringify(source)}, import.meta.url).href`), map: null };
  },
};

const target = 'node24';

/**
 * The three doors with everything in them but the desktop itself and the library with native code. Started from a few files
 * they are up several times sooner than from some hundreds of sources.
 */
const doors: UserConfig = {
  plugins: [whereTheSourceLies],
  ssr: { noExternal: true, external: ['electron', 'better-sqlite3'] },
  build: {
    ssr: true,
    target,
    minify: false,
    rolldownOptions: {
      input: {
        main: 'electron/shell/main.ts',
        host: 'electron/starting/host.ts',
        'command-line': 'electron/doors/command-line.ts',
        'calendar-reader': 'electron/calendars/read-worker.ts',
        'message-reader': 'electron/reading/worker.ts',
      },
      output: { format: 'es', entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' },
    },
  },
};

/** One CommonJS file: a sandboxed preload can be nothing else. */
const preload: UserConfig = {
  ssr: { noExternal: true, external: ['electron'] },
  build: {
    ssr: 'electron/shell/preload.ts',
    target,
    minify: false,
    emptyOutDir: false,
    rolldownOptions: { output: { format: 'cjs', entryFileNames: 'preload.cjs', codeSplitting: false } },
  },
};

export default defineConfig(({ mode }) => (mode === 'preload' ? preload : doors));
