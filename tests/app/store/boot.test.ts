import 'fake-indexeddb/auto';
import { createStore, get, set } from 'idb-keyval';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { openSource, start } from '../../../app/store/boot';
import { layOut } from '../../../app/store/planning';
import { act, useShop } from '../../../app/store/shop';
import { edits } from '../../../src/editing';
import { settingsOf } from '../../../src/model';
import { lastOpened } from '../../../src/storage';

vi.mock('../../../app/store/at-rest', () => ({ atRest: async () => undefined }));
vi.mock('../../../app/store/checks', () => ({ followChecks: () => () => undefined }));
vi.mock('../../../app/store/demo', () => ({ drawDemo: async () => undefined }));
vi.mock('../../../app/store/page-life', () => ({ followPage: () => () => undefined }));
vi.mock('../../../app/store/planning', () => ({ layOut: vi.fn(), stopPlanning: () => undefined }));

const bookNow = () => useShop.getState().book;
const opened = () => vi.waitFor(() => expect(useShop.getState().phase).toEqual({ kind: 'open' }));
const kept = () => vi.waitFor(() => expect(useShop.getState().saving.kind).toBe('saved'));
const names = () => Object.values(bookNow().order).map(({ name }) => name);

beforeAll(() => {
  // Without locks each tab writes.
  vi.stubGlobal('navigator', { language: 'en-US', languages: ['en-US'] });
});
afterAll(() => vi.unstubAllGlobals());

describe('a first visit', () => {
  it('opens the demo day, as its region measures and pays, no copy without a place', async () => {
    await start();
    await opened();
    expect(useShop.getState().source).toBe('demo');
    expect(settingsOf(bookNow())).toMatchObject({ unit: 'in', currency: 'USD', paper: 'letter' });
    const copies = Object.values(bookNow().copy);
    expect(copies.length).toBeGreaterThan(90);
    expect(copies.filter(({ place }) => place === null)).toEqual([]);
    await vi.waitFor(() => expect(layOut).toHaveBeenCalledWith('pinned'));
    await kept();
  });
});

describe('the shop’s own book', () => {
  it('begins with a roll and a run and nothing else, and is the one that opens from then on', async () => {
    await openSource('shop');
    await opened();
    const { order, film, run } = bookNow();
    expect([order, film, run].map((records) => Object.keys(records).length)).toEqual([0, 1, 1]);
    expect(await lastOpened()).toBe('shop');
  });

  it('comes back as it was left, apart from the demo day', async () => {
    act(edits.addOrder({ name: 'Mill Bakers', due: null }));
    await openSource('demo');
    await opened();
    expect(names()).not.toContain('Mill Bakers');
    await openSource('shop');
    await opened();
    expect(names()).toEqual(['Mill Bakers']);
  });

  it('of a newer version is not opened, and stays as it is', async () => {
    await kept();
    const stored = createStore('rollwright', 'records');
    await openSource('demo');
    await opened();
    await set('meta/version', 9999, stored);
    await openSource('shop');
    await vi.waitFor(() => expect(useShop.getState().phase).toEqual({ kind: 'newer' }));
    expect(names()).toEqual([]);
    expect(act(edits.addOrder({ name: 'Lost', due: null }))).toBeNull();
    expect(await get('meta/version', stored)).toBe(9999);
  });
});
