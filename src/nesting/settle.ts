import type { Overlap, Spot, Stretch } from './overlap';
import type { Shape } from './shape';
import type { Stock } from './stock';

/** Rows that are tried for a copy in each turn: some of all, and those in which it would touch some of the others before and behind. */
const DRAWN = 8;
const TOUCHED = 12;
/** How far from the best of them it goes on, in rows; halved where that is no better. */
const FAR = 4;

/** A row drawn from those in which a shape may begin; `null` if it fits no stretch. */
function drawRow(
  { length }: Shape,
  stretches: readonly Stretch[],
  height: number,
  random: () => number,
): number | null {
  const rooms = stretches.map(({ reach }) => Math.max(0, Math.floor((reach - length) / height) + 1));
  let at = Math.floor(random() * rooms.reduce((sum, room) => sum + room, 0));
  for (const [index, room] of rooms.entries()) {
    if (at < room) return (stretches[index] as Stretch).from + at;
    at -= room;
  }
  return null;
}

/** Whether a shape that begins in a row lies in one of the stretches. */
const mayBegin = ({ length }: Shape, row: number, stretches: readonly Stretch[], height: number): boolean =>
  stretches.some(({ from, reach }) => row >= from && (row - from) * height + length <= reach);

/**
 * Moves a copy to where it overlaps least of what is tried: rows drawn at random, and those near to the best, in each of its turns.
 * @returns whether it has moved
 */
export function settle(
  overlap: Overlap,
  copy: number,
  { stock, stretches, random }: { stock: Stock; stretches: readonly Stretch[]; random: () => number },
): boolean {
  const { all, height, shapes } = stock;
  let bound = overlap.costOf(copy);
  let best: Spot | null = null as Spot | null;
  const tryRow = (shape: number, row: number): void => {
    const found = overlap.acrossIn(copy, shape, row, bound);
    if (!found) return;
    bound = found.cost;
    best = { shape, row, x: found.x };
  };
  const number = overlap.shape[copy] as number;
  for (const other of shapes[(all[number] as Shape).piece] as readonly number[]) {
    const shape = all[other] as Shape;
    for (let drawn = 0; drawn < DRAWN && bound > 0; drawn += 1) {
      const row = drawRow(shape, stretches, height, random);
      if (row !== null) tryRow(other, row);
    }
    for (let touched = 0; touched < TOUCHED && bound > 0; touched += 1) {
      const beside = Math.floor(random() * overlap.count);
      const start = overlap.row[beside] as number;
      for (const row of [start - shape.rows, start + (all[overlap.shape[beside] as number] as Shape).rows]) {
        if (beside !== copy && mayBegin(shape, row, stretches, height)) tryRow(other, row);
      }
    }
  }
  for (let step = FAR; step >= 1 && bound > 0; ) {
    const { shape, row }: Spot = best ?? { shape: number, row: overlap.row[copy] as number, x: 0 };
    const before = bound;
    for (const next of [row - step, row + step]) {
      if (mayBegin(all[shape] as Shape, next, stretches, height)) tryRow(shape, next);
    }
    if (bound === before) step >>= 1;
  }
  if (!best) return false;
  overlap.move(copy, best);
  return true;
}
