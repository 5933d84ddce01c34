import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { expect, kept, openShop, pasteTable, test } from './shop';

const orders = (page: Page) => page.getByRole('link', { name: 'Orders' });

test('a second tab shows what the first does, does not overwrite it, and takes over when it closes (rule 10)', async ({
  page,
  context,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await kept(page);
  const second = await context.newPage();
  await second.goto('./#/orders');
  await expect(second.getByText('Rollwright is open in another tab')).toBeVisible();
  await expect(second.getByText('1 order, 1 transfer, 4 copies')).toBeVisible();

  // Nothing can be typed there.
  await expect(second.getByRole('textbox', { name: 'Qty: crest' })).not.toBeEditable();

  // What is typed in the first is seen in the second.
  await orders(page).click();
  const own = page.getByRole('textbox', { name: 'Qty: crest' });
  await own.fill('6');
  await own.press('Enter');
  await expect(second.getByText('1 order, 1 transfer, 6 copies')).toBeVisible();

  await page.close();
  await expect(second.getByText('Rollwright is open in another tab')).toBeHidden();
  const taken = second.getByRole('textbox', { name: 'Qty: crest' });
  await taken.fill('7');
  await taken.press('Enter');
  await expect(second.getByText('1 order, 1 transfer, 7 copies')).toBeVisible();
});

test('the second tab takes over on request, and the first looks on', async ({ page, context }) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  const second = await context.newPage();
  await second.goto('./#/orders');
  await second.getByRole('button', { name: 'Write here instead' }).click();
  await expect(page.getByText('Rollwright is open in another tab')).toBeVisible();
  const count = second.getByRole('textbox', { name: 'Qty: crest' });
  await expect(second.getByText('Rollwright is open in another tab')).toBeHidden();
  await count.fill('5');
  await count.press('Enter');
  await expect(second.getByText('1 order, 1 transfer, 5 copies')).toBeVisible();
  await orders(page).click();
  await expect(page.getByText('1 order, 1 transfer, 5 copies')).toBeVisible();
});

test('of three tabs the youngest takes over: it alone writes, and all show one book (rule 10)', async ({
  page,
  context,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await kept(page);
  const [second, third] = [await context.newPage(), await context.newPage()];
  const follows = (tab: Page) => tab.getByText('Rollwright is open in another tab');
  for (const tab of [second, third]) {
    await tab.goto('./#/orders');
    await expect(follows(tab)).toBeVisible();
  }
  await third.getByRole('button', { name: 'Write here instead' }).click();
  await expect(follows(third)).toBeHidden();
  for (const tab of [page, second]) await expect(follows(tab)).toBeVisible();

  const count = third.getByRole('textbox', { name: 'Qty: crest' });
  await count.fill('9');
  await count.press('Enter');
  await orders(page).click();
  for (const tab of [page, second, third])
    await expect(tab.getByText('1 order, 1 transfer, 9 copies')).toBeVisible();

  // It goes on so when it closes: one of the others writes.
  await third.close();
  const following = async () => (await follows(page).count()) + (await follows(second).count());
  await expect.poll(following).toBe(1);
});

/** A Chromium of its own, so that it can be killed as a power cut would. */
async function ownBrowser(profile: string) {
  const binary = process.env.CHROMIUM ?? chromium.executablePath();
  const child = spawn(
    binary,
    [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      '--lang=en-GB',
      'about:blank',
    ],
    { detached: true, stdio: 'ignore' },
  );
  const portFile = join(profile, 'DevToolsActivePort');
  await expect
    .poll(
      () => {
        try {
          return readFileSync(portFile, 'utf8').split('\n').length;
        } catch {
          return 0;
        }
      },
      { timeout: 20_000 },
    )
    .toBeGreaterThan(1);
  const [port] = readFileSync(portFile, 'utf8').split('\n');
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
  const [context] = browser.contexts();
  if (!context) throw new Error('no context');
  const kill = () => {
    // The whole group: the browser's own helpers too.
    if (child.pid) process.kill(-child.pid, 'SIGKILL');
    rmSync(portFile, { force: true });
  };
  return { page: await context.newPage(), kill };
}

test('a killed browser loses nothing that it said was kept', async ({ baseURL }) => {
  const profile = mkdtempSync(join(tmpdir(), 'rollwright-profile-'));
  const address = baseURL ?? '';
  const first = await ownBrowser(profile);
  await first.page.goto(address);
  await first.page.getByRole('button', { name: 'Start with my own orders' }).click();
  await pasteTable(first.page, 'Club,crest,80 mm,80 mm,4,,no');
  await expect(first.page.getByText('1 order, 1 transfer, 4 copies')).toBeVisible();
  await kept(first.page);
  first.kill();

  const second = await ownBrowser(profile);
  await second.page.goto(`${address}#/orders`);
  await expect(second.page.getByText('1 order, 1 transfer, 4 copies')).toBeVisible({ timeout: 15_000 });
  second.kill();
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
});

test('a full disk is said, the work goes on in memory, and is kept when there is room again', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args: [unknown, IDBValidKey?]) {
      if (document.documentElement.dataset.full === 'yes')
        throw new DOMException('full', 'QuotaExceededError');
      return put.apply(this, args);
    };
  });
  await openShop(page);
  await page.evaluate(() => {
    document.documentElement.dataset.full = 'yes';
  });
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await expect(page.getByRole('alert')).toContainText('The disk is full');
  await expect(page.getByText('1 order, 1 transfer, 4 copies')).toBeVisible();
  await page.evaluate(() => {
    document.documentElement.dataset.full = 'no';
  });
  await page.getByRole('button', { name: 'Try again' }).click();
  await kept(page);
  await page.reload();
  await expect(page.getByText('1 order, 1 transfer, 4 copies')).toBeVisible();
});
