import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/screens/**', 'tests/long/**'],
    // The program must not depend on the zone of the computer it runs on.
    env: { TZ: 'UTC' },
    testTimeout: 30_000,
    hookTimeout: 60_000,
    maxWorkers: 2,
  },
});
