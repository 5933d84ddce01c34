import type { Locator, Page } from '@playwright/test';
import { expect, kept, layOut, leaveWindows, lockRun, notices, openShop, pasteTable, test } from './shop';

const rooms = ['Orders', 'Film', 'Cut', 'Press', 'Stock', 'Log'] as const;

const TABLE = ['Harbour Row Club,back,280,230,4,2026-12-01,yes', 'Fig Tree Cafe,front,205,240,3,,no'].join(
  '\n',
);

const REFUSED = 'Nothing was changed';

/**
 * Presses every button and turns every box and list over that can be used in a part of the page, and tells those after which the app
 * says that nothing was changed: they looked as if they could.
 */
async function falselyAlive(page: Page, part: Locator): Promise<string[]> {
  const found: string[] = [];
  const controls = part.locator('button:enabled, input[type=checkbox]:enabled, select:enabled');
  for (let at = 0; at < (await controls.count()); at += 1) {
    const told = await controls.nth(at).evaluate((control) => {
      const name = control.getAttribute('aria-label') ?? (control.textContent || control.outerHTML);
      if (/^(Close|Cancel)$|[Ff]ile|table/.test(name)) return null;
      if (control instanceof HTMLSelectElement) {
        const other = [...control.options].find(({ value }) => value !== control.value);
        if (!other) return null;
        control.value = other.value;
        control.dispatchEvent(new Event('change', { bubbles: true }));
      } else if (control instanceof HTMLElement) control.click();
      return name;
    });
    if (told === null) continue;
    await page.waitForTimeout(80);
    if ((await notices(page).getByText(REFUSED).count()) > 0) {
      found.push(told);
      // Also from under a window.
      await notices(page)
        .getByText('Dismiss')
        .evaluateAll((all) => {
          for (const each of all) if (each instanceof HTMLElement) each.click();
        });
    }
    if ((await part.getAttribute('role')) !== 'dialog') await leaveWindows(page);
  }
  return found;
}

test('a tab that only shows has nothing that looks as if it could change the book', async ({
  page,
  context,
}) => {
  await openShop(page);
  await pasteTable(page, TABLE);
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  await layOut(page);
  await lockRun(page);
  await kept(page);
  const second = await context.newPage();
  await second.goto('./#/orders');
  const band = second.getByText('Rollwright is open in another tab');
  await expect(band).toBeVisible();

  const add = second.getByRole('button', { name: 'Add an order' });
  await expect(add).toBeDisabled();
  await expect(add).toHaveAccessibleDescription(/another tab, which does the writing/);
  for (const room of rooms) {
    await leaveWindows(second);
    await second.getByRole('link', { name: room, exact: true }).click();
    await expect(second.getByRole('main').getByRole('heading', { level: 1 })).toHaveText(
      room === 'Log' ? 'Log' : new RegExp(room),
    );
    expect.soft(await falselyAlive(second, second.getByRole('main')), room).toEqual([]);
  }
});

const windows = [
  ['Orders', 'Details'],
  ['Orders', 'More about back'],
  ['Film', 'Film and price'],
  ['Press', 'Recipes'],
  ['Press', 'Equipment'],
  ['Press', 'Maintenance'],
  ['Stock', 'Open Roll, 330 mm'],
] as const;

/** Those of the menu of the shop. */
const ofShop = [
  'Units and language',
  'Costs of this shop',
  'Prices of this shop',
  'Storage and backup',
] as const;

test('a window in a tab that only shows has nothing either', async ({ page, context }) => {
  await openShop(page);
  await pasteTable(page, TABLE);
  await kept(page);
  const second = await context.newPage();
  await second.goto('./#/orders');
  await expect(second.getByText('Rollwright is open in another tab')).toBeVisible();
  for (const [room, opens] of windows) {
    await second.getByRole('link', { name: room, exact: true }).click();
    await second.getByRole('button', { name: opens }).first().click();
    await expect(second.getByRole('dialog')).toBeVisible();
    expect.soft(await falselyAlive(second, second.getByRole('dialog').first()), opens).toEqual([]);
    await leaveWindows(second);
  }
  for (const title of ofShop) {
    await second.getByRole('button', { name: 'Shop', exact: true }).click();
    await second.getByRole('menuitem', { name: title }).click();
    await expect(second.getByRole('dialog', { name: title })).toBeVisible();
    expect.soft(await falselyAlive(second, second.getByRole('dialog').first()), title).toEqual([]);
    await leaveWindows(second);
  }
});
