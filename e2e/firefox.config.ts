import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import common from './playwright.config';

const { launchOptions: _, ...use } = common.use ?? {};

/**
 * The main job in Firefox, one test at a time: `npm run e2e:firefox`. What does not go over WebDriver BiDi yet,
 * downloads, pages as PDF, the checks of accessibility and a page that is left while it loads, is left to Chromium.
 */
export default defineConfig({
  ...common,
  outputDir: '../test-results/firefox',
  workers: 1,
  timeout: 120_000,
  grepInvert: /on its pages|WCAG|however early/,
  use: {
    ...use,
    browserName: 'firefox',
    channel: 'moz-firefox',
    // What a picture is taken by breaks the page's own rules for styles.
    screenshot: 'off',
    launchOptions: { executablePath: fileURLToPath(new URL('firefox/launch.mjs', import.meta.url)) },
  },
  projects: [
    { name: 'the day', testMatch: /(day|tuesday|tables|outlines|press|folder-backup)\.spec\.ts/ },
    { name: 'the print-ready image', testMatch: 'print-image.spec.ts', grep: /each to a file of a folder/ },
  ],
});
