import type { Page } from '@playwright/test';
import { PNG } from 'pngjs';
import type { FilmCopy, Picture } from '../tests/output/print-image/reference';
import { expect } from './shop';

export function pngOf({ width, height, data }: Picture): Buffer {
  const png = new PNG({ width, height });
  png.data = Buffer.from(data);
  return PNG.sync.write(png);
}

/** Gives a transfer an image by its button. */
export async function giveArtwork(page: Page, transfer: string, fileName: string, buffer: Buffer) {
  const row = page
    .locator('.transfer-row')
    .filter({ has: page.getByRole('textbox', { name: `Transfer: ${transfer}` }) });
  const mimeType = fileName.endsWith('.svg') ? 'image/svg+xml' : 'image/png';
  await row.locator('input[type=file]').setInputFiles({ name: fileName, mimeType, buffer });
  await expect(row.locator('img')).toBeVisible();
}

/** Every record of the shop's own book, by its key. */
const storedRecords = (page: Page): Promise<Record<string, unknown>> =>
  page.evaluate(async () => {
    const asked = <Value>(request: IDBRequest<Value>) =>
      new Promise<Value>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await asked(indexedDB.open('rollwright'));
    const found: Record<string, unknown> = {};
    for (const name of database.objectStoreNames) {
      const store = database.transaction(name).objectStore(name);
      const [keys, values] = await Promise.all([asked(store.getAllKeys()), asked(store.getAll())]);
      keys.forEach((key, index) => {
        found[String(key)] = values[index];
      });
    }
    database.close();
    return found;
  });

interface StoredTransfer {
  readonly id: string;
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** The copies that lie on the film. */
export async function storedCopies(page: Page): Promise<FilmCopy[]> {
  const records = await storedRecords(page);
  const of = <Value>(prefix: string) =>
    Object.entries(records)
      .filter(([key]) => key.startsWith(`${prefix}/`))
      .map(([, value]) => value as Value);
  const transfers = new Map(of<StoredTransfer>('transfer').map((transfer) => [transfer.id, transfer]));
  return of<{
    transfer: string;
    number: number;
    place: { x: number; y: number; angle: number } | null;
  }>('copy').flatMap(({ transfer, number, place }) => {
    const own = transfers.get(transfer);
    if (!own || !place) return [];
    const quarters = (place.angle / 900) % 4;
    const [width, length] = quarters % 2 === 1 ? [own.height, own.width] : [own.width, own.height];
    return [{ transfer: own.name, number, x: place.x, y: place.y, width, length, quarters }];
  });
}
