/**
 * A store lives as long as its module. Files of one process read what every one of them imports once, and each begins with modules and
 * a storage of its own; nothing is left of what the file before put in place of globals and of time.
 */
import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterAll, vi } from 'vitest';

vi.resetModules();
globalThis.indexedDB = new IDBFactory();

afterAll(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});
