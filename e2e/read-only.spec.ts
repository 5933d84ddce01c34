import type { Locator, Page } from '@playwright/test';
import { expect, kept, layOut, leaveWindows, lockRun, openShop, pasteTable, test } from './shop';

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
  const isWindow = (await part.getAttribute('role')) === 'dialog';
  // As many as can be are pressed in one trip to the page; a window that one has opened is left from here.
  for (let next: number | null = 0; next !== null; ) {
    const told: { found: string[]; next: number | null } = await part.evaluate(
      async (element, { from, staysIn, refused }) => {
        const alive: string[] = [];
        const controls = () =>
          element.querySelectorAll('button:enabled, input[type=checkbox]:enabled, select:enabled');
        for (let at = from; at < controls().length; at += 1) {
          const control = controls()[at];
          const name = control?.getAttribute('aria-label') ?? (control?.textContent || control?.outerHTML);
          if (!name || /^(Close|Cancel)$|[Ff]ile|table/.test(name)) continue;
          if (control instanceof HTMLSelectElement) {
            const other = [...control.options].find(({ value }) => value !== control.value);
            if (!other) continue;
            control.value = other.value;
            control.dispatchEvent(new Event('change', { bubbles: true }));
          } else if (control instanceof HTMLElement) control.click();
          await new Promise((resolve) => setTimeout(resolve, 80));
          const said = document.querySelector('.notices');
          if (said?.textContent?.includes(refused)) {
            alive.push(name);
            // Also from under a window.
            for (const each of said.querySelectorAll('button'))
              if (each.textContent === 'Dismiss') each.click();
          }
          if (!staysIn && document.querySelector('[role=dialog]')) return { found: alive, next: at + 1 };
        }
        return { found: alive, next: null };
      },
      { from: next, staysIn: isWindow, refused: REFUSED },
    );
    found.push(...told.found);
    next = told.next;
    if (!isWindow) await leaveWindows(page);
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
