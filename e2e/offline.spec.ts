import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { expect, kept, openShop, pasteTable, sentence, test } from './shop';

test.use({ serviceWorkers: 'allow' });

const types: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

/** Serves a folder as any plain host does. */
async function serve(folder: string): Promise<Server> {
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://host').pathname;
    const file = join(folder, path === '/' ? 'index.html' : path);
    try {
      const body = readFileSync(file);
      response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' });
      response.end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return server;
}

const serviceWorkerReady = (page: import('@playwright/test').Page) =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller) {
      await new Promise((resolve) =>
        navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
      );
    }
  });

test('after one visit the app starts with the network off, and keeps what is entered then', async ({
  page,
  context,
}) => {
  await openShop(page);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByText('The film is empty')).toBeVisible();
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  await page.getByRole('button', { name: 'Lay out' }).click();
  await expect(sentence(page)).toBeVisible();
  // The map and its PDF come from what one visit has fetched.
  await page.getByRole('button', { name: 'Cut map' }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as PDF' }).click();
  expect((await download).suggestedFilename()).toBe('cut map Run 1.pdf');
  await kept(page);
  await page.reload();
  await page.goto('./#/film');
  await expect(sentence(page)).toBeVisible();
});

test.describe('a new version', () => {
  let folder = '';
  let server: Server;
  test.beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'rollwright-'));
    cpSync(new URL('../dist', import.meta.url).pathname, folder, { recursive: true });
    server = await serve(folder);
  });
  test.afterAll(() => {
    server.close();
    rmSync(folder, { recursive: true });
  });

  test('announces itself and waits for a press of a button', async ({ page }) => {
    const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
    await page.goto(address);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.reload();
    await serviceWorkerReady(page);
    // The next version differs in its page, and so in what its worker lists.
    const page2 = readFileSync(join(folder, 'index.html'), 'utf8').replace(
      '<title>Rollwright',
      '<title>Rollwright 2',
    );
    writeFileSync(join(folder, 'index.html'), page2);
    const worker = readFileSync(join(folder, 'sw.js'), 'utf8');
    writeFileSync(
      join(folder, 'sw.js'),
      worker.replace(/("?url"?:\s*"index\.html",\s*"?revision"?:\s*")[^"]*/, '$1next').concat('\n// next'),
    );
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    await expect(page.getByText('A new version is ready.')).toBeVisible();
    await expect(page).toHaveTitle('Rollwright');
    await page.getByRole('button', { name: 'Load it now' }).click();
    await expect(page).toHaveTitle('Rollwright 2');
  });
});

test('it can be installed: a manifest with icons of our own', async ({ page, request }) => {
  await page.goto('./');
  const href = await page.locator('link[rel="manifest"]').getAttribute('href');
  const manifest = await (await request.get(`./${href}`)).json();
  expect(manifest).toMatchObject({ name: 'Rollwright', display: 'standalone', start_url: './' });
  for (const { src } of manifest.icons) expect((await request.get(`./${src}`)).ok()).toBe(true);
});
