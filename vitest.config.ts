import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/screens/**', 'tests/long/**'],
    // The program must not depend on the zone of the computer it runs on.
    env: { TZ: 'UTC' },
    // Bounds, not measures: a slow machine takes longer and is not wrong.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
  },
});
