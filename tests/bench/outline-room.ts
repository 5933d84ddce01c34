import type { Page } from '@playwright/test';
import { giveArtwork } from '../../e2e/print-image';
import { expect, figures, filmSurface, layOut, pasteTable, unfold } from '../../e2e/shop';
import { inBuiltApp } from './built-app';
import { printTable } from './table';
import { longestTask } from './trace';

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const AROUND = 'with scissors or a contour cutter, around each outline';

/** Stars of other depths and points: 80 mm across, deep enough to lie in one another. */
const SHAPES = [
  [5, 0.4],
  [7, 0.5],
  [12, 0.7],
  [20, 0.8],
  [60, 0.9],
] as const;

function star(points: number, depth: number): Buffer {
  const corners = Array.from({ length: 2 * points }, (_, at) => {
    const [turn, reach] = [(Math.PI * at) / points, at % 2 === 0 ? 500 : 500 * depth];
    return `${(500 + reach * Math.sin(turn)).toFixed(2)},${(500 - reach * Math.cos(turn)).toFixed(2)}`;
  });
  return Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" width="1000" height="1000" viewBox="0 0 1000 1000"><polygon points="${corners.join(' ')}" fill="#b33"/></svg>`,
  );
}

/** Lays stars out by their outlines, while the page's own thread is watched. */
async function planned(page: Page, copies: number): Promise<string[]> {
  const each = copies / SHAPES.length;
  await pasteTable(
    page,
    [
      'order,transfer,width,height,count,due,may turn',
      ...SHAPES.map((_, at) => `Club,star ${at},80,80,${each},,yes`),
    ].join('\n'),
  );
  for (const [at, [points, depth]] of SHAPES.entries())
    await giveArtwork(page, `star ${at}`, `star-${at}.svg`, star(points, depth));
  await expect(page.locator('.grade-button')).toHaveCount(SHAPES.length, { timeout: 60_000 });
  await layOut(page);
  const boxes = await figures(page);
  await button(page, 'Film and price').click();
  await unfold(page, 'Cutting');
  await page.getByLabel('Cut apart').selectOption({ label: AROUND });
  await button(page, 'Save').click();
  const surface = filmSurface(page);
  const before = Number(await surface.getAttribute('data-plans'));
  const browser = page.context().browser();
  if (!browser) throw new Error('the page has no browser of its own');
  await browser.startTracing(page, { categories: ['toplevel'] });
  await button(page, 'Lay out').click();
  await expect(button(page, 'Stop')).toBeVisible();
  await expect(button(page, 'Stop')).toBeHidden({ timeout: 60_000 });
  const longest = longestTask(await browser.stopTracing());
  const plans = Number(await surface.getAttribute('data-plans')) - before;
  const outlines = await figures(page);
  return [
    String(copies),
    `${boxes.metres.toFixed(2)} m`,
    `${outlines.metres.toFixed(2)} m`,
    String(plans),
    `${longest.toFixed(0)} ms`,
  ];
}

/** How long the page is held at most while a run is laid out by outlines, by its processor time. Needs a build. */
export async function benchOutlineRoom(): Promise<void> {
  const rows: string[][] = [];
  for (const copies of [100, 300])
    await inBuiltApp('Laid out by outlines in the room', async (page) => {
      rows.push(await planned(page, copies));
    });
  if (rows.length > 0)
    printTable(
      'Laid out by outlines in the room (target: no task over 50 ms)',
      ['copies', 'by boxes', 'by outlines', 'layouts shown', 'longest task'],
      rows,
    );
}
