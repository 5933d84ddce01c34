import { readFileSync } from 'node:fs';
import { degrees, PDFDocument, PDFName, rgb } from '@cantoo/pdf-lib';
import type { Page } from '@playwright/test';
import { PNG } from 'pngjs';
import { readPngHeader } from '../src/artwork';
import { seededRandom } from '../src/units';
import { composed, difference, type Picture, paint } from '../tests/output/print-image/reference';
import { readPdf } from '../tests/output/read-pdf';
import { giveArtwork, pngOf, storedCopies } from './print-image';
import { expect, kept, layOut, lockRun, notices, openShop, pasteTable, test } from './shop';
import { openBlank } from './states';

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
const DAY = ['Club,crest,40,30,2,,no', 'Club,badge,30,20,2,,yes', 'Club,banner,60,17.3,1,,yes'].join('\n');

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
  await page.getByRole('button', { name: 'Save image' }).click();
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
  expect(copies).toHaveLength(5);
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

  // That was a draft: what is printed is an image of the run as it is locked, and once that is saved it is printed next.
  await page.keyboard.press('Escape');
  await lockRun(page);
  await expect(page.locator('main .button.primary:enabled')).toHaveText(['Print-ready image']);
  await page.getByRole('button', { name: 'Print-ready image' }).click();
  await page.getByLabel('Pixels an inch').fill('150');
  await written(page);
  await page.keyboard.press('Escape');
  await expect(page.locator('main .button.primary:enabled')).toHaveText(['All printed']);
});

test('spans are written each to a file of a folder, by name, and none is written over', async ({ page }) => {
  // A folder of the private file system stands for one that a user chooses.
  await page.addInitScript(() => {
    Object.assign(window, {
      showDirectoryPicker: async () =>
        (await navigator.storage.getDirectory()).getDirectoryHandle('chosen', { create: true }),
    });
  });
  await openShop(page);
  await pasteTable(page, 'Club,crest,150,150,8,,no');
  await giveArtwork(page, 'crest', 'crest.png', pngOf(letterF(90, 90)));
  await layOut(page);
  const names = () =>
    page.evaluate(async () => {
      const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('chosen');
      const found: string[] = [];
      for await (const name of folder.keys()) if (!name.endsWith('.crswap')) found.push(name);
      return found.sort();
    });
  const sizeOf = (name: string) =>
    page.evaluate(async (fileName) => {
      const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('chosen');
      const handle = await folder.getFileHandle(fileName);
      const image = await createImageBitmap(await handle.getFile());
      return [image.width, image.height] as const;
    }, name);
  await page.getByRole('button', { name: 'Print-ready image' }).click();
  await page.getByLabel('What is saved').selectOption({ label: 'each span by itself: 2 images' });
  await page.getByLabel('Pixels an inch').fill('150');
  await page.getByRole('button', { name: 'Save 2 images' }).click();
  await expect(notices(page)).toContainText('2 images are saved.');
  expect(await names()).toEqual(['Run 1 span 1.png', 'Run 1 span 2.png']);
  const lengths: number[] = [];
  for (const name of await names()) {
    const [width, height] = await sizeOf(name);
    expect(width).toBe(1949);
    lengths.push(height);
  }
  // 10 mm at each end, two rows of 150 mm a span and half a gap, four rows in all with three gaps.
  const whole = ((10 + 4 * 150 + 3 * 5 + 10) / 25.4) * 150;
  expect(Math.abs(lengths.reduce((sum, length) => sum + length, 0) - whole)).toBeLessThanOrEqual(2);

  await page.getByLabel('What is saved').selectOption({ label: 'each span by itself: 2 images' });
  await page.getByRole('button', { name: 'Save 2 images' }).click();
  await expect.poll(names).toContain('Run 1 span 2 (2).png');
  // A file is there before it is written whole: the window may be closed meanwhile.
  await page.getByRole('button', { name: 'Close' }).click();
  await page.getByRole('button', { name: 'Print-ready image' }).click();
  // The choice of pixels is remembered.
  await expect(page.getByLabel('Pixels an inch')).toHaveValue('150');
});

