import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { cutOff, putBuild, putNextBuild } from './builds';
import { type Host, serve } from './host';
import { expect, kept, pasteTable, test } from './shop';

/** Each test has a host of its own, whose files it may change. */
let folder: string;
let host: Host;
test.beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'rollwright-'));
  putBuild(folder);
  host = await serve(folder);
});
test.afterEach(() => {
  host.close();
  rmSync(folder, { recursive: true });
});
test.use({ serviceWorkers: 'allow' });

const READY = 'A new version is ready.';

const isControlled = (page: Page) =>
  expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);

const lookForUpdate = (page: Page) =>
  page.evaluate(async () => void (await (await navigator.serviceWorker.getRegistration())?.update()));

/** Begins a shop of one transfer on the host, with all that works without a network fetched. */
async function openOn(page: Page): Promise<void> {
  await page.goto(host.address);
  await page.getByRole('button', { name: 'Start with my own orders' }).click();
  await expect(page.getByText('The film is empty')).toBeVisible();
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await kept(page);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await isControlled(page);
}

const load = (page: Page) => page.getByRole('button', { name: 'Load it now' }).click();
const room = (page: Page, name: string) => page.getByRole('link', { name, exact: true }).click();
const follows = (page: Page) => page.getByText('Rollwright is open in another tab');
const copies = (page: Page) => page.getByRole('textbox', { name: 'Qty: crest' });

/** The scripts that are kept. */
const keptScripts = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const names: string[] = [];
    for (const cache of await caches.keys())
      for (const { url } of await (await caches.open(cache)).keys()) names.push(url);
    return names.filter((name) => name.endsWith('.js'));
  });

test('two tabs are told of a new version once all of it is on the host, and the older goes on whole until it is loaded there too', async ({
  page,
  context,
}) => {
  // Where the browser asks for a place to save at, no test can answer.
  await page.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));
  await openOn(page);
  const second = await context.newPage();
  await second.goto(`${host.address}#/orders`);
  await expect(follows(second)).toBeVisible();
  const before = await keptScripts(page);

  putNextBuild(folder);
  await test.step('not all of its files are whole on the host: it is not taken', async () => {
    const mend = cutOff(folder, 'StockRoom');
    await lookForUpdate(second);
    await expect
      .poll(() => second.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.installing))
      .toBeNull();
    await second.reload();
    await expect(second).toHaveTitle('Rollwright');
    await expect(follows(second)).toBeVisible();
    for (const tab of [page, second]) await expect(tab.getByText(READY)).toBeHidden();
    mend();
  });
  await lookForUpdate(second);
  for (const tab of [page, second]) await expect(tab.getByText(READY)).toBeVisible();
  await load(second);
  await expect(second).toHaveTitle('Rollwright 2');
  await expect(follows(second)).toBeVisible();

  // The writer is of the older build: told, and whole, also in a room, a window and a worker that it has not needed before.
  await expect(page.getByText('A newer version runs in another tab.')).toBeVisible();
  await expect(page).toHaveTitle('Rollwright');
  await room(page, 'Stock');
  await expect(page.getByRole('main').getByRole('heading').first()).toBeVisible();
  await page.getByTestId('kept').getByRole('button').click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a backup' }).click();
  await download;
  await page.getByRole('button', { name: 'Close' }).click();
  expect(await keptScripts(page)).toEqual(expect.arrayContaining(before));

  // What is in the hand when the button is pressed is kept, and the other tab writes from then on.
  await room(page, 'Orders');
  await copies(page).fill('7');
  await load(page);
  await expect(page).toHaveTitle('Rollwright 2');
  await expect(page.getByText('1 order, 1 transfer, 7 copies')).toBeVisible();
  await expect(follows(page)).toBeVisible();
  await expect(follows(second)).toBeHidden();
  await copies(second).fill('9');
  await copies(second).press('Enter');
  await expect(page.getByText('1 order, 1 transfer, 9 copies')).toBeVisible();

  // No page uses the older build any more.
  const old = before.filter((name) => name.includes('/assets/'));
  await expect.poll(async () => (await keptScripts(page)).filter((name) => old.includes(name))).toEqual([]);
});

/** Damages what is kept: the files that begin so are cut off, or gone. */
const damage = (page: Page, start: string, how: 'cut off' | 'gone') =>
  page.evaluate(
    async ([part, what]) => {
      for (const name of await caches.keys()) {
        const cache = await caches.open(name);
        for (const request of await cache.keys()) {
          if (!request.url.includes(part)) continue;
          const file = await cache.match(request);
          if (what === 'gone') await cache.delete(request);
          else if (file) {
            const body = await file.blob();
            await cache.put(request, new Response(body.slice(0, body.size / 2), { headers: file.headers }));
          }
        }
      }
    },
    [start, how] as const,
  );

test('kept files that are cut off or gone are fetched anew, and it is said where they cannot be', async ({
  page,
  context,
}) => {
  await openOn(page);
  for (const [file, how] of [
    ['/index.html', 'cut off'],
    ['/assets/index-', 'gone'],
    ['/assets/StockRoom-', 'cut off'],
    ['/assets/LogRoom-', 'gone'],
  ] as const)
    await damage(page, file, how);
  await page.reload();
  for (const name of ['Stock', 'Log']) {
    await room(page, name);
    // The heading of this room, not of the one before: its files are there, and kept.
    await expect(page.getByRole('heading', { level: 1, name, exact: true })).toBeVisible();
  }
  await context.setOffline(true);
  await page.reload();
  await room(page, 'Stock');
  await expect(page.getByRole('heading', { level: 1, name: 'Stock', exact: true })).toBeVisible();

  await test.step('damaged, and not to be fetched', async () => {
    await context.setOffline(false);
    await page.close();
    // A page of its own: the browser names each file that it lacks in the console.
    const alone = await context.newPage();
    await alone.goto(host.address);
    await kept(alone);
    await damage(alone, '/assets/StockRoom-', 'cut off');
    await damage(alone, '/assets/index-', 'gone');
    host.close();
    await room(alone, 'Stock');
    await expect(
      alone.getByRole('alert').filter({ hasText: 'This part of the app is missing' }),
    ).toBeVisible();
    await alone.reload();
    await expect(alone.getByText('could not be fetched')).toBeVisible();
  });
});
