import react from '@vitejs/plugin-react';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** The screens. Nothing is inlined: the pages are served under a policy that allows neither inline scripts nor inline styles. */
export default defineConfig({
  root: here('renderer'),
  base: './',
  plugins: [react()],
  css: { modules: { localsConvention: 'camelCaseOnly' } },
  build: {
    outDir: here('build/renderer'),
    emptyOutDir: true,
    target: 'esnext',
    cssTarget: 'esnext',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // Served from this computer: one file is read faster than several are asked for.
    chunkSizeWarningLimit: 1500,
  },
});
