import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { PNG } from 'pngjs';
import { readPngHeader } from '../src/artwork';
import { composed, difference, type Picture, paint } from '../tests/output/print-image/reference';
import { giveArtwork, pngOf, storedCopies } from './print-image';
import { expect, kept, layOut, notices, openShop, pasteTable, test } from './shop';

/** No picker can be answered in a test; without one the image is downloaded. */
const withoutPickers = (page: Page) =>
  page.addInitScript(() => {
    Reflect.deleteProperty(window, 'showSaveFilePicker');
    Reflect.deleteProperty(window, 'showDirectoryPicker');
  });

/** An F, opaque and with all alphas in its stem: no turn or mirror leaves it alike. */
const letterF = (width: number, height: number): Picture =>
  paint(width, height, (x, y) => {
    const [u, v] = [x / width, y / height];
    if (v < 0.2) return [200, 30, (x * 7) % 256, 255];
    if (u < 0.25) return [(x * 5) % 256, (y * 3) % 256, 90, 1 + ((x + y) % 255)];
    if (v > 0.4 && v < 0.6 && u < 0.7) return [20, 160, 60, 255];
    return x === width - 1 && y === height - 1 ? [9, 9, 9, 255] : [0, 0, 0, 0];
  });

/** Three transfers: one at its own pixels, one enlarged, one made smaller and likely turned. */
const pictures: Record<string, Picture> = {
  // 40 x 30 mm at 300 ppi.
  crest: letterF(472, 354),
  badge: letterF(120, 80),
  banner: letterF(900, 260),
};
const DAY = ['Club,crest,40,30,3,,no', 'Club,badge,30,20,4,,yes', 'Club,banner,120,34.7,2,,yes'].join('\n');

async function openDay(page: Page): Promise<void> {
  await openShop(page);
  await pasteTable(page, DAY);
  for (const [name, picture] of Object.entries(pictures)) {
    await giveArtwork(page, name, `${name}.png`, pngOf(picture));
  }
  await layOut(page);
  await kept(page);
}

const leftBehind = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle('print-images').catch(() => null);
    const names: string[] = [];
    if (folder) for await (const name of folder.keys()) names.push(name);
    return names;
  });

async function written(page: Page): Promise<{ bytes: Uint8Array; picture: Picture; name: string }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Write the image' }).click();
  const file = await download;
  const bytes = readFileSync(await file.path());
  const { width, height, data } = PNG.sync.read(bytes);
  return { bytes, picture: { width, height, data }, name: file.suggestedFilename() };
}

test('a run is written as a PNG of true size, pixel by pixel what lies on the film', async ({ page }) => {
  await withoutPickers(page);
  await openDay(page);
  await page.getByRole('button', { name: 'Print-ready image' }).click();
  await expect(
    page.getByText('White ink and its choke are made by the printer’s own software'),
  ).toBeVisible();
  const { bytes, picture, name } = await written(page);
  expect(name).toBe('Run 1.png');

  const header = readPngHeader(bytes);
  // 300 ppi are 11811.02 pixels a metre; pHYs holds whole ones (W3C PNG, third edition, 11.3.4.3).
  expect(header.ok && header.value.density).toEqual({ x: 11_811, y: 11_811 });

  const copies = await storedCopies(page);
  expect(copies).toHaveLength(9);
  const end = Math.max(...copies.map(({ y, length }) => y + length));
  const expected = composed(copies, pictures, { width: 330_000, length: end + 10_000, ppi: 300 });
  expect({ width: picture.width, height: picture.height }).toEqual({
    width: expected.width,
    height: expected.height,
  });
  const apart = difference(expected, picture);
  // Copies at their own pixels are exact; resampled ones may be rounded the other way.
  expect(apart.opaque).toBeLessThanOrEqual(1);
  expect(apart.alpha).toBeLessThanOrEqual(1);
  expect(apart.colour).toBeLessThanOrEqual(1.5);
  const own = copies.filter(({ transfer }) => transfer === 'crest');
  for (const { x, y } of own) {
    const [left, top] = [Math.round((x * 300) / 25_400), Math.round((y * 300) / 25_400)];
    const crest = pictures.crest;
    if (!crest) throw new Error('no crest');
    for (let row = 0; row < crest.height; row += 1) {
      const from = 4 * ((top + row) * picture.width + left);
      const line = picture.data.subarray(from, from + 4 * crest.width);
      const same = Buffer.compare(
        Buffer.from(line),
        Buffer.from(crest.data.subarray(4 * crest.width * row, 4 * crest.width * (row + 1))),
      );
      expect(same, `row ${row}`).toBe(0);
    }
  }
});
