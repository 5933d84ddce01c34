import type { Page } from '@playwright/test';
import {
  copyRows,
  expect,
  figures,
  kept,
  layOut,
  lockRun,
  notices,
  openShop,
  pasteTable,
  test,
  unfold,
} from './shop';

/** Fourteen orders of a Tuesday, some with more than one transfer. */
const TUESDAY = [
  'order,transfer,width,height,count,due,may turn',
  ...Array.from({ length: 14 }, (_, index) =>
    [
      `Club ${index + 1},front,${200 + ((index * 13) % 80)} mm,${150 + ((index * 29) % 90)} mm,${1 + (index % 3)},2026-12-${String(1 + (index % 5)).padStart(2, '0')},yes`,
      `Club ${index + 1},chest,${70 + ((index * 7) % 30)} mm,${60 + ((index * 11) % 30)} mm,${2 + (index % 4)},,yes`,
    ].join('\n'),
  ),
].join('\n');

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

test('a Tuesday: fourteen orders, a rush at noon, a jam at 1.2 m, a roll that runs out', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, TUESDAY);
  await expect(page.getByText('14 orders, 28 transfers')).toBeVisible();
  await layOut(page);
  const morning = await figures(page);
  expect(morning.metres).toBeGreaterThan(2);

  // Locked, it does not change, whatever happens to the orders.
  await lockRun(page);
  await expect(notices(page)).toContainText('Run 1 is locked for print');
  await page.getByRole('link', { name: 'Orders' }).click();
  const width = page.getByRole('textbox', { name: 'Width: front' }).first();
  await width.fill('300 mm');
  await width.press('Enter');
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  expect(await figures(page)).toEqual(morning);

  // Noon: a rush order goes in directly behind what is printed.
  await button(page, 'Printed to …').click();
  await page.getByRole('textbox', { name: /Printed, from the run/ }).fill('700');
  await button(page, 'Save').click();
  await expect(page.getByText('printed to 700 mm')).toBeVisible();
  await pasteTable(page, 'Rush cafe,apron,120 mm,90 mm,2,2026-11-30,yes');
  await layOut(page);
  const rush = (await copyRows(page)).filter(({ name }) => name.includes('apron'));
  expect(rush).toHaveLength(2);
  for (const { y } of rush) expect(y).toBeGreaterThanOrEqual(700);

  // A jam: what it touched is back on the list, and a new plan has a place for it.
  const before = await copyRows(page);
  await lockRun(page);
  await button(page, 'Spoiled from – to …').click();
  await page.getByRole('textbox', { name: 'From (mm)' }).fill('1000');
  await page.getByRole('textbox', { name: 'To (mm)' }).fill('1200');
  const touched = Number(
    /(\d+) cop/.exec((await page.getByRole('dialog').getByRole('status').textContent()) ?? '')?.[1],
  );
  expect(touched).toBe(before.filter(({ y, length }) => y < 1200 && y + length > 1000).length);
  expect(touched).toBeGreaterThan(0);
  await button(page, 'Put them back on the list').click();
  await layOut(page);
  const rows = await copyRows(page);
  expect(rows).toHaveLength(before.length);
  for (const { y, length } of rows) expect(y + length <= 1000 || y >= 1200).toBe(true);

  // The roll runs out: the soonest orders lie on it, the rest waits and is said.
  const used = (await figures(page)).metres;
  await button(page, 'Film and price').click();
  await page.getByRole('textbox', { name: 'Left on the roll' }).fill(`${used - 0.8} m`);
  await button(page, 'Save').click();
  await layOut(page);
  await expect(page.getByText(/found no room: the roll is too short/).first()).toBeVisible();
  expect((await figures(page)).metres).toBeLessThanOrEqual(used - 1.19);

  // What fits is printed, the film is off the roll, and a new run takes what waits.
  await lockRun(page);
  await button(page, 'All printed').click();
  await expect(notices(page)).toContainText('Run 1 is printed; its film is off the roll.');
  await expect(page.getByLabel('Run', { exact: true })).toContainText('Run 2 · draft');
  await kept(page);
  await page.reload();
  await expect(page.getByLabel('Run', { exact: true })).toContainText('Run 1 · printed');
});

