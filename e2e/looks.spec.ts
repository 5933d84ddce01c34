import { expectAccessible } from './accessible';
import { expect, layOut, openShop, pasteTable, stop, test } from './shop';

test('every room and window meets WCAG 2.2 AA', async ({ page }) => {
  // A dozen windows, each looked through by axe.
  test.setTimeout(150_000);
  const check = (where: string) => expectAccessible(page, where, { others: ['dark', 'forced'] });
  await page.goto('./');
  await expect(page.getByTestId('sentence')).toBeVisible();
  await stop(page);
  await page.getByText('Copies as a table').click();
  await page.locator('.copy-table tbody button').first().click();
  await check('film');
  await page.getByRole('button', { name: 'Film and price' }).click();
  await check('film and price');
  await page.keyboard.press('Escape');
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog')).toBeVisible();
  await check('keys');
  await page.keyboard.press('Escape');
  for (const [name, where] of [
    ['Choose copies', 'run'],
    ['Kept on this device', 'backup'],
  ] as const) {
    await page.getByRole('button', { name }).click();
    await expect(page.getByRole('dialog')).toBeVisible();
    await check(where);
    await page.keyboard.press('Escape');
  }
  await page.getByRole('link', { name: 'Orders' }).click();
  await check('orders');
  await page.getByRole('button', { name: 'Details' }).first().click();
  await check('order');
  await page.getByRole('button', { name: 'Garments and places' }).click();
  await page.getByRole('button', { name: 'Add a line' }).click();
  await page.getByRole('button', { name: 'Add a place' }).click();
  await check('garments and places');
  await page.keyboard.press('Escape');
  await page.locator('.grade-button').first().click();
  await expect(page.getByRole('dialog').locator('canvas')).toBeVisible();
  await check('what will print');
  await page.keyboard.press('Escape');
  await page
    .getByRole('button', { name: /^More about/ })
    .first()
    .click();
  await check('more of a transfer');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Paste a table' }).click();
  await page.getByRole('textbox', { name: 'Table' }).fill('Club,crest,abc,80,4,,no\nClub,tag,50,50,4,,no');
  await expect(page.getByText('1 row to mend')).toBeVisible();
  await check('paste');
  await page.keyboard.press('Escape');
  await page.goto('./#/cut-map');
  await expect(page.locator('.sheet').first()).toBeVisible();
  await check('cut map');
  await page.getByRole('button', { name: 'Test strip' }).click();
  await expect(page.getByRole('dialog')).toBeVisible();
  await check('test strip');
});

test('the windows for images and designs meet WCAG 2.2 AA', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,40,30,2,,no');
  const check = (where: string) => expectAccessible(page, where, { within: '.dialog' });
  await page.getByRole('button', { name: 'More about crest' }).click();
  await page.getByRole('button', { name: 'Several sizes' }).click();
  await page.getByRole('textbox', { name: 'Copies, adult' }).fill('x');
  await expect(page.getByText(/^Write a whole number up to/)).toBeVisible();
  await check('a design at several sizes');
  await page.keyboard.press('Escape');
  await layOut(page);
  await page.getByRole('button', { name: 'Print-ready image' }).click();
  await expect(page.getByText('No artwork: CL crest.')).toBeVisible();
  await check('print-ready image');
});

test('the empty rooms meet WCAG 2.2 AA too', async ({ page }) => {
  await openShop(page);
  for (const room of ['film', 'orders']) {
    await page.goto(`./#/${room}`);
    await expectAccessible(page, room);
  }
});

test('the page lets in no script, style or address from elsewhere', async ({ page }) => {
  await page.goto('./');
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  expect(policy).toContain("default-src 'self'");
  expect(policy).not.toContain('unsafe');
  expect(await page.locator('script:not([src])').count()).toBe(0);
  const away: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith(new URL(page.url()).origin) && !request.url().startsWith('blob:'))
      away.push(request.url());
  });
  await page.reload();
  await expect(page.getByTestId('sentence')).toBeVisible();
  expect(away).toEqual([]);
});
