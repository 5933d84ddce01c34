import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import Papa from 'papaparse';
import { beginDemo, expect, kept, layOut, lockRun, notices, openShop, pasteTable, test } from './shop';

const TABLE = `order,transfer,width,height,count,due,may turn
Harbour Rowing,Crest left chest,89,89,3,,yes
Corner Oven,Badge,140,140,2,,yes`;

const dialog = (page: Page) => page.getByRole('dialog');
const openItem = (page: Page, name: string) =>
  page.getByRole('button', { name: `Open ${name}`, exact: true }).click();
const room = (page: Page, name: string) => page.getByRole('link', { name, exact: true }).click();

/** What the Stock room says there is of an item. */
const present = (page: Page, name: string): Locator =>
  page
    .getByRole('row')
    .filter({ has: page.getByRole('button', { name: `Open ${name}`, exact: true }) })
    .getByRole('cell')
    .first();

async function addInk(page: Page, kind: string, name: string, amount: string): Promise<void> {
  await page.getByRole('button', { name: 'Add to stock' }).click();
  await page.getByLabel('What', { exact: true }).selectOption({ label: kind });
  await page.getByLabel('Name').fill(name);
  await page.getByLabel(/^Amount/).fill(amount);
  await dialog(page).getByRole('button', { name: 'Add' }).click();
  await expect(dialog(page)).toBeHidden();
}

/** Enters a change of an item in its window, which stays open. */
async function enter(page: Page, what: string, amount: string): Promise<void> {
  await page.getByLabel('What happened').selectOption({ label: what });
  await page
    .getByLabel(/^(Amount|Length|Pieces|Sheets)/)
    .first()
    .fill(amount);
  await page.getByRole('button', { name: 'Enter it' }).click();
}

/** A run of five copies, locked and printed. */
async function printRun(page: Page): Promise<void> {
  await pasteTable(page, TABLE);
  await layOut(page);
  await lockRun(page);
  await page.getByRole('button', { name: 'All printed' }).click();
}

/** Takes a printed run on to pressed. */
async function pressRun(page: Page): Promise<void> {
  await room(page, 'Press');
  await page.getByLabel('Run', { exact: true }).selectOption({ label: 'Run 1 · printed' });
  const states = page.locator('.states');
  for (const state of ['cured', 'pressed']) {
    await page.locator('.state-bar .button.primary').click();
    await expect(states.locator('[aria-current]')).toContainText(state);
  }
}

/** Saves a table and reads it as a table program does. */
async function readTable(page: Page, figures: string, delimiter: string): Promise<string[][]> {
  await page.getByRole('button', { name: 'Save as CSV' }).click();
  await page.getByLabel('Figures').selectOption({ label: figures });
  const file = page.waitForEvent('download');
  await dialog(page).getByRole('button', { name: 'Save as CSV' }).click();
  const text = readFileSync(await (await file).path(), 'utf8');
  expect(text.startsWith('\ufeff')).toBe(true);
  return Papa.parse<string[]>(text.slice(1), { delimiter }).data;
}

test('a roll is bought, used by a run, and a wrong entry is undone by another: the ledger sums to what there is', async ({
  page,
}) => {
  await openShop(page);
  await room(page, 'Stock');
  await page.getByRole('button', { name: 'Add to stock' }).click();
  await page.getByLabel('Name').fill('Spare roll');
  await page.getByLabel(/^Length/).fill('-3');
  await dialog(page).getByRole('button', { name: 'Add' }).click();
  await expect(dialog(page)).toContainText('A length must be above zero.');
  await page.getByLabel(/^Length/).fill('100 m');
  await page.getByLabel('Lot').fill('=F-1');
  await dialog(page).getByRole('button', { name: 'Add' }).click();
  await expect(present(page, 'Spare roll')).toHaveText('100.00 m');

  await openItem(page, 'Spare roll');
  await enter(page, 'discarded', '120 m');
  await expect(dialog(page)).toContainText('There is only 100.00 m of Spare roll.');
  await enter(page, 'discarded', '20');
  await page.getByLabel('Note').first().fill('=1+1');
  await enter(page, 'bought', '50');
  await page.keyboard.press('Escape');
  await expect(present(page, 'Spare roll')).toHaveText('130.00 m');
  await page.getByRole('button', { name: 'Undo: discarded, Spare roll' }).click();
  await expect(notices(page)).toContainText('Spare roll: 150.00 m');
  await expect(present(page, 'Spare roll')).toHaveText('150.00 m');

  await printRun(page);
  await room(page, 'Stock');
  await expect(page.getByRole('row', { name: /printed by a run/ })).toContainText('Run 1');
  await kept(page);
  await page.reload();

  const [headings = [], ...rows] = await readTable(page, '1.5, fields apart by commas', ',');
  const of = (name: string) => headings.indexOf(name);
  expect(rows.find((row) => row[of('note')]?.includes('1+1'))?.[of('note')]).toBe("'=1+1");
  const sum = (item: string) =>
    rows
      .filter((row) => row[of('item')] === item)
      .reduce((total, row) => total + Number(row[of('change')]), 0);
  expect(sum('Spare roll')).toBeCloseTo(150, 6);
  const roll = (await present(page, 'Roll, 330 mm').textContent()) ?? '';
  expect(sum('Roll, 330 mm')).toBeCloseTo(Number.parseFloat(roll), 2);
  expect(rows.every((row) => row[of('unit')] === 'm')).toBe(true);
});

