import type { Page } from '@playwright/test';
import { copyRows, expect, kept, layOut, openShop, pasteTable, test, unfold } from './shop';

const chooseRun = (page: Page, label: string) =>
  page.getByLabel('Run', { exact: true }).selectOption({ label });

/** What a printer's strip showed, in the window of the test strip. */
async function strip(page: Page, printer: string): Promise<string> {
  await page.getByLabel('Printer', { exact: true }).selectOption({ label: printer });
  const end = page.getByLabel('Which end came out first?');
  return end.evaluate((select: HTMLSelectElement) => select.selectedOptions[0]?.label ?? '');
}

test('two printers have a roll, a test strip and a run each, and the day tells which prints what', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,2,2026-12-01,no\nCafe,apron,100,90,2,2026-12-04,no');
  await layOut(page);
  const dialog = page.getByRole('dialog');

  // A second printer; two of one name are refused.
  await page.getByRole('link', { name: 'Press' }).click();
  await page.getByRole('button', { name: 'Equipment' }).click();
  await unfold(page, 'Printers');
  await page.getByRole('button', { name: 'Add a printer' }).click();
  const names = dialog.getByRole('group', { name: 'Printer 2' }).getByLabel('Name', { exact: true });
  await names.fill('Printer 1');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('There is another Printer 1.')).toBeVisible();
  await dialog.getByLabel('Name', { exact: true }).nth(1).fill('At the window');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(dialog).toBeHidden();

  // A second run, on a new roll in it.
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  const [first] = await copyRows(page);
  await chooseRun(page, 'a new run');
  await page.getByRole('button', { name: 'Close' }).click();
  await page.getByRole('button', { name: 'Film and price' }).click();
  await dialog.getByLabel('Film', { exact: true }).selectOption({ label: 'a new roll' });
  await dialog.getByLabel('Name', { exact: true }).fill('Roll by the window');
  await dialog.getByLabel('Printer', { exact: true }).selectOption({ label: 'At the window' });
  await dialog.getByLabel('Blank per cut').fill('20 mm');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(dialog).toBeHidden();
  await chooseRun(page, 'Run 1 · draft');
  await page.getByRole('button', { name: first?.name ?? '' }).click();
  await page.getByLabel('Move to').selectOption({ label: 'Run 2' });
  await chooseRun(page, 'Run 2 · draft');
  await layOut(page);

  // Its strip is its own.
  await page.goto('./#/cut-map');
  await page.getByRole('button', { name: 'Test strip' }).click();
  await page.getByLabel('Which end came out first?').selectOption({ label: 'END 2' });
  expect(await strip(page, 'At the window')).toBe('END 2');
  expect(await strip(page, 'Printer 1')).toBe('END 1');
  await page.getByRole('button', { name: 'Close' }).click();

  await page.goto('./#/press');
  await page.getByText('The day as a table').click();
  const rows = page.locator('details table.times');
  await expect(rows).toContainText('Run 1: Print span 1, Printer 1');
  await expect(rows).toContainText('Run 2: Print span 1, At the window');

  // Runs are moved by their handles: by keys, and in the hand. Where one would lie is shown a frame later than it is taken up.
  const list = page.getByRole('grid', { name: 'Which run first' });
  const runs = list.getByRole('row');
  await expect(runs).toHaveCount(2);
  const found = await runs.allInnerTexts();
  const place = list.getByRole('button', { name: /^Insert/ });
  await page.getByRole('button', { name: 'Move Run 2' }).focus();
  await page.keyboard.press('Enter');
  await expect(place.and(page.locator(':focus'))).toBeAttached();
  for (const key of ['ArrowUp', 'Enter']) await page.keyboard.press(key);
  await expect(page.getByText('Moved by hand.')).toBeVisible();
  await page.getByRole('button', { name: 'Let it be found again' }).click();
  await expect(page.getByText('Moved by hand.')).toBeHidden();
  await expect.poll(() => runs.allInnerTexts()).toEqual(found);
  const [from, to] = [await runs.nth(1).boundingBox(), await runs.nth(0).boundingBox()];
  if (!from || !to) throw new Error('no runs');
  await page.mouse.move(from.x + 80, from.y + from.height / 2);
  await page.mouse.down();
  for (const y of [from.y + 4, to.y + to.height / 2, to.y + 6, to.y + 3])
    await page.mouse.move(from.x + 90, y, { steps: 4 });
  await expect(list.locator('.react-aria-DropIndicator[data-drop-target]')).toBeAttached();
  await page.mouse.up();
  await expect(page.getByText('Moved by hand.')).toBeVisible();

  // A printer with film in it stays.
  await page.getByRole('button', { name: 'Equipment' }).click();
  await unfold(page, 'Printers');
  await page.getByRole('button', { name: 'Remove At the window' }).click();
  await expect(page.getByText('At the window has film in it: Roll by the window.')).toBeVisible();
  await page.keyboard.press('Escape');
  await kept(page);
  await page.reload();
  await page.goto('./#/cut-map');
  await page.getByRole('button', { name: 'Test strip' }).click();
  expect(await strip(page, 'At the window')).toBe('END 2');
});
