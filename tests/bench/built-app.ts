import { existsSync } from 'node:fs';
import { chromium, type Page } from '@playwright/test';
import { preview } from 'vite';
import { findChromium } from '../../.ci/chromium.mjs';
import { openShop } from '../../e2e/shop';

const PORT = 4182;

/** Opens the built app in Chromium at an empty shop of its own; says so, if there is no build. */
export async function inBuiltApp(what: string, act: (page: Page) => Promise<void>): Promise<void> {
  if (!existsSync('dist/index.html')) {
    console.log(`\n${what}: build the app first (npm run build).`);
    return;
  }
  const server = await preview({ preview: { host: '127.0.0.1', port: PORT, strictPort: true } });
  const browser = await chromium.launch({ executablePath: await findChromium(), args: ['--no-sandbox'] });
  try {
    const page = await browser.newPage({
      viewport: { width: 1440, height: 900 },
      locale: 'en-GB',
      baseURL: `http://127.0.0.1:${PORT}/`,
    });
    // The loader that runs this names functions by a helper that pages lack.
    await page.addInitScript('globalThis.__name = (value) => value');
    await openShop(page);
    await act(page);
  } finally {
    await browser.close();
    await server.close();
  }
}
