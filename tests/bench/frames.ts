import type { Page } from '@playwright/test';
import { copyRows, filmSurface, layOut, onScreen, pasteTable } from '../../e2e/shop';
import { inBuiltApp } from './built-app';
import { mean, percentile, printTable } from './table';

/** 600 copies on some 6 m of a 330 mm roll. */
const TABLE = Array.from(
  { length: 20 },
  (_, index) => `Club ${index % 8},crest ${index},${44 + (index % 5)},${46 + (index % 4)},30,,yes`,
).join('\n');

/** Collects the time between frames while an act goes on. */
export async function framesDuring(page: Page, act: () => Promise<void>): Promise<number[]> {
  await page.evaluate(() => {
    const times: number[] = [];
    Object.assign(window, { frameTimes: times });
    let last = performance.now();
    const note = (now: number) => {
      times.push(now - last);
      last = now;
      requestAnimationFrame(note);
    };
    requestAnimationFrame(note);
  });
  await act();
  const times = await page.evaluate(() => (window as unknown as { frameTimes: number[] }).frameTimes.slice());
  return times.slice(2);
}

/** Drags a copy about and pans along 600 copies, and prints how long frames take. Needs a build. */
export async function benchFrames(): Promise<void> {
  await inBuiltApp('Frames', async (page) => {
    await pasteTable(page, TABLE);
    await layOut(page);
    const rows = await copyRows(page);
    await page.getByText('Copies as a table').click();
    const [first] = rows;
    if (!first) throw new Error('nothing lies on the film');
    const at = await onScreen(page, first);
    const surface = await filmSurface(page).boundingBox();
    if (!surface) throw new Error('the film is not in view');
    const middle = { x: surface.x + surface.width / 2, y: surface.y + surface.height / 2 };

    const dragging = await framesDuring(page, async () => {
      await page.mouse.move(at.x, at.y);
      await page.mouse.down();
      for (let step = 0; step < 240; step += 1) {
        await page.mouse.move(at.x + 300 + 250 * Math.sin(step / 12), at.y + 60 * Math.cos(step / 9));
      }
      await page.keyboard.press('Escape');
      await page.mouse.up();
    });
    const panning = await framesDuring(page, async () => {
      await page.mouse.move(middle.x, middle.y);
      for (let step = 0; step < 240; step += 1) await page.mouse.wheel(step < 120 ? 40 : -40, 0);
    });
    await page.getByRole('button', { name: 'Whole run' }).click();
    const whole = await framesDuring(page, async () => {
      for (let step = 0; step < 120; step += 1) {
        await page.keyboard.down('Control');
        await page.mouse.wheel(0, step < 60 ? -20 : 20);
        await page.keyboard.up('Control');
      }
    });
    const row = (name: string, times: readonly number[]) => [
      name,
      times.length,
      `${mean(times).toFixed(1)} ms`,
      `${percentile(times, 0.95).toFixed(1)} ms`,
      `${Math.max(...times).toFixed(1)} ms`,
    ];
    printTable(
      `Frames, ${rows.length} copies`,
      ['act', 'frames', 'mean', 'p95 (target 20 ms)', 'longest'],
      [row('dragging a copy', dragging), row('panning', panning), row('zooming the whole run', whole)],
    );
  });
}
