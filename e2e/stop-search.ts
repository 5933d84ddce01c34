import type { Page } from '@playwright/test';

/**
 * Ends the search for a better layout, if it still goes on: its button may go at any moment, so it is pressed in the page and not waited for.
 * @param name what the button is called
 */
export const stopSearch = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name }).evaluateAll((all) => {
    for (const each of all) if (each instanceof HTMLElement) each.click();
  });
