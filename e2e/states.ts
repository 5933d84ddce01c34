import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { deserialize, serialize } from 'node:v8';
import { type Page, test } from '@playwright/test';

/** What the browser keeps when a test begins; made once a run of all tests, by driving the built app. */
export interface State {
  readonly name: string;
  /** Brings a page whose storage is empty to this state, and waits until all of it is kept. */
  readonly make: (page: Page) => Promise<void>;
}

interface StoredDatabase {
  readonly name: string;
  readonly version: number;
  readonly stores: readonly {
    readonly name: string;
    readonly entries: readonly (readonly [string, unknown])[];
  }[];
}

/** Its empty icon keeps the browser from asking for one. */
const BLANK = '<!doctype html><link rel="icon" href="data:,">';

/** An empty page of the app's address, from which its databases are read and written with no app at work. */
async function openBlank(page: Page): Promise<void> {
  const address = /\/blank$/;
  await page.route(address, (route) => route.fulfill({ contentType: 'text/html', body: BLANK }));
  await page.goto('./blank');
  // A page whose requests are looked at keeps nothing in its cache.
  await page.unroute(address);
}

/** Every database of the address; files, which do not come over from a page, as base 64. */
const readDatabases = (page: Page): Promise<StoredDatabase[]> =>
  page.evaluate(async () => {
    const asked = <Value>(request: IDBRequest<Value>) =>
      new Promise<Value>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const packed = async (value: unknown) => {
      if (!(value instanceof Blob)) return value;
      const bytes = new Uint8Array(await value.arrayBuffer());
      const letters = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
      return { blob: btoa(letters), type: value.type, file: value instanceof File ? value.name : null };
    };
    const found: StoredDatabase[] = [];
    for (const { name, version } of await indexedDB.databases()) {
      if (name === undefined || version === undefined) continue;
      const database = await asked(indexedDB.open(name));
      const stores: StoredDatabase['stores'][number][] = [];
      for (const storeName of database.objectStoreNames) {
        const store = database.transaction(storeName).objectStore(storeName);
        const [keys, values] = await Promise.all([asked(store.getAllKeys()), asked(store.getAll())]);
        const entries: [string, unknown][] = [];
        for (const [at, key] of keys.entries()) entries.push([String(key), await packed(values[at])]);
        stores.push({ name: storeName, entries });
      }
      database.close();
      found.push({ name, version, stores });
    }
    return found;
  });

const writeDatabases = (page: Page, databases: readonly StoredDatabase[]): Promise<void> =>
  page.evaluate(async (all) => {
    const isPacked = (value: unknown): value is { blob: string; type: string; file: string | null } =>
      typeof value === 'object' && value !== null && 'blob' in value;
    const unpacked = (value: unknown) => {
      if (!isPacked(value)) return value;
      const { blob, type, file } = value;
      const bytes = Uint8Array.from(atob(blob), (letter) => letter.charCodeAt(0));
      return file === null ? new Blob([bytes], { type }) : new File([bytes], file, { type });
    };
    for (const { name, version, stores } of all) {
      await new Promise<void>((resolve, reject) => {
        const request = indexedDB.open(name, version);
        request.onerror = () => reject(request.error);
        request.onupgradeneeded = () => {
          for (const { name: store } of stores) request.result.createObjectStore(store);
        };
        request.onsuccess = () => {
          const database = request.result;
          const transaction = database.transaction(
            stores.map((store) => store.name),
            'readwrite',
          );
          for (const { name: storeName, entries } of stores) {
            const store = transaction.objectStore(storeName);
            for (const [key, value] of entries) store.put(unpacked(value), key);
          }
          transaction.onabort = () => reject(transaction.error);
          transaction.oncomplete = () => {
            database.close();
            resolve();
          };
        };
      });
    }
  }, databases);

/** Drives the app to a state in a browser context of its own, on a desktop in English whatever device a test is about. */
async function made(page: Page, { make }: State): Promise<StoredDatabase[]> {
  const desktop = {
    viewport: { width: 1440, height: 900 },
    isMobile: false,
    hasTouch: false,
    locale: 'en-GB',
    serviceWorkers: 'block',
  } as const;
  const context = await page.context().browser()?.newContext(desktop);
  if (!context) throw new Error('no browser to make a state in');
  try {
    const own = await context.newPage();
    await make(own);
    await openBlank(own);
    return await readDatabases(own);
  } finally {
    await context.close();
  }
}

/** Whether this worker is the one that makes a state; the other waits until it is there. */
function claimed(claim: string): boolean {
  try {
    writeFileSync(claim, '', { flag: 'wx' });
    return true;
  } catch {
    return false;
  }
}

/** How long a state may take to be made, which the test that needs it first is given beside its own time, in milliseconds. */
const MAKING = 60_000;

/** The databases of a state: made by whichever worker needs them first, in a folder that is emptied before each run. */
async function databasesOf(page: Page, state: State): Promise<StoredDatabase[]> {
  const { outputDir } = test.info().project;
  const file = `${outputDir}/states/${state.name}`;
  const claim = `${file}.claim`;
  mkdirSync(dirname(file), { recursive: true });
  if (!existsSync(file)) test.setTimeout(test.info().timeout + MAKING);
  while (!existsSync(file)) {
    if (claimed(claim)) {
      try {
        writeFileSync(`${file}.part`, serialize(await made(page, state)));
        renameSync(`${file}.part`, file);
      } finally {
        rmSync(claim);
      }
    } else await page.waitForTimeout(100);
  }
  return deserialize(readFileSync(file));
}

/** Puts a state into the page's empty storage, as if all that led to it had been done here, and opens the app. */
export async function beginFrom(page: Page, state: State): Promise<void> {
  const databases = await databasesOf(page, state);
  await openBlank(page);
  await writeDatabases(page, databases);
  await page.goto('./');
}
