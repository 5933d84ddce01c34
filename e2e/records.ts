import type { Page } from '@playwright/test';

/** Every record of the shop's book by its key, as it lies in the browser's database, read past the app. */
export const readRecords = (page: Page): Promise<Record<string, unknown>> =>
  page.evaluate(
    () =>
      new Promise<Record<string, unknown>>((resolve, reject) => {
        const opened = indexedDB.open('rollwright');
        opened.onerror = () => reject(opened.error);
        opened.onsuccess = () => {
          const store = opened.result.transaction('records').objectStore('records');
          const [keys, values] = [store.getAllKeys(), store.getAll()];
          store.transaction.oncomplete = () => {
            opened.result.close();
            resolve(Object.fromEntries(keys.result.map((key, at) => [String(key), values.result[at]])));
          };
        };
      }),
  );
