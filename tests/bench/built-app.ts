import { existsSync } from 'node:fs';
import { type Browser, type BrowserContext, chromium, type Page } from '@playwright/test';
import { preview } from 'vite';
import { findChromium } from '../../.ci/chromium.mjs';
import { startShop } from '../../e2e/shop';

/** Serves the built app at a port that is free to a Chromium of its own; says so, if there is no build. */
export async function withBuiltApp(
  what: string,
  act: (context: BrowserContext, browser: Browser, address: string) => Promise<void>,
): Promise<void> {
  if (!existsSync('dist/index.html')) {
    console.log(`\n${what}: build the app first (npm run build).`);
    return;
  }
  const server = await preview({ preview: { host: '127.0.0.1', port: 0 } });
  const [address = ''] = server.resolvedUrls?.local ?? [];
  const browser = await chromium.launch({ executablePath: await findChromium(), args: ['--no-sandbox'] });
  try {
    const context = await browser.newContext({
      viewport: { width: 1440, height: 900 },
      locale: 'en-GB',
      baseURL: address,
    });
    // The loader that runs this names functions by a helper that pages lack.
    await context.addInitScript('globalThis.__name = (value) => value');
    await act(context, browser, address);
  } finally {
    await browser.close();
    await server.close();
  }
}

/** Opens the built app at an empty shop of its own. */
export const inBuiltApp = (what: string, act: (page: Page) => Promise<void>): Promise<void> =>
  withBuiltApp(what, async (context) => {
    const page = await context.newPage();
    await startShop(page);
    await act(page);
  });
