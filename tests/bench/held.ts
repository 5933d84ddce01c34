import type { Page } from '@playwright/test';

/** The longest task of the page while something is done, in milliseconds; 0 where none is longer than 50. */
export async function heldDuring(page: Page, act: () => Promise<void>): Promise<number> {
  await page.evaluate(() => {
    const held: number[] = [];
    Object.assign(globalThis, { held });
    new PerformanceObserver((list) => {
      held.push(...list.getEntries().map(({ duration }) => duration));
    }).observe({ type: 'longtask' });
  });
  await act();
  await page.waitForTimeout(500);
  return page.evaluate<number>('Math.max(0, ...held)');
}
