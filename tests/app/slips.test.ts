import { describe, expect, it } from 'vitest';
import { initialsOf } from '../../app/panels/shop-mark/initials';
import { sheetsOfSlips } from '../../app/press/slips';

const sheets = (lines: readonly number[]) =>
  sheetsOfSlips(lines, (each) => each).map(({ up, slips }) => [up, ...slips]);

describe('packing slips', () => {
  it.each([
    [
      'short ones, four up',
      [1, 2, 3, 4, 5],
      [
        [4, 1, 2, 3, 4],
        [4, 5],
      ],
    ],
    [
      'longer ones, two up',
      [13, 18, 13],
      [
        [2, 13, 18],
        [2, 13],
      ],
    ],
    ['a long one, by itself', [20], [[1, 20]]],
    [
      'of every length',
      [20, 1, 14, 2],
      [
        [4, 1, 2],
        [2, 14],
        [1, 20],
      ],
    ],
    ['none', [], []],
  ] as const)('fill sheets: %s', (_, lines, told) => expect(sheets(lines)).toEqual(told));
});

it.each([
  ['Bramble Lane Prints', 'BL'],
  ['Estampados La Zarza', 'EL'],
  ['Árbol', 'Á'],
  ['prints of the north', ''],
  ['4 Corners', '4C'],
])('the mark of %s bears %s', (name, mark) => expect(initialsOf(name)).toBe(mark));
