import { cutCount, cutTree } from '../packing';
import { sheetAt } from './film-shape';
import type { LaidRun } from './laid';

/** How many straight cuts part the copies of a run, knife lines among them; `null` if straight cuts alone cannot. */
export function straightCuts(run: Pick<LaidRun, 'copies' | 'film'>): number | null {
  const sheets = new Set(run.copies.map(({ y }) => sheetAt(run.film, y)));
  let cuts = 0;
  for (const sheet of sheets) {
    const tree = cutTree(run.copies.filter(({ y }) => sheetAt(run.film, y) === sheet));
    if (!tree) return null;
    cuts += cutCount(tree);
  }
  return cuts;
}
