import { writeFileSync } from 'node:fs';
import { expect, kept, notices, openShop, pasteTable, test } from './shop';

test('a backup comes back whole, a damaged one touches nothing, and both can be taken back', async ({
  page,
}, info) => {
  // Where the browser asks for a place, no test can answer.
  await page.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await kept(page);
  await page.getByRole('button', { name: /^Kept on this device/ }).click();
  await expect(page.getByText('No backup has been saved yet.')).toBeVisible();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a backup' }).click();
  const file = info.outputPath('backup.zip');
  await (await download).saveAs(file);
  await expect(page.getByText(/The last backup was saved on/)).toBeVisible();
  await page.keyboard.press('Escape');

  await pasteTable(page, 'Cafe,apron,100,90,2,,no');
  await expect(page.getByText('2 orders, 2 transfers, 6 copies')).toBeVisible();

  const restore = async (path: string) => {
    await page.getByRole('button', { name: /^Kept on this device/ }).click();
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Bring a backup back' }).click();
    await (await chooser).setFiles(path);
  };
  const broken = info.outputPath('broken.zip');
  writeFileSync(broken, 'no backup at all');
  await restore(broken);
  await expect(notices(page)).toContainText(
    'This file is not a backup of Rollwright. Nothing here was changed.',
  );
  await page.keyboard.press('Escape');
  await expect(page.getByText('2 orders, 2 transfers, 6 copies')).toBeVisible();

  await restore(file);
  await expect(notices(page)).toContainText('1 order is back.');
  await expect(page.getByText(/before something was brought back: 2 orders, 6 copies/)).toBeVisible();
  await page
    .getByRole('button', { name: /^Bring back/ })
    .first()
    .click();
  await page.keyboard.press('Escape');
  await expect(page.getByText('2 orders, 2 transfers, 6 copies')).toBeVisible();
  await kept(page);
  await page.reload();
  await expect(page.getByText('2 orders, 2 transfers, 6 copies')).toBeVisible();
});
