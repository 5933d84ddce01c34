import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { closeBook, openSource, retrySaving, snapshotsNow } from '../../../app/store/boot';
import { bringBack, findSnapshot } from '../../../app/store/bring-back';
import { act, useShop } from '../../../app/store/shop';
import { wordsNow } from '../../../app/words';
import { en } from '../../../app/words/en';
import { edits } from '../../../src/editing';
import { MODEL_VERSION, readKept, recordsOf, type StoredRecords } from '../../../src/model';
import { fromMm, ok } from '../../../src/units';
import { smallBook } from '../../editing/book';
import { type Failure, failAt, failures } from '../../storage/fail-at';

vi.mock('../../../app/store/at-rest', () => ({ atRest: async () => undefined }));
vi.mock('../../../app/store/checks', () => ({ followChecks: () => () => undefined }));
vi.mock('../../../app/store/demo', () => ({ drawDemo: async () => undefined }));
vi.mock('../../../app/store/page-life', () => ({ followPage: () => () => undefined }));
vi.mock('../../../app/store/planning', () => ({ layOut: vi.fn(), stopPlanning: () => undefined }));
vi.mock('../../../src/artwork/browser', () => ({
  openArtwork: async (file: File) => ok({ id: file.name, file, fileName: file.name, thumbnail: new Blob() }),
}));

const shop = () => useShop.getState();
const opened = () => vi.waitFor(() => expect(shop().phase.kind).toBe('open'), { timeout: 5000, interval: 1 });
const settled = () =>
  vi.waitFor(() => expect(shop().saving.kind).not.toBe('saving'), { timeout: 5000, interval: 1 });

type Raw = ReadonlyMap<string, unknown>;

/** All that lies in a database, read past the app. */
const stored = (database: string) =>
  new Promise<Map<string, unknown>>((resolve, reject) => {
    const request = indexedDB.open(database, 1);
    request.onupgradeneeded = () => request.result.createObjectStore('records');
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      const store = request.result.transaction('records').objectStore('records');
      const [keys, values] = [store.getAllKeys(), store.getAll()];
      store.transaction.oncomplete = () => {
        request.result.close();
        const all = keys.result.map((key, at): [string, unknown] => [String(key), values.result[at]]);
        resolve(new Map(all.filter(([key]) => key !== 'meta/epoch')));
      };
    };
  });

const put = (database: string, entries: StoredRecords) =>
  new Promise<void>((resolve) => {
    const request = indexedDB.open(database, 1);
    request.onupgradeneeded = () => request.result.createObjectStore('records');
    request.onsuccess = () => {
      const store = request.result.transaction('records', 'readwrite').objectStore('records');
      for (const [key, value] of entries) store.put(value, key);
      store.transaction.oncomplete = () => {
        request.result.close();
        resolve();
      };
    };
  });

/** The open book as it is to lie in storage. */
const asStored = (): Raw =>
  new Map<string, unknown>([...recordsOf(shop().book), ['meta/version', MODEL_VERSION]]);
/** A value with its fields in order, so that two of one content are one text. */
const ordered = (_: string, value: unknown): unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
    : value;
const told = (raw: Raw) => JSON.stringify(Object.fromEntries(raw), ordered);
/** Whether what lies in storage is a book with nothing missing. */
async function isWhole(raw: Raw): Promise<boolean> {
  const records = new Map([...raw].filter(([key]) => key !== 'meta/version'));
  const kept = await readKept(records, raw.get('meta/version'));
  return kept.ok && kept.value.setAside.length === 0;
}

const row = (line: number) => ({
  line,
  order: `Order ${line % 2}`,
  number: '',
  repeats: null,
  replaces: null,
  contact: '',
  notes: '',
  doubts: [],
  transfer: `t${line}`,
  width: fromMm(80),
  height: fromMm(80),
  typed: { width: '80 mm', height: '80 mm' },
  count: 2,
  due: null,
  turn: 'quarter' as const,
  fabric: null,
});

const image = 'a'.repeat(64);
const shipped: { version: number; records: Record<string, unknown> } = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../model/books/version-12.json'), 'utf8'),
);

async function begin(): Promise<void> {
  await openSource('shop');
  await opened();
  act(edits.addOrder({ name: 'Mill Bakers', due: null }));
  await settled();
}

