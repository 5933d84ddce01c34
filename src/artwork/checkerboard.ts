import type { EdgeLines } from './edge';

/** Squares of two greys that stand for transparency: how far apart the two may be, and how grey, 0 to 255 (ours, no source). */
const LEAST_CONTRAST = 6;
const MOST_CONTRAST = 110;
const GREY = 16;
const OPAQUE = 250;
/** Squares of a line are alike within this share of their side, or a pixel; so many of them, and so much of the line. */
const ALIKE = 0.15;
const LEAST_SQUARES = 6;
const MOST_OF_LINE = 0.6;
/** In pixels; smaller ones are a screen of dots. */
const SMALLEST = 3;

const shareOf = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.floor(share * (values.length - 1))] ?? 0;

/** The side of the squares that a line runs through, in pixels; `null` where it runs through none. */
function squaresAlong(line: readonly number[]): number | null {
  const greys: (number | null)[] = [];
  for (let at = 0; at < line.length; at += 4) {
    const [r, g, b, alpha] = line.slice(at, at + 4) as [number, number, number, number];
    if (alpha < OPAQUE) return null;
    greys.push(Math.max(r, g, b) - Math.min(r, g, b) <= GREY ? (r + g + b) / 3 : null);
  }
  const known = greys.filter((grey) => grey !== null);
  const [dark, light] = [shareOf(known, 0.1), shareOf(known, 0.9)];
  if (light - dark < LEAST_CONTRAST || light - dark > MOST_CONTRAST) return null;
  const middle = (dark + light) / 2;
  const runs: number[] = [];
  let before: boolean | null = null;
  for (const grey of greys) {
    const isLight = grey === null ? null : grey > middle;
    if (isLight !== null && isLight === before) runs[runs.length - 1] = (runs.at(-1) ?? 0) + 1;
    else if (isLight !== null) runs.push(1);
    before = isLight;
  }
  const side = shareOf(runs, 0.5);
  const alike = runs.filter((run) => Math.abs(run - side) <= Math.max(1, ALIKE * side));
  const covered = alike.reduce((sum, run) => sum + run, 0);
  return side >= SMALLEST && alike.length >= LEAST_SQUARES && covered >= MOST_OF_LINE * greys.length
    ? side
    : null;
}

/** Whether squares of two greys run along the edges both ways: a picture of transparency, and not transparency. */
export function isCheckerboard({ top, bottom, left, right }: EdgeLines): boolean {
  const across = squaresAlong(top) ?? squaresAlong(bottom);
  const down = squaresAlong(left) ?? squaresAlong(right);
  return across !== null && down !== null && Math.abs(across - down) <= Math.max(1, ALIKE * across);
}
