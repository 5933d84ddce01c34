import type { Page } from '@playwright/test';
import { expect, figures, sentence, TABLE, test } from './shop';

/** Presses Tab until something with this name has the focus: nothing is reached by a pointer. */
async function tabTo(page: Page, name: RegExp, within = 250): Promise<void> {
  for (let press = 0; press < within; press += 1) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate(() => {
      const element = document.activeElement;
      const label = element?.getAttribute('aria-label') ?? '';
      const named =
        element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement
          ? [...(element.labels ?? [])].map((each) => each.textContent).join(' ')
          : element?.textContent;
      return label || named || '';
    });
    if (name.test(focused)) return;
  }
  throw new Error(`nothing called ${name} takes the focus`);
}

test('from a pasted day to a printed map by keyboard alone', async ({ page }) => {
  await page.goto('./');
  await expect(sentence(page)).toBeVisible();
  await tabTo(page, /^Start with my own orders$/);
  await page.keyboard.press('Enter');
  await expect(page.getByText('The film is empty')).toBeVisible();
  await tabTo(page, /^Go to the orders$/);
  await page.keyboard.press('Enter');
  await tabTo(page, /^Paste a table$/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('textbox', { name: 'Table' })).toBeFocused();
  await page.keyboard.insertText(
    TABLE.split('\n')
      .filter((line) => !line.includes('abc'))
      .join('\n'),
  );
  await tabTo(page, /^Add 5 transfers$/);
  await page.keyboard.press('Enter');
  await expect(page.getByText('3 orders, 5 transfers, 24 copies')).toBeVisible();
  await tabTo(page, /^Film$/);
  await page.keyboard.press('Enter');
  await tabTo(page, /^Lay out$/);
  await page.keyboard.press('Enter');
  await expect(sentence(page)).toBeVisible();
  await page.keyboard.press('Control+.');
  await expect(page.getByRole('button', { name: 'Stop' })).toBeHidden();
  const before = await figures(page);
  await tabTo(page, /^Film with 24 copies/);
  // From the first copy on to the one that begins last: none is so long that it ends behind that one, moved by 140 mm, and a
  // knife line still fits before it.
  await page.keyboard.press('n');
  await page.keyboard.press('Shift+n');
  // What is selected is told, and what is done with it is next.
  await expect(page.locator('.film-canvas [role=status]')).toContainText(/from the edge, .* along/);
  await expect(page.getByRole('button', { name: 'Turn', exact: true })).toBeVisible();
  await tabTo(page, /^Turn$/, 4);
  await tabTo(page, /^Film with 24 copies/);
  const along = page.getByRole('textbox', { name: 'Along (mm)' });
  const start = Number(await along.inputValue());
  for (let step = 0; step < 14; step += 1) await page.keyboard.press('Shift+ArrowRight');
  await expect(along).toHaveValue(String(start + 140));
  expect((await figures(page)).metres).toBeGreaterThan(before.metres);
  await tabTo(page, /^Cut map$/);
  await page.keyboard.press('Enter');
  await expect(page.locator('.sheet').first()).toBeVisible();
  const download = page.waitForEvent('download');
  await tabTo(page, /^Save as PDF$/);
  await page.keyboard.press('Enter');
  expect((await download).suggestedFilename()).toBe('cut map Run 1.pdf');
});
