import type { Page } from '@playwright/test';
import { strFromU8, unzipSync } from 'fflate';
import { expect, kept, openShop, pasteTable, test } from './shop';

const FOLDER = 'Backup disk';

/** A folder of the private file system stands for one that a user chooses. */
const letChoose = (page: Page) =>
  page.addInitScript((name) => {
    Object.assign(window, {
      showDirectoryPicker: async () =>
        (await navigator.storage.getDirectory()).getDirectoryHandle(name, { create: true }),
    });
  }, FOLDER);

/** The files of the folder by their names. */
async function filesIn(page: Page): Promise<Map<string, Uint8Array>> {
  const files = await page.evaluate(async (name) => {
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle(name);
    const found: [string, number[]][] = [];
    for await (const [each, handle] of folder.entries()) {
      if (!(handle instanceof FileSystemFileHandle) || each.endsWith('.crswap')) continue;
      found.push([each, [...new Uint8Array(await (await handle.getFile()).arrayBuffer())]]);
    }
    return found;
  }, FOLDER);
  return new Map(files.map(([name, bytes]) => [name, Uint8Array.from(bytes)]));
}

/** The names of the orders in a backup. */
function ordersOf(backup: Uint8Array | undefined): string[] {
  // One that is written at this moment has nothing in it yet.
  if (!backup?.length) return [];
  const { records } = JSON.parse(strFromU8(unzipSync(backup)['book.json'] ?? new Uint8Array()));
  return Object.entries<{ name: string }>(records).flatMap(([key, { name }]) =>
    key.startsWith('order/') ? [name] : [],
  );
}

const openKeep = (page: Page) => page.getByRole('button', { name: /^Kept on this device/ }).click();

test('a chosen folder has a backup of the day, and is asked for again where the browser wants that', async ({
  page,
}) => {
  await letChoose(page);
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await kept(page);
  const top = page.getByTestId('kept');
  await expect(top).toContainText('no backup yet');
  await openKeep(page);
  await page.getByRole('button', { name: 'Choose a folder' }).click();
  await expect(page.getByText(`Backups go to the folder “${FOLDER}” in each hour of work.`)).toContainText(
    'The last was written on',
  );
  await expect(page.getByText(/The last backup was saved on/)).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(top).toContainText(/backup \d+ \w+ \d{4}/);
  const day = new Date().toISOString().slice(0, 10);
  const [[name, backup] = []] = await filesIn(page);
  expect(name).toBe(`rollwright ${day}.zip`);
  expect(ordersOf(backup)).toEqual(['Club']);

  // Opened anew, the browser wants to be asked: nothing is written until it is.
  await page.addInitScript(() => {
    let answer: PermissionState = 'prompt';
    Object.assign(FileSystemHandle.prototype, {
      queryPermission: async () => answer,
      requestPermission: async () => {
        answer = 'granted';
        return answer;
      },
    });
  });
  await page.reload();
  await expect(
    page.getByText(`Backups to the folder “${FOLDER}” wait until you allow them again.`),
  ).toBeVisible();
  await pasteTable(page, 'Cafe,apron,100,90,2,,no');
  await kept(page);
  expect(ordersOf((await filesIn(page)).get(`rollwright ${day}.zip`))).toEqual(['Club']);
  await page.getByRole('button', { name: 'Allow' }).click();
  await expect(page.getByText('wait until you allow them again')).toBeHidden();
  await expect
    .poll(async () => ordersOf((await filesIn(page)).get(`rollwright ${day}.zip`)).sort())
    .toEqual(['Cafe', 'Club']);
});

test('a folder that is gone is said, and another can be chosen', async ({ page }) => {
  await letChoose(page);
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await openKeep(page);
  await page.getByRole('button', { name: 'Choose a folder' }).click();
  await expect(page.getByText(/The last was written on/)).toBeVisible();
  await page.keyboard.press('Escape');
  await page.evaluate(async (name) => {
    await (await navigator.storage.getDirectory()).removeEntry(name, { recursive: true });
  }, FOLDER);
  await page.clock.install({ time: Date.now() + 2 * 3_600_000 });
  await pasteTable(page, 'Cafe,apron,100,90,2,,no');
  await expect(page.getByText(`The backup to the folder “${FOLDER}” could not be written.`)).toBeVisible();
  await openKeep(page);
  await page.getByRole('button', { name: 'Another folder' }).click();
  await page.keyboard.press('Escape');
  await expect(page.getByText('could not be written')).toBeHidden();
  await expect
    .poll(async () => [...(await filesIn(page)).values()].flatMap(ordersOf).sort())
    .toEqual(['Cafe', 'Club']);
  await openKeep(page);
  await page.getByRole('button', { name: 'No longer' }).click();
  await expect(page.getByRole('button', { name: 'Choose a folder' })).toBeVisible();
});
