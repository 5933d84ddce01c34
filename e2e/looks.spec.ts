import type { Page } from '@playwright/test';
import { expectAccessible, expectReadable } from './accessible';
import { expect, layOut, leaveWindows, openShop, pasteTable, test } from './shop';
import { openBlank } from './states';

const dialog = (page: Page) => page.getByRole('dialog');

/** Goes to a room and waits until it is there. */
async function room(page: Page, address: string, heading: string): Promise<void> {
  await page.goto(`./#/${address}`);
  await expect(page.getByRole('heading', { name: heading, exact: true, level: 1 })).toBeAttached();
}

const orders = (page: Page) => room(page, 'orders', 'Orders');

async function firstCopy(page: Page): Promise<void> {
  await page.getByText('Copies as a table').click();
  await page.locator('.copy-table tbody button').first().click();
}

/** Opens a window by its button. */
async function press(page: Page, name: string | RegExp): Promise<void> {
  await page.getByRole('button', { name }).first().click();
  await expect(dialog(page)).toBeVisible();
}

async function orderDetails(page: Page): Promise<void> {
  await orders(page);
  await press(page, 'Details');
}

async function whatWillPrint(page: Page): Promise<void> {
  await orders(page);
  await page.locator('.grade-button').first().click();
  await expect(dialog(page).locator('canvas')).toBeVisible();
}

async function cutMap(page: Page): Promise<void> {
  await room(page, 'cut-map', 'Cut map');
  await expect(page.locator('.sheet').first()).toBeVisible();
}

/** A place on a walk: the way to it, and the looks in which its colours are looked through. */
interface Place {
  readonly where: string;
  readonly open: (page: Page) => Promise<void>;
  readonly looks?: Parameters<typeof expectReadable>[2];
}

/** Rooms and windows of the demo day, in walks that load the page once. */
const walks: Readonly<Record<string, readonly Place[]>> = {
  'the film and its windows': [
    {
      where: 'the page of keys',
      async open(page) {
        await page.keyboard.press('?');
        await expect(dialog(page)).toBeVisible();
      },
    },
    { where: 'the copies of a run', open: (page) => press(page, 'Choose copies') },
    { where: 'what is kept', open: (page) => press(page, 'Kept on this device') },
    { where: 'film and price', open: (page) => press(page, 'Film and price') },
    {
      where: 'film and price, with a field to mend',
      async open(page) {
        await press(page, 'Film and price');
        await page.getByRole('textbox', { name: 'Width' }).fill('wide');
        await page.getByRole('button', { name: 'Save' }).click();
      },
      looks: ['light', 'dark', 'forced'],
    },
    { where: 'the film with a copy selected', open: firstCopy, looks: ['light', 'dark', 'forced'] },
  ],
  'the orders and their windows': [
    { where: 'the orders', open: orders, looks: ['light', 'dark'] },
    { where: 'an order', open: orderDetails },
    {
      where: 'garments and placements',
      async open(page) {
        await orderDetails(page);
        await page.getByRole('button', { name: 'Garments and placements' }).click();
        await page.getByRole('button', { name: 'Add a line' }).click();
        await page.getByRole('button', { name: 'Add a placement' }).click();
      },
    },
    { where: 'what will print', open: whatWillPrint, looks: ['light', 'dark', 'forced'] },
    {
      where: 'more of a transfer',
      async open(page) {
        await orders(page);
        await press(page, /^More about/);
      },
    },
    {
      where: 'a table pasted with a row to mend',
      async open(page) {
        await orders(page);
        await page.getByRole('button', { name: 'Paste a table' }).click();
        await page
          .getByRole('textbox', { name: 'Table' })
          .fill('Club,crest,abc,80,4,,no\nClub,tag,50,50,4,,no');
        await expect(page.getByText('1 row to mend')).toBeVisible();
      },
    },
  ],
  'the rooms Stock and Log and their windows': [
    {
      where: 'stock',
      async open(page) {
        await room(page, 'stock', 'Stock');
        await expect(page.getByText('To order: Hot-melt powder, medium.')).toBeVisible();
      },
      looks: ['light', 'dark'],
    },
    {
      where: 'powder',
      async open(page) {
        await press(page, 'Open Hot-melt powder, medium');
        await page.getByText('Lots, dates and when to order').click();
      },
    },
    { where: 'what is added to stock', open: (page) => press(page, 'Add to stock') },
    {
      where: 'log',
      async open(page) {
        await room(page, 'log', 'Log');
        await expect(page.locator('.plot canvas')).toHaveCount(4);
        for (const summary of await page.getByText('As a table').all()) await summary.click();
      },
      looks: ['light', 'dark'],
    },
    { where: 'the log as CSV', open: (page) => press(page, 'Save as CSV') },
  ],
  'the cut map and the test strip': [
    { where: 'the cut map', open: cutMap, looks: ['light', 'dark'] },
    {
      where: 'the test strip',
      async open(page) {
        await cutMap(page);
        await press(page, 'Test strip');
      },
    },
  ],
};

