import { defineConfig } from '@playwright/test';
import { ADDRESS } from './addresses';

export default defineConfig({
  testDir: '.',
  outputDir: '../test-results',
  timeout: 60_000,
  // Speed is measured elsewhere: a machine at work on other things may take its time.
  expect: { timeout: 15_000 },
  fullyParallel: true,
  // One more than a small machine has cores: tests wait for a moment now and then.
  workers: 3,
  retries: 0,
  forbidOnly: true,
  reporter: [['list'], ['json']],
  use: {
    baseURL: ADDRESS,
    viewport: { width: 1440, height: 900 },
    locale: 'en-GB',
    timezoneId: 'UTC',
    // A visit would fetch the whole app ahead each time; tests of being offline allow them.
    serviceWorkers: 'block',
    reuseContext: true,
    screenshot: 'only-on-failure',
    launchOptions: {
      ...(process.env.CHROMIUM ? { executablePath: process.env.CHROMIUM } : {}),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-background-networking',
        '--disable-component-update',
        // Two browsers fill both cores of a small machine: to compile and to clear memory beside a page only adds to that.
        '--js-flags=--single-threaded',
      ],
    },
  },
  webServer: {
    command: 'npx tsx e2e/serve.ts',
    cwd: '..',
    url: ADDRESS,
    reuseExistingServer: false,
  },
});
