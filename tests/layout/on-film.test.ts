import { describe, expect, it } from 'vitest';
import { onFilm } from '../../src/layout';
import { fromMm } from '../../src/units';

const at = { x: fromMm(20), y: fromMm(100) };

/** Cells of an F of 3 x 5 mm, its stem at the left, by their middles: it tells a turn from a mirror. */
const F = ['###', '#..', '##.', '#..', '#..'];

/** The F where its cells come to lie on the film, x across and y along, from the copy's corner. */
function lying(turned: boolean): string[] {
  const [width, length] = turned ? [5, 3] : [3, 5];
  const cells = Array.from({ length }, () => new Array<string>(width).fill('.'));
  const copy = { ...at, width: fromMm(width), turned };
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
  it('lies as in the image where the copy is not turned', () => {
    expect(lying(false)).toEqual(F);
  });

  it('lies a quarter turn clockwise where it is turned, never mirrored', () => {
    expect(lying(true)).toEqual(['#####', '..#.#', '....#']);
  });
});
