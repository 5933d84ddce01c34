import { isOuter } from '../outlines';
import type { Book } from './book';
import { cuttings, type Film } from './records';

/**
 * The ways of cutting that are worth comparing with the one that is set: copies in holes only where the artwork of some transfer has a hole,
 * since otherwise the layout is that of outlines.
 */
export function waysToCut(
  { artwork, transfer }: Pick<Book, 'artwork' | 'transfer'>,
  { cutting: set }: Pick<Film, 'cutting'>,
): Film['cutting'][] {
  const outlines = new Set(
    Object.values(transfer).map((each) => artwork[each.artwork ?? '']?.outline ?? null),
  );
  const hasHole = [...outlines].some((outline) => outline?.some((line) => !isOuter(Float64Array.from(line))));
  return cuttings.filter((cutting) => cutting !== 'in-holes' || hasHole || set === 'in-holes');
}
