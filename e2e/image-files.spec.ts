import { deflateSync } from 'node:zlib';
import type { Locator, Page } from '@playwright/test';
import { PNG } from 'pngjs';
import { chunkBytes, jpegBytes, pngWith } from '../tests/artwork/files';
import { inkJpeg } from '../tests/artwork/ink-jpeg';
import { layersFile, RESOLUTION, tiffOf } from '../tests/artwork/layered-files';
import { matrixProfile } from '../tests/artwork/profiles';
import { encoded, published, spaces, transposed } from '../tests/artwork/spaces';
import { decoded, type ImageFile, otherKinds, suiteFiles } from './png-files';
import { expect, leaveWindows, notices, openShop, pasteTable, test } from './shop';

/** Drops files as a file manager does. */
async function drop(target: Locator, files: readonly (ImageFile & { type?: string })[]): Promise<void> {
  const dropped = await target.page().evaluateHandle(
    (encoded) => {
      const transfer = new DataTransfer();
      for (const { name, type, data } of encoded) {
        const bytes = Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0));
        transfer.items.add(new File([bytes], name, { type }));
      }
      return transfer;
    },
    files.map(({ name, bytes, type = 'image/png' }) => ({ name, type, data: bytes.toString('base64') })),
  );
  await target.dispatchEvent('drop', { dataTransfer: dropped });
}

/** The pixels of a thumbnail, which of a small image is its trimmed box as it is. */
const thumbnail = (row: Locator) =>
  row.locator('img').evaluate(async (image: HTMLImageElement) => {
    const bitmap = await createImageBitmap(image, { premultiplyAlpha: 'none' });
    const drawing = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
    drawing?.drawImage(bitmap, 0, 0);
    const pixels = drawing?.getImageData(0, 0, bitmap.width, bitmap.height).data ?? [];
    return { width: bitmap.width, height: bitmap.height, rgba: [...pixels] };
  });

const rowOf = (page: Page, name: string) =>
  page
    .locator('.transfer-row')
    .filter({ has: page.getByRole('textbox', { name: `Transfer: ${name}`, exact: true }) });

const nameOf = (file: string) => file.replace(/\.png$/, '');

// An interlaced file is decoded at once, a gamma brought to sRGB: colours agree within rounding, alpha exactly.
const ROUNDING = 2;

test('every kind of PNG is read, and its pixels are those that an independent decoder sees', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,2,,no');
  const files = [...suiteFiles(), ...otherKinds()];
  expect(files.length).toBeGreaterThanOrEqual(27);
  const head = page.getByRole('region', { name: 'Club' }).locator('.order-head');
  await drop(head, files);
  await page.getByRole('button', { name: `Take in ${files.length} files` }).click();
  await expect(notices(page)).toContainText(`${files.length} files are taken in.`, { timeout: 30_000 });
  for (const { name, bytes } of files) {
    const row = rowOf(page, nameOf(name));
    // Rows far down are not in the page.
    if (await row.isHidden()) await page.getByRole('textbox', { name: 'Search' }).fill(nameOf(name));
    await expect(row.locator('img'), name).toBeVisible();
    const seen = await thumbnail(row);
    const wanted = decoded(bytes);
    if (!wanted) throw new Error(`${name} is blank`);
    expect({ name, width: seen.width, height: seen.height }).toEqual({
      name,
      width: wanted.width,
      height: wanted.height,
    });
    let [alpha, colour] = [0, 0];
    for (let at = 0; at < wanted.rgba.length; at += 1) {
      const off = Math.abs((seen.rgba[at] as number) - (wanted.rgba[at] as number));
      if (at % 4 === 3) alpha = Math.max(alpha, off);
      else if ((wanted.rgba[at - (at % 4) + 3] as number) === 255) colour = Math.max(colour, off);
    }
    expect({ name, alpha, close: colour <= ROUNDING }, `${name}: ${colour}`).toEqual({
      name,
      alpha: 0,
      close: true,
    });
  }
});

/** A wide space, and colours of it that sRGB holds and does not. */
function wideSpace() {
  const space = spaces['a P3 with the curve of sRGB'];
  if (!space) throw new Error('no such space');
  return space;
}
const INSIDE = [180, 90, 60];
const OUTSIDE = [0, 255, 0];

/** Half of its columns inside of sRGB and half outside. */
function wideFile(): Buffer {
  const { curve, toXyz } = wideSpace();
  const [width, height] = [60, 40];
  const png = new PNG({ width, height });
  for (let at = 0; at < width * height; at += 1)
    png.data.set([...(at % width < width / 2 ? INSIDE : OUTSIDE), 255], 4 * at);
  const icc = deflateSync(matrixProfile('Wide', transposed(toXyz), curve));
  const name = [...'icc'].map((letter) => letter.charCodeAt(0));
  return Buffer.from(pngWith([{ type: 'iCCP', data: [...name, 0, 0, ...icc] }], PNG.sync.write(png)));
}

