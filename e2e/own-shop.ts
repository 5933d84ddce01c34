import type { Page } from '@playwright/test';
import { ASIDE } from './addresses';
import { expect, kept } from './shop';

/** Begins a shop whose records have ids of their own, with no look at the demo day before. */
export async function beginOwnShop(page: Page): Promise<void> {
  await page.goto(ASIDE);
  await page.evaluate(() => localStorage.setItem('rollwright-opened', 'shop'));
  await page.goto('./');
  await expect(page.getByText('The film is empty')).toBeVisible();
  await kept(page);
}
