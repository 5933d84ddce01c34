import { areNearer, type Lying } from './near';
import type { Ring } from './ring';

const numbers = new WeakMap<readonly Ring[], number>();
let given = 0;

function numberOf(rings: readonly Ring[]): number {
  const known = numbers.get(rings);
  if (known !== undefined) return known;
  given += 1;
  numbers.set(rings, given);
  return given;
}

/** Some layouts of a long run. */
const MOST_KNOWN = 20_000;
const known = new Map<string, boolean>();

/** Boxes are measured as soon as they are looked up. */
const isBox = ([ring, ...others]: readonly Ring[]): boolean => others.length === 0 && ring?.length === 8;

/**
 * The same as {@link areNearer}, found once for two outlines as they lie to each other: a layout is checked as it is planned, as it is
 * laid and as it is kept, and what an edit leaves in its place with it.
 */
export function areNearerOnce(a: Lying, b: Lying, distance: number): boolean {
  if (isBox(a.rings) || isBox(b.rings)) return areNearer(a, b, distance);
  // Whichever is asked about first.
  const [one, other] = numberOf(a.rings) <= numberOf(b.rings) ? [a, b] : [b, a];
  const key = `${numberOf(one.rings)} ${numberOf(other.rings)} ${other.x - one.x} ${other.y - one.y} ${distance}`;
  const last = known.get(key);
  if (last !== undefined) return last;
  const found = areNearer(a, b, distance);
  if (known.size === MOST_KNOWN) known.clear();
  known.set(key, found);
  return found;
}
