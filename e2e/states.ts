import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { type BrowserContext, type Page, test } from '@playwright/test';
import { fileOfState, STATES, STATES_FOLDER } from './addresses';
import { typeAsKeysDo } from './firefox/typing';

/** What the browser keeps when a test begins; made once a run of all tests, by driving the built app. */
export interface State {
  readonly name: string;
  /** Brings a page whose storage is empty to this state, and waits until all of it is kept. */
  readonly make: (page: Page) => Promise<void>;
}

/** A value of a database; a file is told by its name in the form that carries it. */
type StoredValue = { readonly file: string; readonly isNamed: boolean } | { readonly value: unknown };

interface StoredDatabase {
  readonly name: string;
  readonly version: number;
  readonly stores: readonly {
    readonly name: string;
    readonly entries: readonly (readonly [string, StoredValue])[];
  }[];
}

/** An empty page of the app's address, from which its databases are read and written with no app at work. */
export const openBlank = (page: Page) => page.goto(`./${STATES}`);

/** Sends every database of the page's address, as a form with its files, to be kept under a name. */
const readDatabases = (page: Page, name: string): Promise<void> =>
  page.evaluate(async (to) => {
    const asked = <Value>(request: IDBRequest<Value>) =>
      new Promise<Value>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const form = new FormData();
    let files = 0;
    const stored = (value: unknown): StoredValue => {
      if (!(value instanceof Blob)) return { value };
      files += 1;
      form.append(`${files}`, value);
      return { file: `${files}`, isNamed: value instanceof File };
    };
    const found: StoredDatabase[] = [];
    for (const { name, version } of await indexedDB.databases()) {
      if (name === undefined || version === undefined) continue;
      const database = await asked(indexedDB.open(name));
      const stores: StoredDatabase['stores'][number][] = [];
      for (const storeName of database.objectStoreNames) {
        const store = database.transaction(storeName).objectStore(storeName);
        const [keys, values] = await Promise.all([asked(store.getAllKeys()), asked(store.getAll())]);
        const entries = keys.map((key, at) => [String(key), stored(values[at])] as const);
        stores.push({ name: storeName, entries });
      }
      database.close();
      found.push({ name, version, stores });
    }
    form.append('databases', JSON.stringify(found));
    await fetch(encodeURIComponent(to), { method: 'POST', body: form });
  }, name);

/** Puts the databases kept under a name into the page's storage, which is empty. */
const writeDatabases = (page: Page, name: string): Promise<void> =>
  page.evaluate(async (from) => {
    const form = await (await fetch(encodeURIComponent(from))).formData();
    const all: readonly StoredDatabase[] = JSON.parse(String(form.get('databases')));
    const restored = (stored: StoredValue) => {
      if ('value' in stored) return stored.value;
      const file = form.get(stored.file);
      return stored.isNamed || !(file instanceof File) ? file : new Blob([file], { type: file.type });
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
            for (const [key, stored] of entries) store.put(restored(stored), key);
          }
          transaction.onabort = () => reject(transaction.error);
          transaction.oncomplete = () => {
            database.close();
            resolve();
          };
        };
      });
    }
  }, name);

/** A desktop in English, whatever device a test is about. */
export const desktop = {
  viewport: { width: 1440, height: 900 },
  isMobile: false,
  hasTouch: false,
  locale: 'en-GB',
  serviceWorkers: 'block',
} as const;

/** Tells the pages of a context of so many cores. */
export const tellCores = (context: BrowserContext, cores: number): Promise<void> =>
  context
    .addInitScript((told) => {
      Object.defineProperty(Navigator.prototype, 'hardwareConcurrency', { get: () => told });
    }, cores)
    .then(() => undefined);

/** Drives the app to a state in a browser context of its own. */
async function make(page: Page, state: State, name: string): Promise<void> {
  const context = await page.context().browser()?.newContext(desktop);
  if (!context) throw new Error('no browser to make a state in');
  try {
    await typeAsKeysDo(context);
    await tellCores(context, 1);
    const own = await context.newPage();
    await state.make(own);
    await openBlank(own);
    await readDatabases(own, name);
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

/** Waits until a state is there: it is made by whichever worker needs it first. */
async function ready(page: Page, state: State): Promise<void> {
  const file = fileOfState(state.name);
  const claim = `${file}.claim`;
  const part = `${state.name}.part`;
  mkdirSync(STATES_FOLDER, { recursive: true });
  if (!existsSync(file)) test.setTimeout(test.info().timeout + MAKING);
  while (!existsSync(file)) {
    if (claimed(claim)) {
      try {
        await make(page, state, part);
        renameSync(fileOfState(part), file);
      } finally {
        rmSync(claim);
      }
    } else await page.waitForTimeout(100);
  }
}

/** Puts a state into the page's empty storage, as if all that led to it had been done here, and opens the app. */
export async function beginFrom(page: Page, state: State): Promise<void> {
  await ready(page, state);
  await openBlank(page);
  await writeDatabases(page, state.name);
  await page.goto('./');
}
