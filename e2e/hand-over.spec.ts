import { type BrowserContext, chromium, type Page, type TestInfo } from '@playwright/test';
import readByOther from 'jsqr';
import { PNG } from 'pngjs';
import { modulesOf } from '../tests/hand-over/codes';
import { photograph, STILL } from '../tests/hand-over/photograph';
import { expectAccessible } from './accessible';
import { ADDRESS } from './addresses';
import { writeFilm } from './film';
import { beginOwnShop } from './own-shop';
import { expect, kept, notices, openLockedRun, openShop, test } from './shop';

/** A run of seven copies, locked for print and begun, with the Press room open. */
async function begunRun(page: Page): Promise<void> {
  await openLockedRun(page);
  await page.getByRole('link', { name: 'Press' }).click();
  await page.getByRole('button', { name: 'Begin the run' }).click();
  await expect(page.getByText(/0 of \d+ done/)).toBeVisible();
}

const openWindow = (page: Page) => page.getByRole('button', { name: 'Pass to another device' }).click();

/** A code that a window shows, with what an independent decoder reads in it. */
interface Shown {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
  readonly text: string;
}

/** All codes that a window shows, each read by an independent decoder. */
async function photographs(page: Page): Promise<Shown[]> {
  await page.getByRole('button', { name: 'Show as codes' }).click();
  const code = page.locator('.code-picture');
  await expect(code).toBeVisible();
  const rest = page.getByRole('button', { name: 'Stay at this one' });
  if (await rest.isVisible()) await rest.click();
  const count = page.getByTestId('code-count');
  const [, of = '1'] = /of (\d+)/.exec((await count.textContent()) ?? '') ?? [];
  const pictures = new Map<string, Shown>();
  while (pictures.size < Number(of)) {
    const name = (await count.textContent()) ?? '';
    const buffer = await code.screenshot();
    const { data, width, height } = PNG.sync.read(buffer);
    const text = readByOther(new Uint8ClampedArray(data), width, height)?.data ?? '';
    // Alphanumeric characters only: two of them take eleven bits (ISO/IEC 18004).
    expect(text).toMatch(/^RWHO1:[0-9A-Z $%*+\-./:]+$/);
    pictures.set(name, { name: `${name}.png`, mimeType: 'image/png', buffer, text });
    if (Number(of) > 1) await page.getByRole('button', { name: 'Next code' }).click();
  }
  await page.keyboard.press('Escape');
  return [...pictures.values()];
}

const takeIn = async (page: Page, files: { name: string; mimeType: string; buffer: Buffer }[]) => {
  await openWindow(page);
  await expect(page.getByRole('button', { name: 'Open files or pictures of codes' })).toBeEnabled();
  await page.getByRole('dialog').locator('input[type=file]').setInputFiles(files);
};

/** Another device, with a book of its own. */
async function otherDevice(page: Page): Promise<Page> {
  const context = await page
    .context()
    .browser()
    ?.newContext({
      viewport: { width: 390, height: 844 },
      deviceScaleFactor: 2,
      hasTouch: true,
      isMobile: true,
      locale: 'en-GB',
      timezoneId: 'UTC',
      baseURL: new URL('./', page.url()).href,
    });
  const other = await context?.newPage();
  if (!other) throw new Error('no second context');
  await beginOwnShop(other);
  await other.getByRole('link', { name: 'Press' }).click();
  return other;
}

test('a run goes to another device by codes, and its ticks come back, those of both sides kept', async ({
  page,
}) => {
  await begunRun(page);
  await openWindow(page);
  const codes = await photographs(page);
  expect(codes.length).toBeLessThanOrEqual(12);

  const phone = await otherDevice(page);
  // The last first, one left out, one twice: what is missing is named.
  const [first, ...others] = codes;
  await takeIn(phone, [...others].reverse());
  await expect(phone.getByText('Still missing: 1.')).toBeVisible();
  await phone
    .getByRole('dialog')
    .locator('input[type=file]')
    .setInputFiles([...codes.slice(-1), first as never]);
  await expect(notices(phone)).toContainText('Run 1 is here');
  await expect(phone.getByText(/^Received/)).toBeVisible();
  const left = (on: Page) => on.getByText(/\d+ of \d+ done/);
  const jobs = phone.locator('.job-list li');
  await expect(jobs.first()).toContainText('Warm up');
  // The shop's own book on the phone has none of it.
  await phone.getByRole('link', { name: 'Orders' }).click();
  await expect(phone.getByText('Harbour Rowing')).toHaveCount(0);
  await phone.getByRole('link', { name: 'Film', exact: true }).click();
  await expect(phone.getByText('The film is empty')).toBeVisible();
  await phone.getByRole('link', { name: 'Press' }).click();

  // Both sides tick: the phone the first two jobs, the other the warm-up by itself.
  await page.locator('.job-list input').first().click();
  await expect(left(page)).toContainText('1 of');
  await jobs.nth(1).locator('input').click();
  await expect(left(phone)).toContainText('2 of');
  await phone.getByRole('link', { name: 'Cut', exact: true }).click();
  for (let step = 0; step < 3; step += 1) await phone.getByRole('button', { name: 'Done, next' }).click();
  const pile = phone.locator('.pile').first();
  const cut = await pile.textContent();
  await kept(phone);
  // Without a network, as at the press.
  await phone.context().setOffline(true);
  await phone.locator('.folded-head summary').click();
  await phone.getByRole('button', { name: 'Pass to another device' }).click();
  const back = await photographs(phone);

  await takeIn(page, back);
  await expect(notices(page)).toContainText(/4 ticks taken in/);
  await expect(left(page)).toContainText('2 of');
  await page.getByRole('link', { name: 'Cut', exact: true }).click();
  await expect(page.locator('.pile').first()).toHaveText(cut ?? '');
  await phone.context().close();
});

