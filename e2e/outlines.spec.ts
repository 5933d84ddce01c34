import type { Page } from '@playwright/test';
import { PNG } from 'pngjs';
import { withDensity } from '../src/artwork';
import { giveArtwork } from './print-image';
import {
  copyRows,
  expect,
  figures,
  filmSurface,
  kept,
  layOut,
  onScreen,
  openShop,
  pasteTable,
  sentence,
  test,
  unfold,
} from './shop';

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const AROUND = 'with scissors or a contour cutter, around each outline';

/** A sash from corner to corner, 150 mm each way at 100 ppi, which leaves most of its box bare. */
function sash(): Buffer {
  const side = 591;
  const png = new PNG({ width: side, height: side });
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1)
      if (Math.abs(x - y) < 80) png.data.set([180, 60, 40, 255], 4 * (y * side + x));
  return Buffer.from(withDensity(new Uint8Array(PNG.sync.write(png)), { x: 3937, y: 3937 }));
}

test('copies are laid out by their outlines, at a price told before, drawn so on the map, and stay so when the page is loaded anew', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,sash,150,150,6,,no');
  await giveArtwork(page, 'sash', 'sash.png', sash());
  // The artwork's outline is found by its check.
  await expect(page.locator('.grade-button').first()).toHaveText(/good|check|poor/i, { timeout: 30_000 });
  await layOut(page);
  const boxes = await figures(page);
  await button(page, 'Film and price').click();
  await unfold(page, 'Cutting');
  await page.getByLabel('Cut apart').selectOption({ label: AROUND });
  await button(page, 'Compare in film').first().click();
  await expect(page.getByText(new RegExp(`^${AROUND}: .* m`))).toBeVisible({ timeout: 30_000 });
  await button(page, 'Save').click();
  const surface = filmSurface(page);
  const before = await surface.getAttribute('data-plans');
  await button(page, 'Lay out').click();
  await expect(surface).not.toHaveAttribute('data-plans', before ?? '');
  // Two rows of three boxes become one of sashes beside each other, within moments.
  await expect.poll(async () => (await figures(page)).metres).toBeLessThan(0.8 * boxes.metres);
  if (await button(page, 'Stop').isVisible()) await button(page, 'Stop').click();
  await expect(button(page, 'Stop')).toBeHidden();
  const outlines = await figures(page);
  await kept(page);
  await page.reload();
  await expect(sentence(page)).toBeVisible();
  expect((await figures(page)).metres).toBe(outlines.metres);
  // All of it may lie as it lies: nothing came off the film when it was checked anew.
  await expect(page.getByText(/came off the film/)).toBeHidden();
  await page.goto('./#/cut-map');
  await expect(page.locator('.sheet polygon')).toHaveCount(6);
});

test('a copy is turned by its handle, as far as the hand goes about its middle, in one step of undo (rule 2)', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,1,,any angle');
  await layOut(page);
  const [laid] = await copyRows(page);
  if (!laid) throw new Error('no copy');
  const before = await onScreen(page, laid);
  await page.mouse.click(before.x, before.y);
  // Away from the edges, where it has room to be turned.
  for (const name of ['From edge (mm)', 'Along (mm)']) {
    await page.getByRole('textbox', { name }).fill('120');
    await page.keyboard.press('Enter');
  }
  const [copy = laid] = await copyRows(page);
  const middle = await onScreen(page, copy);
  const angle = page.getByRole('textbox', { name: 'Turned by (°)' });
  await expect(angle).toHaveValue('0');
  // The handle stands over the top of the image, which lies towards the start of the film.
  const away = (copy.length / 2) * middle.scale + 30;
  await page.mouse.move(middle.x - away, middle.y);
  await page.mouse.down();
  for (const degrees of [15, 30, 44]) {
    const turn = (degrees * Math.PI) / 180;
    await page.mouse.move(middle.x - away * Math.cos(turn), middle.y - away * Math.sin(turn));
  }
  // Near to a rest it is drawn there.
  await expect(angle).toHaveValue('45');
  // Far away from the film the hand goes on.
  await page.mouse.move(middle.x, 4);
  await expect(angle).toHaveValue('90');
  await page.mouse.move(4, middle.y);
  await expect(angle).toHaveValue('0');
  const away45 = Math.min(middle.x, middle.y) - 4;
  await page.mouse.move(middle.x - away45, middle.y - away45);
  await expect(angle).toHaveValue('45');
  await page.mouse.up();
  await expect(angle).toHaveValue('45');
  await page.keyboard.press('Control+z');
  await expect(angle).toHaveValue('0');
});
