import { describe, expect, it } from 'vitest';
import { cutAround } from '../../src/cutting';
import { hostsOf } from '../../src/cutting/holes';
import { lengthOf } from '../../src/outlines';
import { box, reversed, ring } from '../nesting/outlines';
import { runOf } from '../output/runs';

const frame = [box(100, 100), reversed(ring([20, 20], [80, 20], [80, 80], [20, 80]))];
const at = (number: number, x: number, y: number, size: number, outline: typeof frame | null) => ({
  code: 'A',
  number,
  x,
  y,
  width: size,
  length: size,
  outline,
});

describe('the lines that a copy is cut out along', () => {
  it.each([
    // The sides of squares: 400 mm around the frame, 240 around its hole, 80 around what lies in it.
    ['its hole too, where a copy lies in it', 50, [640, 80]],
    ['not its hole, where the other lies beside', 130, [400, 80]],
  ])('are %s', (_, x, lengths) => {
    const { copies } = runOf([at(1, 10, 10, 100, frame), at(2, x, 50, 20, null)], { cutting: 'in-holes' });
    expect(copies.map((copy) => lengthOf(cutAround(copy, copies)) / 1000)).toEqual(lengths);
  });

  it('are told of the smallest copy around another, of several', () => {
    const inner = [box(50, 50), reversed(ring([10, 10], [40, 10], [40, 40], [10, 40]))];
    const { copies } = runOf([at(1, 10, 10, 100, frame), at(2, 35, 35, 50, inner), at(3, 50, 50, 20, null)], {
      cutting: 'in-holes',
    });
    const hosts = hostsOf(copies);
    expect(copies.map((copy) => hosts.get(copy)?.number ?? null)).toEqual([null, 1, 2]);
  });
});
