import type { Page } from '@playwright/test';
import { copyRows, expect, filmSurface, layOut, openShop, pasteTable, sentence, test, unfold } from './shop';

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

const orders =
  'North Fair,front,95,60,5,,yes\nNorth Fair,tag,48,72,6,,yes\nSouth Fair,front,96,61,5,,yes\nSouth Fair,tag,48,73,6,,yes\nWest Fair,front,97,62,5,,yes\nWest Fair,tag,48,74,6,,yes';

test.describe('in the background', () => {
  test.use({ cores: 2 });

  test('a better layout is offered with what it saves, and put on the film only when it is taken (rule 3)', async ({
    page,
  }) => {
    await openShop(page);
    await pasteTable(page, orders);
    await page.getByRole('link', { name: 'Film', exact: true }).click();
    await layOut(page);
    // A hand moves all copies 200 mm along the film.
    await filmSurface(page).focus();
    await page.keyboard.press('Control+a');
    for (let step = 0; step < 20; step += 1) await page.keyboard.press('Shift+ArrowRight');
    const moved = await copyRows(page);
    const offer = page.getByText(/^A layout that takes \d+\.\d\d m less is ready: it saves £\d+\.\d\d\.$/);
    await expect(offer).toBeVisible({ timeout: 20_000 });
    // It is offered, not forced.
    expect(await copyRows(page)).toEqual(moved);
    await button(page, 'Take it').click();
    await expect(offer).toBeHidden();
    await expect(sentence(page)).toContainText('m of film');
    const taken = await copyRows(page);
    const end = (list: typeof moved) => Math.max(...list.map(({ y, length }) => y + length));
    expect(end(taken)).toBeLessThan(end(moved) - 100);
    await button(page, 'Undo').click();
    await expect.poll(() => copyRows(page)).toEqual(moved);
  });
});

test('copies of one order lie in a stretch of their own when the film asks for it, at a price told before', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, orders);
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  await button(page, 'Film and price').click();
  await unfold(page, 'Cutting');
  await page
    .getByLabel('Copies of one order')
    .selectOption({ label: 'near each other, for a little more film' });
  await page.getByRole('textbox', { name: 'Film this may cost, %' }).fill('lots');
  await button(page, 'Save').click();
  await expect(page.getByText('Write a percentage from 0 to 100, such as 2.')).toBeVisible();
  await page.getByRole('textbox', { name: 'Film this may cost, %' }).fill('5');
  await button(page, 'Compare in film').nth(1).click();
  await expect(
    page.getByText(/^each order in a stretch of its own: \d\.\d+ m(, \d+(\.\d)?% more)?$/),
  ).toBeVisible();
  await page.getByLabel('Copies of one order').selectOption({ label: 'each order in a stretch of its own' });
  await button(page, 'Save').click();
  await layOut(page);
  await expect(
    page.getByText(/^an order’s copies lie within \d+(\.\d)?% of the film, on average$/),
  ).toBeVisible();
  const rows = await copyRows(page);
  const stretchOf = (code: string) => {
    const own = rows.filter(({ name }) => name.startsWith(code));
    expect(own).toHaveLength(11);
    return {
      from: Math.min(...own.map(({ y }) => y)),
      to: Math.max(...own.map(({ y, length }) => y + length)),
    };
  };
  const stretches = [...new Set(rows.map(({ name }) => name.split(' ')[0] ?? ''))]
    .map(stretchOf)
    .sort((a, b) => a.from - b.from);
  expect(stretches).toHaveLength(3);
  for (const [index, { to }] of stretches.slice(0, -1).entries()) {
    expect(stretches[index + 1]?.from).toBeGreaterThan(to);
  }
});