test('stopping leaves nothing behind, and the image can be written anew (rule 14)', async ({ page }) => {
  await withoutPickers(page);
  await openShop(page);
  await pasteTable(page, 'Club,crest,150,150,40,,no');
  await giveArtwork(page, 'crest', 'crest.png', pngOf(letterF(400, 400)));
  await layOut(page);
  await page.keyboard.press('Control+s');
  await page.getByLabel('Pixels an inch').fill('600');
  let downloads = 0;
  page.on('download', () => {
    downloads += 1;
  });
  await page.getByRole('button', { name: 'Save image' }).click();
  await expect(page.getByRole('progressbar', { name: 'Saving the image' })).toBeVisible();
  await expect.poll(() => leftBehind(page)).toHaveLength(1);
  await page.getByRole('button', { name: 'Stop' }).last().click();
  await expect(notices(page)).toContainText('Stopped. No half image was left behind.');
  await expect.poll(() => leftBehind(page)).toEqual([]);
  expect(downloads).toBe(0);
  await page.getByLabel('What is saved').selectOption({ label: 'span 1 only' });
  await page.getByLabel('Pixels an inch').fill('150');
  const { name } = await written(page);
  expect(name).toBe('Run 1 span 1.png');
});

test('a disk that fills while the image is written is told, leaves nothing behind, and the app lives on', async ({
  page,
}) => {
  await withoutPickers(page);
  await openShop(page);
  await pasteTable(page, 'Club,crest,50.8,50.8,1,,no');
  // Noise stays as large as it is: the image takes some 1 MB.
  const random = seededRandom(3);
  const noise = paint(600, 600, () => [256 * random(), 256 * random(), 256 * random(), 255]);
  await giveArtwork(page, 'crest', 'crest.png', pngOf(noise));
  await layOut(page);
  await kept(page);
  await page.getByRole('button', { name: 'Print-ready image' }).click();
  let downloads = 0;
  page.on('download', () => {
    downloads += 1;
  });
  const used = await page.evaluate(async () => (await navigator.storage.estimate()).usage ?? 0);
  const session = await page.context().newCDPSession(page);
  const origin = new URL(page.url()).origin;
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: used + 400_000 });
  await page.getByRole('button', { name: 'Save image' }).click();
  await expect(notices(page)).toContainText('The disk is full, so the image was not saved.');
  await expect.poll(() => leftBehind(page)).toEqual([]);
  expect(downloads).toBe(0);

  await session.send('Storage.overrideQuotaForOrigin', { origin });
  const { picture } = await written(page);
  expect(picture.width).toBe(Math.round((330 * 300) / 25.4));
  await page.keyboard.press('Escape');
  await page.getByRole('link', { name: 'Orders' }).click();
  await page.getByRole('textbox', { name: 'Transfer: crest' }).fill('badge');
  await page.getByRole('textbox', { name: 'Transfer: crest' }).press('Enter');
  await kept(page);
});

test('what a tab that was killed left behind is swept', async ({ page }) => {
  await openShop(page);
  await openBlank(page);
  await page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle('print-images', { create: true });
    const old = await folder.getDirectoryHandle('old', { create: true });
    await old.getFileHandle('Run 1.png', { create: true });
  });
  expect(await leftBehind(page)).toEqual(['old']);
  await page.goto('./');
  await expect.poll(() => leftBehind(page)).toEqual([]);
});