// One worker alone opens the demo day for them all, and the others go on meanwhile.
test.describe.configure({ mode: 'default' });

for (const [walk, places] of Object.entries(walks)) {
  test(`WCAG 2.2 AA is met by ${walk}, their text readable in every look`, async ({ demo }) => {
    for (const { where, open, looks } of places)
      await test.step(where, async () => {
        await leaveWindows(demo);
        await open(demo);
        await expectAccessible(demo, where);
        if (looks) await expectReadable(demo, where, looks);
      });
  });
}

test('text is readable, light and dark, in the rooms Cut and Press', async ({ demo }) => {
  for (const name of ['Cut', 'Press'])
    await test.step(name, async () => {
      await room(demo, name.toLowerCase(), name);
      await expectReadable(demo, name, ['light', 'dark']);
    });
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
  await expectAccessible(page, 'film');
  await expectReadable(page, 'film', ['light', 'dark']);
  await orders(page);
  await expectAccessible(page, 'orders');
  await expectReadable(page, 'orders', ['light', 'dark']);
});

test('the page lets in no script, style or address from elsewhere', async ({ page }) => {
  const answer = await page.goto('./');
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  for (const rules of [policy, answer?.headers()['content-security-policy']]) {
    expect(rules).toContain("default-src 'self'");
    expect(rules).not.toMatch(/unsafe|data:|connect-src [^;]*blob:/);
  }
  expect(answer?.headers()).toMatchObject({
    'content-security-policy': expect.stringContaining("frame-ancestors 'none'"),
    'referrer-policy': 'no-referrer',
    'x-content-type-options': 'nosniff',
  });
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

test('no markup and no code from elsewhere is taken in by the page itself', async ({ context }) => {
  // A page of its own: what the browser says of each refusal is no fault.
  const page = await context.newPage();
  await page.goto('./');
  const refused = await page.evaluate(() => {
    const attempts: readonly (() => unknown)[] = [
      () => {
        document.body.innerHTML = '<img src=x onerror=alert(1)>';
      },
      () => new Worker('https://elsewhere.example/worker.js'),
      () => new Worker('data:text/javascript,0'),
      () => document.createRange().createContextualFragment('<b>x</b>'),
    ];
    return attempts.map((attempt) => {
      try {
        attempt();
        return null;
      } catch (error) {
        return error instanceof Error ? error.name : String(error);
      }
    });
  });
  expect(refused).toEqual(['TypeError', 'TypeError', 'TypeError', 'TypeError']);
});

test('framed by another page, the app opens no book', async ({ page }) => {
  // A page of the same address is the only one that the header of the host does not keep out by itself.
  await page.route('./', async (route) => {
    const answer = await route.fetch();
    const { 'content-security-policy': _, ...headers } = answer.headers();
    await route.fulfill({ response: answer, headers });
  });
  await openBlank(page);
  await page.setContent('<iframe src="../"></iframe>');
  const framed = page.frameLocator('iframe');
  await expect(framed.getByText('Rollwright does not open inside another page.')).toBeVisible();
  expect(await page.evaluate(() => indexedDB.databases())).toEqual([]);
});
