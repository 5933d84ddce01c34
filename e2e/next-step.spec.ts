import type { Page } from '@playwright/test';
import { expectAccessible } from './accessible';
import { expect, layOut, openLockedRun, openShop, pasteTable, sentence, test } from './shop';

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

/** The labels of what is done next: of the loud buttons that can be pressed. */
const loud = (page: Page) => page.locator('main .button.primary:enabled').allTextContents();

test('what is done next is the loud button: laying out, then locking, then the image', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,40,30,3,,no');
  expect(await loud(page)).toEqual(['To the Film room']);
  await button(page, 'To the Film room').click();
  await expect.poll(() => loud(page)).toEqual(['Lay out']);
  await layOut(page);
  expect(await loud(page)).toEqual(['Lock for print']);
  await pasteTable(page, 'Club,tag,20,20,2,,no');
  await expect.poll(() => loud(page)).toEqual(['To the Film room']);
});

test('a locked run offers its image and its cut map, and no layout', async ({ page }) => {
  await openLockedRun(page);
  await expect(sentence(page)).toBeVisible();
  expect(await loud(page)).toEqual(['Print-ready image']);
  await expect(button(page, 'Cut map')).toBeEnabled();
  await expect(button(page, 'Lay out')).toHaveCount(0);
});

test('what is set and kept for the shop is found in one menu, also by keys', async ({ demo }) => {
  await button(demo, 'Shop').focus();
  await demo.keyboard.press('Enter');
  await expect(demo.getByRole('menuitem')).toHaveText([
    'Units and languageEnglish · mm',
    'Costs of this shop',
    'Prices of this shop',
    'Film and price',
    'Equipment and handling',
    'Recipes',
    'Maintenance',
    'Storage and backup',
    'Every key',
  ]);
  await expectAccessible(demo, 'the menu of the shop', { within: '.shop-menu' });
  await demo.keyboard.press('Escape');
  await expect(demo.getByRole('menuitem')).toHaveCount(0);
  await expect(button(demo, 'Shop')).toBeFocused();
  await demo.keyboard.press('Enter');
  await demo.getByRole('menuitem', { name: 'Storage and backup' }).click();
  await expect(demo.getByRole('dialog', { name: 'Storage and backup' })).toBeVisible();
});
