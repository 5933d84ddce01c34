import { PNG } from 'pngjs';
import { withDensity } from '../src/artwork';
import { expect, openShop, pasteTable, test } from './shop';

/** 300 ppi in pixels a metre. */
const DENSITY = 11_811;

/** A PNG with an empty margin of 40 pixels around a block of 600 x 300. */
function paddedArtwork(): Buffer {
  const png = new PNG({ width: 680, height: 380 });
  for (let y = 40; y < 340; y += 1) {
    for (let x = 40; x < 640; x += 1) png.data.set([180, 60, 40, 255], 4 * (y * 680 + x));
  }
  return Buffer.from(withDensity(new Uint8Array(PNG.sync.write(png)), { x: DENSITY, y: DENSITY }));
}

test('a PNG dropped on a transfer tells its trimmed size, shows its thumbnail, and outlives a reload', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,2,,no');
  const bytes = paddedArtwork().toString('base64');
  const dropped = await page.evaluateHandle((encoded) => {
    const data = Uint8Array.from(atob(encoded), (letter) => letter.charCodeAt(0));
    const transfer = new DataTransfer();
    transfer.items.add(new File([data], 'crest.png', { type: 'image/png' }));
    return transfer;
  }, bytes);
  const row = page
    .locator('.transfer-row')
    .filter({ has: page.getByRole('textbox', { name: 'Transfer: crest' }) });
  await row.dispatchEvent('drop', { dataTransfer: dropped });
  // 600 x 300 pixels at 300 ppi are 50.8 x 25.4 mm.
  await expect(row).toContainText('The file says 50.8 × 25.4 mm, its empty margin trimmed.');
  await expect(row).toContainText('other proportions');
  await expect(row.locator('img')).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Width: crest' })).toHaveValue('80 mm');
  await row.getByRole('button', { name: 'Use that size' }).click();
  await expect(page.getByRole('textbox', { name: 'Height: crest' })).toHaveValue('25.4 mm');
  await expect(row.getByText('other proportions')).toBeHidden();
  await page.reload();
  await expect(row.locator('img')).toBeVisible();
});
