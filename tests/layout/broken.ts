import { area, EndType, FillRule, inflatePaths, intersect, JoinType, type Paths64 } from 'clipper2-ts';
import type { LaidCopy, LaidRun } from '../../src/layout';

const pathsOf = ({ x, y, width, length, outline }: LaidCopy): Paths64 =>
  (outline ?? [[0, 0, width, 0, width, length, 0, length]]).map((ring) =>
    Array.from({ length: ring.length / 2 }, (_, at) => ({
      x: Math.round((ring[2 * at] as number) + x),
      y: Math.round((ring[2 * at + 1] as number) + y),
    })),
  );

/** Whether two copies whose boxes are nearer than the gap are so by their outlines too: one grown by the gap shares film with the other. */
function meet(a: LaidCopy, b: LaidCopy, gap: number): boolean {
  const grown =
    gap > 4 ? inflatePaths(pathsOf(a), gap - 4, JoinType.Round, EndType.Polygon, 2, 1) : pathsOf(a);
  const shared = intersect(grown, pathsOf(b), FillRule.NonZero);
  return Math.abs(shared.reduce((sum, path) => sum + area(path), 0)) > 100;
}

/** What may not be, found copy by copy and pair by pair, by nothing that the app has. */
export function broken({ view, film, copies, printedTo, spoiled, spans }: LaidRun): string[] {
  const found: string[] = [];
  const onSheets = film.kind === 'sheets';
  const byOutlines =
    view.run.laidBy === 'outlines' || film.cutting === 'outlines' || film.cutting === 'in-holes';
  const sheetOf = ({ y }: LaidCopy) => (onSheets ? Math.floor(y / film.length) : 0);
  const stretches = onSheets ? [] : [...film.noPrint, ...spoiled];
  for (const [index, copy] of copies.entries()) {
    const { x, y, width, length, fixed } = copy;
    const start = onSheets ? sheetOf(copy) * film.length : 0;
    const end = onSheets ? start + film.length : film.lengthLeft - film.unreached - film.jobBlank;
    for (const other of copies.slice(index + 1)) {
      const across = Math.max(x, other.x) - Math.min(x + width, other.x + other.width);
      const along = Math.max(y, other.y) - Math.min(y + length, other.y + other.length);
      const isNear = across < film.gap && along < film.gap && sheetOf(copy) === sheetOf(other);
      if (!isNear || (fixed && other.fixed)) continue;
      // Boxes keep the gap along and across, but where a run is laid by outlines: there it is the distance of their corners.
      const isAslant = byOutlines && Math.min(across, along) > 0;
      const apart = isAslant ? Math.hypot(across, along) : Math.max(across, along);
      const isMet = copy.outline || other.outline ? meet(copy, other, film.gap) : apart < film.gap;
      if (isMet) found.push('gap');
    }
    // Sheets of another length may be chosen when some are printed: what is printed is then told as it lies.
    const isCut = spans?.some(({ to }, at) => at < spans.length - 1 && to > y && to < y + length);
    if (isCut && !(fixed && onSheets)) found.push('knife');
    if (fixed) continue;
    if (x < film.margins.left || x + width > film.width - film.margins.right) found.push('side');
    if (y < start + film.margins.lead + film.curl || y + length > end - film.margins.tail) found.push('end');
    if (onSheets && sheetOf(copy) >= film.sheetsLeft) found.push('sheets');
    if (y < printedTo) found.push('printed');
    if (stretches.some(({ from, to }) => y < to && y + length > from)) found.push('no-print');
    if (copy.angle !== 0 && copy.transfer.turn === 'fixed') found.push('turned');
  }
  if (!onSheets && film.spanMax !== null) {
    const most = film.spanMax;
    if (
      spans === null ? copies.every(({ fixed }) => !fixed) : spans.some(({ from, to }) => to - from > most)
    ) {
      found.push('span');
    }
  }
  return found;
}
