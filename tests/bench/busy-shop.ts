import type { Page } from '@playwright/test';
import {
  addRun,
  advanceRun,
  applyEdit,
  edits,
  finishRun,
  lockRun,
  rowsToAdd,
  session,
  setPlaces,
} from '../../src/editing';
import { readTable } from '../../src/intake';
import { type Book, type Id, type Place, recordsOf } from '../../src/model';
import { fromMm, UPRIGHT, utcDay } from '../../src/units';
import { closeIt, freshIds, NOW, smallBook } from '../editing/book';

/** Copies of 100 by 80 mm lie three abreast on the small book's roll. */
const ABREAST = 3;
const placeOf = (nth: number): Place => ({
  x: fromMm(5 + 105 * (nth % ABREAST)),
  y: fromMm(10 + 85 * Math.floor(nth / ABREAST)),
  angle: UPRIGHT,
  pinned: false,
});

/** A shop with so many orders, of one transfer and so many copies each, on a roll that is long enough for all. */
export function shopOf(orders: number, copies: number): Book {
  const table = [
    'order,transfer,width,height,count,fabric',
    ...Array.from({ length: orders }, (_, at) => `Order ${at},crest ${at},100,80,${copies},cotton`),
  ].join('\n');
  const { rows } = readTable(table, { unit: 'mm', dateOrder: null, today: utcDay(Date.parse(NOW)) });
  const empty = { ...smallBook().book, order: {}, transfer: {}, copy: {} };
  const roomy = applyEdit(
    empty,
    (draft) => {
      for (const film of Object.values(draft.film))
        if (film.kind === 'roll')
          Object.assign(film, { lengthLeft: fromMm(5_000_000), spanMax: fromMm(480) });
    },
    NOW,
  ).book;
  return session(roomy, edits.addRows(rowsToAdd(rows, [], {})), freshIds()).book;
}

/** Copies that wait, the first of them. */
const waiting = (book: Book, count: number): Id<'copy'>[] =>
  Object.values(book.copy)
    .filter(({ state }) => state === 'waiting')
    .slice(0, count)
    .map(({ id }) => id);

/** The book with so many copies laid out on its open run. */
export function laidOut(book: Book, count: number, run = Object.values(book.run).at(-1)?.id): Book {
  if (!run) throw new Error('no run');
  const places = waiting(book, count).map((id, nth): [Id<'copy'>, Place] => [id, placeOf(nth)]);
  return applyEdit(book, (draft) => setPlaces(draft, run, places), NOW).book;
}

/** The book with its open run locked, and a new one open. */
export function lockedOf(book: Book): Book {
  const open = Object.values(book.run).find(({ state }) => state === 'draft');
  if (!open) throw new Error('no run');
  return applyEdit(
    book,
    (draft) => {
      lockRun(draft, open.id, freshIds());
      addRun(draft, { name: 'Next', film: open.film }, freshIds());
    },
    NOW,
  ).book;
}

/** The book with so many runs of so many copies each gone through the shop and closed. */
export function withClosed(book: Book, runs: number, copies: number): Book {
  let own = book;
  for (let nth = 0; nth < runs; nth += 1) {
    const laid = laidOut(own, copies);
    const open = Object.values(laid.run).find(({ state }) => state === 'draft');
    if (!open) throw new Error('no run');
    const pressed = applyEdit(
      lockedOf(laid),
      (draft) => {
        finishRun(draft, open.id, freshIds());
        advanceRun(draft, open.id, freshIds());
        advanceRun(draft, open.id, freshIds());
      },
      NOW,
    ).book;
    own = closeIt(pressed, open.id, freshIds());
  }
  return own;
}

/** Puts a book in place of the one that lies in a page's storage; the page is loaded anew. */
export const storeBook = (page: Page, book: Book): Promise<void> => storeRecords(page, recordsOf(book));

/** Puts records in place of those that are stored, whatever they hold, and opens the page again. */
export async function storeRecords(page: Page, stored: ReadonlyMap<string, unknown>): Promise<void> {
  const records = [...stored];
  const put = (some: readonly (readonly [string, unknown])[], clears: boolean) =>
    page.evaluate(
      ([entries, isFirst]) =>
        new Promise<void>((resolve, reject) => {
          const opened = indexedDB.open('rollwright');
          opened.onerror = () => reject(opened.error);
          opened.onsuccess = () => {
            const transaction = opened.result.transaction('records', 'readwrite');
            const store = transaction.objectStore('records');
            const keys = store.getAllKeys();
            keys.onsuccess = () => {
              if (isFirst)
                for (const key of keys.result) if (!String(key).startsWith('meta/')) store.delete(key);
              for (const [key, value] of entries) store.put(value, key);
            };
            transaction.onerror = () => reject(transaction.error);
            transaction.oncomplete = () => {
              opened.result.close();
              resolve();
            };
          };
        }),
      [some, clears] as const,
    );
  const CHUNK = 2000;
  for (let at = 0; at < records.length; at += CHUNK) await put(records.slice(at, at + CHUNK), at === 0);
  await page.reload();
}
