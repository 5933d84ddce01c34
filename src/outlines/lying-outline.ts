import type { Ring } from './ring';
import { turned } from './turned';

const known = new WeakMap<readonly Ring[], readonly Ring[]>();

/** An outline as it lies when its copy is, or is not, turned by a quarter; turned once, however many copies lie so. */
export function lyingOutline(rings: readonly Ring[], isTurned: boolean): readonly Ring[] {
  if (!isTurned) return rings;
  const last = known.get(rings);
  if (last) return last;
  const lying = turned(rings, 90).rings;
  known.set(rings, lying);
  return lying;
}