test('two drafts: copies chosen for one are not laid out by the other, and move between them', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,3,2026-12-01,no\nCafe,apron,100,90,2,2026-12-04,no');
  await layOut(page);
  await page.getByLabel('Run', { exact: true }).selectOption({ label: 'a new run' });
  await expect(page.getByRole('dialog')).toBeVisible();
  await button(page, 'Close').click();
  await expect(page.getByText('Nothing lies on the film yet.')).toBeVisible();
  await page.getByLabel('Run', { exact: true }).selectOption({ label: 'Run 1 · draft' });
  const rows = await copyRows(page);
  await page.getByRole('button', { name: rows[0]?.name ?? '' }).click();
  await page.getByLabel('Move to').selectOption({ label: 'Run 2' });
  await expect.poll(() => copyRows(page)).toHaveLength(4);
  await page.getByLabel('Run', { exact: true }).selectOption({ label: 'Run 2 · draft' });
  await layOut(page);
  await expect.poll(() => copyRows(page)).toHaveLength(1);
});

test('several copies are framed, moved together, and undo outlives a reload', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,60,60,4,,no');
  await layOut(page);
  const before = await copyRows(page);
  const film = page.locator('.film-surface');
  await film.focus();
  await page.keyboard.press('Control+a');
  await expect(page.getByRole('region', { name: '4 copies selected' })).toBeVisible();
  await page.keyboard.press('Shift+ArrowRight');
  const moved = await copyRows(page);
  expect(moved.map(({ y }) => y)).toEqual(before.map(({ y }) => y + 10));
  await kept(page);
  await page.reload();
  await film.focus();
  await page.keyboard.press('Control+z');
  await expect.poll(() => copyRows(page)).toEqual(before);
});

test('cut sheets are laid out, counted and taken off the stack', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, 'Club,back,200,280,3,,no\nClub,crest,80,80,4,,no');
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  await button(page, 'Film and price').click();
  await page.getByLabel('Film', { exact: true }).selectOption({ label: 'a new stack of sheets' });
  await page.getByRole('textbox', { name: 'Name' }).fill('A3 sheets');
  await page.getByLabel('Trade size').selectOption({ label: 'sheet, A3 (297 × 420 mm)' });
  await page.getByRole('textbox', { name: 'Sheets left' }).fill('10');
  await page.getByRole('textbox', { name: 'Price of a sheet (GBP)' }).fill('0.90');
  await button(page, 'Save').click();
  await layOut(page);
  await expect(page.getByTestId('sentence')).toContainText('3 sheets of film');
  await expect(page.getByTestId('sentence')).toContainText('£2.70');
  await expect(page.getByText(/^297 × \d+(\.\d)? mm of the last sheet stays clean$/)).toBeVisible();
  const rows = await copyRows(page);
  expect(rows).toHaveLength(7);
  // No copy lies over the border between two sheets.
  for (const { y, length } of rows) expect(Math.floor(y / 420)).toBe(Math.floor((y + length) / 420));
  await lockRun(page);
  await button(page, 'All printed').click();
  await expect(page.getByText('7 sheets left')).toBeVisible();
});

test('straight cuts are compared with scissors before they are chosen, and counted', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, 'Club,back,150,110,3,,yes\nClub,crest,80,60,6,,yes\nClub,tag,40,30,8,,yes');
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  await button(page, 'Film and price').click();
  await unfold(page, 'Cutting');
  await page.getByLabel('Cut apart').selectOption({ label: 'straight from edge to edge, in any order' });
  await button(page, 'Compare in film').first().click();
  await expect(page.getByText(/straight from edge to edge, in any order: .* m/)).toBeVisible();
  await button(page, 'Save').click();
  await layOut(page);
  await expect(page.getByText('16 straight cuts part all copies')).toBeVisible();
  const rows = await copyRows(page);
  expect(rows).toHaveLength(17);
});
