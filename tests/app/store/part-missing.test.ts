import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, expect, it, vi } from 'vitest';
import { openSource } from '../../../app/store/boot';
import { act, useShop } from '../../../app/store/shop';
import { edits } from '../../../src/editing';
import { databases } from '../../../src/storage';
import { entriesWithPrefix, openStore, writeBatch } from '../../../src/storage/database';

vi.mock('../../../app/store/at-rest', () => ({ atRest: async () => undefined }));
vi.mock('../../../app/store/checks', () => ({ followChecks: () => () => undefined }));
vi.mock('../../../app/store/page-life', () => ({ followPage: () => () => undefined }));
vi.mock('../../../app/store/planning', () => ({ layOut: vi.fn(), stopPlanning: () => undefined }));
vi.mock('../../../src/model/migrations/every-migration', () => {
  throw new TypeError('could not be fetched');
});

afterEach(() => vi.unstubAllGlobals());

it('an older book stays as it lies where what brings it up cannot be fetched, and nothing can be entered', async () => {
  vi.stubGlobal('navigator', { language: 'en-US', languages: ['en-US'] });
  const { version, records } = JSON.parse(
    readFileSync(join(import.meta.dirname, '../../model/books/version-12.json'), 'utf8'),
  );
  const names = Object.values(databases.shop);
  const stored = () => Promise.all(names.map((name) => entriesWithPrefix(openStore(name), '')));
  await writeBatch(
    openStore(databases.shop.book),
    [...Object.entries(records), ['meta/version', version]],
    [],
  );
  const before = await stored();
  await openSource('shop');
  await vi.waitFor(() => expect(useShop.getState().phase).toEqual({ kind: 'part-missing' }), {
    timeout: 5000,
  });
  expect(act(edits.addOrder({ name: 'Mill Bakers', due: null }))).toBeNull();
  expect(useShop.getState()).toMatchObject({ inMemory: null, isGone: false, follows: false });
  expect(await stored()).toEqual(before);
  // The demo day is of this version, and opens all the same.
  await openSource('demo');
  await vi.waitFor(() => expect(useShop.getState().phase).toEqual({ kind: 'open' }), { timeout: 5000 });
});
