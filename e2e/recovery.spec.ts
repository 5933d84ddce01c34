import { readFileSync } from 'node:fs';
import { expect, kept, openShop, pasteTable, test } from './shop';

test.use({ serviceWorkers: 'allow' });

/** Puts something in place of the book's own records, as damage would. */
const breakBook = () =>
  new Promise<void>((resolve, reject) => {
    const opened = indexedDB.open('rollwright');
    opened.onerror = () => reject(opened.error);
    opened.onsuccess = () => {
      const transaction = opened.result.transaction('records', 'readwrite');
      const records = transaction.objectStore('records');
      const keys = records.getAllKeys();
      keys.onsuccess = () => {
        for (const key of keys.result) if (!String(key).startsWith('meta/')) records.put('damaged', key);
      };
      transaction.oncomplete = () => {
        opened.result.close();
        resolve();
      };
    };
  });

test('a book that is damaged is saved as it lies, and comes back from a snapshot, the network off and the app broken', async ({
  page,
  context,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await kept(page);
  // Opening takes the snapshot of the hour.
  await page.goto('./#/film');
  await page.reload();
  await expect(page.getByText('Club').first()).toBeVisible();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await expect
    .poll(() => page.evaluate(() => caches.keys().then((names) => names.length)))
    .toBeGreaterThan(0);

  // While a tab writes nothing is brought back, which is said.
  const recovery = await context.newPage();
  recovery.on('dialog', (dialog) => void dialog.accept());
  await recovery.goto('./recovery.html');
  await recovery
    .getByRole('button', { name: /^Bring back/ })
    .first()
    .click();
  await expect(recovery.getByText('Another tab has the book open')).toBeVisible();

  await page.goto('./recovery.html');
  await page.evaluate(breakBook);
  await context.setOffline(true);
  await context.route(/\/assets\/index-.*\.js$/, (route) => route.abort());
  await recovery.reload();
  const download = recovery.waitForEvent('download');
  await recovery.getByRole('button', { name: 'Save the records' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/^rollwright records \d{4}-\d\d-\d\d\.json$/);
  const raw = JSON.parse(readFileSync(await file.path(), 'utf8'));
  const stored: readonly { database: string; key: string; value: unknown }[] = raw.stores;
  expect(stored.some(({ database, value }) => database === 'rollwright' && value === 'damaged')).toBe(true);
  expect(stored.some(({ database }) => database === 'rollwright-snapshots')).toBe(true);

  await recovery
    .getByRole('button', { name: /^Bring back/ })
    .last()
    .click();
  await expect(recovery.getByText(/The book is as it was/)).toBeVisible();
  await context.setOffline(false);
  await context.unrouteAll();
  await recovery.getByRole('link', { name: 'Open the app' }).click();
  await recovery.getByRole('link', { name: 'Film', exact: true }).click();
  await expect(recovery.getByText('Club').first()).toBeVisible();
  await expect(recovery.getByText('could not be read')).toHaveCount(0);
});

test.describe('a browser in Spanish', () => {
  test.use({ locale: 'es-MX' });

  test('removes the files of the app when that is agreed to, and keeps the records', async ({ page }) => {
    await page.goto('./recovery.html');
    await expect(page.getByRole('heading', { name: 'Rollwright: recuperación' })).toBeVisible();
    await page.evaluate(() => caches.open(`other ${new URL('./', location.href).href}`));
    page.once('dialog', (dialog) => void dialog.dismiss());
    await page.getByRole('button', { name: 'Eliminar los archivos de la aplicación' }).click();
    expect(await page.evaluate(() => caches.keys().then((names) => names.length))).toBe(1);
    page.once('dialog', (dialog) => void dialog.accept());
    await page.getByRole('button', { name: 'Eliminar los archivos de la aplicación' }).click();
    await expect(page.getByText('se han eliminado')).toBeVisible();
    expect(await page.evaluate(() => caches.keys().then((names) => names.length))).toBe(0);
  });
});

test('an app that does not begin leads there', async ({ page }) => {
  await page.route(/\/assets\/index-.*\.js$/, (route) =>
    route.fulfill({ contentType: 'text/javascript', body: '' }),
  );
  await page.goto('./');
  await page.getByRole('link', { name: 'Recovery page' }).click();
  await expect(page.getByRole('heading', { name: 'Rollwright: recovery' })).toBeVisible();
});
