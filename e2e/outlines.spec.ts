import type { Page } from '@playwright/test';
import { beginDemo, expect, figures, filmSurface, kept, layOut, sentence, test, unfold } from './shop';

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const AROUND = 'with scissors or a contour cutter, around each outline';

test('copies are laid out by their outlines, at a price told before, and stay so when the page is loaded anew', async ({
  page,
}) => {
  test.slow();
  await beginDemo(page);
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  // The artwork's outlines are found by its check.
  await expect(page.getByText(/Checking artwork/)).toBeHidden({ timeout: 60_000 });
  await layOut(page);
  const boxes = await figures(page);
  await button(page, 'Film and price').click();
  await unfold(page, 'Cutting');
  await page.getByLabel('Cut apart').selectOption({ label: AROUND });
  await button(page, 'Compare in film').first().click();
  await expect(page.getByText(new RegExp(`^${AROUND}: .* m`))).toBeVisible({ timeout: 60_000 });
  await button(page, 'Save').click();
  const surface = filmSurface(page);
  const before = await surface.getAttribute('data-plans');
  await button(page, 'Lay out').click();
  await expect(surface).not.toHaveAttribute('data-plans', before ?? '');
  await expect(button(page, 'Stop')).toBeHidden({ timeout: 60_000 });
  const outlines = await figures(page);
  expect(outlines.metres).toBeLessThan(boxes.metres);
  await kept(page);
  await page.reload();
  await expect(sentence(page)).toBeVisible();
  expect((await figures(page)).metres).toBe(outlines.metres);
  // All of it may lie as it lies: nothing came off the film when it was checked anew.
  await expect(page.getByText(/came off the film/)).toBeHidden();
});
