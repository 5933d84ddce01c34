import { expect, type Page } from '@playwright/test';
import { filmSurface, kept, pasteTable } from '../shop';
import { orderNames, type Raw, recordsOf } from './stored';

/** Work that is broken off: it tells what is said to be saved as it goes on, and the book is held against the last of that. */
export interface Moment {
  /** What is stored when it begins. */
  readonly from: 'shop' | 'older';
  /** Within so many milliseconds of its beginning the page is killed. */
  readonly within: number;
  /** Goes on until it is done or the page is gone. @param said takes what is said to be saved; at first, that it begins */
  act(page: Page, said: (what: string) => void): Promise<void>;
  /** What is wrong in the book. @param said the last that was, @param before the book when it began */
  wrong(raw: Raw, said: string, before: Raw): string[];
}

/** Rows of a table: an order each, of a transfer with three copies that says so. */
export const table = (name: string, rows: number) =>
  Array.from({ length: rows }, (_, row) => `${name} ${row},x3,50,40,3,,no`).join('\n');

/** What a shop holds when a snapshot of it is taken, and what comes to it later. */
export const earlier = { name: 'Club', rows: 2 } as const;
export const later = { name: 'Later', rows: 20 } as const;
const TAKEN_IN = 60;

const open = async (page: Page, room: string) => {
  await page.goto(`./#/${room}`);
  await kept(page);
};

const namesOf = ({ name, rows }: typeof earlier | typeof later): string[] =>
  Array.from({ length: rows }, (_, row) => `${name} ${row}`);

const sameNames = (raw: Raw, wanted: readonly string[]): boolean =>
  [...wanted].sort().join('|') === orderNames(raw).join('|');

/** What of a collection is no longer there. */
const fewer = (raw: Raw, before: Raw, collections: readonly string[]): string[] =>
  collections.flatMap((name) => {
    const [now, then] = [recordsOf(raw, name).length, recordsOf(before, name).length];
    return now < then ? [`${now} of ${then}: ${name}`] : [];
  });

const typing: Moment = {
  from: 'shop',
  within: 1500,
  async act(page, said) {
    await open(page, 'orders');
    said('-1');
    // Sorted by name, the first may be another order after each.
    const field = page.getByRole('textbox', { name: 'Order', exact: true }).first();
    for (let turn = 0; ; turn += 1) {
      await field.fill(`Typed ${turn}`);
      await field.press('Enter');
      await kept(page);
      said(`${turn}`);
    }
  },
  wrong(raw, said, before) {
    const typed = orderNames(raw).flatMap((name) => /^Typed (\d+)$/.exec(name)?.[1] ?? []);
    const isOlder = Math.max(-1, ...typed.map(Number)) < Number(said);
    return [...(isOlder ? [`typed ${said}, stored ${typed}`] : []), ...fewer(raw, before, ['order', 'copy'])];
  },
};

const layingOut: Moment = {
  from: 'shop',
  within: 2500,
  async act(page, said) {
    await open(page, 'film');
    said('waiting');
    for (;;) {
      const plans = await filmSurface(page).getAttribute('data-plans');
      await page.getByRole('button', { name: 'Lay out' }).click();
      await expect(filmSurface(page)).not.toHaveAttribute('data-plans', plans ?? '');
      await kept(page);
      said('placed');
    }
  },
  wrong(raw, said, before) {
    const waiting = recordsOf(raw, 'copy').filter(({ place }) => place === null).length;
    return [
      ...(said === 'placed' && waiting > 0 ? [`${waiting} copies wait`] : []),
      ...fewer(raw, before, ['order', 'transfer', 'copy']),
    ];
  },
};

const bringingBack: Moment = {
  from: 'shop',
  within: 1500,
  async act(page, said) {
    await open(page, 'orders');
    await page.getByRole('button', { name: /^Kept on this device/ }).click();
    const snapshot = page.getByRole('button', { name: /^Bring back/ }).last();
    await expect(snapshot).toBeVisible();
    said('here');
    await snapshot.click();
    await expect(page.getByText('That is how it was.')).toBeVisible();
    await kept(page);
    said('back');
  },
  wrong(raw, said, before) {
    const isBack = sameNames(raw, namesOf(earlier));
    const isWhole = isBack || (said === 'here' && sameNames(raw, orderNames(before)));
    return isWhole ? [] : [`${said}: ${orderNames(raw)}`];
  },
};

const takingIn: Moment = {
  from: 'shop',
  within: 2500,
  async act(page, said) {
    await open(page, 'orders');
    said('0');
    for (let turn = 1; ; turn += 1) {
      await pasteTable(page, table(`Table ${turn}`, TAKEN_IN));
      await kept(page);
      said(`${turn}`);
    }
  },
  wrong(raw, said, before) {
    const rows = new Map<string, number>();
    for (const name of orderNames(raw)) {
      const own = /^Table (\d+) \d+$/.exec(name)?.[1];
      if (own) rows.set(own, (rows.get(own) ?? 0) + 1);
    }
    return [
      ...[...rows].flatMap(([own, count]) => (count < TAKEN_IN ? [`table ${own}: ${count} rows`] : [])),
      ...(rows.size < Number(said) ? [`tables ${said}, stored ${rows.size}`] : []),
      ...fewer(raw, before, ['order', 'copy']),
    ];
  },
};

const bringingUp: Moment = {
  from: 'older',
  within: 1500,
  async act(page, said) {
    await page.goto('./#/orders', { waitUntil: 'commit' });
    said('older');
    await kept(page);
    said('newer');
  },
  wrong(raw, said, before) {
    const isOlder = raw['meta/version'] === before['meta/version'];
    return [
      ...(said === 'newer' && isOlder ? ['of the older version'] : []),
      ...fewer(raw, before, ['order', 'transfer', 'copy', 'run', 'film', 'artwork', 'entry']),
    ];
  },
};

export const moments: Readonly<Record<string, Moment>> = {
  'in typing': typing,
  'in laying out': layingOut,
  'in bringing a snapshot back': bringingBack,
  'in taking in a table': takingIn,
  'in bringing up an older version': bringingUp,
};
