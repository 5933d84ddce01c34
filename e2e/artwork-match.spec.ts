import type { Page } from '@playwright/test';
import { paint } from '../tests/output/print-image/reference';
import { pngOf } from './print-image';
import { expect, openShop, pasteTable, test } from './shop';

/** Drops images of these names on what a selector finds first. */
async function drop(page: Page, selector: string, names: readonly string[]): Promise<void> {
  const files = names.map((name, at) => ({
    name,
    bytes: [...pngOf(paint(60 + at, 40, (x, y) => [x % 256, y, (at * 60) % 256, 255]))],
  }));
  const transfer = await page.evaluateHandle((given) => {
    const data = new DataTransfer();
    for (const { name, bytes } of given)
      data.items.add(new File([new Uint8Array(bytes)], name, { type: 'image/png' }));
    return data;
  }, files);
  await page.locator(selector).first().dispatchEvent('drop', { dataTransfer: transfer });
}

test('artwork dropped on the page is matched over all orders by its names, shown, and taken in one step', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(
    page,
    '#1041 Mill,Front logo,90,60,2,,no\n#1041 Mill,Back print,90,60,2,,no\n#1042 Fair,Crest,90,60,2,,no',
  );
  await drop(page, 'h1', ['front_LOGO-2.png', '1042.png', 'sunflower.png']);
  const dialog = page.getByRole('dialog');
  await expect(dialog).toContainText('Like no transfer, or like several: sunflower.png.');
  await expect(dialog.getByLabel('front_LOGO-2.png')).toContainText('Front logo, 90 × 60 mm · #1041 Mill');
  await expect(dialog.getByLabel('1042.png').locator('option:checked')).toContainText(
    'Crest, 90 × 60 mm · #1042 Fair',
  );
  await dialog.getByRole('textbox', { name: /^Find/ }).fill('back');
  await dialog.getByLabel('sunflower.png').selectOption({ label: 'Back print, 90 × 60 mm · #1041 Mill' });
  await dialog.getByRole('button', { name: 'Take in 3 files' }).click();
  await expect(page.locator('.artwork.has-picture')).toHaveCount(3);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('.artwork.has-picture')).toHaveCount(0);

  // On an order of its own, or several on one transfer: each goes where it belongs.
  await drop(page, '.head-line header', ['crest.png', 'own.png']);
  await expect(dialog.getByLabel('crest.png').locator('option:checked')).toContainText(
    'Crest, 90 × 60 mm · #1042 Fair',
  );
  await expect(dialog.getByLabel('own.png').locator('option:checked')).toHaveText(/^a new transfer of/);
  await dialog.getByRole('button', { name: 'Take in 2 files' }).click();
  await expect(page.getByText('2 orders, 4 transfers, 7 copies')).toBeVisible();
});
