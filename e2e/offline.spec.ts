import { expect, kept, openShop, pasteTable, sentence, test } from './shop';
import { speak } from './speak';

test.use({ serviceWorkers: 'allow' });

test('after one visit the app starts with the network off, keeps what is entered then, and speaks Spanish too', async ({
  page,
  context,
}) => {
  await openShop(page);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByText('The film is empty')).toBeVisible();
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  await page.getByRole('button', { name: 'Lay out' }).click();
  await expect(sentence(page)).toBeVisible();
  // The map and its PDF come from what one visit has fetched.
  await page.getByRole('button', { name: 'Cut map' }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as PDF' }).click();
  expect((await download).suggestedFilename()).toBe('cut map Run 1.pdf');
  await speak(page, 'Shop', 'Units and language', 'Español');
  await expect(page.getByRole('dialog', { name: 'Unidades e idioma' })).toBeVisible();
  await kept(page);
  await page.reload();
  await page.goto('./#/film');
  await expect(page.locator('html')).toHaveAttribute('lang', 'es');
  await expect(sentence(page)).toContainText('de película');
  // The licences of all that ships are a page of their own, which is kept too.
  await page.getByRole('button', { name: 'Taller', exact: true }).click();
  await page.getByRole('menuitem', { name: 'Unidades e idioma' }).click();
  const opened = context.waitForEvent('page');
  await page.getByRole('link', { name: /^Licencias/ }).click();
  await expect((await opened).getByText(/^Rollwright is made with these packages/)).toBeVisible();
});

test('it can be installed: a manifest with icons of our own', async ({ page, request }) => {
  await page.goto('./');
  const href = await page.locator('link[rel="manifest"]').getAttribute('href');
  const manifest = await (await request.get(`./${href}`)).json();
  expect(manifest).toMatchObject({ name: 'Rollwright', display: 'standalone', start_url: './' });
  for (const { src } of manifest.icons) expect((await request.get(`./${src}`)).ok()).toBe(true);
});