test('a layered file, a TIFF and colours that sRGB does not hold are shown as they print', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,2,,no');
  const side = 40;
  const plane = (value: number) => Array<number>(side * side).fill(value);
  const colours = [200, 30, 60];
  const files = [
    {
      name: 'layers.psd',
      bytes: layersFile({ width: side, height: side, resources: RESOLUTION }, colours.map(plane)),
    },
    {
      name: 'flat.tif',
      bytes: tiffOf(3, Array.from({ length: side * side }, () => colours).flat(), [], 2, { height: side }),
    },
    { name: 'wide.png', bytes: wideFile() },
  ].map(({ name, bytes }) => ({ name, bytes: Buffer.from(bytes) }));
  await drop(page.getByRole('region', { name: 'Club' }).locator('.order-head'), files);
  await page.getByRole('button', { name: `Take in ${files.length} files` }).click();
  await expect(notices(page)).toContainText(`${files.length} files are taken in.`);
  for (const name of ['layers', 'flat']) {
    const { rgba } = await thumbnail(rowOf(page, name));
    expect(rgba.slice(0, 4), name).toEqual([...colours, 255]);
  }
  // 40 pixels at 300 to the inch.
  await expect(page.getByRole('textbox', { name: 'Width: layers' })).toHaveValue('3.39 mm');

  const { width, rgba } = await thumbnail(rowOf(page, 'wide'));
  const space = wideSpace();
  for (const [x, colour] of [
    [0, INSIDE],
    [width - 1, OUTSIDE],
  ] as const) {
    // By the matrices of CSS Color Module Level 4, cut to what sRGB holds.
    published(space, colour).forEach((light, channel) => {
      const wanted = 255 * encoded(Math.min(1, Math.max(0, light)));
      expect(Math.abs((rgba[4 * x + channel] as number) - wanted)).toBeLessThanOrEqual(ROUNDING);
    });
  }
  await rowOf(page, 'wide').locator('.grade-button').click();
  await expect(page.getByRole('dialog')).toContainText('“Wide”: 50.0% of the ink lies outside of sRGB');
});

const small = PNG.sync.write(
  Object.assign(new PNG({ width: 60, height: 60 }), { data: Buffer.alloc(14_400, 200) }),
);

/** A PNG whose header claims a size and that ends there. */
function claiming(width: number, height: number): Buffer {
  const bytes = Buffer.from(small);
  bytes.writeUInt32BE(width, 16);
  bytes.writeUInt32BE(height, 20);
  const header = chunkBytes({ type: 'IHDR', data: [...bytes.subarray(16, 29)] });
  Buffer.from(header).copy(bytes, 8);
  return bytes;
}

const refusals: readonly (readonly [string, ImageFile & { type?: string }, string])[] = [
  ['a PNG cut off in its pixels', { name: 'cut.png', bytes: small.subarray(0, 60) }, 'cut.png is damaged'],
  [
    'a PNG without its end',
    { name: 'end.png', bytes: small.subarray(0, small.length - 12) },
    'end.png is damaged',
  ],
  [
    'a text with the name of an image',
    { name: 'text.png', bytes: Buffer.from('order,transfer') },
    'text.png is not a PNG',
  ],
  ['a file of no bytes', { name: 'empty.png', bytes: Buffer.alloc(0) }, 'empty.png is not a PNG'],
  ['a PNG of no size', { name: 'zero.png', bytes: claiming(0, 60) }, 'does not say how large it is'],
  [
    'a PNG of 60,000 x 60,000',
    { name: 'vast.png', bytes: claiming(60_000, 60_000) },
    'more than 150 million pixels',
  ],
  [
    'a PNG of 140,000 across',
    { name: 'wide.png', bytes: claiming(140_000, 10) },
    'more than 65,535 pixels wide',
  ],
  [
    'an SVG whose uses double 24 times',
    {
      name: 'doubled.svg',
      bytes: Buffer.from(
        `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path id="g0" d="M0 0h9v9z"/>${Array.from({ length: 24 }, (_, at) => `<g id="g${at + 1}"><use href="#g${at}"/><use href="#g${at}"/></g>`).join('')}</svg>`,
      ),
      type: 'image/svg+xml',
    },
    'more than 100,000 shapes',
  ],
  [
    'a JPEG that ends in its header',
    { name: 'half.jpg', bytes: Buffer.from(jpegBytes([])), type: 'image/jpeg' },
    'half.jpg is damaged',
  ],
  [
    'an SVG without a size',
    {
      name: 'no.svg',
      bytes: Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'),
      type: 'image/svg+xml',
    },
    'does not say how large it is',
  ],
];

