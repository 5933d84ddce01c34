import { expect, kept, openShop, pasteTable, test } from './shop';
import { openBlank } from './states';

test('where storage never answers, work in memory begins within 3 s, and it is said that nothing is kept', async ({
  page,
}) => {
  await page.addInitScript(() => {
    // What is saved goes to the downloads.
    Reflect.deleteProperty(window, 'showSaveFilePicker');
    Object.defineProperty(IDBFactory.prototype, 'open', {
      value: () => Object.create(EventTarget.prototype, {}),
    });
  });
  await page.goto('./#/orders');
  // Counted from the app's first sign, so that a busy machine's loading is left out.
  await expect(page.getByText('Opening your orders')).toBeVisible();
  await expect(page.getByRole('alert')).toContainText('The storage of this browser does not answer', {
    timeout: 4000,
  });
  await page.getByRole('button', { name: 'Start with my own orders' }).click();
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await expect(page.getByText('1 order, 1 transfer, 4 copies')).toBeVisible();
  await expect(page.getByRole('alert')).toContainText('gone when this tab is closed');
  const download = page.waitForEvent('download');
  await page.getByRole('alert').getByRole('button', { name: 'Save a backup' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Save a backup' }).click();
  expect((await download).suggestedFilename()).toContain('backup');
});

test('a book that was cleared is missed, and the way back is offered', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await kept(page);
  // On a page of the address without the app, as a browser that finds them damaged.
  await openBlank(page);
  await page.evaluate(async () => {
    for (const { name } of await indexedDB.databases()) if (name) indexedDB.deleteDatabase(name);
  });
  await page.goto('./#/orders');
  await expect(page.getByRole('alert')).toContainText('It was cleared or damaged');
  await page.getByRole('button', { name: 'Look for what to bring back' }).click();
  await expect(page.getByRole('dialog')).toContainText('Bring a backup back');
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  await page.getByRole('button', { name: 'Start anew' }).click();
  await expect(page.getByRole('alert')).toBeHidden();
});
