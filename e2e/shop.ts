import { test as base, type ConsoleMessage, expect, type Locator, type Page } from '@playwright/test';
import { ADDRESS } from './addresses';
import { typeAsKeysDo } from './firefox/typing';
import { beginFrom, desktop, type State, tellCores } from './states';
import { stopSearch } from './stop-search';

/** Fails on an error in the console of a page: a refused style, a broken promise, a lost file. */
async function quiet(page: Page, use: () => Promise<void>): Promise<void> {
  const errors: string[] = [];
  const onError = (error: Error) => errors.push(error.message);
  const onMessage = (message: ConsoleMessage) => {
    if (message.type() === 'error') errors.push(message.text());
  };
  page.on('pageerror', onError).on('console', onMessage);
  await use();
  page.off('pageerror', onError).off('console', onMessage);
  expect(errors).toEqual([]);
}

interface Own {
  /** How many cores the page is told of: with one alone it looks for no layouts in the background, which would take half of each test. */
  readonly cores: number;
  /** Whether the page tells no error: not where a file is gone, which the browser tells by itself. */
  readonly isQuiet: boolean;
  readonly quietConsole: undefined;
  /** The demo day, for tests that only look at it: opened once for all of them, and loaded anew for each. */
  readonly demo: Page;
}

/** Every test fails on an error in the console of its page, but where errors are its subject. */
export const test = base.extend<Own, { readonly sharedDemo: Page }>({
  cores: [1, { option: true }],
  async context({ context, cores }, use) {
    await typeAsKeysDo(context);
    await tellCores(context, cores);
    await use(context);
    // The next test gets the same context: a network that is off would stay so.
    await context.setOffline(false);
  },
  isQuiet: [true, { option: true }],
  quietConsole: [
    ({ page, isQuiet }, use) => (isQuiet ? quiet(page, () => use(undefined)) : use(undefined)),
    { auto: true },
  ],
  sharedDemo: [
    async ({ browser }, use) => {
      const context = await browser.newContext({ ...desktop, timezoneId: 'UTC', baseURL: ADDRESS });
      await tellCores(context, 1);
      const page = await context.newPage();
      await beginDemo(page);
      await use(page);
      await context.close();
    },
    { scope: 'worker', timeout: 120_000 },
  ],
  async demo({ sharedDemo }, use) {
    await quiet(sharedDemo, async () => {
      await sharedDemo.goto('./');
      await expect(sentence(sharedDemo)).toBeVisible();
      await use(sharedDemo);
    });
  },
});

export { expect };

/** A day of our own: three orders, five transfers, 24 copies, one row to mend. */
export const TABLE = [
  'order,transfer,width,height,count,due,may turn',
  'Harbour Row Club,back,11 in,9 in,4,2026-12-01,yes',
  'Harbour Row Club,left chest,"3 1/2""",89 mm,8,2026-12-01,yes',
  'Fig Tree Cafe,front,"20,5 cm",24 cm,3,2026-11-30,no',
  'Fig Tree Cafe,sleeve,abc,3 in,3,2026-11-30,yes',
  'Lantern Fair,front,210 mm,105 mm,6,2026-12-04,yes',
  'Lantern Fair,tag,55,30,3,2026-12-04,yes',
].join('\n');

/** Begins a shop as its first visit does, past the demo day: its records have ids of their own. */
export async function startShop(page: Page): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'Start with my own orders' }).click();
  await expect(page.getByText('The film is empty')).toBeVisible();
  await kept(page);
}

const emptyShop: State = { name: 'empty shop', make: startShop };

/** Opens the shop's own, empty book. */
export async function openShop(page: Page): Promise<void> {
  await beginFrom(page, emptyShop);
  await expect(page.getByText('The film is empty')).toBeVisible();
}

/** How many records of a kind a database of the page holds. */
const countOf = (page: Page, database: string, prefix: string): Promise<number> =>
  page.evaluate(
    ([name, start]) =>
      new Promise<number>((resolve, reject) => {
        const opened = indexedDB.open(name);
        opened.onerror = () => reject(opened.error);
        opened.onsuccess = () => {
          const range = IDBKeyRange.bound(start, `${start}\uffff`);
          const counted = opened.result.transaction('records').objectStore('records').count(range);
          counted.onerror = () => reject(counted.error);
          counted.onsuccess = () => {
            opened.result.close();
            resolve(counted.result);
          };
        };
      }),
    [database, prefix] as const,
  );

const demoDay: State = {
  name: 'demo day',
  async make(page) {
    await page.goto('./');
    await expect(sentence(page)).toBeVisible();
    await stop(page);
    await kept(page);
    const transfers = await countOf(page, 'rollwright-demo', 'transfer/');
    // Every piece of artwork is drawn, and what was found out about it is kept.
    await expect
      .poll(() => countOf(page, 'rollwright-demo-artwork', 'check/'), { timeout: 0 })
      .toBe(transfers);
    await kept(page);
  },
};

/** Opens the demo day, laid out, all of its artwork drawn and checked. */
export async function beginDemo(page: Page): Promise<void> {
  await beginFrom(page, demoDay);
  await expect(sentence(page)).toBeVisible();
}

