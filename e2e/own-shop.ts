import type { Page } from '@playwright/test';
import { expect, kept } from './shop';

/** Begins a shop whose records have ids of their own, with no look at the demo day before. */
export async function beginOwnShop(page: Page): Promise<void> {
  // A file of the app's address that is no page of the app.
  await page.goto('./icon.svg');
  await page.evaluate(() => localStorage.setItem('rollwright-opened', 'shop'));
  await page.goto('./');
  await expect(page.getByText('The film is empty')).toBeVisible();
  await kept(page);
}