test('copies without artwork are named, and left blank only when that is said (rule 14); an SVG beside them is drawn at its printed pixels', async ({
  page,
}) => {
  await withoutPickers(page);
  await openShop(page);
  await pasteTable(page, 'Club,crest,40,20,1,,no\nClub,badge,30,30,1,,no');
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" width="40mm" height="20mm" viewBox="0 0 40 20"><rect width="20" height="20" fill="#c81e32"/><rect x="20" width="20" height="20" fill="#143c78"/></svg>';
  await giveArtwork(page, 'crest', 'crest.svg', Buffer.from(svg));
  await layOut(page);
  await page.getByRole('button', { name: 'Print-ready image' }).click();
  await expect(page.getByText('No artwork: CL badge.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Save image' })).toBeDisabled();
  await page.getByLabel('Pixels an inch').fill('100');
  await expect(page.getByText('Write a whole number from 150 to 720.')).toBeVisible();
  await page.getByLabel('Pixels an inch').fill('300');
  await page.getByText('Leave these blank on the film').click();
  const { picture } = await written(page);
  const copies = await storedCopies(page);
  const copyOf = (name: string) => {
    const copy = copies.find(({ transfer }) => transfer === name);
    if (!copy) throw new Error(`no ${name}`);
    return copy;
  };
  const blank = copyOf('badge');
  const at = (place: number) => Math.round((place * 300) / 25_400);
  for (let y = at(blank.y); y < at(blank.y + blank.length); y += 1) {
    const row = picture.data.subarray(
      4 * (y * picture.width + at(blank.x)),
      4 * (y * picture.width + at(blank.x + blank.width)),
    );
    expect(row.every((byte) => byte === 0)).toBe(true);
  }
  const pixel = (x: number, y: number) => [
    ...picture.data.subarray(4 * (y * picture.width + x), 4 * (y * picture.width + x) + 4),
  ];
  const crest = copyOf('crest');
  const [left, top] = [at(crest.x), at(crest.y)];
  // 40 x 20 mm are 472 x 236 pixels; the colours meet in the middle.
  expect(pixel(left, top)).toEqual([0xc8, 0x1e, 0x32, 255]);
  expect(pixel(left + 234, top + 235)).toEqual([0xc8, 0x1e, 0x32, 255]);
  expect(pixel(left + 237, top)).toEqual([0x14, 0x3c, 0x78, 255]);
  expect(pixel(left + 471, top + 235)).toEqual([0x14, 0x3c, 0x78, 255]);
  expect(pixel(left + 472, top)).toEqual([0, 0, 0, 0]);
});

