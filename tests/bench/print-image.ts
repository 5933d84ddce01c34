import { readFileSync, statSync } from 'node:fs';
import type { Download } from '@playwright/test';
import { giveArtwork, pngOf } from '../../e2e/print-image';
import { kept, layOut, pasteTable, startShop } from '../../e2e/shop';
import { emblem, grain, shade } from '../output/print-image/drawings';
import type { Picture } from '../output/print-image/reference';
import { withBuiltApp } from './built-app';
import { processorSeconds, renderersOf, residentOf } from './processes';
import { printTable } from './table';
import { longestTask } from './trace';

/** Name, printed size in millimetres, copies, image: 6 m of a 330 mm roll, at and near 300 ppi. */
const DAY: readonly (readonly [string, number, number, number, Picture])[] = [
  ['emblem a', 150, 150, 20, emblem(1772, 1772, 1)],
  ['emblem b', 100, 100, 24, emblem(1500, 1500, 4)],
  ['emblem c', 280, 280, 5, emblem(3000, 3000, 7)],
  ['emblem d', 70, 70, 36, emblem(827, 827, 9)],
  ['shade', 200, 120, 12, shade(2362, 1417)],
  ['grain', 200, 150, 4, grain(1800, 1350)],
  ['tag', 50, 30, 30, shade(600, 360)],
];

const median = (values: readonly number[]) => values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;

/**
 * Writes 6 m of a 330 mm roll at 300 ppi in the built app, without its white and with it: pixels a second, memory above idle, the page's
 * longest task.
 */
export async function benchPrintImage(): Promise<void> {
  for (const isWhite of [false, true]) await benchImage(isWhite);
}

async function benchImage(isWhite: boolean): Promise<void> {
  await withBuiltApp('Print-ready image', async (context, browser) => {
    await context.addInitScript(
      'delete globalThis.showSaveFilePicker; delete globalThis.showDirectoryPicker',
    );
    const setting = await context.newPage();
    await startShop(setting);
    const rows = DAY.map(([name, width, height, count]) => `Club,${name},${width},${height},${count},,yes`);
    await pasteTable(setting, rows.join('\n'));
    for (const [name, , , , picture] of DAY) {
      await giveArtwork(setting, name, `${name}.png`, pngOf(picture));
    }
    await layOut(setting);
    await kept(setting);
    await setting.close();
    // A page of its own: what was taken in does not count.
    const page = await context.newPage();
    await page.goto('./');
    await page.getByRole('button', { name: 'Print-ready image' }).click();
    const size = await page.locator('.image-files li').first().textContent();
    if (isWhite) await page.getByText('Save the white too, choked').click();
    await page.waitForTimeout(3000);
    const watched = (await renderersOf(browser)).map((pid) => {
      const idle = median(Array.from({ length: 5 }, () => residentOf(pid)));
      return { pid, idle, peak: idle, spent: processorSeconds(pid) };
    });
    await browser.startTracing(page, { categories: ['toplevel'] });
    const watching = setInterval(() => {
      for (const each of watched) each.peak = Math.max(each.peak, residentOf(each.pid));
    }, 20);
    const begun = performance.now();
    const files: Download[] = [];
    page.on('download', (file) => files.push(file));
    await page.getByRole('button', { name: /^Save (image|2 images)$/ }).click();
    const saved = () => files.length === (isWhite ? 2 : 1);
    while (!saved()) await page.waitForEvent('download', { timeout: 600_000, predicate: saved });
    const [file] = files.toSorted((a, b) => a.suggestedFilename().length - b.suggestedFilename().length);
    if (!file) throw new Error('no image was saved');
    const seconds = (performance.now() - begun) / 1000;
    const taken = watched.map((each) => ({ ...each, processor: processorSeconds(each.pid) - each.spent }));
    const busiest = taken.reduce((most, each) => (each.processor > most.processor ? each : most));
    const { idle, peak, processor } = busiest;
    clearInterval(watching);
    const longest = longestTask(await browser.stopTracing());
    const path = await file.path();
    const view = new DataView(readFileSync(path).buffer.slice(0, 32));
    const pixels = (view.getUint32(16) * view.getUint32(20)) / 1e6;
    printTable(
      `Print-ready image${isWhite ? ' and its white' : ''}: ${size}`,
      [
        'pixels',
        'seconds',
        'rate',
        'rate on one core (target 25 Mpx/s)',
        'file',
        'peak above idle (target 400 MB)',
        'longest task (target 50 ms)',
      ],
      [
        [
          `${pixels.toFixed(0)} Mpx`,
          seconds.toFixed(1),
          `${(pixels / seconds).toFixed(1)} Mpx/s`,
          `${(pixels / processor).toFixed(1)} Mpx/s`,
          `${(statSync(path).size / 1e6).toFixed(1)} MB`,
          `${(peak - idle).toFixed(0)} MB over ${idle.toFixed(0)} MB`,
          `${longest.toFixed(0)} ms`,
        ],
      ],
    );
  });
}