test('undo and redo write entries; a roll that is gone keeps its own, and takes no more', async ({
  page,
}) => {
  await openShop(page);
  await room(page, 'Stock');
  await page.getByRole('button', { name: 'Add to stock' }).click();
  await page.getByLabel('Name').fill('Spare roll');
  await page.getByLabel(/^Length/).fill('30');
  await dialog(page).getByRole('button', { name: 'Add' }).click();
  const entries = page.getByRole('row', { name: /Spare roll/ });
  // In stock, and in the ledger.
  await expect(entries).toHaveCount(2);
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: 'Open Spare roll' })).toBeHidden();
  await expect(entries).toHaveCount(2);
  await expect(entries.first()).toContainText('gone');
  await page.getByRole('button', { name: 'Undo: undoes another entry, Spare roll' }).click();
  await expect(notices(page)).toContainText(
    'Spare roll is no longer in stock, so its entries can only be read.',
  );
  await page.keyboard.press('Control+Shift+z');
  await expect(present(page, 'Spare roll')).toHaveText('30.00 m');
  await expect(entries).toHaveCount(4);
});

test('closing a run takes ink and powder out of stock and writes the log; going back undoes both', async ({
  page,
}) => {
  await openShop(page);
  await room(page, 'Stock');
  await addInk(page, 'White ink', 'White', '500');
  await addInk(page, 'Powder', 'Fine powder', '1 kg');
  await page.getByRole('button', { name: 'Add to stock' }).click();
  await page.getByLabel('What', { exact: true }).selectOption({ label: 'Powder' });
  await page.getByLabel('Name').fill('Fine powder');
  await page.getByLabel(/^Amount/).fill('-5');
  await dialog(page).getByRole('button', { name: 'Add' }).click();
  await expect(dialog(page)).toContainText('Something in stock has this name already.');
  await expect(dialog(page)).toContainText('An amount cannot be below zero.');
  await page.keyboard.press('Escape');

  await printRun(page);
  await pressRun(page);
  await page.getByRole('button', { name: 'Close the run' }).click();
  await expect(dialog(page)).toContainText('not planned: some artwork has not been checked');
  await page.getByLabel('White ink (ml)').fill('abc');
  await page.getByLabel('Relative humidity').fill('140');
  await dialog(page).getByRole('button', { name: 'Close the run' }).click();
  await expect(dialog(page)).toContainText('This is not an amount.');
  await expect(dialog(page)).toContainText('Relative humidity is between 0 and 100.');
  await page.getByLabel('White ink (ml)').fill('6.5');
  await page.getByLabel('Powder (g)').fill('12');
  await page.getByLabel('Relative humidity').fill('52');
  await page.getByLabel('Labour (min)').fill('25');
  await page.getByLabel('Notes').fill('a quiet day');
  await dialog(page).getByRole('button', { name: 'Close the run' }).click();
  await expect(notices(page)).toContainText('Run 1 is closed.');

  await room(page, 'Stock');
  await expect(present(page, 'White')).toHaveText('494 ml');
  await expect(present(page, 'Fine powder')).toHaveText('988 g');
  await room(page, 'Log');
  await expect(page.getByText('One run is closed.')).toBeVisible();
  const row = page.getByRole('row', { name: /^Run 1/ });
  await expect(row).toContainText('6.5 ml');
  await expect(row).toContainText('25 min');
  await expect(row).toContainText('not measured');
  const [headings = [], told = []] = await readTable(page, '1,5, fields apart by semicolons', ';');
  const cell = (name: string) => told[headings.indexOf(name)];
  expect(cell('white ink used (ml)')).toBe('6,5');
  expect(cell('relative humidity (%)')).toBe('52');
  expect(cell('colour ink used (ml)')).toBe('');
  expect(cell('notes')).toBe('a quiet day');

  await room(page, 'Press');
  await page.getByLabel('Run', { exact: true }).selectOption({ label: 'Run 1 · closed' });
  await page.getByRole('button', { name: 'Correct what it took' }).click();
  await expect(page.getByLabel('White ink (ml)')).toHaveValue('6.5');
  await page.getByLabel('White ink (ml)').fill('7');
  await dialog(page).getByRole('button', { name: 'Save the correction' }).click();
  await expect(notices(page)).toContainText('Run 1 is corrected; stock got the difference.');
  await page.getByRole('button', { name: 'Correct what it took' }).click();
  await dialog(page).getByText('Told before (1 time)').click();
  await expect(dialog(page).locator('details', { hasText: 'Told before' })).toContainText('white ink 6.5 ml');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Back to pressed' }).click();
  // What was measured stands when it is closed again.
  await page.getByRole('button', { name: 'Close the run' }).click();
  await expect(page.getByLabel('White ink (ml)')).toHaveValue('7');
  await expect(page.getByLabel('Relative humidity')).toHaveValue('52');
  await page.keyboard.press('Escape');
  await room(page, 'Stock');
  await expect(present(page, 'White')).toHaveText('500 ml');
  await expect(present(page, 'Fine powder')).toHaveText('1,000 g');
  await room(page, 'Log');
  await expect(page.getByText('Nothing is closed yet.')).toBeVisible();
});

