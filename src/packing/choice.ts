import { seededRandom } from '../units';
import type { Limits } from './build';
import { Search } from './search';
import { type Strip, tooLarge } from './strip';

/** How many copies of each piece the film can take at all. */
export const fitting = (strip: Strip): Int32Array =>
  strip.count.map((count, piece) => (tooLarge(strip, piece) === null ? count : 0));

export const sum = (counts: Int32Array): number => counts.reduce((total, count) => total + count, 0);

/** The pieces by rank, the soonest first; within a rank in their order. */
export const byRank = ({ rank }: Strip): number[] =>
  [...rank.keys()].sort((a, b) => (rank[a] ?? 0) - (rank[b] ?? 0) || a - b);

/** The first so many copies by rank. */
function firstByRank(strip: Strip, counts: Int32Array, copies: number): Int32Array {
  const chosen = new Int32Array(counts.length);
  let left = copies;
  for (const piece of byRank(strip)) {
    chosen[piece] = Math.min(left, counts[piece] ?? 0);
    left -= chosen[piece] ?? 0;
  }
  return chosen;
}

/** Layouts tried to find out whether so many copies fit a roll that ends. */
const TRIES = 12;
/** Engines of all seeds choose the same copies, so that their layouts compare. */
const CHOICE_SEED = 1;

function fits(strip: Strip, counts: Int32Array, limits: Limits): boolean {
  const search = new Search(strip, counts, limits, seededRandom(CHOICE_SEED));
  for (let tried = 0; tried < TRIES; tried += 1) {
    search.step();
    if (search.best?.complete) return true;
  }
  return sum(counts) === 0;
}

/**
 * How many copies of each piece are laid out: all that the film can take, or of film that ends as many as are found to fit,
 * soonest rank first, halving the doubt each time.
 */
export function chosenCounts(strip: Strip): Int32Array {
  const all = fitting(strip);
  const { bins } = strip;
  if ((bins.kind === 'sheets' ? bins.most : bins.total) === Number.POSITIVE_INFINITY) return all;
  if (fits(strip, all, bins)) return all;
  let least = 0;
  let most = sum(all);
  while (most - least > 1) {
    const middle = Math.floor((least + most) / 2);
    if (fits(strip, firstByRank(strip, all, middle), bins)) least = middle;
    else most = middle;
  }
  return firstByRank(strip, all, least);
}
