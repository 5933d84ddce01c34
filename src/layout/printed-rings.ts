import { type ArtworkOutline, OUTLINE_STEPS, type Transfer } from '../model';
import type { Ring } from '../outlines';

const known = new WeakMap<ArtworkOutline, Map<string, readonly Ring[]>>();

/** An outline at its printed size, from the corner of its box: worked out once a size. */
export function printedRings(
  outline: ArtworkOutline,
  { width, height }: Pick<Transfer, 'width' | 'height'>,
): readonly Ring[] {
  let sizes = known.get(outline);
  if (!sizes) {
    sizes = new Map();
    known.set(outline, sizes);
  }
  const key = `${width} ${height}`;
  const last = sizes.get(key);
  if (last) return last;
  const rings = outline.map((line) =>
    Float64Array.from(line, (step, at) => (step * (at % 2 === 0 ? width : height)) / OUTLINE_STEPS),
  );
  sizes.set(key, rings);
  return rings;
}
