import type { OutlineFilm, OutlineProblem } from './problem';

/**
 * The film as bins that copies are laid into one by one: the whole roll, its spans, or sheets. Lengths in micrometres, of the film that
 * copies may cover.
 */
export interface Bins {
  readonly kind: OutlineFilm['kind'];
  /** Knife lines part the bins. */
  readonly isCut: boolean;
  /** So many there are. */
  readonly most: number;
  /** How far copies may reach in the first bin, and in every other. */
  readonly first: number;
  readonly other: number;
  /** Blank film before the copies of the first bin, behind those of the last, and from one bin's copies to the next's. */
  readonly lead: number;
  readonly tail: number;
  readonly between: number;
  /** Of `between`, what lies before the knife line. */
  readonly beforeKnife: number;
}

export function binsOf({ film, margins: { lead, tail }, gap }: OutlineProblem): Bins {
  const half = gap / 2;
  if (film.kind === 'sheet') {
    const other = film.length - lead - tail;
    const most = film.sheetLimit ?? Infinity;
    return { kind: 'sheet', isCut: false, most, first: other, other, lead, tail, between: 0, beforeKnife: 0 };
  }
  const { spanMax, cutBlank, lengthLimit, lines } = film;
  const between = half + cutBlank + half;
  if (spanMax === null) {
    const whole = (lengthLimit ?? Infinity) - lead - tail;
    return {
      kind: 'roll',
      isCut: false,
      most: 1,
      first: whole,
      other: whole,
      lead,
      tail,
      between,
      beforeKnife: half,
    };
  }
  // Any span may come to be the last, but the first is the last only where it is the only one.
  const last = Math.max(half, tail);
  const drawn = lines.at(-1);
  return {
    kind: 'roll',
    isCut: true,
    most: Infinity,
    // Spans whose lines are drawn are one bin with the span behind them: it alone may end anywhere.
    first: (drawn ?? 0) + spanMax - lead - last,
    other: spanMax - cutBlank - half - last,
    lead,
    tail,
    between,
    beforeKnife: half,
  };
}
