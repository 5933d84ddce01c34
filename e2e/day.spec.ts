import { expect, test } from '@playwright/test';
import { figures, kept, layOut, openShop, pasteTable, sentence, TABLE } from './shop';

test('the first visit opens a demo day, which lets go in one press', async ({ page }) => {
  await page.goto('./');
  await expect(page.getByText('This is a demo day with invented orders.')).toBeVisible();
  await expect(sentence(page)).toContainText('m of film');
  await page.getByRole('button', { name: 'Start with my own orders' }).click();
  await expect(page.getByText('The film is empty')).toBeVisible();
  await expect(page.getByText('This is a demo day')).toBeHidden();
});

test('a pasted day becomes a layout, a dragged copy changes the figures, and all of it outlives a reload', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, TABLE);
  // Rule 7: the bad row is named, the good ones are taken.
  await expect(page.getByText('Row 5')).toBeVisible();
  await expect(page.getByText(/is not a length/)).toBeVisible();
  await page.getByRole('button', { name: 'Cancel' }).click();
  await expect(page.getByText('3 orders, 5 transfers, 24 copies')).toBeVisible();

  await layOut(page);
  const laid = await figures(page);
  expect(laid.metres).toBeGreaterThan(0.5);
  expect(laid.waste).toBeLessThan(50);

  await page.getByText('Copies as a table').click();
  await expect(page.locator('.copy-table tbody tr')).toHaveCount(24);

  // Drag the last copy 100 mm further along: the film gets longer while it is held.
  const film = page.locator('.film-surface');
  await page.locator('.copy-table tbody tr').last().getByRole('button').click();
  await film.scrollIntoViewIfNeeded();
  const along = page.getByRole('textbox', { name: 'Along (mm)' });
  const before = Number(await along.inputValue());
  await film.focus();
  for (let step = 0; step < 10; step += 1) await page.keyboard.press('Shift+ArrowRight');
  await expect(along).toHaveValue(String(before + 100));
  const moved = await figures(page);
  expect(moved.metres).toBeGreaterThan(laid.metres);

  await kept(page);
  await page.reload();
  await expect(sentence(page)).toContainText(`${moved.metres.toFixed(2)} m`);
  expect(await figures(page)).toEqual(moved);
});