test('a page of a PDF is drawn at its printed pixels, on a clear ground, and another page is chosen', async ({
  page,
}) => {
  const file = await PDFDocument.create();
  file.addPage([200, 100]).drawRectangle({ x: 20, y: 20, width: 72, height: 36, color: rgb(0, 0, 1) });
  const second = file.addPage([100, 200]);
  second.setRotation(degrees(90));
  second.drawRectangle({ x: 10, y: 10, width: 36, height: 36, color: rgb(200 / 255, 30 / 255, 50 / 255) });
  second.drawRectangle({ x: 10, y: 46, width: 36, height: 36, color: rgb(20 / 255, 60 / 255, 120 / 255) });
  // Half of it shows through a soft mask: a group whose brightness is alpha (ISO 32000-2, 11.5.3).
  const group = {
    Type: 'XObject',
    Subtype: 'Form',
    BBox: [0, 0, 100, 200],
    Group: { S: 'Transparency', CS: 'DeviceGray' },
  };
  const form = file.context.register(file.context.stream('1 g 10 82 18 36 re f', group));
  const mask = { Type: 'ExtGState', SMask: { Type: 'Mask', S: 'Luminosity', G: form } };
  second.node.setExtGState(PDFName.of('Soft'), file.context.register(file.context.obj(mask)));
  const drawing = file.context.stream('q /Soft gs 0 1 0 rg 10 82 36 36 re f Q');
  second.node.addContentStream(file.context.register(drawing));
  await withoutPickers(page);
  await openShop(page);
  await pasteTable(page, 'Club,crest,38.1,12.7,1,,no');
  await giveArtwork(page, 'crest', 'crest.pdf', Buffer.from(await file.save()));
  await expect(notices(page)).toContainText('crest.pdf has 2 pages; page 1 is taken.');
  await expect(page.getByText('The file says 25.4 × 12.7 mm')).toBeVisible();
  await page.locator('.grade-button').click();
  await page.getByLabel('Page of the PDF').selectOption('2 of 2');
  await page.keyboard.press('Escape');
  await expect(page.getByText('The file says 38.1 × 12.7 mm')).toBeVisible();
  await page.getByRole('button', { name: 'Use that size' }).click();
  await layOut(page);
  await page.getByRole('button', { name: 'Print-ready image' }).click();
  const { picture } = await written(page);
  const [copy] = await storedCopies(page);
  if (!copy) throw new Error('no copy');
  const at = (place: number) => Math.round((place * 300) / 25_400);
  const pixel = (x: number, y: number) => [
    ...picture.data.subarray(4 * (y * picture.width + x), 4 * (y * picture.width + x) + 4),
  ];
  const [left, top] = [at(copy.x), at(copy.y)];
  // Turned clockwise, what lies above lies to the right: three squares of 150 pixels, the last clear below its middle.
  expect(pixel(left + 2, top + 2)).toEqual([200, 30, 50, 255]);
  expect(pixel(left + 147, top + 147)).toEqual([200, 30, 50, 255]);
  expect(pixel(left + 152, top + 147)).toEqual([20, 60, 120, 255]);
  expect(pixel(left + 302, top + 2)).toEqual([0, 255, 0, 255]);
  expect(pixel(left + 447, top + 72)).toEqual([0, 255, 0, 255]);
  expect(pixel(left + 447, top + 78)).toEqual([0, 0, 0, 0]);
});

test('names beside copies stand whole on bare film, as any type sets them', async ({ page }) => {
  await withoutPickers(page);
  await openShop(page);
  await pasteTable(page, 'Jolly,gypsy,120,30,2,,no');
  await giveArtwork(page, 'gypsy', 'gypsy.png', pngOf(letterF(1417, 354)));
  await layOut(page);
  await kept(page);
  await page.getByRole('button', { name: 'Print-ready image' }).click();
  await page.getByText('The names of order and transfer with it').click();
  const { picture } = await written(page);
  const at = (place: number) => Math.round((place * 300) / 25_400);
  const copies = (await storedCopies(page)).map(({ number, x, y, width, length }) => ({
    number,
    box: { left: at(x), top: at(y), right: at(x + width), bottom: at(y + length) },
  }));
  const inked = ({
    left,
    top,
    right,
    bottom,
  }: {
    left: number;
    top: number;
    right: number;
    bottom: number;
  }) => {
    const found: { x: number; y: number }[] = [];
    for (let y = Math.max(0, top); y < Math.min(picture.height, bottom); y += 1) {
      for (let x = Math.max(0, left); x < Math.min(picture.width, right); x += 1) {
        if (picture.data[4 * (y * picture.width + x) + 3] !== 0) found.push({ x, y });
      }
    }
    return found;
  };
  for (const { number, box } of copies) {
    // Half a millimetre stays bare behind the copy; the next five hold its name.
    const near = { ...box, top: box.bottom, bottom: box.bottom + at(500) - 1 };
    expect(inked(near)).toEqual([]);
    const ink = inked({ ...near, top: near.bottom, bottom: box.bottom + at(4900) });
    const [xs, ys] = [ink.map(({ x }) => x), ink.map(({ y }) => y)];
    const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values) + 1;
    const seen = { width: spread(xs), height: spread(ys) };
    // Four millimetres from the top of its J to the foot of its y.
    expect(Math.abs(seen.height - at(4000))).toBeLessThanOrEqual(2);
    const wanted = await page.evaluate((text) => {
      const drawing = new OffscreenCanvas(1, 1).getContext('2d');
      if (!drawing) throw new Error('no 2d context');
      drawing.font = 'bold 200px sans-serif';
      const set = drawing.measureText(text);
      return {
        width: set.actualBoundingBoxRight + set.actualBoundingBoxLeft,
        height: set.actualBoundingBoxAscent + set.actualBoundingBoxDescent,
      };
    }, `Jolly, gypsy ${number}`);
    expect(seen.width / seen.height / (wanted.width / wanted.height)).toBeCloseTo(1, 1);
  }
});

