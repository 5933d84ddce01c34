import { readFileSync } from 'node:fs';
import { type BrowserContext, expect, type Page } from '@playwright/test';
import { beginOwnShop } from '../own-shop';
import { kept, pasteTable } from '../shop';
import { earlier, later, type Moment, table } from './moments';
import { broken, type Kept, keptOf, type Raw, readRaw, writeRaw } from './stored';

const OLDER = new URL('../../tests/model/books/version-12.json', import.meta.url);

/** What is stored when a kind of work begins, and the book of it. */
interface Beginning {
  readonly kept: Kept;
  readonly book: Raw;
}

export type Beginnings = Readonly<Record<Moment['from'], Beginning>>;

async function beginning(context: BrowserContext, make: (page: Page) => Promise<void>): Promise<Beginning> {
  const page = await context.newPage();
  await make(page);
  const stored = { book: await readRaw(page), kept: await keptOf(page) };
  await context.close();
  return stored;
}

/** A shop of which a snapshot is taken before more orders come to it. */
async function makeShop(page: Page): Promise<void> {
  await beginOwnShop(page);
  await pasteTable(page, table(earlier.name, earlier.rows));
  await kept(page);
  // Opening takes the snapshot of the hour.
  await page.reload();
  await page.getByRole('button', { name: /^Kept on this device/ }).click();
  await expect(page.getByRole('button', { name: /^Bring back/ })).toBeVisible();
  await page.keyboard.press('Escape');
  await pasteTable(page, table(later.name, later.rows));
  await kept(page);
}

/** Makes what the kinds of work begin with, once for any number of kills. @param newContext gives an empty storage */
export async function makeBeginnings(newContext: () => Promise<BrowserContext>): Promise<Beginnings> {
  const { version, records } = JSON.parse(readFileSync(OLDER, 'utf8'));
  return {
    shop: await beginning(await newContext(), makeShop),
    older: await beginning(await newContext(), (page) =>
      writeRaw(page, { ...records, 'meta/version': version }),
    ),
  };
}

/** The first time that is told of work is that it begins; the second, that something of it is saved. */
const TOLD = { 'its beginning': 1, 'something was saved': 2 } as const;
export type Since = keyof typeof TOLD;
export const sinces = ['its beginning', 'something was saved'] as const satisfies readonly Since[];

/**
 * Begins work in a page of its own, kills the page at some moment, and looks at what is stored.
 * @param from what the moment is counted from: however slow the machine, some kills come after something was saved
 * @param context holds what the work begins with
 * @param random draws from 0 up to 1
 * @returns what is wrong, and what was said to be saved last
 */
export async function killDuring(
  moment: Moment,
  from: Since,
  { shop, older }: Beginnings,
  context: BrowserContext,
  random: () => number,
): Promise<{ wrong: string[]; said: string }> {
  const page = await context.newPage();
  let said = '';
  let told = 0;
  let work: Promise<void> | null = null;
  // A page that is gone ends its work with an error; one whose work never begins must tell it.
  await new Promise<void>((begun, never) => {
    work = moment
      .act(page, (what) => {
        said = what;
        told += 1;
        if (told === TOLD[from]) begun();
      })
      .catch(never);
  });
  await new Promise((resolve) => setTimeout(resolve, random() * moment.within));
  const devtools = await context.newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  const last = said;
  devtools.send('Page.crash').catch(() => undefined);
  await crashed;
  await page.close();
  await work;
  const after = await context.newPage();
  const raw = await readRaw(after);
  await after.close();
  const before = moment.from === 'shop' ? shop.book : older.book;
  return { wrong: [...broken(raw), ...moment.wrong(raw, last, before)], said: last };
}
