import type { Page } from '@playwright/test';
import { copyRows, filmSurface, kept, layOut, onScreen, pasteTable } from '../../e2e/shop';
import { inBuiltApp } from './built-app';
import { printTable } from './table';

const DAY = [
  'Club,back,280,230,4,,yes',
  'Club,chest,89,89,8,,yes',
  'Cafe,front,205,240,3,,no',
  'Fair,tag,55,30,9,,yes',
].join('\n');

/** What the page holds before it counts: code is loaded, and the history of undo is as long as it gets. */
const BEFORE = { layouts: 20, edits: 300 };

/** Megabytes that the page holds once its rubbish is taken out. */
async function heldBy(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  await session.detach();
  return usedSize / 1e6;
}

async function layOutTimes(page: Page, times: number): Promise<void> {
  for (let time = 0; time < times; time += 1) await layOut(page);
}

/** Pins a copy by its key and lets go of it, each an edit. */
async function editTimes(page: Page, times: number): Promise<void> {
  const [copy] = await copyRows(page);
  if (!copy) throw new Error('no copy to pin');
  const at = await onScreen(page, copy);
  await page.mouse.click(at.x, at.y);
  await page.keyboard.press('p');
  if ((await copyRows(page))[0]?.pinned === copy.pinned) throw new Error('the key pins no copy');
  for (let time = 1; time < times; time += 1) await page.keyboard.press('p');
  await kept(page);
}

/** A day of work in one tab: what the page holds after many layouts, and after many edits. */
export async function benchSoak(layouts = 500, edits = 5000): Promise<void> {
  await inBuiltApp('A long day in one tab', async (page) => {
    await pasteTable(page, DAY);
    await layOutTimes(page, BEFORE.layouts);
    await editTimes(page, BEFORE.edits);
    const before = await heldBy(page);
    await layOutTimes(page, layouts);
    const laid = await heldBy(page);
    await editTimes(page, edits);
    const after = await heldBy(page);
    const plans = await filmSurface(page).getAttribute('data-plans');
    const row = (what: string, held: number) => [
      what,
      `${held.toFixed(1)} MB`,
      `${(100 * (held / before - 1)).toFixed(1)}%`,
    ];
    printTable(
      'A long day in one tab',
      ['after', 'held', 'more than before (target 10%)'],
      [row('the warm-up', before), row(`${layouts} layouts`, laid), row(`${edits} edits more`, after)],
    );
    console.log(`Plans shown: ${plans}.`);
  });
}
