import type { Page } from '@playwright/test';
import { copyRows, expect, kept, layOut, openShop, pasteTable, test } from './shop';

/** What is damaged: the first record whose key begins so, a field of it, and what stands there then. */
type Change = readonly [key: string, path: readonly string[], value: unknown];

/** Puts values in place of what is stored, as damage would, and opens the page again. */
const damage = async (page: Page, changes: readonly Change[]) => {
  await page.evaluate(async (all) => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('rollwright');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const asked = <Value>(request: IDBRequest<Value>) =>
      new Promise<Value>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const store = () => db.transaction('records', 'readwrite').objectStore('records');
    const keys = (await asked(store().getAllKeys())).map(String);
    for (const [prefix, path, value] of all) {
      const key = keys.find((own) => own.startsWith(prefix)) ?? prefix;
      const record = await asked(store().get(key));
      let fields = record;
      for (const name of path.slice(0, -1)) fields = fields[name];
      fields[path.at(-1) ?? ''] = value;
      await asked(store().put(record, key));
    }
    db.close();
  }, changes);
  await page.reload();
};

test('half a tray, an unknown unit and a currency of no letters are said, are those of a new shop, and every room opens (rule 11)', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await kept(page);
  await damage(page, [
    ['settings/shop', ['station', 'trays'], 0.5],
    ['settings/shop', ['unit'], 'furlong'],
    ['settings/shop', ['currency'], '!!!'],
  ]);
  const said = page.getByText('those of a new shop: ');
  for (const named of ['equipment', 'unit of length', 'currency'])
    await expect.soft(said).toContainText(named);
  for (const room of ['Orders', 'Film', 'Cut', 'Press', 'Stock', 'Log']) {
    await page.getByRole('link', { name: room, exact: true }).click();
    await expect(page.getByRole('main').getByRole('heading').first()).toBeAttached();
    await expect(page.getByText('could not be shown')).toBeHidden();
  }
  await page.getByRole('link', { name: 'Orders', exact: true }).click();
  await expect(page.getByText('1 order, 1 transfer, 4 copies')).toBeVisible();
});

test('an order with a day that no calendar has is set aside and named, and the others are there (rule 11)', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await kept(page);
  await damage(page, [['order/', ['due'], '2026-99-99']]);
  await page.getByText('What could not be read', { exact: true }).click();
  await expect(page.getByText('1 order: Club')).toBeVisible();
  await expect(page.getByText('4 copies')).toBeVisible();
  await page.getByRole('link', { name: 'Orders', exact: true }).click();
  await pasteTable(page, 'Cafe,apron,100,90,2,,no');
  await kept(page);
  await page.reload();
  await expect(page.getByText('1 order, 1 transfer, 2 copies')).toBeVisible();
  await expect(page.getByText('What could not be read', { exact: true })).toBeVisible();
});

test('where the only run could not be read, each room that shows one offers to begin another (rule 11)', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await kept(page);
  await damage(page, [['run/', ['state'], 'x']]);
  const begin = page.getByRole('button', { name: 'Begin a run' });
  for (const room of ['film', 'cut', 'cut-map', 'press', 'cards']) {
    await page.goto(`./#/${room}`);
    await expect(begin).toBeVisible();
    await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1);
  }
  await begin.click();
  await page.goto('./#/film');
  await layOut(page);
  expect(await copyRows(page)).toHaveLength(4);
});
