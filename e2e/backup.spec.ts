import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { expect, kept, notices, openShop, pasteTable, test } from './shop';

/** A backup, whole by its digests, one order of which cannot be read. */
function withDamagedOrder(backup: Uint8Array, name: string): Uint8Array {
  const parts = unzipSync(backup);
  const book = JSON.parse(strFromU8(parts['book.json'] ?? new Uint8Array()));
  for (const record of Object.values<{ name?: unknown; due?: unknown }>(book.records))
    if (record.name === name) record.due = '2026-99-99';
  const written = strToU8(JSON.stringify(book));
  const manifest = JSON.parse(strFromU8(parts['manifest.json'] ?? new Uint8Array()));
  manifest.book = createHash('sha256').update(written).digest('hex');
  return zipSync({ ...parts, 'book.json': written, 'manifest.json': strToU8(JSON.stringify(manifest)) });
}

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

test('a backup with a damaged order and a snapshot of a removed one give back what they can', async ({
  page,
}, info) => {
  await page.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));
  await openShop(page);
  await pasteTable(
    page,
    'order,transfer,width,height,count,due\nClub,crest,80,80,4,2026-12-01\nCafe,apron,100,90,2,',
  );
  await kept(page);
  await page.getByRole('button', { name: /^Kept on this device/ }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a backup' }).click();
  const whole = info.outputPath('whole.zip');
  await (await download).saveAs(whole);
  const damaged = info.outputPath('damaged.zip');
  writeFileSync(damaged, withDamagedOrder(readFileSync(whole), 'Club'));

  const restore = async () => {
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Bring a backup back' }).click();
    await (await chooser).setFiles(damaged);
  };
  const dialog = page.getByRole('dialog');
  await restore();
  await expect(dialog.getByRole('alert')).toContainText('Nothing here has been touched yet.');
  await expect(dialog.getByRole('alert')).toContainText('1 order: Club');
  await expect(dialog.getByRole('alert')).toContainText('1 transfer: crest');
  await expect(dialog.getByRole('alert')).toContainText('4 copies');
  await dialog.getByRole('button', { name: 'Leave all as it is' }).click();
  await page.keyboard.press('Escape');
  await expect(page.getByText('2 orders, 2 transfers, 6 copies')).toBeVisible();

  await page.getByRole('button', { name: /^Kept on this device/ }).click();
  await restore();
  await dialog.getByRole('button', { name: 'Bring back the rest' }).click();
  await expect(notices(page)).toContainText('1 order is back.');

  // The book before it is the first snapshot: the order that is lacking comes back from there alone.
  await dialog
    .getByRole('button', { name: /^Look inside/ })
    .first()
    .click();
  await expect(dialog.getByText('Cafe, no due date, 2 copies')).toBeVisible();
  await expect(dialog.getByText('still in the book')).toHaveCount(1);
  await dialog.getByRole('checkbox', { name: /^Club, due .*, 4 copies$/ }).check();
  await dialog.getByRole('button', { name: 'Bring 1 order back' }).click();
  await expect(notices(page)).toContainText('Back as waiting: 1 order, 4 copies.');
  await page.keyboard.press('Escape');
  await expect(page.getByText('2 orders, 2 transfers, 6 copies')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('1 order, 1 transfer, 2 copies')).toBeVisible();
});
