import { expect, type Page } from '@playwright/test';

/** A day of our own: three orders, five transfers, 24 copies, one row to mend. */
export const TABLE = [
  'order,transfer,width,height,count,due,may turn',
  'Harbour Row Club,back,11 in,9 in,4,2026-12-01,yes',
  'Harbour Row Club,left chest,"3 1/2""",89 mm,8,2026-12-01,yes',
  'Fig Tree Cafe,front,"20,5 cm",24 cm,3,2026-11-30,no',
  'Fig Tree Cafe,sleeve,abc,3 in,3,2026-11-30,yes',
  'Lantern Fair,front,210 mm,105 mm,6,2026-12-04,yes',
  'Lantern Fair,tag,55,30,3,2026-12-04,yes',
].join('\n');

/** Opens the shop's own, empty book: past the demo day. */
export async function openShop(page: Page): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'Start with my own orders' }).click();
  await expect(page.getByText('The film is empty')).toBeVisible();
}

/** Pastes a table into the Orders room and adds its good rows. */
export async function pasteTable(page: Page, table: string): Promise<void> {
  await page.getByRole('link', { name: 'Orders' }).click();
  await page.getByRole('button', { name: 'Paste a table' }).click();
  await page.getByRole('textbox', { name: 'Table' }).fill(table);
  await page.getByRole('button', { name: /^Add \d+ transfers?$/ }).click();
}

/** Lays out and waits until no better layout is looked for. */
export async function layOut(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Film' }).click();
  await page.getByRole('button', { name: 'Lay out' }).click();
  await expect(page.getByTestId('sentence')).toBeVisible();
  const stop = page.getByRole('button', { name: 'Stop' });
  if (await stop.isVisible()) await stop.click();
  await expect(stop).toBeHidden();
}

export const sentence = (page: Page) => page.getByTestId('sentence');

/** Waits until everything is on the disk. */
export const kept = (page: Page) => expect(page.getByTestId('kept')).toHaveAttribute('data-saving', 'saved');

/** The figures of the sentence: metres of film and percent of waste. */
export async function figures(page: Page): Promise<{ metres: number; waste: number }> {
  const text = (await sentence(page).textContent()) ?? '';
  const [, metres, waste] = /([\d.]+) m of film, ([\d.]+)% of it waste/.exec(text) ?? [];
  return { metres: Number(metres), waste: Number(waste) };
}
