import type { Page } from '@playwright/test';

/** Chooses a language in the window that the menu of the shop opens from any room. */
export async function speak(page: Page, menu: string, title: string, language: string): Promise<void> {
  await page.getByRole('button', { name: menu, exact: true }).click();
  await page.getByRole('menuitem', { name: title }).click();
  await page
    .getByRole('dialog')
    .getByRole('combobox')
    .filter({ has: page.locator('option[value="es"]') })
    .selectOption({ label: language });
}
