import { QUARTER, UPRIGHT, um } from '../units';
import { knifeLines } from './knife-lines';
import type { Layout } from './layout';
import type { FilmAmount, FilmUsed, Placed, Plan, Problem, Unplaced } from './problem';
import type { Rect } from './rules';
import { sizeAt } from './size-at';
import { isEmpty, type Strip, stripOf, tooLarge } from './strip';

/** The bins of a layout in the order in which they are printed: of spans the first keeps its place, and the
 * shortest comes last, unless copies that lie together would part. */
function binOrder({ tops }: Layout, strip: Strip): number[] {
  const { bins, together } = strip;
  const order = [...tops.keys()];
  if (!isEmpty(strip) || bins.kind === 'strip' || together.kind !== 'any') return order;
  const kept = bins.kind === 'spans' ? 1 : 0;
  const shorter = (a: number, b: number) => (tops[b] ?? 0) - (tops[a] ?? 0) || a - b;
  return [...order.slice(0, kept), ...order.slice(kept).sort(shorter)];
}

/** Where a kept layout puts its copies on the film. */
export function placedOf(layout: Layout, strip: Strip, { margins }: Problem): Placed[] {
  const order = binOrder(layout, strip);
  const sheets = strip.bins.kind === 'sheets';
  const start = new Float64Array(order.length);
  const sheet = new Int32Array(order.length);
  let offset = 0;
  for (const [rank, bin] of order.entries()) {
    if (sheets) sheet[bin] = rank;
    else {
      start[bin] = offset;
      offset += (layout.tops[bin] ?? 0) + strip.bins.between;
    }
  }
  return Array.from(layout.piece, (piece, index) => {
    const bin = layout.bin[index] ?? 0;
    return {
      piece,
      sheet: sheet[bin] ?? 0,
      x: um(margins.left + (layout.x[index] ?? 0)),
      y: um(margins.lead + (start[bin] ?? 0) + (layout.y[index] ?? 0)),
      angle: layout.turned[index] === 1 ? QUARTER : UPRIGHT,
    };
  });
}

function rectOf({ pieces }: Problem, { piece, x, y, angle }: Placed): Rect | null {
  const own = pieces[piece];
  return own ? { x, y, ...sizeAt(own, angle) } : null;
}

/** The film that placed copies take, as far as how much of it goes. */
export function filmUsed(problem: Problem, placed: readonly Placed[]): FilmAmount {
  if (problem.film.kind === 'sheet') {
    return { kind: 'sheets', sheets: placed.reduce((most, { sheet }) => Math.max(most, sheet + 1), 0) };
  }
  let end = 0;
  for (const { piece, y, angle } of placed) {
    const own = problem.pieces[piece];
    if (own) end = Math.max(end, y + sizeAt(own, angle).length);
  }
  return { kind: 'roll', length: um(placed.length > 0 ? end + problem.margins.tail : 0) };
}

/** The same, with the spans that lines would cut it into. */
function cutInto(problem: Problem, placed: readonly Placed[]): FilmUsed {
  const used = filmUsed(problem, placed);
  const { film, gap } = problem;
  if (used.kind === 'sheets') return used;
  if (film.kind === 'sheet' || film.spanMax === null) return { ...used, spans: [] };
  const rects = placed.flatMap((copy) => rectOf(problem, copy) ?? []);
  const { spanMax, cutBlank } = film;
  return { ...used, spans: knifeLines(rects, { gap, spanMax, cutBlank, lengthUsed: used.length }) ?? [] };
}

/** A plan of copies that were placed otherwise, the pinned ones first. */
export const planOf = (problem: Problem, placed: readonly Placed[]): Plan =>
  assemble(problem, stripOf(problem), placed);

/**
 * A plan of placed copies; whatever is missing is accounted for.
 * @param placed the pinned ones first
 */
export function assemble(problem: Problem, strip: Strip, placed: readonly Placed[]): Plan {
  const missing = Int32Array.from(strip.count);
  for (const { piece } of placed.slice(problem.pinned.length)) missing[piece] = (missing[piece] ?? 0) - 1;
  const unplaced: Unplaced[] = [];
  for (const [piece, count] of missing.entries()) {
    if (count > 0) unplaced.push({ piece, count, reason: tooLarge(strip, piece) ?? 'no-room' });
  }
  return { placed, unplaced, used: cutInto(problem, placed) };
}
