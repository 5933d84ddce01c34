import type { Page } from '@playwright/test';
import { seededRandom } from '../../src/units';
import { playedBook } from '../editing/played-book';
import { withDamage } from '../model/mutate';
import { stored } from '../model/stored';
import { inBuiltApp } from './built-app';
import { storeRecords } from './busy-shop';

const EDITS = 120;
/** Places that are damaged at once: a page is loaded for each lot. */
const LOT = 5;

const ROOMS = ['orders', 'quote', 'film', 'cut', 'cut-map', 'press', 'cards', 'stock', 'log'] as const;

/** What stands where a room, a window or the app could not be shown. */
const FAILED = /could not be shown/;

/** The rooms that could not be drawn, or drew nothing. */
async function undrawn(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const room of ROOMS) {
    await page.goto(`./#/${room}`);
    // The room before is gone by then.
    await page.waitForTimeout(100);
    const isDrawn = await page
      .getByRole('main')
      .filter({ hasText: /\w/ })
      .waitFor({ state: 'attached', timeout: 20_000 })
      .then(
        () => true,
        () => false,
      );
    if (!isDrawn || (await page.getByText(FAILED).count()) > 0) found.push(room);
  }
  return found;
}

/** Damages stored books in so many places, opens each in the built app, and walks through its rooms. Needs a build. */
export async function benchDamagedRooms(places: number, seed: number): Promise<void> {
  await inBuiltApp('Rooms of damaged books', async (page) => {
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(error.message));
    const random = seededRandom(seed);
    const draw = (most: number) => Math.floor(random() * most);
    const failed: string[] = [];
    const lots = Math.ceil(places / LOT);
    for (let lot = 0; lot < lots; lot += 1) {
      let records = stored(playedBook(EDITS, seed + lot));
      const touched: string[] = [];
      for (let place = 0; place < LOT; place += 1) {
        const next = withDamage(records, draw);
        records = next.records;
        touched.push(next.touched);
      }
      await storeRecords(page, records);
      const rooms = await undrawn(page);
      if (rooms.length > 0 || errors.length > 0)
        failed.push(`lot ${lot} (${touched.join(', ')}): ${[...rooms, ...errors].join('; ')}`);
      errors.length = 0;
    }
    console.log(
      `\nRooms of damaged books: ${lots * LOT} places in ${lots} books of ${EDITS} edits, ${ROOMS.length} rooms each, seed ${seed}: ${failed.length} failed`,
    );
    for (const each of failed) console.log(`  ${each}`);
  });
}
