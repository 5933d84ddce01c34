import type { Page } from '@playwright/test';
import {
  copyRows,
  expect,
  layOut,
  lockRun,
  notices,
  openShop,
  pasteTable,
  sentence,
  test,
  unfold,
} from './shop';

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const today = new Date();
const date = (days: number) => {
  const day = new Date(today);
  day.setDate(day.getDate() + days);
  return day.toLocaleDateString('sv-SE');
};
const orders = [
  `North Fair,front,95,60,30,${date(0)},yes`,
  `North Fair,tag,48,72,20,${date(0)},yes`,
  `South Fair,back,250,120,6,${date(5)},yes`,
  `West Fair,back,251,121,4,${date(6)},yes`,
].join('\n');

/** The rows of the table twin whose copies lie first on the film, those of one order. */
async function endOf(page: Page, code: string): Promise<{ own: number; all: number }> {
  const rows = await copyRows(page);
  const ends = (list: typeof rows) => Math.max(...list.map(({ y, length }) => y + length));
  return { own: ends(rows.filter(({ name }) => name.startsWith(code))), all: ends(rows) };
}

test.beforeEach(async ({ page }) => {
  await openShop(page);
  await pasteTable(page, orders);
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  await button(page, 'Film and price').click();
  await unfold(page, 'Cutting');
  await page.getByRole('textbox', { name: 'Longest span' }).fill('400');
  await button(page, 'Save').click();
  await layOut(page);
});

test('a rush goes out first by one press, is told with its time before anything is locked, and undo takes it back', async ({
  page,
}) => {
  const before = await copyRows(page);
  await button(page, 'Print West Fair first').click();
  await expect(notices(page)).toContainText(
    'West Fair is a rush order now: 4 copies lie as near to the front as they go.',
  );
  const { own, all } = await endOf(page, 'WF');
  expect(own).toBeLessThan(all / 2);
  await expect(page.getByTestId('dues')).toContainText(/WF West Fair (\(rush\) done by|.*late)/, {
    timeout: 20_000,
  });
  await button(page, 'Undo').click();
  await expect.poll(() => copyRows(page)).toEqual(before);
});

test('a rush has a run of its own where the present one is sent to print, and a reprint joins it', async ({
  page,
}) => {
  await page.getByRole('link', { name: 'Orders', exact: true }).click();
  await pasteTable(page, `East Fair,back,252,122,3,${date(9)},yes`);
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  await lockRun(page);
  await button(page, 'Print East Fair first').click();
  await expect.poll(() => copyRows(page)).toHaveLength(3);
  await expect(sentence(page)).toContainText('of film');
  await expect(button(page, 'Lock for print')).toBeEnabled();
  // A tag of the first run is spoiled: there is room for it beside what the rush takes.
  await page.getByRole('link', { name: 'Press', exact: true }).click();
  const runs = page.getByRole('combobox', { name: 'Run', exact: true });
  await runs.selectOption({ label: 'Run 1 · locked for print' });
  await button(page, 'All printed').click();
  await page.getByRole('link', { name: 'Cut', exact: true }).click();
  await button(page, 'A copy is spoiled').click();
  const tag = page.getByRole('combobox', { name: 'Copy', exact: true }).locator('option', { hasText: 'tag' });
  await page
    .getByRole('combobox', { name: 'Copy', exact: true })
    .selectOption((await tag.first().getAttribute('value')) ?? '');
  await page.getByLabel('Why').fill('crooked');
  await button(page, 'Reprint').click();
  await page.getByRole('link', { name: 'Press', exact: true }).click();
  await button(page, 'Join span 1 of Run 2').click();
  await expect(notices(page)).toContainText('1 copy joined span 1 of Run 2.');
  await expect(page.getByRole('heading', { name: 'Reprints that wait' })).toBeHidden();
});
