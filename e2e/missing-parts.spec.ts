import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { PNG } from 'pngjs';
import { withDensity } from '../src/artwork';
import { readRaw, writeRaw } from './kills/stored';
import { readRecords } from './records';
import { expect, layOut, notices, openShop, pasteTable, sentence, TABLE, test } from './shop';

test.use({ isQuiet: false });

/** The day of our own, without the row that is to be mended. */
const DAY = TABLE.split('\n')
  .filter((row) => !row.includes('abc'))
  .join('\n');

/** Takes a worker's file away, as an update does to a page that is still open; after so many times that it is still there. */
async function takeAway(page: Page, worker: string, still = 0): Promise<() => Promise<void>> {
  const files = `**/${worker}.worker-*.js`;
  let asked = 0;
  await page.route(files, (route) => {
    asked += 1;
    return asked <= still ? route.fallback() : route.fulfill({ status: 404 });
  });
  return () => page.unroute(files);
}

const isOffered = (page: Page) =>
  expect(notices(page).getByRole('button', { name: 'Load the app again' }).last()).toBeVisible();

test('a layout and a schedule whose workers are missing are said not to be made, and are made when they are back', async ({
  page,
}) => {
  const bringPlannerBack = await takeAway(page, 'planner');
  const bringSchedulerBack = await takeAway(page, 'scheduler');
  await openShop(page);
  await pasteTable(page, DAY);
  await test.step('layout', async () => {
    await page.getByRole('link', { name: 'Film', exact: true }).click();
    await page.getByRole('button', { name: 'Lay out' }).click();
    await expect(notices(page)).toContainText(
      'The layout could not be worked out. What lay on the film is still there; try again.',
    );
    await expect(notices(page)).toContainText('All that was entered is kept.');
    await isOffered(page);
    await expect(page.getByRole('button', { name: 'Stop' })).toBeHidden();
    // What the schedule will say stands alone then.
    const dismiss = notices(page).getByRole('button', { name: 'Dismiss' });
    while ((await dismiss.count()) > 0) await dismiss.first().click();
    await bringPlannerBack();
    await layOut(page);
    await expect(sentence(page)).toBeVisible();
  });
  await test.step('schedule', async () => {
    await expect(notices(page)).toContainText('The schedule could not be worked out.');
    await isOffered(page);
    await page.getByRole('link', { name: 'Press' }).click();
    const said = page.getByRole('main').getByText('The run and all its ticks are kept.');
    await expect(said).toBeVisible();
    await expect(page.getByText('Working out the day…')).toBeHidden();
    await bringSchedulerBack();
    await page.getByRole('main').getByRole('button', { name: 'Try again' }).click();
    await expect(page.getByRole('heading', { name: 'What would help' })).toBeVisible();
    await expect(said).toBeHidden();
  });
});

/** A PNG of one colour, 600 x 300 pixels at 300 ppi. */
function block(): Buffer {
  const png = new PNG({ width: 600, height: 300 });
  for (let at = 0; at < png.data.length; at += 4) png.data.set([180, 60, 40, 255], at);
  return Buffer.from(withDensity(new Uint8Array(PNG.sync.write(png)), { x: 11_811, y: 11_811 }));
}

test('artwork whose worker is missing is kept and said not to be checked, and is checked when it is back', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,50.8,25.4,2,,no');
  const row = page
    .locator('.transfer-row')
    .filter({ has: page.getByRole('textbox', { name: 'Transfer: crest' }) });
  const give = async () => {
    const dropped = await page.evaluateHandle((encoded) => {
      const data = Uint8Array.from(atob(encoded), (letter) => letter.charCodeAt(0));
      const transfer = new DataTransfer();
      transfer.items.add(new File([data], 'crest.png', { type: 'image/png' }));
      return transfer;
    }, block().toString('base64'));
    await row.dispatchEvent('drop', { dataTransfer: dropped });
  };
  // Nothing reads it.
  const bringBack = await takeAway(page, 'artwork');
  await give();
  await expect(notices(page)).toContainText('crest.png could not be read just now.');
  await expect(row.locator('img')).toBeHidden();
  await bringBack();
  // One worker reads it; the one that would check it is missing.
  const bringBackAgain = await takeAway(page, 'artwork', 1);
  await give();
  await expect(notices(page)).toContainText('The artwork could not be checked.');
  await isOffered(page);
  await expect(row.locator('img')).toBeVisible();
  await bringBackAgain();
  await row.locator('.grade-button').click();
  await page.getByRole('button', { name: 'Check it' }).click();
  await expect(page.locator('.found-head .grade')).toBeVisible();
});

test('a room whose part is gone says so, keeps the others alive, and is there when the app is loaded again', async ({
  page,
}, info) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await page.route('**/assets/StockRoom-*.js', (route) => route.fulfill({ status: 404 }));
  await page.getByRole('link', { name: 'Stock', exact: true }).click();
  const said = page.getByRole('alert').filter({ hasText: 'This part of the app is missing' });
  await expect(said).toBeVisible();
  const report = page.waitForEvent('download');
  await said.getByRole('button', { name: 'Save a report' }).click();
  const file = info.outputPath('report.txt');
  await (await report).saveAs(file);
  await page.getByRole('link', { name: 'Orders', exact: true }).click();
  await expect(page.getByText('1 order, 1 transfer, 4 copies')).toBeVisible();
  await expect(said).toBeHidden();
  await page.getByRole('link', { name: 'Stock', exact: true }).click();
  await page.unroute('**/assets/StockRoom-*.js');
  await said.getByRole('button', { name: 'Load the app again' }).click();
  await expect(page.getByRole('main').getByRole('heading').first()).toBeVisible();
  await expect(said).toBeHidden();
});

test('a book of an older version whose part is gone says so, stays as it lies, and opens when it is back', async ({
  page,
}) => {
  const older = new URL('../tests/model/books/version-12.json', import.meta.url);
  const { version, records } = JSON.parse(readFileSync(older, 'utf8'));
  const before = { ...records, 'meta/version': version };
  await writeRaw(page, before);
  await page.route('**/assets/every-migration-*.js', (route) => route.fulfill({ status: 404 }));
  await page.goto('./');
  const said = page.getByText('A part of the app is missing, perhaps after an update');
  await expect(said).toBeVisible();
  await expect(page.getByRole('link', { name: 'Recovery page' })).toBeVisible();
  expect(await readRaw(page)).toEqual(before);
  await page.goto('./');
  await expect(said).toBeVisible();
  await page.unroute('**/assets/every-migration-*.js');
  await page.getByRole('button', { name: 'Load the app again' }).click();
  await expect(said).toBeHidden();
  await expect.poll(async () => (await readRecords(page))['meta/version']).toBeGreaterThan(version);
});

test('the app opens although the browser gave up its code once', async ({ page }) => {
  await page.route('**/assets/index-*.js', (route) => route.abort('aborted'), { times: 1 });
  await page.goto('./');
  await expect(sentence(page)).toBeVisible();
});

test('code that is not there is not asked for without end', async ({ page }) => {
  let asked = 0;
  await page.route('**/assets/index-*.js', (route) => {
    asked += 1;
    return route.abort('aborted');
  });
  await page.goto('./');
  await expect(page.getByText('Rollwright does not open?')).toBeVisible();
  await expect.poll(() => asked).toBe(2);
  await page.waitForTimeout(500);
  expect(asked).toBe(2);
});