/** What is done while a call fails, on a shop that is opened before; and what tells the user, if it did not come to its end. */
const acts: Readonly<Record<string, { before(): Promise<void>; act(): Promise<string | null> }>> = {
  'an edit': {
    before: begin,
    async act() {
      act(edits.addOrder({ name: 'Harbour Club', due: null }));
      await settled();
      return null;
    },
  },
  'a table': {
    before: begin,
    async act() {
      act(edits.addRows([1, 2, 3, 4].map(row)));
      await settled();
      return null;
    },
  },
  'a snapshot brought back, with images': {
    async before() {
      await begin();
      await snapshotsNow()?.take(smallBook().book, 'hour', '2026-11-25T08:00:00.000Z');
    },
    async act() {
      const found = await findSnapshot('2026-11-25T08:00:00.000Z');
      const whole = found.ok && { ...found.value, images: [[image, new Blob(['an image'])] as const] };
      const brought = whole ? await bringBack(whole) : found;
      await settled();
      return brought.ok ? null : en.keep.snapshotProblems['not-kept']('then');
    },
  },
  'orders brought back': {
    async before() {
      await begin();
      await snapshotsNow()?.take(smallBook().book, 'hour', '2026-11-25T08:00:00.000Z');
    },
    async act() {
      const found = await findSnapshot('2026-11-25T08:00:00.000Z');
      if (!found.ok) return en.keep.snapshotProblems[found.problem]('then');
      act(edits.bringOrders(found.value.book, Object.keys(found.value.book.order)));
      await settled();
      return null;
    },
  },
  'a snapshot': {
    before: begin,
    async act() {
      // One of the hour is taken beside the work: that it failed is no matter of the shop's, the next one is due at once.
      await snapshotsNow()
        ?.take(shop().book, 'hour', '2026-11-25T09:00:00.000Z')
        .catch(() => undefined);
      return null;
    },
  },
  'the opening of a book of an older version': {
    before: () =>
      put('rollwright', new Map([...Object.entries(shipped.records), ['meta/version', shipped.version]])),
    async act() {
      await openSource('shop');
      await opened();
      await settled();
      return null;
    },
  },
};

/** Does an act while a call fails. @returns whether a call failed; there may be fewer */
async function held(name: string, call: number, failure: Failure): Promise<boolean> {
  const { before, act: perform } = acts[name] ?? expect.fail(name);
  vi.stubGlobal('indexedDB', new IDBFactory());
  await closeBook();
  await before();
  const old = told(await stored('rollwright'));
  const failing = failAt(call, failure);
  let said: string | null = null;
  try {
    said = await perform();
  } finally {
    failing.stop();
  }
  const what = `call ${call} ${failure}`;
  const after = await stored('rollwright');
  expect(await isWhole(after), what).toBe(true);
  const [isOld, isNew] = [told(after) === old, told(after) === told(asStored())];
  expect(isOld || isNew, `${what}: the book is neither the old nor the new one`).toBe(true);
  const { saving, inMemory } = shop();
  const problem = saving.kind === 'failed' ? wordsNow().storage[saving.problem.code] : null;
  // What is shown and not stored is said to be so.
  if (!isNew && shop().phase.kind === 'open') expect(problem ?? inMemory, what).not.toBeNull();
  if (said !== null) expect(said.length).toBeGreaterThan(20);
  // Every snapshot that is there can be read, and every image that the book names is whole.
  await closeBook();
  for (const [key, value] of await stored('rollwright-snapshots'))
    if (key.startsWith('head/')) expect(value, what).toMatchObject({ at: key.slice(5) });
  // Once storage answers, all of it is kept.
  await openSource('shop');
  await opened();
  retrySaving();
  await vi.waitFor(() => expect(shop().saving.kind, what).toBe('saved'), { timeout: 5000, interval: 1 });
  expect(told(await stored('rollwright')) === told(asStored()), `${what}: not kept in the end`).toBe(true);
  return failing.hasFailed();
}

beforeEach(() => {
  const items = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => items.get(key) ?? null,
    setItem: (key: string, value: string) => void items.set(key, value),
  });
  vi.stubGlobal('navigator', { language: 'en-US', languages: ['en-US'] });
});
afterAll(async () => {
  await closeBook();
  vi.unstubAllGlobals();
});

describe.each(failures)('a call of the storage that %s', (failure) => {
  it.each(Object.keys(acts))(
    'during %s leaves the old book or the new one, whole, and is said',
    async (name) => {
      let call = 1;
      while (await held(name, call, failure)) call += 1;
      expect(call).toBeGreaterThan(2);
    },
  );
});
