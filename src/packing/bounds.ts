import { areaOf } from '../outlines';
import { um } from '../units';
import { tooLargeFor } from './fit';
import { type FilmAmount, isApart, type Piece, type Problem } from './problem';
import { type Strip, stripOf } from './strip';

/** Maps a share of the width, 0 to 1, so that shares adding up to at most 1 still do: a dual feasible function. */
type Dual = (share: number) => number;

/** Shares this close to a limit count as on it: the safe side is taken. */
const NEAR = 1e-9;

const identity: Dual = (share) => share;

/**
 * Dual feasible functions of S. P. Fekete and J. Schepers, A general framework for bounds for
 * higher-dimensional orthogonal packing problems, Mathematical Methods of Operations Research 60, 311-329,
 * 2004: `u(k)` rounds to k parts, `U(e)` counts shares over 1 - e as whole and drops those under e.
 */
const u =
  (k: number): Dual =>
  (share) => {
    const parts = share * (k + 1);
    return Math.abs(parts - Math.round(parts)) < NEAR ? share : Math.floor(parts) / k;
  };

const bigU =
  (epsilon: number): Dual =>
  (share) =>
    share > 1 - epsilon + NEAR ? 1 : share < epsilon - NEAR ? 0 : share;

/** `phi(e)` of the same paper, for e up to 1/2. */
const phi =
  (epsilon: number): Dual =>
  (share) => {
    const whole = Math.floor(1 / epsilon + NEAR);
    if (share < epsilon - NEAR) return 0;
    if (share <= 0.5 + NEAR) return 1 / whole;
    return 1 - Math.floor((1 - share) / epsilon + NEAR) / whole;
  };

/** Thresholds tried at the most: any choice of them is sound, and so many are nearly as good as all. */
const MOST_THRESHOLDS = 96;
/** On sheets every function over one axis is paired with every one over the other. */
const MOST_FOR_SHEETS = 30;

/** The functions worth trying for some shares: their thresholds lie where a share does. */
function duals(shares: Iterable<number>, most = MOST_THRESHOLDS): Dual[] {
  const thresholds = new Set<number>();
  for (const share of shares) {
    if (share <= 0.5) thresholds.add(share);
    else if (share < 1) thresholds.add(1 - share);
  }
  const all = [...thresholds].filter((epsilon) => epsilon > NEAR).sort((a, b) => a - b);
  const step = Math.max(1, all.length / most);
  const sorted = all.filter((_, index) => Math.floor(index / step) !== Math.floor((index - 1) / step));
  return [
    identity,
    bigU(0.5),
    ...Array.from({ length: 12 }, (_, index) => u(index + 1)),
    ...sorted.flatMap((epsilon) => [bigU(epsilon), phi(epsilon)]),
  ];
}

interface Item {
  readonly across: number;
  readonly along: number;
  readonly count: number;
  readonly turns: boolean;
}

/** All copies, pinned ones too, as they may lie on empty film. */
function itemsOf(strip: Strip): Item[] {
  const items: Item[] = [];
  strip.count.forEach((count, piece) => {
    const [across, along] = [strip.across[piece] ?? 0, strip.along[piece] ?? 0];
    if (count > 0) items.push({ across, along, count, turns: strip.turns[piece] === 1 });
  });
  for (const { across, along } of strip.pins) items.push({ across, along, count: 1, turns: false });
  return items;
}

/** Length any layout needs if a dual feasible function weighs the widths: the sum of weighted areas. */
function weighedLength(items: readonly Item[], width: number, dual: Dual): number {
  let sum = 0;
  for (const { across, along, count, turns } of items) {
    const lying = across <= width ? dual(across / width) * along : Number.POSITIVE_INFINITY;
    const turned = turns && along <= width ? dual(along / width) * across : Number.POSITIVE_INFINITY;
    const least = Math.min(lying, turned);
    if (least < Number.POSITIVE_INFINITY) sum += count * least;
  }
  return sum;
}

function shares(items: readonly Item[], whole: number): Set<number> {
  const found = new Set<number>();
  for (const { across, along, turns } of items) {
    found.add(across / whole);
    if (turns) found.add(along / whole);
  }
  return found;
}

/** Grown length that no layout of these copies can go below. */
function leastGrown(strip: Strip): number {
  const items = itemsOf(strip);
  const { width } = strip;
  let least = 0;
  for (const dual of duals(shares(items, width))) least = Math.max(least, weighedLength(items, width, dual));
  for (const { across, along, turns } of items) {
    const alone = turns && along <= width ? Math.min(across <= width ? along : across, across) : along;
    least = Math.max(least, Math.min(along, alone));
  }
  for (const pin of strip.pins) least = Math.max(least, pin.y + pin.along);
  // Lengths are whole micrometres; what doubles lose in adding is far less than this.
  return Math.ceil(least - 1e-3);
}

