import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openSource, retrySaving, snapshotsNow, start, startAnew } from '../../../app/store/boot';
import { act, useShop } from '../../../app/store/shop';
import { edits } from '../../../src/editing';

vi.mock('../../../app/store/at-rest', () => ({ atRest: async () => undefined }));
vi.mock('../../../app/store/checks', () => ({ followChecks: () => () => undefined }));
vi.mock('../../../app/store/demo', () => ({ drawDemo: async () => undefined }));
vi.mock('../../../app/store/page-life', () => ({ followPage: () => () => undefined }));
vi.mock('../../../app/store/planning', () => ({ layOut: vi.fn(), stopPlanning: () => undefined }));

const shop = () => useShop.getState();
const names = () => Object.values(shop().book.order).map(({ name }) => name);
const open = () => vi.waitFor(() => expect(shop().phase).toEqual({ kind: 'open' }), { timeout: 3000 });
const kept = () => vi.waitFor(() => expect(shop().saving.kind).toBe('saved'));
const addOrder = (name: string) => act(edits.addOrder({ name, due: null }));

const persist = vi.fn(async () => true);

/** What the browser remembers outside IndexedDB. */
function memory(): Pick<Storage, 'getItem' | 'setItem'> {
  const items = new Map<string, string>();
  return { getItem: (key) => items.get(key) ?? null, setItem: (key, value) => void items.set(key, value) };
}

const failing = (name: string) => ({
  open: () => {
    throw new DOMException('refused', name);
  },
});
const silent = { open: () => ({}) };

beforeEach(() => {
  useShop.setState({ phase: { kind: 'opening' } });
  persist.mockClear();
  vi.stubGlobal('navigator', { language: 'en-US', languages: ['en-US'], storage: { persist } });
  vi.stubGlobal('localStorage', memory());
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => vi.unstubAllGlobals());

describe('storage that is refused', () => {
  it.each([
    ['is missing', undefined, 'unavailable'],
    ['throws when it is opened, as where it is not allowed', failing('SecurityError'), 'unavailable'],
    ['throws when it is opened, as where it is damaged', failing('UnknownError'), 'unknown'],
    ['never answers', silent, 'blocked'],
  ])('%s: work in memory begins within three seconds', async (_, database, code) => {
    vi.stubGlobal('indexedDB', database);
    const opening = start();
    await open();
    await opening;
    expect(shop()).toMatchObject({ inMemory: { code }, saving: { kind: 'failed' }, source: 'demo' });
    await openSource('shop');
    await open();
    expect(addOrder('Mill Bakers')).not.toBeNull();
    expect(names()).toEqual(['Mill Bakers']);
    // There was nothing to miss: what is in memory alone was never kept.
    expect(persist).not.toHaveBeenCalled();
  });

  it('is opened as soon as it answers, if nothing was entered meanwhile', async () => {
    const real = new IDBFactory();
    let answers = false;
    const waiting: (() => void)[] = [];
    vi.stubGlobal('indexedDB', {
      open(name: string, version?: number) {
        if (answers) return real.open(name, version);
        const late: Record<string, unknown> = {};
        waiting.push(() => {
          const request = real.open(name, version);
          request.onupgradeneeded = () => {
            Object.assign(late, { result: request.result });
            if (typeof late.onupgradeneeded === 'function') late.onupgradeneeded();
          };
          request.onsuccess = () => {
            Object.assign(late, { result: request.result });
            if (typeof late.onsuccess === 'function') late.onsuccess();
          };
        });
        return late;
      },
    });
    await openSource('shop');
    await open();
    expect(shop().inMemory).toEqual({ code: 'blocked' });
    answers = true;
    for (const answer of waiting) answer();
    await vi.waitFor(() => expect(shop().inMemory).toBeNull());
    await kept();
  });

  it('opens the shop’s own book, not the demo day, where there was one', async () => {
    localStorage.setItem('rollwright-own-book', 'begun');
    vi.stubGlobal('indexedDB', silent);
    void start();
    await open();
    expect(shop()).toMatchObject({ source: 'shop', inMemory: { code: 'blocked' } });
  });

  it('needs no channel among tabs to keep what is entered', async () => {
    vi.stubGlobal('BroadcastChannel', undefined);
    await openSource('shop');
    await open();
    addOrder('Mill Bakers');
    await kept();
    await openSource('demo');
    await openSource('shop');
    await open();
    expect(names()).toEqual(['Mill Bakers']);
  });

  it.each([
    ['is empty', []],
    ['holds a book', ['Harbour Club']],
  ])('that answers later and %s takes what was entered meanwhile', async (_, before) => {
    const real = new IDBFactory();
    vi.stubGlobal('indexedDB', real);
    if (before.length > 0) {
      await openSource('shop');
      await open();
      for (const name of before) addOrder(name);
      await kept();
    }
    vi.stubGlobal('indexedDB', failing('UnknownError'));
    await openSource('shop');
    await open();
    addOrder('Mill Bakers');
    vi.stubGlobal('indexedDB', real);
    retrySaving();
    await vi.waitFor(() => expect(shop().inMemory).toBeNull());
    await kept();
    if (before.length === 0) expect(names()).toEqual(['Mill Bakers']);
    else {
      expect(names()).toEqual(before);
      await vi.waitFor(async () =>
        expect(await snapshotsNow()?.list()).toContainEqual(
          expect.objectContaining({ holds: expect.objectContaining({ why: 'before-restoring', orders: 1 }) }),
        ),
      );
    }
  });
});

describe('a book of the shop’s own', () => {
  it('is missed when its storage was cleared, until something is entered or it is begun anew', async () => {
    await openSource('shop');
    await open();
    expect(shop().isGone).toBe(false);
    addOrder('Mill Bakers');
    await kept();
    await openSource('demo');
    for (const begin of [() => startAnew(), () => addOrder('Harbour Club')]) {
      // Cleared, and the choice of what was open last is not remembered either.
      localStorage.setItem('rollwright-opened', '');
      vi.stubGlobal('indexedDB', new IDBFactory());
      for (let times = 0; times < 2; times += 1) {
        await start();
        await open();
        expect(shop()).toMatchObject({ source: 'shop', isGone: true });
        await kept();
      }
      begin();
      expect(shop().isGone).toBe(false);
      await kept();
      await start();
      await open();
      expect(shop().isGone).toBe(false);
    }
  });

  it('is asked to be kept when the first is entered in it, and once', async () => {
    await openSource('demo');
    await open();
    addOrder('Invented');
    await openSource('shop');
    await open();
    await kept();
    expect(persist).not.toHaveBeenCalled();
    addOrder('Mill Bakers');
    addOrder('Harbour Club');
    await kept();
    await openSource('shop');
    await open();
    addOrder('Fig Tree');
    expect(persist).toHaveBeenCalledOnce();
  });
});
