import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { PNG } from 'pngjs';
import { pasteTable } from '../../e2e/shop';
import { inBuiltApp } from './built-app';
import { processorSeconds, renderersOf } from './processes';
import { printTable } from './table';
import { longestTask } from './trace';

const SIDE = 4000;
/** 330 mm are 308 pixels an inch: shapes are looked at in every pixel. */
const PRINTED = 330;
const CHECKS = 5;

/**
 * A large artwork by code: rings of 60 pixels with an outer one half see-through, a lattice of blobs in their middle, and lines of
 * four pixels across it.
 */
function largeArtwork(): Buffer {
  const png = new PNG({ width: SIDE, height: SIDE });
  for (let y = 0; y < SIDE; y += 1) {
    for (let x = 0; x < SIDE; x += 1) {
      const r = Math.hypot(x - SIDE / 2, y - SIDE / 2);
      const inked =
        r < 900
          ? Math.sin(x / 25) * Math.sin(y / 31) > 0.2 || x % 97 < 4
          : r < 1900 && Math.floor(r / 60) % 3 !== 0;
      if (inked) png.data.set([x >> 4, 40, y >> 4, r > 1700 ? 128 : 255], 4 * (y * SIDE + x));
    }
  }
  return PNG.sync.write(png);
}

/** Notes how long the grade is being worked out. */
async function watch(page: Page): Promise<void> {
  await page.evaluate(() => {
    const checks: number[] = [];
    Object.assign(window, { checks });
    let since: number | null = null;
    new MutationObserver(() => {
      const grade = document.querySelector('.grade-button')?.getAttribute('data-grade');
      if (grade === 'running') since ??= performance.now();
      else if (grade !== 'waiting' && since !== null) {
        checks.push(performance.now() - since);
        since = null;
      }
    }).observe(document.body, { subtree: true, childList: true, attributeFilter: ['data-grade'] });
  });
}

const checksOf = (page: Page) => page.evaluate(() => (window as unknown as { checks: number[] }).checks);

/** Checks a large artwork at several limits in the built app, and prints how long it takes. Needs a build. */
export async function benchArtwork(): Promise<void> {
  // A file on the disk, as users have: bytes that the driver hands over are unpacked on the page's own thread.
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const path = join(folder, 'large.png');
  writeFileSync(path, largeArtwork());
  await inBuiltApp('Artwork', async (page) => {
    await pasteTable(page, `Club,crest,${PRINTED},${PRINTED},1,,no`);
    await watch(page);
    const browser = page.context().browser();
    if (!browser) return;
    const pages = (await renderersOf(browser)).map((pid) => ({ pid, before: processorSeconds(pid) }));
    await browser.startTracing(page, { categories: ['toplevel'] });
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Choose an image for crest' }).click();
    await (await chooser).setFiles(path);
    const settled = page.locator('.grade-button[data-grade="poor"], .grade-button[data-grade="check"]');
    await settled.waitFor({ timeout: 60_000 });
    await settled.click();
    await page.getByText('Limits of this shop').click();
    for (let check = 1; check < CHECKS; check += 1) {
      await page.getByRole('textbox', { name: 'Thinnest stroke' }).fill(`0.${40 + check} mm`);
      await page.getByRole('button', { name: 'Save' }).click();
      await page.waitForFunction(
        (count) => (window as unknown as { checks: number[] }).checks.length > count,
        check,
        { timeout: 60_000 },
      );
    }
    const spent = Math.max(...pages.map(({ pid, before }) => processorSeconds(pid) - before));
    const trace = await browser.stopTracing();
    const checks = await checksOf(page);
    const sorted = checks.toSorted((a, b) => a - b);
    const ms = (time: number) => `${time.toFixed(0)} ms`;
    printTable(
      `Artwork check, ${SIDE} x ${SIDE} RGBA, in the worker with decoding`,
      [
        'checks',
        'fastest',
        'median (target 1,000 ms)',
        'slowest',
        'processor time of the page, each',
        'longest task (target 50 ms)',
      ],
      [
        [
          checks.length,
          ms(sorted[0] ?? Number.NaN),
          ms(sorted[Math.floor(sorted.length / 2)] ?? Number.NaN),
          ms(sorted.at(-1) ?? Number.NaN),
          ms((1000 * spent) / checks.length),
          ms(longestTask(trace)),
        ],
      ],
    );
  });
  rmSync(folder, { recursive: true });
}
