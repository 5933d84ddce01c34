import type { Page } from '@playwright/test';
import { PNG } from 'pngjs';
import { expectWellMade } from './accessible';
import { expect, kept, openShop, pasteTable, test } from './shop';

/** A PNG by a function of the pixel. */
function drawn(
  width: number,
  height: number,
  ink: (x: number, y: number) => readonly [number, number, number, number],
): Buffer {
  const png = new PNG({ width, height });
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) png.data.set(ink(x, y), 4 * (y * width + x));
  }
  return PNG.sync.write(png);
}

async function give(page: Page, name: string, bytes: Buffer): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose an image for crest' }).click();
  await (await chooser).setFiles({ name, mimeType: 'image/png', buffer: bytes });
}

const grade = (page: Page) => page.locator('.grade-button');

/** A disc of black, its rim orange, on a ground; at 40 mm it has 300 pixels an inch. */
const badge = (ground: readonly [number, number, number, number]) =>
  drawn(472, 472, (x, y) => {
    const r = Math.hypot(x - 236, y - 236);
    return r < 150 ? [10, 10, 12, 255] : r < 220 ? [230, 120, 20, 255] : ground;
  });

test('artwork is graded, its thin strokes are shown over it, and a smaller print is graded anew', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,40,40,2,,no');
  // A block with a line of five pixels, 0.42 mm, out of its side.
  await give(
    page,
    'line.png',
    drawn(472, 472, (x, y) => (x < 200 || Math.abs(y - 236) < 2.6 ? [40, 60, 120, 255] : [0, 0, 0, 0])),
  );
  await expect(grade(page)).toHaveAttribute('data-grade', 'check');
  await grade(page).click();
  const window = page.getByRole('dialog');
  await expect(window).toContainText('1 stroke thinner than 0.5 mm');
  await expect(window).toContainText('300 across, 300 down');
  await expect(window.getByRole('button', { name: /^Hide marks: 1 stroke/ })).toBeVisible();
  const marked = await window.locator('canvas').evaluate((canvas: HTMLCanvasElement) => {
    const { data } = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height) ?? { data: [] };
    let count = 0;
    for (let at = 0; at < data.length; at += 4)
      if (data[at] === 226 && data[at + 1] === 0 && data[at + 2] === 122) count += 1;
    return count;
  });
  expect(marked).toBeGreaterThan(1000);
  await expectWellMade(page, 'thin strokes marked');

  // The shop's own film holds 0.4 mm.
  await window.getByText('Limits of this shop').click();
  await window.getByRole('textbox', { name: 'Thinnest stroke' }).fill('0.3 mm');
  await window.getByRole('textbox', { name: 'White choke a side' }).fill('0.1');
  await window.getByRole('button', { name: 'Save' }).click();
  await expect(window).toContainText('Nothing to mend');
  await page.keyboard.press('Escape');
  await expect(grade(page)).toHaveAttribute('data-grade', 'good');

  // Printed at half the size the line is 0.21 mm.
  await page.getByRole('textbox', { name: 'Width: crest' }).fill('20');
  await page.getByRole('textbox', { name: 'Width: crest' }).press('Enter');
  await page.getByRole('textbox', { name: 'Height: crest' }).fill('20');
  await page.getByRole('textbox', { name: 'Height: crest' }).press('Enter');
  await expect(grade(page)).toHaveAttribute('data-grade', 'check');
  await kept(page);
  await page.reload();
  await expect(grade(page)).toHaveAttribute('data-grade', 'check');
});

test('a solid ground is knocked out with a preview, kept as an image of its own, and undone (rule 12)', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,40,40,2,,no');
  await give(page, 'badge.png', badge([250, 250, 250, 255]));
  await expect(grade(page)).toHaveAttribute('data-grade', 'poor');
  await grade(page).click();
  const window = page.getByRole('dialog');
  await expect(window).toContainText('a solid background of #fafafa');
  const corner = () =>
    window
      .locator('canvas')
      .evaluate((canvas: HTMLCanvasElement) => [
        ...(canvas.getContext('2d')?.getImageData(3, 3, 1, 1).data ?? []),
      ]);
  await window.getByRole('button', { name: 'Colour #1f2b46' }).click();
  expect(await corner()).toEqual([250, 250, 250, 255]);
  await window.getByRole('button', { name: 'Knock the background out' }).click();
  await expect.poll(corner).toEqual([0x1f, 0x2b, 0x46, 255]);
  await window.getByRole('slider', { name: 'Tolerance' }).fill('30');
  await window.getByRole('button', { name: 'Use this image' }).click();
  await expect(window).toContainText('Made here by knocking #fafafa out.');
  await expect(window).toContainText('Nothing to mend');
  await expect(window).toContainText('Film that bears ink');
  await page.keyboard.press('Escape');
  await expect(grade(page)).toHaveAttribute('data-grade', 'good');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(grade(page)).toHaveAttribute('data-grade', 'poor');
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(grade(page)).toHaveAttribute('data-grade', 'good');
  await kept(page);
  await page.reload();
  await expect(page.locator('.transfer-row img').first()).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(grade(page)).toHaveAttribute('data-grade', 'poor');
  await expect(page.locator('.transfer-row img').first()).toBeVisible();
});