/** A picture half round and mirrored from side to side, which is upside down. */
function upsideDown({ width, height, data }: Picture): Picture {
  const stride = 4 * width;
  const turned = new Uint8Array(data.length);
  for (let row = 0; row < height; row += 1)
    turned.set(data.subarray(stride * row, stride * (row + 1)), stride * (height - 1 - row));
  return { width, height, data: turned };
}

const isSame = (a: Picture, b: Picture): boolean =>
  a.width === b.width && Buffer.compare(Buffer.from(a.data), Buffer.from(b.data)) === 0;

test('the image follows the test strip; a locked run is written as it was locked, as a PNG and as a PDF of true size', async ({
  page,
}) => {
  await withoutPickers(page);
  await openShop(page);
  await pasteTable(page, 'Club,crest,40,30,2,,no');
  const crest = letterF(472, 354);
  await giveArtwork(page, 'crest', 'crest.png', pngOf(crest));
  await layOut(page);
  await kept(page);
  const copies = await storedCopies(page);
  const length = Math.max(...copies.map((copy) => copy.y + copy.length)) + 10_000;
  const expected = upsideDown(composed(copies, { crest }, { width: 330_000, length, ppi: 300 }));

  await test.step('mirrored where the printer does not mirror, turned where it begins at the end', async () => {
    await page.goto('./#/cut-map');
    await page.getByRole('button', { name: 'Test strip' }).click();
    await page.getByLabel('Which end came out first?').selectOption({ label: 'END 2' });
    await page.getByLabel('How does the F read, ink up?').selectOption({ label: 'rightly' });
    await page.getByRole('button', { name: 'Close' }).click();
    await expect(page.locator('.sheet').first()).not.toContainText('not mirrored on this printer');
    await page.goto('./#/film');
    await page.getByRole('button', { name: 'Print-ready image' }).click();
    await expect(page.getByText('the run’s start comes out first')).toBeVisible();
    expect(isSame((await written(page)).picture, expected)).toBe(true);
    await page.keyboard.press('Escape');
  });

  await test.step('whatever its transfers are given since', async () => {
    await lockRun(page);
    await page.getByRole('link', { name: 'Orders' }).click();
    const plain = paint(50, 50, () => [1, 2, 3, 255]);
    await giveArtwork(page, 'crest', 'other.png', pngOf(plain));
    await expect(notices(page)).toContainText('Runs that are locked for print keep the image crest had.');
    await page.getByRole('textbox', { name: 'Width: crest' }).fill('70 mm');
    await page.getByRole('textbox', { name: 'Width: crest' }).press('Enter');
    await page.getByRole('link', { name: 'Film', exact: true }).click();
    await page.getByRole('button', { name: 'Print-ready image' }).click();
    expect(isSame((await written(page)).picture, expected)).toBe(true);
  });

  await test.step('a span that is small enough, as a PDF', async () => {
    await page.getByLabel('File').selectOption({ label: 'PDF, one page of true size' });
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save image' }).click();
    const file = await download;
    expect(file.suggestedFilename()).toBe('Run 1.pdf');
    const [sheet, ...others] = await readPdf(new Uint8Array(readFileSync(await file.path())));
    expect(others).toEqual([]);
    expect(sheet?.width).toBeCloseTo(330, 2);
    expect(sheet?.height).toBeCloseTo(length / 1000, 2);
    expect(sheet?.images.map(({ pixels }) => pixels)).toEqual([
      { width: expected.width, height: expected.height },
    ]);
  });
});
