import { relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin, type UserConfig } from 'vite';

const root = fileURLToPath(new URL('.', import.meta.url));
const built = fileURLToPath(new URL('build/desktop', import.meta.url));

/** A bundled module finds the files beside its source, not beside the bundle. */
const whereTheSourceLies: Plugin = {
  name: 'where-the-source-lies',
  transform(code, id) {
    if (!id.startsWith(root) || id.includes('node_modules') || !code.includes('import.meta.url')) return null;
    const source = relative(built, id).split(sep).join('/');
    return { code: code.replaceAll('import.meta.url', `new URL(${JSON.stringify(source)}, import.meta.url).href`), map: null };
  },
};

/** One ES module with everything in it but the desktop itself and the library with native code. */
const main: UserConfig = {
  plugins: [whereTheSourceLies],
  ssr: { noExternal: true, external: ['electron', 'better-sqlite3'] },
  build: {
    ssr: 'electron/shell/main.ts',
    target: 'node24',
    minify: false,
    rolldownOptions: { output: { format: 'es', entryFileNames: 'main.mjs' } },
  },
};

/** One CommonJS file: a sandboxed preload can be nothing else. */
const preload: UserConfig = {
  ssr: { noExternal: true, external: ['electron'] },
  build: {
    ssr: 'electron/shell/preload.ts',
    target: 'node24',
    minify: false,
    emptyOutDir: false,
    rolldownOptions: { output: { format: 'cjs', entryFileNames: 'preload.cjs', codeSplitting: false } },
  },
};

export default defineConfig(({ mode }) => (mode === 'preload' ? preload : main));