/** Locks the run that is looked at, all of whose lines that tell no fabric are of cotton. */
export async function lockRun(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Lock for print' }).click();
  const asked = page.getByRole('dialog', { name: 'What is it pressed on?' });
  await expect(asked.or(page.getByRole('button', { name: 'Back to draft' }))).toBeVisible();
  if (await asked.isHidden()) return;
  await asked.getByLabel('For all lines').selectOption('cotton');
  await asked.getByRole('button', { name: 'Lock for print' }).click();
  await expect(asked).toBeHidden();
}

const lockedDay: State = {
  name: 'locked run',
  async make(page) {
    await openShop(page);
    await pasteTable(
      page,
      [
        'order,transfer,width,height,count,due,may turn',
        'Harbour Rowing,Crest left chest,89,89,3,,yes',
        'Harbour Rowing,Row the Bay back,250,102,2,,yes',
        'Corner Oven,Badge,140,140,2,,yes',
      ].join('\n'),
    );
    await layOut(page);
    await lockRun(page);
    await kept(page);
  },
};

/** Opens the shop with a run of seven copies of two orders, locked for print. */
export async function openLockedRun(page: Page): Promise<void> {
  await beginFrom(page, lockedDay);
  await expect(sentence(page)).toBeVisible();
}

/** Pastes a table into the Orders room and adds its good rows. */
export async function pasteTable(page: Page, table: string): Promise<void> {
  await page.getByRole('link', { name: 'Orders' }).click();
  await page.getByRole('button', { name: 'Paste a table' }).click();
  await page.getByRole('textbox', { name: 'Table' }).fill(table);
  await page.getByRole('button', { name: /^Add \d+ transfers?$/ }).click();
}

/** Lays out and waits until no better layout is looked for. */
export async function layOut(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  const before = await filmSurface(page).getAttribute('data-plans');
  await page.getByRole('button', { name: 'Lay out' }).click();
  await expect(filmSurface(page)).not.toHaveAttribute('data-plans', before ?? '');
  await stop(page);
}

/** Ends the search for a better layout, if it still goes on. */
async function stop(page: Page): Promise<void> {
  await stopSearch(page, 'Stop');
  await expect(page.getByRole('button', { name: 'Stop' })).toBeHidden();
}

/** Leaves the windows that are open, also one that is still on its way. */
export async function leaveWindows(page: Page): Promise<void> {
  for (let tries = 0; tries < 100 && (await page.getByRole('dialog').count()) > 0; tries += 1) {
    await page.keyboard.press('Escape');
    await page.waitForTimeout(50);
  }
}

/** Opens a folded group of fields in a window. */
export const unfold = (page: Page, group: string): Promise<void> =>
  page.getByRole('dialog').locator('.field-group:not([open]) > summary', { hasText: group }).click();

export const sentence = (page: Page): Locator => page.getByTestId('sentence');

export const notices = (page: Page): Locator => page.locator('.notices');

export const filmSurface = (page: Page): Locator => page.locator('.film-surface');

/** Waits until everything is on the disk. */
export const kept = (page: Page) => expect(page.getByTestId('kept')).toHaveAttribute('data-saving', 'saved');

/** The figures of the sentence: metres of film and percent of waste. */
export async function figures(page: Page): Promise<{ metres: number; waste: number }> {
  const text = (await sentence(page).textContent()) ?? '';
  const [, metres, waste] = /([\d.]+) m of film, ([\d.]+)% of it waste/.exec(text) ?? [];
  return { metres: Number(metres), waste: Number(waste) };
}

/** A copy as the table twin tells it, in millimetres. */
export interface CopyRow {
  readonly name: string;
  readonly width: number;
  readonly length: number;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
  readonly pinned: boolean;
}

/** Opens the table of copies, if it is not open, and reads it. */
export async function copyRows(page: Page): Promise<CopyRow[]> {
  const table = page.locator('.copy-table');
  if (!(await table.evaluate((element) => (element as HTMLDetailsElement).open))) {
    await page.getByText('Copies as a table').click();
  }
  await expect(table.locator('tbody tr').first()).toBeVisible();
  return table.locator('tbody tr').evaluateAll((rows) =>
    rows.map((row) => {
      const [size = '', x = '', y = '', turned, pinned] = [...row.querySelectorAll('td')].map(
        (cell) => cell.textContent ?? '',
      );
      const [width = 0, length = 0] = size.split('×').map((part) => Number.parseFloat(part.replace(',', '')));
      const number = (text: string) => Number.parseFloat(text.replace(',', ''));
      return {
        name: row.querySelector('th')?.textContent ?? '',
        width,
        length,
        x: number(x),
        y: number(y),
        turned: turned !== '0°',
        pinned: pinned === 'yes',
      };
    }),
  );
}

const FILM_WIDTH = 330;

/** The middle of a copy on the screen, while the whole width of a 330 mm roll is in view from its leading edge. */
export async function onScreen(page: Page, copy: Pick<CopyRow, 'x' | 'y' | 'width' | 'length'>) {
  const surface = filmSurface(page);
  await surface.scrollIntoViewIfNeeded();
  const box = await surface.boundingBox();
  if (!box) throw new Error('the film is not in view');
  const scale = box.height / FILM_WIDTH;
  return {
    x: box.x + (copy.y + copy.length / 2) * scale,
    y: box.y + (FILM_WIDTH - copy.x - copy.width / 2) * scale,
    scale,
  };
}
