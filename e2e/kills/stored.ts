import type { BrowserContext, Page } from '@playwright/test';
import { ASIDE } from '../addresses';
import { readRecords } from '../records';

/** All that a browser keeps of the app's address, from which another can begin. */
export type Kept = Awaited<ReturnType<BrowserContext['storageState']>>;

/** Every record of the shop's book by its key, as it lies in the database. */
export type Raw = Readonly<Record<string, unknown>>;

/** Reads the book from the database with no app at work: what the app thinks of it has no say. */
export async function readRaw(page: Page): Promise<Raw> {
  await page.goto(ASIDE);
  return readRecords(page);
}

/** Puts records into the empty storage of the app's address as the shop's book. */
export async function writeRaw(page: Page, records: Raw): Promise<void> {
  await page.goto(ASIDE);
  await page.evaluate(
    (all) =>
      new Promise<void>((resolve, reject) => {
        localStorage.setItem('rollwright-opened', 'shop');
        const opened = indexedDB.open('rollwright', 1);
        opened.onupgradeneeded = () => opened.result.createObjectStore('records');
        opened.onerror = () => reject(opened.error);
        opened.onsuccess = () => {
          const store = opened.result.transaction('records', 'readwrite').objectStore('records');
          for (const [key, value] of Object.entries(all)) store.put(value, key);
          store.transaction.oncomplete = () => {
            opened.result.close();
            resolve();
          };
        };
      }),
    records,
  );
}

/** What is stored for the address of a page, the app being closed. */
export async function keptOf(page: Page): Promise<Kept> {
  await page.goto(ASIDE);
  return page.context().storageState({ indexedDB: true });
}

type Fields = Readonly<Record<string, unknown>>;

/** The records of a collection, whatever they hold. */
export const recordsOf = (raw: Raw, collection: string): Fields[] =>
  Object.entries(raw).flatMap(([key, value]) => (key.startsWith(`${collection}/`) ? [Object(value)] : []));

/** The names of all orders, in their order. */
export const orderNames = (raw: Raw): string[] =>
  recordsOf(raw, 'order')
    .map(({ name }) => String(name))
    .sort();

/** What is not whole in a book, worked out from its records alone: each has what it cannot be without. */
export function broken(raw: Raw): string[] {
  const lacks = (collection: string, field: string, other: string) =>
    recordsOf(raw, collection)
      .filter(({ [field]: id }) => id !== null && !(`${other}/${id}` in raw))
      .map(({ id }) => `${collection} ${id} without ${other}`);
  const wrong = [
    ...lacks('transfer', 'order', 'order'),
    ...lacks('copy', 'transfer', 'transfer'),
    ...lacks('copy', 'run', 'run'),
    ...lacks('run', 'film', 'film'),
  ];
  // A transfer of these tests says how many copies it has: `x3`.
  for (const { id, name } of recordsOf(raw, 'transfer')) {
    const told = /^x(\d+)$/.exec(String(name))?.[1];
    const copies = recordsOf(raw, 'copy').filter(({ transfer }) => transfer === id).length;
    if (told !== undefined && copies !== Number(told)) wrong.push(`transfer ${name} with ${copies} copies`);
  }
  if (!('settings/shop' in raw) || typeof raw['meta/version'] !== 'number')
    wrong.push('no settings or version');
  return wrong;
}