test('what is left of a roll is laid out on as a film of its own, and can be put back', async ({ page }) => {
  await openShop(page);
  await room(page, 'Stock');
  await openItem(page, 'Roll, 330 mm');
  await page.getByText('Cut off as a film of its own').click();
  await page.getByLabel(/^Length to cut off/).fill('15');
  await page.getByRole('button', { name: 'Make it a film' }).click();
  await expect(dialog(page)).toContainText('A piece must be longer than its margins, 20 mm.');
  await page.getByLabel(/^Length to cut off/).fill('70 cm');
  await page.getByRole('button', { name: 'Make it a film' }).click();
  await expect(present(page, 'Roll, 330 mm')).toHaveText('59.30 m');
  await expect(present(page, 'Roll, 330 mm, offcut')).toHaveText('1 sheet');
  await pasteTable(page, TABLE);
  await room(page, 'Film');
  await page.getByRole('button', { name: 'Film and price' }).click();
  await page.getByLabel('Film', { exact: true }).selectOption({ label: 'Roll, 330 mm, offcut' });
  await page.getByRole('button', { name: 'Save' }).click();
  await layOut(page);
  await expect(page.getByTestId('sentence')).toContainText('1 sheet');
  await room(page, 'Stock');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await openItem(page, 'Roll, 330 mm, offcut');
  await page.getByRole('button', { name: 'Put it back on its roll' }).click();
  await expect(present(page, 'Roll, 330 mm')).toHaveText('60.00 m');
});

test('six rooms fit on a phone, in English and in Spanish', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await beginDemo(page);
  for (const locale of ['EN', 'ES']) {
    await page.goto('./#/stock');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^(Stock|Almacén)$/);
    if (locale === 'ES') {
      await page.getByRole('button', { name: 'Shop', exact: true }).click();
      await page.getByRole('menuitem', { name: 'Units and language' }).click();
      await page.getByLabel('Language', { exact: true }).selectOption({ label: 'Español' });
      await page.keyboard.press('Escape');
      await expect(page.getByRole('heading', { name: 'Almacén', exact: true })).toBeVisible();
    }
    const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wider).toBeLessThanOrEqual(0);
    const last = page.locator('.top nav a').last();
    const box = await last.boundingBox();
    expect((box?.x ?? 0) + (box?.width ?? 999)).toBeLessThanOrEqual(390);
  }
});