test('a run goes over as a file with its pictures, is updated by another, and is taken off again', async ({
  page,
}) => {
  await begunRun(page);
  await openWindow(page);
  await page.getByRole('button', { name: 'Show as codes' }).click();
  await expect(page.locator('.code-picture')).toBeVisible();
  await expectAccessible(page, 'handing over', { within: '.dialog' });
  await page.keyboard.press('Escape');
  const save = async (on: Page) => {
    await openWindow(on);
    const download = on.waitForEvent('download');
    await on.getByRole('button', { name: 'Save as a file' }).click();
    const file = await download;
    await on.keyboard.press('Escape');
    const chunks: Buffer[] = [];
    for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
    return {
      name: file.suggestedFilename(),
      mimeType: 'application/octet-stream',
      buffer: Buffer.concat(chunks),
    };
  };
  const file = await save(page);
  expect(file.name).toBe('Run 1.rollwright');
  const other = await otherDevice(page);

  // What is no hand-over, or not whole, changes nothing.
  const broken = Buffer.from(file.buffer);
  broken[broken.length - 5] = (broken[broken.length - 5] ?? 0) ^ 1;
  await takeIn(other, [{ ...file, buffer: broken }]);
  await expect(other.getByText('That hand-over is damaged')).toBeVisible();
  const input = other.getByRole('dialog').locator('input[type=file]');
  await input.setInputFiles([{ name: 'orders.csv', mimeType: 'text/csv', buffer: Buffer.from('a,b') }]);
  await expect(other.getByText('“orders.csv” is no hand-over')).toBeVisible();
  await input.setInputFiles([file]);
  await expect(notices(other)).toContainText('Run 1 is here');
  await other.locator('.job-list input').first().click();
  await expect(other.getByText(/1 of \d+ done/)).toBeVisible();

  // The same run once more: its own ticks stay.
  await page.locator('.job-list input').nth(1).click();
  await expect(page.getByText(/2 of \d+ done/)).toBeVisible();
  await takeIn(other, [await save(page)]);
  await expect(notices(other)).toContainText('Run 1 is up to date, with 1 tick more');
  await expect(other.getByText(/2 of \d+ done/)).toBeVisible();

  // Its ticks come back when the run is closed at home: they are kept aside.
  await other.locator('.job-list input').first().click();
  const ticks = await save(other);
  // Its one span is ticked as printed.
  for (const name of ['All cured', 'All pressed', 'Close the run']) {
    await page.getByRole('button', { name }).click();
  }
  await page.getByRole('dialog').getByRole('button', { name: 'Close the run' }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await takeIn(page, [ticks]);
  await expect(page.getByText('That run is closed here since.')).toBeVisible();
  await page.getByRole('button', { name: 'Take them in' }).click();
  await expect(page.locator('.kept-aside')).toHaveCount(0);

  await other.getByRole('button', { name: 'Take off this device' }).click();
  await expect(other.getByText(/^Received/)).toHaveCount(0);
  await takeIn(other, [ticks]);
  await expect(other.getByText('That run is not on this device.')).toBeVisible();
  await expect(other.getByRole('button', { name: 'Take them in' })).toBeDisabled();
  await other.getByRole('button', { name: 'Discard' }).click();
  await expect(other.locator('.kept-aside')).toHaveCount(0);
  await other.context().close();
});

/** How a hand holds a camera before a screen, a little otherwise each time. */
const HELD = [
  { fill: 0.75, yaw: 16, pitch: -9, roll: 6, off: [0.04, 0.02] },
  { fill: 0.7, yaw: -14, pitch: 12, roll: -8, off: [-0.06, 0] },
  { fill: 0.8, yaw: 8, pitch: 10, roll: 3, off: [0.02, -0.03] },
  { fill: 0.72, yaw: -18, pitch: -6, roll: -4, off: [0, 0.03] },
] as const;

/** A browser with a camera, whose user answers whether it may be used; not every browser asks without a window. */
function asking({ project }: TestInfo, answer: 'allow' | 'deny', ...more: readonly string[]) {
  const { launchOptions } = project.use;
  const ui = `--use-fake-ui-for-media-stream${answer === 'deny' ? '=deny' : ''}`;
  const args = [...(launchOptions?.args ?? []), '--use-fake-device-for-media-stream', ui, ...more];
  return chromium.launch({ ...launchOptions, args });
}

/** A browser whose camera plays a film of these codes, some twice, each for half a second. */
function withCamera(codes: readonly string[], info: TestInfo) {
  const frames = codes.map((text, at) => {
    const uneven = { blur: 0.9, noise: 8, light: [0.8, 0.45], glare: [0.02, 0.15] } as const;
    return photograph(modulesOf(text), { ...STILL, width: 1280, ...uneven, ...HELD[at % HELD.length] }, at);
  });
  const film = info.outputPath('codes.y4m');
  writeFilm(film, frames, 500);
  return asking(info, 'allow', `--use-file-for-fake-video-capture=${film}`);
}

/** Keeps what the page gets of cameras, and each text of how many codes are read. */
async function watched(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.addInitScript(() => {
    const streams: MediaStream[] = [];
    const told: string[] = [];
    Object.assign(window, { streams, told });
    const { mediaDevices } = navigator;
    const open = mediaDevices.getUserMedia.bind(mediaDevices);
    mediaDevices.getUserMedia = async (wanted) => {
      const stream = await open(wanted);
      streams.push(stream);
      return stream;
    };
    new MutationObserver(() => {
      const text = document.querySelector('[data-testid="codes-read"]')?.textContent;
      if (text && told.at(-1) !== text) told.push(text);
    }).observe(document, { subtree: true, childList: true, characterData: true });
  });
  await beginOwnShop(page);
  await page.getByRole('link', { name: 'Press' }).click();
  await openWindow(page);
  return page;
}

const turnOn = (page: Page) => page.getByRole('button', { name: 'Read codes with the camera' }).click();

const seen = (page: Page) =>
  page.evaluate(() => {
    const { streams, told } = window as unknown as { streams: MediaStream[]; told: string[] };
    return { tracks: streams.map((stream) => stream.getTracks()[0]?.readyState), told };
  });

test('a camera reads the codes off a screen, in any order and some twice, and is let go of', async ({
  page,
}, info) => {
  await begunRun(page);
  await openWindow(page);
  const [first = '', second = '', third = ''] = (await photographs(page)).map(({ text }) => text);
  // Each is held in two ways: one may not do for what a code happens to say.
  const browser = await withCamera([third, first, third, second, first, second], info);
  try {
    const phone = await watched(await browser.newContext({ baseURL: ADDRESS, locale: 'en-GB' }));
    await turnOn(phone);
    // Each code is before the camera for a moment only, and a busy machine misses some.
    await expect(notices(phone)).toContainText('Run 1 is here', { timeout: 40_000 });
    await expect(phone.getByText(/0 of \d+ done/)).toBeVisible();
    const { told, tracks } = await seen(phone);
    expect(told[0]).toMatch(/^1 of 3 codes read\. Still missing: \d, \d\.$/);
    expect(told[1]).toMatch(/^2 of 3 codes read\. Still missing: \d\.$/);
    expect(tracks).toEqual(['ended']);

    // Taken away by the system, then turned on again; the window closed while it is only being opened.
    await openWindow(phone);
    await turnOn(phone);
    await expect(phone.locator('video.camera')).toBeVisible();
    await phone.evaluate(() => {
      const { streams } = window as unknown as { streams: MediaStream[] };
      streams.at(-1)?.getTracks()[0]?.dispatchEvent(new Event('ended'));
    });
    await expect(phone.getByText(/The camera was taken away/)).toBeVisible();
    await expect(phone.locator('video.camera')).toHaveCount(0);
    await turnOn(phone);
    await phone.keyboard.press('Escape');
    await expect.poll(async () => (await seen(phone)).tracks).toEqual(['ended', 'ended', 'ended']);
  } finally {
    await browser.close();
  }
});

test('a camera that may not be used is told, with what to do instead', async ({ browserName: _ }, info) => {
  const browser = await asking(info, 'deny');
  try {
    const page = await watched(await browser.newContext({ baseURL: ADDRESS, locale: 'en-GB' }));
    await turnOn(page);
    await expect(page.getByText(/The camera may not be used here/)).toBeVisible();
    await expect(page.getByText(/or open pictures of the codes, or the file\./)).toBeVisible();
    await expect(page.getByRole('button', { name: 'Open files or pictures of codes' })).toBeEnabled();
  } finally {
    await browser.close();
  }
});

test('without a camera, or with one in use, the sentence says what to do instead', async ({ page }) => {
  await openShop(page);
  await page.getByRole('link', { name: 'Press' }).click();
  await openWindow(page);
  await turnOn(page);
  await expect(page.getByText('No camera was found. Open pictures of the codes, or the file.')).toBeVisible();
  await page.evaluate(() => {
    navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', 'NotReadableError'));
  });
  await turnOn(page);
  await expect(page.getByText(/another program may be using it/)).toBeVisible();
});
