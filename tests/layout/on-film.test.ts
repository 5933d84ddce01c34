import { describe, expect, it } from 'vitest';
import { onFilm } from '../../src/layout';
import { asTurned } from '../../src/outlines';
import { angleOf, fromMm } from '../../src/units';

const at = { x: fromMm(20), y: fromMm(100) };

/** Cells of an F of 3 x 5 mm, its stem at the left, by their middles: it tells a turn from a mirror. */
const F = ['###', '#..', '##.', '#..', '#..'];

/** The F where its cells come to lie on the film, x across and y along, from the copy's corner. */
function lying(degrees: number): string[] {
  const { width, length, origin } = asTurned({ width: fromMm(3), length: fromMm(5) }, null, degrees);
  const cells = Array.from({ length: length / 1000 }, () => new Array<string>(width / 1000).fill('.'));
  const copy = { ...at, origin, angle: angleOf(degrees) };
  F.forEach((row, down) => {
    [...row].forEach((sign, across) => {
      const point = onFilm(copy, fromMm(across + 0.5), fromMm(down + 0.5));
      const [x, y] = [Math.floor((point.x - at.x) / 1000), Math.floor((point.y - at.y) / 1000)];
      (cells[y] as string[])[x] = sign;
    });
  });
  return cells.map((row) => row.join(''));
}

describe('a point of an image on the film', () => {
  it.each([
    [0, F],
    [90, ['#####', '..#.#', '....#']],
    [180, ['..#', '..#', '.##', '..#', '###']],
    [270, ['#....', '#.#..', '#####']],
  ])('lies clockwise by %i degrees, never mirrored', (degrees, cells) => {
    expect(lying(degrees)).toEqual(cells);
  });
});