test('what cannot be printed is refused in a sentence that says why; a JPEG of four inks is shown as its inks print, and one turned by its Exif is upright', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,2,,no');
  const crest = rowOf(page, 'crest');
  for (const [what, file, sentence] of refusals) {
    await drop(crest, [file]);
    await expect(notices(page), what).toContainText(sentence);
    await notices(page).getByRole('button', { name: 'Dismiss' }).first().click();
  }
  await expect(crest.locator('img')).toBeHidden();

  await test.step('four inks', async () => {
    const file = inkJpeg(
      [
        [255, 255, 255, 0],
        [0, 255, 255, 255],
        [128, 153, 153, 255],
      ],
      0,
    );
    await drop(crest, [{ name: 'a.jpg', bytes: Buffer.from(file), type: 'image/jpeg' }]);
    await expect(crest.locator('img')).toBeVisible();
    const { width, rgba } = await thumbnail(crest);
    const at = (x: number) => rgba.slice(4 * (3 * width + x), 4 * (3 * width + x) + 4);
    // By Little CMS 2.14 and the profile of CGATS TR 001, as in tests/artwork/inks.test.ts.
    for (const [x, wanted] of [
      [3, [35, 31, 32, 255]],
      [11, [0, 174, 239, 255]],
      [19, [140, 143, 144, 255]],
    ] as const) {
      const off = Math.max(...at(x).map((channel, index) => Math.abs(channel - (wanted[index] as number))));
      expect(off, String(at(x))).toBeLessThanOrEqual(2);
    }
    await crest.locator('.grade-button').click();
    await expect(page.getByRole('dialog')).toContainText('without a profile: CGATS TR 001 is assumed');
    await leaveWindows(page);
  });

  await test.step('turned by its Exif', async () => {
    const encoded = await page.evaluate(async () => {
      const drawing = new OffscreenCanvas(200, 100).getContext('2d');
      if (!drawing) throw new Error('no 2d context');
      drawing.fillStyle = '#c02020';
      drawing.fillRect(0, 0, 100, 100);
      drawing.fillStyle = '#2020c0';
      drawing.fillRect(100, 0, 100, 100);
      const blob = await drawing.canvas.convertToBlob({ type: 'image/jpeg', quality: 1 });
      return [...new Uint8Array(await blob.arrayBuffer())];
    });
    // Exif 2.32, 4.6.4: orientation 6, to be turned a quarter clockwise: red comes to the top.
    const exif = [
      0x45, 0x78, 0x69, 0x66, 0, 0, 0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0,
      0, 0, 0, 0, 0,
    ];
    const bytes = Buffer.from([
      ...encoded.slice(0, 2),
      0xff,
      0xe1,
      0,
      exif.length + 2,
      ...exif,
      ...encoded.slice(2),
    ]);
    await drop(crest, [{ name: 'turned.jpg', bytes, type: 'image/jpeg' }]);
    // The image before it is shown until then.
    await expect(crest.locator('img')).toHaveJSProperty('naturalHeight', 200);
    const { width, height, rgba } = await thumbnail(crest);
    expect([width, height]).toEqual([100, 200]);
    expect(rgba[0]).toBeGreaterThan(150);
    expect(rgba.at(-2)).toBeGreaterThan(150);
  });
});

test('an SVG runs nothing and fetches nothing, and it is said what is missing', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,2,,no');
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="80mm" height="80mm" viewBox="0 0 80 80" onload="window.parent.ran = 1">
    <script>window.ran = 1; fetch('https://example.org/from-script')</script>
    <style>@import url("https://example.org/style.css");</style>
    <rect width="80" height="80" fill="#205080"/>
    <image xlink:href="https://example.org/photo.png" width="40" height="40"/>
  </svg>`;
  await drop(rowOf(page, 'crest'), [{ name: 'live.svg', bytes: Buffer.from(svg), type: 'image/svg+xml' }]);
  const grade = rowOf(page, 'crest').locator('.grade-button');
  await expect(grade).toHaveAttribute('data-grade', /check|poor/);
  await grade.click();
  await expect(page.getByRole('dialog')).toContainText('outside links in the SVG');
  expect(await page.evaluate(() => 'ran' in window)).toBe(false);
  expect(asked.filter((url) => url.includes('example.org'))).toEqual([]);
});
