import { paint } from '../tests/output/print-image/reference';
import { giveArtwork, pngOf, storedCopies } from './print-image';
import { expect, kept, layOut, notices, openShop, pasteTable, test } from './shop';

/** Twice as wide as high. */
const emblem = pngOf(paint(400, 200, (x, y) => [x % 256, y, 90, 255]));
const other = pngOf(paint(300, 300, () => [20, 20, 160, 255]));

test('one design at four sizes in one gesture, and one undo', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, 'Harbour Club,tag,30,30,1,,no');
  const add = page.locator('.order-acts input[type=file]');
  await add.setInputFiles({ name: 'big_wave.png', mimeType: 'image/png', buffer: emblem });
  await expect(page.getByRole('dialog', { name: 'big wave: sizes and copies' })).toBeVisible();
  await page.getByRole('textbox', { name: 'Copies, as it is' }).fill('');
  for (const [size, count] of [
    ['adult', '12'],
    ['youth', '6'],
    ['toddler', '4'],
    ['left chest', '18'],
  ] as const) {
    await page.getByRole('textbox', { name: `Copies, ${size}` }).fill(count);
  }
  await page.getByRole('textbox', { name: 'Width, youth' }).fill('8 in');
  await page.getByRole('button', { name: 'Add 40 copies' }).click();
  await expect(page.getByText('1 order, 5 transfers, 41 copies')).toBeVisible();
  // 11 in and half of it; common practice for an adult front, no source.
  await expect(page.getByRole('textbox', { name: 'Width: big wave, adult' })).toHaveValue('279.4 mm');
  await expect(page.getByRole('textbox', { name: 'Height: big wave, adult' })).toHaveValue('139.7 mm');
  await expect(page.getByRole('textbox', { name: 'Height: big wave, youth' })).toHaveValue('101.6 mm');
  await expect(page.locator('.artwork.has-picture')).toHaveCount(4);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('1 order, 1 transfer, 1 copy')).toBeVisible();
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(page.getByText('1 order, 5 transfers, 41 copies')).toBeVisible();

  // The same file again, under another name.
  await add.setInputFiles({ name: 'copy of it.png', mimeType: 'image/png', buffer: emblem });
  await expect(page.getByText('This image is here already')).toBeVisible();
  await page.getByRole('textbox', { name: 'More copies of big wave, toddler' }).fill('3');
  await page.getByRole('button', { name: 'Add 3 copies' }).click();
  await expect(page.getByRole('textbox', { name: 'Qty: big wave, toddler' })).toHaveValue('7');
  await expect(page.getByText('1 order, 5 transfers, 44 copies')).toBeVisible();
  // And among others it is not added.
  await add.setInputFiles([
    { name: 'third.png', mimeType: 'image/png', buffer: emblem },
    { name: 'square.png', mimeType: 'image/png', buffer: other },
  ]);
  await expect(notices(page)).toContainText('third.png is the artwork of');
  await expect(page.getByText('1 order, 6 transfers, 45 copies')).toBeVisible();
});

test('another image for a transfer leaves its copies where they lie, and says when it would be stretched (rule 15)', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,40,3,,no');
  await giveArtwork(page, 'crest', 'crest.png', emblem);
  await layOut(page);
  await kept(page);
  const before = await storedCopies(page);
  expect(before).toHaveLength(3);
  await page.getByRole('link', { name: 'Orders' }).click();
  await giveArtwork(page, 'crest', 'crest 2.png', pngOf(paint(800, 400, () => [9, 90, 90, 255])));
  await expect(notices(page)).toContainText(
    'The artwork of crest is replaced; 3 copies of it stay where they lie on the film.',
  );
  await giveArtwork(page, 'crest', 'square.png', other);
  await expect(notices(page)).toContainText('has other proportions than its typed size');
  await giveArtwork(page, 'crest', 'square.png', other);
  await expect(notices(page)).toContainText('That is the image crest has already.');
  await kept(page);
  expect(await storedCopies(page)).toEqual(before);
});
