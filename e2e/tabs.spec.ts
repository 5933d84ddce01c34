import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { expect, kept, openShop, pasteTable, test } from './shop';

const orders = (page: Page) => page.getByRole('link', { name: 'Orders' });

test('a second tab shows what the first does, does not overwrite it, takes over on request, and is taken over from when it closes (rule 10)', async ({
  page,
  context,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await kept(page);
  const second = await context.newPage();
  await second.goto('./#/orders');
  const follows = (tab: Page) => tab.getByText('Rollwright is open in another tab');
  const count = (tab: Page) => tab.getByRole('textbox', { name: 'Qty: crest' });
  const enter = async (tab: Page, copies: string) => {
    await count(tab).fill(copies);
    await count(tab).press('Enter');
  };
  const shows = (tab: Page, copies: number) =>
    expect(tab.getByText(`1 order, 1 transfer, ${copies} copies`)).toBeVisible();

  await test.step('nothing can be typed there, and what is typed in the first is seen', async () => {
    await expect(follows(second)).toBeVisible();
    await shows(second, 4);
    await expect(count(second)).not.toBeEditable();
    await orders(page).click();
    await enter(page, '6');
    await shows(second, 6);
  });
  await test.step('it takes over on request, and the first looks on', async () => {
    await second.getByRole('button', { name: 'Write here instead' }).click();
    await expect(follows(page)).toBeVisible();
    await expect(follows(second)).toBeHidden();
    await enter(second, '5');
    await shows(second, 5);
    await shows(page, 5);
    await expect(count(page)).not.toBeEditable();
  });
  await test.step('when the one that writes closes, the other takes over', async () => {
    await second.close();
    await expect(follows(page)).toBeHidden();
    await enter(page, '7');
    await shows(page, 7);
  });
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
