import type { Page } from '@playwright/test';
import { onScreen } from '../../e2e/shop';
import type { Book } from '../../src/model';
import { inBuiltApp } from './built-app';
import { laidOut, lockedOf, shopOf, storeBook, withClosed } from './busy-shop';
import { framesDuring } from './frames';
import { heldDuring } from './held';
import { percentile, printTable } from './table';
import { longestTask } from './trace';

const ms = (value: number): string => `${value.toFixed(0)} ms`;

/** Loads a room anew: until it is drawn, by the clock and of the processor of the page's own thread. */
async function opening(page: Page, room: string, sign: string): Promise<string[]> {
  await page.goto(`./#/${room}`);
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  await page.reload();
  // By frames of the page: the test tool itself looks twice a second at last.
  const drawn = await page.waitForFunction(
    (looked) => document.querySelector(looked) !== null && performance.now(),
    sign,
    { polling: 'raf' },
  );
  const took = Number(await drawn.jsonValue());
  const { metrics } = await session.send('Performance.getMetrics');
  await session.detach();
  return [ms(took), ms(1000 * (metrics.find(({ name }) => name === 'ThreadTime')?.value ?? Number.NaN))];
}

/** The longest task of the page meanwhile, by the clock and of the processor, which others of a busy machine take no part of. */
async function longestDuring(page: Page, act: () => Promise<void>): Promise<string[]> {
  const browser = page.context().browser();
  await browser?.startTracing(page, { categories: ['toplevel'] });
  const held = await heldDuring(page, act);
  const trace = await browser?.stopTracing();
  return [ms(held), trace ? ms(longestTask(trace)) : ''];
}

/** Opens the built app at a book of its own. */
const withBook = (book: Book, act: (page: Page) => Promise<void>): Promise<void> =>
  inBuiltApp('Size', async (page) => {
    const saved = page.locator('[data-testid="kept"][data-saving="saved"]');
    await saved.waitFor();
    await storeBook(page, book);
    await saved.waitFor({ timeout: 0 });
    await act(page);
  });

/** How a large book opens, is typed in, dragged over and planned. Needs a build. */
export async function benchSize(): Promise<void> {
  const opened: string[][] = [];
  const rooms = [
    ['orders', '.order-head'],
    ['film', '.cards .card'],
    ['stock', '#ledger'],
  ] as const;
  await withBook(withClosed(shopOf(2000, 2), 200, 18), async (page) => {
    for (const [room, sign] of rooms)
      opened.push([`2,000 orders, 200 closed runs: ${room}`, ...(await opening(page, room, sign))]);
  });
  const laid = laidOut(shopOf(5000, 1), 3000);
  const acts: string[][] = [];
  await withBook(laid, async (page) => {
    for (const [room, sign] of rooms.slice(0, 2))
      opened.push([`5,000 orders, 3,000 copies laid: ${room}`, ...(await opening(page, room, sign))]);
    await page.goto('./#/orders');
    const search = page.getByLabel('Search', { exact: true });
    await search.click();
    acts.push([
      'searching 5,000 orders',
      ...(await longestDuring(page, () => search.pressSequentially('Order 47', { delay: 60 }))),
    ]);
    const name = page.locator('.order-name input').first();
    await name.click();
    acts.push([
      'typing an order’s name, and leaving it',
      ...(await longestDuring(page, async () => {
        await name.pressSequentially(' of the hill', { delay: 60 });
        await name.press('Tab');
      })),
    ]);
    await page.goto('./#/film');
    await page.locator('.film-surface').waitFor();
    await page.waitForTimeout(1000);
    const at = await onScreen(page, { x: 5, y: 10, width: 100, length: 80 });
    await page.mouse.move(at.x, at.y);
    acts.push([
      'taking up one of 3,000 copies',
      ...(await longestDuring(page, async () => {
        await page.mouse.down();
        await page.mouse.move(at.x + 300, at.y + 60);
      })),
    ]);
    let frames: number[] = [];
    const longest = await longestDuring(page, async () => {
      frames = await framesDuring(page, async () => {
        for (let step = 0; step < 120; step += 1)
          await page.mouse.move(at.x + 300 + 250 * Math.sin(step / 12), at.y + 60 * Math.cos(step / 9));
      });
    });
    acts.push(['carrying it', ...longest]);
    acts.push(['a frame meanwhile (p95, target 20 ms)', ms(percentile(frames, 0.95)), '']);
    await page.keyboard.press('Escape');
    await page.mouse.up();
  });
  await withBook(lockedOf(laid), async (page) => {
    await page.goto('./#/orders');
    const held = await longestDuring(page, async () => {
      const began = performance.now();
      await page.goto('./#/press');
      await page.getByTestId('done-by').waitFor({ timeout: 0 });
      acts.push(['until the day of 3,000 locked copies is worked out', ms(performance.now() - began), '']);
    });
    acts.push(['the longest task meanwhile', ...held]);
  });
  printTable(
    'Large books, loaded anew',
    ['what', 'until it is drawn (target 1,500 ms)', 'of the page’s processor'],
    opened,
  );
  printTable(
    'Large books at work, longest task of the page (target 100 ms)',
    ['what', 'takes', 'of the page’s processor'],
    acts,
  );
}