test('strays are taken off with a preview, the design keeps its size, and one step takes it back (rule 12)', async ({
  page,
}) => {
  await openShop(page);
  // A disc of 25.4 mm, and a faint pixel that makes it 41.6 mm.
  await pasteTable(page, 'Club,crest,41.6,41.6,2,,no');
  const bytes = drawn(491, 491, (x, y) => {
    if (x === 0 && y === 0) return [90, 90, 90, 40];
    return Math.hypot(x - 340.5, y - 340.5) < 150 ? [200, 60, 20, 255] : [0, 0, 0, 0];
  });
  await give(page, 'stray.png', bytes);
  await expect(grade(page)).toHaveAttribute('data-grade', 'poor');
  await grade(page).click();
  const window = page.getByRole('dialog');
  await expect(window).toContainText(
    '1 stray far from the design makes it 41.6 × 41.6 mm instead of 25.4 × 25.4 mm',
  );
  const corner = () =>
    window
      .locator('canvas')
      .evaluate((canvas: HTMLCanvasElement) => [
        ...(canvas.getContext('2d')?.getImageData(0, 0, 1, 1).data ?? []),
      ]);
  await window.getByRole('button', { name: /^Hide marks: 1 stray/ }).click();
  expect(await corner()).not.toEqual([255, 255, 255, 255]);
  await window.getByRole('button', { name: 'Take the strays off' }).click();
  await expect.poll(corner).toEqual([255, 255, 255, 255]);
  await window.getByRole('button', { name: 'Use this image' }).click();
  await expect(window).toContainText('Made here by taking off what is smaller than 0.9 mm.');
  await expect(window).toContainText('Nothing to mend');
  await expect(window).toContainText('25.4 × 25.4 mm');
  await page.keyboard.press('Escape');
  const width = page.getByRole('textbox', { name: 'Width: crest' });
  await expect(width).toHaveValue(/^25\.4/);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(width).toHaveValue(/^41\.6/);
  await expect(grade(page)).toHaveAttribute('data-grade', 'poor');
});

test('a pale fringe is taken off, and a thin stroke thickened, each in a step of its own', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,40,40,2,,no');
  // A block with a pale edge, and a line of three pixels out of its side.
  const bytes = drawn(472, 472, (x, y) => {
    if (x >= 250) return Math.abs(y - 236) < 2 ? [40, 60, 120, 255] : [0, 0, 0, 0];
    const edge = Math.min(x - 10, y - 10, 462 - y, 249 - x);
    if (edge < 0) return [0, 0, 0, 0];
    return edge < 1 ? [200, 206, 222, 255] : [40, 60, 120, 255];
  });
  await give(page, 'fringe.png', bytes);
  await expect(grade(page)).toHaveAttribute('data-grade', 'check');
  await grade(page).click();
  const window = page.getByRole('dialog');
  await expect(window).toContainText('of the edges have a pale fringe');
  await window.getByRole('button', { name: 'Take the fringe off' }).click();
  await window.getByRole('button', { name: 'Use this image' }).click();
  await expect(window).toContainText('Made here by taking the fringe off.');
  await expect(window).not.toContainText('of the edges have');
  await expect(window).toContainText('1 stroke thinner than 0.5 mm');
  await window.getByRole('button', { name: 'Thicken the strokes' }).first().click();
  await window.getByRole('button', { name: 'Use this image' }).click();
  await expect(window).toContainText('Made here by thickening strokes to 0.6 mm.');
  await expect(window).toContainText('Film that bears ink');
  await expect(window).not.toContainText('thinner than');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await grade(page).click();
  await expect(page.getByRole('dialog')).toContainText('of the edges have a pale fringe');
});

