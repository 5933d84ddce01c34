import { seededRandom } from '../../src/units';
import { smallSettings } from '../editing/book';
import { playedBook } from '../editing/played-book';
import { openDamaged } from '../model/mutate';
import { stored } from '../model/stored';

const BOOKS = 20;
const EDITS = 120;

/** Damages books in so many places, one at a time, and tells how many did not open or lost what did not hang on the place. */
export function benchDamaged(mutations: number, seed: number): void {
  const first = smallSettings();
  const draw = seededRandom(seed);
  const wrong = new Map<string, number>();
  let records = new Map<string, unknown>();
  const started = performance.now();
  for (let at = 0; at < mutations; at += 1) {
    if (at % Math.ceil(mutations / BOOKS) === 0) records = stored(playedBook(EDITS, seed + at));
    let what = '';
    try {
      const { touched, lost } = openDamaged(records, first, (most) => Math.floor(draw() * most));
      if (lost.length > 0) what = `lost ${lost[0]?.split('/')[0]} by ${touched.split('/')[0]}`;
    } catch (error) {
      what = String(error);
    }
    if (what) wrong.set(what, (wrong.get(what) ?? 0) + 1);
  }
  const each = (performance.now() - started) / mutations;
  const failed = [...wrong.values()].reduce((sum, count) => sum + count, 0);
  console.log(
    `\nDamaged books: ${mutations} places in ${BOOKS} books of ${EDITS} edits, seed ${seed}: ${failed} failed; ${each.toFixed(1)} ms each`,
  );
  for (const [what, count] of wrong) console.log(`  ${count} x ${what}`);
}
