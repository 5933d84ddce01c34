import type { CDPSession } from '@playwright/test';
import { beginDemo, copyRows, expect, layOut, onScreen, openShop, pasteTable, test } from './shop';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

type Finger = { x: number; y: number };

/** Moves fingers over the screen in steps, as a hand does. */
async function slide(session: CDPSession, from: Finger[], to: Finger[], steps = 8): Promise<void> {
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: Finger[]) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: points.map((point, id) => ({ ...point, id })),
    });
  await touch('touchStart', from);
  for (let step = 1; step <= steps; step += 1) {
    await touch(
      'touchMove',
      from.map((start, finger) => {
        const end = to[finger] ?? start;
        return {
          x: start.x + ((end.x - start.x) * step) / steps,
          y: start.y + ((end.y - start.y) * step) / steps,
        };
      }),
    );
  }
  await touch('touchEnd', []);
}

test('a phone pans, pinches, selects and carries a copy', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,10,,no');
  await layOut(page);
  const session = await page.context().newCDPSession(page);
  const rows = await copyRows(page);
  const last = rows.at(-1);
  if (!last) throw new Error('no copies');
  const frame = page.locator('.run-strip .frame');
  const wide = async () => (await frame.boundingBox()) ?? { x: 0, width: 0 };

  // Pan: the frame on the strip of the whole run moves.
  const start = await onScreen(page, { x: 120, y: 100, width: 80, length: 80 });
  const before = await wide();
  await slide(session, [{ x: 300, y: start.y }], [{ x: 180, y: start.y }]);
  expect((await wide()).x).toBeGreaterThan(before.x + 5);
  await slide(session, [{ x: 120, y: start.y }], [{ x: 330, y: start.y }]);

  // Pinch apart: less of the run is in view.
  await slide(
    session,
    [
      { x: 180, y: start.y },
      { x: 220, y: start.y },
    ],
    [
      { x: 100, y: start.y },
      { x: 300, y: start.y },
    ],
  );
  expect((await wide()).width).toBeLessThan(before.width * 0.8);
  await page.getByRole('button', { name: 'Whole run' }).click();
  await page.getByRole('button', { name: 'Whole width' }).click();

  // Tap selects, a second touch carries: the last copy is alone in its row and has room across the film.
  const at = await onScreen(page, last);
  await page.touchscreen.tap(at.x, at.y);
  await expect(page.getByRole('region', { name: /^CL \d+$/ })).toBeVisible();
  // Neither what is done with the film nor the sheet of the selection hides it.
  await page.evaluate(() => scrollTo(0, 0));
  const film = await page.locator('.film-canvas').boundingBox();
  const sheet = await page.getByRole('region', { name: /^CL \d+$/ }).boundingBox();
  expect(film && sheet && film.y + film.height <= sheet.y).toBe(true);
  const here = await onScreen(page, last);
  await slide(session, [here], [{ x: here.x, y: here.y - 60 * here.scale }]);
  const moved = (await copyRows(page)).find((row) => row.name === last.name);
  expect(moved?.x).toBeGreaterThan(last.x + 50);
});

test('from a pasted day to the cut map by touch alone', async ({ page }) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Start with my own orders' }).tap();
  await page.getByRole('button', { name: 'Go to the orders' }).tap();
  await page.getByRole('button', { name: 'Paste a table' }).tap();
  await page.getByRole('textbox', { name: 'Table' }).fill('Club,crest,80,80,4,,no\nCafe,apron,120,90,2,,yes');
  await page.getByRole('button', { name: 'Add 2 transfers' }).tap();
  await expect(page.getByText('2 orders, 2 transfers, 6 copies')).toBeVisible();
  await page.getByRole('link', { name: 'Film', exact: true }).tap();
  await page.getByRole('button', { name: 'Lay out' }).tap();
  await expect(page.getByTestId('sentence')).toBeVisible();
  const rows = await copyRows(page);
  await page.getByText('Select several').tap();
  for (const row of rows.slice(0, 2)) {
    const at = await onScreen(page, row);
    await page.touchscreen.tap(at.x, at.y);
  }
  await expect(page.getByRole('region', { name: '2 copies selected' })).toBeVisible();
  await page.getByRole('button', { name: 'Close' }).tap();
  await page.getByRole('button', { name: 'Cut map' }).tap();
  await expect(page.locator('.sheet').first()).toBeVisible();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as PDF' }).tap();
  expect((await download).suggestedFilename()).toBe('cut map Run 1.pdf');
});

test('no room is wider than the phone', async ({ page }) => {
  await beginDemo(page);
  for (const [room, heading] of [
    ['film', 'Film'],
    ['orders', 'Orders'],
    ['cut-map', 'Cut map'],
  ] as const) {
    await page.goto(`./#/${room}`);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(heading);
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(overflow, room).toBeLessThanOrEqual(0);
  }
});
