import { expect, layOut, openShop, pasteTable, test } from './shop';

test('a new order and one like another are first, their names to be typed over; the archive is searched, and asks before it takes what is part done', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Hill,crest,80,80,2,2026-12-01,no\nMill,back,90,90,2,2026-12-02,no');
  const names = page.getByRole('textbox', { name: 'Order', exact: true });
  await page.getByRole('button', { name: 'Add an order' }).click();
  await expect(names.first()).toBeFocused();
  await page.keyboard.type('Fair');
  await page.keyboard.press('Enter');
  await expect(names.first()).toHaveValue('Fair');

  await page.getByRole('button', { name: 'Repeat order Mill' }).click();
  await expect(names.first()).toHaveValue('Mill, again');
  await expect(names.first()).toBeFocused();
  await page.getByRole('button', { name: 'Undo' }).click();

  await layOut(page);
  await page.getByRole('link', { name: 'Orders' }).click();
  await page.getByRole('button', { name: 'Archive Hill' }).click();
  const dialog = page.getByRole('dialog');
  await expect(dialog).toContainText(
    'This order is not done: 0 copies are printed or sent to print, 2 on film, 0 waiting.',
  );
  await dialog.getByRole('button', { name: 'Archive', exact: true }).click();
  await expect(page.getByRole('region', { name: 'Hill', exact: true })).toHaveCount(0);
  await page.getByRole('textbox', { name: 'Search' }).fill('crest');
  await expect(page.getByRole('region', { name: 'Hill', exact: true })).toContainText('archived');
  await page.getByRole('button', { name: 'Bring Hill back to work' }).click();
  await page.getByRole('textbox', { name: 'Search' }).fill('');
  await expect(page.getByRole('region', { name: 'Hill', exact: true })).not.toContainText('archived');
});

test('an order’s code and name stay in view beside its acts, however wide the screen is', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, '#1041 Oak Lane Choir,crest,80,80,2,2026-12-04,no');
  const head = page.locator('.order-head').first();
  for (const width of [1440, 1180, 1024, 800, 390]) {
    await page.setViewportSize({ width, height: 768 });
    const of = async (label: string) =>
      (await head.getByLabel(label, { exact: true }).boundingBox())?.width ?? 0;
    expect(await of('Code'), `code at ${width}`).toBeGreaterThanOrEqual(80);
    expect(await of('Order'), `name at ${width}`).toBeGreaterThanOrEqual(150);
  }
});