/** The same, with a stretch of its own for every order where the orders lie apart. */
function leastTogether(strip: Strip): number {
  if (!isApart(strip.together) || strip.pins.length > 0) return leastGrown(strip);
  let least = 0;
  for (const order of new Set(strip.rank)) {
    const count = strip.count.map((copies, piece) => (strip.rank[piece] === order ? copies : 0));
    least += leastGrown({ ...strip, count });
  }
  return least;
}

/** Sheets that no layout can go below: dual feasible functions over both axes. */
function leastSheets(strip: Strip): number {
  const items = itemsOf(strip);
  const { width, bins } = strip;
  const length = bins.other;
  const overWidth = duals(shares(items, width), MOST_FOR_SHEETS);
  const overLength = duals(shares(items, length), MOST_FOR_SHEETS);
  let least = 0;
  for (const f of overWidth) {
    for (const g of overLength) {
      let sum = 0;
      for (const { across, along, count, turns } of items) {
        const fits = across <= width && along <= length;
        const lying = fits ? f(across / width) * g(along / length) : Number.POSITIVE_INFINITY;
        const fitsTurned = turns && along <= width && across <= length;
        const turned = fitsTurned ? f(along / width) * g(across / length) : Number.POSITIVE_INFINITY;
        const share = Math.min(lying, turned);
        if (share < Number.POSITIVE_INFINITY) sum += count * share;
      }
      least = Math.max(least, sum);
    }
  }
  return Math.max(Math.ceil(least - 1e-6), Math.ceil(leastTogether(strip) / length - 1e-6));
}

/** Grown length that the copies on the emptiest of so many sheets reach at least: by area, and by the shortest copy. */
export function leastOnLastSheet(strip: Strip, sheets: number): number {
  const items = itemsOf(strip);
  if (sheets === 1) return leastTogether(strip);
  const { width, bins } = strip;
  const area = items.reduce((sum, { across, along, count }) => sum + across * along * count, 0);
  const shortest = items.reduce(
    (least, { across, along, turns }) => Math.min(least, along, turns ? across : along),
    Number.POSITIVE_INFINITY,
  );
  return Math.max(shortest, Math.ceil(area / width - (sheets - 1) * bins.other - 1e-3));
}

/** How far rounding may have moved a corner of an outline, micrometres. */
const ROUNDED = 1;

/**
 * Film that one copy takes at least, all within half a gap of it: of a box exactly, of an outline of its area no less than of a disc as
 * large (the Brunn-Minkowski inequality; R. J. Gardner, Bulletin of the American Mathematical Society 39(3), 355-405, 2002).
 */
function filmAround({ width, length, outline }: Piece, half: number): number {
  const disc = Math.PI * half * half;
  if (!outline) return width * length + 2 * half * (width + length) + disc;
  return (Math.sqrt(areaOf(outline)) + Math.sqrt(disc)) ** 2;
}

/**
 * Film that copies need at least that keep the gap by their outlines: grown by half a gap they share nothing, in what they may lie on
 * grown likewise.
 */
function leastByInk(problem: Problem): FilmAmount {
  const { film, margins, gap, pieces } = problem;
  const apart = Math.max(0, gap - ROUNDED);
  const width = film.width - margins.left - margins.right + apart;
  const fitting = pieces.filter((piece) => piece.count > 0 && tooLargeFor(problem, piece) === null);
  const along = fitting.reduce((sum, piece) => sum + piece.count * filmAround(piece, apart / 2), 0) / width;
  if (film.kind === 'sheet') {
    const whole = film.length - margins.lead - margins.tail + apart;
    return { kind: 'sheets', sheets: Math.ceil(along / whole - 1e-6) };
  }
  const least = Math.max(0, along - apart);
  const isBare = fitting.length === 0;
  return { kind: 'roll', length: um(isBare ? 0 : Math.floor(margins.lead + least + margins.tail)) };
}

/**
 * Film that any layout of all copies needs at least: the area bound and dual feasible functions over the
 * width (S. Martello, M. Monaci and D. Vigo, An exact approach to the strip-packing problem, INFORMS Journal
 * on Computing 15(3), 310-319, 2003, use such bounds for strips), with each copy counted in the cheaper of the
 * turns it is allowed. Copies too large for the film are left out; by outlines, what they print. Sound with gaps, spans and pinned copies.
 * @returns none without copies
 */
export function leastFilm(problem: Problem): FilmAmount {
  if (problem.cutting === 'outlines') return leastByInk(problem);
  const strip = stripOf(problem);
  const isBare = itemsOf(strip).length === 0;
  if (strip.bins.kind === 'sheets') return { kind: 'sheets', sheets: isBare ? 0 : leastSheets(strip) };
  return { kind: 'roll', length: um(isBare ? 0 : strip.before + leastTogether(strip) + strip.after) };
}
