import { defineConfig } from 'playwright/test';
import { chromiumPath } from './tests/chromium.ts';

/** The screens in the system's Chromium against the loopback host (each test file starts its own), and in the real window where its binary is. */
export default defineConfig({
  testDir: './tests',
  outputDir: './test-results',
  fullyParallel: false,
  workers: 2,
  // Bounds, not measures: a slow machine takes longer and is not wrong.
  timeout: 120_000,
  expect: { timeout: 15_000 },
  reporter: [['list']],
  projects: [
    {
      name: 'chromium',
      testMatch: 'screens/**/*.spec.ts',
      use: {
        browserName: 'chromium',
        launchOptions: { executablePath: chromiumPath() },
        viewport: { width: 1280, height: 800 },
        locale: 'en-US',
        timezoneId: 'America/Chicago',
      },
    },
    { name: 'window', testMatch: 'shell/**/*.spec.ts' },
  ],
});