test('an SVG is as large as its style says, and its coarse picture and missing font are named', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,40,2,,no');
  const photo = drawn(100, 100, (x, y) => [x, y, 90, 255]).toString('base64');
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" style="width: 160mm; height: 80mm" width="9" viewBox="0 0 160 80">
    <rect width="160" height="80" fill="#204060"/>
    <image href="data:image/png;base64,${photo}" x="20" y="20" width="40" height="40"/>
    <text x="90" y="50" font-size="24" font-family="Quillon Nowhere">Club</text></svg>`;
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose an image for crest' }).click();
  await (await chooser).setFiles({ name: 'a.svg', mimeType: 'image/svg+xml', buffer: Buffer.from(svg) });
  await expect(grade(page)).toHaveAttribute('data-grade', 'poor');
  await page
    .getByRole('button', { name: /160 × 80 mm/ })
    .or(page.getByText(/160 × 80 mm/))
    .first()
    .waitFor();
  await grade(page).click();
  const window = page.getByRole('dialog');
  // 100 pixels on a quarter of 80 mm.
  await expect(window).toContainText('a picture within the drawing has 127 pixels an inch at this size');
  await expect(window).toContainText('text in 1 font that is not here: Quillon Nowhere');
});

test('the white is shown on the garment, taken in by the choke, and black is offered to be knocked out on a black one only', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,40,40,2,,no');
  await give(page, 'badge.png', badge([0, 0, 0, 0]));
  await expect(grade(page)).toHaveAttribute('data-grade', 'good');
  await grade(page).click();
  const window = page.getByRole('dialog');
  await window.getByRole('button', { name: 'Colour #1c1c1e' }).click();
  const at = (x: number, y: number) =>
    window
      .locator('canvas')
      .evaluate(
        (canvas: HTMLCanvasElement, [over, down]) => [
          ...(canvas.getContext('2d')?.getImageData(over ?? 0, down ?? 0, 1, 1).data ?? []),
        ],
        [x, y],
      );
  await expect.poll(() => at(220, 220)).toEqual([10, 10, 12, 255]);
  await window.getByLabel('Show', { exact: true }).selectOption('the white under it');
  await expect(window).toContainText('The white, taken in by');
  await expect.poll(() => at(220, 220)).toEqual([255, 255, 255, 255]);
  // The disc reaches the edge of its box: one pixel inside of it the white is taken in.
  expect(await at(220, 1)).toEqual([0x1c, 0x1c, 0x1e, 255]);

  await window.getByRole('button', { name: 'Colour #1f2b46' }).click();
  await expect(window.getByRole('button', { name: 'Knock the black out' })).toBeHidden();
  await window.getByRole('button', { name: 'Colour #1c1c1e' }).click();
  await window.getByRole('button', { name: 'Knock the black out' }).click();
  await window.getByRole('button', { name: 'Use this image' }).click();
  await expect(window).toContainText('Made here by knocking #000000 out.');
  await expect(window).toContainText('Nothing to mend');
  await window.getByRole('button', { name: 'Back to the image it was made from' }).click();
  await expect(window).toContainText('black, for a black garment');
});

test('a finding is called meant, which is kept and undone, and a larger print asks again', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,40,40,2,,no');
  // At 40 mm, 200 pixels an inch; a block with a haze along its side.
  await give(
    page,
    'haze.png',
    drawn(315, 315, (x) => [40, 60, 120, x < 50 ? 120 : 255]),
  );
  await expect(grade(page)).toHaveAttribute('data-grade', 'poor');
  await grade(page).click();
  const window = page.getByRole('dialog');
  await window.getByRole('button', { name: /^Intended: 15.9% of the ink is semi-transparent/ }).click();
  await expect(window.locator('.found-head .grade')).toHaveText(/check/);
  await window.getByRole('button', { name: /^Intended: 200 pixels an inch/ }).click();
  await expect(window.locator('.found-head .grade')).toHaveText(/intended/);
  await expect(window.locator('.findings .grade')).toHaveText([/intended/, /intended/]);
  await window.getByRole('button', { name: /^Not intended: 200 pixels an inch/ }).click();
  await expect(window.locator('.found-head .grade')).toHaveText(/check/);
  await window.getByRole('button', { name: /^Intended: 200 pixels an inch/ }).click();
  await expectWellMade(page, 'findings called meant');
  await page.keyboard.press('Escape');
  await expect(grade(page)).toHaveAttribute('data-grade', 'meant');
  await expect(grade(page)).toHaveAccessibleName('Artwork of crest: intended. See what will print');

  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(grade(page)).toHaveAttribute('data-grade', 'check');
  await page.getByRole('button', { name: 'Redo' }).click();
  await kept(page);
  await page.reload();
  await expect(grade(page)).toHaveAttribute('data-grade', 'meant');

  const size = async (side: 'Width' | 'Height', mm: string) => {
    await page.getByRole('textbox', { name: `${side}: crest` }).fill(mm);
    await page.getByRole('textbox', { name: `${side}: crest` }).press('Enter');
  };
  await size('Width', '45');
  await size('Height', '45');
  await expect(grade(page)).toHaveAttribute('data-grade', 'check');
  await size('Width', '35');
  await size('Height', '35');
  await expect(grade(page)).toHaveAttribute('data-grade', 'meant');

  // Another image is not what was called meant.
  await page.locator('.transfer-row input[type=file]').setInputFiles({
    name: 'other.png',
    mimeType: 'image/png',
    buffer: drawn(315, 315, () => [9, 90, 40, 120]),
  });
  await expect(grade(page)).toHaveAttribute('data-grade', 'poor');
});
